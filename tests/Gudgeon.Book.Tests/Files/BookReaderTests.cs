using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Files;

public sealed class BookReaderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("{ \"gudgeon\": 1 }", "heron.json, line 1, name: missing; wanted the name of the build")]
    [InlineData("{ \"name\": \"x\" }", "heron.json, line 1, gudgeon: wanted the number 1, the format of this book")]
    [InlineData("{ \"gudgeon\": 2, \"name\": \"x\" }", "heron.json, line 1, gudgeon: wanted the number 1, the format of this book")]
    [InlineData("[]", "heron.json, line 1, the book: wanted an object")]
    [InlineData("{ \"gudgeon\": 1, \"name\": \"x\",\n \"baselin\": {} }", "heron.json, line 2, baselin: there is no such part of a book; the nearest is 'baseline'")]
    public void The_frame_is_wanted(string text, string sentence) => Refused(text, sentence);

    [Theory]
    [InlineData("\"cylinder\": {\n \"bor\": \"81 mm\" }", "heron.json, line 2, cylinder.bor: there is no such field; the nearest is 'cylinder.bore'")]
    [InlineData("\"cylinder\": {\n \"bore\": 81 }", "heron.json, line 2, cylinder.bore: Bore: given '81' without a unit, wanted a length such as '12.3 mm'")]
    [InlineData("\"cylinder\": { \"[1]\": {\n \"bore\": \"81 N\" } }", "heron.json, line 2, cylinder[1].bore: Bore: given '81 N', which is a force; wanted a length such as '12.3 mm'")]
    [InlineData("\"cylinder\": {\n \"bore\": \"-81 mm\" }", "heron.json, line 2, cylinder.bore: Bore: given '-81 mm', which cannot be; wanted more than zero")]
    [InlineData("\"cylinder\": {\n \"bore\": null }", "heron.json, line 2, cylinder.bore: wanted a value such as \"34.52 mm ± 0.01 mm\"")]
    [InlineData("\"cylinder\": {\n \"bore\": { \"how\": \"manual\" } }", "heron.json, line 2, cylinder.bore: missing the value")]
    [InlineData("\"cylinder\": { \"bore\": { \"value\": \"81 mm\",\n \"whom\": \"Ada\" } }", "heron.json, line 2, cylinder.bore.whom: not known here; the nearest is 'how'")]
    [InlineData("\"blower\": {\n \"kind\": \"turbo\" }", "heron.json, line 2, blower.kind: Kind of supercharger: given 'turbo', wanted one of 'none', 'centrifugal', 'positive displacement', 'exhaust-driven'")]
    [InlineData("\"driveline\": { \"gears\": {\n \"rows\": [[2.7], [\"x\"]] } }", "heron.json, line 2, driveline.gears: given 'x' in the table, wanted a number")]
    public void A_bad_value_is_said_with_line_path_and_reason(string baseline, string sentence) =>
        Refused($$"""{ "gudgeon": 1, "name": "x", "baseline": { {{baseline}} } }""", sentence);

    [Theory]
    [InlineData("{ \"cylinder\": { \"[1]\": { \"[2]\": { \"bore\": \"81 mm\" } } } }")]
    [InlineData("{ \"[1]\": { \"cylinder\": { \"bore\": \"81 mm\" } } }")]
    [InlineData("{ \"cylinder\": { \"[01]\": { \"bore\": \"81 mm\" } } }")]
    [InlineData("{ \"crank\": { \"[1]\": { \"stroke\": \"70 mm\" } } }")]
    [InlineData("{ \"cylinder\": { \"bore\": { \"value\": \"81 mm\", \"field\": \"x\", \"whom\": \"Ada\" } } }")]
    [InlineData("{ \"cylinder\": { \"bore\": { \"value\": \"81 mm\", \"how\": \"7\" } } }")]
    [InlineData("{ \"cylinder\": { \"bore\": { \"value\": \"81 mm\", \"how\": \"manual, drawing\" } } }")]
    [InlineData("{ \"cylinder\": { \"bore\": { \"rows\": [[1]] } } }")]
    [InlineData("{ \"driveline\": { \"gears\": { \"rows\": [] } } }")]
    [InlineData("{ \"driveline\": { \"gears\": { \"rows\": [[1, 2]] } } }")]
    [InlineData("{ \"driveline\": { \"gears\": { \"rows\": [1e999] } } }")]
    [InlineData("{ \"valve\": { \"[inlet]\": { \"liftTable\": { \"rows\": [[310, 0], [400, 5], [390, 9], [600, 0]] } } } }")]
    [InlineData("{ \"valve\": { \"[inlet]\": { \"liftTable\": { \"rows\": [[310, 0], [400, -5], [600, 0]] } } } }")]
    [InlineData("{ \"valve\": { \"[inlet]\": { \"flowTable\": { \"rows\": [[1, 0.6], [1, 0.6]] } } } }")]
    [InlineData("{ \"engine\": { \"cylinders\": 2, \"firingOrder\": \"1-1\" } }")]
    [InlineData("{ \"engine\": { \"cylinders\": 2, \"firingIntervals\": \"360-350\" } }")]
    public void A_baseline_that_is_not_one_is_refused(string baseline) => Refused($$"""{ "gudgeon": 1, "name": "x", "baseline": {{baseline}} }""");

    [Theory]
    [InlineData("\"changes\": [ { \"id\": \"a\" },\n { \"id\": \"a\" } ]")]
    [InlineData("\"changes\": [ { \"id\": \"a\", \"on\": \"yes\" } ]")]
    [InlineData("\"changes\": [ { \"title\": \"a\" } ]")]
    [InlineData("\"changes\": [ { \"id\": \"a\", \"sets\": {} } ]")]
    [InlineData("\"changes\": {}")]
    [InlineData("\"measurements\": [ { \"value\": \"81 mm\" } ]")]
    [InlineData("\"measurements\": [ { \"field\": \"cylinder.bore\" } ]")]
    [InlineData("\"measurements\": [ { \"field\": \"cylinder.bore\", \"value\": \"81 mm\", \"foo\": 1 } ]")]
    [InlineData("\"limits\": { \"squish.min\": \"0.8 mm\" }")]
    [InlineData("\"limits\": { \"squish.min\": { \"value\": \"0.8 mm\" } }")]
    [InlineData("\"limits\": { \"squish.min\": { \"value\": \"0.8 mm\", \"reason\": \"rod\", \"by\": \"Ada\" } }")]
    public void A_part_that_is_not_one_is_refused(string part) => Refused($$"""{ "gudgeon": 1, "name": "x", {{part}} }""");

    [Fact]
    public void A_value_takes_how_it_is_known_from_where_it_stands_unless_it_says()
    {
        var book = BookFile.Open(_folder.Write("heron.json", """
            {
              "gudgeon": 1, "name": "x",
              "baseline": { "cylinder": { "bore": "81 mm", "deckHeight": { "value": "0.2 mm", "how": "Drawing" } } },
              "changes": [ { "id": "a", "set": { "cylinder": { "bore": "82 mm" } } } ],
              "measurements": [ { "field": "cylinder[1].bore", "value": "81.01 mm" } ]
            }
            """)).Book;
        Assert.Equal(How.Manual, book.Baseline["cylinder.bore"].How);
        Assert.Equal(How.Drawing, book.Baseline["cylinder.deckHeight"].How);
        Assert.Equal(How.Assumed, book.Changes[0].Values["cylinder.bore"].How);
        Assert.True(book.Changes[0].On);
        Assert.Equal(How.Measured, book.Measurements[0].Value.How);
        Assert.Null(book.Measurements[0].Under);
    }

    [Fact]
    public void A_table_is_read_in_the_units_of_its_headings_in_any_order()
    {
        var book = BookFile.Open(_folder.Write("heron.json", """
            { "gudgeon": 1, "name": "x", "baseline": { "spring": { "[inlet]": { "loadTable": { "columns": ["height in", "load lbf"], "rows": [[1.5, 60], [1.0, 150]] } } } } }
            """)).Book;
        var table = (Table)book.Baseline["spring[inlet].loadTable"].Content;

        // 1 in = 25.4 mm and 1 lbf = 4.4482216152605 N, both exact.
        Assert.Equal([38.1e-3, 25.4e-3], table["height"].Select(h => Math.Round(h, 12)));
        Assert.Equal(60 * 4.4482216152605, table["load"][0], 9);
    }

    private void Refused(string text, string? sentence = null)
    {
        var path = _folder.Write("heron.json", text);
        var e = Assert.Throws<BadInputException>(() => BookFile.Open(path));
        Assert.StartsWith("heron.json, ", e.Message, StringComparison.Ordinal);
        if (sentence is not null)
        {
            Assert.Equal(sentence, e.Message);
        }
    }
}
