using Gudgeon.Book.Checks;
using Gudgeon.Book.Limits;
using Gudgeon.Book.Tests.Demo;

namespace Gudgeon.Book.Tests.Limits;

/// <summary>What to do next follows from the findings alone.</summary>
public class NextStepTests
{
    private static readonly IReadOnlyList<Finding> All = DemoBooks.Heron.Findings;

    [Fact]
    public void What_falls_short_with_the_least_reserve_comes_first()
    {
        var worst = All.Where(f => f.Verdict == Verdict.FallsShort).OrderBy(f => f.Reserve).First();
        var next = NextStep.Of(All, null);
        Assert.Same(worst, next.Finding);
        Assert.Equal("clutch", worst.Id);
        Assert.StartsWith("clutch falls short with reserve 0.936", next.Sentence, StringComparison.Ordinal);
        Assert.Contains("wanted at most 284.5 N·m", next.Sentence, StringComparison.Ordinal);
        Assert.Contains("it rests on clutch.springLoad", next.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Then_what_is_too_close_to_tell_and_then_what_is_not_known()
    {
        var unknown = All.First(f => f.Verdict == Verdict.NotKnownYet);
        var holding = All.Where(f => f.Verdict == Verdict.Holds).ToList();
        var close = holding[0] with { Verdict = Verdict.TooCloseToTell };
        Assert.Same(close, NextStep.Of([.. holding, unknown, close], null).Finding);
        var next = NextStep.Of([.. holding, unknown], null);
        Assert.Same(unknown, next.Finding);
        Assert.Equal("bearing-clearance[bigEnd.2] is not known yet; wanted: bearing[bigEnd.2].housing", next.Sentence);
    }

    [Fact]
    public void When_all_holds_it_is_what_gives_first()
    {
        var holding = All.Where(f => f.Verdict == Verdict.Holds).ToList();
        Assert.Equal(new NextStep("every check holds", null), NextStep.Of(holding, null));
        var next = NextStep.Of(holding, Engines.Ladder);
        Assert.Same(Engines.Ladder.Rungs[0].Finding, next.Finding);
        Assert.Equal($"every check holds; the first to give is {Engines.Ladder.Rungs[0].Finding.Id}, which {Engines.Ladder.Words(Engines.Ladder.Rungs[0], imperial: false)}", next.Sentence);
    }
}
