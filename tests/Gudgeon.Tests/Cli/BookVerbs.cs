using System.Text.Json;
using Gudgeon.Book.Fields;

namespace Gudgeon.Tests.Cli;

/// <summary>Verbs that begin, show and edit a book.</summary>
public sealed class BookVerbs : IDisposable
{
    private readonly Workshop _workshop = new();

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void FieldsListsEveryFieldAndFindsOne()
    {
        var all = _workshop.Good("fields").Split('\n');
        Assert.All(FieldCatalogue.All, f => Assert.Contains(all, l => l.StartsWith("  " + f.Path, StringComparison.Ordinal)));
        Assert.Equal(
            """
            Cylinder (cylinder[1], or cylinder for all)
              cylinder.gasketBore              Gasket bore; Length [mm]; usual 30 mm to 135 mm
                                                 measured by: calliper

            """,
            _workshop.Good("fields", "cylinder.gasketBore"));
        Assert.Equal("mm", _workshop.Run("fields", "cylinder.bore", "--json").Json[0].GetProperty("unit").GetString());
        Refusal.Holds(_workshop.Run("fields", "cylindr.bor"), "the nearest is 'cylinder.bore'");
    }

    [Fact]
    public void SchemaIsAJsonSchemaOfTheFields()
    {
        var schema = _workshop.Run("schema").Json;
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", schema.GetProperty("$schema").GetString());
        Assert.True(schema.GetProperty("$defs").GetProperty("values").GetProperty("properties").GetProperty("cylinder").GetProperty("properties").TryGetProperty("bore", out _));
    }

    [Fact]
    public void ABookGrowsFromNothing()
    {
        Assert.StartsWith("Tern begins in tern.json", _workshop.Good("new", "tern.json", "--name", "Tern"), StringComparison.Ordinal);
        Refusal.Holds(_workshop.Run("show"), "the book holds no values yet");
        Assert.Equal("engine.cylinders is 2 (assumed)\n", _workshop.Good("set", "engine.cylinders", "2"));
        Assert.Equal("cylinder.bore is 94.00 mm (manual)\n", _workshop.Good("set", "tern.json", "cylinder.bore", "94.00 mm", "--how", "manual"));
        Assert.Equal("cylinder[1].bore is 94.012 mm ± 0.006 mm (measured with bore gauge by Ada on 2026-03-01)\n", _workshop.Good("measure", "cylinder[1].bore", "94.012 ± 0.006 mm", "--with", "bore gauge", "--by", "Ada", "--on", "2026-03-01"));
        Assert.Equal(
            """
            Tern: 0 of 0 changes on, 1 readings

            Cylinder
              cylinder.bore                      94.00 mm                   baseline, manual
              cylinder[1].bore                   94.012 mm ± 0.006 mm       measured with bore gauge by Ada on 2026-03-01

            """,
            _workshop.Good("show", "cylinder"));
        var bore = _workshop.Run("show", "cylinder[1]", "--json").Json[0];
        Assert.Equal(0.094012, bore.GetProperty("si").GetDouble(), 1e-12);
        Assert.Equal(3e-6, bore.GetProperty("standardUncertainty").GetDouble(), 1e-12);
        Assert.Contains("3.7013 in", _workshop.Good("show", "cylinder[1]", "--imperial"), StringComparison.Ordinal);
    }

    [Fact]
    public void AValueThatDoesNotHoldSaysWhatDoes()
    {
        _workshop.Write("tern.json", Books.Tern);
        Assert.Equal("cylinder.deckHeight is 0.30 mm in the baseline (assumed)\n  what holds now is 0.10 mm (change decked, assumed)\n", _workshop.Good("set", "cylinder.deckHeight", "0.30 mm"));
        _workshop.Good("change", "off", "decked");
        Assert.Equal("cylinder.deckHeight is 0.20 mm in the change decked (assumed)\n  what holds now is 0.30 mm (assumed)\n", _workshop.Good("set", "cylinder.deckHeight", "0.20 mm", "--change", "decked"));
        Assert.Equal("rod.length is 120 mm in the change decked (assumed)\n  it does not hold now: the change is off\n", _workshop.Good("set", "rod.length", "120 mm", "--change", "decked"));
    }

