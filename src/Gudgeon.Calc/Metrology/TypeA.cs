using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Metrology;

/// <summary>Statistics of repeated readings of one length.</summary>
/// <param name="Mean">Mean, m.</param>
/// <param name="Deviation">Experimental standard deviation of one reading, m.</param>
/// <param name="Uncertainty">Standard uncertainty of the mean, m.</param>
/// <param name="Freedom">Degrees of freedom.</param>
public readonly record struct LengthStatistics(
    [Quantity("mean", Dimension.Length, "mm", Symbol = "q")] double Mean,
    [Quantity("standard deviation of one reading", Dimension.Length, "mm", Symbol = "s")] double Deviation,
    [Quantity("standard uncertainty of the mean", Dimension.Length, "µm", Symbol = "u")] double Uncertainty,
    [Quantity("degrees of freedom", Dimension.Number, Symbol = "ν")] double Freedom);

/// <summary>Statistics of repeated readings in any one unit.</summary>
/// <param name="Mean">Mean.</param>
/// <param name="Deviation">Experimental standard deviation of one reading.</param>
/// <param name="Uncertainty">Standard uncertainty of the mean.</param>
/// <param name="Freedom">Degrees of freedom.</param>
public readonly record struct ReadingStatistics(
    [Quantity("mean", Dimension.Number, Symbol = "q")] double Mean,
    [Quantity("standard deviation of one reading", Dimension.Number, Symbol = "s")] double Deviation,
    [Quantity("standard uncertainty of the mean", Dimension.Number, Symbol = "u")] double Uncertainty,
    [Quantity("degrees of freedom", Dimension.Number, Symbol = "ν")] double Freedom);

/// <summary>Type A evaluation: uncertainty from repeating.</summary>
public static class TypeA
{
    private const string Source = "JCGM 100:2008 (GUM), 4.2, eqs 3 to 5";
    private const string Expression = "s = sqrt(Σ (qk - q)^2 / (n - 1)); u = s / sqrt(n); ν = n - 1";

    /// <summary>Type A uncertainty of repeated length readings.</summary>
    /// <param name="readings">Independent readings, m; lift the instrument off in between.</param>
    [Formula("type A uncertainty", Expression, Source)]
    public static LengthStatistics Lengths([Quantity("readings", Dimension.Length, "mm", Symbol = "qk")] double[] readings)
    {
        var s = Readings(readings);
        return new LengthStatistics(s.Mean, s.Deviation, s.Uncertainty, s.Freedom);
    }

    /// <summary>Type A uncertainty of repeated readings in any one unit.</summary>
    /// <param name="readings">Independent readings.</param>
    [Formula("type A uncertainty of plain readings", Expression, Source)]
    public static ReadingStatistics Readings([Quantity("readings, all in one unit", Dimension.Number, Symbol = "qk")] double[] readings)
    {
        FormulaDomainException.Unless(readings.Length > 1, "readings: at least two are wanted");
        var mean = 0.0;
        foreach (var reading in readings)
        {
            mean += reading / readings.Length;
        }

        var squares = 0.0;
        foreach (var reading in readings)
        {
            squares += (reading - mean) * (reading - mean);
        }

        var freedom = readings.Length - 1;
        var deviation = Math.Sqrt(squares / freedom);
        return new ReadingStatistics(mean, deviation, deviation / Math.Sqrt(readings.Length), freedom);
    }
}
