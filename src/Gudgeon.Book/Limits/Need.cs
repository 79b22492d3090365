using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Boost;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Book.Limits;

/// <summary>One thing that the goal needs.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Now">As the engine stands, SI; NaN when it has no such thing.</param>
/// <param name="Needed">By the engine model, SI; NaN when it does not apply.</param>
/// <param name="Rule">By the rule of thumb, SI; NaN when there is none. Common practice, no source.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Unit">Display unit.</param>
public sealed record NeedLine(string Name, double Now, double Needed, double Rule, Dimension Dimension, string Unit);

/// <summary>What a goal needs of the engine.</summary>
/// <param name="Power">Power wanted, W.</param>
/// <param name="Lines">What it needs.</param>
/// <param name="Note">How it was solved, and why it cannot be reached when it cannot.</param>
/// <param name="Reached">Whether the engine reaches the power by the one value that was varied.</param>
public sealed record Need(double Power, IReadOnlyList<NeedLine> Lines, string Note, bool Reached);

/// <summary>Solves the engine model for the value that gives a wanted power, or a wanted quarter-mile time.</summary>
/// <param name="snapshot">The values that hold.</param>
/// <param name="desk">Where engine runs are made and kept.</param>
public sealed class NeedSolver(Snapshot snapshot, DutyDesk desk)
{
    private const double Close = 2e-5;
    private const double FarthestBlower = 2;
    private const double FarthestIdeal = 8;

    /// <summary>What this power needs.</summary>
    /// <exception cref="BadInputException">The engine cannot be run yet.</exception>
    public Need ForPower(double power)
    {
        var now = Run(null, 0);
        var view = new View(snapshot, desk);
        if (view.WordOr(Blower.Kind, BlowerKinds.None) == BlowerKinds.None)
        {
            return WithIdealBlower(now, power, view);
        }

        if (BoostSetting.Field(view) is not { } field)
        {
            return WithNothingToSet(now, power, view);
        }

        var fitted = view.Amount(field);
        var (value, duty, peaked) = Solve(power, fitted, FarthestBlower, x => Run(field, x));
        var reached = Reached(duty, power);
        return new Need(power, Lines(view, now, duty, power, (field, fitted, value)), Note(field, value, duty, reached, peaked) + Beyond(view, duty), reached);
    }

    /// <summary>What this quarter-mile time needs; when grip, wheelie, clutch or gearing make it impossible, the best time and why.</summary>
    /// <exception cref="BadInputException">Something is missing.</exception>
    public Need ForQuarter(double time)
    {
        var view = new View(snapshot, desk);
        var spec = Demand.Strip(view, StripLength.QuarterMile);
        var scale = StandingStart.TorqueScaleFor(spec, time);
        var now = view.Duty()!;
        return scale.Possible
            ? ForPower(scale.Scale * now.Power.Value)
            : new Need(
                now.Power.Value,
                [new("quarter-mile time", StandingStart.Run(spec).At(StripLength.QuarterMile)?.Time ?? double.NaN, scale.BestTime, double.NaN, Dimension.Time, "s")],
                $"a quarter mile in {Target.QuarterTime.Print(time)} cannot be had by power: with any amount of it the best is {Target.QuarterTime.Print(Math.Round(scale.BestTime, 3))}, held back chiefly by {EnumWords.Of(scale.ChiefLimit.ToString())}",
                false);
    }

    private static string Note(Field field, double value, EngineDuty duty, bool reached, bool peaked)
    {
        var given = Target.Power.Print(duty.Power.Value);
        return (field == Blower.DriveRatio, reached) switch
        {
            (true, true) => "found by running the engine model with other drive ratios",
            (false, true) => "found by running the engine model with other opening pressures of the wastegate",
            (true, false) => $"not reached: {(peaked ? "this blower gives no more than about" : "at twice the drive ratio that is fitted it gives")} {given}, at a drive ratio of {Figures.Number(value, 4)}",
            (false, false) => $"not reached: with the wastegate opening at {Figures.Print(value, field.Dimension, field.Unit, 3)} this turbocharger gives {(peaked ? "no more than about " : "")}{given}",
        };
    }

    private static bool Reached(EngineDuty duty, double power) => Math.Abs((duty.Power.Value / power) - 1) < 2 * Close;

    /// <summary>Says when the answer lies where the makers' data end.</summary>
    private static string Beyond(View view, EngineDuty duty)
    {
        var outside = duty.Figures.Any(p => p.Figures.Blower?.Extrapolated == true) ? "; the compressor runs outside its map there" : "";
        var fast = view.AmountIf(Blower.MaxSpeed) is { } most && FastestBlower(duty) > most ? $"; its speed passes the {Blower.MaxSpeed.Print(most)} that the maker allows" : "";
        return outside + fast;
    }

