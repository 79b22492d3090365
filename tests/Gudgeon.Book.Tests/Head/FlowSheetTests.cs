using CsCheck;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tests.Checks;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Tests.Head;

/// <summary>The flow sheet against hand work, and against the engine model that it shares its notion with.</summary>
public class FlowSheetTests
{
    private const double InchOfWater = 249.08891;

    /// <summary>One cylinder, both ports on the bench at 28 inH2O.</summary>
    private static BuildBook Single => Books.Of(
        ("engine.cylinders", "1"),
        ("engine.revLimit", "9000 rpm"),
        ("cylinder.bore", "90 mm"),
        ("crank.stroke", "70 mm"),
        ("weather.temperature", "20 °C"),
        ("valve[inlet].count", "2"),
        ("valve[inlet].headDiameter", "36 mm"),
        ("valve[inlet].liftTable", "340° at 0 mm; 460° at 10 mm; 580° at 0 mm"),
        ("valve[inlet].benchPressure", "28 inH2O"),
        ("valve[inlet].benchTable", "2 mm at 30 L/s; 4 mm at 60 L/s; 6 mm at 85 L/s; 8 mm at 100 L/s; 10 mm at 110 L/s"),
        ("valve[exhaust].count", "2"),
        ("valve[exhaust].headDiameter", "30 mm"),
        ("valve[exhaust].liftTable", "130° at 0 mm; 250° at 9 mm; 370° at 0 mm"),
        ("valve[exhaust].benchPressure", "28 inH2O"),
        ("valve[exhaust].benchTable", "3 mm at 38 L/s; 6 mm at 68 L/s; 9 mm at 84 L/s"));

    private static FlowSide Inlet(BuildBook book) => FlowSheet.Of(book).Sides.Single(s => s.Now.Index == "inlet");

    [Fact]
    public void A_reading_at_the_comparison_pressure_is_shown_as_it_was_read() =>
        Assert.Equal([0.030, 0.060, 0.085, 0.100, 0.110], Inlet(Single).Now.Rows.Select(r => r.Flow), (a, b) => Math.Abs(a - b) < 1e-12);

    [Fact]
    public void A_reading_at_another_pressure_is_brought_there()
    {
        var side = Inlet(Single.Set(("valve[inlet].benchPressure", "10 inH2O")));
        Assert.Equal(FlowBench.AtTestPressure(0.110, 10 * InchOfWater, 28 * InchOfWater), side.Now.Rows[^1].Flow, 1e-12);
    }

    /// <summary>Volume flow goes with the root of the temperature, at the same drop: √(313.15/293.15) = 1.03355.</summary>
    [Fact]
    public void Flow_stated_in_warm_air_is_less_area()
    {
        var (cold, warm) = (Inlet(Single), Inlet(Single.Set(("valve[inlet].benchTemperature", "40 °C"))));
        Assert.Equal(Math.Sqrt(313.15 / 293.15), cold.Now.MeanArea / warm.Now.MeanArea, 1e-9);
        Assert.Equal(FlowBench.EffectiveArea(0.110, 28 * InchOfWater, 98000, 293.15), Inlet(Single.Set(("valve[inlet].benchAirPressure", "980 hPa"))).Now.Rows[^1].Area, 1e-15);
    }

    [Fact]
    public void The_engine_breathes_through_the_areas_that_are_shown()
    {
        var now = DemoBooks.Heron.Now;
        var engine = EngineAssembly.Build(new View(now))!.Cylinders[0].Inlet;
        var port = FlowSheet.Of(DemoBooks.Heron.Book).Sides[0].Now;
        var area = new Gudgeon.Simulation.Engine.ValveArea(engine);
        Gen.Double[0, 14e-3].Sample(lift => Math.Abs(area.Forward(lift) - port.AreaAt(lift)) < 1e-15);
        Assert.All(port.Rows, r => Assert.Equal(area.Forward(r.Lift), r.Area, 1e-15));
    }

    /// <summary>Below 4 mm the area goes with the lift, which goes with the angle: the mean of a triangle is half its peak.</summary>
    [Fact]
    public void The_mean_over_a_straight_cam_within_a_straight_port_is_half_the_peak()
    {
        var side = Inlet(Single.Set(("valve[inlet].liftTable", "340° at 0 mm; 460° at 4 mm; 580° at 0 mm")));
        Assert.Equal(side.Now.FullArea / 2, side.Now.MeanArea, side.Now.FullArea * 1e-4);
        Assert.Equal(side.Now.MeanArea / (2 * Math.PI / 4 * 0.036 * 0.036), side.Now.HeadCoefficient, 1e-12);
    }

