using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Demo;

/// <summary>Both demo books as files: their form, their stories, and that nothing in them is left dangling.</summary>
public class DemoBookTests
{
    private static readonly JsonDocumentOptions WithComments = new() { CommentHandling = JsonCommentHandling.Skip };

    [Theory]
    [InlineData("heron")]
    [InlineData("wren")]
    public void The_book_says_that_it_is_invented(string name)
    {
        var root = JsonNode.Parse(File.ReadAllText(DemoBooks.PathOf(name)), documentOptions: WithComments)!;
        Assert.StartsWith("INVENTED", (string?)root["notes"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("heron")]
    [InlineData("wren")]
    public void The_file_keeps_to_the_schema(string name)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(DemoBooks.PathOf(name)), WithComments);
        Assert.Empty(new SchemaWalk(BookSchema.Make()).Faults(document.RootElement));
    }

    [Fact]
    public void A_file_that_leaves_the_schema_is_caught()
    {
        using var document = JsonDocument.Parse("""{ "gudgeon": 1, "name": "x", "baseline": { "cylinder": { "[1]": { "bor": "89 mm" }, "[a]": {} }, "engine": { "cylinders": "two" } } }""");
        Assert.Equal(3, new SchemaWalk(BookSchema.Make()).Faults(document.RootElement).Count());
    }

    [Theory]
    [InlineData("heron", 8)]
    [InlineData("wren", 2)]
    public void Every_change_has_a_title_a_reason_and_values(string name, int least)
    {
        var changes = DemoBooks.Named(name).Book.Changes;
        Assert.True(changes.Count >= least);
        Assert.All(changes, c =>
        {
            Assert.NotEmpty(c.Title);
            Assert.NotEmpty(c.Reason);
            Assert.NotEmpty(c.Values);
        });
    }

    [Theory]
    [InlineData("heron")]
    [InlineData("wren")]
    public void Every_reading_names_person_day_and_instrument_and_changes_that_exist(string name)
    {
        var book = DemoBooks.Named(name).Book;
        var ids = book.Changes.Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        Assert.All(book.Measurements, m =>
        {
            Assert.NotEmpty(m.Value.By);
            Assert.True(DateOnly.TryParseExact(m.Value.On, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _), m.Address.Path);
            Assert.NotEmpty(m.Value.With);
            Assert.NotNull(m.Under);
            Assert.Subset(ids, m.Under.ToHashSet(StringComparer.Ordinal));
        });
    }

    [Theory]
    [InlineData("heron")]
    [InlineData("wren")]
    public void No_value_is_outside_what_is_usual(string name) =>
        Assert.DoesNotContain(DemoBooks.Named(name).Now.All().Select(f => f.Value.Question), q => q.Length > 0);

    [Fact]
    public void A_reading_of_a_part_that_was_changed_later_does_not_hold()
    {
        var bore = DemoBooks.Heron.Now.Find(FieldCatalogue.Address("cylinder[1].bore"))!;
        Assert.Equal(Origin.Measurement, bore.Origin);
        Assert.Equal(89.513e-3, bore.Value.Si, 9);

        var asItCame = new Snapshot(DemoBooks.Heron.Book, new HashSet<string>(StringComparer.Ordinal));
        Assert.Equal(89.502e-3, asItCame.Find(FieldCatalogue.Address("cylinder[1].bore"))!.Value.Si, 9);
        Assert.Equal(How.Manual, asItCame.Find(FieldCatalogue.Address("cylinder[1].deckHeight"))!.Value.How);
    }

    [Theory]
    [InlineData("heron", new string[0])]
    [InlineData("wren", new[] { "boost", "boost drive", "surfaces" })]
    public void Every_family_of_checks_answers(string name, string[] without)
    {
        var answered = DemoBooks.Named(name).Findings.Where(f => f.Verdict != Verdict.NotKnownYet).Select(f => f.Check.Family).Distinct();
        Assert.Equal(CheckCatalogue.Families.Except(without).Order(StringComparer.Ordinal), answered.Order(StringComparer.Ordinal));
    }
}
