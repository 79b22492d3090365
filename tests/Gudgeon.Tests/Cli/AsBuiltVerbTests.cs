using System.Text.RegularExpressions;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon book: the as-built book of the invented single, worked a little.</summary>
public sealed class AsBuiltVerbTests : IDisposable
{
    private static readonly Regex Head = new("<head>.*?</head>", RegexOptions.Singleline | RegexOptions.NonBacktracking);
    private static readonly Regex Tags = new("<[^>]*>", RegexOptions.NonBacktracking);
    private static readonly Regex Spaces = new(@"\s+", RegexOptions.NonBacktracking);
    private static readonly Regex RowEnds = new("</(tr|p|h[1-4]|li|section|div|caption)>", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture);
    private static readonly Regex CellEnds = new("</(td|th|dt)>", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture);
    private static readonly Regex Moments = new(@"[0-9]{4}-[0-9]{2}-[0-9]{2} [0-9]{2}:[0-9]{2}( UTC)?", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture);
    private static readonly Regex Seal = new("Seal of the journal: [0-9a-f]{64}", RegexOptions.NonBacktracking);

    /// <summary>A picture of one dot.</summary>
    internal static readonly byte[] Picture = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

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

    // The whole book was read by a person, line by line; read what differs before it is written anew from build/as-built.txt.
    [Fact]
    public void TheWholeBookReadsAsItWasRead()
    {
        File.WriteAllBytes(_workshop.At("plate.png"), Picture);
        foreach (var words in Work)
        {
            _workshop.Good(words);
        }

        Tighten(stages: 2);
        _workshop.Good("book", "wren.gudgeon", "--out", "wren.html");
        var lines = Lines(_workshop.Read("wren.html"));
        var actual = Path.Combine(Path.GetTempPath(), "as-built.txt");
        File.WriteAllLines(actual, lines);
        Assert.Equal(File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Cli", "wren-as-built.txt")), lines);
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

    /// <summary>What was done to the engine before its book is made.</summary>
    private static readonly string[][] Work =
    [
        ["set", "instrument[mic-75-100].kind", "micrometer", "--by", "Ines"],
        ["set", "instrument[mic-75-100].error", "0.004 mm", "--by", "Ines"],
        ["measure", "piston[1].diameter", "91.929 mm", "--with", "mic-75-100", "--by", "Ines", "--on", "2026-11-27"],
        ["set", "part[barrel].source", "modified", "--by", "Ines"],
        ["set", "part[barrel].state", "here", "--by", "Ines"],
        ["set", "part[barrel].serial", "B-07", "--by", "Ines"],
        ["limit", "squish.min", "1.05 mm", "--reason", "steel rod, seen at the last strip", "--by", "Ines"],
        ["jobs", "tick", "strip", "before", "--photo", "plate.png", "--by", "Tom"],
        ["jobs", "tick", "head", "faces", "--by", "Tom"],
        ["jobs", "tick", "head", "gasket", "--value", "bag 12", "--by", "Tom"],
        ["jobs", "leave-out", "frame", "--because", "bench engine", "--by", "Tom"],
        ["sign", "as far as the head", "--by", "Tom"],
    ];

    /// <summary>The first rounds of the head's plan, bolt by bolt.</summary>
    private void Tighten(int stages)
    {
        var steps = _workshop.Run("jobs", "card", "head", "--json").Json.GetProperty("steps").EnumerateArray();
        foreach (var stage in steps.First(s => s.GetProperty("key").GetString() == "tighten").GetProperty("stages").EnumerateArray().Take(stages))
        {
            foreach (var bolt in stage.GetProperty("bolts").EnumerateArray())
            {
                _workshop.Good("jobs", "tick", "head", bolt.GetProperty("key").GetString()!, "--with", "wrench 60", "--value", stage.GetProperty("what").GetString()![3..], "--by", "Tom");
            }
        }
    }

    /// <summary>The words of a page, row by row, without what is of the day.</summary>
    private static List<string> Lines(string html)
    {
        var rows = RowEnds.Replace(CellEnds.Replace(Spaces.Replace(Head.Replace(html, ""), " "), " | "), "\n");
        var today = DateTime.Now.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        return [.. rows.Split('\n').Select(r => Spaces.Replace(System.Net.WebUtility.HtmlDecode(Tags.Replace(r, " ")), " ").Trim(' ', '|')).Where(r => r.Length > 0)
            .Select(r => Seal.Replace(Moments.Replace(r, "(then)"), "Seal of the journal: (seal)").Replace(today, "(today)", StringComparison.Ordinal))];
    }

    private static string Text(string html) => Spaces.Replace(System.Net.WebUtility.HtmlDecode(Tags.Replace(Head.Replace(html, " "), " ")), " ").Replace(" ,", ",", StringComparison.Ordinal).Trim();
}
