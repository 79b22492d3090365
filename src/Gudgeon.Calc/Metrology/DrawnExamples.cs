using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Metrology;

/// <summary>What random draws give, in the unit of the result.</summary>
/// <param name="Mean">Mean.</param>
/// <param name="Uncertainty">Standard uncertainty.</param>
/// <param name="Low">Lower end of the interval with 95 % coverage and equal tails.</param>
/// <param name="High">Its upper end.</param>
public readonly record struct DrawnSummary(
    [Quantity("mean", Dimension.Number)] double Mean,
    [Quantity("standard uncertainty", Dimension.Number, Symbol = "u")] double Uncertainty,
    [Quantity("2.5 % point", Dimension.Number)] double Low,
    [Quantity("97.5 % point", Dimension.Number)] double High);

/// <summary>Published examples of the propagation of distributions, worked by the code that draws for findings.</summary>
public static class DrawnExamples
{
    private const int Draws = 1_000_000;

    /// <summary>Sum of equal independent errors.</summary>
    /// <param name="count">How many are added.</param>
    /// <param name="spread">Standard uncertainty of each where normal, limit plus or minus where rectangular.</param>
    /// <param name="shape">Distribution of each.</param>
    [Formula("sum of equal errors by random draws", "y = x1 + ... + xn, each x drawn with the spread s", "JCGM 101:2008, 9.2, Tables 2 and 3", Validity = "A million draws from a fixed seed.")]
    public static DrawnSummary Sum(
        [Quantity("number of errors", Dimension.Number, Symbol = "n", Min = 1, Max = 100)] int count,
        [Quantity("spread of each", Dimension.Number, Symbol = "s", Above = 0)] double spread,
        [Quantity("distribution of each", Dimension.Number)] DrawnShape shape = DrawnShape.Normal) =>
        Summary(Propagation.Run([.. Enumerable.Repeat(new DrawnInput(shape, 0, spread), count)], x =>
        {
            var sum = 0.0;
            foreach (var value in x)
            {
                sum += value;
            }

            return sum;
        }, Draws));

    /// <summary>Deviation of a weight from its nominal mass by comparison with a reference weight in air, mg.</summary>
    /// <param name="reference">Conventional mass of the reference weight, mg.</param>
    /// <param name="referenceUncertainty">Its standard uncertainty, mg.</param>
    /// <param name="added">Conventional mass of the small weight added for balance, mg.</param>
    /// <param name="addedUncertainty">Its standard uncertainty, mg.</param>
    /// <param name="nominal">Nominal mass, mg.</param>
    [Formula(
        "mass calibration by random draws",
        "y = (mR + δm) (1 + (ρa - 1.2) (1 / ρW - 1 / ρR)) - mnom; u of mR and δm are uR and uδ",
        "JCGM 101:2008, 9.3, eq. 27 and Table 6",
        Validity = "Air from 1.10 to 1.30, weight from 7000 to 9000, reference from 7950 to 8050 kg/m³, rectangular. A million draws from a fixed seed.",
        Caution = "Shown because first order gives u = 0.054 mg, which is too small: with air at its reference density the densities have no first-order effect.")]
    public static DrawnSummary Mass(
        [Quantity("reference mass, mg", Dimension.Number, Symbol = "mR")] double reference = 100000,
        [Quantity("its standard uncertainty, mg", Dimension.Number, Symbol = "uR", Min = 0)] double referenceUncertainty = 0.050,
        [Quantity("added mass, mg", Dimension.Number, Symbol = "δm")] double added = 1.234,
        [Quantity("its standard uncertainty, mg", Dimension.Number, Symbol = "uδ", Min = 0)] double addedUncertainty = 0.020,
        [Quantity("nominal mass, mg", Dimension.Number, Symbol = "mnom")] double nominal = 100000) =>
        Summary(Propagation.Run(
            [
                new(DrawnShape.Normal, reference, referenceUncertainty),
                new(DrawnShape.Normal, added, addedUncertainty),
                new(DrawnShape.Rectangular, 1.20, 0.10),
                new(DrawnShape.Rectangular, 8000, 1000),
                new(DrawnShape.Rectangular, 8000, 50),
            ],
            x => ((x[0] + x[1]) * (1 + ((x[2] - 1.2) * ((1 / x[3]) - (1 / x[4]))))) - nominal,
            Draws));

    private static DrawnSummary Summary(Propagated drawn) => new(drawn.Mean, drawn.Deviation, drawn.At(0.025), drawn.At(0.975));
}
