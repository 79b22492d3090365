using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.RootFinding;

namespace Gudgeon.Calc.Metrology;

/// <summary>Uncertainty with its coverage.</summary>
/// <param name="Factor">Coverage factor.</param>
/// <param name="Expanded">Expanded uncertainty, m.</param>
public readonly record struct ExpandedUncertainty(
    [Quantity("coverage factor", Dimension.Number, Symbol = "k")] double Factor,
    [Quantity("expanded uncertainty", Dimension.Length, "µm", Symbol = "U")] double Expanded);

/// <summary>Effective degrees of freedom.</summary>
/// <param name="Combined">Combined standard uncertainty, in the unit of the components.</param>
/// <param name="Freedom">Effective degrees of freedom.</param>
/// <param name="Truncated">The same cut to a whole number, to enter a table with.</param>
public readonly record struct EffectiveFreedom(
    [Quantity("combined standard uncertainty", Dimension.Number, Symbol = "uc")] double Combined,
    [Quantity("effective degrees of freedom", Dimension.Number, Symbol = "νeff")] double Freedom,
    [Quantity("degrees of freedom, whole", Dimension.Number)] double Truncated);

/// <summary>Combining uncertainties and stating them.</summary>
public static class CombinedUncertainty
{
    /// <summary>Root sum of squares of independent components, m.</summary>
    /// <param name="components">Standard uncertainties already multiplied by their sensitivities, m.</param>
    [Formula("combined standard uncertainty", "uc = sqrt(Σ ui^2)", "JCGM 100:2008 (GUM), 5.1.2, eq. 10", Validity = "Independent components.")]
    [return: Quantity("combined standard uncertainty", Dimension.Length, "µm", Symbol = "uc")]
    public static double OfLengths([Quantity("components", Dimension.Length, "µm", Symbol = "ui", Min = 0)] double[] components) => RootSumSquare(components);

    /// <summary>Effective degrees of freedom by Welch and Satterthwaite.</summary>
    /// <param name="components">Standard uncertainties, all in one unit.</param>
    /// <param name="freedoms">Degrees of freedom of each; write 1e9 where the component is exactly known.</param>
    [Formula("effective degrees of freedom", "νeff = uc^4 / Σ (ui^4 / νi)", "JCGM 100:2008 (GUM), G.4.1, eq. G.2b")]
    public static EffectiveFreedom WelchSatterthwaite(
        [Quantity("components, all in one unit", Dimension.Number, Symbol = "ui", Min = 0)] double[] components,
        [Quantity("degrees of freedom", Dimension.Number, Symbol = "νi", Above = 0)] double[] freedoms)
    {
        FormulaDomainException.Unless(components.Length == freedoms.Length, "degrees of freedom: one for each component is wanted");
        var combined = RootSumSquare(components);
        FormulaDomainException.Unless(combined > 0, "components: at least one must be greater than zero");
        var sum = 0.0;
        for (var i = 0; i < components.Length; i++)
        {
            var share = components[i] / combined;
            sum += share * share * share * share / freedoms[i];
        }

        return new EffectiveFreedom(combined, 1 / sum, Math.Floor(1 / sum));
    }

    /// <summary>Student factor for a two-sided coverage.</summary>
    /// <param name="freedom">Degrees of freedom.</param>
    /// <param name="probability">Coverage probability.</param>
    [Formula("Student factor", "t = t((1 + p) / 2, ν)", "JCGM 100:2008 (GUM), Table G.2")]
    [return: Quantity("Student factor", Dimension.Number, Symbol = "t")]
    public static double Student(
        [Quantity("degrees of freedom", Dimension.Number, Symbol = "ν", Min = 1)] double freedom,
        [Quantity("coverage probability", Dimension.Number, "%", Symbol = "p", Above = 0, Below = 1)] double probability = 0.9545)
    {
        var level = (1 + probability) / 2;
        FormulaDomainException.Unless(level < 1 - 1e-12, "coverage probability: too near to certainty for a factor");
        var far = 2.0;
        while (StudentT.CDF(0, 1, freedom, far) < level)
        {
            far *= 2;
        }

        return Brent.FindRoot(t => StudentT.CDF(0, 1, freedom, t) - level, 0, far, 1e-14 * far, 500);
    }

    /// <summary>Expanded uncertainty for a coverage probability.</summary>
    /// <param name="standard">Combined standard uncertainty, m.</param>
    /// <param name="freedom">Effective degrees of freedom, whole.</param>
    /// <param name="probability">Coverage probability.</param>
    [Formula("expanded uncertainty", "U = t uc", "JCGM 100:2008 (GUM), G.6.4")]
    public static ExpandedUncertainty Expand(
        [Quantity("combined standard uncertainty", Dimension.Length, "µm", Symbol = "uc", Min = 0)] double standard,
        [Quantity("degrees of freedom", Dimension.Number, Symbol = "ν", Min = 1)] double freedom,
        [Quantity("coverage probability", Dimension.Number, "%", Symbol = "p", Above = 0, Below = 1)] double probability = 0.9545)
    {
        var factor = Student(freedom, probability);
        return new ExpandedUncertainty(factor, factor * standard);
    }

    /// <summary>Root of the sum of squares.</summary>
    internal static double RootSumSquare(double[] components)
    {
        var sum = 0.0;
        foreach (var component in components)
        {
            sum += component * component;
        }

        return Math.Sqrt(sum);
    }
}
