using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gears;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Calc.Tests.ValveTrain;

/// <summary>An eccentric disc has one radius all round, whatever lift it gives: every formula of the radius must find it.</summary>
public class CamContactTests
{
    private static readonly Gen<(double Disc, double Off, double Angle)> Discs =
        Gen.Select(Gen.Double[0.015, 0.03], Gen.Double[0.001, 0.006], Gen.Double[-3, 3]);

    [Fact]
    public void EccentricDiscOnAFlatFollower() => Discs.Sample((disc, off, angle) =>
        Assert.Equal(disc, CamContact.RadiusOnFlat(disc - off, off * (1 + Math.Cos(angle)), -off * Math.Cos(angle)), 1e-12));

    [Fact]
    public void EccentricDiscOnARoller() => Gen.Select(Discs, Gen.Double[0.004, 0.04]).Sample((cam, roller) =>
    {
        var (disc, off, angle) = cam;
        var baseRadius = disc - off;

        // The roller's centre is on the circle of both radii about the disc's centre; derivatives of its height by hand.
        var reach = disc + roller;
        var (sine, cosine) = Math.SinCos(angle);
        var root = Math.Sqrt((reach * reach) - (off * off * sine * sine));
        var slopeOfRoot = -off * off * sine * cosine / root;
        var curveOfRoot = (-(off * off * ((cosine * cosine) - (sine * sine))) - (slopeOfRoot * slopeOfRoot)) / root;
        var lift = (off * cosine) + root - baseRadius - roller;
        var radius = CamContact.RadiusOnRound(baseRadius, roller, Math.Max(0, lift), (-off * sine) + slopeOfRoot, (-off * cosine) + curveOfRoot);
        Assert.Equal(disc, radius, 1e-9);
    });

    [Fact]
    public void HugeRoundFollowerPressesAsAFlatOne() => Gen.Select(Gen.Double[50, 5000], Gen.Double[0.003, 0.03]).Sample((load, radius) =>
        Assert.Equal(CamContact.PressureOnFlat(load, 0.012, radius).Peak, CamContact.PressureOnRound(load, 0.012, radius, 1e6).Peak, 1e3));

    [Fact]
    public void PressureTimesItsEllipseIsTheLoad() => Gen.Select(Gen.Double[50, 5000], Gen.Double[0.003, 0.03], Gen.Double[0.005, 0.05]).Sample((load, radius, follower) =>
    {
        var contact = CamContact.PressureOnRound(load, 0.012, radius, follower);
        Assert.Equal(load, contact.Peak * Math.PI / 2 * contact.HalfWidth * 0.012, 1e-9 * load);
        Assert.Equal(radius * follower / (radius + follower), contact.Radius, 1e-12);
    });

    [Fact]
    public void HollowMustBeWiderThanTheFollower()
    {
        Assert.True(CamContact.PressureOnRound(500, 0.01, -0.05, 0.02).Peak < CamContact.PressureOnFlat(500, 0.01, 0.02).Peak);
        Assert.Throws<FormulaDomainException>(() => CamContact.PressureOnRound(500, 0.01, -0.01, 0.02));
    }

    /// <summary>Oil is drawn in at the mean of the speeds at which the contact runs over cam and follower; their difference is the sliding.</summary>
    [Fact]
    public void EntrainingIsTheMeanOfTheSurfaces() => Gen.Select(Gen.Double[0.01, 0.02], Gen.Double[0, 0.01], Gen.Double[-0.015, 0.02]).Sample((baseRadius, lift, curvature) =>
    {
        const double Speed = 500;
        var (overCam, overFollower) = (Speed * CamContact.RadiusOnFlat(baseRadius, lift, curvature), Speed * curvature);
        var running = CamContact.Running(baseRadius, lift, curvature, Speed);
        Assert.Equal((overCam + overFollower) / 2, running.Entraining, 1e-12);
        Assert.Equal(overCam - overFollower, running.Sliding, 1e-12);
    });

    [Fact]
    public void FilmOfACamIsThatOfItsReducedRadius()
    {
        var contact = CamContact.PressureOnRound(800, 0.01, 0.006, 0.03);
        Assert.Equal(HertzContact.Line(80e3, 0.005).Peak, contact.Peak, 1);
    }
}
