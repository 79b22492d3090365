namespace Gudgeon.Simulation.Engine;

/// <summary>
/// One speed of a run. Figures exist only when the cycles repeated; a point that did not settle has none to be mistaken
/// for a result.
/// </summary>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="CyclesUsed">Cycles marched.</param>
/// <param name="Residual">Largest relative change over the last cycle.</param>
/// <param name="Figures">The figures; null when the point did not converge.</param>
/// <param name="State">State to start a neighbouring point from; null when the point did not converge.</param>
/// <param name="Trace">Traces over the crank angle when asked for and converged.</param>
public sealed record OperatingPoint(double Speed, int CyclesUsed, double Residual, PointFigures? Figures, EngineState? State, CycleTrace? Trace)
{
    /// <summary>Whether the cycles repeat within the tolerance.</summary>
    public bool Converged => Figures is not null;
}

/// <summary>Figures of a converged operating point, means over one cycle, SI.</summary>
public sealed record PointFigures
{
    /// <summary>Brake torque, N·m, blower drive taken off.</summary>
    public required double Torque { get; init; }

    /// <summary>Brake power, W.</summary>
    public required double Power { get; init; }

    /// <summary>Mean plenum pressure above ambient, Pa; negative is a loss.</summary>
    public required double Boost { get; init; }

    /// <summary>Air drawn in, its humidity included, kg/s.</summary>
    public required double AirFlow { get; init; }

    /// <summary>Fuel, kg/s.</summary>
    public required double FuelFlow { get; init; }

    /// <summary>Air taken per cycle over the swept volume filled at ambient pressure and temperature.</summary>
    public required double VolumetricEfficiency { get; init; }

    /// <summary>Gross indicated mean effective pressure (compression and expansion strokes, bottom to bottom), Pa.</summary>
    public required double GrossImep { get; init; }

    /// <summary>Net indicated mean effective pressure (all four strokes), Pa.</summary>
    public required double NetImep { get; init; }

    /// <summary>Pumping mean effective pressure, net minus gross; negative costs work, Pa.</summary>
    public required double PumpingMep { get; init; }

    /// <summary>Friction mean effective pressure, Pa.</summary>
    public required double FrictionMep { get; init; }

    /// <summary>Brake mean effective pressure, blower drive taken off, Pa.</summary>
    public required double Bmep { get; init; }

    /// <summary>Brake specific fuel consumption, kg/J; null when the engine gives no power or burns nothing.</summary>
    public required double? Bsfc { get; init; }

    /// <summary>Air-fuel ratio of what was drawn in over the stoichiometric one; null when motored.</summary>
    public required double? Lambda { get; init; }

    /// <summary>Crank angle of 50 % burned after firing top dead centre, degrees; null when motored.</summary>
    public required double? Burned50 { get; init; }

    /// <summary>Mean temperature of the charge in the plenum, K.</summary>
    public required double ChargeTemperature { get; init; }

    /// <summary>Flow-averaged temperature of the gas that leaves the exhaust collector, K.</summary>
    public required double ExhaustTemperature { get; init; }

    /// <summary>Mean pressure of the exhaust collector above ambient, Pa.</summary>
    public required double ExhaustBackPressure { get; init; }

    /// <summary>Heat given to the walls of all cylinders, W.</summary>
    public required double WallHeat { get; init; }

    /// <summary>Gas lost past the rings, kg/s.</summary>
    public required double BlowBy { get; init; }

    /// <summary>The blower; null when naturally aspirated.</summary>
    public required BlowerFigures? Blower { get; init; }

    /// <summary>Each cylinder, in the order of the specification.</summary>
    public required IReadOnlyList<CylinderFigures> Cylinders { get; init; }

    /// <summary>How well mass and energy closed over the last cycle.</summary>
    public required CycleBalance Balance { get; init; }

    /// <summary>Highest cylinder pressure of all, Pa.</summary>
    public double PeakPressure => Cylinders.Max(c => c.PeakPressure);

    /// <summary>Largest knock integral of all; 1 is the onset.</summary>
    public double KnockIntegral => Cylinders.Max(c => c.KnockIntegral);

