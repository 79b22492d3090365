using Gudgeon.Book.Checks;
using Gudgeon.Book.Tests.Demo;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>Findings that hold alike are told by one of them; none is lost.</summary>
public class AlikeTests
{
    private static readonly IReadOnlyList<Finding> All = DemoBooks.Heron.Findings;

    [Fact]
    public void Only_what_holds_is_folded_and_nothing_is_lost()
    {
        var folded = Alike.Fold(All, _ => true).ToList();
        Assert.True(folded.Count < All.Count);
        Assert.Equal(All.Select(f => f.Id).Order(StringComparer.Ordinal), folded.SelectMany(a => a.All).Select(f => f.Id).Order(StringComparer.Ordinal));
        Assert.All(folded.Where(a => a.All.Count > 1), a => Assert.All(a.All, f =>
        {
            Assert.Equal(Verdict.Holds, f.Verdict);
            Assert.Equal(a.Least.Check.Id, f.Check.Id);
            Assert.True(f.Reserve >= a.Least.Reserve);
        }));
    }

    [Fact]
    public void Nothing_is_folded_that_may_not_be() => Assert.Equal(All, Alike.Fold(All, _ => false).Select(a => Assert.Single(a.All)));
}
