namespace Gudgeon.Simulation.Engine;

/// <summary>
/// The burn as a Wiebe function, x = 1 − exp(−a t^(m+1)) scaled to end at 1, placed by the angle of 50 % burned and
/// stretched to the 10–90 % duration.
/// </summary>
public sealed record CombustionSpec
{
    /// <summary>Speed at which the next two hold, rad/s; 628.3 is 6000 rpm.</summary>
    public double ReferenceSpeed { get; init; } = 200 * Math.PI;

    /// <summary>Crank angle of 50 % burned after firing top dead centre at the reference speed, degrees; 8 is best torque.</summary>
    public double Burned50 { get; init; } = 8;

    /// <summary>Change of <see cref="Burned50"/> with speed, degrees per rad/s.</summary>
    public double Burned50Slope { get; init; }

    /// <summary>Crank angle from 10 % to 90 % burned at the reference speed and best mixture, degrees.</summary>
    public double Duration { get; init; } = 28;

    /// <summary>Duration goes with (speed/reference)^this; 0.2 to 0.4 is customary.</summary>
    public double DurationSpeedExponent { get; init; } = 0.3;

    /// <summary>Lambda of the quickest burn.</summary>
    public double QuickestLambda { get; init; } = 0.9;

    /// <summary>Duration goes with 1 + this · (lambda − quickest)²; 4 stretches it by a third at 0.3 off.</summary>
    public double DurationMixtureFactor { get; init; } = 4;

    /// <summary>
    /// Share of burned gas in the charge at which <see cref="Duration"/> holds; the duration goes with the flame speed that the
    /// residual gas leaves, to the power of −2/3 (Hires, Tabaczynski and Novak, SAE 780232, from memory). Null leaves it out.
    /// </summary>
    public double? ReferenceResidual { get; init; }

    /// <summary>Where the burn is to be placed by itself; null places it at <see cref="Burned50"/>.</summary>
    public BurnSearch? Search { get; init; }

    /// <summary>Wiebe a; with 5 the unscaled burn ends at 99.3 %.</summary>
    public double WiebeA { get; init; } = 5;

    /// <summary>Wiebe m.</summary>
    public double WiebeM { get; init; } = 2;

    /// <summary>
    /// Share of the trapped mixture that burns at all; the rest leaves as it came in. What a rich mixture cannot oxidise
    /// is not in this: the equilibrium products hold it as CO and H2.
    /// </summary>
    public double Efficiency { get; init; } = 0.97;
}

/// <summary>
/// The burn placed for best torque at each speed, as far forward as knock and peak pressure let it: what a tuner does with
/// the ignition on a dyno.
/// </summary>
public sealed record BurnSearch
{
    /// <summary>Largest knock integral; 1 is the onset, less keeps a distance.</summary>
    public double KnockLimit { get; init; } = 1;

    /// <summary>Largest cylinder pressure, Pa; infinite for none.</summary>
    public double PressureLimit { get; init; } = double.PositiveInfinity;

    /// <summary>Earliest angle of 50 % burned, degrees.</summary>
    public double Earliest { get; init; } = 2;

    /// <summary>Latest angle of 50 % burned, degrees.</summary>
    public double Latest { get; init; } = 40;
}

/// <summary>Fuel injected into the port, dosed to the air that passes so that the mixture is everywhere the given one.</summary>
public sealed record FuelDelivery
{
    /// <summary>
    /// Share evaporated before the inlet valve with heat drawn from the charge, 0 to 1; less where the charge is so cold that
    /// the vapour would pass saturation. The rest evaporates in the cylinder.
    /// </summary>
    public double EvaporatedInPort { get; init; } = 0.6;

    /// <summary>Crank angle in which the liquid in the cylinder falls to 1/e far from saturation, degrees.</summary>
    public double EvaporationAngle { get; init; } = 40;

    /// <summary>How far before the inlet valve the injector stands, along the middle of the pipe, m; the wave depth only.</summary>
    public double InjectorDistance { get; init; } = 0.1;

    /// <summary>
    /// Share of the fuel that lands on the wall of the port and evaporates from there with the wall's heat instead of the
    /// charge's, 0 to 1; the wave depth only.
    /// </summary>
    public double FilmShare { get; init; }

    /// <summary>Time in which the film on the wall falls to 1/e, s; 0.1 s warm to 1 s cold.</summary>
    public double FilmTime { get; init; } = 0.3;

    /// <summary>Temperature of the fuel injected, K.</summary>
    public double Temperature { get; init; } = 298.15;
}

/// <summary>Wall temperatures and the Woschni heat transfer.</summary>
public sealed record WallSpec
{
    /// <summary>Combustion chamber and valve faces, K.</summary>
    public double Head { get; init; } = 470;

    /// <summary>Piston crown, K.</summary>
    public double Piston { get; init; } = 520;

    /// <summary>Cylinder liner, K.</summary>
    public double Liner { get; init; } = 410;

    /// <summary>Surface of the head over the bore area; 1.0 flat, about 1.2 pent roof.</summary>
    public double HeadAreaRatio { get; init; } = 1.2;

    /// <summary>Surface of the crown over the bore area.</summary>
    public double PistonAreaRatio { get; init; } = 1.05;

    /// <summary>Multiplies the Woschni coefficient; 0 is adiabatic.</summary>
    public double WoschniScale { get; init; } = 1;
}

/// <summary>Friction mean effective pressure A + B · peak pressure + C · mean piston speed + D · its square (Chen–Flynn form).</summary>
public sealed record FrictionSpec
{
    /// <summary>A, Pa.</summary>
    public double Constant { get; init; } = 0.4e5;

    /// <summary>B, Pa per Pa.</summary>
    public double PeakPressure { get; init; } = 0.005;

    /// <summary>C, Pa per m/s.</summary>
    public double PistonSpeed { get; init; } = 0.09e5;

    /// <summary>D, Pa per (m/s)².</summary>
    public double PistonSpeedSquared { get; init; } = 0.0009e5;
}
