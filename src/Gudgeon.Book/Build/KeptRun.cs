using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Build;

/// <summary>What a kept run is of.</summary>
public enum RunKind
{
    /// <summary>The engine at full load over its speeds.</summary>
    Engine,

    /// <summary>A standing start.</summary>
    Sprint,
}

/// <summary>A run that somebody wanted kept: its figures, and what they came from.</summary>
public sealed record KeptRun
{
    /// <summary>What it is of.</summary>
    public required RunKind Kind { get; init; }

    /// <summary>The depth of the engine model that it came from.</summary>
    public Depth Depth { get; init; }

    /// <summary>Why it is kept, in words.</summary>
    public required string Title { get; init; }

    /// <summary>Who kept it.</summary>
    public string By { get; init; } = "";

    /// <summary>When, as written.</summary>
    public string On { get; init; } = "";

    /// <summary>Version of the program that made it.</summary>
    public required string Version { get; init; }

    /// <summary>Ids of the changes that were on.</summary>
    public IReadOnlyList<string> Changes { get; init; } = [];

    /// <summary>Values laid over the book for this run only, as written, by path.</summary>
    public IReadOnlyDictionary<string, string> Given { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Paths of the fields that it asked the book for, known or not, in order.</summary>
    public required IReadOnlyList<string> Reads { get; init; }

    /// <summary>SHA-256 of those paths and of what the book held for them, hexadecimal, lower case.</summary>
    public required string Sha256 { get; init; }

    /// <summary>The figures.</summary>
    public required RunFigures Figures { get; init; }

    /// <summary>The entry of the journal that kept it; 0 in a book without one.</summary>
    public long Revision { get; init; }

    /// <summary>A run just made.</summary>
    /// <param name="figures">Its figures.</param>
    /// <param name="title">Why it is kept.</param>
    /// <param name="by">Who keeps it.</param>
    /// <param name="book">The book that it was made from.</param>
    /// <param name="trace">What it read.</param>
    /// <param name="given">Values laid over the book for this run only, by path.</param>
    public static KeptRun Of(RunFigures figures, string title, string by, BuildBook book, Trace trace, IReadOnlyDictionary<string, KnownValue> given)
    {
        IReadOnlyList<string> reads = [.. trace.Reads.Where(r => r.Found is null || !given.ContainsKey(r.Found.Source)).Select(r => r.Address.Path).Order(StringComparer.Ordinal)];
        return new KeptRun
        {
            Kind = figures.Kind,
            Depth = Depths.Of(trace),
            Title = title.Trim().Length > 0 ? title.Trim() : throw new BadInputException("a run that is kept needs a title"),
            By = by,
            On = DateTimeOffset.Now.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture),
            Version = typeof(KeptRun).Assembly.GetName().Version!.ToString(3),
            Changes = [.. book.Changes.Where(c => c.On).Select(c => c.Id)],
            Given = given.ToDictionary(g => g.Key, g => g.Value.Content.ToString()!, StringComparer.Ordinal),
            Reads = reads,
            Sha256 = Sum(reads, book.Now()),
            Figures = figures,
        };
    }

    /// <summary>Whether everything that it read from the book still reads the same.</summary>
    public bool HoldsIn(Snapshot snapshot) => Sum(Reads, snapshot) == Sha256;

    private static string Sum(IEnumerable<string> reads, Snapshot snapshot)
    {
        var text = new StringBuilder();
        foreach (var path in reads)
        {
            text.Append(path).Append('\t').Append(Held(snapshot.Find(FieldCatalogue.Address(path)))).Append('\n');
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }

    /// <summary>As written; with twelve digits besides, for a mean prints fewer than it has.</summary>
    private static string Held(Found? found) => found?.Value.Content switch
    {
        null => "",
        Amount amount => string.Create(CultureInfo.InvariantCulture, $"{amount} = {amount.Si:G12}"),
        Table table => string.Join('|', table.Headings.Concat(table.Shown.Select(r => string.Join(';', r.Select(n => n.ToString("G12", CultureInfo.InvariantCulture)))))),
        var word => Convert.ToString(word, CultureInfo.InvariantCulture)!,
    };
}
