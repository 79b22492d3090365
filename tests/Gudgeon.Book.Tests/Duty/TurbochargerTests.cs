using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Tests.Duty;

public class TurbochargerTests
{
    public static TheoryData<string> Needed =>
        ["turbine.throatArea", "turbine.rotorDiameter", "turbine.wastegate.openingPressure", "blower.map", "blower.mapTemperature", "blower.mapPressure"];

    [Theory]
    [InlineData(Depth.Lumped)]
    [InlineData(Depth.Wave)]
    public void A_turbine_comes_in_with_its_fields(Depth depth)
    {
        var turbo = Turbo(Engines.Turbo.Set(("turbine.efficiency", "0.7"), ("turbine.bestSpeedRatio", "0.62"), ("turbine.voluteVolume", "300 cm³")), depth);
        var turbine = turbo.Turbine!;
        Assert.Equal((550.0, 85.0, 0.7, 0.62), (Rounded(turbine.ThroatArea * 1e6), Rounded(turbine.RotorDiameter * 1e3), turbine.Efficiency, turbine.BestSpeedRatio));
        Assert.Equal((900.0, 0.3e5, 0.1e5), (Rounded(turbine.WastegateArea * 1e6), Rounded(turbine.WastegateOpening), Rounded(turbine.WastegateBand)));
        Assert.Equal(depth == Depth.Wave ? 300 : 400, Rounded(turbine.VoluteVolume * 1e6));
        Assert.Equal((1.0, 1.0), (turbo.StepUp, turbo.MechanicalEfficiency));
        Assert.Equal(3, turbo.Map.Lines.Count);
    }

    [Fact]
    public void What_only_refines_it_has_stand_ins_that_are_shown()
    {
        var view = new View(Engines.Turbo.Without("turbine.wastegate.band").Now());
        Assert.NotNull(EngineAssembly.Build(view));
        Assert.Contains(view.Trace.Reads, r => r.Address.Path == "turbine.efficiency" && r.Fallback == "0.65");
        Assert.Contains(view.Trace.Reads, r => r.Address.Path == "turbine.wastegate.band" && r.Fallback == "0.2 bar");
    }

    [Theory]
    [MemberData(nameof(Needed))]
    public void What_a_turbocharger_needs_is_listed(string path)
    {
        var view = new View(Engines.Turbo.Without(path).Now());
        Assert.Null(EngineAssembly.Build(view));
        Assert.Equal(path, Wanted.Words(view.Trace.Missing));
    }

    [Theory]
    [InlineData(Depth.Lumped)]
    [InlineData(Depth.Wave)]
    public void Neither_a_drive_nor_a_way_out_behind_it_is_asked_for(Depth depth)
    {
        var view = new View(Engines.Turbo.Set(("exhaust.silencer.volume", "4 L")).Now());
        var spec = EngineAssembly.Build(view, depth)!;
        Assert.DoesNotContain(view.Trace.Reads, r => r.Address.Path is "blower.driveRatio" or "blower.stepUp" or "blower.beltSlip" or "blower.driveEfficiency" or "exhaust.outletArea" or "exhaust.silencer.volume");
        Assert.Equal(depth == Depth.Wave ? 0.7 : null, spec.Pipework?.Exhausts.Single().JunctionRecovery);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Without_a_wastegate_nothing_of_it_is_asked_for(bool nought)
    {
        var book = Engines.Turbo.Without("turbine.wastegate.openingPressure");
        book = nought ? book.Set(("turbine.wastegate.area", "0 mm²")) : book.Without("turbine.wastegate.area");
        Assert.Equal(0.0, Turbo(book, Depth.Lumped).Turbine!.WastegateArea);
    }

    [Fact]
    public void A_wastegate_holds_the_boost_at_every_speed_and_without_it_boost_is_far_more()
    {
        var held = Engines.TurboDuty;
        Assert.Equal(DutyDesk.Speeds, held.Points.Count);

        // Fully open 0.1 bar above the 0.3 bar at which it opens.
        Assert.InRange(held.Most(f => f.Boost).Value, 0.3e5, 0.4e5);
        Assert.True(held.Most(f => f.Blower!.Turbine!.WastegateShare).Value > 0.1);
        var open = Point(Engines.Turbo, Depth.Lumped, 7000);
        var shut = Point(Engines.Turbo.Set(("turbine.wastegate.area", "0 mm²")), Depth.Lumped, 7000);
        Assert.True(shut.Boost > 1.3 * open.Boost, $"{shut.Boost} against {open.Boost}");
        Assert.Equal(0, shut.Blower!.Turbine!.WastegateShare);
        Assert.Equal(0, shut.Blower.DrivePower);
    }

    [Fact]
    public void The_wave_depth_runs_it_too_and_its_wastegate_holds()
    {
        var f = Point(Engines.Turbo.Set(("turbine.wastegate.area", "1400 mm²")), Depth.Wave, 7000);
        Assert.InRange(f.Boost, 0.3e5, 0.4e5);
        Assert.True(f.Blower!.Turbine!.WastegateShare > 0);
        Assert.Equal(1, f.Blower.Turbine.Power / (f.Blower.Flow * 1006 * (f.Blower.DeliveryTemperature - 298.15)), 0.02);
    }

    /// <summary>A gate that opens within 30 mbar answers far more strongly than the rotor: the march must not swing about the balance.</summary>
    [Theory]
    [InlineData(5000)]
    [InlineData(6500)]
    [InlineData(8000)]
    public void A_wastegate_with_a_narrow_band_settles_too(double rpm)
    {
        var f = Point(Engines.Turbo.Set(("turbine.wastegate.openingPressure", "0.45 bar"), ("turbine.wastegate.band", "0.03 bar")), Depth.Lumped, rpm);
        Assert.InRange(f.Boost, 0.43e5, 0.48e5);
        Assert.True(f.Blower!.Turbine!.WastegateShare > 0.1);
    }

    [Fact]
    public void Tables_show_the_turbine_of_an_engine_that_has_one()
    {
        string[] own = ["back pressure", "turbo speed", "turbine power", "wastegate share"];
        var shown = EngineFigures.For(Engines.TurboDuty.Spec).Select(f => f.Name).ToList();
        Assert.Empty(own.Except(shown));
        Assert.DoesNotContain("50 % burned", shown);
        Assert.Empty(EngineFigures.For(Engines.BlownDuty.Spec).Select(f => f.Name).Intersect(own));
        var figures = Engines.TurboDuty.Points[^1].Figures!;
        Assert.Equal(figures.Blower!.Turbine!.Power, EngineFigures.Find("turbine power").Of(figures));
        Assert.True(double.IsNaN(EngineFigures.Find("turbo speed").Of(Engines.BlownDuty.Points[^1].Figures!)));
    }

    [Fact]
    public void Its_greatest_speed_is_among_the_telling_ones() => Assert.Contains(Engines.TurboDuty.Most(f => f.Blower!.Speed).Speed, Engines.TurboDuty.TellingSpeeds);

    private static PointFigures Point(BuildBook book, Depth depth, double rpm)
    {
        var point = new EngineModel(EngineAssembly.Build(new View(book.Now()), depth)!).RunPoint(Engines.Speed(rpm), new RunOptions { Speeds = [Engines.Speed(rpm)] });
        Assert.True(point.Converged);
        return point.Figures!;
    }

    private static CentrifugalInduction Turbo(BuildBook book, Depth depth) => Assert.IsType<CentrifugalInduction>(EngineAssembly.Build(new View(book.Now()), depth)!.Intake.Induction);

    private static double Rounded(double value) => Math.Round(value, 6);
}
