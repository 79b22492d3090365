using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Calc.Tests.Crank;

/// <summary>Shaking forces against a march round the turn, and against each other.</summary>
public class BalanceTests
{
    private const double Mass = 0.36, Radius = 0.03, Rod = 0.11, Speed = 1000;

    [Fact]
    public void AnyLayoutIsWhatAMarchRoundTheTurnFinds() => Gen.Select(Angles, Angles, Positions).Sample((axes, throws, positions) =>
    {
        var layout = ShakingForces.Layout(Mass, Radius, Rod, Speed, axes, throws, positions);
        var (force, second) = (0.0, 0.0);
        for (var i = 0; i < 720; i++)
        {
            var turn = Math.Tau * i / 720;
            force = Math.Max(force, Resultant(axes, throws, turn, 1));
            second = Math.Max(second, Resultant(axes, throws, turn, 2));
        }

        var unit = Mass * Radius * Speed * Speed;
        Assert.Equal(unit * force, layout.PrimaryGreatest, 1e-4 * unit);
        Assert.Equal(unit * Radius / Rod * second, layout.SecondaryGreatest, 1e-4 * unit);
    });

    [Fact]
    public void VTwinIsTheGeneralLayoutWithTwoTiltedCylinders() => Gen.Double[0.1, 3].Sample(vee =>
    {
        var twin = ShakingForces.VTwin(Mass, Radius, Rod, Speed, vee);
        var layout = ShakingForces.Layout(Mass, Radius, Rod, Speed, [vee / 2, -vee / 2], [0, 0], [0, 0]);
        Assert.Equal(Math.Max(twin.PrimaryAlong, twin.PrimaryAcross), layout.PrimaryGreatest, 1e-6);
        Assert.Equal(Math.Max(twin.SecondaryAlong, twin.SecondaryAcross), layout.SecondaryGreatest, 1e-6);
    });

    [Fact]
    public void HalfBalanceLeavesTheLeastWorstForce() => Gen.Double[0, 1].Sample(factor =>
    {
        var half = CrankBalance.Single(Mass, Radius, Rod, Speed);
        var other = CrankBalance.Single(Mass, Radius, Rod, Speed, factor);
        Assert.True(Math.Max(other.Along, other.Across) >= Math.Max(half.Along, half.Across) - 1e-9);
    });

    [Fact]
    public void TheBobWeightOfAFactorShowsThatFactor() => Gen.Double[0.3, 0.9].Sample(factor =>
        Assert.Equal(factor, CrankBalance.Factor(CrankBalance.BobWeight(0.41, 0.39, factor), 0.41, 0.39), 1e-12));

    [Theory]
    [InlineData(BalanceShaftFault.SingleShaft)]
    [InlineData(BalanceShaftFault.BothLate)]
    [InlineData(BalanceShaftFault.OneOfTwo)]
    [InlineData(BalanceShaftFault.Opposed)]
    public void AShaftInTimeLeavesNothingAndAToothOutLeavesSomething(BalanceShaftFault fault)
    {
        Assert.Equal(0, BalanceShaft.OutOfTime(1000, 30, fault, 0).Greatest, 1e-9);
        Assert.True(BalanceShaft.OutOfTime(1000, 30, fault).Greatest > 100);
    }

    [Fact]
    public void ListsOfDifferentLengthAreRefused() =>
        Assert.Throws<FormulaDomainException>(() => ShakingForces.Inline(Mass, Radius, Rod, Speed, [0, Math.PI], [0]));

    private static readonly Gen<double[]> Angles = Gen.Double[-Math.PI, Math.PI].Array[3];
    private static readonly Gen<double[]> Positions = Gen.Double[0, 0.4].Array[3];

    private static double Resultant(double[] axes, double[] throws, double turn, int order)
    {
        double x = 0, y = 0;
        for (var i = 0; i < axes.Length; i++)
        {
            var force = Math.Cos(order * (turn + throws[i] - axes[i]));
            x += force * Math.Cos(axes[i]);
            y += force * Math.Sin(axes[i]);
        }

        return Math.Sqrt((x * x) + (y * y));
    }
}
