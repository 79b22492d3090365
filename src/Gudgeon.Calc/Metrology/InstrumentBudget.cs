using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Metrology;

/// <summary>Uncertainty of one reading of an instrument, in the unit of the inputs.</summary>
/// <param name="Standard">Standard uncertainty.</param>
/// <param name="Expanded">Expanded uncertainty, k = 2.</param>
public readonly record struct ReadingUncertainty(
    [Quantity("standard uncertainty", Dimension.Number, Symbol = "u")] double Standard,
    [Quantity("expanded uncertainty, k = 2", Dimension.Number, Symbol = "U2")] double Expanded);

/// <summary>What the instrument alone adds to the uncertainty of a reading.</summary>
public static class InstrumentBudget
{
    /// <summary>Standard uncertainty of one reading from what is known of the instrument, all in one unit.</summary>
    /// <param name="limit">Limit of error, plus or minus; 0 where a calibration stands in its place.</param>
    /// <param name="calibration">Expanded uncertainty of the calibration, k = 2; 0 without one.</param>
    /// <param name="error">Error found by the calibration, for which readings are not corrected.</param>
    /// <param name="resolution">Resolution: digital step or what is read of a division.</param>
    /// <param name="zero">Zero found at the last check, for which readings are not corrected.</param>
    [Formula(
        "uncertainty of an instrument",
        "u = sqrt(a^2 / 3 + (U / 2)^2 + e^2 / 3 + δ^2 / 12 + z^2 / 3); U2 = 2 u",
        "JCGM 100:2008 (GUM), 4.3.7, eq. 7 (limits), 4.3.3 (calibration), F.2.2.1 (resolution), 5.1.2, eq. 10 (sum)",
        Validity = "An error and a zero that are left in the reading are counted as limits plus or minus, which is on the safe side; better correct for them (3.2.3).",
        Caution = "Feel, cosine and the form of the part are not the instrument's: repeats show them.")]
    public static ReadingUncertainty Of(
        [Quantity("limit of error, plus or minus", Dimension.Number, Symbol = "a", Min = 0, Help = "all in one unit")] double limit,
        [Quantity("expanded uncertainty of the calibration", Dimension.Number, Symbol = "U", Min = 0)] double calibration = 0,
        [Quantity("error found by the calibration", Dimension.Number, Symbol = "e")] double error = 0,
        [Quantity("resolution", Dimension.Number, Symbol = "δ", Min = 0)] double resolution = 0,
        [Quantity("zero at the last check", Dimension.Number, Symbol = "z")] double zero = 0)
    {
        var u = CombinedUncertainty.RootSumSquare(
        [
            TypeB.Rectangular(limit),
            calibration / 2,
            TypeB.Rectangular(Math.Abs(error)),
            TypeB.Resolution(resolution),
            TypeB.Rectangular(Math.Abs(zero)),
        ]);
        return new ReadingUncertainty(u, 2 * u);
    }
}