    private static double FastestBlower(EngineDuty duty) => duty.Most(f => f.Blower?.Speed ?? double.NaN).Value;

    /// <summary>The engine with another value of a field; as it stands when that is null.</summary>
    private EngineDuty Run(Field? field, double value)
    {
        var source = field is null ? null : snapshot.Find(new FieldAddress(field, ""))?.Source;
        var nudge = source is not null ? new Dictionary<string, double>(StringComparer.Ordinal) { [source] = value } : null;
        var view = new View(snapshot, desk, nudge);
        return view.Duty() ?? throw new BadInputException(field is null || view.Trace.Missing.Any()
            ? $"the engine cannot be run; wanted: {Wanted.Words(view.Trace.Missing)}"
            : $"the engine run does not settle with {field.Path} at {Figures.Print(value, field.Dimension, field.Unit, 3)}, on the way to this power");
    }

    /// <summary>
    /// Regula falsi with the Illinois step on the power. When the power is not bracketed, the most that was seen, and
    /// whether the power had peaked there or was still rising at <paramref name="farthest"/> times the start.
    /// </summary>
    private static (double Value, EngineDuty Duty, bool Peaked) Solve(double power, double start, double farthest, Func<double, EngineDuty> run)
    {
        var (low, high) = (start, start);
        var lowDuty = run(start);
        var highDuty = lowDuty;
        while (lowDuty.Power.Value > power && low > 0.2 * start)
        {
            (high, highDuty) = (low, lowDuty);
            low *= 0.8;
            lowDuty = run(low);
        }

        while (highDuty.Power.Value < power && high < farthest * start)
        {
            var next = run(high * 1.1);
            if (next.Power.Value <= highDuty.Power.Value)
            {
                return (high, highDuty, true);
            }

            (low, lowDuty) = (high, highDuty);
            (high, highDuty) = (high * 1.1, next);
        }

        var (fLow, fHigh) = (lowDuty.Power.Value - power, highDuty.Power.Value - power);
        if (fLow > 0 || fHigh < 0)
        {
            return fLow > 0 ? (low, lowDuty, false) : (high, highDuty, false);
        }

        for (var i = 0; i < 20 && high > low && fHigh > fLow; i++)
        {
            var x = low - (fLow * (high - low) / (fHigh - fLow));
            var duty = run(x);
            var f = duty.Power.Value - power;
            if (Math.Abs(f) < Close * power)
            {
                return (x, duty, false);
            }

            (low, fLow, high, fHigh) = f < 0 ? (x, f, high, fHigh / 2) : (low, fLow / 2, x, f);
        }

        return (high, highDuty, false);
    }

    /// <summary>An engine without a blower is asked through an ideal one: no losses, cooled to the air of the day.</summary>
    private static Need WithIdealBlower(EngineDuty now, double power, View view)
    {
        if (power <= now.Power.Value)
        {
            return new Need(power, LinesWithout(view, now, now, power), "the engine gives this as it stands", true);
        }

        var speeds = now.Points.Select(p => p.Speed).ToList();
        var (_, duty, peaked) = Solve(power, 1.0, FarthestIdeal, x => new EngineDuty(EngineRun.Run(WithIdeal(now.Spec, x), speeds, now), now.Ambient, now.Spec) is var run && run.Points.All(p => p.Converged)
            ? run
            : throw new BadInputException("the engine run with an ideal blower did not settle"));
        var reached = Reached(duty, power);
        return new Need(
            power,
            LinesWithout(view, now, duty, power),
            reached ? "this engine has no blower: found by running the model with an ideal cooled one, so a real one needs more" : $"{(peaked ? "even an ideal blower gives no more than about" : "an ideal blower, tried this far, gives")} {Target.Power.Print(duty.Power.Value)}",
            false);
    }

    /// <summary>A turbocharger without a wastegate gives what it gives.</summary>
    private static Need WithNothingToSet(EngineDuty now, double power, View view) => power <= now.Power.Value
        ? new Need(power, LinesWithout(view, now, now, power), "the engine gives this as it stands", true)
        : new Need(power, LinesWithout(view, now, now, power), $"not reached: this turbocharger has no wastegate to set its boost by, and gives {Target.Power.Print(now.Power.Value)}", false);

    private static EngineSpec WithIdeal(EngineSpec spec, double ratio)
    {
        var swept = spec.Cylinders.Sum(c => Math.PI / 4 * c.Bore * c.Bore * c.Stroke);
        return spec with
        {
            Intake = spec.Intake with
            {
                Induction = new PositiveDisplacementInduction { DriveRatio = ratio, Displacement = swept / 2, MechanicalEfficiency = 1, Efficiency = 1, InternalCompression = 1 },
                Cooler = new Simulation.Engine.ChargeCooler { Effectiveness = 1, CoolantTemperature = spec.Ambient.Temperature, EffectiveArea = 4 * spec.Intake.ThrottleArea },
            },
        };
    }

