namespace Gudgeon.Tests.Cli;

/// <summary>What a person at a terminal takes for granted.</summary>
public sealed class TerminalManners : IDisposable
{
    private readonly Workshop _workshop = new();

    public void Dispose() => _workshop.Dispose();

    public static TheoryData<string> Verbs => ["", "work", "demo", "fields", "schema", "new", "show", "set", "measure", "instruments", "measuring-plan", "change", "change add", "change on", "change off", "change list", "limit", "check", "run", "sprint", "gives", "changes", "need", "head", "head flow", "head cams", "head clearance", "head springs", "head motion", "head lash", "head seats"];

    [Theory]
    [MemberData(nameof(Verbs))]
    public void EveryVerbExplainsItself(string verb)
    {
        var lines = _workshop.Good([.. verb.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--help"]).Split('\n');
        Assert.Contains("USAGE:", lines);

        // An option or argument without words after it stands alone on its line.
        Assert.DoesNotContain(lines, l => l.TrimStart().StartsWith("--", StringComparison.Ordinal) && l.Trim().Split("  ", StringSplitOptions.RemoveEmptyEntries).Length < 2);
        Assert.All(lines, l => Assert.True(l.Length <= 80, l));
    }

    [Fact]
    public void TheHelpListsEveryVerb()
    {
        var help = _workshop.Good("--help").Split('\n');
        Assert.All(Verbs.Select(v => v.Data).Where(v => v.Length > 0 && !v.Contains(' ')), v => Assert.Contains(help, l => l.StartsWith($"    {v} ", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("chek", "there is no verb 'chek'; the nearest is 'check'")]
    [InlineData("", "there is no verb ''")]
    [InlineData("--bogus", "Unexpected option 'bogus'")]
    public void AnUnknownVerbNamesTheNearest(string word, string sentence) => Refusal.Holds(_workshop.Run(word), sentence);

    [Theory]
    [InlineData("de_DE.UTF-8")]
    [InlineData("fr_FR.UTF-8")]
    public void ACommaCountrySeesTheSameNumbers(string language)
    {
        string[] call = ["work", "helical spring rate", "wire=4.25mm", "meanDiameter=25.5 mm", "activeCoils=6.5"];
        var there = _workshop.RunWith("LC_ALL", language, call);
        Assert.Equal(0, there.Code);
        Assert.Equal(_workshop.Good(call), there.Output);
        _workshop.Write("tern.json", Books.Tern);
        Assert.Equal("cylinder.bore is 94.25 mm (assumed)\n", _workshop.RunWith("LC_ALL", language, "set", "cylinder.bore", "94.25 mm").Output);
        Assert.Contains("\"94.25 mm\"", _workshop.Read("tern.json"), StringComparison.Ordinal);
    }

    [Fact]
    public void AReaderThatLeavesEarlyIsNoFault()
    {
        Assert.SkipUnless(Workshop.HasShell, "wants a shell");
        var outcome = _workshop.Shell("$G work --list | head -n 1");
        Assert.Equal("Bearings\n", outcome.Output);
        Assert.Empty(outcome.Error);
    }

    [Theory]
    [InlineData("run heron.json --step 5rpm")]
    [InlineData("gives heron.json")]
    public void StoppedAtTheKeyboardEndsWithOneLine(string words)
    {
        Assert.SkipUnless(Workshop.HasShell, "wants signals");
        _workshop.Unpack("heron");
        var before = _workshop.Read("heron.json");

        // A shell hides the signal from what it starts in the background; env lays it open again.
        var outcome = _workshop.Shell($"env --default-signal=INT $G {words} & sleep 2; kill -INT $!; wait $!");
        Assert.Equal((130, "gudgeon: stopped; nothing was changed\n", ""), (outcome.Code, outcome.Error, outcome.Output));
        Assert.Equal(before, _workshop.Read("heron.json"));
    }
}
