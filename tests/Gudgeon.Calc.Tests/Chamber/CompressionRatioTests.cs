using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;

namespace Gudgeon.Calc.Tests.Chamber;

/// <summary>Chamber arithmetic there and back.</summary>
public class CompressionRatioTests
{
    private static readonly Gen<(double Bore, double Stroke, double Ratio)> Cylinders = Gen.Select(Gen.Double[0.05, 0.11], Gen.Double[0.04, 0.1], Gen.Double[7, 15]);

    [Fact]
    public void ClearanceForARatioGivesThatRatio() => Cylinders.Sample(c =>
    {
        var swept = CompressionRatio.SweptVolume(c.Bore, c.Stroke);
        Assert.Equal(c.Ratio, CompressionRatio.FromVolumes(swept, CompressionRatio.ClearanceFor(swept, c.Ratio)), 1e-9);
    });

    [Fact]
    public void ASpacerUnderTheCylinderBringsTheWantedRatio() => Cylinders.Sample(c =>
    {
        var now = CompressionRatio.ByParts(c.Bore, c.Stroke, 20e-6, 2e-6, c.Bore, 0.8e-3, 0.2e-3);
        var spacer = CompressionRatio.SpacerFor(c.Bore, now.Swept, now.Clearance, c.Ratio);
        Assert.Equal(c.Ratio, CompressionRatio.FromVolumes(now.Swept, now.Clearance + (Math.PI * c.Bore * c.Bore / 4 * spacer)), 1e-9);
    });

    [Fact]
    public void ABuretteOverTheWholeCylinderAgreesWithTheParts()
    {
        var parts = CompressionRatio.ByParts(0.081, 0.0485, 24.8e-6, 4.6e-6, 0.082, 0.65e-3, 0.25e-3);
        Assert.Equal(parts.Ratio, Burette.CompressionRatio(parts.Swept, parts.Clearance + 1.1e-6, 1.1e-6), 1e-9);
    }

    [Fact]
    public void ADomeIsWhatTheCylinderDidNotTake()
    {
        var poured = (Math.PI * 0.081 * 0.081 / 4 * 0.012) - 4.6e-6;
        Assert.Equal(4.6e-6, Burette.Dome(0.081, 0.012, poured), 1e-15);
    }

    [Fact]
    public void ADomeThatFillsTheChamberIsRefused() =>
        Assert.Contains("clearance volume", Assert.Throws<FormulaDomainException>(() => CompressionRatio.ByParts(0.08, 0.05, 5e-6, 20e-6, 0.08, 1e-3)).Message, StringComparison.Ordinal);

    [Fact]
    public void HarderServiceWantsALargerTopGap()
    {
        var gaps = Enum.GetValues<RingService>().Select(s => RingGap.Top(0.081, s)).ToArray();
        Assert.Equal(gaps.Order(), gaps);
        Assert.Equal(6, gaps.Distinct().Count());
    }

    [Fact]
    public void ARingAndABoreThatGrowAlikeKeepTheirGap() =>
        Assert.Equal(0, RingGap.Closing(0.081, 11e-6, 500, 11e-6, 500), 1e-12);

    [Fact]
    public void TheTradeRuleOverstatesTheIsentropicRatio() => Gen.Double[1.05, 3].Sample(pressureRatio =>
        Assert.True(BoostedCompression.TradeRule(9, (pressureRatio - 1) * 101_325) > BoostedCompression.Isentropic(9, pressureRatio)));
}
