using Gudgeon.Book.Build;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Files;

public sealed class BookFileTests : IDisposable
{
    private const string Book = """
        // A remark of the builder.
        {
          "gudgeon": 1,
          "name": "Wagtail",
          "baseline": {
            "engine": { "cylinders": 2 },
            "cylinder": {
              // before honing
              "bore": "81.000 mm",
              "[2]": { "bore": "81.010 mm ± 0.01 mm" }
            }
          },
          "changes": [
            { "id": "gasket", "title": "Thicker gasket", "reason": "squish", "on": true, "set": { "cylinder": { "gasketThickness": "0.9 mm" } } },
            { "id": "cams", "on": false, "set": { "valve": { "[inlet]": { "lift": "10 mm" } } } }
          ],
          "measurements": [],
          "limits": {}
        }
        """;

    private static readonly Dictionary<string, string> NoStory = new(StringComparer.Ordinal);
    private readonly TemporaryFolder _folder = new();
    private readonly string _path;

    public BookFileTests() => _path = _folder.Write("wagtail.json", Book);

    public static TheoryData<string> Refused => [.. Refusals.Keys];

    private static Dictionary<string, Action<BookFile>> Refusals { get; } = new(StringComparer.Ordinal)
    {
        ["a wrong unit"] = b => b.Set("cylinder.bore", "81 N", NoStory),
        ["no unit"] = b => b.Set("cylinder.bore", "81", NoStory),
        ["no such field"] = b => b.Set("cylinder.boar", "81 mm", NoStory),
        ["a bad index"] = b => b.Set("cylinder[0].bore", "81 mm", NoStory),
        ["cannot be"] = b => b.Set("cylinder.bore", "-81 mm", NoStory),
        ["no such change"] = b => b.Set("cylinder.bore", "81 mm", NoStory, "pistons"),
        ["no such way of knowing"] = b => b.Set("cylinder.bore", "81 mm", new Dictionary<string, string>(StringComparer.Ordinal) { ["how"] = "guessed" }),
        ["an unknown part of the story"] = b => b.Set("cylinder.bore", "81 mm", new Dictionary<string, string>(StringComparer.Ordinal) { ["where"] = "here" }),
        ["a lift curve that does not close"] = b => b.Set("valve[inlet].liftTable", "310° at 0 mm; 450° at 9 mm; 600° at 1 mm", NoStory),
        ["a firing order of three"] = b => b.Set("engine.firingOrder", "1-2-3", NoStory),
        ["a reading with a wrong unit"] = b => b.Measure("cylinder[1].bore", "81 N·m", "gauge", "Ada", "today", ""),
        ["a reading of nothing"] = b => b.Measure("cylinder[1].boar", "81 mm", "gauge", "Ada", "today", ""),
        ["a change that is there"] = b => b.AddChange("gasket", "again", ""),
        ["a change with a long name"] = b => b.AddChange("a b", "spaces", ""),
        ["a change without a name"] = b => b.AddChange("", "none", ""),
        ["a switch of nothing"] = b => b.Switch("pistons", true),
        ["a limit of nothing"] = b => b.Limit("squish.mim", "0.8 mm", "rod"),
        ["a limit with a wrong unit"] = b => b.Limit("squish.min", "95 N·m", "rod"),
        ["a cylinder too many"] = b => b.Set("cylinder[3].bore", "81 mm", NoStory),
        ["a limit without a reason"] = b => b.Limit("squish.min", "0.8 mm", ""),
    };

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_new_book_opens_and_does_not_write_over_another()
    {
        var path = _folder.PathOf("new.json");
        Assert.Equal("Wren", BookFile.Create(path, "Wren").Book.Name);
        Assert.Throws<BadInputException>(() => BookFile.Create(path, "Other"));
        Assert.Equal("Wren", BookFile.Open(path).Book.Name);
    }

