using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tests.Checks;

namespace Gudgeon.Book.Tests.Head;

/// <summary>Seats, guides, stems and the leak test, each against a value worked by hand.</summary>
public class SeatSheetTests
{
    private static readonly BuildBook Valve = Books.Of(
        ("engine.cylinders", "1"),
        ("engine.revLimit", "9000 rpm"),
        ("valve[exhaust].headDiameter", "30 mm"),
        ("valve[exhaust].seatWidth", "1.4 mm"),
        ("valve[exhaust].lift", "9 mm"),
        ("valve[exhaust].stemDiameter", "5.46 mm"),
        ("valve[exhaust].stemStressLimit", "100 MPa"),
        ("valve[exhaust].seatingSpeed", "0.5 m/s"),
        ("guide[exhaust].bore", "5.505 mm"),
        ("guide[exhaust].clearanceMin", "0.03 mm"),
        ("guide[exhaust].clearanceMax", "0.09 mm"),
        ("guide[exhaust].temperature", "200 °C"),
        ("guide[exhaust].stemTemperature", "400 °C"),
        ("guide[exhaust].expansion", "18 µm/(m·K)"),
        ("guide[exhaust].stemExpansion", "18 µm/(m·K)"),
        ("spring[exhaust].loadTable", "270 N at 38.5 mm; 570 N at 28.5 mm"),
        ("spring[exhaust].freeLength", "47.5 mm"),
        ("spring[exhaust].solidHeight", "24 mm"),
        ("spring[exhaust].installedHeight", "38.5 mm"));

    [Fact]
    public void Seat_width()
    {
        Appraisal.Of(Valve, "seat-width", "exhaust").Is(1.4e-3, 1.4 / 1.1, Verdict.Holds);
        Appraisal.Of(Valve.Set(("valve[exhaust].seatWidth", "2 mm")), "seat-width", "exhaust").Is(2e-3, 0.9, Verdict.FallsShort);
        Appraisal.Of(Valve.Set(("valve[inlet].seatWidth", "1.6 mm")), "seat-width", "inlet").Is(1.6e-3, 1.5 / 1.6, Verdict.FallsShort);
        Assert.Equal(Verdict.Holds, Appraisal.Of(Valve.Set(("valve[exhaust].seatWidth", "2 mm")).Limited("seat-width.exhaustMax", "2.2 mm"), "seat-width", "exhaust").Verdict);
        Assert.Equal(["exhaust"], CheckCatalogue.Find("seat-width").Instances(new(Valve.Now())));
    }

