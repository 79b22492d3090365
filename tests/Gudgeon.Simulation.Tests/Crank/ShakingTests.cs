using System.Numerics;
using Gudgeon.Calc.Crank;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Simulation.Tests.Crank;

/// <summary>
/// Shaking forces and couples held to the patterns of the textbooks (Den Hartog, Taylor, Norton): the numbers are those of
/// the rows BA-… in tests/reference/crank.csv, worked apart from this code by phasor sums and time scans. Their second order is
/// the leading term of the series; the exact harmonic takes its place here.
/// </summary>
public class ShakingTests
{
    private const double Rpm = Math.PI / 30;

    /// <summary>m, r, l, pitch, rpm, throws; primary force and couple, secondary force and couple.</summary>
    public static TheoryData<string, double[], double[], double[]> Inlines => new()
    {
        { "BA-05 360°", [0.364, 0.0275, 0.104, 0.090, 10000], [0, 360], [21954.4, 0, 5805.25, 0] },
        { "BA-05 180°", [0.364, 0.0275, 0.104, 0.090, 10000], [0, 180], [0, 987.947, 5805.25, 0] },
        { "BA-05 270°", [0.364, 0.0275, 0.104, 0.090, 10000], [0, 270], [15524.1, 698.584, 0, 261.236] },
        { "BA-08 three", [0.30, 0.0315, 0.115, 0.082, 11000], [0, 120, 240], [0, 1780.94, 0, 487.822] },
        { "BA-09 flat four", [0.26, 0.0275, 0.104, 0.08, 13000], [0, 180, 180, 0], [0, 0, 14015.5, 0] },
        { "BA-10 four at 90°", [2, 0.050, 0.200, 0.200, 2000], [0, 180, 270, 90], [0, 1240.69, 0, 877.298] },
    };

    [Theory]
    [MemberData(nameof(Inlines))]
    public void Inline_engines_shake_as_the_textbooks_say(string which, double[] size, double[] throws, double[] expected)
    {
        Assert.NotEmpty(which);
        var shaking = Shaking.Of(Cranks.Inline(size[0], size[1], size[2], size[3], throws), [], size[4] * Rpm);
        var exact = AccelerationHarmonics.Of(size[1] / size[2]).Second / (size[1] / size[2]);
        var scale = size[0] * size[1] * size[4] * size[4] * Rpm * Rpm;
        Assert.Equal(expected[0], shaking.ForceAt(1).Greatest, (expected[0] * 1e-5) + (scale * 1e-9));
        Assert.Equal(expected[1], shaking.CoupleAt(1).Greatest, (expected[1] * 1e-5) + (scale * 1e-9));
        Assert.Equal(expected[2] * exact, shaking.ForceAt(2).Greatest, (expected[2] * 1e-5) + (scale * 1e-9));
        Assert.Equal(expected[3] * exact, shaking.CoupleAt(2).Greatest, (expected[3] * 1e-5) + (scale * 1e-9));
    }

    // BA-06: the primary force of a right-angled V-twin on one pin is constant and turns with the crank.
    [Fact]
    public void A_right_angled_v_twin_is_balanced_by_one_cylinders_weight()
    {
        var vee = Cranks.Of(0.45, 0.034, 0.124, 0, (0, 0), (0, 90));
        var shaking = Shaking.Of(vee, [], 9500 * Rpm);
        Assert.Equal(15142.4, shaking.ForceAt(1).With.Magnitude, 0.2);
        Assert.Equal(0, shaking.ForceAt(1).Against.Magnitude, 1e-6);
        var exact = AccelerationHarmonics.Of(34.0 / 124).Second * 124 / 34;
        Assert.Equal(5871.76 * exact, shaking.ForceAt(2).Greatest, 0.2);

        var onePin = vee with { BobWeight = 0.45, Throws = [.. vee.Throws.Select(t => t with { Pin = 0 })] };
        Assert.Equal(0, Shaking.Of(onePin, [], 9500 * Rpm).ForceAt(1).Greatest, 1e-6);
    }

