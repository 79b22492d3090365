using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Calc.Tests.Metrology;

/// <summary>Uncertainty and conformity against their limits.</summary>
public class MetrologyTests
{
    [Fact]
    public void FreedomLiesBetweenTheLeastAndTheSum() =>
        Gen.Select(Gen.Double[0.1, 5].Array[3], Gen.Double[1, 50].Array[3]).Sample((components, freedoms) =>
        {
            var effective = CombinedUncertainty.WelchSatterthwaite(components, freedoms).Freedom;
            Assert.InRange(effective, freedoms.Min() - 1e-9, freedoms.Sum() + 1e-9);
        });

    [Fact]
    public void LeavingTheCorrelationOutGivesTheWrongAnswer()
    {
        // GUM H.2: without the correlation the three uncertainties would be 0.195, 0.201 and 0.204 ohm.
        var z = CorrelatedReadings.Impedance([5.007, 4.994, 5.005, 4.990, 4.999], [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3], [1.0456, 1.0438, 1.0468, 1.0428, 1.0433]);
        Assert.True(Math.Abs(z.ResistanceUncertainty - 0.195) > 0.1);
        Assert.True(Math.Abs(z.ReactanceUncertainty - 0.201) > 0.05);
        Assert.Equal(z.Impedance, Math.Sqrt((z.Resistance * z.Resistance) + (z.Reactance * z.Reactance)), 1e-9);
    }

    [Fact]
    public void OneRectangularErrorCoversItsShare()
    {
        var single = RectangularSum.Coverage(1, 2, 0.95);
        Assert.Equal(1.9, single.HalfWidth, 1e-9);
        Assert.Equal(2 / Math.Sqrt(3), single.Uncertainty, 1e-12);
    }

    [Fact]
    public void ManyRectangularErrorsTendToTheNormalLaw()
    {
        var many = RectangularSum.Coverage(12, 1, 0.95);
        Assert.InRange(many.HalfWidth / many.Uncertainty, 1.94, 1.96);
    }

    [Fact]
    public void TwoLimitsAreNeverSurerThanEither() => Gen.Select(Gen.Double[-2, 2], Gen.Double[0.05, 1]).Sample((value, u) =>
    {
        var both = Conformity.TwoLimits(value, u, -1, 1);
        Assert.True(both <= Conformity.OneLimit(value, u, 1) + 1e-12);
        Assert.True(both <= Conformity.OneLimit(value, u, -1, LimitSide.Lower) + 1e-12);
        Assert.Equal(1 - both, Conformity.Capability(value, u, -1, 1).Risk, 1e-9);
    });

    [Fact]
    public void APartAtItsAcceptanceLimitConformsWithTheWantedProbability() => Gen.Double[0.6, 0.99].Sample(probability =>
    {
        var zone = Conformity.Acceptance(0, 1, 0.01, probability);
        Assert.Equal(probability, Conformity.OneLimit(zone.Upper, 0.01, 1), 1e-9);
    });

    [Fact]
    public void AToleranceSmallerThanItsGuardBandsIsRefused() =>
        Assert.Throws<FormulaDomainException>(() => Conformity.Acceptance(0, 10e-6, 5e-6));

    [Fact]
    public void GlobalRiskIsTheRiskOfAMarchOverTheParts()
    {
        // Midpoint sum over the parts, independent of the quadrature used.
        const double inTolerance = 0.95, ratio = 4;
        var risk = Conformity.Global(inTolerance, ratio);
        var parts = 1 / Conformity.GuardFactor((1 + inTolerance) / 2);
        double accept = 0, reject = 0;
        for (var i = 0; i < 40_000; i++)
        {
            var x = (i + 0.5) * 1e-4;
            var weight = 2 * 1e-4 * Math.Exp(-x * x / (2 * parts * parts)) / (parts * Math.Sqrt(Math.Tau));
            var passes = Conformity.TwoLimits(x, parts / ratio, -1, 1);
            (accept, reject) = x > 1 ? (accept + (weight * passes), reject) : (accept, reject + (weight * (1 - passes)));
        }

        Assert.Equal(accept, risk.FalseAccept, 1e-6);
        Assert.Equal(reject, risk.FalseReject, 1e-6);
    }

    [Fact]
    public void GuardingTradesBadPartsForGoodOnes()
    {
        var simple = Conformity.Global(0.95, 4);
        var guarded = Conformity.Global(0.95, 4, 0.9);
        Assert.True(guarded.FalseAccept < simple.FalseAccept);
        Assert.True(guarded.FalseReject > simple.FalseReject);
    }

    [Fact]
    public void PartAndGaugeOfOneMaterialReadRight() =>
        Assert.Equal(0, ThermalLength.ReadingError(0.1, 11.5e-6, 303.15, 11.5e-6, 303.15), 1e-15);

    [Fact]
    public void ATorqueOutsideTheWrenchIsRefused() =>
        Assert.Throws<FormulaDomainException>(() => InstrumentLimit.ForTorque(10, 100));
}
