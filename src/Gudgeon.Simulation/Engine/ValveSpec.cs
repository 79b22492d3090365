namespace Gudgeon.Simulation.Engine;

/// <summary>The inlet or the exhaust valves of one cylinder; equal valves that lift together.</summary>
public sealed record ValveSpec
{
    /// <summary>Number of valves.</summary>
    public required int Count { get; init; }

    /// <summary>Head diameter of one valve, m.</summary>
    public required double HeadDiameter { get; init; }

    /// <summary>Lift at the valve, lash already taken off.</summary>
    public required LiftCurve Lift { get; init; }

    /// <summary>Flow coefficients.</summary>
    public required FlowTable Flow { get; init; }
}

/// <summary>Valve lift against crank angle, straight between the points.</summary>
/// <param name="Angles">
/// Crank angle after this cylinder's firing top dead centre, degrees, rising, over less than 720; an exhaust valve opens
/// near 130 and closes near 380, an inlet valve opens near 340 and closes near 590. Angles outside 0 to 720 wrap.
/// </param>
/// <param name="Lifts">Lift, m; zero at both ends.</param>
public sealed record LiftCurve(IReadOnlyList<double> Angles, IReadOnlyList<double> Lifts)
{
    /// <summary>Crank angle at which the lift begins, degrees.</summary>
    public double Opens => Angles[Enumerable.Range(0, Lifts.Count - 1).FirstOrDefault(i => Lifts[i + 1] > 0)];

    /// <summary>Crank angle at which the valve is shut again, degrees.</summary>
    public double Closes => Angles[Enumerable.Range(1, Lifts.Count - 1).LastOrDefault(i => Lifts[i - 1] > 0)];

    /// <summary>Lift, m, at a crank angle after this cylinder's firing top dead centre, degrees.</summary>
    public double At(double angle)
    {
        var local = Angles[0] + ValveArea.Wrap(angle - Angles[0]);
        return local >= Angles[^1] ? 0 : Table.Read(Angles, Lifts, local);
    }

    /// <summary>
    /// A smooth curve for a first look when no cam has been measured: h = L sin²(π s)^<paramref name="fullness"/> over
    /// the opening. Not a cam anyone ground.
    /// </summary>
    /// <param name="opens">Crank angle of opening after firing top dead centre, degrees.</param>
    /// <param name="closes">Crank angle of closing, degrees.</param>
    /// <param name="maxLift">Greatest lift, m.</param>
    /// <param name="fullness">0.5 to 1; smaller is fuller.</param>
    public static LiftCurve Smooth(double opens, double closes, double maxLift, double fullness = 0.8)
    {
        EngineSpecException.Unless(closes > opens, $"lift curve: closes at {closes}°, which must be after it opens at {opens}°");
        const int Intervals = 120;
        var angles = new double[Intervals + 1];
        var lifts = new double[Intervals + 1];
        for (var i = 0; i <= Intervals; i++)
        {
            var sine = Math.Sin(Math.PI * i / Intervals);
            angles[i] = opens + ((closes - opens) * i / Intervals);
            lifts[i] = i is 0 or Intervals ? 0 : maxLift * Math.Pow(sine * sine, fullness);
        }

        return new LiftCurve(angles, lifts);
    }
}

/// <summary>What the flow coefficients are multiplied with.</summary>
public enum FlowReference
{
    /// <summary>The valve curtain, π · head diameter · lift.</summary>
    Curtain,

    /// <summary>The area of the valve head, π/4 · head diameter².</summary>
    Head,

    /// <summary>A given area per valve, <see cref="FlowTable.ReferenceArea"/>.</summary>
    Given,
}

/// <summary>Flow coefficients over lift/diameter, straight between the points and held beyond the ends.</summary>
public sealed record FlowTable
{
    /// <summary>Lift over head diameter, rising from 0 or above.</summary>
    public required IReadOnlyList<double> LiftOverDiameter { get; init; }

    /// <summary>Coefficient into the cylinder (inlet) or out of it (exhaust): in 0 to 1.2; zero only at zero lift.</summary>
    public required IReadOnlyList<double> Forward { get; init; }

    /// <summary>Coefficient the other way; null when the same.</summary>
    public IReadOnlyList<double>? Reverse { get; init; }

    /// <summary>What the coefficients refer to.</summary>
    public FlowReference Reference { get; init; } = FlowReference.Curtain;

    /// <summary>Area per valve for <see cref="FlowReference.Given"/>, m².</summary>
    public double? ReferenceArea { get; init; }

    /// <summary>
    /// Curtain coefficients that a decent port shows, for a first look when nothing has been on the flow bench: 0.68
    /// falling to 0.52. Common practice, no source.
    /// </summary>
    public static FlowTable Customary { get; } = new()
    {
        LiftOverDiameter = [0.0, 0.05, 0.10, 0.15, 0.20, 0.25, 0.30, 0.35],
        Forward = [0.68, 0.68, 0.67, 0.65, 0.62, 0.59, 0.55, 0.52],
    };
}
