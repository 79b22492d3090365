using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>A check of the way of the air at the greatest flow of the run.</summary>
public abstract class AirCheck : DriveCheck
{
    public sealed override Judgement Examine(View view, string index)
    {
        var most = BlowerDuty.MostAir(view.Duty());
        return Judged(view, index, most?.Figures) with { Remark = Motion.PeakPressureCheck.At(most?.Speed ?? double.NaN) };
    }

    /// <summary>The verdict at a point of the run; null without a run.</summary>
    protected abstract Judgement Judged(View view, string index, PointFigures? figures);

    protected override bool Applies(View view) => view.Knows(AirFilter.Area);
}

/// <summary>Pressure that the air filter takes.</summary>
public sealed class FilterDropCheck : AirCheck
{
    public override string Id => "filter-drop";

    public override string Title => "Pressure drop of the air filter";

    public override string Source => "Darcy's and Forchheimer's law through the tested point (from memory) at the greatest flow of the run; 1.5 kPa clean and dry: common practice, no source";

    protected override Judgement Judged(View view, string index, PointFigures? figures)
    {
        var filter = new FittedFilter(view);
        return Judgement.AtMost("pressure drop", filter.Drop(FittedDuct.Flow(figures)), filter.DropAllowed(), Dimension.Pressure, "kPa", "common practice, no source");
    }
}

/// <summary>Area of the filter's medium against what the flow wants.</summary>
public sealed class FilterAreaCheck : AirCheck
{
    public override string Id => "filter-area";

    public override string Title => "Area of the air filter";

    public override string Source => "continuity at the greatest flow of the run; 1.5 m/s through oiled gauze or foam: common practice, no source";

    protected override Judgement Judged(View view, string index, PointFigures? figures) => Judgement.AtLeast(
        "area of the medium",
        view.Amount(AirFilter.Area),
        new FittedFilter(view).AreaForSpeed(FittedDuct.Flow(figures)),
        Dimension.Area,
        "cm²",
        "airFilter.faceSpeed, 1.5 m/s when left out");
}

/// <summary>Effective area of filter and inlet from their parts, against the one that the engine is run with.</summary>
public sealed class InletAreaCheck : AirCheck
{
    public override string Id => "inlet-area";

    public override string Title => "Effective area of filter and inlet from their parts";

    public override string Source => "drop of the filter and losses of the ducts before the blower as one nozzle, at the greatest flow of the run; wanted is what the run is made with";

    public override bool Gives => false;

    protected override Judgement Judged(View view, string index, PointFigures? figures) => Judgement.AtLeast(
        "effective area",
        new FittedFilter(view).EffectiveArea(figures),
        view.Amount(Intake.FilterArea),
        Dimension.Area,
        "mm²",
        "intake.filterArea");
}

/// <summary>Speed of the air in each duct.</summary>
public sealed class DuctSpeedCheck : AirCheck
{
    /// <summary>What a duct does when it comes off.</summary>
    internal const string Whips = "A hose that comes off under boost whips, and what comes from the blower scalds: beads on the pipes, clamps that the hose's maker names, nobody beside it while the engine pulls.";

    public override string Id => "duct-speed";

    public override string Title => "Air speed in a duct";

    public override string Source => "continuity at the greatest flow of the run, in the air that the run has there; 60 m/s before the blower and 80 m/s behind it: common practice, no source";

    public override string Caution => Whips;

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Any() ? Checks.Instances.Named(view, AirDuct.Subject) : [];

    protected override Judgement Judged(View view, string index, PointFigures? figures)
    {
        var duct = new FittedDuct(view, index);
        return Judgement.AtMost("air speed", duct.Speed(figures), duct.SpeedAllowed(), Dimension.Speed, "m/s", "common practice, no source");
    }

    protected override bool Applies(View view) => view.Indices(AirDuct.Subject).Count > 0;
}