    // Cold 45 µm. Hot: 5.505 (1 + 18e-6 × 180) − 5.46 (1 + 18e-6 × 380) = 25.49 µm.
    [Fact]
    public void Stem_clearance_cold_and_hot()
    {
        Appraisal.Of(Valve, "stem-clearance", "exhaust").Is(0.045e-3, 1.5, Verdict.Holds);
        var hot = 5.505e-3 * (1 + (18e-6 * 180)) - 5.46e-3 * (1 + (18e-6 * 380));
        Assert.Equal(25.49e-6, hot, 0.01e-6);
        Appraisal.Of(Valve, "stem-clearance-hot", "exhaust").Is(hot, hot / 5e-6, Verdict.Holds);
        Appraisal.Of(Valve.Set(("valve[exhaust].stemDiameter", "5.49 mm")), "stem-clearance", "exhaust").Is(0.015e-3, 0.5, Verdict.FallsShort);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(Valve.Set(("guide[exhaust].stemTemperature", "650 °C")), "stem-clearance-hot", "exhaust").Verdict);
    }

    // 540 N at full lift and 270 N shut on π/4 × 5.46² mm²; the blow 0.5 m/s × √(206 GPa × 7850 kg/m³).
    [Fact]
    public void Stem_tension()
    {
        var area = Math.PI / 4 * 5.46e-3 * 5.46e-3;
        var seating = (270 / area) + (0.5 * Math.Sqrt(206e9 * 7850));
        Assert.True(seating > 540 / area);
        Appraisal.Of(Valve, "stem-stress", "exhaust").Is(seating, 100e6 / seating, Verdict.Holds);
        Appraisal.Of(Valve.Set(("valve[exhaust].seatingSpeed", "0.01 m/s")), "stem-stress", "exhaust").Is(540 / area, 100e6 / (540 / area), Verdict.Holds);

        // A ramp of 0.25 mm over 40° of crank at 9000 rpm: 0.3375 m/s.
        var ramp = Valve.Without("valve[exhaust].seatingSpeed").Set(("cam[exhaust].rampHeight", "0.25 mm"), ("cam[exhaust].rampAngle", "40°"));
        Assert.Equal((270 / area) + (0.3375 * Math.Sqrt(206e9 * 7850)), Appraisal.Of(ramp, "stem-stress", "exhaust").Judgement!.Value, 1.0);
        Assert.Equal(["valve[exhaust].seatingSpeed"], Appraisal.Of(Valve.Without("valve[exhaust].seatingSpeed"), "stem-stress", "exhaust").Missing);
    }

    // (690 − 612) / 690 = 11.3 %.
    [Fact]
    public void Leak_test_says_where_and_what_it_means()
    {
        var tested = Valve.Set(("cylinder[1].leakSupply", "690 kPa"), ("cylinder[1].leakHeld", "612 kPa"), ("cylinder[1].leakFrom", "exhaust valve"));
        var finding = Appraisal.Of(tested, "leak-down", "1");
        finding.Is(78.0 / 690, 0.1 / (78.0 / 690), Verdict.FallsShort);
        Assert.Contains("an exhaust valve does not seal", finding.Judgement!.Remark, StringComparison.Ordinal);
        Appraisal.Of(Valve.Set(("cylinder[1].leakDown", "4 %")), "leak-down", "1").Is(0.04, 2.5, Verdict.Holds);
        Assert.Empty(CheckCatalogue.Find("leak-down").Instances(new(Valve.Now())));
        Assert.Contains("must not exceed the supply", Assert.Single(Appraisal.Of(tested.Set(("cylinder[1].leakHeld", "700 kPa")), "leak-down", "1").Missing), StringComparison.Ordinal);
    }

    [Fact]
    public void The_sheet_has_what_is_known_and_no_more()
    {
        var sheet = SeatSheet.Of(new(Valve.Now()));
        Assert.Null(sheet.GreatestPressure);
        var (inlet, exhaust) = (sheet.Rows.Single(r => r.Valve == "inlet"), sheet.Rows.Single(r => r.Valve == "exhaust"));
        Assert.Null(inlet.Width);
        Assert.Null(inlet.Cold);
        Assert.Null(exhaust.SeatPressure);
        Assert.Equal(0.030 - (0.0014 * Math.Cos(Math.PI / 4)), exhaust.MeanDiameter!.Value, 1e-12);
        Assert.Equal(0.045e-3, exhaust.Cold!.Value, 1e-12);
    }

    // The run's greatest pressure on the demo book, against the band by hand.
    [Fact]
    public void Seat_pressure_comes_from_the_run()
    {
        var finding = Demo.DemoBooks.Heron.Findings.Single(f => f.Id == "seat-pressure[exhaust.1.1]");
        var pressure = Demo.DemoBooks.Heron.Run.PeakPressure.Value - Demo.DemoBooks.Heron.Run.Ambient.Pressure;
        var mean = 30.5e-3 - (1.4e-3 * Math.Cos(Math.PI / 4));
        var seat = 272 + ((586 - 272) / 10.5e-3 * (38.5e-3 - (38.52e-3 - 2.01e-3)));
        Assert.Equal((seat + (Math.PI / 4 * mean * mean * pressure)) / (Math.PI * mean * 1.4e-3 * Math.Cos(Math.PI / 4)), finding.Judgement!.Value, 1.0);
    }
}
