using CsCheck;
using Gudgeon.Calc.Clutch;

namespace Gudgeon.Calc.Tests.Clutch;

/// <summary>Clutch capacity and slip energy.</summary>
public class ClutchTests
{
    private static readonly Gen<(double Outer, double Share)> Rings = Gen.Select(Gen.Double[0.08, 0.3], Gen.Double[0.3, 0.98]);

    [Fact]
    public void ANewFaceCarriesAtLeastAsMuchAsAWornOne() => Rings.Sample(r =>
    {
        var worn = PlateClutch.Torque(2000, 0.12, r.Outer, r.Share * r.Outer, 14);
        var fresh = PlateClutch.Torque(2000, 0.12, r.Outer, r.Share * r.Outer, 14, FacePressure.UniformPressure);
        Assert.True(fresh.Torque >= worn.Torque);
        Assert.True(fresh.PeakPressure <= worn.PeakPressure);
    });

    [Fact]
    public void ClampForceAndTorqueAreInverse() => Rings.Sample(r =>
    {
        foreach (var pressure in Enum.GetValues<FacePressure>())
        {
            var clamp = PlateClutch.ClampForce(180, 0.12, r.Outer, r.Share * r.Outer, 14, pressure);
            var back = PlateClutch.Torque(clamp.Force, 0.12, r.Outer, r.Share * r.Outer, 14, pressure);
            Assert.Equal(180, back.Torque, 1e-9);
            Assert.Equal(clamp.Force, PlateClutch.ClampForceFromPressure(back.PeakPressure, r.Outer, r.Share * r.Outer, pressure), 1e-6);
        }
    });

    [Fact]
    public void SlipLosesExactlyTheKineticEnergyThatDisappears() =>
        Gen.Select(Gen.Double[0.01, 1], Gen.Double[0.01, 1], Gen.Double[50, 1000], Gen.Double[10, 500]).Sample((driving, driven, speed, torque) =>
        {
            var slip = SlipEnergy.TwoInertias(driving, driven, speed, torque, speed / 4);
            var before = (driving * speed * speed / 2) + (driven * speed * speed / 32);
            var after = (driving + driven) * slip.CommonSpeed * slip.CommonSpeed / 2;
            Assert.Equal(before - after, slip.Loss, 1e-9 * before);
        });

    [Fact]
    public void WithOutsideTorquesTheEnergyStillBalances()
    {
        var slip = SlipEnergy.TwoInertias(0.05, 0.2, 600, 120, 50, 70, 30);
        var meanDriving = (600 + slip.CommonSpeed) / 2;
        var meanDriven = (50 + slip.CommonSpeed) / 2;
        var supplied = ((70 * meanDriving) - (30 * meanDriven)) * slip.SlipTime;
        var kinetic = (0.25 * slip.CommonSpeed * slip.CommonSpeed / 2) - (0.05 * 600 * 600 / 2) - (0.2 * 50 * 50 / 2);
        Assert.Equal(supplied - kinetic, slip.Loss, 1e-6);
    }

    [Fact]
    public void ACentrifugalShoeTouchesAtItsEngagingSpeed()
    {
        var speed = CentrifugalClutch.EngagingSpeed(0.4, 0.06, 250);
        Assert.Equal(0, CentrifugalClutch.ShoeTorque(3, 0.4, 0.06, 0.999 * speed, 250, 0.25, 0.15));
        Assert.True(CentrifugalClutch.ShoeTorque(3, 0.4, 0.06, 1.001 * speed, 250, 0.25, 0.15) > 0);
    }
}
