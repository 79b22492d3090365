using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Calc.Tests.Surfaces;

/// <summary>Saturation, coverage and roughness.</summary>
public class PeeningTests
{
    [Fact]
    public void ASaturationCurveIsFoundAgain() => Gen.Select(Gen.Double[0.1e-3, 0.6e-3], Gen.Double[0.05, 1]).Sample((limit, rate) =>
    {
        double[] times = [0.5 / rate, 1 / rate, 2 / rate, 4 / rate, 8 / rate];
        var fit = AlmenIntensity.Fit(times, Array.ConvertAll(times, t => limit * (1 - Math.Exp(-rate * t))));
        Assert.Equal(limit, fit.Limit, 1e-9 * limit);
        Assert.Equal(rate, fit.Rate, 1e-7 * rate);
    });

    [Fact]
    public void DoublingTheSaturationTimeAddsATenth()
    {
        var fit = AlmenIntensity.Fit([2, 4, 8, 16], [0.118e-3, 0.190e-3, 0.259e-3, 0.295e-3]);
        var doubled = fit.Limit * (1 - Math.Exp(-fit.Rate * 2 * fit.SaturationTime));
        Assert.Equal(1.1, doubled / fit.Intensity, 1e-9);
    }

    [Fact]
    public void AStraightLineHasNoSaturation() =>
        Assert.Throws<FormulaDomainException>(() => AlmenIntensity.Fit([1, 2, 3, 4], [1e-4, 2.2e-4, 3.5e-4, 5e-4]));

    [Fact]
    public void PassesReachTheCoverageAndOneFewerDoesNot() => Gen.Double[0.1, 0.9].Sample(first =>
    {
        var passes = PeeningCoverage.Passes(first);
        Assert.True(PeeningCoverage.After(first, passes) >= PeeningCoverage.Full - 1e-9);
        Assert.True(PeeningCoverage.After(first, passes - 1) < PeeningCoverage.Full);
    });

    [Fact]
    public void OneHitIsTheCoverageItself() => Assert.Equal(0.98, PeeningCoverage.HitAtLeast(1, 1), 1e-12);

    [Fact]
    public void RoughnessFactorsAreThoseOfTheProfile()
    {
        // Mean of |sin| is 2/π and its root mean square 1/√2; for a triangle 1/2 and 1/√3.
        Assert.Equal(1 / Math.Sqrt(2) / (2 / Math.PI), Roughness.RqFromRa(1, ProfileShape.Sine), 1e-12);
        Assert.Equal(1 / Math.Sqrt(3) / 0.5, Roughness.RqFromRa(1, ProfileShape.Triangle), 1e-12);
    }
}
