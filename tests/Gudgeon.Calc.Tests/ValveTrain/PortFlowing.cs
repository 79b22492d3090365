using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Calc.Tests.ValveTrain;

/// <summary>Flow benches and ports: values worked by hand beside laws that any port keeps.</summary>
public class PortFlowing
{
    private const double InchOfWater = 249.08891;

    private static readonly Gen<double> Flow = Gen.Double[1e-3, 0.2];
    private static readonly Gen<double> Drop = Gen.Double[500, 40e3];
    private static readonly Gen<double> Air = Gen.Double[95e3, 104e3];

    /// <summary>Mass flow by Bernoulli with the mean density is the compressible flow to within the square of the drop.</summary>
    [Fact]
    public void A_small_drop_flows_as_Bernoulli_says()
    {
        const double Area = 1e-3;
        var density = 101325 / (287.05287 * 293.15);
        Assert.Equal(Area * Math.Sqrt(2 * 100 / density), FlowBench.Flow(Area, 100), 1e-3 * FlowBench.Flow(Area, 100));
    }

    /// <summary>The same nozzle by another way: Mach number, speed of sound and density at its throat.</summary>
    [Fact]
    public void Half_a_thousand_square_millimetres_at_28_inches()
    {
        var r = 1 - (28 * InchOfWater / 101325);
        var mach = Math.Sqrt(2 / 0.4 * (Math.Pow(r, -0.4 / 1.4) - 1));
        var speed = mach * Math.Sqrt(1.4 * 287.05287 * 293.15 * Math.Pow(r, 0.4 / 1.4));
        var expected = 500e-6 * speed * Math.Pow(r, 1 / 1.4);
        Assert.Equal(expected, FlowBench.Flow(500e-6, 28 * InchOfWater), 1e-9);
        Assert.Equal(0.0518, expected, 1e-4);
    }

    [Fact]
    public void Area_and_flow_undo_each_other() => Gen.Select(Flow, Drop, Air, Gen.Double[260, 320]).Sample((flow, drop, air, temperature) =>
        Math.Abs(FlowBench.Flow(FlowBench.EffectiveArea(flow, drop, air, temperature), drop, air, temperature) - flow) < 1e-12);

    [Fact]
    public void Bringing_there_and_back_changes_nothing() => Gen.Select(Flow, Drop, Drop, Air).Sample((flow, from, to, air) =>
        Math.Abs(FlowBench.AtTestPressure(FlowBench.AtTestPressure(flow, from, to, air), to, from, air) - flow) < 1e-12);

    [Fact]
    public void The_area_does_not_depend_on_the_test_pressure() => Gen.Select(Flow, Drop, Drop, Air).Sample((flow, from, to, air) =>
        Math.Abs((FlowBench.EffectiveArea(FlowBench.AtTestPressure(flow, from, to, air), to, air) / FlowBench.EffectiveArea(flow, from, air)) - 1) < 1e-12);

    /// <summary>Air thins as it is drawn faster: the square-root rule is always high going up.</summary>
    [Fact]
    public void The_square_root_rule_is_high_upwards() => Gen.Select(Flow, Gen.Double[500, 20e3], Gen.Double[1.05, 2]).Sample((flow, from, times) =>
        FlowBench.BySquareRoot(flow, from, times * from) > FlowBench.AtTestPressure(flow, from, times * from));

    [Fact]
    public void From_10_to_28_inches_the_square_root_rule_is_two_and_a_half_per_cent_high() =>
        Assert.Equal(1.0253, FlowBench.BySquareRoot(0.1, 10 * InchOfWater, 28 * InchOfWater) / FlowBench.AtTestPressure(0.1, 10 * InchOfWater, 28 * InchOfWater), 1e-4);

    [Fact]
    public void A_choked_bench_is_refused() => Assert.Throws<FormulaDomainException>(() => FlowBench.EffectiveArea(0.1, 44e3, 90e3));

    /// <summary>The mean of a half sine is 2/π of its peak.</summary>
    [Fact]
    public void The_mean_over_a_half_sine_is_two_over_pi()
    {
        double[] angles = [.. Enumerable.Range(0, 721).Select(i => i * Math.PI / 720)];
        Assert.Equal(2 / Math.PI, PortFlow.MeanArea(angles, [.. angles.Select(Math.Sin)]), 1e-5);
    }

    /// <summary>Uneven steps and ends, by hand: (1 · 1 + 3 · 2) / 3.</summary>
    [Fact]
    public void The_mean_over_uneven_steps_is_that_of_the_straight_lines() => Assert.Equal(7 / 3.0, PortFlow.MeanArea([0, 1, 3], [0, 2, 4]), 1e-12);

    /// <summary>A cone from 30 to 40 mm over 60 mm holds π/12 · 60 · (30² + 30·40 + 40²) mm³.</summary>
    [Fact]
    public void The_volume_of_a_cone_is_exact_and_cutting_it_changes_nothing()
    {
        double Area(double d) => Math.PI / 4 * d * d;
        var cone = Math.PI / 12 * 60e-3 * ((30e-3 * 30e-3) + (30e-3 * 40e-3) + (40e-3 * 40e-3));
        Assert.Equal(cone, PortFlow.Volume([0, 60e-3], [Area(30e-3), Area(40e-3)]), 1e-12);
        Gen.Double[1e-3, 59e-3].Sample(cut => Math.Abs(PortFlow.Volume([0, cut, 60e-3], [Area(30e-3), Area(30e-3 + (cut / 6)), Area(40e-3)]) - cone) < 1e-12);
    }

    /// <summary>Mean port velocity is the mean piston speed times bore area over port area.</summary>
    [Fact]
    public void The_gas_goes_as_much_faster_as_the_port_is_smaller()
    {
        var piston = 0.07 * 2 * (9000 / 60.0);
        Assert.Equal(piston * (Math.PI / 4 * 0.09 * 0.09) / 1.5e-3, PortFlow.MeanVelocity(0.09, 0.07, 9000 * Math.PI / 30, 1.5e-3), 1e-9);
    }

    /// <summary>A seat of 1.5 mm at 30° reaches 1.5 · cos 30° = 1.299 mm inwards.</summary>
    [Fact]
    public void The_seat_ends_within_its_cone() => Assert.Equal(Math.PI / 4 * Math.Pow(36e-3 - (2 * 1.299038e-3), 2), PortFlow.SeatInnerArea(36e-3, 1.5e-3, Math.PI / 6), 1e-9);

    [Fact]
    public void Ports_that_are_alike_have_no_spread_and_others_theirs()
    {
        Assert.Equal(0, PortFlow.Spread([1e-3, 1e-3]), 1e-15);
        Assert.Equal(0.1 / 1.05, PortFlow.Spread([1e-3, 1.1e-3]), 1e-12);
        Assert.Throws<FormulaDomainException>(() => PortFlow.Spread([1e-3]));
    }

    [Fact]
    public void Angles_that_do_not_rise_are_refused()
    {
        Assert.Throws<FormulaDomainException>(() => PortFlow.MeanArea([0, 1, 1], [0, 1, 0]));
        Assert.Throws<FormulaDomainException>(() => PortFlow.MeanArea([0, 1], [0, 1, 0]));
        Assert.Throws<FormulaDomainException>(() => PortFlow.Volume([0], [1]));
    }
}