    /// <summary>False when some end gas passed 1050 K, above which the ignition-delay correlation is known to be too slow.</summary>
    public bool KnockValid => Cylinders.All(c => c.KnockValid);
}

/// <summary>Figures of one cylinder, SI.</summary>
public sealed record CylinderFigures
{
    /// <summary>Highest pressure, Pa.</summary>
    public required double PeakPressure { get; init; }

    /// <summary>Crank angle of the highest pressure after firing top dead centre, degrees.</summary>
    public required double PeakPressureAngle { get; init; }

    /// <summary>Gross indicated mean effective pressure, Pa.</summary>
    public required double GrossImep { get; init; }

    /// <summary>Net indicated mean effective pressure, Pa.</summary>
    public required double NetImep { get; init; }

    /// <summary>Mass in the cylinder when the inlet valve closes, kg.</summary>
    public required double TrappedMass { get; init; }

    /// <summary>Share of burned gas in it.</summary>
    public required double ResidualFraction { get; init; }

    /// <summary>Pressure when the inlet valve closes, Pa.</summary>
    public required double TrappedPressure { get; init; }

    /// <summary>Temperature when the inlet valve closes, K.</summary>
    public required double TrappedTemperature { get; init; }

    /// <summary>Gas that came back out through the inlet valves over what went in.</summary>
    public double InletReversal { get; init; }

    /// <summary>Gas that came back in through the exhaust valves over what went out.</summary>
    public double ExhaustReversal { get; init; }

    /// <summary>Highest mean gas temperature, K.</summary>
    public required double PeakTemperature { get; init; }

    /// <summary>Livengood–Wu integral of the end gas until 90 % is burned; 1 is the onset of knock; 0 when motored.</summary>
    public required double KnockIntegral { get; init; }

    /// <summary>Highest end-gas temperature until 90 % is burned, K.</summary>
    public required double EndGasTemperature { get; init; }

    /// <summary>False when the end gas passed 1050 K, where the correlation no longer holds.</summary>
    public required bool KnockValid { get; init; }

    /// <summary>Heat given to the walls, W.</summary>
    public required double WallHeat { get; init; }
}

/// <summary>The blower at an operating point, SI.</summary>
public sealed record BlowerFigures
{
    /// <summary>Speed of impeller or rotor shaft, rad/s.</summary>
    public required double Speed { get; init; }

    /// <summary>Mean flow, kg/s.</summary>
    public required double Flow { get; init; }

    /// <summary>Mean pressure before the blower, Pa.</summary>
    public required double MeanInletPressure { get; init; }

    /// <summary>Mean delivery pressure over mean inlet pressure.</summary>
    public required double PressureRatio { get; init; }

    /// <summary>Isentropic efficiency over the cycle.</summary>
    public required double Efficiency { get; init; }

    /// <summary>Temperature delivered, flow-averaged, K.</summary>
    public required double DeliveryTemperature { get; init; }

    /// <summary>The turbine that drives it; null when the crank does.</summary>
    public TurbineFigures? Turbine { get; init; }

    /// <summary>Power taken from the crank, drive losses included, W; 0 with a turbine.</summary>
    public required double DrivePower { get; init; }

    /// <summary>
    /// (pressure ratio at surge / pressure ratio) · (flow / flow at surge) − 1 at the same corrected speed; null for a
    /// displacement blower.
    /// </summary>
    public required double? SurgeMargin { get; init; }

    /// <summary>1 − flow / flow at choke, at the same corrected speed; null for a displacement blower.</summary>
    public required double? ChokeMargin { get; init; }

    /// <summary>Share of the cycle in which the pulsing flow lies beyond the surge end of the speed line.</summary>
    public required double BeyondSurge { get; init; }

    /// <summary>Mean flow at or beyond the surge end of the speed line.</summary>
    public required bool Surge { get; init; }

    /// <summary>Mean flow at or beyond the choke end of the speed line.</summary>
    public required bool Choke { get; init; }

    /// <summary>The corrected speed lies outside the measured lines; the figures are extrapolated.</summary>
    public required bool Extrapolated { get; init; }
}

