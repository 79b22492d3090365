using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Measuring;

public sealed class ReadAtTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    // 80 (22.3e-6 × 6 − 11.5e-6 × 2) = 0.008864 mm too large; u = 1.195 µm with the usual limits for what is not said.
    [Fact]
    public void A_length_is_brought_to_20_degrees_and_says_what_was_read()
    {
        var value = At("26 °C", "22 °C", "22.3 µm/(m·K)").Corrected(Books.Of().Now(), Address("piston[1].diameter"), Read("piston[1].diameter", "80.000 mm ± 0.004 mm"));
        Assert.Equal("79.9911 mm ± 0.0047 mm", value.Content.ToString());
        Assert.Equal(80e-3 - 8.864e-6, value.Si, 1e-12);
        Assert.Equal("read 80.000 mm ± 0.004 mm with the part at 26 °C and the tool at 22 °C, brought to 20 °C", value.Note);
    }

    [Fact]
    public void Temperatures_known_better_leave_less_uncertain()
    {
        double U(string part, string tool) => ((Amount)At(part, tool, "22.3 µm/(m·K)").Corrected(Books.Of().Now(), Address("piston[1].diameter"), Read("piston[1].diameter", "80.000 mm")).Content).Uncertainty;
        Assert.Equal(2.4e-6, U("26 °C", "22 °C"), 1e-9);

        // u = 80 mm √((6² + 2²) (0.577e-6)² + (22.3e-6 × 0.05)² + (11.5e-6 × 0.05)²) = 0.309 µm.
        Assert.Equal(0.62e-6, U("26 ± 0.1 °C", "22 ± 0.1 °C"), 1e-9);
    }

    [Theory]
    [InlineData("cylinder[1].bore", "cylinder.expansion", "21 µm/(m·K)", 21e-6)]
    [InlineData("piston[1].diameter", "piston.expansion", "20 µm/(m·K)", 20e-6)]
    [InlineData("bearing[main.1].housing", "bearing.housingExpansion", "22 µm/(m·K)", 22e-6)]
    [InlineData("bearing[main.1].journal", "bearing.width", "20 mm", 11.5e-6)]
    public void What_the_part_is_made_of_is_taken_from_its_own_field(string path, string field, string text, double expansion)
    {
        var at = At("30 °C", "20 °C").Of(Books.Of((field, text)).Now(), Address(path), 0.1);
        Assert.Equal(0.1 * (1 - (10 * expansion)), at.Corrected, 1e-12);
    }

    [Fact]
    public void A_material_of_the_handbook_is_one_too() =>
        Assert.Equal(Gudgeon.Calc.Materials.MaterialTable.Of(Gudgeon.Calc.Materials.MaterialGrade.Steel42CrMo4).Expansion * 0.1 * 10, At("30 °C", "20 °C", "steel 42CrMo4").Of(Books.Of().Now(), Address("crank.stroke"), 0.1).Error, 1e-15);

    [Fact]
    public void What_cannot_be_brought_to_20_degrees_is_refused()
    {
        string Refused(ReadAt at, string path, string text) => Assert.Throws<BadInputException>(() => at.Corrected(Books.Of().Now(), Address(path), Read(path, text))).Message;
        Assert.Equal("piston[1].mass: given temperatures with a mass; only a single length is brought to 20 °C", Refused(At("26 °C", "22 °C"), "piston[1].mass", "300 g"));
        Assert.StartsWith("crank.stroke: nothing says how the part grows; wanted --made-of with a thermal expansion such as 23µm/(m·K)", Refused(At("26 °C", "22 °C"), "crank.stroke", "48.5 mm"), StringComparison.Ordinal);
        Assert.StartsWith("crank.stroke: given 'cheese' as what the part is made of, wanted", Refused(At("26 °C", "22 °C", "cheese"), "crank.stroke", "48.5 mm"), StringComparison.Ordinal);
        Assert.Equal("crank.stroke, temperature of the part: given '26 mm', which is a length; wanted a temperature such as '12.3 °C'", Refused(At("26 mm", "22 °C", "12 µm/(m·K)"), "crank.stroke", "48.5 mm"));
        Assert.StartsWith("cylinder.bore: a reading is brought to 20 °C by two temperatures", Assert.Throws<BadInputException>(() => ReadAt.Said("cylinder.bore", "26 °C", "", "")).Message, StringComparison.Ordinal);
        Assert.Null(ReadAt.Said("cylinder.bore", "", "", ""));
    }

    [Theory]
    [InlineData("wren.gudgeon")]
    [InlineData("wren.json")]
    public void The_book_keeps_the_length_at_20_degrees_with_both_uncertainties(string form)
    {
        var file = BookFile.Create(_folder.PathOf(form), "Wren").Set("cylinder.expansion", "23 µm/(m·K)", []).Set("instrument[bore-100].kind", "bore gauge", []);
        file = file.Set("instrument[bore-100].error", "0.003 mm", []);
        file = file.Measure("cylinder[1].bore", "90.012 mm", "bore-100", "Ada", "2026-05-01", "door open", at: At("28 °C", "28 °C"));

        // 8.281 µm too large; U = √(3.5² + (2 × 1.46)²) µm = 4.56 µm.
        var kept = Assert.Single(file.Book.Measurements).Value;
        Assert.Equal("90.0037 mm ± 0.0046 mm", kept.Content.ToString());
        Assert.Equal("door open; read 90.012 mm ± 0.0035 mm with the part at 28 °C and the tool at 28 °C, brought to 20 °C", kept.Note);
    }

    [Theory]
    [InlineData("2600°C", "22°C", "part: given '2600°C'")]
    [InlineData("-61 °C", "22°C", "part: given '-61 °C'")]
    [InlineData("26°C", "401°C", "tool: given '401°C'")]
    [InlineData("1000 °F", "70 °F", "part: given '1000 °F'")]
    public void No_part_and_no_tool_is_so_cold_or_hot(string part, string tool, string sentence) => Assert.Equal(
        $"piston[1].diameter, temperature of the {sentence}, wanted -60 °C to 400 °C",
        Assert.Throws<BadInputException>(() => At(part, tool).Corrected(Books.Of().Now(), Address("piston[1].diameter"), Read("piston[1].diameter", "80.000 mm"))).Message);

    [Fact]
    public void The_coldest_and_the_hottest_are_taken()
    {
        var at = At("400 °C", "-60 °C", "10 µm/(m·K)").Of(Books.Of().Now(), Address("piston[1].diameter"), 0.1);
        Assert.Equal(0.1 * (1 - (380 * 10e-6) - (80 * 11.5e-6)), at.Corrected, 1e-12);
    }

    private static ReadAt At(string part, string tool, string madeOf = "") => new(part, tool, madeOf);

    private static FieldAddress Address(string path) => FieldCatalogue.Address(path);

    private static KnownValue Read(string path, string text) => KnownValue.Read(Address(path).Field, text);
}
