using CsCheck;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Tests.Demo;

namespace Gudgeon.Book.Tests.Store;

/// <summary>JSON and store are two forms of the same book.</summary>
public sealed class BothFormsTests : IDisposable
{
    private static readonly string[] Paths = ["cylinder.bore", "cylinder[1].bore", "valve[inlet.1.2].lash", "joint[head].grip", "crank.stroke"];
    private static readonly string[] Changes = ["bored", "shims"];

    private static readonly Gen<Func<BookFile, BookFile>> Edit = Gen.OneOf(
        Gen.Select(Gen.OneOf(Paths), Gen.Int[1, 9999], Gen.Bool, Gen.OneOf("", "bored", "shims"), Setting),
        Gen.Select(Gen.OneOf(Paths), Gen.Int[1, 9999], Gen.Bool, Reading),
        Gen.OneOf(Changes).Select(Changing),
        Gen.Int[1, 99].Select(Limiting),
        Gen.Int[1, 3].Select(Resending),
        Gen.Int[1, 9999].Select(Keeping));

    private readonly TemporaryFolder _folder = new();
    private int _count;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_same_edits_make_the_same_book_and_snapshot() => Edit.Array[1, 12].Sample(
        edits =>
        {
            var name = $"b{Interlocked.Increment(ref _count)}";
            var (json, store) = (BookFile.Create(_folder.PathOf(name + ".json"), "Wren"), BookFile.Create(_folder.PathOf(name + ".gudgeon"), "Wren"));
            foreach (var edit in edits)
            {
                (json, store) = (edit(json), edit(store));
            }

            Stores.Same(json.Book, store.Book);
            Stores.Same(json.Book, BookFile.Open(_folder.PathOf(name + ".gudgeon")).Book);
            Assert.Equal(json.Book.Now().All().Select(f => (f.Source, f.Value, f.Origin, f.Repeats)), store.Book.Now().All().Select(f => (f.Source, f.Value, f.Origin, f.Repeats)));
        },
        iter: 25,
        threads: 1);

    [Fact]
    public void Replay_equals_the_tables_with_undoings_conflicts_settlings_and_signatures()
    {
        var step = Gen.OneOf(Edit.Select(e => (Edit: (Func<BookFile, BookFile>?)e, What: 0)), Gen.Int[1, 4].Select(w => ((Func<BookFile, BookFile>?)null, w)));
        step.Array[1, 15].Sample(
            steps =>
            {
                var path = _folder.PathOf($"r{Interlocked.Increment(ref _count)}.gudgeon");
                BookFile.Create(path, "Wren").Set(Paths[0], "80 mm", Stores.NoStory);
                foreach (var (edit, what) in steps)
                {
                    var book = Stores.Open(path);
                    _ = (edit, what) switch
                    {
                        ({ } e, _) => e(book),
                        (_, 1) when book.Revision > 1 && book.History.Count(h => h.Stands) > 1 => book.Undo().Book,
                        (_, 2) => book.Set(Paths[0], Millimetres(book.Revision, false), Stores.NoStory, basedOn: 1),
                        (_, 3) when book.Conflicts is [var first, ..] => book.Settle(first.Path, book.Revision % 2 == 0, first.Change),
                        (_, 4) => book.Sign("measured"),
                        _ => book,
                    };
                    Revisions(path);
                }

                Stores.VerifiesWell(path);
            },
            iter: 25,
            threads: 1);
    }

    [Fact]
    public void Any_book_goes_from_json_to_store_to_json_and_stays_as_it_is() => Edit.Array[1, 12].Sample(
        edits =>
        {
            var name = $"t{Interlocked.Increment(ref _count)}";
            string At(string form) => _folder.PathOf($"{name}{form}");
            var json = edits.Aggregate(BookFile.Create(At("a.json"), "Wren"), (book, edit) => edit(book));
            var back = json.CopyTo(At("b.gudgeon")).CopyTo(At("c.json"));
            Stores.Same(json.Book, back.Book);
            back.CopyTo(At("d.gudgeon")).CopyTo(At("e.json"));
            Assert.Equal(File.ReadAllText(At("c.json")), File.ReadAllText(At("e.json")));
            Assert.Equal(json.Book.Runs.Select(r => r.HoldsIn(json.Book.Now())), back.Book.Runs.Select(r => r.HoldsIn(back.Book.Now())));
            Stores.VerifiesWell(At("b.gudgeon"));
        },
        iter: 20,
        threads: 1);

