namespace Gudgeon.Simulation.Sprint;

/// <summary>What holds the acceleration down at one moment.</summary>
public enum SprintLimit
{
    /// <summary>The torque that the engine has.</summary>
    Power,

    /// <summary>The torque that the clutch carries.</summary>
    Clutch,

    /// <summary>The grip of the rear tyre.</summary>
    Traction,

    /// <summary>The front wheel about to lift.</summary>
    Wheelie,

    /// <summary>No drive during a shift.</summary>
    Shift,

    /// <summary>The rev limit in the last gear.</summary>
    RevLimit,
}

/// <summary>A standing-start run, from the first movement.</summary>
/// <param name="Finished">Whether the run reached the end of the strip.</param>
/// <param name="Ending">How it ended, in one sentence.</param>
/// <param name="Distance">How far it came from the start beam, m.</param>
/// <param name="RolloutTime">Time from the first movement until the clock starts, s; the clock has not started when NaN.</param>
/// <param name="Splits">The distances passed, nearest first.</param>
/// <param name="Shifts">The shifts made.</param>
/// <param name="LimitTimes">Seconds from the first movement spent at each limit, by <see cref="SprintLimit"/>.</param>
/// <param name="Energy">Where the engine's work went.</param>
/// <param name="Trace">The whole run, moment by moment.</param>
public sealed record SprintResult(
    bool Finished,
    string Ending,
    double Distance,
    double RolloutTime,
    IReadOnlyList<SprintSplit> Splits,
    IReadOnlyList<SprintShift> Shifts,
    IReadOnlyDictionary<SprintLimit, double> LimitTimes,
    SprintEnergy Energy,
    IReadOnlyList<SprintPoint> Trace)
{
    /// <summary>The split at this distance from the start beam, m; null when the run did not pass it.</summary>
    public SprintSplit? At(double distance) => Splits.FirstOrDefault(s => Math.Abs(s.Distance - distance) < 1e-6);

    /// <summary>Seconds under each limit from the first movement to a distance, m.</summary>
    public IEnumerable<(SprintLimit Limit, double Seconds)> TimeUnder(double distance)
    {
        var until = Trace.TakeWhile(p => p.Distance <= distance).ToList();
        return until.Zip(until.Skip(1)).GroupBy(p => p.First.Limit).Select(g => (g.Key, g.Sum(p => p.Second.Time - p.First.Time)));
    }
}

/// <summary>One timed distance.</summary>
/// <param name="Name">What the strip calls it: "60 ft", "1/4 mile".</param>
/// <param name="Distance">Distance from the start beam, m.</param>
/// <param name="Time">Time since the clock started, s.</param>
/// <param name="Speed">Speed at that point, m/s.</param>
/// <param name="TrapSpeed">Mean speed over the last 66 ft, m/s, at the eighth, the quarter and the end of longer runs; NaN elsewhere.</param>
public sealed record SprintSplit(string Name, double Distance, double Time, double Speed, double TrapSpeed);

/// <summary>One shift.</summary>
/// <param name="From">Gear left, counted from 1.</param>
/// <param name="Time">When drive was cut, s since the clock started.</param>
/// <param name="Speed">Road speed then, m/s.</param>
/// <param name="EngineSpeedBefore">Engine speed when drive was cut, rad/s.</param>
/// <param name="EngineSpeedAfter">Engine speed when drive was back in the next gear, rad/s.</param>
public sealed record SprintShift(int From, double Time, double Speed, double EngineSpeedBefore, double EngineSpeedAfter);

/// <summary>One moment of the run.</summary>
/// <param name="Time">Time since the clock started, s; negative during roll-out.</param>
/// <param name="Distance">Distance from the start beam, m; negative during roll-out.</param>
/// <param name="Speed">Road speed, m/s.</param>
/// <param name="Acceleration">m/s².</param>
/// <param name="EngineSpeed">rad/s.</param>
/// <param name="EngineTorque">Torque the engine gives, N·m; less than its curve when another limit acts.</param>
/// <param name="FrontLoad">Load on the front tyre, N.</param>
/// <param name="RearLoad">Load on the rear tyre, N.</param>
/// <param name="Gear">Counted from 1; during a shift the gear to come.</param>
/// <param name="Limit">What holds the acceleration down.</param>
public readonly record struct SprintPoint(
    double Time,
    double Distance,
    double Speed,
    double Acceleration,
    double EngineSpeed,
    double EngineTorque,
    double FrontLoad,
    double RearLoad,
    int Gear,
    SprintLimit Limit);

/// <summary>Where the engine's work went, J.</summary>
/// <param name="EngineWork">Work of the engine's torque.</param>
/// <param name="Translation">Kinetic energy of machine and rider at the end.</param>
/// <param name="Rotation">Gain of kinetic energy of wheels and engine; the engine already turned at the start.</param>
/// <param name="Drag">Work against the air.</param>
/// <param name="Rolling">Work against rolling resistance.</param>
/// <param name="ClutchSlip">Heat in the clutch during the launch.</param>
/// <param name="Driveline">Losses between clutch and rear wheel.</param>
/// <param name="Shifts">Kinetic energy that the engine gives up to come down to the next gear's speed.</param>
public sealed record SprintEnergy(
    double EngineWork,
    double Translation,
    double Rotation,
    double Drag,
    double Rolling,
    double ClutchSlip,
    double Driveline,
    double Shifts)
{
    /// <summary>Work not accounted for, J; round-off and the error of integration.</summary>
    public double Unaccounted => EngineWork - Translation - Rotation - Drag - Rolling - ClutchSlip - Driveline - Shifts;
}
