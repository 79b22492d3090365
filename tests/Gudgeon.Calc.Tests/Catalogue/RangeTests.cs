using CsCheck;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Tests.Catalogue;

/// <summary>
/// For inputs inside their declared ranges a formula gives numbers or refuses with a sentence: never NaN, never another
/// exception. Amounts are drawn evenly over the decades inside the range, the bounds that belong to it among them.
/// </summary>
public class RangeTests
{
    private const int Draws = 1000;

    private const uint Stream = 101;

    private const ulong Seed = 20261125;

    /// <summary>An oil film is solved anew for each draw, some 40 ms; random draws are a million each.</summary>
    private const int DrawsOfSlowOnes = 30;

    private static readonly string[] SlowOnes = ["finite journal bearing", "journal bearing", "sum of equal errors by random draws", "mass calibration by random draws"];

    public static TheoryData<string> Names => [.. Formulas.All.Select(f => f.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void GivesNumbersOrRefuses(string name)
    {
        var formula = Formulas.Find(name)!;
        var draws = SlowOnes.Contains(name, StringComparer.Ordinal) ? DrawsOfSlowOnes : Draws;

        // The same draws on every run: a build must not go red by the luck of the day.
        var (arguments, random) = (Arguments(formula), new PCG(Stream, Seed));
        for (var i = 0; i < draws; i++)
        {
            var drawn = arguments.Generate(random, null, out _);
            Assert.True(Holds(formula, drawn), Shown(formula, drawn));
        }
    }

    [Fact]
    public void RefusesNaNAndInfinityEverywhere()
    {
        foreach (var formula in Formulas.All)
        {
            foreach (var (input, at) in formula.Inputs.Select((i, at) => (i, at)).Where(p => p.i.Kind == InputKind.Amount))
            {
                Assert.Throws<OutOfRangeException>(() => Formula.Check(input, double.NaN));
                Assert.Throws<OutOfRangeException>(() => Formula.Check(input, double.PositiveInfinity));
                Assert.Throws<OutOfRangeException>(() => Formula.Check(input, double.NegativeInfinity));
            }
        }
    }

    private static string Shown(Formula formula, object[] arguments) =>
        string.Join("; ", formula.Inputs.Zip(arguments, (i, x) => $"{i.Key}={(x is double[] list ? string.Join(',', list) : x)}"));

    private static bool Holds(Formula formula, object[] arguments)
    {
        try
        {
            return Array.TrueForAll(formula.Compute(arguments), r => !double.IsNaN(r));
        }
        catch (Exception e) when (e is FormulaDomainException or OutOfRangeException)
        {
            return true;
        }
    }

    private static Gen<object[]> Arguments(Formula formula) => formula.Inputs
        .Select(Argument)
        .Aggregate(Gen.Const(Array.Empty<object>()), (sofar, next) => Gen.Select(sofar, next, (a, b) => (object[])[.. a, b]));

    private static Gen<object> Argument(FormulaInput input) => input.Kind switch
    {
        InputKind.Choice => OneOf([.. Enum.GetValues(input.Type).Cast<object>()]),
        InputKind.Count => Gen.Int[(int)Math.Max(Lowest(input.Quantity), -50), (int)Math.Min(Highest(input.Quantity), 50)].Select(n => (object)n),
        InputKind.List => Amount(input.Quantity).Array[1, 6].Select(list => (object)list),
        _ => Amount(input.Quantity).Select(x => (object)x),
    };

    private static Gen<double> Amount(QuantityAttribute quantity)
    {
        var (low, high) = (Math.Max(quantity.Min, quantity.Above), Math.Min(quantity.Max, quantity.Below));
        var inside = (double.IsFinite(low), double.IsFinite(high)) switch
        {
            (true, true) => Gen.OneOf(Gen.Double[1e-9, 1 - 1e-9], Decades(-9, 0)).Select(t => low + (t * (high - low))),
            (true, false) => Decades(-9, 9).Select(d => low + d),
            (false, true) => Decades(-9, 9).Select(d => high - d),
            _ => Gen.Select(Decades(-9, 9), Gen.Bool, (d, negative) => negative ? -d : d),
        };
        double[] edges = [.. new[] { quantity.Min, quantity.Max }.Where(quantity.Allows)];
        return edges.Length == 0 ? inside : Gen.Frequency((9, inside), (1, OneOf(edges)));
    }

    /// <summary>10^<paramref name="from"/> to just under 10^<paramref name="to"/>, evenly over the decades.</summary>
    private static Gen<double> Decades(double from, double to) => Gen.Double[from, to - 1e-9].Select(x => Math.Pow(10, x));

    private static Gen<T> OneOf<T>(T[] these) => Gen.Int[0, these.Length - 1].Select(i => these[i]);

    private static double Lowest(QuantityAttribute q) => q.Above >= q.Min ? Math.Floor(q.Above) + 1 : Math.Ceiling(q.Min);

    private static double Highest(QuantityAttribute q) => q.Below <= q.Max ? Math.Ceiling(q.Below) - 1 : Math.Floor(q.Max);
}
