using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Rows;

/// <summary>A formula worked over a range of one input, the others as they are given.</summary>
/// <param name="Given">SI value of the input in the call.</param>
/// <param name="Points">Where the formula has a meaning: SI value of the input, and the results in the order of the outputs.</param>
/// <param name="Broken">Whether points between the first and the last had no meaning and are left out.</param>
public sealed record FormulaSweep(double Given, IReadOnlyList<(double X, IReadOnlyList<double> Results)> Points, bool Broken)
{
    /// <summary>Half the range, as a share of the value given.</summary>
    private const double Share = 0.5;

    /// <summary>Half the range of a temperature, K: a share of it would reach to absolute zero.</summary>
    private const double Kelvins = 50;

    /// <summary>Works a call again over a range about one of its amounts, inside the amount's declared bounds.</summary>
    /// <param name="call">The formula with its arguments.</param>
    /// <param name="input">Place of the amount among the inputs.</param>
    /// <param name="count">How many points, at least 2.</param>
    public static FormulaSweep Of(FormulaCall call, int input, int count = 60)
    {
        var given = (double)call.Arguments[input];
        var (low, high) = Range(call.Formula.Inputs[input].Quantity, given);
        var all = Enumerable.Range(0, count).Select(i => low + ((high - low) * i / (count - 1))).Select(x => (X: x, Results: At(call, input, x))).ToList();
        var known = all.Where(p => p.Results is not null).Select(p => (p.X, (IReadOnlyList<double>)p.Results!)).ToList();
        var broken = known.Count > 0 && all.FindLastIndex(p => p.Results is not null) - all.FindIndex(p => p.Results is not null) + 1 > known.Count;
        return new FormulaSweep(given, known, broken);
    }

    private static (double Low, double High) Range(QuantityAttribute quantity, double given)
    {
        var half = quantity.Dimension == Dimension.Temperature ? Kelvins : given == 0 ? 1 : Math.Abs(given) * Share;
        return (Math.Max(given - half, Math.Max(quantity.Min, quantity.Above)), Math.Min(given + half, Math.Min(quantity.Max, quantity.Below)));
    }

    private static double[]? At(FormulaCall call, int input, double x)
    {
        try
        {
            var results = call.Formula.Compute([.. call.Arguments.Select((a, i) => i == input ? x : a)]);
            return Array.TrueForAll(results, double.IsFinite) ? results : null;
        }
        catch (Exception e) when (e is FormulaDomainException or OutOfRangeException)
        {
            return null;
        }
    }
}
