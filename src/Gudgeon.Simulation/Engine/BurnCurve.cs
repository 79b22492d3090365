namespace Gudgeon.Simulation.Engine;

/// <summary>The burned fraction against crank angle at one speed and mixture.</summary>
internal readonly struct BurnCurve
{
    private readonly double _a;
    private readonly double _power;
    private readonly double _full;

    public BurnCurve(CombustionSpec spec, double speed, double lambda)
    {
        _a = spec.WiebeA;
        _power = spec.WiebeM + 1;
        _full = 1 - Math.Exp(-_a);
        Burned50 = spec.Burned50 + (spec.Burned50Slope * (speed - spec.ReferenceSpeed));
        var offBest = lambda - spec.QuickestLambda;
        var duration = spec.Duration
            * Math.Pow(speed / spec.ReferenceSpeed, spec.DurationSpeedExponent)
            * (1 + (spec.DurationMixtureFactor * offBest * offBest));
        Length = duration / (Time(0.9) - Time(0.1));
        Start = Burned50 - (Time(0.5) * Length);
    }

    /// <summary>Crank angle of 50 % burned after firing top dead centre, degrees.</summary>
    public double Burned50 { get; }

    /// <summary>Crank angle at which the burn starts, degrees.</summary>
    public double Start { get; }

    /// <summary>Whole length of the burn, degrees.</summary>
    public double Length { get; }

    /// <summary>Burned fraction at a crank angle after firing top dead centre, degrees.</summary>
    public double Fraction(double angle)
    {
        var t = (angle - Start) / Length;
        return t <= 0 ? 0 : t >= 1 ? 1 : (1 - Math.Exp(-_a * Math.Pow(t, _power))) / _full;
    }

    private double Time(double fraction) => Math.Pow(-Math.Log(1 - (fraction * _full)) / _a, 1 / _power);
}
