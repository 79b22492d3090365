using System.Globalization;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Build;

/// <summary>
/// Readings taken under repeatability conditions (JCGM 200:2012, 2.20: the same person, the same instrument, a short time)
/// and of the same part: the same day, under the same changes. They are one measurement, and their mean is its value.
/// A reading by somebody else, with another instrument or of another day stands alone, as does one that does not say when.
/// </summary>
internal static class Repeats
{
    /// <summary>A reading and those that repeat it.</summary>
    /// <param name="latest">The reading.</param>
    /// <param name="readings">Readings of the same field that hold with it, itself among them.</param>
    public static IReadOnlyList<Measurement> Of(Measurement latest, IEnumerable<Measurement> readings) =>
        latest.Value.Content is Amount && Day(latest).Length > 0 ? [.. readings.Where(r => ReferenceEquals(r, latest) || Repeat(r, latest))] : [latest];

    /// <summary>
    /// Mean of the readings, the latest first. Its standard uncertainty is √(u² + s²/n): the instrument's, which repeating
    /// does not lessen, and the experimental standard deviation of the mean (JCGM 100:2008, 4.2.3 and 4.3); its ± is that of
    /// k = 2, or of the larger factor that few repeats ask for.
    /// </summary>
    public static KnownValue Mean(IReadOnlyList<Measurement> readings)
    {
        if (readings.Count == 1)
        {
            return readings[0].Value;
        }

        var amounts = readings.Select(r => (Amount)r.Value.Content).ToList();
        var mean = amounts.Average(a => a.Si);
        var (instrument, scatter) = Parts(readings);
        var uncertainty = OfMean(instrument, scatter, amounts.Count).Kept;

        // One decimal more than was read: the mean lies between the marks.
        var decimals = amounts.Exists(a => a.Decimals < 0) ? -1 : amounts.Max(a => a.Decimals) + 1;
        return readings[0].Value with { Content = amounts[0] with { Si = mean, Uncertainty = uncertainty, Decimals = decimals, SpreadDigits = 2 } };
    }

    /// <summary>What the standard uncertainty of the mean is made of: the instrument's, and the experimental standard deviation of one reading; SI.</summary>
    /// <param name="readings">Two or more readings.</param>
    public static (double Instrument, double Scatter) Parts(IReadOnlyList<Measurement> readings)
    {
        var amounts = readings.Select(r => (Amount)r.Value.Content).ToList();
        return (amounts.Max(a => a.StandardUncertainty), TypeA.Readings([.. amounts.Select(a => a.Si)]).Deviation);
    }

    /// <summary>Uncertainty of the mean of several readings, SI.</summary>
    /// <param name="instrument">Standard uncertainty of the instrument.</param>
    /// <param name="scatter">Experimental standard deviation of one reading.</param>
    /// <param name="readings">How many readings, two or more.</param>
    public static RepeatedUncertainty OfMean(double instrument, double scatter, int readings) => RepeatedUncertainty.Of(scatter / Math.Sqrt(readings), readings - 1, instrument);

    // What holds together was read under the same changes that bear on the field, or else says nothing of changes.
    private static bool Repeat(Measurement reading, Measurement latest) =>
        (reading.Value.By, reading.Value.With, Day(reading), reading.Under is null) == (latest.Value.By, latest.Value.With, Day(latest), latest.Under is null);

    /// <summary>The date of "2026-10-02 14:05" or "2026-10-02T14:05Z"; other words as they are.</summary>
    private static string Day(Measurement reading)
    {
        var on = reading.Value.On;
        return on.Length > 10 && DateOnly.TryParseExact(on[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _) ? on[..10] : on;
    }
}
