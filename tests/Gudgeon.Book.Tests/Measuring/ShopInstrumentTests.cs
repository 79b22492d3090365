using Gudgeon.Book.Build;
using Gudgeon.Book.Files;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Measuring;

public class ShopInstrumentTests
{
    private static BuildBook With(params (string Field, string Text)[] fields) =>
        Books.Of([.. fields.Select(f => ($"instrument[mic-50].{f.Field}", f.Text))]);

    private static ShopInstrument One(params (string Field, string Text)[] fields) => Assert.Single(ShopInstrument.All(With(fields).Now()));

    private static string Refused(params (string Field, string Text)[] fields) => Assert.Throws<BadInputException>(() => BookRules.Verify(With(fields))).Message;

    // 4 µm permissible and 1 µm resolution: u = √(16/3 + 1/12) µm = 2.3274 µm. 5 µm by DIN 863-1 to 100 mm: 2.8868 µm.
    [Theory]
    [InlineData("error", "0.004 mm", 2.3274e-6)]
    [InlineData("error", "4 µm", 2.3274e-6)]
    [InlineData("calibrationUncertainty", "0.002 mm", 1.0408e-6)]
    public void The_uncertainty_comes_from_what_is_known(string field, string text, double standard) =>
        Assert.Equal(standard, One(("kind", "micrometer"), ("resolution", "0.001 mm"), (field, text)).At(0.04)!.Value.Standard, 1e-10);

    [Fact]
    public void A_standard_gives_the_limit_by_the_end_of_the_range()
    {
        Assert.Equal(4e-6 / Math.Sqrt(3), One(("kind", "micrometer"), ("standard", "DIN 863-1"), ("from", "25 mm"), ("to", "50 mm")).At(0.03)!.Value.Standard, 1e-12);
        Assert.Equal(5e-6 / Math.Sqrt(3), One(("kind", "micrometer"), ("standard", "DIN 863-1"), ("from", "50 mm"), ("to", "75 mm")).At(0.06)!.Value.Standard, 1e-12);
        Assert.Equal(0.04 * 60 / Math.Sqrt(3), One(("kind", "torque wrench"), ("standard", "ISO 6789"), ("to", "100 N·m")).At(60)!.Value.Standard, 1e-9);
        Assert.Equal(40e-6 / Math.Sqrt(3), One(("kind", "depth gauge"), ("standard", "DIN 862, digital"), ("to", "100 mm")).At(0.05)!.Value.Standard, 1e-12);
    }

    [Theory]
    [InlineData("ISO 3611")]
    [InlineData("ISO 13385-1")]
    [InlineData("DIN 2275")]
    public void A_standard_that_leaves_the_limit_open_gives_none(string standard) =>
        Assert.Null(One(("kind", "micrometer"), ("standard", standard), ("to", "50 mm"), ("resolution", "0.01 mm")).At(0.04));

    [Fact]
    public void A_share_of_the_reading_grows_with_it()
    {
        var wrench = One(("kind", "torque wrench"), ("error", "4 %"), ("to", "100 N·m"));
        Assert.Equal(2.4 / Math.Sqrt(3), wrench.At(60)!.Value.Standard, 1e-9);
        Assert.Equal(1.2 / Math.Sqrt(3), wrench.At(30)!.Value.Standard, 1e-9);
    }

    [Fact]
    public void The_last_zero_check_counts_and_the_ones_before_stay()
    {
        var book = With(("kind", "micrometer"), ("error", "0.003 mm")).Read("instrument[mic-50].zero", "0.002 mm").Read("instrument[mic-50].zero", "-0.003 mm");
        var line = Assert.Single(InstrumentLine.All(book, new DateOnly(2026, 5, 1)));
        Assert.Equal(-3e-6, line.Instrument.Zero!.Value, 1e-12);
        Assert.Equal(Math.Sqrt(6) * 1e-6, line.Instrument.At(0.04)!.Value.Standard, 1e-11);
        Assert.Equal(2, line.ZeroChecks);
    }

    [Fact]
    public void It_is_found_by_its_name_as_people_write_it()
    {
        var now = With(("kind", "micrometer")).Now();
        Assert.Equal("mic-50", ShopInstrument.Find(now, "mic-50")?.Name);
        Assert.Equal("mic-50", ShopInstrument.Find(now, " Mic 50")?.Name);
        Assert.Null(ShopInstrument.Find(now, "mic"));
        Assert.Null(ShopInstrument.Find(now, ""));
    }