/// <summary>The turbine at an operating point, SI.</summary>
public sealed record TurbineFigures
{
    /// <summary>Power taken from the exhaust, W.</summary>
    public required double Power { get; init; }

    /// <summary>Share of the exhaust that goes through the wastegate.</summary>
    public required double WastegateShare { get; init; }
}

/// <summary>
/// Closure of the books over one cycle: what is stored, plus what left, minus what came in, over what passed through.
/// Round-off only, since every link gives one node what it takes from the other.
/// </summary>
/// <param name="AirError">Air, burned gas counted with its share, relative.</param>
/// <param name="FuelError">Fuel, burned gas counted with its share, relative; 0 when motored.</param>
/// <param name="EnergyError">Energy with enthalpies of formation, relative to the energy exchanged.</param>
public sealed record CycleBalance(double AirError, double FuelError, double EnergyError);

/// <summary>Traces over one cycle of the whole engine, one entry per crank step.</summary>
/// <param name="CrankAngle">Engine crank angle, degrees, 0 to 720.</param>
/// <param name="Cylinders">Each cylinder.</param>
/// <param name="PlenumPressure">Plenum pressure, Pa.</param>
/// <param name="ExhaustPressure">Collector pressure, with pipes the mean of those at the exhaust valves, Pa.</param>
/// <param name="Pipes">Each pipe; none in the lumped depth.</param>
public sealed record CycleTrace(double[] CrankAngle, IReadOnlyList<CylinderTrace> Cylinders, double[] PlenumPressure, double[] ExhaustPressure, IReadOnlyList<PipeTrace> Pipes);

/// <summary>The gas in a pipe over a cycle, one row per crank step, one column per cell.</summary>
/// <param name="Name">"runner 1", "primary 2", "tail".</param>
/// <param name="Intake">Whether it is on the inlet side.</param>
/// <param name="Cylinder">Place of the cylinder at whose valve it ends; −1 between junctions.</param>
/// <param name="Trunk">The pipe from whose junction it branches, towards the air; empty when there is none.</param>
/// <param name="Places">Middle of each cell from the end at which the flow comes in, m.</param>
/// <param name="Length">m.</param>
/// <param name="Pressure">Pa.</param>
/// <param name="Velocity">The way the engine breathes, m/s.</param>
public sealed record PipeTrace(string Name, bool Intake, int Cylinder, string Trunk, double[] Places, double Length, double[][] Pressure, double[][] Velocity)
{
    /// <summary>Pressure against crank angle at a place, Pa.</summary>
    /// <param name="place">Distance from the end at which the flow comes in, m; beyond an end, at that end.</param>
    public double[] At(double place) => [.. Pressure.Select(row => Table.Read(Places, row, place))];
}

/// <summary>Traces of one cylinder on the engine's crank angles.</summary>
/// <param name="FiringAngle">Crank angle of its firing top dead centre, degrees.</param>
/// <param name="Pressure">Pa.</param>
/// <param name="Volume">m³.</param>
/// <param name="Temperature">Mean gas temperature, K.</param>
/// <param name="UnburnedTemperature">Unburned zone, K; the mean outside the burn.</param>
/// <param name="BurnedTemperature">Burned zone, K; the mean outside the burn.</param>
/// <param name="BurnedFraction">Mass fraction in the burned zone.</param>
/// <param name="InletFlow">Flow into the cylinder through the inlet valves, kg/s.</param>
/// <param name="ExhaustFlow">Flow out of the cylinder through the exhaust valves, kg/s.</param>
/// <param name="WallHeat">Heat to the walls, W.</param>
/// <param name="InletPressure">Before the inlet valves: with pipes at the end of the runner, else of the port, Pa.</param>
/// <param name="ExhaustPressure">Behind the exhaust valves: with pipes at the begin of the primary, else of the collector, Pa.</param>
public sealed record CylinderTrace(
    double FiringAngle,
    double[] Pressure,
    double[] Volume,
    double[] Temperature,
    double[] UnburnedTemperature,
    double[] BurnedTemperature,
    double[] BurnedFraction,
    double[] InletFlow,
    double[] ExhaustFlow,
    double[] WallHeat,
    double[] InletPressure,
    double[] ExhaustPressure);
