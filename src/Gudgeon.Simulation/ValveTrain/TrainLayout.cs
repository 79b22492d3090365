using System.Numerics;

namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// The train as numbers in a row. Body 0 is the valve, body 1 the follower where it moves on its own, then the inner masses
/// of each spring from the head towards the valve. Each body but the valve hangs on one other, so the train is a tree.
/// A state is the travel of all bodies from the valve shut, then their velocities.
/// </summary>
internal sealed class TrainLayout
{
    public TrainLayout(TrainSpec spec)
    {
        Spec = spec;
        Springs = new ColumnLayout[spec.Springs.Count];
        var bodies = spec.TrainStiffness is null ? 1 : 2;
        for (var s = 0; s < Springs.Length; s++)
        {
            Springs[s] = new ColumnLayout(spec.Springs[s], bodies);
            bodies += spec.Springs[s].Elements - 1;
        }

        Bodies = bodies;
        CamBody = spec.TrainStiffness is null ? 0 : 1;
        Masses = new double[bodies];
        Parents = new int[bodies];
        Masses[0] = spec.ValveMass + Springs.Sum(s => s.EndMass);
        Masses[CamBody] += spec.FollowerMass;
        foreach (var spring in Springs)
        {
            for (var i = 0; i < spring.Elements - 1; i++)
            {
                Masses[spring.First + i] = spring.BodyMass;
                Parents[spring.First + i] = i == spring.Elements - 2 ? 0 : spring.First + i + 1;
            }
        }

        SeatRest = spec.ShutLoad / spec.SeatStiffness;
        var (moving, valve) = (Masses[CamBody], Masses[0]);
        CamDamping = 2 * spec.CamDamping * Math.Sqrt(spec.CamStiffness * moving);
        TrainStiffness = spec.TrainStiffness ?? 0;
        TrainDamping = 2 * spec.TrainDamping * Math.Sqrt(TrainStiffness * moving * valve / (moving + valve));
        SeatDamping = 2 * spec.SeatDamping * Math.Sqrt(spec.SeatStiffness * valve);
    }

    public TrainSpec Spec { get; }

    public ColumnLayout[] Springs { get; }

    /// <summary>Number of bodies.</summary>
    public int Bodies { get; }

    /// <summary>Length of a state array: travel and velocity of each body, filled up with noughts to whole vectors.</summary>
    public int Size => ((2 * Bodies) + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;

    /// <summary>The body on which the cam pushes.</summary>
    public int CamBody { get; }

    /// <summary>kg.</summary>
    public double[] Masses { get; }

    /// <summary>The body on which each hangs; a body stands after all that hang on it, but for the valve, which is the root.</summary>
    public int[] Parents { get; }

    /// <summary>How far the shut valve is pressed into its seat by its springs, m: where it leaves the seat.</summary>
    public double SeatRest { get; }

    /// <summary>N·s/m.</summary>
    public double CamDamping { get; }

    /// <summary>N/m; 0 when the follower moves with the valve.</summary>
    public double TrainStiffness { get; }

    /// <summary>N·s/m.</summary>
    public double TrainDamping { get; }

    /// <summary>N·s/m.</summary>
    public double SeatDamping { get; }
}

/// <summary>One spring as numbers.</summary>
internal sealed class ColumnLayout
{
    /// <summary>Touching coils are so many times as stiff as an element: stiff enough to stop them, soft enough to march.</summary>
    private const double Clash = 30;

    public ColumnLayout(SpringColumn spring, int first)
    {
        var n = spring.Elements;
        (First, Elements, ShutLoad) = (first, n, spring.ShutLoad);
        Stiffness = n * spring.Rate;
        ClashStiffness = Clash * Stiffness;
        Room = spring.BindTravel / n;
        BodyMass = spring.ActiveMass / n;
        PerMass = 1 / BodyMass;

        // What is left at the moving end makes the column weigh a third of its mass when it is moved slowly (Rayleigh).
        EndMass = spring.ActiveMass * ((3 * n) - 1) / (6.0 * n * n);
        Damping = spring.ActiveMass == 0 ? 0 : Stiffness * 2 * spring.Damping / (Math.PI * Math.Sqrt(spring.Rate / spring.ActiveMass));
    }

    /// <summary>First body.</summary>
    public int First { get; }

    public int Elements { get; }

    /// <summary>N.</summary>
    public double ShutLoad { get; }

    /// <summary>Of one element, N/m.</summary>
    public double Stiffness { get; }

    /// <summary>Of one element, N·s/m: in proportion to the stiffness, so that the first surge has the given share of critical.</summary>
    public double Damping { get; }

    /// <summary>Of touching coils in one element, N/m.</summary>
    public double ClashStiffness { get; }

    /// <summary>Travel of one element from the valve shut until its coils touch, m.</summary>
    public double Room { get; }

    /// <summary>kg.</summary>
    public double BodyMass { get; }

    /// <summary>1/kg; infinite, and not used, in a spring without mass, which has no inner bodies.</summary>
    public double PerMass { get; }

    /// <summary>kg.</summary>
    public double EndMass { get; }
}