    [Theory]
    [InlineData(45)]
    [InlineData(60)]
    [InlineData(72)]
    [InlineData(120)]
    [InlineData(180)]
    public void A_v_twin_of_any_angle_shakes_as_the_phasors_say(double angle)
    {
        var half = angle * Math.PI / 360;
        var shaking = Shaking.Of(Cranks.Of(0.45, 0.034, 0.124, 0, (0, 0), (0, angle)), [], 9500 * Rpm);
        var force = ShakingForces.VTwin(0.45, 0.034, 0.124, 9500 * Rpm, 2 * half);
        var (major, minor) = (Math.Max(force.PrimaryAlong, force.PrimaryAcross), Math.Min(force.PrimaryAlong, force.PrimaryAcross));
        Assert.Equal(major, shaking.ForceAt(1).Greatest, major * 1e-9);
        Assert.Equal(minor, shaking.ForceAt(1).Least, major * 1e-9);
    }

    // BA-14: a shaft against a half-balanced crank leaves nothing of the first order, and a couple about the crank axis.
    [Fact]
    public void A_contra_rotating_shaft_takes_the_other_half()
    {
        var single = Cranks.Inline(0.364, 0.0275, 0.104, 0, 0) with { BobWeight = 0.182 };
        var shaft = new Spinner { Name = "front", Unbalance = 5.005e-3, Ratio = -1, Phase = Math.PI, X = 0.085 };
        var (with, without) = (Shaking.Of(single, [shaft], 10000 * Rpm), Shaking.Of(single, [], 10000 * Rpm));
        Assert.Equal(5488.6, without.ForceAt(1).Against.Magnitude, 0.1);
        Assert.Equal(0, with.ForceAt(1).Greatest, 1e-6);
        Assert.Equal(466.53, (with.RollAt(1) - without.RollAt(1)).Magnitude, 0.01);
    }

    // BA-15: 32 teeth, one tooth is 11.25°.
    [Fact]
    public void One_tooth_out()
    {
        const double Tooth = 2 * Math.PI / 32;
        var single = Cranks.Inline(0.364, 0.0275, 0.104, 0, 0);
        var contra = new Spinner { Name = "contra", Unbalance = 5.005e-3, Ratio = -1, Phase = Math.PI };
        var along = contra with { Name = "with", Ratio = 1 };
        Turning Left(CrankLine line, params Spinner[] shafts) => Shaking.Of(line, shafts, 10000 * Rpm).ForceAt(1);

        var late = Left(single with { BobWeight = 0.182 }, contra.Advanced(-Tooth));
        Assert.Equal(1075.95, late.Against.Magnitude, 0.01);
        Assert.Equal(0, late.With.Magnitude, 1e-6);
        Assert.Equal(105.462, late.Against.Real, 0.001);
        Assert.Equal(-1070.77, late.Against.Imaginary, 0.01);
        Assert.Equal(2151.91, Left(single, contra.Advanced(-Tooth), along.Advanced(-Tooth)).Greatest, 0.02);
        Assert.Equal(0, Left(single, contra.Advanced(-Tooth), along.Advanced(-Tooth)).Least, 1e-6);
        Assert.Equal(1075.95, Left(single, contra.Advanced(-Tooth), along).Greatest, 0.01);

        var opposed = Left(single, contra.Advanced(Tooth), along.Advanced(-Tooth));
        Assert.Equal(2151.91, opposed.Greatest, 0.02);
        Assert.Equal(210.92, Math.Abs((opposed.With + opposed.Against).Real), 0.01);
        Assert.Equal(2141.54, Math.Abs((opposed.With + opposed.Against).Imaginary), 0.02);
    }

