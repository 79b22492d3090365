using Gudgeon.Calc.Catalogue;
using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace Gudgeon.Calc.Metrology;

/// <summary>Sum of equal rectangular errors.</summary>
/// <param name="Uncertainty">Standard uncertainty of the sum.</param>
/// <param name="HalfWidth">Half width of the coverage interval.</param>
public readonly record struct RectangularSumResult(
    [Quantity("standard uncertainty of the sum", Dimension.Number, Symbol = "u")] double Uncertainty,
    [Quantity("half width of the coverage interval", Dimension.Number, Symbol = "U")] double HalfWidth);

/// <summary>Stack of equal limits of error, exactly: narrower tails than the normal law says.</summary>
public static class RectangularSum
{
    /// <summary>Coverage interval of a sum of equal rectangular errors.</summary>
    /// <param name="count">How many are added.</param>
    /// <param name="limit">Limit of each, plus or minus, in one unit.</param>
    /// <param name="probability">Coverage probability.</param>
    [Formula(
        "sum of equal limits of error",
        "u = a sqrt(n / 3); U from the Irwin-Hall distribution",
        "JCGM 101:2008, 9.2.3, Table 3")]
    public static RectangularSumResult Coverage(
        [Quantity("number of errors", Dimension.Number, Symbol = "n", Min = 1, Max = 12)] int count,
        [Quantity("limit of each, plus or minus", Dimension.Number, Symbol = "a", Above = 0)] double limit,
        [Quantity("coverage probability", Dimension.Number, "%", Symbol = "p", Above = 0, Below = 1)] double probability = 0.95)
    {
        var quantile = Brent.FindRoot(x => Cumulative(x, count) - ((1 + probability) / 2), count / 2.0, count, 1e-12, 200);
        return new RectangularSumResult(limit * Math.Sqrt(count / 3.0), 2 * limit * (quantile - (count / 2.0)));
    }

    /// <summary>Irwin-Hall distribution function: sum of n uniform numbers from 0 to 1.</summary>
    private static double Cumulative(double x, int n)
    {
        var sum = 0.0;
        for (var k = 0; k <= (int)x && k <= n; k++)
        {
            sum += (k % 2 == 0 ? 1 : -1) * SpecialFunctions.Binomial(n, k) * Math.Pow(x - k, n);
        }

        return sum / SpecialFunctions.Factorial(n);
    }
}
