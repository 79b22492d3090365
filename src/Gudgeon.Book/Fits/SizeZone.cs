using Gudgeon.Calc.Fits;

namespace Gudgeon.Book.Fits;

/// <summary>Where a part may lie and where it does, from the basic size, m.</summary>
/// <param name="Name">"hole H7".</param>
/// <param name="Low">Lower deviation; null without a class.</param>
/// <param name="High">Upper deviation.</param>
/// <param name="Found">As measured; null when it was not.</param>
/// <param name="Band">± of the measurement, k = 2.</param>
public sealed record SizeZone(string Name, double? Low, double? High, double? Found = null, double? Band = null)
{
    /// <summary>Hole and shaft of a fit of the book.</summary>
    public static IReadOnlyList<SizeZone> Of(FitRow row)
    {
        var classes = row.Classes.Split('/');
        return
        [
            new SizeZone(row.HoleLimits is null ? "hole" : $"hole {classes[0]}", row.HoleLimits?.Lower, row.HoleLimits?.Upper, row.Hole - row.Size, row.HoleBand),
            new SizeZone(row.ShaftLimits is null ? "shaft" : $"shaft {classes[^1]}", row.ShaftLimits?.Lower, row.ShaftLimits?.Upper, row.Shaft - row.Size, row.ShaftBand),
        ];
    }

    /// <summary>Whether there is anything to draw.</summary>
    public bool Known => Low is not null || Found is not null;

    /// <summary>Least and greatest of several, m: what a picture must take in, the basic size among them.</summary>
    public static (double Low, double High) Span(IEnumerable<SizeZone> zones)
    {
        var all = zones.SelectMany(z => (double?[])[z.Low, z.High, z.Found - (z.Band ?? 0), z.Found + (z.Band ?? 0), 0]).OfType<double>().ToList();
        var (low, high) = (all.Min(), all.Max());
        return high - low > 1e-7 ? (low, high) : (-1e-6, 1e-6);
    }
}
