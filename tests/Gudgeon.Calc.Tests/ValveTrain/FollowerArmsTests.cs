using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Calc.Tests.ValveTrain;

public class FollowerArmsTests
{
    private const double BaseRadius = 15e-3, PivotToCam = 36e-3, CamArm = 26e-3, PadRadius = 18e-3, ValveArm = 42e-3;

    /// <summary>An eccentric disc and a pad are a four-bar linkage: the middle of the pad keeps its distance from the middle of the disc.</summary>
    [Fact]
    public void AnEccentricDiscIsAFourBarLinkage() => Gen.Select(Gen.Double[1e-3, 4e-3], Gen.Double[-3, 3], Gen.Bool).Sample((throw_, angle, towards) =>
    {
        LawPoint Disc(double a) => new(throw_ * (1 + Math.Cos(a)), -throw_ * Math.Sin(a), -throw_ * Math.Cos(a), throw_ * Math.Sin(a));
        var arms = new FollowerArms(Disc, BaseRadius, PivotToCam, CamArm, PadRadius, ValveArm);

        // The disc's middle stands off the axis by the throw, on the nose's side.
        var coupler = BaseRadius + throw_ + PadRadius;
        var shutDirection = -Math.PI + Math.Acos(((PivotToCam * PivotToCam) + Math.Pow(BaseRadius + PadRadius, 2) - (CamArm * CamArm)) / (2 * PivotToCam * (BaseRadius + PadRadius)));
        double Beam(double cam)
        {
            var (sine, cosine) = Math.SinCos(shutDirection + arms.Nose + (towards ? -cam : cam));
            var (x, y) = ((throw_ * cosine) + PivotToCam, throw_ * sine);
            var distance = Math.Sqrt((x * x) + (y * y));
            return Math.Atan2(y, x) - Math.Acos(((distance * distance) + (CamArm * CamArm) - (coupler * coupler)) / (2 * distance * CamArm));
        }

        var shut = -Math.Acos(((PivotToCam * PivotToCam) + (CamArm * CamArm) - Math.Pow(BaseRadius + PadRadius, 2)) / (2 * PivotToCam * CamArm));
        var (turn, most) = (shut - Beam(angle), shut - Beam(0));
        Assert.Equal(ValveArm * (Math.Sin(turn - (most / 2)) + Math.Sin(most / 2)), arms.Lift(angle, towards), 1e-8);
    }, iter: 2_000);

    /// <summary>At the nose the lift is that of the whole turn, and it is greatest there; which way the cam turns only mirrors the curve.</summary>
    [Fact]
    public void FullLiftIsAtTheMiddle()
    {
        var lobe = new Lobe(LobeLaw.Powers, 6e-3, 2.4, 0.2e-3, 0.4);
        var arms = new FollowerArms(lobe.At, BaseRadius, PivotToCam, CamArm, PadRadius, ValveArm);
        var top = arms.Lift(0);
        Assert.InRange(top / 6e-3, FollowerRatio.OfArms(BaseRadius, PivotToCam, CamArm, PadRadius, ValveArm) * 0.9, FollowerRatio.OfArms(BaseRadius, PivotToCam, CamArm, PadRadius, ValveArm, 6e-3) * 1.1);
        for (var angle = 0.02; angle < 1; angle += 0.02)
        {
            Assert.True(arms.Lift(angle) < top && arms.Lift(-angle) < top);
            Assert.Equal(arms.Lift(angle), arms.Lift(-angle, towards: true), 1e-12);
        }

        // The pad's arc wanders: the two flanks differ at the valve though the lobe is symmetric.
        Assert.True(Math.Abs(arms.Lift(0.7) - arms.Lift(-0.7)) > 1e-5);
    }

    /// <summary>At the very first of the lift the ratio is that of the triangle, but for the arm that is not yet square to the stem.</summary>
    [Fact]
    public void TheRatioIsThatOfTheTriangle()
    {
        const double Small = 1e-5;
        LawPoint Disc(double a) => new(Small * (1 + Math.Cos(a)), -Small * Math.Sin(a), -Small * Math.Cos(a), Small * Math.Sin(a));
        var arms = new FollowerArms(Disc, BaseRadius, PivotToCam, CamArm, PadRadius, ValveArm);
        Assert.Equal(FollowerRatio.OfArms(BaseRadius, PivotToCam, CamArm, PadRadius, ValveArm), arms.Lift(0) / (2 * Small), 2e-3);
    }

    [Fact]
    public void ArmsThatDoNotReachTheCamAreRefused() =>
        Assert.Contains("pad", Assert.Throws<FormulaDomainException>(() => new FollowerArms(_ => default, BaseRadius, 90e-3, CamArm, PadRadius, ValveArm)).Message, StringComparison.Ordinal);
}
