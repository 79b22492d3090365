using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;

namespace Gudgeon.Book.Checks.Motion;

/// <summary>Top ring end gap against what bore and duty ask for.</summary>
public sealed class TopRingGapCheck : Check
{
    public override string Id => "ring-gap-top";

    public override string Title => "Top ring end gap";

    public override string Family => "moving parts";

    public override string Source => "gap factor by duty as ring makers publish it; the maker of the rings in hand has the last word";

    public override string Caution => "A gap that closes when hot scuffs the bore and can seize the engine: file in small steps, ring squared in its own bore.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index)
    {
        var wanted = view.Choice<RingService>(Piston.RingService, index) is { } service ? view.Work(RingGap.Top, view.Amount(Cylinder.Bore, index), service) : double.NaN;
        return Judgement.AtLeast("top ring end gap", view.Amount(Piston.TopRingGap, index), view.Limit("ring-gap-top.min", Dimension.Length, "mm", wanted), Dimension.Length, "mm", "ring makers' factor for the duty");
    }
}

/// <summary>Second ring end gap against what bore and duty ask for.</summary>
public sealed class SecondRingGapCheck : Check
{
    public override string Id => "ring-gap-second";

    public override string Title => "Second ring end gap";

    public override string Family => "moving parts";

    public override string Source => "gap factor by duty as ring makers publish it; the maker of the rings in hand has the last word";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index)
    {
        var wanted = view.Choice<RingService>(Piston.RingService, index) is { } service ? view.Work(RingGap.Second, view.Amount(Cylinder.Bore, index), service) : double.NaN;
        return Judgement.AtLeast("second ring end gap", view.Amount(Piston.SecondRingGap, index), view.Limit("ring-gap-second.min", Dimension.Length, "mm", wanted), Dimension.Length, "mm", "ring makers' factor for the duty");
    }
}
