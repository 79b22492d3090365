using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using MathNet.Numerics.Distributions;

namespace Gudgeon.Book.Checks;

/// <summary>The rules between which a shop chooses.</summary>
public enum DecisionRuleKind
{
    /// <summary>A guard band of 1.645 standard uncertainties on either side of the edge, 95 % at each limit (ISO 14253-1:2017, default rule).</summary>
    GuardBand,

    /// <summary>The value as measured decides, whatever its uncertainty (JCGM 106:2012, 8.2).</summary>
    SimpleAcceptance,

    /// <summary>The probability of conformity decides: a verdict may be wrong with a stated probability at most (JCGM 106:2012, 7 and 8.3).</summary>
    StatedRisk,
}

/// <summary>How a verdict follows from a value, its limits and its uncertainty.</summary>
/// <param name="Kind">Which rule.</param>
/// <param name="Risk">Greatest probability of a wrong verdict.</param>
public sealed record DecisionRule(DecisionRuleKind Kind, double Risk)
{
    /// <summary>What a ± beside a finding counts, said under every list of findings.</summary>
    public const string OfUncertainty = "A ± counts the values that carry one; assumed values without, and the engine model's own error, are not in it.";

    /// <summary>What a verdict is, said under every list of findings.</summary>
    public const string Advice = "Advice to a competent person: the makers' data, local rules and the scrutineers have the last word.";

    /// <summary>Probability of a wrong verdict at the edge of the guard band of ISO 14253-1:2017, and where a stated one is left out.</summary>
    public const double UsualRisk = 0.05;

    /// <summary>The rule where the shop has chosen none.</summary>
    public static DecisionRule Usual { get; } = new(DecisionRuleKind.GuardBand, UsualRisk);

    /// <summary>Width of the guard band over the standard uncertainty: Φ⁻¹(1 − risk), 1.645 for 5 %; nothing for simple acceptance.</summary>
    public double Guard => Kind == DecisionRuleKind.SimpleAcceptance ? 0 : Normal.InvCDF(0, 1, 1 - Risk);

    /// <summary>The rule in one sentence, said under every list of findings.</summary>
    public string Sentence => Kind switch
    {
        DecisionRuleKind.SimpleAcceptance => "Decided by simple acceptance: the value as measured, whatever its ± (JCGM 106, 8.2); at the edge one verdict in two is wrong.",
        DecisionRuleKind.StatedRisk => $"Decided by the probability of conformity: a verdict is wrong with a probability of {Values.Figures.Number(100 * Risk, 3)} % at most (JCGM 106, 7 and 8.3).",
        _ => "Decided with a guard band of 1.645 standard uncertainties: 95 % at each limit (ISO 14253-1).",
    };

    /// <summary>The sentence of the rule by which findings were decided.</summary>
    public static string Said(IEnumerable<Finding> findings) => (findings.FirstOrDefault(f => f.Judgement is not null)?.Rule ?? Usual).Sentence;

    /// <summary>The rule that a build's shop has chosen.</summary>
    /// <param name="view">What the finding reads through, so that another rule makes it stale.</param>
    public static DecisionRule Of(View view)
    {
        var kind = view.WordOr(Shop.DecisionRule, EnumWords.Of(nameof(DecisionRuleKind.GuardBand)));
        return Enum.GetValues<DecisionRuleKind>().First(k => EnumWords.Of(k.ToString()) == kind) switch
        {
            DecisionRuleKind.StatedRisk => new DecisionRule(DecisionRuleKind.StatedRisk, view.AmountOr(Shop.WrongVerdict, UsualRisk)),
            var other => new DecisionRule(other, UsualRisk),
        };
    }

    /// <summary>
    /// The verdict of both limits. It is decided on the margins, value against limit, and not on the reserve: near a value
    /// of nothing a ratio makes every uncertainty look large.
    /// </summary>
    /// <param name="lower">Margin at the lower limit with its standard uncertainty.</param>
    /// <param name="upper">Margin at the upper limit with its standard uncertainty.</param>
    public Verdict Decide(Margin lower, Margin upper)
    {
        if (Kind != DecisionRuleKind.StatedRisk || double.IsNaN(Conformity(lower, upper)))
        {
            return Worse(Decide(lower), Decide(upper));
        }

        return Conformity(lower, upper) switch
        {
            var p when p >= 1 - Risk => Verdict.Holds,
            var p when p <= Risk => Verdict.FallsShort,
            _ => Verdict.TooCloseToTell,
        };
    }

    /// <summary>The verdict of one limit by the guard band.</summary>
    /// <param name="margin">Margin with its standard uncertainty.</param>
    public Verdict Decide(Margin margin)
    {
        if (double.IsNaN(margin.Inside) || double.IsNaN(margin.Uncertainty))
        {
            return Verdict.NotKnownYet;
        }

        if (margin.Inside - (Guard * margin.Uncertainty) >= 0)
        {
            return Verdict.Holds;
        }

        return margin.Inside + (Guard * margin.Uncertainty) < 0 ? Verdict.FallsShort : Verdict.TooCloseToTell;
    }

    /// <summary>The worse of the verdicts of two limits.</summary>
    public static Verdict Worse(Verdict a, Verdict b) => Rank(a) >= Rank(b) ? a : b;

    /// <summary>
    /// Probability that the true value lies inside both limits, for a normal distribution (JCGM 106:2012, 7.2 and 7.3): what
    /// is beyond neither of them.
    /// </summary>
    /// <param name="lower">Margin at the lower limit with its standard uncertainty.</param>
    /// <param name="upper">Margin at the upper limit with its standard uncertainty.</param>
    public static double Conformity(Margin lower, Margin upper) => Math.Max(0, lower.Conformity + upper.Conformity - 1);

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Holds => 0,
        Verdict.TooCloseToTell => 1,
        Verdict.FallsShort => 2,
        _ => 3,
    };
}

/// <summary>How far a value lies inside a limit.</summary>
/// <param name="Inside">Inside, SI; negative outside it, without end where there is none.</param>
/// <param name="Uncertainty">Its standard uncertainty, same unit.</param>
public readonly record struct Margin(double Inside, double Uncertainty)
{
    /// <summary>Probability that the true value lies inside the limit, for a normal distribution (JCGM 106:2012, 7.2).</summary>
    public double Conformity => Uncertainty > 0
        ? Normal.CDF(0, 1, Inside / Uncertainty)
        : Inside >= 0 ? 1 : 0;
}