    [Fact]
    public void The_calibration_counts_until_the_end_of_its_last_day()
    {
        var instrument = One(("kind", "micrometer"), ("due", "2026-05-31"));
        Assert.False(instrument.Overdue(new DateOnly(2026, 5, 31)));
        Assert.True(instrument.Overdue(new DateOnly(2026, 6, 1)));
        Assert.Equal("overdue since 2026-05-31", InstrumentLine.Of(instrument, new DateOnly(2026, 6, 1)).DueWords);
    }

    [Theory]
    [InlineData("error", "-4 %")]
    [InlineData("error", "-0.004 mm")]
    [InlineData("resolution", "-0.001 mm")]
    [InlineData("calibrationUncertainty", "-0.002 mm")]
    public void What_counts_to_either_side_has_no_sign(string field, string text) =>
        Assert.All([text, text.Replace('-', '−')], typed => Assert.Equal($"instrument[mic-50].{field}: given '{text}', wanted zero or more: it counts to either side", Refused(("kind", "micrometer"), ("to", "50 mm"), (field, typed))));

    [Fact]
    public void Standards_in_a_refusal_can_be_told_apart() => Assert.EndsWith(
        "wanted one of 'DIN 863-1', 'ISO 3611', 'DIN 862', 'DIN 862, digital', 'ISO 13385-1', 'DIN 878', 'DIN 2275', 'ISO 6789', 'ISO 7500-1, class 1'",
        Refused(("kind", "micrometer"), ("standard", "DIN 863")),
        StringComparison.Ordinal);

    // Range in temperatures, errors in differences: u = √(1.5²/3 + 0.1²/12 + 0.5²/3) K = 0.9134 K; 1.8 °F are 1 K.
    [Fact]
    public void A_thermometer_errs_by_differences()
    {
        var probe = One(("kind", "thermometer"), ("from", "-50 °C"), ("to", "300 °C"), ("error", "1.5 K"), ("resolution", "0.1 °C"), ("zero", "-0.5 K"));
        Assert.Equal((223.15, 573.15), (Math.Round(probe.From!.Value, 9), Math.Round(probe.To!.Value, 9)));
        Assert.Equal(0.9134, probe.At(373.15)!.Value.Standard, 1e-4);
        Assert.True(probe.Reaches(223.2));
        Assert.False(probe.Reaches(223.1));
        Assert.Equal(1 / Math.Sqrt(3), One(("kind", "thermometer"), ("error", "1.8 °F")).At(300)!.Value.Standard, 1e-9);
        Assert.Equal("thermometer, -50 °C to 300 °C; ± 1.8 K (k = 2) at the end of its range", InstrumentLine.Of(probe, new DateOnly(2026, 5, 1)).Words(imperial: false));
        Assert.Equal("instrument[mic-50].error: given '4 %', which is a plain number; wanted a temperature difference such as '12.3 K'", Refused(("kind", "thermometer"), ("error", "4 %")));
    }

    [Fact]
    public void What_is_of_another_dimension_is_refused_by_name()
    {
        Assert.Equal("instrument[mic-50].error: given '4 N·m', which is a torque; wanted a length such as '12.3 mm'", Refused(("kind", "micrometer"), ("error", "4 N·m")));
        Assert.Equal("instrument[mic-50].to: given '100 mm', which is a length; wanted a torque such as '12.3 N·m'", Refused(("kind", "torque wrench"), ("to", "100 mm")));
        Assert.Equal("instrument[mic-50].standard: given 'ISO 6789', which is for a torque; instrument[mic-50] measures a length", Refused(("kind", "micrometer"), ("standard", "ISO 6789")));
        Assert.Equal("instrument[mic-50].to: given '25 mm', wanted more than the 50 mm from which its range begins", Refused(("kind", "micrometer"), ("from", "50 mm"), ("to", "25 mm")));
        Assert.StartsWith("instrument[mic-50].kind: what it is is not said", Refused(("error", "0.004 mm")), StringComparison.Ordinal);
        Assert.StartsWith("instrument[mic-50].standard: measured length: the micrometer table ends at 200 mm", Refused(("kind", "micrometer"), ("standard", "DIN 863-1"), ("to", "300 mm")), StringComparison.Ordinal);
        BookRules.Verify(With(("kind", "micrometer"), ("error", "0.0002 in"), ("to", "1 in")));
    }
}
