using Gudgeon.Calc.Gas;
using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Vehicle;

namespace Gudgeon.Calc.Tests.Vehicle;

/// <summary>Balance of forces and moments on the machine.</summary>
public class MachineTests
{
    private static readonly Gen<(double Wheelbase, double Ahead, double Height)> Machine =
        Gen.Select(Gen.Double[1.2, 2.0], Gen.Double[0.3, 0.7], Gen.Double[0.4, 0.8], (wheelbase, share, height) => (wheelbase, share * wheelbase, height));

    [Fact]
    public void FrontWheelCarriesNothingAtTheWheelieLimit() => Machine.Sample(m =>
        Assert.Equal(0, PitchLimits.Loads(300, m.Wheelbase, m.Ahead, m.Height, PitchLimits.Wheelie(m.Ahead, m.Height)).Front, 1e-9));

    [Fact]
    public void DriveForceEqualsFrictionTimesRearLoadAtTheTractionLimit() => Gen.Select(Machine, Gen.Double[0.5, 1.4], Gen.Double[0, 90]).Sample((m, friction, speed) =>
    {
        var drag = AirDrag.Load(0.35, speed).Force;
        var limit = PitchLimits.TractionWithDrag(300, m.Wheelbase, m.Ahead, m.Height, friction, speed, 0.35, 0.7);
        var loads = PitchLimits.Loads(300, m.Wheelbase, m.Ahead, m.Height, limit.Acceleration, drag, 0.7);
        Assert.Equal(friction * loads.Rear, limit.Thrust, 1e-8 * loads.Rear);
        Assert.Equal(300 * PhysicalConstants.StandardGravity, loads.Rear + loads.Front, 1e-9);
    });

    [Fact]
    public void LimitsWithDragAtRestAreThoseWithout() => Machine.Sample(m =>
    {
        Assert.Equal(PitchLimits.Wheelie(m.Ahead, m.Height), PitchLimits.WheelieWithDrag(300, m.Ahead, m.Height, 0, 0.35, 0.7).Acceleration, 1e-12);
        Assert.Equal(PitchLimits.Traction(m.Wheelbase, m.Ahead, m.Height, 0.9), PitchLimits.TractionWithDrag(300, m.Wheelbase, m.Ahead, m.Height, 0.9, 0, 0.35, 0.7).Acceleration, 1e-12);
    });

    [Fact]
    public void GripAndWheelieMeetAtCentreOverHeight() => Machine.Where(m => m.Ahead < 0.95 * m.Wheelbase).Sample(m =>
    {
        var friction = PitchLimits.WheelieFriction(m.Ahead, m.Height);
        Assert.Equal(PitchLimits.Wheelie(m.Ahead, m.Height), PitchLimits.Traction(m.Wheelbase, m.Ahead, m.Height, friction), 1e-9);
    });

    [Fact]
    public void EndlessGripIsRefused() =>
        Assert.Throws<FormulaDomainException>(() => PitchLimits.Traction(1.45, 0.7, 0.6, 3));

    /// <summary>A known centre is turned with the machine about the rear axle, wheels of any two sizes; the method must find it again.</summary>
    [Fact]
    public void LiftingFindsAKnownCentre() => Gen.Select(Machine, Gen.Double[0.25, 0.35], Gen.Double[0.25, 0.35], Gen.Double[5, 35]).Sample((m, rear, front, degrees) =>
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        var (axleX, axleZ) = (m.Wheelbase, front - rear);
        var raisedBase = (axleX * cos) - (axleZ * sin);
        var rise = (axleX * sin) + (axleZ * cos) - axleZ;
        var raised = 215 * ((m.Ahead * cos) - ((m.Height - rear) * sin)) / raisedBase;
        var found = LiftingTest.FrontRaised(m.Wheelbase, 215, 215 * m.Ahead / m.Wheelbase, Math.Max(raised, 0), rise, rear, front);
        Assert.Equal(degrees * Math.PI / 180, found.Tilt, 1e-9);
        Assert.Equal(m.Ahead, found.Ahead, 1e-9);
        if (raised >= 0)
        {
            Assert.Equal(m.Height, found.Height, 1e-9);
        }
    });

    [Fact]
    public void LiftingTheRearFindsAKnownCentre() => Gen.Select(Machine, Gen.Double[0.25, 0.35], Gen.Double[0.25, 0.35], Gen.Double[5, 25]).Sample((m, rear, front, degrees) =>
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        var (axleX, axleZ) = (m.Wheelbase, rear - front);
        var raisedBase = (axleX * cos) - (axleZ * sin);
        var rise = (axleX * sin) + (axleZ * cos) - axleZ;
        var behindFront = ((m.Wheelbase - m.Ahead) * cos) - ((m.Height - front) * sin);
        var found = LiftingTest.RearRaised(m.Wheelbase, 215, 215 * m.Ahead / m.Wheelbase, 215 * (1 - (behindFront / raisedBase)), rise, rear, front);
        Assert.Equal(m.Ahead, found.Ahead, 1e-9);
        Assert.Equal(m.Height, found.Height, 1e-9);
    }, iter: 100);

    [Fact]
    public void CombinedCentreLiesBetweenTheParts()
    {
        var centre = CentreOfGravity.Combined([125, 75], [0.8, 0.4], [0.6, 0.9]);
        Assert.Equal(new MassCentre(200, 0.65, 0.7125), centre);
        Assert.Throws<FormulaDomainException>(() => CentreOfGravity.Combined([125, 75], [0.8], [0.6, 0.9]));
        Assert.Throws<FormulaDomainException>(() => CentreOfGravity.Combined([0], [0.8], [0.6]));
    }

    [Fact]
    public void TopSpeedBalancesPower() => Gen.Select(Gen.Double[5e3, 500e3], Gen.Double[0.2, 0.6], Gen.Double[0, 0.05]).Sample((power, area, rolling) =>
    {
        var speed = AirDrag.TopSpeedRolling(power, area, 300, rolling);
        Assert.Equal(power, AirDrag.Load(area, speed).Power + (rolling * 300 * PhysicalConstants.StandardGravity * speed), 1e-8 * power);
    });

    [Fact]
    public void TailWindFasterThanTheMachinePushes() =>
        Assert.True(AirDrag.Load(0.35, 5, headWind: -10) is { Force: < 0, Power: < 0 });

    [Fact]
    public void NoSagWhileToppedOut() => Assert.Equal(0, Suspension.Sag(95e3, 0.008, 300, 0.45).Sag);

    [Fact]
    public void KineticEnergyOfRotatingPartsIsThatOfTheirEquivalentMass()
    {
        const double speed = 40.0;
        var mass = RotatingMass.Of(280, 0.55, 0.30, 0.75, 0.315, 0.018, 11.5);
        var rotating = 0.5 * ((0.55 * Square(speed / 0.30)) + (0.75 * Square(speed / 0.315)) + (0.018 * Square(11.5 * speed / 0.315)));
        Assert.Equal(rotating, 0.5 * mass.Total * speed * speed, 1e-9 * rotating);

        static double Square(double x) => x * x;
    }
}
