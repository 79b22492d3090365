using System.Text.RegularExpressions;
using Gudgeon.Book.Checks.Fits;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Fits;

namespace Gudgeon.Book.Fits;

/// <summary>Limits of hole and shaft and the fit between them.</summary>
/// <param name="Size">Basic size, m.</param>
/// <param name="HoleClass">"H7".</param>
/// <param name="ShaftClass">"p6".</param>
/// <param name="Hole">Limits of the hole.</param>
/// <param name="Shaft">Limits of the shaft.</param>
/// <param name="Fit">Interference; clearance negative.</param>
public sealed partial record LimitsOfSize(double Size, string HoleClass, string ShaftClass, SizeLimits Hole, SizeLimits Shaft, FitLimits Fit)
{
    /// <summary>Reads a fit as it stands on a drawing.</summary>
    /// <param name="text">"25mm H7/p6".</param>
    /// <exception cref="BadInputException">No size, or not both classes.</exception>
    /// <exception cref="FormulaDomainException">The standard has no such class.</exception>
    public static LimitsOfSize Of(string text) => Whole().Match(text) is { Success: true } read
        ? Of(read.Groups["size"].Value, read.Groups["hole"].Value, read.Groups["shaft"].Value)
        : throw new BadInputException($"fit: given '{text}', wanted size, hole and shaft, such as 25mm H7/p6");

    /// <summary>Reads what was typed.</summary>
    /// <param name="size">"25 mm".</param>
    /// <param name="hole">"H7".</param>
    /// <param name="shaft">"p6".</param>
    /// <exception cref="BadInputException">No size, or no class.</exception>
    /// <exception cref="FormulaDomainException">The standard has no such class.</exception>
    /// <exception cref="OutOfRangeException">A size that the standard does not reach.</exception>
    public static LimitsOfSize Of(string size, string hole, string shaft)
    {
        var metres = Amount.Parse("size", size, Dimension.Length, "mm").Si;
        var (h, s) = (IsoClass.HoleOf("hole", hole), IsoClass.ShaftOf("shaft", shaft));
        if (metres is not (> 0 and <= 0.5))
        {
            throw new BadInputException($"size: given '{size}', wanted more than 0 and at most 500 mm");
        }

        return new LimitsOfSize(
            metres,
            hole.Trim(),
            shaft.Trim(),
            LimitsAndFits.Hole(metres, h.Letter, h.Grade),
            LimitsAndFits.Shaft(metres, s.Letter, s.Grade),
            LimitsAndFits.Fit(metres, h.Letter, h.Grade, s.Letter, s.Grade));
    }

    /// <summary>What kind of fit it is.</summary>
    public string Kind => Fit switch
    {
        { Least: >= 0 } => "an interference fit",
        { Greatest: <= 0 } => "a clearance fit",
        _ => "a transition fit",
    };

    /// <summary>Hole and shaft for the picture.</summary>
    public IReadOnlyList<SizeZone> Zones => [new($"hole {HoleClass}", Hole.Lower, Hole.Upper), new($"shaft {ShaftClass}", Shaft.Lower, Shaft.Upper) { OfShaft = true }];

    /// <summary>Its numbers.</summary>
    public IReadOnlyList<Fact> Facts =>
    [
        Size5("hole, least", Hole.Least), Size5("hole, greatest", Hole.Greatest), Size5("shaft, least", Shaft.Least), Size5("shaft, greatest", Shaft.Greatest),
        Fit.Greatest <= 0 ? Micro("least clearance", -Fit.Greatest) : Micro("greatest interference", Fit.Greatest),
        Fit.Least >= 0 ? Micro("least interference", Fit.Least) : Micro("greatest clearance", -Fit.Least),
    ];

    [GeneratedRegex(@"^\s*(?<size>.+?)\s*(?<hole>[A-Za-z]+[0-9]+)[\s/]+(?<shaft>[A-Za-z]+[0-9]+)\s*$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Whole();

    private static Fact Size5(string name, double value) => new(name, value, Dimension.Length, "mm") { Digits = 6 };

    private static Fact Micro(string name, double value) => new(name, Math.Round(value, 9), Dimension.Length, "µm") { InchUnit = "thou" };
}