    [Fact]
    public void AnEarlierReadingStays()
    {
        _workshop.Write("tern.json", Books.Tern);
        foreach (var reading in new[] { "93.99 mm", "94.01 mm" })
        {
            _workshop.Good("measure", "cylinder[1].bore", reading, "--with", "bore gauge", "--by", "Tom");
        }

        using var book = JsonDocument.Parse(_workshop.Read("tern.json"), new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip });
        Assert.Equal(["93.99 mm", "94.01 mm"], book.RootElement.GetProperty("measurements").EnumerateArray().Select(m => m.GetProperty("value").GetString()));
        Assert.Contains("94.01 mm", _workshop.Good("show", "cylinder[1]"), StringComparison.Ordinal);
    }

    [Fact]
    public void ChangesAreAddedSwitchedAndListed()
    {
        _workshop.Write("tern.json", Books.Tern);
        Assert.StartsWith("long-rod is on", _workshop.Good("change", "add", "long-rod", "--title", "Longer rods", "--reason", "less side load"), StringComparison.Ordinal);
        _workshop.Good("set", "rod.length", "130 mm", "--change", "long-rod", "--how", "drawing");
        Assert.Equal("decked is off\n", _workshop.Good("change", "off", "decked"));
        Assert.Equal(
            """
            off  decked               Deck skimmed
                                      because more squish
                                      cylinder.deckHeight = 0.10 mm (assumed)
            on   long-rod             Longer rods
                                      because less side load
                                      rod.length = 130 mm (drawing)

            """,
            _workshop.Good("change", "list"));
        Assert.Equal("decked is on\n", _workshop.Good("change", "on", "decked"));
        Assert.Equal([true, true], _workshop.Run("change", "list", "--json").Json.EnumerateArray().Select(c => c.GetProperty("on").GetBoolean()));
    }

    [Fact]
    public void CommentsSurviveAnEdit()
    {
        _workshop.Write("tern.json", Books.Tern);
        _workshop.Good("set", "cylinder.gasketThickness", "1.1 mm");
        Assert.Contains("// steel, three layers", _workshop.Read("tern.json"), StringComparison.Ordinal);
    }

    [Fact]
    public void AnUnusualValueIsTakenAndAskedAbout() =>
        Assert.Contains("? Bore of 390 mm is outside what is usual (30 mm to 130 mm): is it right?", Prepared().Good("set", "cylinder.bore", "390 mm"), StringComparison.Ordinal);

    [Theory]
    [InlineData("set|cylinder.bore|94", "Bore: given '94' without a unit, wanted a length such as '12.3 mm'")]
    [InlineData("set|cylinder.bore|94 N", "which is a force; wanted a length")]
    [InlineData("set|cylinder.bore|94 furlongs", "'furlongs' is not a unit known here")]
    [InlineData("set|cylinder.bore|94,5 mm", "a decimal comma, wanted a point")]
    [InlineData("set|cylinder.bore|NaN mm", "wanted a length")]
    [InlineData("set|cylinder.bore|1e999 mm", "wanted a finite number")]
    [InlineData("set|cylinder.bore|-94 mm", "which cannot be; wanted more than zero")]
    [InlineData("set|cylinder.bore|0 mm", "which cannot be; wanted more than zero")]
    [InlineData("set|cylinder.bore", "wanted: gudgeon set [BOOK] PATH VALUE")]
    [InlineData("set|cylindr.bore|94 mm", "there is no field 'cylindr.bore'; the nearest is 'cylinder.bore'")]
    [InlineData("set|cylinder[first].bore|94 mm", "wanted a cylinder number, such as cylinder[1]")]
    [InlineData("set|cylinder[3].bore|94 mm", "cylinder[3].bore: the engine has 2 cylinders")]
    [InlineData("set|valve[inlet.3.1].lash|0.2 mm", "the engine has 2 cylinders")]
    [InlineData("set|valve[inlet].benchTable|3 mm at -5 L/s; 5 mm at 4 L/s", "the table holds the negative flow -5 L/s")]
    [InlineData("set|engine.cylinders|-1", "which cannot be; wanted more than zero")]
    [InlineData("show|tern.json|cylinder|bore", "wanted: gudgeon show [BOOK] [PATH]")]
    [InlineData("new|", "wanted the name of a new file")]
    [InlineData("set|engine.cylinders|2.5", "wanted a whole number")]
    [InlineData("set|engine.firingOrder|1-3", "which is no firing order of 2 cylinders")]
    [InlineData("set|cylinder.bore|94 mm|--how|guessed", "given 'guessed', wanted manual, drawing, measured or assumed")]
    [InlineData("set|cylinder.bore|94 mm|--change|deckd", "there is no change 'deckd'; the nearest is 'decked'")]
    [InlineData("set|nosuch.json|cylinder.bore|94 mm", "the file 'nosuch.json' cannot be read: there is no such file")]
    [InlineData("set|cylinder.bore|94 mm|--hwo|manual", "Unknown option 'hwo'")]
    [InlineData("set|cylinder.bore|94 mm|--how", "--how: missing its how")]
    [InlineData("measure|cylinder.bore|94 mm|--with|bore gauge", "a reading needs the instrument and the person")]
    [InlineData("new|tern.json", "the file 'tern.json' exists; a new book does not write over it")]
    [InlineData("new|nosuch/finch.json", "the file 'nosuch/finch.json' cannot be written: there is no such folder")]
    [InlineData("change|add|decked", "there is already a change 'decked'")]
    [InlineData("change|add|two words", "wanted a short name of letters, digits and dashes")]
    [InlineData("change|on|nosuch", "there is no change 'nosuch'; the nearest is 'decked'")]
    [InlineData("change|of|decked", "Unknown command 'of'")]
    [InlineData("limit|squish.min|0.9 mm", "a limit of one's own needs a reason")]
    [InlineData("limit|squish.min|0.9 N|--reason|short stroke", "which is a force; wanted a length")]
    [InlineData("limit|squish.max|0.9 mm|--reason|short stroke", "there is no limit 'squish.max'; the check 'squish' asks for squish.min")]
    [InlineData("limit|squash.min|0.9 mm|--reason|short stroke", "there is no check 'squash'; the nearest is 'squish'")]
    public void RefusesInOneSentenceAndLeavesTheFileAlone(string words, string sentence)
    {
        _workshop.Write("tern.json", Books.Tern);
        Refusal.Holds(_workshop.Run(words.Split('|')), sentence);
        Assert.Equal(Books.Tern, _workshop.Read("tern.json"));
        Assert.Equal(["tern.json"], Directory.EnumerateFileSystemEntries(_workshop.Folder).Select(Path.GetFileName));
    }

    /// <summary>Several people edit at the same moment: every edit is in the file.</summary>
    [Fact]
    public void EditsAtTheSameTimeAreAllKept()
    {
        _workshop.Write("tern.json", Books.Tern);
        var editors = Enumerable.Range(1, 6).Select(n => _workshop.Start("measure", "cylinder[1].bore", $"94.0{n} mm", "--with", "bore gauge", "--by", "Ada")).ToList();
        Assert.All(editors.ConvertAll(Workshop.Finish), o => Assert.Equal((0, ""), (o.Code, o.Error)));
        var book = _workshop.Read("tern.json");
        Assert.All(Enumerable.Range(1, 6), n => Assert.Contains($"\"94.0{n} mm\"", book, StringComparison.Ordinal));
    }

    private Workshop Prepared()
    {
        _workshop.Write("tern.json", Books.Tern);
        return _workshop;
    }
}
