using CsCheck;
using Gudgeon.Book.Checks;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Tests.Checks;

public class DecisionRuleTests
{
    // 95 % one-sided, ISO 14253-1:2017: the guard band is 1.645 u.
    [Theory]
    [InlineData(1.0165, 0.01, Verdict.Holds)]
    [InlineData(1.0164, 0.01, Verdict.TooCloseToTell)]
    [InlineData(0.9836, 0.01, Verdict.TooCloseToTell)]
    [InlineData(0.9835, 0.01, Verdict.FallsShort)]
    [InlineData(1, 0, Verdict.Holds)]
    [InlineData(0.999999, 0, Verdict.FallsShort)]
    [InlineData(double.PositiveInfinity, 0, Verdict.Holds)]
    [InlineData(-3, 0.1, Verdict.FallsShort)]
    [InlineData(double.NaN, 0, Verdict.NotKnownYet)]
    [InlineData(2, double.NaN, Verdict.NotKnownYet)]
    public void The_guard_band_decides(double reserve, double uncertainty, Verdict verdict) => Assert.Equal(verdict, DecisionRule.Decide(reserve, uncertainty));

    // Standard normal tables: Φ(1.4) = 0.9192, Φ(1.645) = 0.950, Φ(0) = 0.5, Φ(−2) = 0.0228.
    [Theory]
    [InlineData(1.4, 0.9192)]
    [InlineData(1.6449, 0.95)]
    [InlineData(0, 0.5)]
    [InlineData(-2, 0.0228)]
    public void Conformity_is_that_of_the_normal_distribution(double uncertainties, double probability)
    {
        Assert.Equal(probability, DecisionRule.Conformity(1 + (0.05 * uncertainties), 0.05), 5e-5);
        Assert.Equal(uncertainties >= 0 ? 1 : 0, DecisionRule.Conformity(1 + uncertainties, 0));
    }

    [Fact]
    public void More_uncertainty_never_turns_short_into_holding()
    {
        Gen.Select(Gen.Double[0.5, 1.5], Gen.Double[0, 0.3], Gen.Double[0, 0.3]).Sample((reserve, u, more) =>
        {
            var (sure, unsure) = (DecisionRule.Decide(reserve, u), DecisionRule.Decide(reserve, u + more));
            return sure == unsure || unsure == Verdict.TooCloseToTell;
        });
    }

    [Fact]
    public void The_reserve_is_capacity_over_demand()
    {
        Assert.Equal(1.25, Judgement.AtMost("x", 8, 10, Dimension.Number, "", "").Reserve);
        Assert.Equal(0.8, Judgement.AtLeast("x", 8, 10, Dimension.Number, "", "").Reserve);
        Assert.Equal(1.1, Judgement.Between("x", 11, 10, 20, Dimension.Number, "", "").Reserve, 12);
        Assert.Equal(20 / 19.0, Judgement.Between("x", 19, 10, 20, Dimension.Number, "", "").Reserve, 12);
        Assert.True(double.IsPositiveInfinity(Judgement.AtMost("x", 0, 10, Dimension.Number, "", "").Reserve));
        Assert.True(double.IsPositiveInfinity(Judgement.AtMost("x", -1, 10, Dimension.Number, "", "").Reserve));
        Assert.True(double.IsNaN(Judgement.AtMost("x", double.NaN, 10, Dimension.Number, "", "").Reserve));
        Assert.True(double.IsNaN(Judgement.AtLeast("x", 1, double.NaN, Dimension.Number, "", "").Reserve));
    }

    [Fact]
    public void A_limit_is_said_in_words()
    {
        Assert.Equal("at most 10 mm", Judgement.AtMost("x", 8e-3, 10e-3, Dimension.Length, "mm", "").LimitText);
        Assert.Equal("at least 10 mm", Judgement.AtLeast("x", 8e-3, 10e-3, Dimension.Length, "mm", "").LimitText);
        Assert.Equal("10 mm to 20 mm", Judgement.Between("x", 8e-3, 10e-3, 20e-3, Dimension.Length, "mm", "").LimitText);
        Assert.Equal(["holds", "falls short", "too close to tell", "not known yet"], Enum.GetValues<Verdict>().Select(v => v.Words()));
    }
}
