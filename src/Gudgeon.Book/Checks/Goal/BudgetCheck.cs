using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Goal;

/// <summary>What the parts cost against the budget.</summary>
public sealed class BudgetCheck : Check
{
    public override string Id => "budget";

    public override string Title => "Cost of the parts against the budget";

    public override string Family => "goal";

    public override string Source => "prices of the parts in the book, scrapped ones counted in; bolts of the joints are not";

    public override IEnumerable<string> Instances(View view) => view.Knows(Target.Budget) && NeededPart.Keys(view).Count > 0 ? [""] : [];

    public override Judgement Examine(View view, string index)
    {
        var cost = NeededPart.Keys(view).Sum(key => Price(view, key) * view.CountOr(Part.Quantity, 1, key));
        return Judgement.AtMost("cost of the parts", cost, view.Amount(Target.Budget), Dimension.Number, "", "target.budget") with { Remark = double.IsNaN(cost) ? "" : $"{Money.Written(cost)} in the shop's own money" };
    }

    /// <summary>What is bought has a price; what the shop makes or has may do without.</summary>
    private static double Price(View view, string key) =>
        view.WordOr(Part.Source, "", key) == Part.Bought ? view.Amount(Part.Price, key) : view.AmountOr(Part.Price, 0, key);
}
