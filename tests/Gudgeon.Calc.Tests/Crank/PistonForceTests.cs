using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Calc.Tests.Crank;

/// <summary>Forces against power and against each other.</summary>
public class PistonForceTests
{
    private static readonly Gen<(double Pressure, double Speed, double Angle, double Offset)> Moments =
        Gen.Select(Gen.Double[-1e5, 9e6], Gen.Double[50, 1300], Gen.Double[0, 4 * Math.PI], Gen.Double[-0.002, 0.002]);

    [Fact]
    public void TorqueTimesSpeedIsForceTimesVelocity() => Moments.Sample(m =>
    {
        var forces = At(m.Pressure, m.Speed, m.Angle, m.Offset);
        var velocity = SliderCrank.Motion(0.0275, 0.104, m.Angle, m.Speed, m.Offset).Velocity;
        Assert.Equal(forces.Effort * velocity, forces.Torque * m.Speed, 1e-9 * Math.Abs(forces.Effort) * m.Speed);
    });

    [Fact]
    public void RodForceIsTheSumOfItsPartsAtBothEnds() => Moments.Sample(m =>
    {
        var forces = At(m.Pressure, m.Speed, m.Angle, m.Offset);
        var square = forces.Rod * forces.Rod;
        Assert.Equal(square, (forces.Effort * forces.Effort) + (forces.SideThrust * forces.SideThrust), 1e-9 * square);
        Assert.Equal(square, (forces.Tangential * forces.Tangential) + (forces.Radial * forces.Radial), 1e-9 * square);
    });

    [Fact]
    public void InertiaDoesNoWorkOverATurn()
    {
        const int steps = 720;
        var work = Enumerable.Range(0, steps).Sum(i => At(0, 1256.637, Math.Tau * i / steps, 0.001).Torque);
        Assert.Equal(0, work / steps, 1e-6);
    }

    [Fact]
    public void NothingIsLeftOnThePinAtTheReversalSpeed()
    {
        var speed = PistonForces.ReversalSpeed(0.1, 7e5, 0.06, 0.25, 1.1, 0.35, PistonLaw.Exact, 9.81);
        var forces = PistonForces.At(0.1, 7e5, 0.06, 0.25, 1.1, speed, 0.35, PistonLaw.Exact, 9.81);
        Assert.Equal(0, forces.Effort, 1e-6 * forces.Gas);
    }

    [Fact]
    public void TwoTermsWithAnOffsetAreRefused() =>
        Assert.Throws<FormulaDomainException>(() => PistonForces.At(0.08, 1e6, 0.03, 0.1, 0.3, 100, 1, PistonLaw.TwoTerm, 0, 0.001));

    [Fact]
    public void TheRodKeepsItsMassAndItsMomentOfInertia() => Gen.Select(Gen.Double[0.2, 2], Gen.Double[0.1, 0.25], Gen.Double[0.2, 0.8]).Sample((mass, rod, share) =>
    {
        var split = RodMasses.Split(mass, rod, share * rod);
        Assert.Equal(mass, split.SmallEnd + split.BigEnd, 1e-12);
        Assert.Equal(split.SmallEnd * (rod - (share * rod)), split.BigEnd * share * rod, 1e-12);

        var gyration = 0.4 * rod;
        var pair = RodMasses.Equivalent(mass, rod, share * rod, gyration);
        var inertia = (pair.PinMass * share * rod * share * rod) + (pair.SecondMass * pair.SecondDistance * pair.SecondDistance);
        Assert.Equal(mass * gyration * gyration, inertia, 1e-9);
    });

    private static PistonForceSet At(double pressure, double speed, double angle, double offset) =>
        PistonForces.At(0.076, pressure, 0.0275, 0.104, 0.364, speed, angle, PistonLaw.Exact, 0, offset);
}
