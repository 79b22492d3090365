using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Springs;

namespace Gudgeon.Calc.Tests.Springs;

public class SpringStrength
{
    private static readonly Gen<double> Endurance = Gen.Double[200e6, 900e6];
    private static readonly Gen<double> Shear = Gen.Double[900e6, 1500e6];

    [Fact]
    public void The_strength_point_lies_on_its_line() => Gen.Select(Endurance, Shear, Gen.Double[0.05, 5]).Sample((endurance, shear, slope) =>
    {
        var goodman = SpringFatigue.AmplitudeStrength(endurance, shear, slope, FatigueCriterion.Goodman);
        Assert.Equal(1, (goodman / endurance) + (goodman / slope / shear), 1e-9);
        var gerber = SpringFatigue.AmplitudeStrength(endurance, shear, slope, FatigueCriterion.Gerber);
        Assert.Equal(1, (gerber / endurance) + Math.Pow(gerber / slope / shear, 2), 1e-9);
        Assert.True(gerber >= goodman);
    });

    [Fact]
    public void The_endurance_limit_passes_through_the_tested_point() => Gen.Select(Shear, Gen.Double[100e6, 500e6], Gen.Double[100e6, 800e6]).Sample((shear, amplitude, mean) =>
    {
        var goodman = SpringFatigue.Endurance(amplitude, mean, shear, FatigueCriterion.Goodman);
        Assert.Equal(1, (amplitude / goodman) + (mean / shear), 1e-9);
        Assert.True(SpringFatigue.Endurance(amplitude, mean, shear, FatigueCriterion.Gerber) < goodman);
    });

    [Fact]
    public void More_lift_costs_fatigue_safety() => Gen.Select(Gen.Double[400, 700], Gen.Double[1, 100]).Sample((open, more) =>
        Assert.True(SpringFatigue.Safety(300, open + more, 4e-3, 25e-3, 1850e6).Safety < SpringFatigue.Safety(300, open, 4e-3, 25e-3, 1850e6).Safety));

    [Fact]
    public void Peening_pays()
    {
        var peened = SpringFatigue.Zimmerli(WireSurface.Peened);
        var bare = SpringFatigue.Zimmerli(WireSurface.Unpeened);
        Assert.True(peened.Amplitude > bare.Amplitude && peened.Mean > bare.Mean);
    }

    [Fact]
    public void Buckling_begins_at_half_the_shear_corrected_length() => Gen.Select(Gen.Double[5e-3, 40e-3], Gen.Double[0.5, 2]).Sample((mean, seating) =>
    {
        var stable = SpringBuckling.StableLength(mean, seating);
        var expected = stable * 0.5 / (1 - (79.3 / 206));
        Assert.Equal(expected, SpringBuckling.Deflection(mean, stable, seating), expected * 1e-6);
        Assert.True(SpringBuckling.Deflection(mean, 3 * stable, seating) < 3 * expected);
        Assert.Throws<FormulaDomainException>(() => SpringBuckling.Deflection(mean, 0.99 * stable, seating));
    });

    [Fact]
    public void A_wire_outside_the_table_is_refused() =>
        Assert.Throws<FormulaDomainException>(() => SpringWire.Strength(WireGrade.Music, 8e-3));

    [Theory] // Shigley, 9th ed., table 10-4: A at 1 mm
    [InlineData(WireGrade.Music, 2211)]
    [InlineData(WireGrade.OilTempered, 1855)]
    [InlineData(WireGrade.HardDrawn, 1783)]
    [InlineData(WireGrade.ChromeVanadium, 2005)]
    public void Wire_of_one_millimetre_has_the_strength_of_the_table(WireGrade grade, double megapascals) =>
        Assert.Equal(megapascals * 1e6, SpringWire.Strength(grade, 1e-3), 1);

    [Fact]
    public void Curvature_factors_differ_by_as_much_as_published() // Shigley, problem 10-1: 1.36 % at C = 4, 0.743 % at C = 12
    {
        Assert.Equal(1.363, 100 * (1 - (HelicalSpring.Bergstrasser(4) / HelicalSpring.Wahl(4))), 0.001);
        Assert.Equal(0.743, 100 * (1 - (HelicalSpring.Bergstrasser(12) / HelicalSpring.Wahl(12))), 0.001);
    }
}