    [Fact]
    public void The_best_place_of_a_shaft_is_found_from_any_other()
    {
        var single = Cranks.Inline(0.364, 0.0275, 0.104, 0, 0) with { BobWeight = 0.182 };
        foreach (var phase in new[] { -170, -60, 5, 100, 181 })
        {
            var shaft = new Spinner { Name = "front", Unbalance = 5.005e-3, Ratio = -1, Phase = phase * Math.PI / 180 };
            var timing = ShaftTiming.Of(single, [shaft], 0, 0.1);
            Assert.Equal(Math.PI, timing.Best!.Value, 1e-9);
            Assert.Equal(0, Shaking.Of(single, [shaft with { Phase = timing.Best.Value }], 1000).ForceAt(1).Greatest, 1e-6);
            Assert.Equal(Math.IEEERemainder(Math.PI - (phase * Math.PI / 180), 2 * Math.PI), timing.Early!.Value, 1e-9);
        }

        // Secondary shafts of a flat four: one to each hand at twice the speed, their weights down at top dead centre.
        var four = Cranks.Inline(0.26, 0.0275, 0.104, 0.08, 0, 180, 180, 0);
        var size = 4 * 0.26 * 0.0275 * AccelerationHarmonics.Of(27.5 / 104).Second / 2 / 4;
        Spinner Second(int hand) => new() { Name = $"{hand}", Unbalance = size, Ratio = 2 * hand, Phase = 1, Position = 0.12 };
        foreach (var place in new[] { 0, 1 })
        {
            Assert.Equal(Math.PI, Math.Abs(ShaftTiming.Of(four, [Second(1), Second(-1)], place, 0.3).Best!.Value), 1e-9);
        }

        Assert.Equal(0, Shaking.Of(four, [Second(1) with { Phase = Math.PI }, Second(-1) with { Phase = Math.PI }], 1000).ForceAt(2).Greatest, 1e-5);
        Assert.Null(ShaftTiming.Of(four, [Second(1) with { Ratio = 1 }], 0, 0.3).Best);
    }

    [Fact]
    public void A_couple_is_moved_along_the_crank_by_its_force()
    {
        var twin = Cranks.Inline(0.364, 0.0275, 0.104, 0.09, 0, 270);
        var (here, there) = (Shaking.Of(twin, [], 900, 0), Shaking.Of(twin, [], 900, 0.2));
        for (var i = 0; i < here.Angles.Length; i += 37)
        {
            Assert.Equal(0, (here.Couple[i] - (0.2 * here.Force[i]) - there.Couple[i]).Magnitude, 1e-8);
        }
    }

    // The moment that the frame feels is that of the piston's side thrust at its height: worked the other way round.
    [Theory]
    [InlineData(0)]
    [InlineData(0.004)]
    [InlineData(-0.003)]
    public void The_roll_is_the_moment_of_the_side_thrust(double offset)
    {
        var line = Cranks.Inline(0.5, 0.0358, 0.128, 0, 0);
        line = line with { Throws = [line.Throws[0] with { Offset = offset, BigEnd = 0.3 }] };
        var shaking = Shaking.Of(line, [], 900);
        var loads = CrankLoads.Of(line, 900, shaking.Angles, [new double[shaking.Angles.Length]]).Throws[0];
        for (var i = 0; i < shaking.Angles.Length; i += 23)
        {
            var height = Math.Sqrt(((0.128 + 0.0358) * (0.128 + 0.0358)) - (offset * offset)) - SliderCrank.Motion(0.0358, 0.128, shaking.Angles[i], 900, offset).Travel;
            Assert.Equal(height * loads.Side[i], shaking.Roll[i], 1e-6);
        }
    }

    [Fact]
    public void All_orders_together_are_the_force()
    {
        var shaking = Shaking.Of(Cranks.Of(0.45, 0.034, 0.124, 0.03, (0, 0), (0, 60)), [new Spinner { Name = "half", Unbalance = 1e-3, Ratio = -0.5, Phase = 0.4 }], 800);
        for (var i = 0; i < shaking.Angles.Length; i += 61)
        {
            var sum = Complex.Zero;
            for (var order = 0.5; order <= 14; order += 0.5)
            {
                var turning = shaking.ForceAt(order);
                sum += (turning.With * Complex.FromPolarCoordinates(1, order * shaking.Angles[i])) + (turning.Against * Complex.FromPolarCoordinates(1, -order * shaking.Angles[i]));
            }

            Assert.Equal(0, (sum - shaking.Force[i]).Magnitude, 1e-3);
        }
    }
}
