using CsCheck;
using Gudgeon.Book.Checks;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Tests.Checks;

public class DecisionRuleTests
{
    private static readonly Margin None = new(double.PositiveInfinity, 0);

    // 95 % one-sided, ISO 14253-1:2017: the guard band is 1.645 u.
    [Theory]
    [InlineData(0.0165, 0.01, Verdict.Holds)]
    [InlineData(0.0164, 0.01, Verdict.TooCloseToTell)]
    [InlineData(-0.0164, 0.01, Verdict.TooCloseToTell)]
    [InlineData(-0.0165, 0.01, Verdict.FallsShort)]
    [InlineData(0, 0, Verdict.Holds)]
    [InlineData(-1e-9, 0, Verdict.FallsShort)]
    [InlineData(double.PositiveInfinity, 0, Verdict.Holds)]
    [InlineData(double.NaN, 0, Verdict.NotKnownYet)]
    [InlineData(2, double.NaN, Verdict.NotKnownYet)]
    public void The_guard_band_decides(double margin, double uncertainty, Verdict verdict) => Assert.Equal(verdict, DecisionRule.Usual.Decide(new Margin(margin, uncertainty)));

    // Standard normal tables, as JCGM 106:2012 uses them: Φ(1.4) = 0.9192, Φ(1.645) = 0.950, Φ(0) = 0.5, Φ(−2) = 0.0228.
    [Theory]
    [InlineData(1.4, 0.9192)]
    [InlineData(1.6449, 0.95)]
    [InlineData(0, 0.5)]
    [InlineData(-2, 0.0228)]
    public void Conformity_is_that_of_the_normal_distribution(double uncertainties, double probability)
    {
        Assert.Equal(probability, new Margin(0.05 * uncertainties, 0.05).Conformity, 5e-5);
        Assert.Equal(uncertainties >= 0 ? 1 : 0, new Margin(uncertainties, 0).Conformity);
    }

    [Fact]
    public void More_uncertainty_only_ever_makes_a_verdict_too_close_to_tell()
    {
        Gen.Select(Gen.Double[-0.5, 0.5], Gen.Double[0, 0.3], Gen.Double[0, 0.3]).Sample((margin, u, more) =>
        {
            var (sure, unsure) = (DecisionRule.Usual.Decide(new Margin(margin, u)), DecisionRule.Usual.Decide(new Margin(margin, u + more)));
            return sure == unsure || unsure == Verdict.TooCloseToTell;
        });
    }

    [Theory]
    [InlineData(1e-9, Verdict.Holds)]
    [InlineData(-1e-9, Verdict.FallsShort)]
    public void Simple_acceptance_decides_by_the_value_alone(double margin, Verdict verdict)
    {
        var simple = new DecisionRule(DecisionRuleKind.SimpleAcceptance, 0.05);
        Assert.Equal(verdict, simple.Decide(new Margin(margin, 1), None));
        Assert.Equal(Verdict.NotKnownYet, simple.Decide(new Margin(double.NaN, 1), None));
    }

    // The diode of JCGM 106:2012, clause 7: -5.47 V against an upper limit of -5.40 V with u = 0.05 V conforms with 92 %.
    [Theory]
    [InlineData(0.05, Verdict.TooCloseToTell)]
    [InlineData(0.08, Verdict.TooCloseToTell)]
    [InlineData(0.081, Verdict.Holds)]
    public void A_stated_risk_decides_by_the_probability_of_conformity(double risk, Verdict verdict)
    {
        var diode = new Margin(-5.40 - -5.47, 0.05);
        Assert.Equal(0.919, DecisionRule.Conformity(None, diode), 5e-4);
        Assert.Equal(verdict, new DecisionRule(DecisionRuleKind.StatedRisk, risk).Decide(None, diode));
        Assert.Equal(verdict == Verdict.Holds ? Verdict.FallsShort : verdict, new DecisionRule(DecisionRuleKind.StatedRisk, risk).Decide(None, new Margin(-0.07, 0.05)));
    }

    [Fact]
    public void Both_limits_take_from_the_probability_of_conformity()
    {
        // Φ(1) − Φ(−1) = 0.6827: in the middle between limits two standard uncertainties apart.
        Assert.Equal(0.6827, DecisionRule.Conformity(new Margin(1, 1), new Margin(1, 1)), 5e-5);
        Assert.Equal(0.6827, Gudgeon.Calc.Metrology.Conformity.TwoLimits(0, 1, -1, 1), 5e-5);

        // At 1.7 from either limit each holds by itself with 95.5 %, both together with 91.1 %.
        var near = new Margin(1.7, 1);
        Assert.Equal(Verdict.Holds, DecisionRule.Usual.Decide(near, near));
        Assert.Equal(Verdict.TooCloseToTell, new DecisionRule(DecisionRuleKind.StatedRisk, 0.05).Decide(near, near));
    }

    [Fact]
    public void The_shop_chooses_the_rule_and_findings_follow_it()
    {
        var book = Books.Of(("engine.cylinders", "1"), ("cylinder.gasketThickness", "0.9 mm"), ("cylinder.deckHeight", "0.101 mm ± 0.04 mm"));
        var appraiser = new Appraiser(new Gudgeon.Book.Duty.DutyDesk());
        Verdict By(string rule) => appraiser.Appraise(CheckCatalogue.Find("squish"), "1", book.Set(("workshop.decisionRule", rule)).Now()).Verdict;
        Assert.Equal(Verdict.TooCloseToTell, appraiser.Appraise(CheckCatalogue.Find("squish"), "1", book.Now()).Verdict);
        Assert.Equal(Verdict.TooCloseToTell, By("guard band"));
        Assert.Equal(Verdict.Holds, By("simple acceptance"));
        Assert.Equal(Verdict.TooCloseToTell, By("stated risk"));
        var bold = book.Set(("workshop.decisionRule", "stated risk"), ("workshop.wrongVerdict", "49 %"));
        Assert.Equal(Verdict.Holds, appraiser.Appraise(CheckCatalogue.Find("squish"), "1", bold.Now()).Verdict);
    }

    [Fact]
    public void The_worse_of_two_limits_counts()
    {
        Verdict[] rising = [Verdict.Holds, Verdict.TooCloseToTell, Verdict.FallsShort, Verdict.NotKnownYet];
        Assert.All(rising.Index(), a => Assert.All(rising.Index(), b => Assert.Equal(rising[Math.Max(a.Index, b.Index)], DecisionRule.Worse(a.Item, b.Item))));
    }

    [Fact]
    public void The_margin_is_how_far_the_value_lies_inside()
    {
        var judgement = Judgement.Between("x", 12, 10, 20, Dimension.Number, "", "");
        Assert.Equal((2, 8), (judgement.Margin(Limit.Lower), judgement.Margin(Limit.Upper)));
        Assert.Equal(Limit.Lower, judgement.Decisive);
        Assert.Equal(-1, Judgement.AtMost("x", 11, 10, Dimension.Number, "", "").Margin(Limit.Upper));
        Assert.True(double.IsPositiveInfinity(Judgement.AtMost("x", 11, 10, Dimension.Number, "", "").Margin(Limit.Lower)));
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
