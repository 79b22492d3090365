using CsCheck;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Calc.Tests.ValveTrain;

public class ValveControl
{
    private static readonly Gen<double> Mass = Gen.Double[0.03, 0.15];
    private static readonly Gen<double> Seat = Gen.Double[100, 500];
    private static readonly Gen<double> Rate = Gen.Double[10e3, 80e3];
    private static readonly Gen<double> Lift = Gen.Double[6e-3, 13e-3];
    private static readonly Gen<double> Duration = Gen.Double[2.2, 3.0];

    [Fact]
    public void At_the_float_speed_the_margin_is_gone() => Gen.Select(Mass, Seat, Rate, Lift, Duration).Sample((mass, seat, rate, lift, duration) =>
    {
        var speed = ValveFloat.Speed(mass, seat, rate, lift, duration).CrankSpeed;
        Assert.Equal(0, ValveFloat.Margin(mass, seat, rate, lift, duration, speed).LeastMargin, seat * 1e-6);
        Assert.True(ValveFloat.Margin(mass, seat, rate, lift, duration, 0.99 * speed).LeastMargin > 0);
        Assert.True(ValveFloat.Margin(mass, seat, rate, lift, duration, 1.01 * speed).LeastMargin < 0);
    });

    [Fact]
    public void The_rate_for_a_speed_floats_at_that_speed() => Gen.Select(Mass, Seat, Rate, Lift, Duration).Sample((mass, seat, rate, lift, duration) =>
    {
        var speed = ValveFloat.Speed(mass, seat, rate, lift, duration).CrankSpeed;
        Assert.Equal(rate, ValveFloat.RateFor(mass, seat, lift, duration, speed), rate * 1e-6);
    });

    [Fact]
    public void A_weak_rate_lets_go_beside_the_nose_or_at_it_but_never_later_than_the_nose_alone() => Gen.Select(Mass, Seat, Rate, Lift, Duration).Sample((mass, seat, rate, lift, duration) =>
    {
        var nose = ValveFloat.SpeedFromNose(seat + (rate * lift), mass, 24 * lift / (duration * duration));
        Assert.True(ValveFloat.Speed(mass, seat, rate, lift, duration).CrankSpeed <= nose * (1 + 1e-12));
    });

    [Fact]
    public void The_flow_area_never_falls_with_lift_and_has_no_step() => Gen.Select(Gen.Double[20e-3, 45e-3], Gen.Double[0.8e-3, 2.5e-3], Gen.Double[0.5, 1.1], Gen.Double[0.5, 1.0]).Sample((head, seat, angle, share) =>
    {
        var port = share * head;
        var first = Area(1e-6);
        foreach (var limit in new[] { first.FirstLimit, first.SecondLimit })
        {
            Assert.Equal(Area(limit * (1 - 1e-9)).Area, Area(limit * (1 + 1e-9)).Area, 1e-11);
        }

        var last = 0.0;
        for (var lift = 0.0; lift < 0.02; lift += 0.25e-3)
        {
            var area = Area(lift).Area;
            Assert.True(area >= last);
            last = area;
        }

        StageArea Area(double lift) => ValveAreas.Least(head, seat, angle, port, 5e-3, lift);
    });

    [Fact]
    public void The_least_piston_clearance_is_least() => Gen.Select(Lift, Gen.Double[4.4, 5.4], Gen.Double[1.6, 2.0]).Sample((lift, duration, centre) =>
    {
        var found = ValveToPiston.Least(27.5e-3, 104e-3, 0.2, 3e-3, lift, duration, centre);
        for (var angle = -1.5; angle <= 1.5; angle += 0.01)
        {
            var travel = 27.5e-3 + 104e-3 - (27.5e-3 * Math.Cos(angle)) - Math.Sqrt((104e-3 * 104e-3) - Math.Pow(27.5e-3 * Math.Sin(angle), 2));
            var clearance = 3e-3 + (Math.Cos(0.2) * travel) - (lift * PolynomialLobe.At((angle - centre) / duration).Lift);
            Assert.True(found.Least <= clearance + 1e-12);
        }
    });

    [Fact]
    public void An_exhaust_valve_is_the_inlet_valve_run_backwards()
    {
        var inlet = ValveToPiston.Least(27.5e-3, 104e-3, 0.2, 3e-3, 9e-3, 5, 1.8);
        var exhaust = ValveToPiston.Least(27.5e-3, 104e-3, 0.2, 3e-3, 9e-3, 5, -1.8);
        Assert.Equal(inlet.Least, exhaust.Least, 1e-12);
        Assert.Equal(inlet.Angle, -exhaust.Angle, 1e-7);
    }

    [Fact]
    public void Events_and_centres_are_inverse() => Gen.Select(Gen.Double[1.5, 2.2], Gen.Double[3.6, 5.6]).Sample((centre, duration) =>
    {
        var inlet = CamTiming.InletEvents(centre, duration);
        var exhaust = CamTiming.ExhaustEvents(centre, duration);
        var events = CamTiming.FromEvents(inlet.Opens, inlet.Closes, exhaust.Opens, exhaust.Closes);
        Assert.Equal(centre, events.InletCentre, 1e-12);
        Assert.Equal(centre, events.ExhaustCentre, 1e-12);
        Assert.Equal(duration, events.InletDuration, 1e-12);
        Assert.Equal(duration - (2 * centre), events.Overlap, 1e-12);
    });

    [Fact]
    public void A_stock_shim_is_off_by_half_a_step_at_most() => Gen.Select(Gen.Int[150, 320], Gen.Int[0, 40], Gen.Int[10, 30]).Sample((shim, measured, wanted) =>
    {
        var choice = ValveShim.FromStock(shim * 1e-5, measured * 1e-5, wanted * 1e-5, 0.025e-3);
        Assert.True(Math.Abs(choice.Shim - choice.Wanted) <= 0.0125e-3 + 1e-12);
        Assert.Equal((shim + measured) * 1e-5, choice.Shim + choice.Lash, 1e-12);
        Assert.Equal(Math.Round(choice.Shim / 0.025e-3), choice.Shim / 0.025e-3, 1e-6);
    });

    [Fact]
    public void A_half_way_shim_goes_to_the_greater_lash() =>
        Assert.Equal(2.30e-3, ValveShim.FromStock(2.325e-3, 0.15e-3, 0.15e-3).Shim, 1e-12);

    [Fact]
    public void The_mach_index_diameter_and_speed_are_inverse() => Gen.Select(Gen.Double[60e-3, 110e-3], Gen.Double[0.3, 0.7], Gen.Int[1, 3]).Sample((bore, index, valves) =>
    {
        var diameter = InletMachIndex.ValveDiameter(bore, 0.06, 1000, index, 0.35, 320, valves);
        Assert.Equal(index, InletMachIndex.Index(bore, 0.06, 1000, diameter, 0.35, 320, valves).Index, 1e-10);
        Assert.Equal(1000, InletMachIndex.CrankSpeed(bore, 0.06, diameter, index, 0.35, 320, valves), 1e-7);
    });

    [Fact]
    public void Gas_pressure_at_the_held_difference_leaves_no_seat_load()
    {
        var force = ValveForces.GasForce(30e-3, 0.5e5, 250);
        Assert.Equal(35.34, force.Force, 0.01); // 706.9 mm² × 0.05 MPa
        Assert.Equal(0, ValveForces.GasForce(30e-3, force.HeldPressure, 250).Margin, 1e-9);
    }

    [Fact]
    public void A_third_of_the_spring_moves() =>
        Assert.Equal(0.060, ValveForces.EffectiveMass(0.030, 0.010, 0.045, 0.005), 1e-12);
}
