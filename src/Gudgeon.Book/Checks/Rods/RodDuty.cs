using Gudgeon.Book.Bottom;
using Gudgeon.Book.Checks.Chamber;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Crank;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Checks.Rods;

/// <summary>What a rod and its gudgeon pin bear. SI; NaN where it is not known.</summary>
/// <param name="view">The values, with a desk: pushes take an engine run.</param>
/// <param name="cylinder">Whose.</param>
internal sealed class RodDuty(View view, string cylinder)
{
    private IReadOnlyList<(double Speed, ThrowLoads Loads)>? _hardest;

    /// <summary>Pull in the shank at overlap TDC at the rev limit, throttle shut: no gas eases it, N.</summary>
    public double Pull => RunningSquishCheck.Pull(view, cylinder).Force;

    /// <summary>Greatest push in the rod over the run and the speed where it stands, N.</summary>
    public (double Load, double Speed) Push => Most(l => l.Rod.Max());

    /// <summary>Greatest push of the piston on its gudgeon pin over the run, N.</summary>
    public (double Load, double Speed) PinPush => Most(l => l.PinAlong.Max());

    /// <summary>Greatest side thrust of the piston over the run, N.</summary>
    public (double Load, double Speed) Side => Most(l => l.Side.Max(Math.Abs));

    /// <summary>Loads on both ends at the dead centres at the rev limit, throttle shut.</summary>
    public RodEndLoads Ends() => view.Work(
        RodLoads.AtDeadCentres,
        view.Amount(Piston.Mass, cylinder),
        view.Amount(Rod.SmallEndMass, cylinder),
        view.Amount(Rod.Mass, cylinder) - view.Amount(Rod.SmallEndMass, cylinder),
        view.Amount(Crank.Stroke) / 2,
        view.Amount(Rod.Length, cylinder),
        view.Amount(Engine.RevLimit),
        view.Amount(Cylinder.Bore, cylinder),
        0.0);

    /// <summary>Pull on the gudgeon pin at overlap TDC at the rev limit, N.</summary>
    public double PinPull => Ends().SmallEndOverlap;

    /// <summary>Pull on the cap's bolts together at overlap TDC at the rev limit, N: what the big end pulls, less the cap, which hangs on the pin.</summary>
    public double CapPull
    {
        get
        {
            var speed = view.Amount(Engine.RevLimit);
            return Ends().BigEndOverlap - (view.AmountOr(Rod.CapMass, 0, cylinder) * view.Amount(Crank.Stroke) / 2 * speed * speed);
        }
    }

    /// <summary>Greatest and least stress in the shank, Pa, tension positive: push, pull and whip over the cycle at the hardest speeds, and the pull with the throttle shut.</summary>
    /// <param name="shank">Its section.</param>
    public (double Greatest, double Least) Stress(RodShank shank)
    {
        var (area, modulus, mass) = (shank.Area, shank.SwingModulus, shank.MassPerLength);
        var (greatest, least) = (Pull / area, double.NaN);
        foreach (var (speed, loads) in Hardest)
        {
            for (var i = 0; i < loads.Rod.Length; i++)
            {
                var (along, whip) = (-loads.Rod[i] / area, Math.Abs(Whip(loads, speed, mass, i)) / modulus);
                greatest = Math.Max(greatest, along + whip);
                least = double.IsNaN(least) ? along - whip : Math.Min(least, along - whip);
            }
        }

        return (greatest, least);
    }

    /// <summary>Bending moment in the shank by its own inertia at a place of the cycle, N·m.</summary>
    private double Whip(ThrowLoads loads, double speed, double massPerLength, int i)
    {
        var radius = view.Amount(Crank.Stroke) / 2;
        return RodSection.Moment(
            massPerLength,
            loads.Throw.Rod,
            loads.Acceleration[i] * Math.Sin(loads.RodAngle[i]),
            radius * speed * speed * Math.Sin(loads.Angle[i] + loads.RodAngle[i]),
            RodSection.WhipAt);
    }

    /// <summary>The cylinder at the hardest speeds of the run, each with its speed.</summary>
    public IReadOnlyList<(double Speed, ThrowLoads Loads)> Hardest => _hardest ??= [.. CycleLoads.Hardest(view, cylinder).Select(h => (h.Loads.Speed, h.Throw))];

    private (double Load, double Speed) Most(Func<ThrowLoads, double> load) => Hardest.Count == 0 ? (double.NaN, double.NaN) : Hardest.Select(h => (Load: load(h.Loads), h.Speed)).MaxBy(h => h.Load);
}
