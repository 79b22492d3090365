using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;

namespace Gudgeon.Book.Tests.Build;

/// <summary>The sheet of all fields.</summary>
public class FieldSheetTests
{
    private static readonly BuildBook Some = Books.Of(("cylinder[2].bore", "80 mm"), ("cylinder[10].bore", "80 mm"), ("cylinder.deckHeight", "0 mm"), ("valve[exhaust].lift", "8 mm"), ("valve[inlet.1.2].lift", "9 mm"), ("bearing[main.1].journal", "45 mm"), ("bearing[bigEnd.1].housing", "45 mm"));

    [Fact]
    public void What_is_written_is_listed_once_the_group_first_and_numbers_by_size() =>
        Assert.Equal(
            ["bearing[bigEnd.1].housing", "bearing[main.1].journal", "cylinder.deckHeight", "cylinder[2].bore", "cylinder[10].bore", "valve[inlet.1.2].lift", "valve[exhaust].lift"],
            FieldSheet.Of(Some, Some.Now(), unknown: false).Select(l => l.Address.Path));

    [Fact]
    public void What_is_not_known_is_listed_where_it_is_wanted()
    {
        var unknown = FieldSheet.Of(Some, Some.Now(), unknown: true).Where(l => l.Found is null).Select(l => l.Address.Path).ToList();
        Assert.Contains("cylinder.chamberVolume", unknown);
        Assert.DoesNotContain("cylinder[2].chamberVolume", unknown);
        Assert.Contains("bearing[bigEnd.1].journal", unknown);
        Assert.DoesNotContain("bearing.journal", unknown);
        Assert.Contains("valve.lash", unknown);
        Assert.DoesNotContain("valve[inlet].lift", unknown);
        Assert.DoesNotContain("valve[exhaust].lift", unknown);
    }

    [Fact]
    public void Every_field_is_there_when_all_are_wanted() =>
        Assert.Empty(FieldCatalogue.All.Except(FieldSheet.Of(Some, Some.Now(), unknown: true).Select(l => l.Address.Field)));

    [Fact]
    public void A_value_of_a_change_that_is_off_is_listed_though_nothing_holds()
    {
        var book = Books.Of(("crank.stroke", "70 mm")).Changed("long", ("rod.length", "130 mm")).Switched("long", false);
        Assert.Equal([("crank.stroke", true), ("rod.length", false)], FieldSheet.Of(book, book.Now(), unknown: false).Select(l => (l.Address.Path, l.Found is not null)));
    }
}
