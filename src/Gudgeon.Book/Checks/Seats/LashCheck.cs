using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Seats;

/// <summary>Lash measured cold against what is allowed.</summary>
public sealed class LashCheck : Check
{
    public override string Id => "lash";

    public override string Title => "Valve lash, cold";

    public override string Family => "seats and lash";

    public override string Source => "limits by the maker of the cam";

    public override string Caution => "Measure cold, the lobe away from the follower, plugs out; turn twice by hand and measure again. A valve without lash is held open when hot and burns.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances
        .Valves(view, Valve.Lash.Subject)
        .Where(i => view.Knows(Valve.LashMin, i) || view.Knows(Valve.LashMax, i));

    public override Judgement Examine(View view, string index) => Judgement.Between(
        "lash", view.Amount(Valve.Lash, index), view.Amount(Valve.LashMin, index), view.Amount(Valve.LashMax, index), Dimension.Length, "mm", "valve.lashMin and valve.lashMax");
}
