using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Fits;

namespace Gudgeon.Calc.Tests.Fits;

public class IsoLimits
{
    [Theory] // ISO 286-2 limit deviations of holes, µm
    [InlineData(40, HoleDeviation.K, 7, 7, -18)]
    [InlineData(40, HoleDeviation.M, 7, 0, -25)]
    [InlineData(40, HoleDeviation.N, 7, -8, -33)]
    [InlineData(40, HoleDeviation.P, 7, -17, -42)]
    [InlineData(40, HoleDeviation.S, 7, -34, -59)]
    [InlineData(40, HoleDeviation.G, 7, 34, 9)]
    [InlineData(40, HoleDeviation.F, 8, 64, 25)]
    [InlineData(40, HoleDeviation.E, 9, 112, 50)]
    [InlineData(40, HoleDeviation.JS, 6, 8, -8)]
    [InlineData(40, HoleDeviation.J, 7, 14, -11)]
    [InlineData(52, HoleDeviation.J, 6, 13, -6)]
    [InlineData(25, HoleDeviation.K, 6, 2, -11)]
    [InlineData(25, HoleDeviation.N, 9, 0, -52)]
    [InlineData(2, HoleDeviation.P, 7, -6, -16)]
    [InlineData(100, HoleDeviation.H, 8, 54, 0)]
    [InlineData(280, HoleDeviation.M, 6, -9, -41)]
    public void Holes_are_those_of_the_standard(double size, HoleDeviation letter, int grade, double upper, double lower) =>
        Same(upper, lower, LimitsAndFits.Hole(size * 1e-3, letter, grade));

    [Theory] // ISO 286-2 limit deviations of shafts, µm
    [InlineData(25, ShaftDeviation.f, 7, -20, -41)]
    [InlineData(25, ShaftDeviation.e, 8, -40, -73)]
    [InlineData(25, ShaftDeviation.d, 9, -65, -117)]
    [InlineData(25, ShaftDeviation.js, 6, 6.5, -6.5)]
    [InlineData(25, ShaftDeviation.m, 6, 21, 8)]
    [InlineData(25, ShaftDeviation.k, 8, 33, 0)]
    [InlineData(60, ShaftDeviation.r, 6, 60, 41)]
    [InlineData(70, ShaftDeviation.r, 6, 62, 43)]
    [InlineData(70, ShaftDeviation.t, 6, 94, 75)]
    [InlineData(12, ShaftDeviation.x, 6, 51, 40)]
    public void Shafts_are_those_of_the_standard(double size, ShaftDeviation letter, int grade, double upper, double lower) =>
        Same(upper, lower, LimitsAndFits.Shaft(size * 1e-3, letter, grade));

    [Fact]
    public void A_range_ends_at_its_upper_size_and_includes_it()
    {
        Same(61, 48, LimitsAndFits.Shaft(30e-3, ShaftDeviation.u, 6));
        Same(76, 60, LimitsAndFits.Shaft(30.001e-3, ShaftDeviation.u, 6));
        Same(54, 41, LimitsAndFits.Shaft(24e-3, ShaftDeviation.u, 6));
    }

    [Fact]
    public void What_the_standard_does_not_have_is_refused()
    {
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Shaft(20e-3, ShaftDeviation.t, 6));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Shaft(14e-3, ShaftDeviation.v, 6));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Shaft(18e-3, ShaftDeviation.y, 6));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Hole(51e-3, HoleDeviation.EF, 6));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Hole(1e-3, HoleDeviation.A, 11));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Hole(1e-3, HoleDeviation.H, 14));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Hole(1e-3, HoleDeviation.N, 9));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Hole(20e-3, HoleDeviation.P, 2));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Hole(20e-3, HoleDeviation.H, 19));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Hole(20e-3, HoleDeviation.K, 9));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Shaft(20e-3, ShaftDeviation.j, 8));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Hole(20e-3, HoleDeviation.J, 9));
        Assert.Throws<FormulaDomainException>(() => LimitsAndFits.Shaft(0.6, ShaftDeviation.h, 6));
    }

    [Theory] // The rule by which the standard shifts tight holes: on either basis it is the same fit.
    [InlineData(7, 6)]
    [InlineData(6, 5)]
    [InlineData(4, 3)]
    public void A_tight_fit_is_the_same_on_hole_and_on_shaft_basis(int hole, int shaft)
    {
        double[] sizes = [5, 8, 15, 28, 45, 70, 100, 150, 200, 290, 390, 450];
        foreach (var (size, letter) in sizes.SelectMany(s => Enum.GetValues<ShaftDeviation>().Where(l => l >= ShaftDeviation.p).Select(l => (s * 1e-3, l))))
        {
            if ((size, letter) is ( <= 24e-3, ShaftDeviation.t) or ( <= 14e-3, ShaftDeviation.v) or ( <= 18e-3, ShaftDeviation.y))
            {
                continue;
            }

            var onHole = LimitsAndFits.Fit(size, HoleDeviation.H, hole, letter, shaft);
            var onShaft = LimitsAndFits.Fit(size, (HoleDeviation)letter, hole, ShaftDeviation.h, shaft);
            Assert.Equal(onHole.Least, onShaft.Least, 1e-12);
            Assert.Equal(onHole.Greatest, onShaft.Greatest, 1e-12);
        }
    }

    [Fact] // Both enumerations are the one alphabet of the standard.
    public void Hole_and_shaft_letters_are_the_same() =>
        Assert.Equal(Enum.GetNames<ShaftDeviation>().Select(n => n.ToUpperInvariant()), Enum.GetNames<HoleDeviation>());

    [Fact]
    public void Tolerances_grow_with_size_and_grade()
    {
        double[] sizes = [2, 5, 8, 15, 25, 45, 70, 100, 150, 200, 300, 390, 450];
        for (var grade = -1; grade <= 18; grade++)
        {
            for (var i = 0; i < sizes.Length; i++)
            {
                var here = Width(sizes[i], grade);
                Assert.True(i == 0 || here >= Width(sizes[i - 1], grade));
                Assert.True(grade == -1 || here > Width(sizes[i], grade - 1));
            }
        }

        static double Width(double size, int grade)
        {
            var limits = LimitsAndFits.Hole(size * 1e-3, HoleDeviation.H, grade);
            return limits.Upper - limits.Lower;
        }
    }

    [Theory] // DIN 6885-1
    [InlineData(8, 2)]
    [InlineData(17, 5)]
    [InlineData(17.001, 6)]
    [InlineData(58.001, 18)]
    public void Key_ranges_end_at_their_upper_size(double shaft, double width) =>
        Assert.Equal(width * 1e-3, ParallelKey.Section(shaft * 1e-3).Width, 1e-9);

    private static void Same(double upper, double lower, SizeLimits limits)
    {
        Assert.Equal(upper, limits.Upper * 1e6, 1e-6);
        Assert.Equal(lower, limits.Lower * 1e6, 1e-6);
    }
}
