namespace Gudgeon.Simulation.Sprint;

/// <summary>Everything a standing-start run is computed from. All amounts are SI; engine speed is in rad/s.</summary>
public sealed record SprintSpec
{
    /// <summary>Torque at the crank and the speeds the engine is held between.</summary>
    public required SprintEngine Engine { get; init; }

    /// <summary>Clutch, ratios and shifts.</summary>
    public required SprintDriveline Driveline { get; init; }

    /// <summary>The machine ready to run, without its rider.</summary>
    public required SprintBody Machine { get; init; }

    /// <summary>The rider in the position of the run; no mass when <see cref="Machine"/> already counts the rider in.</summary>
    public SprintBody Rider { get; init; } = SprintBody.None;

    /// <summary>Wheelbase, wheels, tyres and rolling resistance.</summary>
    public required SprintWheels Wheels { get; init; }

    /// <summary>Air, wind and the drag of machine and rider.</summary>
    public required SprintAir Air { get; init; }

    /// <summary>Grip of the strip, roll-out and length of the run.</summary>
    public SprintStrip Strip { get; init; } = new();
}

/// <summary>Torque at the crank at full throttle, straight lines between its points, corrected to the day of the run.</summary>
/// <param name="Speeds">Engine speeds of the curve, rad/s, rising.</param>
/// <param name="Torques">Torque at each speed, N·m.</param>
/// <param name="LaunchSpeed">Engine speed held while the clutch slips, rad/s; within the curve.</param>
/// <param name="RevLimit">Engine speed that is never passed, rad/s; within the curve.</param>
/// <param name="Inertia">Moment of inertia of everything that turns at crank speed, referred to the crank, kg·m².</param>
public sealed record SprintEngine(
    IReadOnlyList<double> Speeds,
    IReadOnlyList<double> Torques,
    double LaunchSpeed,
    double RevLimit,
    double Inertia = 0);

/// <summary>Clutch, ratios and shifts.</summary>
/// <param name="PrimaryRatio">Crank turns per clutch turn.</param>
/// <param name="GearRatios">Clutch turns per output-shaft turn, first gear to top, falling.</param>
/// <param name="FinalRatio">Output-shaft turns per rear-wheel turn.</param>
/// <param name="Efficiency">Power at the rear wheel over power through the clutch, 0 to 1.</param>
/// <param name="ShiftTime">Time without drive at each shift, s.</param>
/// <param name="ClutchCapacity">Greatest torque that the clutch carries, referred to the crank, N·m.</param>
/// <param name="ShiftSpeeds">Engine speed at which each gear but the top is left, rad/s; null to shift where the next gear pulls harder.</param>
public sealed record SprintDriveline(
    double PrimaryRatio,
    IReadOnlyList<double> GearRatios,
    double FinalRatio,
    double Efficiency,
    double ShiftTime,
    double ClutchCapacity = double.PositiveInfinity,
    IReadOnlyList<double>? ShiftSpeeds = null);

/// <summary>A mass and where its centre of gravity lies.</summary>
/// <param name="Mass">kg.</param>
/// <param name="Ahead">Distance of the centre of gravity ahead of the rear tyre's contact, m.</param>
/// <param name="Height">Height of the centre of gravity above the ground, m.</param>
public sealed record SprintBody(double Mass, double Ahead, double Height)
{
    /// <summary>No mass at all.</summary>
    public static SprintBody None { get; } = new(0, 0, 0);
}

/// <summary>Wheelbase, wheels, tyres and rolling resistance.</summary>
/// <param name="Wheelbase">Distance between the tyre contacts, m.</param>
/// <param name="RearCircumference">Rolling circumference of the rear tyre at walking pace, m.</param>
/// <param name="RearGrowth">Growth of that circumference with speed: C = C₀ (1 + growth·v²), s²/m².</param>
/// <param name="RearInertia">Moment of inertia of the rear wheel with tyre, disc and sprocket, kg·m².</param>
/// <param name="FrontInertia">Moment of inertia of the front wheel with tyre and discs, kg·m².</param>
/// <param name="FrontRadius">Rolling radius of the front tyre, m.</param>
/// <param name="RollingResistance">Rolling resistance over weight.</param>
/// <param name="WheelieBar">Reach of a wheelie bar's roller behind the rear contact, m; 0 when there is no bar.</param>
public sealed record SprintWheels(
    double Wheelbase,
    double RearCircumference,
    double RearGrowth = 0,
    double RearInertia = 0,
    double FrontInertia = 0,
    double FrontRadius = 0.3,
    double RollingResistance = 0,
    double WheelieBar = 0);

/// <summary>Air, wind and the drag of machine and rider.</summary>
/// <param name="Density">Density of the air, kg/m³.</param>
/// <param name="DragArea">Drag coefficient times frontal area, m².</param>
/// <param name="DragHeight">Height of the centre of drag above the ground, m.</param>
/// <param name="HeadWind">Wind against the run, m/s; negative for a tail wind.</param>
public sealed record SprintAir(double Density, double DragArea, double DragHeight = 0, double HeadWind = 0);

/// <summary>Grip of the strip, roll-out and length of the run.</summary>
/// <param name="Friction">Greatest drive force over load at the rear tyre; infinite for a tyre that never slips.</param>
/// <param name="Rollout">Travel of the front wheel before it frees the start beam and the clock starts, m.</param>
/// <param name="Finish">Distance from the start beam to the end of the run, m; the quarter mile when left out.</param>
public sealed record SprintStrip(double Friction = 1.2, double Rollout = 0.3048, double Finish = StripLength.QuarterMile);
