namespace Gudgeon.Tests.Cli;

/// <summary>Squish of the Tern is gasket and deck height, 1.00 mm + 0.10 mm, held to 1 mm: figures that can be followed by hand.</summary>
public sealed class CheckVerb : IDisposable
{
    private readonly Workshop _workshop = new();

    public CheckVerb() => _workshop.Write("tern.json", Books.Tern);

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void AllHoldEndsWithZero() => Assert.Equal(
        """
        Squish clearance, cold [squish[1]]: holds
          squish clearance 1.1 mm, wanted at least 1 mm; reserve 1.1
          limit from: common practice, no source
          squish clearance: c = tg + h + hr
            (1.1 mm) = (1 mm) + (0.1 mm) + (0 mm)
            Geometry of the parts at top dead centre
          read:
            cylinder[1].deckHeight             0.10 mm (change decked, assumed) from cylinder.deckHeight
            cylinder[1].gasketThickness        1.00 mm (manual) from cylinder.gasketThickness
          taken as exact, since no ± is given: cylinder.deckHeight
          source: 1.0 mm with a steel rod: common practice, no source
          caution: A piston that touches the head breaks the rod: prove the clearance with solder or clay on both sides of the pin before the engine turns under its own power.

        """,
        _workshop.Good("check", "--explain", "squish[1]"));

    [Fact]
    public void FallingShortEndsWithOneWhateverElseIsNotKnown()
    {
        _workshop.Good("set", "cylinder[2].deckHeight", "-0.20 mm", "--change", "decked");
        var outcome = _workshop.Run("check", "--family", "chamber");
        Assert.Equal(1, outcome.Code);
        HasLine(outcome.Output, "  + squish[1] ", " holds              squish clearance 1.1 mm, wanted at least 1 mm; reserve 1.1");
        HasLine(outcome.Output, "  x squish[2] ", " falls short        squish clearance 0.8 mm, wanted at least 1 mm; reserve 0.8");
        Assert.Contains(", 1 falls short, ", outcome.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void TooCloseToTellEndsWithThreeAndNamesTheReading()
    {
        _workshop.Good("measure", "cylinder[2].deckHeight", "0.02 mm ± 0.05 mm", "--with", "dial gauge", "--by", "Ada");
        var outcome = _workshop.Run("check", "--explain", "squish[2]", "--monte-carlo", "2000");
        Assert.Equal(3, outcome.Code);
        Assert.StartsWith("Squish clearance, cold [squish[2]]: too close to tell", outcome.Output, StringComparison.Ordinal);
        Assert.Contains("measure cylinder[2].deckHeight more closely", outcome.Output, StringComparison.Ordinal);

        // Φ(0.02 / 0.025) = 0.788, from the table of the normal distribution.
        Assert.Contains("probability that it holds: 78.8 %", outcome.Output, StringComparison.Ordinal);

        // Four standard errors: 4 × 0.025 / √2000.
        var drawn = outcome.Output.Split("by draws: reserve ")[1].Split(',')[0];
        Assert.Equal(1.02, double.Parse(drawn, System.Globalization.CultureInfo.InvariantCulture), 0.0023);
    }

    [Fact]
    public void NotKnownYetEndsWithThreeAndNamesTheFields()
    {
        var outcome = _workshop.Run("check", "tern.json");
        Assert.Equal(3, outcome.Code);
        Assert.Contains("cylinder[1].bore", outcome.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", outcome.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("safe ", outcome.Output, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void JsonHasValueLimitAndReads()
    {
        var finding = _workshop.Run("check", "--explain", "squish[1]", "--json").Json[0];
        Assert.Equal("holds", finding.GetProperty("verdict").GetString());
        Assert.Equal(1.1, finding.GetProperty("value").GetDouble(), 1e-9);
        Assert.Equal(1.0, finding.GetProperty("lower").GetDouble(), 1e-9);
        Assert.Equal("mm", finding.GetProperty("unit").GetString());
        Assert.Equal(1.1, finding.GetProperty("reserve").GetDouble(), 1e-9);
        Assert.Equal(["cylinder.deckHeight", "cylinder.gasketThickness"], finding.GetProperty("reads").EnumerateArray().Select(r => r.GetProperty("source").GetString()).Order());
    }

    [Fact]
    public void ALimitOfOnesOwnTurnsTheVerdictAndIsShownWithItsReason()
    {
        Assert.Equal("limit squish.min is 1.2 mm, because long aluminium rods\n", _workshop.Good("limit", "squish.min", "1.2 mm", "--reason", "long aluminium rods"));
        var outcome = _workshop.Run("check", "--explain", "squish[1]", "--imperial");
        Assert.Equal(1, outcome.Code);
        Assert.Contains("squish clearance 0.04331 in, wanted at least 0.04724 in; reserve 0.917", outcome.Output, StringComparison.Ordinal);
        Assert.Contains("limit of one's own: squish.min is 1.2 mm, because long aluminium rods", outcome.Output, StringComparison.Ordinal);
    }

    /// <summary>0.10 mm off the deck is 0.10 mm off the squish; the deck was read before the change and must be read again.</summary>
    [Fact]
    public void ChangesSaysWhatAChangeDoesAndWhatToMeasureAgain()
    {
        _workshop.Good("change", "off", "decked");
        _workshop.Good("measure", "cylinder[1].deckHeight", "0.20 mm ± 0.02 mm", "--with", "dial gauge", "--by", "Ada");
        _workshop.Good("change", "on", "decked");
        var text = _workshop.Good("changes", "--change", "decked");
        Assert.StartsWith("decked: Deck skimmed\n", text, StringComparison.Ordinal);
        HasLine(text, "  v squish[1] (1 more like it) ", " 1.2 mm, holds (reserve 1.2) -> 1.1 mm, holds (reserve 1.1)");
        HasLine(text, "    cylinder.deckHeight ", "; dial gauge on a bridge over the pin axis");
        var change = _workshop.Run("changes", "--json").Json[0];
        Assert.Equal("decked", change.GetProperty("change").GetString());
        Assert.All(change.GetProperty("moves").EnumerateArray(), m => Assert.False(m.GetProperty("turned").GetBoolean()));
        Refusal.Holds(_workshop.Run("changes", "--change", "deckd"), "there is no change 'deckd'; the nearest is 'decked'");
    }

    [Fact]
    public void ListNamesTheChecksWithoutABook() =>
        Assert.Contains("  squish               Squish clearance, cold", _workshop.Good("check", "--list").Split('\n'));

    [Theory]
    [InlineData("--family|chambr", "there is no family of checks 'chambr'; there are balance, bearings, boost")]
    [InlineData("--explain|squash", "there is no check 'squash'; the nearest is 'squish'")]
    [InlineData("--explain|squish[3]", "there is no finding 'squish[3]'; there are squish[1], squish[2]")]
    [InlineData("--monte-carlo|0", "given '0', wanted a whole number of draws, at least 100")]
    [InlineData("--monte-carlo|-5", "wanted a whole number of draws")]
    [InlineData("--monte-carlo|many", "given 'many', wanted a whole number of draws")]
    [InlineData("--explain", "--explain: missing its id")]
    [InlineData("--explian|squish", "Unknown option 'explian'")]
    public void RefusesInOneSentence(string words, string sentence) => Refusal.Holds(_workshop.Run(["check", .. words.Split('|')]), sentence);

    private static void HasLine(string text, string start, string end) =>
        Assert.Contains(text.Split('\n'), l => l.StartsWith(start, StringComparison.Ordinal) && l.EndsWith(end, StringComparison.Ordinal));
}
