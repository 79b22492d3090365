namespace Gudgeon.Tests.Cli;

/// <summary>Books that cannot be taken: one sentence with file, line and path, exit code 2, and the file as it was.</summary>
public sealed class BadBooks : IDisposable
{
    private const string MapHeads = "\"columns\": [\"speed rpm\", \"flow kg/s\", \"ratio\", \"efficiency\"]";

    private readonly Workshop _workshop = new();

    public static TheoryData<string, string> Texts => new()
    {
        { "", "tern.json: the file is empty" },
        { "hello", "tern.json, line 1: this is no JSON" },
        { Books.Tern[..190], "the file ends in the middle" },
        { "[1, 2]", "the book: wanted an object" },
        { """{ "name": "Tern" }""", "gudgeon: wanted the number 1, the format of this book" },
        { """{ "gudgeon": 1 }""", "name: missing; wanted the name of the build" },
        { """{ "gudgeon": 1, "name": "Tern", "baselin": {} }""", "there is no such part of a book; the nearest is 'baseline'" },
        { Baseline(""" "cylinder": { "bore": "94 mm",""" + "\n" + """ "bore": "95 mm" } """), "line 2, baseline.cylinder.bore: given twice, first on line 1" },
        { Baseline(""" "cylinder": { "bor": "94 mm" } """), "cylinder.bor: there is no such field; the nearest is 'cylinder.bore'" },
        { Baseline(""" "cylinder": { "bore": 94 } """), "Bore: given '94' without a unit" },
        { Baseline(""" "cylinder": { "bore": "NaN mm" } """), "wanted a length" },
        { Baseline(""" "cylinder": { "bore": { "how": "measured" } } """), "cylinder.bore: missing the value" },
        { Baseline(""" "cylinder": { "bore": { "value": "94 mm", "hwo": "measured" } } """), "not known here; the nearest is 'how'" },
        { Baseline(""" "cylinder": { "[0]": { "bore": "94 mm" } } """), "wanted a cylinder number" },
        { Baseline(""" "engine": { "cylinders": 2, "firingOrder": "1-1" } """), "which is no firing order of 2 cylinders" },
        { Baseline(""" "engine": { "cylinders": 2, "firingIntervals": "300-300" } """), "720" },
        { Baseline(""" "engine": { "cylinders": 1 }, "cylinder": { "[2]": { "bore": "94 mm" } } """), "cylinder[2].bore: the engine has 1 cylinder (engine.cylinders)" },
        { Lift("[300, 0], [400, 8], [500, 2]"), "the lift curve does not close: it begins at 0 mm and ends at 2 mm" },
        { Lift("[300, 0], [350, -1], [400, 8], [500, 0]"), "the table holds the negative lift -1 mm" },
        { Lift("[300, 0], [400, 8], [390, 7], [500, 0]"), "the angle does not rise from row 2 to row 3" },
        { Lift("[300, 0], [400, 1e999], [500, 0]"), "wanted finite numbers" },
        { Lift("[300, 0], [400, \"8\"], [500, 0]"), "given '8' in the table, wanted a number" },
        { Map("[40000, 0.05, 1.5, 0.7], [40000, 0.10, 1.3, 0.7], [60000, 0.05, 1.45, 0.7], [60000, 0.12, 1.4, 0.7]"), "the lines of 40000 rpm and 60000 rpm cross near 0.05 kg/s" },
        { """{ "gudgeon": 1, "name": "Tern", "changes": [{ "id": "a", "on": "yes" }] }""", "changes[0].on: wanted true or false" },
        { """{ "gudgeon": 1, "name": "Tern", "changes": [{ "id": "a" }, { "id": "a" }] }""", "the change 'a' is given twice" },
        { """{ "gudgeon": 1, "name": "Tern", "measurements": [{ "field": "cylinder.bor", "value": "94 mm" }] }""", "the nearest is 'cylinder.bore'" },
        { """{ "gudgeon": 1, "name": "Tern", "limits": { "squish.min": { "value": "1 mm" } } }""", "missing the reason" },
    };

    public void Dispose() => _workshop.Dispose();

    [Theory]
    [MemberData(nameof(Texts))]
    public void AreRefusedWithThePlace(string text, string sentence)
    {
        _workshop.Write("tern.json", text);
        Refusal.Holds(_workshop.Run("set", "tern.json", "cylinder.gasketBore", "95 mm"), sentence);
        Assert.Equal(text, _workshop.Read("tern.json"));
    }

    [Theory]
    [InlineData("nosuch.json", "the file 'nosuch.json' cannot be read: there is no such file")]
    [InlineData("nosuch/tern.json", "cannot be read")]
    [InlineData("folder", "there is no book in 'folder'")]
    [InlineData("folder.json", "there is no book in 'folder.json'")]
    public void ThatAreNotThereAreNamed(string path, string sentence)
    {
        Directory.CreateDirectory(_workshop.At("folder"));
        Directory.CreateDirectory(_workshop.At("folder.json"));
        Refusal.Holds(_workshop.Run("check", path), sentence);
    }

    [Fact]
    public void NoneOrSeveralInAFolderAreNamed()
    {
        Refusal.Holds(_workshop.Run("check"), "there is no book in this folder");
        _workshop.Write("tern.json", Books.Tern);
        _workshop.Write("finch.json", Books.Tern);
        _workshop.Write("other.json", "{}");
        Refusal.Holds(_workshop.Run("check"), "there are several books here (finch.json, tern.json); name one");
    }

    [Fact]
    public void ThatTheSystemWillNotReadAreNamed()
    {
        // Permissions do not bind root; this one cannot be read by anybody.
        const string Unreadable = "/proc/self/mem";
        Assert.SkipUnless(File.Exists(Unreadable), "wants a file that cannot be read");
        Refusal.Holds(_workshop.Run("check", Unreadable), $"the file '{Unreadable}' cannot be read");
    }

    private static string Baseline(string text) => Books.With(text);

    private static string Lift(string rows) => Baseline($$"""  "valve": { "[inlet]": { "liftTable": { "columns": ["angle °", "lift mm"], "rows": [{{rows}}] } } } """);

    private static string Map(string rows) => Baseline($$"""  "blower": { "map": { {{MapHeads}}, "rows": [{{rows}}] } } """);
}
