namespace Gudgeon.Simulation.Engine;

/// <summary>
/// From the open air to the inlet ports as volumes and restrictions: filter, airbox, blower, delivery volume, cooler and
/// throttle, plenum, one port per cylinder.
/// </summary>
public sealed record IntakeSpec
{
    /// <summary>Effective area of the air filter and inlet, m².</summary>
    public double FilterArea { get; init; } = 4e-3;

    /// <summary>Airbox volume, m³.</summary>
    public double AirboxVolume { get; init; } = 6e-3;

    /// <summary>The blower; null is naturally aspirated.</summary>
    public Induction? Induction { get; init; }

    /// <summary>Volume between blower and throttle, cooler included, m³; used with a blower only.</summary>
    public double DeliveryVolume { get; init; } = 2e-3;

    /// <summary>Charge cooler; null when there is none.</summary>
    public ChargeCooler? Cooler { get; init; }

    /// <summary>Effective area of the throttles wide open, all together, m².</summary>
    public double ThrottleArea { get; init; } = 2.5e-3;

    /// <summary>Plenum volume between throttle and ports, m³.</summary>
    public double PlenumVolume { get; init; } = 2e-3;

    /// <summary>Relief or blow-off valve on the delivery volume (the plenum when there is no blower); null when there is none.</summary>
    public ReliefValve? Relief { get; init; }

    /// <summary>Volume of one cylinder's port and runner, m³.</summary>
    public double PortVolume { get; init; } = 0.2e-3;

    /// <summary>Effective area from the plenum into one cylinder's port, m².</summary>
    public double RunnerArea { get; init; } = 1.4e-3;
}

/// <summary>Heat exchanger between blower and throttle.</summary>
public sealed record ChargeCooler
{
    /// <summary>(Tin − Tout) / (Tin − Tcoolant), 0 to 1.</summary>
    public double Effectiveness { get; init; } = 0.7;

    /// <summary>Temperature of the coolant or cooling air, K.</summary>
    public double CoolantTemperature { get; init; } = 298.15;

    /// <summary>Effective flow area that stands for the pressure loss, m².</summary>
    public double EffectiveArea { get; init; } = 2.5e-3;
}

/// <summary>Opens to the open air above a gauge pressure.</summary>
/// <param name="OpeningPressure">Gauge pressure at which it begins to open, Pa.</param>
/// <param name="Area">Effective area fully open, m²; reached 10 kPa above the opening pressure.</param>
public sealed record ReliefValve(double OpeningPressure, double Area);

/// <summary>A blower, driven by the crank unless it is a compressor with a turbine.</summary>
public abstract record Induction
{
    /// <summary>Driven pulley or sprocket speed over crank speed; means nothing with a turbine.</summary>
    public required double DriveRatio { get; init; }

    /// <summary>Share of speed lost to belt slip, 0 to 0.2.</summary>
    public double BeltSlip { get; init; }

    /// <summary>Mechanical efficiency of belt, gears and bearings.</summary>
    public double MechanicalEfficiency { get; init; } = 0.95;
}

/// <summary>A centrifugal compressor with its map.</summary>
public sealed record CentrifugalInduction : Induction
{
    /// <summary>Internal gear step-up from the driven pulley to the impeller.</summary>
    public double StepUp { get; init; } = 1;

    /// <summary>The map.</summary>
    public required CompressorMap Map { get; init; }

    /// <summary>The turbine that drives it, whose shaft then has nothing to do with the crank; null for a crank-driven one.</summary>
    public TurbineSpec? Turbine { get; init; }
}

/// <summary>A positive-displacement blower: Roots (no internal compression), screw or vane.</summary>
public sealed record PositiveDisplacementInduction : Induction
{
    /// <summary>Volume taken in per revolution of the driven shaft, m³.</summary>
    public required double Displacement { get; init; }

    /// <summary>Effective area of the leak back from delivery to inlet, m².</summary>
    public double LeakArea { get; init; }

    /// <summary>Built-in volume ratio; 1 is a Roots blower without internal compression.</summary>
    public double InternalCompression { get; init; } = 1;

    /// <summary>Ideal indicated work over the work given to the air.</summary>
    public double Efficiency { get; init; } = 0.8;
}

/// <summary>Exhaust as one collector and its way out.</summary>
public sealed record ExhaustSpec
{
    /// <summary>Volume of pipes and collector, m³.</summary>
    public double CollectorVolume { get; init; } = 4e-3;

    /// <summary>Effective area of the way out (silencer or megaphone), m².</summary>
    public double OutletArea { get; init; } = 1.2e-3;

    /// <summary>Share of the sensible heat above ambient that the gas loses to the pipe wall as it enters, 0 to 0.6.</summary>
    public double WallLossFraction { get; init; } = 0.08;
}

/// <summary>Ambient air.</summary>
public sealed record AmbientSpec
{
    /// <summary>Static pressure, Pa.</summary>
    public double Pressure { get; init; } = 101_325;

    /// <summary>Temperature, K.</summary>
    public double Temperature { get; init; } = 298.15;

    /// <summary>Relative humidity, 0 to 1.</summary>
    public double RelativeHumidity { get; init; } = 0.3;
}

/// <summary>Port conditions as measured, in place of intake and exhaust.</summary>
/// <param name="Inlet">Inlet port pressure.</param>
/// <param name="InletTemperature">Temperature of the gas in the inlet port, K.</param>
/// <param name="Exhaust">Exhaust port pressure.</param>
/// <param name="ExhaustTemperature">Temperature of gas that comes back from the exhaust port, K.</param>
public sealed record ImposedPorts(PressureTrace Inlet, double InletTemperature, PressureTrace Exhaust, double ExhaustTemperature);

/// <summary>Pressure against crank angle over a whole cycle, straight between the points, periodic over 720°.</summary>
/// <param name="Angles">Crank angle after the cylinder's firing top dead centre, degrees, rising, within less than 720 of each other.</param>
/// <param name="Pressures">Absolute pressure, Pa.</param>
public sealed record PressureTrace(IReadOnlyList<double> Angles, IReadOnlyList<double> Pressures)
{
    /// <summary>The same pressure at every angle.</summary>
    public static PressureTrace Constant(double pressure) => new([0], [pressure]);
}
