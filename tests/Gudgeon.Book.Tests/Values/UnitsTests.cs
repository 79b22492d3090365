using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Tests.Values;

public class UnitsTests
{
    public static TheoryData<Dimension> Dimensions => [.. Enum.GetValues<Dimension>()];

    [Theory]
    [MemberData(nameof(Dimensions))]
    public void Every_dimension_knows_its_SI_unit(Dimension dimension)
    {
        var unit = Units.Find(dimension, dimension.SiUnit());
        Assert.NotNull(unit);
        Assert.Equal(1, unit.Factor, 12);
        Assert.Equal(0, unit.Offset, 12);
    }

    // Exact by definition: inch 25.4 mm, pound 0.45359237 kg, gn 9.80665 m/s², horsepower 550 ft·lbf/s, psi from these.
    [Theory]
    [InlineData(Dimension.Length, "1.359 in", 0.0345186)]
    [InlineData(Dimension.Force, "10 lbf", 44.482216152605)]
    [InlineData(Dimension.Torque, "30 lbf·ft", 40.674538449942)]
    [InlineData(Dimension.Torque, "30 lb-ft", 40.674538449942)]
    [InlineData(Dimension.Torque, "60 Nm", 60)]
    [InlineData(Dimension.Pressure, "14.5 psi", 14.5 * 4.4482216152605 / (0.0254 * 0.0254))]
    [InlineData(Dimension.Power, "300 hp", 223709.961474680)]
    [InlineData(Dimension.Temperature, "68 °F", 293.15)]
    [InlineData(Dimension.Temperature, "20 °C", 293.15)]
    [InlineData(Dimension.TemperatureDifference, "18 °F", 10)]
    [InlineData(Dimension.RotationalSpeed, "9000 rpm", 942.477796076938)]
    [InlineData(Dimension.Volume, "24.8 mL", 24.8e-6)]
    [InlineData(Dimension.Volume, "24.8 cc", 24.8e-6)]
    [InlineData(Dimension.ForcePerLength, "27.068 N/mm", 27068)]
    [InlineData(Dimension.Length, "8 um", 8e-6)]
    [InlineData(Dimension.Length, "8 µm", 8e-6)]
    [InlineData(Dimension.ThermalExpansion, "12e-6 1/K", 12e-6)]
    [InlineData(Dimension.Number, "35 %", 0.35)]
    [InlineData(Dimension.Number, "0.35", 0.35)]
    [InlineData(Dimension.Speed, "60 mph", 26.8224)]
    [InlineData(Dimension.Compliance, "6.91e-6 mm/N", 6.91e-9)]
    [InlineData(Dimension.SpecificFuelConsumption, "300 g/kWh", 8.33333333333333e-8)]
    [InlineData(Dimension.Angle, "85 °", 1.48352986419518)]
    public void Amounts_are_read_into_SI(Dimension dimension, string text, double si) =>
        Assert.Equal(si, Amount.Parse("x", text, dimension, dimension.SiUnit()).Si, Math.Abs(si) * 1e-12);

    [Fact]
    public void A_spring_load_given_as_a_torque_is_refused_with_the_sentence()
    {
        var e = Assert.Throws<BadInputException>(() => Amount.Parse("Seat load", "95 N·m", Dimension.Force, "N"));
        Assert.Equal("Seat load: given '95 N·m', which is a torque; wanted a force such as '12.3 N'", e.Message);
    }

    [Theory]
    [InlineData("NaN mm")]
    [InlineData("abc")]
    [InlineData("")]
    [InlineData("1e999 mm")]
    [InlineData("34,52 mm")]
    [InlineData("34.52")]
    [InlineData("34.52 mm ± x")]
    [InlineData("34.52 parsec-ish")]
    public void What_is_no_length_is_refused_and_named(string text)
    {
        var e = Assert.Throws<BadInputException>(() => Amount.Parse("Bore", text, Dimension.Length, "mm"));
        Assert.StartsWith($"Bore: given '{text}'", e.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("34.52 mm ± 0.01 mm", 0.03452, 1e-5)]
    [InlineData("34.52 ± 0.01 mm", 0.03452, 1e-5)]
    [InlineData("34.52 mm +/- 0.01", 0.03452, 1e-5)]
    [InlineData("1.359 in ± 0.0005 in", 0.0345186, 1.27e-5)]
    [InlineData("40 mm ± 5 %", 0.04, 0.002)]
    public void The_expanded_uncertainty_is_read_with_the_value(string text, double si, double expanded)
    {
        var amount = Amount.Parse("x", text, Dimension.Length, "mm");
        Assert.Equal(si, amount.Si, 1e-12);
        Assert.Equal(expanded, amount.Uncertainty, 1e-12);
        Assert.Equal(expanded / 2, amount.StandardUncertainty, 1e-12);
    }

    [Theory]
    [InlineData("34.520 mm ± 0.01 mm")]
    [InlineData("1.359 in")]
    [InlineData("20 °C")]
    [InlineData("0.35")]
    public void An_amount_prints_as_it_was_written(string text)
    {
        var dimension = text.Contains("°C", StringComparison.Ordinal) ? Dimension.Temperature : text.Contains(' ', StringComparison.Ordinal) ? Dimension.Length : Dimension.Number;
        Assert.Equal(text, Amount.Parse("x", text, dimension, "").ToString());
    }
}