    /// <summary>By hand from the mean area: Z = b² s w/π / (z D² Ci √(1.4·287·293.15)).</summary>
    [Fact]
    public void The_Mach_index_is_that_of_the_mean_area_and_its_speed_is_where_it_comes_to_the_limit()
    {
        var side = Inlet(Single);
        var sound = Math.Sqrt(1.4 * 287 * 293.15);
        var hand = 0.09 * 0.09 * (0.07 * 9000 / 30) / (2 * 0.036 * 0.036 * side.Now.HeadCoefficient * sound);
        Assert.Equal(hand, side.Mach!.Value, 1e-9);
        Assert.Equal(9000 * Math.PI / 30 * 0.6 / hand, side.MachSpeed!.Value, 1e-6);
        Assert.Equal(9000 * Math.PI / 30 * 0.5 / hand, Inlet(Single.Limited("inlet-mach.max", "0.5")).MachSpeed!.Value, 1e-6);
        Assert.Null(FlowSheet.Of(Single).Sides.Single(s => s.Now.Index == "exhaust").Mach);
    }

    [Fact]
    public void Before_and_after_are_told_apart_into_ports_and_cam()
    {
        var ported = Single.Changed("ported", ("valve[inlet].benchTable", "2 mm at 33 L/s; 4 mm at 66 L/s; 6 mm at 93.5 L/s; 8 mm at 110 L/s; 10 mm at 121 L/s"));
        var side = Inlet(ported);
        Assert.All(side.Now.Rows, r => Assert.Equal(0.1, side.Change(r)!.Value, 1e-9));
        Assert.Equal(0.1, side.MeanChange!.Value, 1e-9);
        Assert.Equal(0.1, side.MeanChangeByPorts!.Value, 1e-9);

        var cam = Inlet(ported.Changed("cam", ("valve[inlet].liftTable", "330° at 0 mm; 460° at 11 mm; 590° at 0 mm")));
        Assert.Equal(0.1, cam.MeanChangeByPorts!.Value, 1e-9);
        Assert.True(cam.MeanChange > 0.1);

        var camAlone = Inlet(Single.Changed("cam", ("valve[inlet].liftTable", "330° at 0 mm; 460° at 11 mm; 590° at 0 mm")));
        Assert.False(camAlone.IsPortChanged);
        Assert.Empty(camAlone.CurveBefore);
        Assert.Null(Inlet(Single.Changed("oil", ("engine.revLimit", "9500 rpm"))).Before);
    }

    [Fact]
    public void A_shut_valve_in_the_readings_is_left_out() =>
        Assert.Equal(5, Inlet(Single.Set(("valve[inlet].benchTable", "0 mm at 0 L/s; 2 mm at 30 L/s; 4 mm at 60 L/s; 6 mm at 85 L/s; 8 mm at 100 L/s; 10 mm at 110 L/s"))).Now.Rows.Count);

    [Fact]
    public void Reverse_flow_stands_beside_forward()
    {
        var row = Inlet(Single.Set(("valve[inlet].benchTable", "2 mm at 30 L/s at 24 L/s; 10 mm at 110 L/s at 88 L/s"))).Now.Rows[0];
        Assert.Equal(0.024, row.ReverseFlow!.Value, 1e-12);
        Assert.Equal(0.8 * row.OnCurtain, row.ReverseOnCurtain!.Value, 1e-9);
        Assert.Null(Inlet(Single).Now.Rows[0].ReverseFlow);
    }

    /// <summary>VT-18: head 34, seat 1.5 mm projected, 45°, throat 30, stem 5.5 mm: stages end at 3.0000 and 8.0201 mm.</summary>
    [Fact]
    public void The_three_stages_follow_each_other()
    {
        var book = Single.Set(
            ("valve[inlet].headDiameter", "34 mm"),
            ("valve[inlet].throatDiameter", "30 mm"),
            ("valve[inlet].stemDiameter", "5.5 mm"),
            ("valve[inlet].seatWidth", "2.12132 mm"),
            ("valve[inlet].benchTable", "2.9 mm at 30 L/s; 3.1 mm at 31 L/s; 8 mm at 80 L/s; 8.1 mm at 81 L/s"));
        var port = Inlet(book).Now;
        Assert.Equal([Narrowest.Curtain, Narrowest.SeatCorner, Narrowest.SeatCorner, Narrowest.Throat], port.Rows.Select(r => r.Narrowest));
        Assert.Equal(8.0201e-3, port.ThroatLift!.Value, 1e-7);
        Assert.Equal(port.Rows[3].Area / (2 * 683.100e-6), port.Rows[3].OnThroat!.Value, 1e-5);
        Assert.Equal(port.Rows[3].Area / (2 * Math.PI / 4 * 0.031 * 0.031), port.Rows[3].OnSeat!.Value, 1e-5);
        Assert.Equal(Narrowest.Unknown, Inlet(Single).Now.Rows[0].Narrowest);
    }

