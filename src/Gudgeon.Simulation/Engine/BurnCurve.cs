namespace Gudgeon.Simulation.Engine;

/// <summary>The burned fraction against crank angle at one speed and mixture.</summary>
internal readonly struct BurnCurve
{
    private readonly double _a;
    private readonly double _power;
    private readonly double _full;

    /// <param name="spec">The burn.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="lambda">Mixture.</param>
    /// <param name="residual">Share of burned gas in the charge; looked at only where the burn has a reference for it.</param>
    public BurnCurve(CombustionSpec spec, double speed, double lambda, double residual = 0)
    {
        _a = spec.WiebeA;
        _power = spec.WiebeM + 1;
        _full = 1 - Math.Exp(-_a);
        Burned50 = spec.Burned50 + (spec.Burned50Slope * (speed - spec.ReferenceSpeed));
        var offBest = lambda - spec.QuickestLambda;
        var duration = spec.Duration
            * Math.Pow(speed / spec.ReferenceSpeed, spec.DurationSpeedExponent)
            * (1 + (spec.DurationMixtureFactor * offBest * offBest))
            * (spec.ReferenceResidual is { } reference ? Math.Pow(Slowed(reference) / Slowed(residual), 2.0 / 3) : 1);
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

    /// <summary>
    /// Laminar flame speed with burned gas in the charge over that without: Rhodes and Keck, SAE 850047 (from memory; the mass share
    /// is taken for the mole fraction). Not below a tenth, where no charge burns.
    /// </summary>
    private static double Slowed(double residual) => Math.Max(0.1, 1 - (2.06 * Math.Pow(Math.Max(0, residual), 0.77)));

    private double Time(double fraction) => Math.Pow(-Math.Log(1 - (fraction * _full)) / _a, 1 / _power);
}
