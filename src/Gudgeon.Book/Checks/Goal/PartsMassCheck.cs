using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Goal;

/// <summary>What the parts weigh together against the target.</summary>
public sealed class PartsMassCheck : Check
{
    public override string Id => "parts-mass";

    public override string Title => "Mass of the parts against the target";

    public override string Family => "goal";

    public override string Source => "masses of the parts in the book that are not scrapped";

    public override IEnumerable<string> Instances(View view) => view.Knows(Target.Mass) && NeededPart.Keys(view).Count > 0 ? [""] : [];

    public override Judgement Examine(View view, string index)
    {
        var kept = NeededPart.Keys(view).Where(key => view.WordOr(Part.State, "", key) != Part.Scrapped);
        return Judgement.AtMost("mass of the parts", kept.Sum(key => view.Amount(Part.Mass, key) * view.CountOr(Part.Quantity, 1, key)), view.Amount(Target.Mass), Dimension.Mass, "kg", "target.mass");
    }
}
