using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>Room between retainer and stem seal at full lift.</summary>
public sealed class RetainerSealCheck : SpringCheck
{
    public override string Id => "retainer-seal";

    public override string Title => "Retainer to stem seal at full lift";

    public override string Source => "room with the valve shut less full lift; 1.0 mm left over: common practice, no source";

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.Knows(Spring.RetainerToSeal, i));

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "room to the seal",
        view.Amount(Spring.RetainerToSeal, index) - view.Amount(Valve.Lift, index),
        view.Limit("retainer-seal.min", Dimension.Length, "mm", 1.0e-3),
        Dimension.Length,
        "mm",
        "common practice, no source");
}

/// <summary>Coil-bind margin read on the head against the one worked from the heights.</summary>
public sealed class CoilBindAgreementCheck : SpringCheck
{
    public override string Id => "coil-bind-agreement";

    public override string Title => "Coil-bind margin, read against worked";

    public override string Source => "both should be the same; within 0.4 mm, for three heights are read to a tenth or two: common practice, no source";

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.Knows(Spring.CoilBindMeasured, i));

    public override Judgement Examine(View view, string index)
    {
        var worked = new FittedSpring(view, index).CoilBindMargin();
        return Judgement.AtMost(
            "read and worked differ by",
            Math.Abs(view.Amount(Spring.CoilBindMeasured, index) - worked),
            view.Limit("coil-bind-agreement.apart", Dimension.Length, "mm", 0.4e-3),
            Dimension.Length,
            "mm",
            "common practice, no source");
    }
}

/// <summary>How far the seat loads of the valves of a side lie apart.</summary>
public sealed class SpringSpreadCheck : SpringCheck
{
    private const double UsualSpread = 0.05;

    public override string Id => "spring-spread";

    public override string Title => "Seat loads of a side, spread";

    public override string Source => "greatest less least over the mean; 5 %: common practice, no source";

    /// <summary>The sides whose valves the book tells apart.</summary>
    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => i.Contains('.', StringComparison.Ordinal)).Select(Side).Distinct();

    public override Judgement Examine(View view, string index)
    {
        var loads = base.Instances(view).Where(i => Side(i) == index).Select(i => new FittedSpring(view, i).Loads().Seat).ToList();
        return Judgement.AtMost("spread of the seat loads", (loads.Max() - loads.Min()) / loads.Average(), view.Limit("spring-spread.max", Dimension.Number, "%", UsualSpread), Dimension.Number, "%", "common practice, no source");
    }

    private static string Side(string index) => index.Split('.')[0];
}
