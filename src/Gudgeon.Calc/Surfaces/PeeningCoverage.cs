using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Surfaces;

/// <summary>Shot peening coverage.</summary>
public static class PeeningCoverage
{
    /// <summary>Coverage seen as full: nobody can tell 98 % from 100 % under a lens.</summary>
    public const double Full = 0.98;

    /// <summary>Coverage after several equal passes.</summary>
    /// <param name="first">Coverage of one pass.</param>
    /// <param name="passes">Number of passes.</param>
    [Formula("peening coverage", "Cn = 1 - (1 - C1)^n", "Random impacts: each pass leaves the same share of what was bare (SAE J2277)")]
    [return: Quantity("coverage", Dimension.Number, "%", Symbol = "Cn")]
    public static double After(
        [Quantity("coverage of one pass", Dimension.Number, "%", Symbol = "C1", Min = 0, Max = 1)] double first,
        [Quantity("passes", Dimension.Number, Symbol = "n", Min = 0)] double passes) =>
        1 - Math.Pow(1 - first, passes);

    /// <summary>Passes needed for a coverage, rounded up.</summary>
    /// <param name="first">Coverage of one pass.</param>
    /// <param name="wanted">Wanted coverage; 98 % counts as full.</param>
    [Formula("passes for peening coverage", "n ≥ ln(1 - C) / ln(1 - C1)", "Random impacts (SAE J2277)")]
    [return: Quantity("passes", Dimension.Number, Symbol = "n")]
    public static double Passes(
        [Quantity("coverage of one pass", Dimension.Number, "%", Symbol = "C1", Above = 0, Below = 1)] double first,
        [Quantity("wanted coverage", Dimension.Number, "%", Symbol = "C", Min = 0, Below = 1)] double wanted = Full)
    {
        const double RoundOff = 1e-9;
        return Math.Ceiling((Math.Log(1 - wanted) / Math.Log(1 - first)) - RoundOff);
    }

    /// <summary>Time to full coverage from the coverage seen earlier, s.</summary>
    /// <param name="coverage">Coverage seen under the lens.</param>
    /// <param name="time">Peening time after which it was seen, s.</param>
    [Formula(
        "time to full peening coverage",
        "t98 = t ln(1 - 0.98) / ln(1 - C)",
        "Random impacts (SAE J2277); 98 % counts as full",
        Caution = "The part is looked at, not the strip: a hard part takes longer than the time at which the strip saturates.")]
    [return: Quantity("time to full coverage", Dimension.Time, "min", Symbol = "t98")]
    public static double FullTime(
        [Quantity("coverage seen", Dimension.Number, "%", Symbol = "C", Above = 0, Below = 1)] double coverage,
        [Quantity("time after which it was seen", Dimension.Time, "min", Symbol = "t", Above = 0)] double time) =>
        time * Math.Log(1 - Full) / Math.Log(1 - coverage);

    /// <summary>Share of the surface hit at least a number of times.</summary>
    /// <param name="hits">Least number of impacts.</param>
    /// <param name="multiple">Peening time over the time for full coverage.</param>
    /// <param name="coverage">Coverage counted as full.</param>
    [Formula(
        "repeated peening impacts",
        "m = -k ln(1 - C); p = 1 - Σ exp(-m) m^i / i!, i < n",
        "Poisson law of random impacts",
        Provenance = Provenance.Definition)]
    [return: Quantity("share of the surface", Dimension.Number, "%", Symbol = "p")]
    public static double HitAtLeast(
        [Quantity("impacts", Dimension.Number, Symbol = "n", Min = 1, Max = 100)] int hits,
        [Quantity("time over full-coverage time", Dimension.Number, Symbol = "k", Above = 0)] double multiple,
        [Quantity("coverage counted as full", Dimension.Number, "%", Symbol = "C", Above = 0, Below = 1)] double coverage = Full)
    {
        var mean = -multiple * Math.Log(1 - coverage);
        var term = Math.Exp(-mean);
        var fewer = 0.0;
        for (var i = 0; i < hits; i++)
        {
            fewer += term;
            term *= mean / (i + 1);
        }

        return Math.Max(0, 1 - fewer);
    }
}
