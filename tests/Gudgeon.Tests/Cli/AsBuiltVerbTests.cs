using System.Text.RegularExpressions;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon book: the as-built book of the invented single, worked a little.</summary>
public sealed class AsBuiltVerbTests : IDisposable
{
    private static readonly Regex Head = new("<head>.*?</head>", RegexOptions.Singleline | RegexOptions.NonBacktracking);
    private static readonly Regex Tags = new("<[^>]*>", RegexOptions.NonBacktracking);
    private static readonly Regex Spaces = new(@"\s+", RegexOptions.NonBacktracking);
    private static readonly Regex Seal = new("Seal of the journal: [0-9a-f]{64}", RegexOptions.NonBacktracking);

    private readonly Workshop _workshop = new();

    public AsBuiltVerbTests()
    {
        _workshop.Unpack("wren");
        _workshop.Good("import", "wren.json", "wren.gudgeon");
        File.Delete(_workshop.At("wren.json"));
    }

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void TheBookNeedsNothingElseAndHoldsWhatWasDone()
    {
        _workshop.Good("measure", "cylinder[1].deckHeight", "0.31 mm ± 0.02 mm", "--with", "depth gauge", "--by", "Ada", "--on", "2026-11-28");
        _workshop.Good("jobs", "tick", "strip", "drain", "--by", "Ada", "--note", "clean oil");
        _workshop.Good("jobs", "leave-out", "frame", "--by", "Tom", "--because", "bench engine");
        _workshop.Good("sign", "as far as the deck", "--by", "Tom");
        var said = _workshop.Good("book", "wren.gudgeon", "--out", "wren.html");
        Assert.Matches(@"^wren\.html: \d+ readings, \d+ findings, 0 cards signed, \d+ open points\n$", said);
        var html = _workshop.Read("wren.html");
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.DoesNotMatch("(src|href)=\"(http|/|app)", html);
        var text = Text(html);
        Assert.Contains("0.31 mm ± 0.02 mm depth gauge Ada 2026-11-28", text, StringComparison.Ordinal);
        Assert.Contains("“as far as the deck” Tom", text, StringComparison.Ordinal);
        Assert.Contains("left out Tom: bench engine", text, StringComparison.Ordinal);
        Assert.Contains("Advice to a competent person", text, StringComparison.Ordinal);
        var seal = Seal.Match(text).Value[^64..];
        Assert.Contains($"the last is {seal}", _workshop.Good("verify"), StringComparison.Ordinal);
    }

    // Read by a person: what a scrutineer is handed.
    [Fact]
    public void ThePageForScrutineersReadsAsItWasRead()
    {
        _workshop.Good("book", "wren.gudgeon", "--out", "short.html", "--summary");
        var text = Text(_workshop.Read("short.html"));
        Assert.DoesNotContain("Open points", text, StringComparison.Ordinal);
        Assert.Contains("In short, for scrutineers cylinders 1 bore ", text, StringComparison.Ordinal);
        Assert.Matches("swept volume [0-9.]+ cm³ rev limit [0-9]+ rpm predicted power [0-9.]+ kW at [0-9]+ rpm, by the lumped model", text);
        Assert.EndsWith("the scrutineers have the last word. Seen by Day", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ABookIsNotWrittenOver()
    {
        var outcome = _workshop.Run("book", "wren.gudgeon", "--out", "wren.gudgeon");
        Assert.Equal((2, true), (outcome.Code, outcome.Error.Contains("is a book, and is not written over", StringComparison.Ordinal)));
        _workshop.Good("verify");
    }

    [Fact]
    public void WithoutABrowserTheHtmlStaysAndOneSentenceSaysSo()
    {
        var outcome = _workshop.RunWith("PATH", Path.GetDirectoryName(Environment.ProcessPath) ?? "", "book", "wren.gudgeon", "--out", "wren.html", "--pdf");
        Assert.Equal(2, outcome.Code);
        Assert.Contains("--pdf: no Chromium-family browser is installed here", outcome.Error, StringComparison.Ordinal);
        Assert.True(File.Exists(_workshop.At("wren.html")));
    }

    private static string Text(string html) => Spaces.Replace(System.Net.WebUtility.HtmlDecode(Tags.Replace(Head.Replace(html, " "), " ")), " ").Replace(" ,", ",", StringComparison.Ordinal).Trim();
}
