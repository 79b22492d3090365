using CsCheck;
using Gudgeon.Calc.Shafts;

namespace Gudgeon.Calc.Tests.Shafts;

/// <summary>Shaft criteria against each other.</summary>
public class ShaftTests
{
    private const double Se = 200e6, Sut = 700e6, Sy = 500e6;

    [Fact]
    public void ADiameterForASafetyFactorHasThatSafetyFactor() =>
        Gen.Select(Gen.Double[1, 200], Gen.Double[0, 100], Gen.Double[0, 200], Gen.Enum<FatigueCriterion>()).Sample((moment, mean, torque, criterion) =>
        {
            var diameter = ShaftFatigue.Diameter(moment, mean, 0, torque, Se, Sut, Sy, 1.6, 1.3, 2, criterion);
            Assert.Equal(2, ShaftFatigue.Safety(diameter, moment, mean, 0, torque, Se, Sut, Sy, 1.6, 1.3, criterion).Fatigue, 1e-9);
        });

    [Fact]
    public void SoderbergIsTheMostCarefulAndGerberTheBoldest() => Gen.Select(Gen.Double[1, 200], Gen.Double[1, 200]).Sample((moment, torque) =>
    {
        Assert.True(Needed(FatigueCriterion.Soderberg) >= Needed(FatigueCriterion.Goodman));
        Assert.True(Needed(FatigueCriterion.Goodman) >= Needed(FatigueCriterion.Gerber));

        double Needed(FatigueCriterion criterion) => ShaftFatigue.Diameter(moment, 0, 0, torque, Se, Sut, Sy, criterion: criterion);
    });

    [Fact]
    public void AllCriteriaAgreeWithoutMeanLoad()
    {
        var needed = Enum.GetValues<FatigueCriterion>().Select(c => ShaftFatigue.Diameter(80, 0, 30, 0, Se, Sut, Sy, criterion: c)).ToArray();
        Assert.All(needed, d => Assert.Equal(needed[0], d, 1e-12));
    }

    [Fact]
    public void BearingsOfAnOverhungPulleyHoldItsLoad()
    {
        var pulley = ShaftStress.Pulley(900, 200, 2.8, 0.06, 0.045, 0.12, 0.025);
        Assert.Equal(pulley.HubLoad, pulley.NearBearing - pulley.FarBearing, 1e-9);
        Assert.Equal(pulley.Moment, pulley.FarBearing * 0.12, 1e-9);
    }
}
