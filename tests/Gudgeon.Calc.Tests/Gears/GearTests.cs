using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gears;

namespace Gudgeon.Calc.Tests.Gears;

/// <summary>Gear geometry by two roads, contact and film against their limits.</summary>
public class GearTests
{
    [Fact]
    public void AStraightPairWithoutShiftIsTheSpurGear() => Gen.Select(Gen.Int[18, 40], Gen.Int[18, 90]).Sample((pinion, wheel) =>
    {
        var simple = SpurGear.Contact(pinion, wheel, 0.003);
        var pair = IsoGearGeometry.Pair(pinion, wheel, 0.003, 0, 0, 0, 0.02, 100, 300);
        Assert.Equal(simple.Ratio, pair.TransverseRatio, 1e-9);
        Assert.Equal(20 * Math.PI / 180, pair.WorkingAngle, 1e-9);
        Assert.Equal(pinion, pair.VirtualPinion, 1e-9);
    });

    [Fact]
    public void CentreDistanceAndShiftsTellTheSameWorkingAngle()
    {
        // Centre distance worked out from the angle that the shifts give must lead back to that angle.
        var shifted = IsoGearGeometry.Pair(17, 43, 0.003, 0.2, 0.3, 0.1, 0.02, 100, 300);
        var transverse = Math.Atan(Math.Tan(20 * Math.PI / 180) / Math.Cos(0.2));
        var centres = (shifted.PinionDiameter + shifted.WheelDiameter) / 2 * Math.Cos(transverse) / Math.Cos(shifted.WorkingAngle);
        var given = IsoGearGeometry.Pair(17, 43, 0.003, 0.2, 0.3, 0.1, 0.02, 100, 300, centres);
        Assert.Equal(shifted.WorkingAngle, given.WorkingAngle, 1e-9);
        Assert.True(shifted.WorkingAngle > transverse);
    }

    [Fact]
    public void TheLeastPinionIsTheOneThatJustClears()
    {
        // A pinion of the least teeth contacts without interference, one fewer is refused.
        Assert.True(SpurGear.Contact(13, 13, 0.002).Ratio > 1);
        Assert.Throws<FormulaDomainException>(() => SpurGear.Contact(12, 12, 0.002));
        Assert.Equal(SpurGear.LeastWithRack().Exact, SpurGear.Least(1e7).Exact, 1e-4);
    }

    [Fact]
    public void MeanPressureTimesAreaIsTheLoad() => Gen.Select(Gen.Double[1, 1000], Gen.Double[0.002, 0.05]).Sample((load, radius) =>
    {
        var contact = HertzContact.Point(load, radius, 2 * radius);
        Assert.Equal(load, contact.Mean * Math.PI * contact.Radius * contact.Radius, 1e-9 * load);
        Assert.Equal(load, HertzContact.Line(load, radius).Peak * Math.PI / 2 * HertzContact.Line(load, radius).HalfWidth, 1e-9 * load);
    });

    [Fact]
    public void TheFilmHardlyMindsTheLoadButMindsTheSpeed()
    {
        var film = OilFilm.Line(4e5, 10, 0.01, 0.01);
        Assert.Equal(Math.Pow(2, -0.13), OilFilm.Line(8e5, 10, 0.01, 0.01).LeastFilm / film.LeastFilm, 1e-9);
        Assert.Equal(Math.Pow(2, 0.7), OilFilm.Line(4e5, 20, 0.01, 0.01).LeastFilm / film.LeastFilm, 1e-9);
    }
}
