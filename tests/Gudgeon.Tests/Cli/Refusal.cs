namespace Gudgeon.Tests.Cli;

/// <summary>How bad input is answered: one sentence on the error stream, exit code 2, no trace of the program's inside.</summary>
internal static class Refusal
{
    public static void Holds(Outcome outcome, string sentence)
    {
        Assert.Equal(2, outcome.Code);
        Assert.Empty(outcome.Output);
        var line = Assert.Single(outcome.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.StartsWith("gudgeon: ", line, StringComparison.Ordinal);
        Assert.Contains(sentence, line, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", line, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", line, StringComparison.Ordinal);
    }
}
