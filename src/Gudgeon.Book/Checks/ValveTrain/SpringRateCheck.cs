using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Springs;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>
/// Rate by the spring tester against the rate that the wire ought to have: a coil miscounted, a dead coil more, or a load
/// read in another unit shows here first.
/// </summary>
public sealed class SpringRateCheck : SpringCheck
{
    private const double UsualSpread = 0.10;

    public override string Id => "spring-rate";

    public override string Title => "Valve spring rate, tested against the wire";

    public override string Source => "EN 13906-1:2013 for the wire; within 10 %, since active coils are hard to count: common practice, no source";

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.TableIf(Spring.LoadTable, i) is { Rows.Count: >= 2 } && view.Knows(Spring.Wire, i));

    public override Judgement Examine(View view, string index)
    {
        var wire = FittedSpring.RateOfWire(view, index);
        var spread = view.Limit("spring-rate.spread", Dimension.Number, "%", UsualSpread);
        return Judgement.Between("tested rate", FittedSpring.Tested(view, index).Rate, wire * (1 - spread), wire * (1 + spread), Dimension.ForcePerLength, "N/mm", "rate by the wire, within the usual spread");
    }
}
