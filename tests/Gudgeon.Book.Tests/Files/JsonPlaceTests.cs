using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Files;

public class JsonPlaceTests
{
    private static readonly Gen<string> Words = Gen.String[Gen.OneOf(Gen.Char[' ', '~'], Gen.OneOf('é', 'µ', '±', '€', '\t', '\n', '\u2028', '\0')), 0, 12];
    private static readonly Gen<List<string>> Remarks = Gen.Frequency((5, Gen.Const(0)), (1, Gen.Const(1)), (1, Gen.Const(2)))
        .SelectMany(n => Gen.String[Gen.Char['!', '~'], 1, 10].List[n]);

    private static readonly Gen<JsonPlace> Leaf = Gen.OneOf(
        Words.Select(JsonPlace.Of),
        Gen.OneOf(Gen.Double.Where(double.IsFinite).Select(d => d.ToString("R", System.Globalization.CultureInfo.InvariantCulture)), Gen.OneOf("1.50", "-0", "1e-6", "12345678901234567890", "0.1000"))
            .Select(n => JsonPlace.Raw(JsonValueKind.Number, n)),
        Gen.OneOf(JsonValueKind.True, JsonValueKind.False, JsonValueKind.Null).Select(k => JsonPlace.Raw(k, "")));

    [Fact]
    public void A_document_survives_writing_and_reading()
    {
        Tree(4).Sample(
            tree =>
            {
                var text = JsonText.Write(tree);
                var back = JsonPlace.Parse(text, "x");
                Assert.Equal(Shape(tree), Shape(back));
                Assert.Equal(text, JsonText.Write(back));
            },
            iter: 2000);
    }