    [Fact]
    public void A_value_is_set_in_its_place_and_all_else_stays()
    {
        BookFile.Open(_path).Set("cylinder[2].bore", "81.015 mm ± 0.004 mm", new Dictionary<string, string>(StringComparer.Ordinal) { ["how"] = "manual", ["note"] = "page 4", ["by"] = "" });
        var value = BookFile.Open(_path).Book.Baseline["cylinder[2].bore"];
        Assert.Equal("81.015 mm ± 0.004 mm", value.Content.ToString());
        Assert.Equal((How.Manual, "page 4", ""), (value.How, value.Note, value.By));
        var text = File.ReadAllText(_path);
        Assert.Contains("// A remark of the builder.", text, StringComparison.Ordinal);
        Assert.Contains("// before honing\n      \"bore\": \"81.000 mm\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_that_is_not_there_yet_makes_its_place()
    {
        var file = BookFile.Open(_path);
        file.Set("valve[exhaust.1.2].lift", "9 mm", NoStory).Set("crank.stroke", "48.5 mm", NoStory).Set("valve[inlet].lift", "10.5 mm", NoStory, "cams");
        var book = BookFile.Open(_path).Book;
        Assert.Equal("9 mm", book.Now().Holding("valve[exhaust.1.2].lift"));
        Assert.Equal("48.5 mm", book.Now().Holding("crank.stroke"));
        Assert.Equal("10.5 mm", book.Find("cams").Values["valve[inlet].lift"].Content.ToString());
    }

    [Theory]
    [InlineData("engine.cylinders", "3", "3")]
    [InlineData("blower.kind", "Centrifugal", "centrifugal")]
    [InlineData("weather.humidity", "35 %", "35 %")]
    [InlineData("fuel.lambda", "0.85", "0.85")]
    [InlineData("cylinder.bore", "3.19 in", "3.19 in")]
    [InlineData("driveline.gears", "2.7; 1.9; 1.5", "2.7; 1.9; 1.5")]
    [InlineData("spring[inlet].loadTable", "431 N at 34.5 mm; 720 N at 25 mm", "431 N at 34.5 mm; 720 N at 25 mm")]
    public void Every_kind_of_value_is_kept_as_written(string path, string text, string kept)
    {
        BookFile.Open(_path).Set(path, text, NoStory);
        Assert.Equal(kept, BookFile.Open(_path).Book.Now().Holding(path));
    }

    [Fact]
    public void A_change_is_added_switched_and_filled()
    {
        BookFile.Open(_path).AddChange("bored", "Bored", "worn").Set("cylinder.bore", "82 mm", NoStory, "bored").Switch("gasket", false);
        var book = BookFile.Open(_path).Book;
        Assert.Equal(["bored"], book.On);
        Assert.Equal(("Bored", "worn"), (book.Find("bored").Title, book.Find("bored").Reason));
        Assert.Equal("82 mm", book.Now().Holding("cylinder[1].bore"));
        Assert.Equal("", book.Now().Holding("cylinder.gasketThickness"));
    }

    [Fact]
    public void A_reading_is_added_to_those_before_it_with_the_changes_that_were_on()
    {
        BookFile.Open(_path).Measure("cylinder[1].bore", "81.004 mm ± 0.005 mm", "bore gauge", "Ada", "2026-10-02", "cold").Measure("cylinder[1].bore", "81.006 mm", "", "", "", "");
        var readings = BookFile.Open(_path).Book.Measurements;
        Assert.Equal(["81.004 mm ± 0.005 mm", "81.006 mm"], readings.Select(r => r.Value.Content.ToString()));
        Assert.Equal("measured with bore gauge by Ada on 2026-10-02", readings[0].Value.Story);
        Assert.All(readings, r => Assert.Equal(["gasket"], r.Under!));
    }

    [Fact]
    public void A_reading_is_taken_under_the_changes_that_are_on_in_the_file()
    {
        var opened = BookFile.Open(_path);
        BookFile.Open(_path).Switch("cams", true);
        opened.Measure("cylinder[1].bore", "81.004 mm", "", "", "", "");
        Assert.Equal(["cams", "gasket"], BookFile.Open(_path).Book.Measurements[0].Under!.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_limit_is_kept_with_its_reason()
    {
        BookFile.Open(_path).Limit("squish.min", "0.8 mm", "aluminium rod");
        Assert.Equal(new LimitSetting("0.8 mm", "aluminium rod"), BookFile.Open(_path).Book.Limits["squish.min"]);
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_refused_edit_leaves_the_file_as_it_was(string what)
    {
        var before = File.ReadAllBytes(_path);
        Assert.Throws<BadInputException>(() => Refusals[what](BookFile.Open(_path)));
        Assert.Equal(before, File.ReadAllBytes(_path));
        Assert.DoesNotContain(_folder.Files, f => f.EndsWith(".new", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Edits_that_race_lose_nothing()
    {
        const int Writers = 6;
        const int Each = 8;
        using var start = new Barrier(Writers);
        void Write(int writer)
        {
            start.SignalAndWait();
            for (var i = 1; i <= Each; i++)
            {
                BookFile.Open(_path).Measure($"joint[w{writer}].torque", $"{30 + i} N·m", "torque wrench", $"writer {writer}", "", "");
            }
        }

        // A thread for each, or the barrier would wait for a pool that has no more.
        var writers = Enumerable.Range(1, Writers).Select(w => Task.Factory.StartNew(() => Write(w), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)).ToList();
        await Task.WhenAll(writers);
        var readings = BookFile.Open(_path).Book.Measurements;
        Assert.Equal(Writers * Each, readings.Count);
        Assert.All(readings.GroupBy(r => r.Address.Path), g => Assert.Equal(Enumerable.Range(31, Each).Select(t => $"{t} N·m"), g.Select(r => r.Value.Content.ToString())));
        Assert.DoesNotContain(_folder.Files, f => f.EndsWith(".new", StringComparison.Ordinal));
    }

    [Fact]
    public void A_reader_never_sees_half_a_book()
    {
        using var done = new CancellationTokenSource();
        var failure = default(Exception);
        var reader = new Thread(() =>
        {
            try
            {
                while (!done.IsCancellationRequested)
                {
                    BookFile.Open(_path);
                }
            }
            catch (BadInputException e)
            {
                failure = e;
            }
        });
        reader.Start();
        for (var i = 0; i < 20; i++)
        {
            BookFile.Open(_path).Switch("cams", i % 2 == 0);
        }

        done.Cancel();
        reader.Join();
        Assert.Null(failure);
    }

    // A folder where the lock cannot be made is refused just as a read-only one is, and root cannot be kept out of the latter.
    [Fact]
    public void A_folder_that_cannot_be_written_gives_one_sentence()
    {
        Directory.CreateDirectory(_folder.PathOf(".wagtail.json.lock"));
        var before = File.ReadAllBytes(_path);
        var e = Assert.Throws<BadInputException>(() => BookFile.Open(_path).Switch("cams", true));
        Assert.StartsWith($"the book '{_path}' cannot be edited now: ", e.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(_path));
    }

    [Fact]
    public void A_file_that_cannot_be_replaced_leaves_nothing_beside_it()
    {
        Directory.CreateDirectory(_folder.PathOf("taken"));
        var e = Assert.Throws<BadInputException>(() => AtomicFile.Write(_folder.PathOf("taken"), "x"));
        Assert.Contains("cannot be written, and is as it was", e.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(_folder.Files, f => f.EndsWith(".new", StringComparison.Ordinal));
        Assert.Throws<BadInputException>(() => AtomicFile.Write(Path.Combine(_folder.PathOf("nowhere"), "x"), "x"));
    }

    [Fact]
    public void A_file_that_is_not_there_gives_one_sentence() =>
        Assert.EndsWith("there is no such file", Assert.Throws<BadInputException>(() => BookFile.Open(_folder.PathOf("none.json"))).Message, StringComparison.Ordinal);
}