    private static IReadOnlyList<NeedLine> Lines(View view, EngineDuty now, EngineDuty need, double power, (Field Field, double Fitted, double Wanted) set)
    {
        var at = At(need);
        var before = At(now);
        var ruleBoost = RuleOfThumb(view, need, power).ManifoldPressure - need.Ambient.Pressure;
        var ruleRatio = set.Fitted * Math.Sqrt(Math.Max(ruleBoost, 0) / Math.Max(before.Boost, 1));
        var turbo = set.Field == Wastegate.OpeningPressure;
        return
        [
            .. Common(view, now, need, power),
            turbo
                ? new(set.Field.Label.ToLowerInvariant(), set.Fitted, set.Wanted, double.NaN, set.Field.Dimension, set.Field.Unit)
                : new("drive ratio", set.Fitted, set.Wanted, ruleRatio, Dimension.Number, ""),
            new(turbo ? "greatest speed of the turbocharger" : "supercharger speed at the rev limit", FastestBlower(now), FastestBlower(need), double.NaN, Dimension.RotationalSpeed, "rpm"),
            new("pressure ratio", before.Blower?.PressureRatio ?? double.NaN, at.Blower?.PressureRatio ?? double.NaN, double.NaN, Dimension.Number, ""),
            turbo
                ? new("exhaust back-pressure before the turbine", before.ExhaustBackPressure, at.ExhaustBackPressure, double.NaN, Dimension.Pressure, "bar")
                : new("drive power", before.Blower?.DrivePower ?? double.NaN, at.Blower?.DrivePower ?? double.NaN, double.NaN, Dimension.Power, "kW"),
        ];
    }

    private static IReadOnlyList<NeedLine> LinesWithout(View view, EngineDuty now, EngineDuty need, double power) => [.. Common(view, now, need, power)];

    private static IEnumerable<NeedLine> Common(View view, EngineDuty now, EngineDuty need, double power)
    {
        var (before, at, rule) = (At(now), At(need), RuleOfThumb(view, need, power));
        var injectors = view.CountOr(FuelSystem.Injectors, need.Spec.Cylinders.Count);
        var duty = view.AmountOr(FuelSystem.InjectorDutyMax, 0.85);
        var ruleFuel = power * RuleConsumption(need);
        yield return new("power", now.Power.Value, need.Power.Value, power, Dimension.Power, "kW");
        yield return new("at engine speed", now.Power.Speed, need.Power.Speed, double.NaN, Dimension.RotationalSpeed, "rpm");
        yield return new("air flow", before.AirFlow, at.AirFlow, rule.AirFlow, Dimension.MassFlow, "g/s");
        yield return new("boost", before.Boost, at.Boost, rule.ManifoldPressure - need.Ambient.Pressure, Dimension.Pressure, "bar");
        yield return new("charge temperature", before.ChargeTemperature, at.ChargeTemperature, double.NaN, Dimension.Temperature, "°C");
        yield return new("fuel flow", before.FuelFlow, at.FuelFlow, ruleFuel, Dimension.MassFlow, "g/s");
        yield return new($"flow of each injector held open, {injectors} in all", view.AmountIf(FuelSystem.InjectorFlow) ?? double.NaN, at.FuelFlow / injectors / duty, ruleFuel / injectors / duty, Dimension.MassFlow, "g/s");
        yield return new("peak cylinder pressure", now.PeakPressure.Value, need.PeakPressure.Value, double.NaN, Dimension.Pressure, "bar");
        yield return new("knock integral (1 is the onset)", now.Most(f => f.KnockIntegral).Value, need.Most(f => f.KnockIntegral).Value, double.NaN, Dimension.Number, "");
    }

    private static PointFigures At(EngineDuty duty) => duty.Points.Select(p => p.Figures!).MaxBy(f => f.Power)!;

    /// <summary>300 g/kWh of petrol, other fuels by their heating value. Common practice, no source.</summary>
    private static double RuleConsumption(EngineDuty duty) => 300e-3 / 3.6e6 * 43.4e6 / duty.Spec.Fuel.HeatingValue;

    private static BoostGoal RuleOfThumb(View view, EngineDuty duty, double power) => view.Work(
        AirDemand.ForPower,
        power,
        RuleConsumption(duty),
        duty.Spec.Lambda * duty.Spec.Fuel.StoichiometricAirFuelRatio(),
        duty.Spec.Cylinders.Sum(c => Math.PI / 4 * c.Bore * c.Bore * c.Stroke),
        duty.Power.Speed,
        At(duty).ChargeTemperature,
        1.0,
        2);
}
