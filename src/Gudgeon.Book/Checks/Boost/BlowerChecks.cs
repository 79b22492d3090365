using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Boost;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Boost;

/// <summary>What the checks of the supercharger share.</summary>
public abstract class BlowerCheck : Check
{
    public override string Family => "boost";

    public override IEnumerable<string> Instances(View view) => Kinds.Contains(view.WordOr(Blower.Kind, BlowerKinds.None)) ? [""] : [];

    /// <summary>Kinds of supercharger that it looks at.</summary>
    protected abstract IReadOnlyList<string> Kinds { get; }
}

/// <summary>Rotor speed of a crank-driven blower at the rev limit against what the maker allows.</summary>
public sealed class BlowerSpeedCheck : BlowerCheck
{
    public override string Id => "blower-speed";

    public override string Title => "Supercharger speed at the rev limit";

    public override string Source => "kinematics of the drive; limit by the maker of the blower";

    public override string Caution => "An impeller that bursts leaves its housing: stay under the maker's speed, guard belt and rotor, and stand out of their plane.";

    protected override IReadOnlyList<string> Kinds => [BlowerKinds.Centrifugal, BlowerKinds.Displacement];

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "rotor speed",
        view.Work(RotorSpeed.FromRatio, view.Amount(Engine.RevLimit), view.Amount(Blower.DriveRatio), view.AmountOr(Blower.StepUp, 1), view.AmountOr(Blower.BeltSlip, 0)),
        view.Amount(Blower.MaxSpeed),
        Dimension.RotationalSpeed,
        "rpm",
        "blower.maxSpeed");
}

/// <summary>Greatest speed of a turbocharger over the run against what its maker allows, or has measured.</summary>
public sealed class TurboSpeedCheck : BlowerCheck
{
    public override string Id => "turbo-speed";

    public override string Title => "Greatest speed of the turbocharger";

    public override string Source => "engine run, turbine and compressor doing the same work; limit by the maker, else the quickest line of the compressor's map: nobody has run it quicker and said so";

    public override string Caution => "A rotor that bursts leaves its housing, and a wastegate that sticks shut lets it: prove the wastegate before full load, and stand out of the plane of the rotor.";

    protected override IReadOnlyList<string> Kinds => [BlowerKinds.ExhaustDriven];

    public override Judgement Examine(View view, string index)
    {
        var (most, speed) = view.Duty()?.Most(f => f.Blower?.Speed ?? double.NaN) ?? (double.NaN, double.NaN);
        var given = view.AmountIf(Blower.MaxSpeed);
        var limit = given ?? view.Table(Blower.Map)?["speed"].Max() ?? double.NaN;
        return Judgement.AtMost("rotor speed", most, limit, Dimension.RotationalSpeed, "rpm", given is null ? "quickest line of blower.map" : "blower.maxSpeed") with { Remark = Motion.PeakPressureCheck.At(speed) };
    }
}

/// <summary>Least surge margin of the compressor over the run.</summary>
public sealed class SurgeMarginCheck : BlowerCheck
{
    public override string Id => "surge-margin";

    public override string Title => "Surge margin of the compressor";

    public override string Source => "engine run on the compressor map, pressure ratio and flow against the surge point of the same speed; 10 % left at every speed: common practice, no source";

    protected override IReadOnlyList<string> Kinds => [BlowerKinds.Centrifugal, BlowerKinds.ExhaustDriven];

    public override Judgement Examine(View view, string index)
    {
        var duty = view.Duty();
        var (least, speed) = BlowerDuty.Least(duty, b => b.SurgeMargin);
        return Judgement.AtLeast("one plus the surge margin", 1 + least, 1 + Allowed(view), Dimension.Number, "", "common practice, no source") with { Remark = Motion.PeakPressureCheck.At(speed) + Pulsing(duty) };
    }

    /// <summary>Least margin that is allowed.</summary>
    internal static double Allowed(View view) => view.Limit("surge-margin.min", Dimension.Number, "%", 0.10);

    /// <summary>The margin is that of the mean flow; the flow of few cylinders pulses past surge and back.</summary>
    private static string Pulsing(EngineDuty? duty)
    {
        var (share, speed) = duty?.Most(f => f.Blower?.BeyondSurge ?? 0) ?? (0, 0);
        return share > 0.1 ? $" (the pulsing flow lies beyond surge for {Figures.Number(100 * share, 2)} % of the cycle {Motion.PeakPressureCheck.At(speed)})" : "";
    }
}

/// <summary>Least choke margin of the compressor over the run.</summary>
public sealed class ChokeMarginCheck : BlowerCheck
{
    public override string Id => "choke-margin";

    public override string Title => "Choke margin of the compressor";

    public override string Source => "engine run on the compressor map; 5 % of the choke flow left at every speed: common practice, no source";

    protected override IReadOnlyList<string> Kinds => [BlowerKinds.Centrifugal, BlowerKinds.ExhaustDriven];

    public override Judgement Examine(View view, string index)
    {
        var (least, speed) = BlowerDuty.Least(view.Duty(), b => b.ChokeMargin);
        return Judgement.AtMost("flow over that at choke", 1 - least, 1 - Allowed(view), Dimension.Number, "", "common practice, no source") with { Remark = Motion.PeakPressureCheck.At(speed) };
    }

    /// <summary>Least margin that is allowed.</summary>
    internal static double Allowed(View view) => view.Limit("choke-margin.min", Dimension.Number, "%", 0.05);
}
