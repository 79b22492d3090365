using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Tests.Store;

public sealed class KeptRunTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Forms => ["wren.gudgeon", "wren.json"];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_run_is_kept_with_its_figures_and_what_they_came_from(string name)
    {
        var made = Runs.Of(Begin(name).Book, "before the bore");
        Open(name).Keep(made);
        var kept = Assert.Single(Open(name).Book.Runs);
        Assert.Equal(Runs.Text(made), Runs.Text(kept));
        Assert.Equal(("before the bore", "Ada", RunKind.Engine, "61.5 kW at 6000 rpm"), (kept.Title, kept.By, kept.Kind, kept.Figures.Headline));
        Assert.Equal(["crank.stroke", "cylinder[1].bore"], kept.Reads);
        Assert.Equal(["bored"], kept.Changes);
        Assert.True(kept.Figures.Converged);
        Assert.Equal([5000.0, 98.5, 51.5738, -0.02, 71.0, true], kept.Figures.Rows[0]);
        Assert.Null(kept.Figures.Rows[1][3]);
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_run_knows_its_depth_and_one_of_before_there_were_two_is_lumped(string name)
    {
        var book = Begin(name).Set("engine.depth", "wave", Stores.NoStory).Book;
        var view = new View(book.Now());
        Assert.Equal(Depth.Wave, Depths.Of(view));
        Open(name).Keep(KeptRun.Of(Runs.Figures(), "with pipes", "Ada", book, view.Trace, Runs.NothingGiven));
        Assert.Equal(Depth.Wave, Assert.Single(Open(name).Book.Runs).Depth);

        var old = RunReader.Write(Runs.Of(book));
        old.Members.RemoveAll(m => m.Name == "depth");
        Assert.Equal(Depth.Lumped, new RunReader(new BookReader("x")).Read(old, "runs[0]").Depth);
        old.Set("depth", JsonPlace.Of("shallow"));
        Assert.Equal("x, runs[0].depth: given 'shallow', wanted lumped or wave", Assert.Throws<BadInputException>(() => new RunReader(new BookReader("x")).Read(old, "runs[0]")).Message);
    }

    // What it read: a bore of the group, under a change; a stroke that nobody knew.
    [Theory]
    [InlineData(true, "nothing at all")]
    [InlineData(true, "another field")]
    [InlineData(true, "the baseline under the change")]
    [InlineData(true, "the same value in a reading of the same words")]
    [InlineData(true, "another cylinder")]
    [InlineData(false, "a reading")]
    [InlineData(false, "the change switched off")]
    [InlineData(false, "the change set anew")]
    [InlineData(false, "a value for one cylinder")]
    [InlineData(false, "a value where there was none")]
    [InlineData(false, "a wider spread")]
    public void A_kept_run_holds_while_what_it_read_reads_the_same(bool holds, string edit)
    {
        var book = Begin("wren.gudgeon");
        book = book.Keep(Runs.Of(book.Book));
        Assert.True(book.Book.Runs[0].HoldsIn(book.Book.Now()));
        var after = Edited(book, edit).Book;
        Assert.Equal(holds, after.Runs[0].HoldsIn(after.Now()));
    }

    [Fact]
    public void Values_given_for_one_run_are_told_and_not_asked_of_the_book()
    {
        var book = Begin("wren.gudgeon").Set("weather.temperature", "20 °C", Stores.NoStory);
        var given = new Dictionary<string, KnownValue>(StringComparer.Ordinal) { ["weather.temperature"] = KnownValue.Read(Weather.Temperature, "30 °C") };
        var view = new View((book.Book with { Changes = [.. book.Book.Changes, new Change("day", "", "", true, given)] }).Now());
        view.Amount(Weather.Temperature);
        view.Amount(Cylinder.Bore, "1");
        book = book.Keep(KeptRun.Of(Runs.Figures(), "hot day", "Ada", book.Book, view.Trace, given)).Set("weather.temperature", "25 °C", Stores.NoStory);
        var kept = book.Book.Runs[0];
        Assert.Equal("30 °C", kept.Given["weather.temperature"]);
        Assert.Equal(["cylinder[1].bore"], kept.Reads);
        Assert.Equal(["bored"], kept.Changes);
        Assert.True(kept.HoldsIn(book.Book.Now()));
    }

    [Fact]
    public void A_run_with_a_point_that_did_not_settle_has_no_figures_to_keep()
    {
        OperatingPoint Moving(double rpm) => new(rpm * Math.PI / 30, 200, 0.1, null, null, null);
        var e = Assert.Throws<BadInputException>(() => RunFigures.Of([Moving(5000), Moving(6000)]));
        Assert.Equal("the run did not settle at 5000 rpm, 6000 rpm, and only one that did everywhere is kept", e.Message);
    }

    [Fact]
    public void A_run_needs_a_title() => Assert.Throws<BadInputException>(() => Runs.Of(Begin("wren.gudgeon").Book, " "));

    [Fact]
    public void A_kept_run_is_an_entry_that_can_be_taken_back()
    {
        var path = _folder.PathOf("wren.gudgeon");
        var book = Begin("wren.gudgeon");
        var kept = book.Keep(Runs.Of(book.Book));
        Assert.Equal(kept.Revision, Assert.Single(kept.Book.Runs).Revision);
        Assert.Equal(kept.Revision, Assert.Single(Open("wren.gudgeon").Book.Runs).Revision);
        Assert.Equal("the engine run \"as it came\" is kept", Stores.Open(path).History[^1].Entry.Edit.Words);
        Stores.VerifiesWell(path);
        Stores.Open(path).Undo();
        Assert.Empty(Open("wren.gudgeon").Book.Runs);
        Stores.VerifiesWell(path);
    }

    [Theory]
    [InlineData("\"kind\": \"engine\"", "\"kind\": \"motor\"", "runs[0].kind: given 'motor', wanted engine or sprint")]
    [InlineData("\"title\": \"as it came\"", "\"title\": \"\"", "runs[0]: missing 'title'")]
    [InlineData("crank.stroke", "crank.strike", "runs[0].reads: ")]
    [InlineData("\"converged\"]", "\"converged\", \"more\"]", "runs[0].rows: wanted 7 cells in each row")]
    [InlineData("\"sha256\": \"", "\"sha256\": \"x", "runs[0].sha256: wanted 64 hexadecimal digits")]
    [InlineData("\"by\"", "\"bye\"", "the nearest is 'by'")]
    public void A_run_that_cannot_be_taken_is_refused_with_its_place(string was, string written, string sentence)
    {
        var book = Begin("wren.json");
        book.Keep(Runs.Of(book.Book));
        var text = File.ReadAllText(_folder.PathOf("wren.json"));
        Assert.Contains(was, text, StringComparison.Ordinal);
        _folder.Write("wren.json", text.Replace(was, written, StringComparison.Ordinal));
        var e = Assert.Throws<BadInputException>(() => Open("wren.json"));
        Assert.Contains(sentence, e.Message, StringComparison.Ordinal);
        Assert.Matches("^wren.json, line [0-9]+, ", e.Message);
    }

    private static BookFile Edited(BookFile book, string edit) => edit switch
    {
        "another field" => book.Set("crank.mass", "11 kg", Stores.NoStory),
        "the baseline under the change" => book.Set("cylinder.bore", "81.5 mm", Stores.NoStory),
        "the same value in a reading of the same words" => book.Measure("cylinder[1].bore", "82.000 mm", "gauge", "Ada", "2026-10-02", ""),
        "another cylinder" => book.Measure("cylinder[2].bore", "82.3 mm", "gauge", "Ada", "2026-10-02", ""),
        "a reading" => book.Measure("cylinder[1].bore", "82.004 mm", "gauge", "Ada", "2026-10-02", ""),
        "the change switched off" => book.Switch("bored", false),
        "the change set anew" => book.Set("cylinder.bore", "82.1 mm", Stores.NoStory, "bored"),
        "a value for one cylinder" => book.Set("cylinder[1].bore", "82.1 mm", Stores.NoStory, "bored"),
        "a value where there was none" => book.Set("crank.stroke", "70 mm", Stores.NoStory),
        "a wider spread" => book.Set("cylinder.bore", "82.000 mm ± 0.02 mm", Stores.NoStory, "bored"),
        _ => book,
    };

    private BookFile Begin(string name) => BookFile.Create(_folder.PathOf(name), "Wren", new Hand("Ada", "bench"))
        .Set("cylinder.bore", "81.00 mm", Stores.NoStory)
        .AddChange("bored", "Bored", "worn")
        .Set("cylinder.bore", "82.000 mm", Stores.NoStory, "bored");

    private BookFile Open(string name) => BookFile.Open(_folder.PathOf(name));
}
