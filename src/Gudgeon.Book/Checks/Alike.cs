namespace Gudgeon.Book.Checks;

/// <summary>Findings of one check that hold alike, told by the one with the least reserve; any other finding stands alone.</summary>
/// <param name="Least">The one with the least reserve.</param>
/// <param name="All">All of them, in their order.</param>
public sealed record Alike(Finding Least, IReadOnlyList<Finding> All)
{
    /// <summary>Folds findings together, in their order.</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="may">Whether one that holds may be folded.</param>
    public static IEnumerable<Alike> Fold(IEnumerable<Finding> findings, Func<Finding, bool> may) => findings
        .GroupBy(f => (f.Check.Id, Own: f.Verdict == Verdict.Holds && may(f) ? "" : f.Id))
        .Select(g => new Alike(g.MinBy(f => f.Reserve)!, [.. g]));
}
