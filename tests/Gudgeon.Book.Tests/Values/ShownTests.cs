using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Values;

/// <summary>Values as a reader of metric or of inch units sees them. An inch is 25.4 mm, a pound-force 4.4482216 N.</summary>
public class ShownTests
{
    [Theory]
    [InlineData("cylinder.bore", "94.01 mm", "94.01 mm", "3.7012 in")]
    [InlineData("cylinder.bore", "94.01 mm ± 0.005 mm", "94.01 mm ± 0.005 mm", "3.7012 in ± 0.0002 in")]
    [InlineData("cylinder.bore", "89.513 mm ± 0.006 mm", "89.513 mm ± 0.006 mm", "3.52413 in ± 0.00024 in")]
    [InlineData("cylinder.bore", "3.7012 in ± 0.0002 in", "94.0105 mm ± 0.0051 mm", "3.7012 in ± 0.0002 in")]
    [InlineData("spring.spacer", "80 thou", "2.032 mm", "80 thou")]
    [InlineData("joint[head].torque", "48 N·m ± 2 N·m", "48 N·m ± 2 N·m", "35.403 lbf·ft ± 1.5 lbf·ft")]
    [InlineData("joint[head].torque", "35 ft·lb", "47.454 N·m", "35 ft·lb")]
    [InlineData("crank.mass", "11.84 kg", "11.84 kg", "26.103 lb")]
    [InlineData("engine.cylinders", "2", "2", "2")]
    [InlineData("fuel.lambda", "0.85", "0.85", "0.85")]
    public void Each_reader_has_an_amount_in_units_of_their_own(string path, string text, string metric, string imperial)
    {
        var value = Read(path, text);
        Assert.Equal((metric, imperial), (value.Shown(imperial: false), value.Shown(imperial: true)));
    }

    // 25 °C is 77 °F; a difference of 1 °C is one of 1.8 °F, without the 32.
    [Theory]
    [InlineData("25 °C", "25 °C", "77 °F")]
    [InlineData("25 °C ± 1 °C", "25 °C ± 1 °C", "77 °F ± 1.8 °F")]
    [InlineData("-40 °C", "-40 °C", "-40 °F")]
    [InlineData("68 °F ± 9 °F", "20 °C ± 5 °C", "68 °F ± 9 °F")]
    public void A_temperature_has_its_zero_moved_and_its_uncertainty_not(string text, string metric, string imperial)
    {
        var value = Read("weather.temperature", text);
        Assert.Equal((metric, imperial), (value.Shown(imperial: false), value.Shown(imperial: true)));
    }

    [Fact]
    public void A_table_has_each_column_in_the_readers_units() =>
        Assert.Equal("96.893 lbf at 1.3583 in; 161.86 lbf at 0.98425 in", Read("spring.loadTable", "431 N at 34.5 mm; 720 N at 25 mm").Shown(imperial: true));

    [Theory]
    [InlineData("cylinder.bore", "94.01 mm", "94.01 mm = 3.7012 in")]
    [InlineData("cylinder.bore", "3.7012 in", "3.7012 in = 94.0105 mm")]
    [InlineData("engine.cylinders", "2", "2")]
    public void What_was_understood_is_said_in_both(string path, string text, string words) => Assert.Equal(words, Read(path, text).InBoth);

    [Fact]
    public void A_table_is_written_as_it_is_read()
    {
        var field = FieldCatalogue.Find("valve.flowTable")!;
        var text = "1.25 mm at 0.61 at 0.58;\n2.5 mm at 0.6 at 0.57;\n3 mm at 0.59 at 0.55;\n4 mm at 0.58 at 0.5;\n5.125 mm at 0.123456789 at 0.5";
        var table = Table.Parse(field, text);
        Assert.Equal(["lift", "forward", "reverse"], table.Columns.Select(c => c.Name));
        Assert.Equal(text, table.Written);
        Assert.Equal(table, Table.Parse(field, table.Written));
    }

    [Fact]
    public void A_column_that_may_be_left_out_is_in_all_rows_or_in_none()
    {
        var field = FieldCatalogue.Find("valve.flowTable")!;
        Assert.Equal(["lift", "forward"], Table.Parse(field, "1 mm at 0.6; 2 mm at 0.5").Columns.Select(c => c.Name));
        Assert.Contains("wanted rows such as", Assert.Throws<BadInputException>(() => Table.Parse(field, "1 mm at 0.6; 2 mm at 0.5 at 0.4")).Message, StringComparison.Ordinal);
        Assert.Throws<BadInputException>(() => Table.Parse(field, "1 mm; 2 mm"));
        Assert.Throws<BadInputException>(() => Table.Parse(field, "1 mm at 0.6 at 0.5 at 0.4"));
    }

    private static KnownValue Read(string path, string text) => KnownValue.Read(FieldCatalogue.Address(path).Field, text);
}
