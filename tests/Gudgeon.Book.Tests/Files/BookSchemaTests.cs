using System.Text.Json;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;
using Json.Schema;

namespace Gudgeon.Book.Tests.Files;

/// <summary>An editor that follows the schema and the program that reads the book agree on what a book is.</summary>
public sealed class BookSchemaTests : IDisposable
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(BookSchema.Make().ToJsonString());
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("\"baseline\": { \"cylinder\": { \"bore\": \"81 mm ± 0.01 mm\" } }", true)]
    [InlineData("\"baseline\": { \"cylinder\": { \"[1]\": { \"bore\": { \"value\": \"81 mm\", \"how\": \"measured\", \"by\": \"Ada\", \"on\": \"today\", \"with\": \"gauge\", \"note\": \"cold\" } } } }", true)]
    [InlineData("\"baseline\": { \"engine\": { \"cylinders\": 2 } }", true)]
    [InlineData("\"baseline\": { \"engine\": { \"cylinders\": \"2\" } }", true)]
    [InlineData("\"baseline\": { \"engine\": { \"cylinders\": { \"value\": 2 } } }", true)]
    [InlineData("\"baseline\": { \"fuel\": { \"lambda\": 0.9, \"kind\": \"petrol 98\" } }", true)]
    [InlineData("\"baseline\": { \"driveline\": { \"gears\": \"2.7; 1.9\" } }", true)]
    [InlineData("\"baseline\": { \"driveline\": { \"gears\": { \"rows\": [2.7, 1.9], \"columns\": [\"ratio\"] } } }", true)]
    [InlineData("\"baseline\": { \"joint\": { \"[head.front-2]\": { \"torque\": \"44 N·m\" } }, \"valve\": { \"[exhaust.1.2]\": { \"lift\": \"9 mm\" } } }", true)]
    [InlineData("\"changes\": [ { \"id\": \"a-1\", \"title\": \"t\", \"reason\": \"r\", \"on\": false, \"set\": { \"crank\": { \"stroke\": \"70 mm\" } } } ]", true)]
    [InlineData("\"measurements\": [ { \"field\": \"cylinder[1].bore\", \"value\": \"81 mm\", \"under\": [\"a\"] } ]", true)]
    [InlineData("\"limits\": { \"squish.min\": { \"value\": \"0.8 mm\", \"reason\": \"rod\" } }", true)]
    [InlineData("\"notes\": \"a note\", \"$schema\": \"schema.json\"", true)]
    [InlineData("\"baseline\": { \"cylinder\": { \"bor\": \"81 mm\" } }", false)]
    [InlineData("\"baseline\": { \"cylindre\": { \"bore\": \"81 mm\" } }", false)]
    [InlineData("\"baseline\": { \"cylinder\": { \"bore\": 81 } }", false)]
    [InlineData("\"baseline\": { \"cylinder\": { \"bore\": null } }", false)]
    [InlineData("\"baseline\": { \"cylinder\": { \"bore\": { \"value\": \"81 mm\", \"whom\": \"Ada\" } } }", false)]
    [InlineData("\"baseline\": { \"cylinder\": { \"bore\": { \"value\": \"81 mm\", \"how\": \"guessed\" } } }", false)]
    [InlineData("\"baseline\": { \"cylinder\": { \"bore\": { \"how\": \"manual\" } } }", false)]
    [InlineData("\"baseline\": { \"cylinder\": { \"[0]\": { \"bore\": \"81 mm\" } } }", false)]
    [InlineData("\"baseline\": { \"cylinder\": { \"[01]\": { \"bore\": \"81 mm\" } } }", false)]
    [InlineData("\"baseline\": { \"cylinder\": { \"[1]\": { \"[2]\": { \"bore\": \"81 mm\" } } } }", false)]
    [InlineData("\"baseline\": { \"[1]\": { \"cylinder\": { \"bore\": \"81 mm\" } } }", false)]
    [InlineData("\"baseline\": { \"crank\": { \"[1]\": { \"stroke\": \"70 mm\" } } }", false)]
    [InlineData("\"baseline\": { \"joint\": { \"[a..b]\": { \"torque\": \"44 N·m\" } } }", false)]
    [InlineData("\"baseline\": { \"joint\": { \"[x²]\": { \"torque\": \"44 N·m\" } } }", false)]
    [InlineData("\"baseline\": { \"engine\": { \"cylinders\": 0 } }", false)]
    [InlineData("\"baseline\": { \"engine\": { \"cylinders\": 2.5 } }", false)]
    [InlineData("\"baseline\": { \"engine\": { \"cylinders\": \"two\" } }", false)]
    [InlineData("\"baseline\": { \"fuel\": { \"kind\": \"coal\" } }", false)]
    [InlineData("\"baseline\": []", false)]
    [InlineData("\"changes\": [ { \"id\": \"a b\" } ]", false)]
    [InlineData("\"changes\": [ { \"id\": \"x²\" } ]", false)]
    [InlineData("\"changes\": [ { \"title\": \"t\" } ]", false)]
    [InlineData("\"changes\": [ { \"id\": \"a\", \"on\": \"yes\" } ]", false)]
    [InlineData("\"changes\": [ { \"id\": \"a\", \"sets\": {} } ]", false)]
    [InlineData("\"measurements\": [ { \"value\": \"81 mm\" } ]", false)]
    [InlineData("\"measurements\": [ { \"field\": \"cylinder.bore\", \"value\": \"81 mm\", \"foo\": 1 } ]", false)]
    [InlineData("\"limits\": { \"squish.min\": { \"value\": \"0.8 mm\" } }", false)]
    [InlineData("\"limits\": { \"squish.min\": { \"value\": \"0.8 mm\", \"reason\": \"\" } }", false)]
    [InlineData("\"limits\": { \"squish.min\": { \"value\": \"0.8 mm\", \"reason\": \"rod\", \"by\": \"Ada\" } }", false)]
    [InlineData("\"limits\": { \"squish.min\": \"0.8 mm\" }", false)]
    [InlineData("\"baseline\": { \"intake\": { \"runner\": { \"length\": \"240 mm\", \"shared\": \"1-2\", \"[2]\": { \"length\": \"250 mm\" } } } }", true)]
    [InlineData("\"baseline\": { \"intake\": { \"runner\": { \"[2]\": { \"shared\": \"1-2\" } } } }", false)]
    [InlineData("\"notes\": {}", false)]
    [InlineData("\"baselin\": {}", false)]
    public void Schema_and_reader_agree(string parts, bool good)
    {
        var text = $$"""{ "gudgeon": 1, "name": "x", {{parts}} }""";
        Assert.Equal(good, Valid(text));
        Assert.Equal(good, Opens(text));
    }

    [Theory]
    [InlineData("{ \"gudgeon\": 1 }")]
    [InlineData("{ \"name\": \"x\" }")]
    [InlineData("{ \"gudgeon\": 1, \"name\": \"\" }")]
    [InlineData("{ \"gudgeon\": 2, \"name\": \"x\" }")]
    [InlineData("[]")]
    public void A_frame_that_is_not_one_is_refused_by_both(string text)
    {
        Assert.False(Valid(text));
        Assert.False(Opens(text));
    }

    [Fact]
    public void What_the_program_writes_satisfies_the_schema()
    {
        var path = _folder.PathOf("new.json");
        var file = BookFile.Create(path, "Wren").AddChange("bored", "Bored", "worn");
        foreach (var field in FieldCatalogue.All.Where(f => f.Kind != FieldKind.Table && f != Engine.FiringOrder && f != Engine.FiringIntervals))
        {
            file = file.Set(field.Path, Sample(field), new Dictionary<string, string>(StringComparer.Ordinal), field.Measured.Length > 0 ? null : "bored");
        }

        file.Measure("cylinder[1].bore", "81 mm", "gauge", "Ada", "today", "").Measure("engine.cylinders", "2", "", "", "", "").Limit("squish.min", "0.8 mm", "rod");
        Assert.True(Valid(File.ReadAllText(path)));
    }

    private static string Sample(Field field) => field.Kind switch
    {
        FieldKind.Amount => field.Print((field.Plausible.Low + field.Plausible.High) / 2),
        FieldKind.Count => "2",
        FieldKind.Choice => field.Choices[^1],
        FieldKind.Date => "2026-11-30",
        _ when field == SharedRunner.Shared || field == Exhaust.Pairs => "1-2",
        _ => "a word",
    };

    private static bool Valid(string text)
    {
        using var document = JsonDocument.Parse(text);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    private bool Opens(string text)
    {
        var path = _folder.Write("x.json", text);
        try
        {
            BookFile.Open(path);
            return true;
        }
        catch (BadInputException)
        {
            return false;
        }
    }
}
