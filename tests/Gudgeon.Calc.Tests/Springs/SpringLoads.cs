using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Springs;

namespace Gudgeon.Calc.Tests.Springs;

public class SpringLoads
{
    private static readonly Gen<double> Wire = Gen.Double[2e-3, 6e-3];
    private static readonly Gen<double> Index = Gen.Double[4, 12];
    private static readonly Gen<double> Coils = Gen.Double[3, 12];

    [Fact]
    public void A_spring_past_coil_bind_is_refused()
    {
        var refusal = Assert.Throws<FormulaDomainException>(() => ValveSpring.Loads(27068, 0.052, 0.040, 0.0095, 0.032));
        Assert.Contains("coil-bound", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<FormulaDomainException>(() => SpringLoad.AtHeight(27068, 0.052, 0.0305, 0.032));
        Assert.Equal(-0.0015, ValveSpring.CoilBindMargin(0.040, 0.0095, 0.032), 1e-12);
    }

    [Fact]
    public void A_spacer_that_takes_the_margin_away_is_refused()
    {
        Assert.Equal(0, ValveSpring.Loads(27068, 0.054, 0.042, 0.0085, 0.032, 0.0015).CoilBindMargin, 1e-12);
        Assert.Throws<FormulaDomainException>(() => ValveSpring.Loads(27068, 0.054, 0.042, 0.0085, 0.032, 0.0016));
    }

    [Fact]
    public void A_loose_spring_is_refused() =>
        Assert.Throws<FormulaDomainException>(() => SpringLoad.AtHeight(27068, 0.052, 0.053, 0.032));

    [Fact]
    public void A_coil_narrower_than_the_wire_is_refused() =>
        Assert.Throws<FormulaDomainException>(() => HelicalSpring.Rate(4e-3, 4e-3, 6));

    [Fact]
    public void A_thicker_spacer_adds_load_and_takes_margin() => Gen.Select(Gen.Double[5e3, 80e3], Gen.Double[0, 0.7e-3], Gen.Double[1e-5, 0.7e-3]).Sample((rate, spacer, more) =>
    {
        var thin = ValveSpring.Loads(rate, 0.054, 0.042, 0.0085, 0.032, spacer);
        var thick = ValveSpring.Loads(rate, 0.054, 0.042, 0.0085, 0.032, spacer + more);
        Assert.True(thick.SeatLoad > thin.SeatLoad);
        Assert.True(thick.OpenLoad > thin.OpenLoad);
        Assert.True(thick.CoilBindMargin < thin.CoilBindMargin);
        Assert.Equal(rate * more, thick.OpenLoad - thin.OpenLoad, rate * 1e-12);
    });

    [Fact]
    public void The_spacer_for_a_load_gives_that_load() => Gen.Select(Gen.Double[5e3, 80e3], Gen.Double[0, 1.4e-3]).Sample((rate, spacer) =>
    {
        var before = ValveSpring.Loads(rate, 0.054, 0.042, 0.0085, 0.032).SeatLoad;
        var after = ValveSpring.Loads(rate, 0.054, 0.042, 0.0085, 0.032, spacer).SeatLoad;
        Assert.Equal(spacer, ValveSpring.SpacerForSeatLoad(before, after, rate), 1e-12);
    });

    [Fact]
    public void Scaling_every_length_scales_rate_stress_and_surge() => Gen.Select(Wire, Index, Coils, Gen.Double[0.3, 3]).Sample((wire, index, coils, k) =>
    {
        var mean = wire * index;
        Same(k * HelicalSpring.Rate(wire, mean, coils), HelicalSpring.Rate(k * wire, k * mean, coils));
        Same(HelicalSpring.ShearStress(500, wire, mean) / (k * k), HelicalSpring.ShearStress(500, k * wire, k * mean));
        Same(SpringSurge.Frequency(wire, mean, coils).Frequency / k, SpringSurge.Frequency(k * wire, k * mean, coils).Frequency);
        Same(k * SpringGap.Least(wire, mean, coils), SpringGap.Least(k * wire, k * mean, coils));
    });

    [Fact]
    public void Load_and_stress_are_inverse() => Gen.Select(Wire, Index, Gen.Double[10, 2000], Gen.Enum<CurvatureFactor>()).Sample((wire, index, load, curvature) =>
        Same(load, HelicalSpring.LoadAtStress(HelicalSpring.ShearStress(load, wire, wire * index, curvature), wire, wire * index, curvature)));

    [Fact]
    public void Energy_is_the_area_under_the_load() => Gen.Select(Gen.Double[5e3, 80e3], Gen.Double[0, 0.01], Gen.Double[0.011, 0.02]).Sample((rate, start, end) =>
    {
        var area = (SpringLoad.AtHeight(rate, 0.05, 0.05 - start, 0.02) + SpringLoad.AtHeight(rate, 0.05, 0.05 - end, 0.02)) / 2 * (end - start);
        Same(area, SpringLoad.Energy(rate, start, end));
    });

    [Fact]
    public void Two_readings_give_the_spring_back() => Gen.Select(Gen.Double[5e3, 80e3], Gen.Double[0.045, 0.06]).Sample((rate, free) =>
    {
        var found = SpringLoad.FromTwoHeights(0.042, rate * (free - 0.042), 0.034, rate * (free - 0.034));
        Same(rate, found.Rate);
        Same(free, found.FreeLength);
    });

    [Fact]
    public void A_nested_pair_carries_the_load_and_moves_together() => Gen.Select(Gen.Double[0, 3000], Gen.Double[5e3, 50e3], Gen.Double[5e3, 50e3], Gen.Double[0, 0.02]).Sample((load, outer, inner, gap) =>
    {
        var share = NestedSprings.Share(load, outer, inner, gap);
        Assert.Equal(load, share.OuterLoad + share.InnerLoad, 1e-8);
        Assert.Equal(Math.Max(0, share.OuterDeflection - gap), share.InnerDeflection, 1e-12);
    });

    [Fact]
    public void The_surge_frequency_agrees_with_the_form_of_the_standard() // EN 13906-1: 3560 d / (n D²) √(G / ρ), mm, MPa, kg/dm³
    {
        var standard = 3560 * 4.0 / (6 * 25.0 * 25.0) * Math.Sqrt(79300 / 7.85);
        Assert.Equal(standard, SpringSurge.Frequency(4e-3, 25e-3, 6).Frequency, standard * 5e-4);
    }

    [Fact]
    public void Ends_that_are_not_ground_stand_one_wire_higher()
    {
        Assert.Equal(SpringEnds.Solid(4e-3, 8, SpringEnd.SquaredGround).SolidLength + 4e-3, SpringEnds.Solid(4e-3, 8, SpringEnd.Squared).SolidLength, 1e-12);
        Assert.Equal(6, SpringEnds.Solid(4e-3, 8).ActiveCoils);
        Assert.Equal(8, SpringEnds.Solid(4e-3, 8, SpringEnd.Plain).ActiveCoils);
    }

    private static void Same(double expected, double actual) => Assert.Equal(expected, actual, Math.Abs(expected) * 1e-10);
}
