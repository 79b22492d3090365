using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Calc.Tests.ValveTrain;

public class LobeTests
{
    private const double Degree = Math.PI / 180;

    private static readonly Gen<Lobe> Lobes =
        from law in Gen.Enum<LobeLaw>()
        from lift in Gen.Double[5e-3, 14e-3]
        from duration in Gen.Double[100 * Degree, 160 * Degree]
        from rampHeight in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.1e-3, 0.4e-3])
        from rampAngle in Gen.Double[10 * Degree, 25 * Degree]
        select new Lobe(law, lift, duration, rampHeight, rampAngle);

    /// <summary>Without a ramp the cubed law is the lobe h (1 - 4 z²)³.</summary>
    [Fact]
    public void TheCubedLawIsTheCubeOfAParabola()
    {
        var lobe = new Lobe(LobeLaw.Cubed, 8.5e-3, 150 * Degree);
        for (var angle = -80 * Degree; angle < 80 * Degree; angle += Degree)
        {
            var (point, known) = (lobe.At(angle), PolynomialLobe.At(angle / (150 * Degree)));
            Assert.Equal(8.5e-3 * known.Lift, point.Lift, 1e-12);
            Assert.Equal(8.5e-3 * known.Slope / (150 * Degree), point.Slope, 1e-10);
            Assert.Equal(8.5e-3 * known.Curvature / Math.Pow(150 * Degree, 2), point.Curvature, 1e-10);
        }
    }

    /// <summary>
    /// Nose curvature of 1 + C2 z² + Cp z^p + Cq z^q + Cr z^r + Cs z^s that ends with nothing up to the fourth derivative:
    /// C2 = -p q r s / ((p - 2) (q - 2) (r - 2) (s - 2)), the customary polynomial cam, from memory.
    /// </summary>
    [Fact]
    public void ThePowersLawHasItsNoseInClosedForm()
    {
        var lobe = new Lobe(LobeLaw.Powers, 10e-3, 140 * Degree);
        var second = -8.0 * 14 * 20 * 26 / (6 * 12 * 18 * 24);
        Assert.Equal(2 * second * 10e-3 / Math.Pow(70 * Degree, 2), lobe.At(0).Curvature, 1e-9);
    }

    [Fact]
    public void TheLobeClosesAndKeepsItsRamp() => Lobes.Sample(lobe =>
    {
        Assert.Equal(0, lobe.At(0).Slope, 1e-12);
        Assert.Equal(0, lobe.At(lobe.Reach).Lift);
        Assert.Equal(0, lobe.At(lobe.Reach * 0.999999).Lift, 1e-8);
        var last = lobe.At(0).Lift;
        for (var share = 0.005; share < 1; share += 0.005)
        {
            var point = lobe.At(share * lobe.Reach);
            Assert.InRange(point.Lift, 0, last + 1e-12);
            Assert.Equal(point.Lift, lobe.At(-share * lobe.Reach).Lift);
            Assert.Equal(point.Slope, -lobe.At(-share * lobe.Reach).Slope);
            last = point.Lift;
        }
    }, iter: 300);

    /// <summary>Each derivative is that of the one before it, also across the joints.</summary>
    [Fact]
    public void DerivativesAgree() => Gen.Select(Lobes, Gen.Double[-1.05, 1.05]).Sample((lobe, share) =>
    {
        const double Step = 1e-6;
        var (angle, before, after) = (share * lobe.Reach, lobe.At((share * lobe.Reach) - Step), lobe.At((share * lobe.Reach) + Step));
        var point = lobe.At(angle);
        Assert.Equal((after.Lift - before.Lift) / 2 / Step, point.Slope, 1e-7);
        Assert.Equal((after.Slope - before.Slope) / 2 / Step, point.Curvature, 1e-4);
    }, iter: 2_000);

    /// <summary>The ramp is left at its even speed, which takes up the lash.</summary>
    [Theory]
    [InlineData(LobeLaw.Cubed)]
    [InlineData(LobeLaw.Powers)]
    [InlineData(LobeLaw.Harmonic)]
    public void TheRampHandsOverItsSpeed(LobeLaw law)
    {
        var lobe = new Lobe(law, 9e-3, 130 * Degree, 0.25e-3, 20 * Degree);
        foreach (var angle in new[] { 65.0000001, 64.9999999 })
        {
            var point = lobe.At(angle * Degree);
            Assert.Equal(0.25e-3, point.Lift, 1e-9);
            Assert.Equal(-0.25e-3 / (20 * Degree * 0.875), point.Slope, 1e-9);
            Assert.Equal(0, point.Curvature, 1e-6);
        }
    }

    [Fact]
    public void WhatCannotBeALobeIsRefused()
    {
        Assert.Throws<FormulaDomainException>(() => new Lobe(LobeLaw.Cubed, 5e-3, 130 * Degree, 5e-3, 20 * Degree));
        Assert.Throws<FormulaDomainException>(() => new Lobe(LobeLaw.Cubed, 5e-3, 130 * Degree, 0.3e-3, 0));
        Assert.Throws<FormulaDomainException>(() => new Lobe(LobeLaw.Cubed, 5e-3, 300 * Degree, 0.3e-3, 40 * Degree));
    }
}