    [Theory]
    [InlineData("heron")]
    [InlineData("wren")]
    public void From_json_to_store_to_json_nothing_changes(string build)
    {
        var json = BookFile.Open(DemoBooks.PathOf(build));
        var store = json.CopyTo(_folder.PathOf("a.gudgeon"));
        var back = store.CopyTo(_folder.PathOf("b.json"));
        var again = back.CopyTo(_folder.PathOf("c.gudgeon")).CopyTo(_folder.PathOf("d.json"));
        Stores.Same(json.Book, store.Book);
        Stores.Same(json.Book, back.Book);
        Assert.NotEmpty(back.Book.Notes);
        Assert.Equal(File.ReadAllText(_folder.PathOf("b.json")), File.ReadAllText(_folder.PathOf("d.json")));
        Stores.Same(json.Book, again.Book);
        Stores.VerifiesWell(_folder.PathOf("a.gudgeon"));
    }

    [Fact]
    public void A_value_keeps_the_words_in_which_it_was_written()
    {
        var json = BookFile.Open(_folder.Write("x.json", """
            { "gudgeon": 1, "name": "x", "baseline": { "fuel": { "lambda": 0.880 }, "cylinder": { "bore": "3.1900 in ± 2 %", "[2]": { "deckHeight": { "value": "+0.20 mm", "note": "cold" } } } },
              "measurements": [ { "field": "spring[inlet].loadTable", "columns": ["height in", "load lbf"], "rows": [[1.50, 60.0], [1.0, 1.5e2]], "by": "Ada" } ] }
            """));
        var back = json.CopyTo(_folder.PathOf("x.gudgeon")).CopyTo(_folder.PathOf("y.json"));
        Stores.Same(json.Book, back.Book);
        var text = File.ReadAllText(_folder.PathOf("y.json"));
        Assert.All(["0.880", "\"3.1900 in ± 2 %\"", "\"+0.20 mm\"", "[[1.50, 60.0], [1.0, 1.5e2]]"], w => Assert.Contains(w, text, StringComparison.Ordinal));
    }

    private static Func<BookFile, BookFile> Setting(string path, int size, bool sure, string change) =>
        b => b.Set(path, Millimetres(size, sure), Story(size), b.Book.Changes.Any(c => c.Id == change) ? change : null);

    private static Func<BookFile, BookFile> Reading(string path, int size, bool sure) =>
        b => b.Measure(path, Millimetres(size, sure), size % 2 == 0 ? "gauge" : "micrometer", "Ada", size % 3 == 0 ? "" : "2026-10-02 09:00", "");

    private static Func<BookFile, BookFile> Changing(string id) =>
        b => b.Book.Changes.Any(c => c.Id == id) ? b.Switch(id, !b.Book.On.Contains(id)) : b.AddChange(id, id + " \"here\"", "to see ±");

    private static Func<BookFile, BookFile> Limiting(int hundredths) => b => b.Limit("squish.min", Millimetres(hundredths, false), "rod");

    private static Func<BookFile, BookFile> Resending(int n) =>
        b => b.Measure("crank.mass", $"{n} kg", "scale", "Ada", "2026-10-02", "", $"00000000-0000-4000-8000-00000000000{n}");

    private static Func<BookFile, BookFile> Keeping(int n) => b => b.Keep(Runs.Of(b.Book, $"run \"{n}\" ±", Runs.Figures(n / 7.0)));

    /// <summary>Each reading and each run is told by the entry that it names.</summary>
    private static void Revisions(string path)
    {
        var book = Stores.Open(path);
        var history = book.History.ToDictionary(h => h.Entry.Revision);
        Assert.All(book.Book.Measurements, m => Assert.True(history[m.Revision] is { Stands: true, Entry.Edit: AddReading reading } && reading.Reading["field"]!.Text == m.Address.Path));
        Assert.All(book.Book.Runs, r => Assert.True(history[r.Revision] is { Stands: true, Entry.Edit: KeepRun kept } && kept.Run["title"]!.Text == r.Title));
    }

    private static string Millimetres(int hundredths, bool sure) => FormattableString.Invariant($"{hundredths / 100.0:F2} mm{(sure ? " ± 0.010 mm" : "")}");

    private static Dictionary<string, string> Story(int n) => n % 2 == 0 ? [] : new(StringComparer.Ordinal) { ["how"] = "drawing", ["by"] = "Tom", ["note"] = $"line\n\"{n}\"" };
}
