using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tests.Demo;

namespace Gudgeon.Book.Tests.Build;

/// <summary>What each layer says of a field, and why one holds.</summary>
public class LayersTests
{
    private const string Bore = "cylinder[1].bore";

    [Fact]
    public void A_reading_goes_before_changes_and_these_before_the_baseline()
    {
        var book = Books.Of(("cylinder.bore", "80 mm")).Changed("bored", ("cylinder.bore", "81 mm")).Changed("again", (Bore, "82 mm")).Read(Bore, "82.01 mm", ["bored", "again"]);
        Assert.Equal(
            [
                ("80 mm", false, "a reading goes before it"),
                ("81 mm", false, "a reading goes before it"),
                ("82 mm", false, "a reading goes before it"),
                ("82.01 mm", true, "holds"),
            ],
            Lines(book));
    }

    [Fact]
    public void A_reading_of_a_part_that_is_gone_does_not_hold()
    {
        var book = Books.Of(("cylinder.bore", "80 mm")).Read(Bore, "80.01 mm", []).Changed("bored", ("cylinder.bore", "81 mm"));
        Assert.Equal(
            [
                ("80 mm", false, "a change goes before it"),
                ("81 mm", true, "holds"),
                ("80.01 mm", false, "taken of another part: other changes bore on it then"),
            ],
            Lines(book));
        Assert.Equal(
            [("80 mm", false, "a reading goes before it"), ("81 mm", false, "the change is off"), ("80.01 mm", true, "holds")],
            Lines(book.Switched("bored", false)));
    }

    [Fact]
    public void The_part_itself_goes_before_its_group_and_the_later_before_the_earlier()
    {
        var book = Books.Of(("cylinder.bore", "80 mm"), (Bore, "80.1 mm"));
        Assert.Equal([("80.1 mm", true, "holds"), ("80 mm", false, "the value of the part itself goes before that of its group")], Lines(book));
        var read = book.Read("cylinder.bore", "80.2 mm", null).Read(Bore, "80.3 mm", null).Read(Bore, "80.4 mm", null);
        Assert.Equal(
            ["a reading of the part itself goes before one of its group", "a later reading goes before it", "holds"],
            Lines(read).Skip(2).Select(l => l.Why));
    }

    [Fact]
    public void Exactly_one_layer_holds_unless_readings_are_repeated() =>
        Assert.All(new[] { DemoBooks.Heron.Book, DemoBooks.Wren.Book }, book => Assert.All(FieldSheet.Of(book, book.Now(), unknown: false), line =>
        {
            var holding = Layers.Of(book, book.Now(), line.Address).Where(l => l.Holds).ToList();
            Assert.Equal(line.Found is null ? 0 : line.Found.Repeats, holding.Count);
        }));

    private static (string Value, bool Holds, string Why)[] Lines(BuildBook book) =>
        [.. Layers.Of(book, book.Now(), FieldCatalogue.Address(Bore)).Select(l => (l.Value.Content.ToString()!, l.Holds, l.Why))];
}
