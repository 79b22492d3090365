using CsCheck;
using Gudgeon.Book.Build;

namespace Gudgeon.Book.Tests.Build;

public class SnapshotTests
{
    private const string Bore = "cylinder[1].bore";
    private static readonly BuildBook Plain = Books.Of(("cylinder.bore", "80 mm"));

    [Fact]
    public void The_group_holds_for_its_instances_and_says_where_it_is_written()
    {
        var found = Plain.Now().Find(Gudgeon.Book.Fields.FieldCatalogue.Address(Bore))!;
        Assert.Equal("cylinder.bore", found.Source);
        Assert.Equal(Origin.Baseline, found.Origin);
        Assert.Equal("", Plain.Now().Holding("crank.stroke"));
    }

    [Fact]
    public void In_a_layer_the_instance_goes_before_its_group_whatever_the_order()
    {
        var book = Books.Of(("valve[inlet.1.2].lift", "3.3 mm"), ("valve.lift", "3.0 mm"), ("valve[inlet].lift", "3.1 mm"), ("valve[inlet.1].lift", "3.2 mm"));
        Assert.Equal("3.3 mm", book.Now().Holding("valve[inlet.1.2].lift"));
        Assert.Equal("3.2 mm", book.Now().Holding("valve[inlet.1.1].lift"));
        Assert.Equal("3.1 mm", book.Now().Holding("valve[inlet.2.1].lift"));
        Assert.Equal("3.0 mm", book.Now().Holding("valve[exhaust.1.1].lift"));
    }

    [Fact]
    public void A_later_layer_wins_even_with_a_group_against_an_instance()
    {
        var book = Plain.Set((Bore, "80.1 mm")).Changed("bored", ("cylinder.bore", "81 mm"));
        Assert.Equal("81 mm", book.Now().Holding(Bore));
        Assert.Equal("80.1 mm", book.Switched("bored", false).Now().Holding(Bore));
        Assert.Equal("81.02 mm", book.Read("cylinder.bore", "81.02 mm", ["bored"]).Now().Holding(Bore));
    }

    [Fact]
    public void The_later_of_two_changes_wins()
    {
        var book = Plain.Changed("a", ("cylinder.bore", "81 mm")).Changed("b", ("cylinder.bore", "82 mm"));
        Assert.Equal("82 mm", book.Now().Holding(Bore));
        Assert.Equal("81 mm", book.Switched("b", false).Now().Holding(Bore));
        Assert.Equal("80 mm", book.Switched("a", false).Switched("b", false).Now().Holding(Bore));
    }

    [Fact]
    public void The_latest_reading_that_holds_wins()
    {
        var book = Plain.Read(Bore, "80.01 mm", null).Read(Bore, "80.02 mm", null);
        Assert.Equal("80.02 mm", book.Now().Holding(Bore));
        Assert.Equal("80 mm", book.Now().Holding("cylinder[2].bore"));
    }

    // The part measured is the part that was there: bored or not bored.
    [Theory]
    [InlineData(false, false, "80.01 mm")]
    [InlineData(false, true, "81 mm")]
    [InlineData(true, true, "80.01 mm")]
    [InlineData(true, false, "80 mm")]
    public void A_reading_holds_only_while_the_same_changes_bear_on_its_field(bool then, bool now, string holds)
    {
        var book = Plain.Changed("bored", ("cylinder.bore", "81 mm")).Read(Bore, "80.01 mm", then ? ["bored"] : []);
        Assert.Equal(holds, book.Switched("bored", now).Now().Holding(Bore));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_change_that_does_not_bear_on_the_field_leaves_the_reading_alone(bool on)
    {
        var book = Plain.Changed("bored", ("cylinder.bore", "81 mm")).Changed("gasket", ("cylinder.gasketThickness", "0.9 mm")).Read(Bore, "81.01 mm", ["bored"]);
        Assert.Equal("81.01 mm", book.Switched("gasket", on).Now().Holding(Bore));
    }

    [Fact]
    public void A_reading_under_changes_that_the_book_does_not_know_still_holds()
    {
        var book = Plain.Changed("bored", ("cylinder.bore", "81 mm")).Read(Bore, "81.01 mm", ["bored", "long gone"]);
        Assert.Equal("81.01 mm", book.Now().Holding(Bore));
        Assert.Equal("80 mm", book.Switched("bored", false).Now().Holding(Bore));
    }

    [Fact]
    public void An_older_reading_comes_back_when_the_newer_one_does_not_hold()
    {
        var book = Plain.Changed("bored", ("cylinder.bore", "81 mm")).Read(Bore, "80.01 mm", []).Read(Bore, "81.01 mm", ["bored"]);
        Assert.Equal("81.01 mm", book.Now().Holding(Bore));
        Assert.Equal("80.01 mm", book.Switched("bored", false).Now().Holding(Bore));
    }

    [Fact]
    public void A_change_to_one_cylinder_leaves_the_reading_of_the_other_alone()
    {
        var book = Plain.Changed("sleeve", (Bore, "81 mm")).Read("cylinder.bore", "80.02 mm", []);
        Assert.Equal("81 mm", book.Now().Holding(Bore));
        Assert.Equal("80.02 mm", book.Now().Holding("cylinder[2].bore"));
    }

    [Fact]
    public void Switching_there_and_back_restores_every_value()
    {
        var paths = new[] { "cylinder.bore", Bore, "cylinder[2].bore", "cylinder.deckHeight" };
        var change = Gen.Select(Gen.OneOf(paths), Gen.Int[70, 99], (p, v) => (p, $"{v} mm")).Array[1, 3].Select(a => a.DistinctBy(v => v.p).ToArray());
        Gen.Select(change, change, Gen.Int[0, 3], Gen.OneOf(paths)).Sample((a, b, under, read) =>
        {
            string[] on = [.. new[] { "a", "b" }.Where((_, i) => (under & (1 << i)) != 0)];
            var book = Plain.Changed("a", a).Changed("b", b).Read(read, "75.5 mm", on);
            string All(BuildBook x) => string.Join('|', paths.Select(x.Now().Holding));
            var before = All(book);
            var back = book.Switched("a", false).Switched("b", false).Switched("b", true).Switched("a", true);
            Assert.Equal(before, All(back));
            Assert.Equal("75.5 mm", new Snapshot(book, on.ToHashSet(StringComparer.Ordinal)).Holding(read));
        });
    }

    [Fact]
    public void The_snapshot_lists_what_holds_and_the_indices_in_use()
    {
        var book = Books.Of(("spring[inlet].wire", "4 mm")).Changed("one", ("spring[inlet.1.2].wire", "4.2 mm")).Read("spring[exhaust].wire", "4.1 mm", null);
        var subject = Gudgeon.Book.Fields.Spring.Wire.Subject;
        Assert.Equal(["exhaust", "inlet", "inlet.1.2"], book.Now().Indices(subject));
        Assert.Equal(["exhaust", "inlet"], book.Switched("one", false).Now().Indices(subject));
        Assert.Equal(["spring[exhaust].wire", "spring[inlet.1.2].wire", "spring[inlet].wire"], book.Now().All().Select(f => f.Source));
    }
}
