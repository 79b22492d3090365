using CsCheck;
using Gudgeon.Calc.Belts;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Tests.Belts;

/// <summary>Belts and chains there and back.</summary>
public class BeltAndChainTests
{
    [Fact]
    public void CentreDistanceGivesTheBeltLength() => Gen.Select(Gen.Double[0.05, 0.2], Gen.Double[0.05, 0.2], Gen.Double[0.25, 1]).Sample((first, second, centres) =>
    {
        var belt = BeltGeometry.Open(first, second, centres);
        Assert.Equal(centres, BeltGeometry.CentreDistance(first, second, belt.Length), 1e-9);
        Assert.Equal(Math.Tau, belt.SmallWrap + belt.LargeWrap, 1e-12);
    });

    [Fact]
    public void PowerPeaksAtTheBestSpeed() => Gen.Select(Gen.Double[500, 5000], Gen.Double[0.1, 1], Gen.Double[0.7, 1.3]).Sample((tension, mass, share) =>
    {
        var best = BeltDrive.BestSpeed(tension, mass);
        Assert.True(At(best) >= At(share * best) - 1e-9);

        double At(double speed) => BeltDrive.FromGreatestTension(tension, 0.3, Math.PI, speed, mass).Power;
    });

    [Fact]
    public void TensionsForAPowerCarryThatPower() => Gen.Select(Gen.Double[1e3, 1e5], Gen.Double[5, 40], Gen.Double[0.1, 0.6]).Sample((power, speed, friction) =>
    {
        var demand = BeltDrive.ForPower(power, speed, friction, 2.8);
        Assert.Equal(power, BeltDrive.FromGreatestTension(demand.Tight, friction, 2.8, speed).Power, 1e-9 * power);
        Assert.Equal(power, BeltDrive.FromSetUpTension(demand.SetUp, friction, 2.8, speed).Power, 1e-9 * power);
    });

    [Fact]
    public void ChainLengthAndCentresAreInverse() => Gen.Select(Gen.Int[12, 20], Gen.Int[30, 60], Gen.Double[0.4, 0.8]).Sample((front, rear, centres) =>
        Assert.Equal(centres, ChainDrive.CentreDistance(front, rear, 0.015875, ChainDrive.Length(front, rear, 0.015875, centres)), 1e-9));

    [Fact] // At that pull the tight span is the given number of times the slack one; no pull is left where turning takes all of the tension.
    public void ABeltJumpsWhereItsSpansPartAsFarAsTheyMay() => Gen.Select(Gen.Double[100, 3000], Gen.Double[0, 0.3], Gen.Double[0, 60], Gen.Double[2, 50]).Sample((setUp, mass, speed, ratio) =>
    {
        var (pressing, half) = (setUp - (mass * speed * speed), BeltSetting.JumpPull(setUp, mass, speed, ratio) / 2);
        Assert.Equal(pressing > 0 ? ratio * (pressing - half) : 0, pressing > 0 ? pressing + half : half, 1e-9 * setUp);
        if (pressing > 0)
        {
            Assert.Equal(setUp, BeltSetting.JumpTension(2 * half, mass, speed, ratio), 1e-9 * setUp);
        }
    });

    [Fact]
    public void ABeltThatFliesOffIsRefused() =>
        Assert.Contains("belt speed", Assert.Throws<FormulaDomainException>(() => BeltDrive.FromGreatestTension(100, 0.3, 3, 100, 0.1)).Message, StringComparison.Ordinal);

    [Fact] // Pulleys of 104.4 and 78.9 mm touch at 91.65 mm.
    public void PulleysDoNotOverlap()
    {
        Assert.Contains("overlap", Assert.Throws<FormulaDomainException>(() => BeltGeometry.Open(0.1044, 0.0789, 0.0916)).Message, StringComparison.Ordinal);
        Assert.True(BeltGeometry.Open(0.1044, 0.0789, 0.0917).Length > 0);
        Assert.Throws<FormulaDomainException>(() => IdlerBelt.Course(0.1044, 0.0789, 0.08, 0.0514, 0.105, 0.054));
    }
}
