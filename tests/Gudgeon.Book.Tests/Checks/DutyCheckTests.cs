using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>Checks that rest on the engine run: the arithmetic on what the run gave.</summary>
public class DutyCheckTests
{
    [Fact]
    public void Peak_pressure()
    {
        var (peak, speed) = Engines.BareDuty.PeakPressure;
        var finding = Engines.OnBare("peak-pressure");
        Assert.Equal(peak, finding.Judgement!.Value);
        Assert.Equal(75e5 / peak, finding.Reserve, 1e-9);
        Assert.Equal($"at {Gudgeon.Book.Fields.Engine.RevLimit.Print(speed)}", finding.Judgement.Remark);
    }

    // Fuel flow over one injector of 5.5 g/s; 85 % when the book says nothing else.
    [Fact]
    public void Injector_duty()
    {
        var share = Engines.BareDuty.Figures.Max(p => p.Figures.FuelFlow) / 5.5e-3;
        var finding = Engines.OnBare("injector-duty");
        Assert.Equal(share, finding.Judgement!.Value, 1e-12);
        Assert.Equal(0.85 / share, finding.Reserve, 1e-9);
    }

    // T = µ F N (Do + Di) / 4 = 0.13 · 1750 · 14 · 0.220 / 4 = 175.175 N·m, uniform wear.
    [Fact]
    public void Clutch()
    {
        var finding = Engines.OnBare("clutch");
        Assert.Equal(175.175, finding.Judgement!.Upper!.Value, 1e-9);
        Assert.Equal(Engines.BareDuty.Torque.Value * 2.35, finding.Judgement.Value, 1e-9);
    }

    [Fact]
    public void Knock()
    {
        var worst = Engines.BareDuty.Figures.Max(p => p.Figures.KnockIntegral);
        var finding = Engines.OnBare("knock");
        Assert.Equal(0.9 / worst, finding.Reserve, 1e-9);
        var strict = new Appraiser(Engines.BareDesk) { WithUncertainty = false }.Appraise(CheckCatalogue.Find("knock"), "", Engines.Bare.Set(("combustion.knockLimit", "0.6")).Now());
        Assert.Equal(0.6 / worst, strict.Reserve, 1e-9);
    }

    // The seat load is 286 N at 39 mm by the tester; it holds 286 / (π/4 · 38²) = 0.2522 MPa on the inlet valve.
    [Fact]
    public void Boost_against_the_seat_load()
    {
        var finding = Engines.OnBlown("valve-pressure", "inlet");
        Assert.Equal(286 / (Math.PI / 4 * 38e-3 * 38e-3), finding.Judgement!.Upper!.Value, 1e-3);
        Assert.Equal(Engines.BlownDuty.Figures.Max(p => p.Figures.Boost), finding.Judgement.Value, 1e-6);
        Assert.True(double.IsPositiveInfinity(Engines.OnBare("valve-pressure", "inlet").Reserve));
    }

    [Fact]
    public void Target_power()
    {
        var appraiser = new Appraiser(Engines.BareDesk) { WithUncertainty = false };
        Assert.Empty(appraiser.Appraise(Engines.Bare.Now(), [CheckCatalogue.Find("target-power")]));
        var power = Engines.BareDuty.Power.Value;
        var finding = appraiser.Appraise(CheckCatalogue.Find("target-power"), "", Engines.Bare.Set(("target.power", "30 kW")).Now());
        Assert.Equal(power / 30e3, finding.Reserve, 1e-9);
    }

    // The least margin of the run, one added; 10 % wanted when nobody says otherwise.
    [Fact]
    public void Surge_margin()
    {
        var appraiser = new Appraiser(Engines.BlownDesk) { WithUncertainty = false };
        var finding = appraiser.Appraise(CheckCatalogue.Find("surge-margin"), "", Engines.Centrifugal.Now());
        var least = new View(Engines.Centrifugal.Now(), Engines.BlownDesk).Duty()!.Figures.Min(p => p.Figures.Blower!.SurgeMargin!.Value);
        Assert.Equal(1 + least, finding.Judgement!.Value, 1e-12);
        Assert.Equal((1 + least) / 1.1, finding.Reserve, 1e-9);
        Assert.Equal((1 + least) / 1.5, appraiser.Appraise(CheckCatalogue.Find("surge-margin"), "", Engines.Centrifugal.Limited("surge-margin.min", "50 %").Now()).Reserve, 1e-9);
    }

    [Fact]
    public void Target_quarter()
    {
        var machine = Engines.Bare.Set(
            ("driveline.gears", "1.85; 1.39; 1.12; 0.95"),
            ("driveline.final", "2.65"),
            ("driveline.efficiency", "0.9"),
            ("driveline.shiftTime", "150 ms"),
            ("driveline.launchSpeed", "5500 rpm"),
            ("vehicle.mass", "108 kg"),
            ("vehicle.riderMass", "76 kg"),
            ("vehicle.wheelbase", "1400 mm"),
            ("vehicle.centreHeight", "620 mm"),
            ("vehicle.centreAhead", "690 mm"),
            ("vehicle.dragArea", "0.42 m²"),
            ("vehicle.tyreCircumference", "1950 mm"),
            ("vehicle.tyreFriction", "1.05"),
            ("target.quarter", "14.5 s"));
        var appraiser = new Appraiser(Engines.BareDesk) { WithUncertainty = false };
        var finding = appraiser.Appraise(CheckCatalogue.Find("target-quarter"), "", machine.Now());
        var time = StandingStart.Run(SprintAssembly.Build(new View(machine.Now(), Engines.BareDesk), 402.336)!).At(402.336)!.Time;

        // A light single of some 38 kW: 12 to 15 s.
        Assert.InRange(time, 12, 15);
        Assert.Equal(14.5 / time, finding.Reserve, 1e-9);
        Assert.Contains("driveline.final", appraiser.Appraise(CheckCatalogue.Find("target-quarter"), "", machine.Without("driveline.final").Now()).Missing);
        Assert.Empty(CheckCatalogue.Find("target-quarter").Instances(new(Engines.Bare.Now())));
    }

    // An uncertain barometer acts through the run; half of the uncertainty acts half as much, to the first order.
    [Fact]
    public void An_uncertainty_acts_through_the_run()
    {
        double Spread(string text) => new Appraiser(Engines.BareDesk).Appraise(CheckCatalogue.Find("peak-pressure"), "", Engines.Bare.Set(("weather.pressure", text)).Now()).ReserveUncertainty;
        var wide = Spread("1013.25 hPa ± 20 hPa");
        Assert.InRange(wide, 0.005, 0.02);
        Assert.Equal(2, wide / Spread("1013.25 hPa ± 10 hPa"), 0.05);
    }
}
