using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;

namespace Gudgeon.Book.Files;

/// <summary>Kept runs as a book's JSON has them.</summary>
/// <param name="book">The reader of the book that they stand in.</param>
internal sealed partial class RunReader(BookReader book)
{
    /// <summary>What every kept run has.</summary>
    public static readonly string[] Required = ["kind", "title", "version", "reads", "sha256", "columns", "rows"];

    /// <summary>The run at a place.</summary>
    /// <exception cref="Values.BadInputException">Anything that cannot be taken.</exception>
    public KeptRun Read(JsonPlace place, string path)
    {
        book.Expect(place, JsonValueKind.Object, path, "an object");
        book.Only(place, path, [.. Required, "depth", "by", "on", "changes", "given"]);
        if (Array.Find(Required, n => place[n] is null or { Kind: JsonValueKind.String, Text: "" }) is { } missing)
        {
            throw book.Bad(place, path, $"missing '{missing}'");
        }

        var sum = book.Text(place, "sha256", path);
        return new KeptRun
        {
            Kind = book.Word<RunKind>(place["kind"]!, path + ".kind"),
            Depth = place["depth"] is { } depth ? book.Word<Depth>(depth, path + ".depth") : Depth.Lumped,
            Title = book.Text(place, "title", path),
            By = book.Text(place, "by", path),
            On = book.Text(place, "on", path),
            Version = book.Text(place, "version", path),
            Changes = Words(place, "changes", path),
            Given = Given(place["given"], path),
            Reads = [.. Words(place, "reads", path).Select(r => Address(place["reads"]!, path + ".reads", r))],
            Sha256 = Hexadecimal().IsMatch(sum) ? sum : throw book.Bad(place["sha256"]!, path + ".sha256", "wanted 64 hexadecimal digits in lower case"),
            Figures = Figures(place, path),
        };
    }

    /// <summary>A run as it is written, each part on a line.</summary>
    public static JsonPlace Write(KeptRun run)
    {
        static JsonPlace List(IEnumerable<string> words) => JsonPlace.Array(words.Select(JsonPlace.Of));
        return OnLines(JsonPlace.Filled(
        [
            ("kind", JsonPlace.Of(EnumWords.Of(run.Kind.ToString()))),
            ("depth", JsonPlace.Of(run.Depth.Word())),
            ("title", JsonPlace.Of(run.Title)),
            ("by", run.By.Length > 0 ? JsonPlace.Of(run.By) : null),
            ("on", run.On.Length > 0 ? JsonPlace.Of(run.On) : null),
            ("version", JsonPlace.Of(run.Version)),
            ("changes", List(run.Changes)),
            ("given", run.Given.Count > 0 ? JsonPlace.Object(run.Given.Select(g => (g.Key, JsonPlace.Of(g.Value)))) : null),
            ("reads", List(run.Reads)),
            ("sha256", JsonPlace.Of(run.Sha256)),
            ("columns", List(run.Figures.Columns)),
            ("rows", JsonPlace.Array(run.Figures.Rows.Select(r => JsonPlace.Array(r.Select(Cell))))),
        ]));
    }

    /// <summary>A run with each of its parts on a line.</summary>
    public static JsonPlace OnLines(JsonPlace run)
    {
        foreach (var (_, part) in run.Members)
        {
            part.OnOneLine().Breaks = 1;
        }

        return run;
    }

    private static JsonPlace Cell(object? cell) => cell switch
    {
        null => JsonPlace.Raw(JsonValueKind.Null, ""),
        bool word => JsonPlace.Of(word),
        double number => JsonPlace.Raw(JsonValueKind.Number, number.ToString("R", CultureInfo.InvariantCulture)),
        var text => JsonPlace.Of(Convert.ToString(text, CultureInfo.InvariantCulture)!),
    };

    private List<string> Words(JsonPlace place, string name, string path) => book.Items(place[name], $"{path}.{name}").ConvertAll(i =>
    {
        book.Expect(i, JsonValueKind.String, $"{path}.{name}", "text");
        return i.Text;
    });

    private string Address(JsonPlace place, string path, string text) => book.Guard(place, path, () => FieldCatalogue.Address(text)).Path;

    private Dictionary<string, string> Given(JsonPlace? place, string path)
    {
        if (place is not null)
        {
            book.Expect(place, JsonValueKind.Object, path + ".given", "an object of values");
        }

        return (place?.Members ?? []).ToDictionary(m => Address(m.Value, path + ".given", m.Name), m => book.Text(place!, m.Name, path + ".given"), StringComparer.Ordinal);
    }

    private RunFigures Figures(JsonPlace place, string path)
    {
        var columns = Words(place, "columns", path);
        var rows = book.Items(place["rows"], path + ".rows").ConvertAll(r => (IReadOnlyList<object?>)book.Items(r, path + ".rows").ConvertAll(c => Cell(c, path)));
        return rows.TrueForAll(r => r.Count == columns.Count)
            ? new RunFigures(book.Word<RunKind>(place["kind"]!, path + ".kind"), columns, rows)
            : throw book.Bad(place["rows"]!, path + ".rows", $"wanted {columns.Count} cells in each row, one for each column");
    }

    private object? Cell(JsonPlace place, string path) => place.Kind switch
    {
        JsonValueKind.Null => null,
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        JsonValueKind.String => place.Text,
        JsonValueKind.Number => double.Parse(place.Text, CultureInfo.InvariantCulture),
        _ => throw book.Bad(place, path + ".rows", "wanted numbers and words"),
    };

    [GeneratedRegex("^[0-9a-f]{64}\\z", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Hexadecimal();
}
