using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
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

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => IsStraight(view.TableIf(Spring.LoadTable, i)) && view.Knows(Spring.Wire, i));

    public override Judgement Examine(View view, string index)
    {
        var spring = new FittedSpring(view, index).Coils[0];
        var wire = spring.RateOfWire();
        var spread = view.Limit("spring-rate.spread", Dimension.Number, "%", UsualSpread);
        return Judgement.Between("tested rate", spring.Straight().Rate, wire * (1 - spread), wire * (1 + spread), Dimension.ForcePerLength, "N/mm", "rate by the wire, within the usual spread");
    }

    /// <summary>Whether the readings lie near a line: coils that touch one after the other have no one rate to hold to the wire's.</summary>
    private static bool IsStraight(Table? table)
    {
        if (table is not { Rows.Count: >= 2 })
        {
            return false;
        }

        var rows = table["height"].Zip(table["load"]).OrderByDescending(r => r.First).ToList();
        var slopes = rows.Zip(rows.Skip(1), (a, b) => (b.Second - a.Second) / (a.First - b.First)).ToList();
        return slopes.Max() <= (1 + UsualSpread) * slopes.Min();
    }
}
