namespace Gudgeon.Calc.Gas;

/// <summary>Polynomials and atoms of the twelve product species, laid flat for the equilibrium's inner loop.</summary>
internal static class ProductData
{
    /// <summary>Number of independent balances: carbon, hydrogen, excess oxygen, nitrogen, argon.</summary>
    internal const int Balances = 5;

    private const int Terms = 9;
    private const double Middle = 1000;

    private static readonly double[] Below = Flat(r => r.Below);
    private static readonly double[] Above = Flat(r => r.Above);

    /// <summary>
    /// Contents of each species in the five balances, species by species. Oxygen counts beyond CO2 and H2O, which keeps the
    /// equations well conditioned where CO and O2 are both traces.
    /// </summary>
    internal static readonly double[] Contents = [.. Enumerable.Range(0, ProductAmounts.Count)
        .Select(i => ((Species)i).Atoms())
        .SelectMany(a => new[] { a.Carbon, a.Hydrogen, a.OxygenExcess, a.Nitrogen, a.Argon })];

    /// <summary>cp/R, h/(R T) and μ°/(R T) of the product species at <paramref name="temperature"/>, K, from 200 to 6000.</summary>
    internal static void Evaluate(double temperature, Span<double> cp, Span<double> enthalpy, Span<double> gibbs)
    {
        var table = temperature > Middle ? Above : Below;
        var log = Math.Log(temperature);
        for (var i = 0; i < ProductAmounts.Count; i++)
        {
            var a = table.AsSpan(i * Terms, Terms);
            cp[i] = NasaPolynomial.CpOverR(a, temperature);
            enthalpy[i] = NasaPolynomial.HOverRT(a, temperature, log);
            gibbs[i] = enthalpy[i] - NasaPolynomial.SOverR(a, temperature, log);
        }
    }

    private static double[] Flat(Func<SpeciesRecord, double[]> coefficients) =>
        [.. Enumerable.Range(0, ProductAmounts.Count).SelectMany(i => coefficients(SpeciesTable.Of((Species)i)))];
}