    [Fact]
    public void What_is_written_is_json_with_comments()
    {
        var options = new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip };
        Tree(3).Sample(tree => { using var _ = JsonDocument.Parse(JsonText.Write(tree), options); }, iter: 500);
    }

    [Fact]
    public void Comments_at_odd_places_are_kept()
    {
        const string Text = """
            // first
            { /* a */ "a": /* b */ /* c */ 1 /* d */, // e
              "empty": { /* f */ },
              "none": [ /* g */ ],
              "row": [1, 2 /* h */],
              "late": [ { "x": 1 /* i */ } /* j */ ],
              /* k
                 l */
              "z": null, // m
            }
            // last
            """;
        var written = JsonText.Write(JsonPlace.Parse(Text, "x"));
        foreach (var comment in "first a b c d e f g h i j k l m last".Split(' '))
        {
            Assert.Contains($"// {comment}\n", written, StringComparison.Ordinal);
        }

        Assert.Equal(written, JsonText.Write(JsonPlace.Parse(written, "x")));
    }

    [Fact]
    public void A_member_keeps_its_place_and_its_comments_when_it_is_set()
    {
        var root = JsonPlace.Parse("{ \"a\": 1,\n // why\n \"b\": 2, \"c\": 3 }", "x");
        root.Set("b", JsonPlace.Of("two"));
        root.Set("d", JsonPlace.Of("four"));
        Assert.Equal("{ \"a\": 1,\n  // why\n  \"b\": \"two\", \"c\": 3,\n  \"d\": \"four\" }\n", JsonText.Write(root));
    }

    [Theory]
    [InlineData("{ \"a\": 1,\n  \"b\": { \"c\": 1,\n    \"c\": 2 } }", "heron.json, line 3, b.c: given twice, first on line 2")]
    [InlineData("{ \"a\": 1,\n \"\\u0061\": 2 }", "heron.json, line 2, a: given twice, first on line 1")]
    [InlineData("{ \"cylinder\": { \"[1]\": { \"bore\": 1,\n \"bore\": 2 } } }", "heron.json, line 2, cylinder[1].bore: given twice, first on line 1")]
    [InlineData("{\n  \"a\": {\n    \"b\": 1\n  }\n", "heron.json, line 5: the file ends in the middle; a bracket was never closed")]
    [InlineData("[1, 2\n", "heron.json, line 2: the file ends in the middle; a bracket was never closed")]
    public void A_fault_is_said_with_its_line(string text, string sentence) =>
        Assert.Equal(sentence, Assert.Throws<BadInputException>(() => JsonPlace.Parse(text, "heron.json")).Message);

    [Theory]
    [InlineData("{\n \"a\": \"never clo", 2)]
    [InlineData("{\n \"a\": 01 }", 2)]
    [InlineData("{\n \"a\": NaN }", 2)]
    [InlineData("{ \"a\": 1 }\n}", 2)]
    [InlineData("{ \"a\": 1 }\n\n{}", 3)]
    [InlineData("{\n\n \"a\" 1 }", 3)]
    [InlineData("{ \"a\": 1,\n , \"b\": 2 }", 2)]
    [InlineData("{ \"a\": 1 ]", 1)]
    [InlineData("{ a: 1 }", 1)]
    [InlineData("{ \"a\"\n /* between name and colon */ : 1 }", 2)]
    [InlineData("{\n \"a\": \"\\ud800\" }", 2)]
    [InlineData("{\n \"\\ud800\": 1 }", 2)]
    [InlineData("{ \"a\": 1\n /* never closed", 2)]
    public void What_is_not_json_is_refused_with_file_and_line(string text, int line)
    {
        var e = Assert.Throws<BadInputException>(() => JsonPlace.Parse(text, "heron.json"));
        Assert.StartsWith($"heron.json, line {line}: ", e.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("BytePosition", e.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" \n")]
    public void An_empty_file_is_said_to_be_empty(string text) =>
        Assert.StartsWith("heron.json: the file is empty", Assert.Throws<BadInputException>(() => JsonPlace.Parse(text, "heron.json")).Message, StringComparison.Ordinal);

    [Fact]
    public void Brackets_without_end_are_refused() =>
        Assert.Throws<BadInputException>(() => JsonPlace.Parse(new string('[', 5000), "x"));

    [Fact]
    public void Any_truncation_of_a_book_is_refused_or_was_complete()
    {
        const string Text = "{ \"a\": [1, {\"b\": \"x\\u00b5\"}], // c\n \"d\": null }";
        for (var n = 0; n < Text.Length; n++)
        {
            Assert.Throws<BadInputException>(() => JsonPlace.Parse(Text[..n], "x"));
        }
    }

    [Fact]
    public void Trailing_commas_are_taken()
    {
        var root = JsonPlace.Parse("{ \"a\": [1, 2,], }", "x");
        Assert.Equal(["1", "2"], root["a"]!.Items.Select(i => i.Text));
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse("{\"a\":[1,2]}"), JsonNode.Parse(JsonText.Write(root))));
    }

    [Fact]
    public void A_value_knows_its_line() => Assert.Equal(3, JsonPlace.Parse("{\n\n \"a\": {\n \"b\": 1 } }", "x")["a"]!.Line);

    private static Gen<JsonPlace> Tree(int depth) => depth == 0 ? Commented(Leaf) : Commented(Gen.Frequency((2, Leaf), (1, Array(depth)), (2, Object(depth))));

    private static Gen<JsonPlace> Array(int depth) => Gen.Select(Tree(depth - 1).List[0, 4], Remarks, (items, closing) =>
    {
        var place = JsonPlace.Array(items);
        place.Closing.AddRange(closing);
        return place;
    });

    private static Gen<JsonPlace> Object(int depth) => Gen.Select(Gen.Select(Words, Tree(depth - 1)).List[0, 4], Remarks, (members, closing) =>
    {
        var place = JsonPlace.Object();
        foreach (var (name, value) in members)
        {
            place.Set(name, value);
        }

        place.Closing.AddRange(closing);
        return place;
    });

    private static Gen<JsonPlace> Commented(Gen<JsonPlace> gen) => Gen.Select(gen, Remarks, Gen.Int[0, 2], Gen.Bool, (place, comments, breaks, onLine) =>
    {
        // A leaf of Gen.Const may come twice: a place is changed only when it is fresh.
        var fresh = new JsonPlace { Kind = place.Kind, Text = place.Text, Breaks = breaks, ClosesOnLine = onLine };
        fresh.Members.AddRange(place.Members);
        fresh.Items.AddRange(place.Items);
        fresh.Closing.AddRange(place.Closing);
        fresh.Comments.AddRange(comments);
        return fresh;
    });

    /// <summary>Everything that must survive, as text.</summary>
    private static string Shape(JsonPlace place) => string.Concat(
        string.Concat(place.Comments.Select(c => $"#{c}#")),
        place.Kind.ToString(),
        "\"",
        place.Text,
        "\"",
        string.Concat(place.Members.Select(m => $"<{m.Name}={Shape(m.Value)}>")),
        string.Concat(place.Items.Select(i => $"<{Shape(i)}>")),
        string.Concat(place.Closing.Select(c => $"!{c}!")));
}
