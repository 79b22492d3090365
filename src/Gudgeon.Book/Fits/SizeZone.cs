using Gudgeon.Calc.Fits;

namespace Gudgeon.Book.Fits;

/// <summary>Where a part may lie and where it does, from the basic size, m.</summary>
/// <param name="Name">"hole H7", "shaft, bare".</param>
/// <param name="Low">Lower deviation; null without a class.</param>
/// <param name="High">Upper deviation.</param>
/// <param name="Found">As measured; null when it was not.</param>
/// <param name="Band">± of the measurement, k = 2.</param>
public sealed record SizeZone(string Name, double? Low, double? High, double? Found = null, double? Band = null)
{
    /// <summary>Whether it is the shaft's, not the hole's.</summary>
    public bool OfShaft { get; init; }

    /// <summary>Whether the coating is still to come: the part must lie here to lie in its class when it has it.</summary>
    public bool Bare { get; init; }

    /// <summary>What the coating made of the diameter, from the zone before it, m; null where there is none before it.</summary>
    public double? BuildUp { get; init; }

    /// <summary>Hole and shaft of a fit of the book, each bare and coated where a coating is still to come.</summary>
    public static IReadOnlyList<SizeZone> Of(FitRow row)
    {
        var classes = row.Classes.Split('/');
        return
        [
            .. Part("hole", classes[0], row.HoleLimits, row.Hole - row.Size, row.HoleBand, row.HoleBuildUp),
            .. Part("shaft", classes[^1], row.ShaftLimits, row.Shaft - row.Size, row.ShaftBand, row.ShaftBuildUp).Select(z => z with { OfShaft = true }),
        ];
    }

    /// <summary>Whether there is anything to draw.</summary>
    public bool Known => Low is not null || Found is not null;

    /// <summary>Where the part is, else the middle of where it may be.</summary>
    public double? Middle => Found ?? ((Low + High) / 2);

    /// <summary>Least and greatest of several, m: what a picture must take in, the basic size among them.</summary>
    public static (double Low, double High) Span(IEnumerable<SizeZone> zones)
    {
        var all = zones.SelectMany(z => (double?[])[z.Low, z.High, z.Found - (z.Band ?? 0), z.Found + (z.Band ?? 0), 0]).OfType<double>().ToList();
        var (low, high) = (all.Min(), all.Max());
        return high - low > 1e-7 ? (low, high) : (-1e-6, 1e-6);
    }

    /// <summary>One part as it will be fitted, and before that as it comes bare from the machine.</summary>
    private static IEnumerable<SizeZone> Part(string part, string letters, SizeLimits? limits, double? found, double? band, double? buildUp)
    {
        var name = limits is null ? part : $"{part} {letters}";
        var fitted = new SizeZone(buildUp is null ? name : $"{name}, coated", limits?.Lower, limits?.Upper, found, band) { BuildUp = buildUp };
        return buildUp is { } grown
            ? [new SizeZone($"{part}, bare", fitted.Low - grown, fitted.High - grown, found - grown, band) { Bare = true }, fitted]
            : [fitted];
    }
}