    [Fact]
    public void The_passage_is_reckoned_and_held_to_the_burette()
    {
        var passage = Inlet(Single.Set(("port[inlet].areaTable", "0 mm at 1300 mm²; 30 mm at 1200 mm²; 90 mm at 1400 mm²"), ("port[inlet].volume", "115 cm³"))).Passage!;
        Assert.Equal(PortFlow.Volume([0, 0.03, 0.09], [1300e-6, 1200e-6, 1400e-6]), passage.VolumeByAreas!.Value, 1e-15);
        Assert.Equal((0.03, 1200e-6), passage.Least);
        Assert.Equal(0.07 * 9000 / 30 * (Math.PI / 4 * 0.09 * 0.09) / 1200e-6, passage.Velocity!.Value, 1e-6);
        Assert.Null(Inlet(Single).Passage);
    }

    [Fact]
    public void What_is_wanted_is_named()
    {
        var sheet = FlowSheet.Of(Single.Without("valve[inlet].benchTable").Without("valve[exhaust].benchPressure"));
        Assert.Empty(sheet.Sides);
        Assert.Contains("valve[inlet].benchTable", sheet.Missing);
        Assert.Contains("valve[exhaust].benchPressure", sheet.Missing);
    }

    [Fact]
    public void Cylinders_are_told_apart_where_the_book_does()
    {
        var book = Single.Set(("engine.cylinders", "2"), ("valve[inlet.2].benchTable", "2 mm at 30 L/s; 4 mm at 60 L/s; 6 mm at 85 L/s; 8 mm at 100 L/s; 10 mm at 106 L/s"));
        var sheet = FlowSheet.Of(book);
        Assert.Equal(["inlet, cylinder 1", "inlet, cylinder 2", "exhaust"], sheet.Sides.Select(s => s.Now.Words));
        Assert.Equal(4 / 108.0, sheet.Spreads.Single().Spread, 1e-9);
        Assert.Equal(2, sheet.Ratios.Count);
        Appraisal.Of(book, "flow-scatter", "inlet").Is(4 / 108.0, 0.03 / (4 / 108.0), Verdict.FallsShort);
    }

    [Fact]
    public void The_checks_hold_the_numbers_of_the_sheet()
    {
        var sheet = FlowSheet.Of(Single);
        var ratio = sheet.Ratios.Single().Now;
        Assert.Equal(84 / 110.0, ratio, 1e-9);
        Appraisal.Of(Single, "flow-ratio").Is(ratio, Math.Min(ratio / 0.70, 0.85 / ratio), Verdict.Holds);
        var mach = sheet.Sides[0].Mach!.Value;
        Appraisal.Of(Single, "inlet-mach", "inlet").Is(mach, 0.6 / mach, mach <= 0.6 ? Verdict.Holds : Verdict.FallsShort);
        var worst = sheet.Sides[0].Now.Rows.Max(r => r.OnCurtain);
        Appraisal.Of(Single, "bench", "inlet").Is(worst, 1 / worst, Verdict.Holds);
    }

    /// <summary>A bench read at 28 inH2O and said to be at 5: no port passes that much.</summary>
    [Fact]
    public void A_reading_that_cannot_be_is_caught()
    {
        var book = Single.Set(("valve[inlet].benchPressure", "5 inH2O"));
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(book, "bench", "inlet").Verdict);
        Assert.True(FlowSheet.Of(book).Sides[0].Now.Rows[0].OnCurtain > 1);
    }

    [Fact]
    public void What_cannot_go_together_is_not_known_and_says_why()
    {
        Assert.Contains("stem diameter: must be less than the throat diameter", Assert.Single(Appraisal.Of(Single.Set(("valve[inlet].throatDiameter", "5 mm"), ("valve[inlet].stemDiameter", "6 mm")), "bench", "inlet").Missing), StringComparison.Ordinal);
        Assert.Contains("flow above zero at full lift", Assert.Single(Appraisal.Of(Single.Set(("valve[inlet].benchTable", "2 mm at 0 L/s; 10 mm at 0 L/s")), "inlet-mach", "inlet").Missing), StringComparison.Ordinal);
        Assert.Contains("below the choking drop", Assert.Single(Appraisal.Of(Single.Set(("valve[inlet].benchPressure", "44 kPa"), ("valve[inlet].benchAirPressure", "900 hPa")), "inlet-mach", "inlet").Missing), StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_without_a_bench_has_no_such_checks() =>
        Assert.DoesNotContain(new Appraiser(new DutyDesk()) { WithUncertainty = false }.Appraise(Books.Of(("engine.cylinders", "1")).Now()), f => f.Check.Family == "flow");
}
