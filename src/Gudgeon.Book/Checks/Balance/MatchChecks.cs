using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Balance;

/// <summary>Spread of the rods' masses: whole, at the small ends, at the big ends.</summary>
public sealed class RodMatchCheck : Check
{
    public override string Id => "rod-match";

    public override string Title => "Rods matched by mass";

    public override string Family => "balance";

    public override string Source => "heaviest less lightest, the greatest of whole rod, small ends and big ends; 2 g: common practice, no source";

    public override IEnumerable<string> Instances(View view) => Matched.Weighed(view, Rod.Mass.Subject);

    public override Judgement Examine(View view, string index)
    {
        var cylinders = Checks.Instances.Cylinders(view).ToList();
        double[] spreads = [Matched.Spread(cylinders, c => view.Amount(Rod.Mass, c)), Matched.Spread(cylinders, c => RodWeights.SmallEnd(view, c)), Matched.Spread(cylinders, c => RodWeights.BigEnd(view, c))];
        var worst = Enumerable.Range(0, spreads.Length).MaxBy(i => spreads[i]);
        return Judgement.AtMost("spread of the rods", spreads.Max(), view.Limit("rod-match.max", Dimension.Mass, "g", 2e-3), Dimension.Mass, "g", "common practice, no source") with
        {
            Remark = $"of the {(worst == 0 ? "whole rods" : worst == 1 ? "small ends" : "big ends")}",
        };
    }
}

/// <summary>Spread of the pistons' masses.</summary>
public sealed class PistonMatchCheck : Check
{
    public override string Id => "piston-match";

    public override string Title => "Pistons matched by mass";

    public override string Family => "balance";

    public override string Source => "heaviest less lightest, with pin, clips and rings; 1 g: common practice, no source";

    public override IEnumerable<string> Instances(View view) => Matched.Weighed(view, Piston.Mass.Subject);

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "spread of the pistons",
        Matched.Spread([.. Checks.Instances.Cylinders(view)], c => view.Amount(Piston.Mass, c)),
        view.Limit("piston-match.max", Dimension.Mass, "g", 1e-3),
        Dimension.Mass,
        "g",
        "common practice, no source");
}

/// <summary>Both ends of a rod on the scale come to its mass.</summary>
public sealed class RodWeighingCheck : Check
{
    public override string Id => "rod-weighing";

    public override string Title => "Both ends of the rod come to its mass";

    public override string Family => "balance";

    public override string Source => "statics of a beam on two supports; 1 g: common practice, no source";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view).Where(c => c.Length > 0 && view.Knows(Rod.BigEndMass, c));

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "both readings against the rod's mass",
        Math.Abs(RodWeights.Left(view, index)),
        view.Limit("rod-weighing.max", Dimension.Mass, "g", 1e-3),
        Dimension.Mass,
        "g",
        "common practice, no source");
}

/// <summary>Parts of the cylinders held against each other.</summary>
internal static class Matched
{
    /// <summary>The engine as a whole where it has several cylinders and the book tells their parts apart.</summary>
    public static IEnumerable<string> Weighed(View view, Subject subject) =>
        view.CountOr(Engine.Cylinders, 0) > 1 && view.Indices(subject).Any(i => i.Length > 0) ? [""] : [];

    /// <summary>Greatest less least.</summary>
    public static double Spread(IReadOnlyList<string> cylinders, Func<string, double> mass)
    {
        var masses = cylinders.Select(mass).ToList();
        return masses.Exists(double.IsNaN) ? double.NaN : masses.Max() - masses.Min();
    }
}
