using CsCheck;
using Gudgeon.Calc.Boost;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gas;
using Gudgeon.Calc.Performance;

namespace Gudgeon.Calc.Tests.Gas;

/// <summary>Round trips and orderings of cycle theory, burning, friction, boost.</summary>
public class ChargeAndCycleTests
{
    [Fact]
    public void Wiebe_point_and_fraction_are_inverses() => Gen.Select(Gen.Double[0.001, 0.99], Gen.Double[0.5, 10], Gen.Double[0, 5]).Sample((x, a, m) =>
        Near(x, Wiebe.Burned(Wiebe.Progress(x, a, m), a, m).Fraction, 1e-10));

    [Fact]
    public void Wiebe_rate_is_the_slope_of_the_fraction() => Gen.Select(Gen.Double[0.05, 1.2], Gen.Double[1, 7], Gen.Double[0.2, 4]).Sample((y, a, m) =>
    {
        const double Step = 1e-5;
        Assert.Equal((Wiebe.Burned(y + Step, a, m).Fraction - Wiebe.Burned(y - Step, a, m).Fraction) / (2 * Step), Wiebe.Burned(y, a, m).Rate, 1e-6);
    });

    [Fact]
    public void Nothing_is_burned_before_the_start() => Assert.Equal(default, Wiebe.Burned(-0.1));

    [Fact]
    public void The_limited_pressure_cycle_lies_between_its_two_limits() => Gen.Select(Gen.Double[6, 16], Gen.Double[2, 9], Gen.Double[0.01, 0.99]).Sample((rc, q, share) =>
    {
        var volume = IdealCycles.ConstantVolume(rc, q);
        var pressure = IdealCycles.ConstantPressure(rc, q);
        var limit = pressure.PeakPressure + (share * (volume.PeakPressure - pressure.PeakPressure));
        var limited = IdealCycles.LimitedPressure(rc, q, limit);
        Near(limit, limited.PeakPressure, 1e-12);
        Assert.InRange(limited.Efficiency, pressure.Efficiency, volume.Efficiency);
        Near(IdealCycles.OttoEfficiency(rc), volume.Efficiency, 1e-12);
    });

    [Fact]
    public void A_pressure_limit_outside_the_cycle_is_refused()
    {
        Assert.Throws<FormulaDomainException>(() => IdealCycles.LimitedPressure(10, 5, 10));
        Assert.Throws<FormulaDomainException>(() => IdealCycles.LimitedPressure(10, 5, 500));
    }

    [Fact]
    public void Torque_comes_back_from_mean_pressure() => Gen.Select(Gen.Double[1, 500], Gen.Double[1e-4, 3e-3], Gen.Double[10, 2000], Gen.Int[1, 2]).Sample((torque, volume, speed, turns) =>
    {
        var brake = BrakeFigures.FromTorque(torque, volume, speed, turns);
        var shaft = BrakeFigures.FromMeanPressure(brake.MeanPressure, volume, speed, turns);
        Near(torque, shaft.Torque, 1e-13);
        Near(brake.Power, shaft.Power, 1e-13);
    });

    [Fact]
    public void A_ramp_that_does_not_rise_is_the_constant_state()
    {
        var ramp = Knock.Ramp(95, 4e6, 4e6, 800, 1.5e-3);
        Near(Knock.ConstantState(95, 4e6, 800, 1.5e-3), ramp.Integral, 1e-12);
        Near(Knock.Delay(95, 4e6, 800), ramp.Onset, 1e-12);
    }

    [Fact]
    public void More_octane_waits_longer_and_more_pressure_or_heat_shorter() => Gen.Select(Gen.Double[80, 100], Gen.Double[1e6, 1e7], Gen.Double[700, 1000]).Sample((octane, p, t) =>
    {
        var delay = Knock.Delay(octane, p, t);
        Assert.True(Knock.Delay(octane + 1, p, t) > delay);
        Assert.True(Knock.Delay(octane, p * 1.01, t) < delay);
        Assert.True(Knock.Delay(octane, p, t + 1) < delay);
    });

    [Fact]
    public void Compressor_efficiency_comes_back_from_its_temperatures() => Gen.Select(Gen.Double[250, 350], Gen.Double[1.05, 4], Gen.Double[0.4, 1]).Sample((t, ratio, efficiency) =>
    {
        var outlet = Compressor.Outlet(t, ratio, efficiency);
        Near(efficiency, Compressor.Efficiency(t, outlet.OutletTemperature, ratio), 1e-10);
        Assert.InRange(outlet.DensityRatio, 1, ratio);
    });

    [Fact]
    public void A_Roots_blower_heats_as_a_compressor_of_its_efficiency() => Gen.Select(Gen.Double[250, 350], Gen.Double[1.05, 3]).Sample((t, ratio) =>
    {
        var roots = RootsBlower.Ideal(ratio, t);
        Near(roots.OutletTemperature, Compressor.Outlet(t, ratio, roots.Efficiency).OutletTemperature, 1e-12);
        Assert.True(roots.Efficiency < 1);
    });

    [Fact]
    public void The_pressure_for_a_power_gives_that_air() => Gen.Select(Gen.Double[2e4, 3e5], Gen.Double[280, 400], Gen.Double[0.7, 1.2]).Sample((power, t, ve) =>
    {
        var goal = AirDemand.ForPower(power, 300e-3 / 3.6e6, 12.5, 6e-4, 1200, t, ve);
        Near(goal.AirFlow, AirDemand.BoostedFlow(6e-4, 1200, goal.ManifoldPressure, t, ve), 1e-12);
    });

    [Fact]
    public void Wheel_and_drive_agree_on_the_work() => Gen.Select(Gen.Double[0.04, 0.12], Gen.Double[4000, 12000], Gen.Double[0.5, 0.85]).Sample((d, speed, efficiency) =>
    {
        var stage = CentrifugalImpeller.StageFromBlades(d, speed, 12, efficiency, 298.15);
        Near(stage.SpecificWork, Compressor.Outlet(298.15, stage.PressureRatio, efficiency).SpecificWork, 1e-9);
    });

    [Fact]
    public void Charge_of_no_fuel_is_air_and_water_makes_air_lighter()
    {
        var dry = Air.Of(AirModel.StandardDry);
        Near(dry.HeatCapacity(350), new Charge(Fuels.Ethanol, 0, AirModel.StandardDry).HeatCapacity(350), 1e-14);
        Near(1, Air.Of(AirModel.StandardDry, 0.02).Elements.Mass, 1e-14);
        Assert.True(Air.Of(AirModel.StandardDry, 0.02).MolarMass < dry.MolarMass);
    }

    private static void Near(double expected, double actual, double relative) =>
        Assert.InRange(actual, expected - (relative * Math.Abs(expected)), expected + (relative * Math.Abs(expected)));
}
