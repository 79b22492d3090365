using Gudgeon.Book.Checks.Surfaces;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Book.Surfaces;

/// <summary>A step of peening on a route card.</summary>
internal static class PeeningRoute
{
    private const string Source = "strips SAE J442, saturation curve SAE J443 and J2597, coverage SAE J2277, media SAE J444 and J441, customary intensities AMS-S-13165 (1997) Table VI; size against fillet and slot shop rules";

    private static readonly string[] Before =
    [
        "Heat treatment, grinding and crack test are done; sizes and runout of what thin walls may bend are written down.",
        "Strips flat and of the right hardness: A and C 44 to 50 HRC, N 72.5 to 76 HRA (SAE J442). Each is used once.",
        "Media sieved and looked at: no broken beads, no sharp ends of wire (AMS-S-13165).",
        "Masks and plugs on, photographed, and none loose.",
    ];

    private static readonly string[] After =
    [
        "Coverage on the part with a lens of ten times, in every root and fillet.",
        "A strip at the saturation time before and after the batch: its arc height stays in the band.",
        "Masks off, oil holes blown out, media counted out of every pocket; iron cleaned off aluminium and titanium.",
        "Sizes, runout and roughness again: peening bends thin parts and raises Ra.",
    ];

    /// <summary>The step of the values that hold.</summary>
    public static RouteStep Of(View view, string step)
    {
        var (peened, name) = (new PeenedStep(view, step), TreatedPart.Of(step));
        var strips = StripCurve.Of(view, step);
        Fact Length(string what, double? value, string remark = "") => new(what, value, Dimension.Length, "mm") { Remark = remark };
        Fact Time(string what, double? value, string remark = "") => new(what, value, Dimension.Time, "s") { Remark = remark };
        Fact Share(string what, double? value, string remark = "") => new(what, value, Dimension.Number, "%") { Remark = remark };
        Fact[] facts =
        [
            Length("size of the media", view.AmountIf(Peening.ShotSize, step)),
            Length("largest that reaches into the smallest fillet", view.AmountIf(Treatment.SmallestFillet, name) is { } fillet ? view.Work(PeeningMedia.LargestForFillet, fillet) : null, "half of its radius (from memory)"),
            Length("largest for the narrowest slot", view.AmountIf(Treatment.SlotWidth, name) is { } slot ? view.Work(PeeningMedia.LargestFor, slot) : null, "a quarter of it, common practice"),
            Length("intensity wanted, least", strips?.Least ?? Sketch.Known(() => peened.Wanted().Least), Band(peened)),
            Length("intensity wanted, greatest", strips?.Greatest ?? Sketch.Known(() => peened.Wanted().Greatest), Band(peened)),
            Length("intensity found", strips?.Intensity, $"on strip {peened.Strip}, at the saturation time"),
            Time("saturation time of the strip", strips?.Saturation?.Time),
            Time("time to full coverage of the part", Sketch.Known(peened.FullTime), "98 %, from what was seen earlier"),
            Time("exposure of the part", view.AmountIf(Peening.Exposure, step)),
            Share("coverage of the part", Sketch.Known(peened.Coverage), "100 % is full coverage, more a multiple of its time"),
            Share("coverage wanted", peened.CoverageWanted),
            new Fact("hottest that it may get afterwards", view.Work(PeeningHeat.Greatest, new TreatedPart(view, name).Metal), Dimension.Temperature, "°C") { Remark = "AMS-S-13165 (from memory); its temper may want less" },
        ];
        return new RouteStep(step, "Shot peening", [.. facts.Where(f => f.Known)], [.. Words(view, step)], Before, After, [.. Cautions(view, name)], Source)
        {
            Masked = RouteSheet.List(view.WordOr(Peening.Masked, "", step)),
            MaskedPath = Peening.Masked.At(step),
            Strips = strips,
        };
    }

    /// <summary>What the media must not be, in sentences.</summary>
    public static IEnumerable<string> Troubles(View view, string step)
    {
        var (part, media) = (new TreatedPart(view, TreatedPart.Of(step)), view.WordOr(Peening.Media, "", step));
        if (media == Peening.CastSteel && part.Metal == PeenedMetal.Steel && Sketch.Known(() => part.Strength) >= TreatedPart.HighStrength)
        {
            yield return $"{Peening.Media.At(step)}: steel this strong wants hard shot or ceramic (AMS-S-13165, Table VI note 4).";
        }

        if (part.Metal != PeenedMetal.Steel && media is Peening.CastSteel or Peening.HardCastSteel or Peening.CutWire)
        {
            yield return $"{Peening.Media.At(step)}: iron left on aluminium or titanium corrodes: glass or ceramic, or cleaned off chemically afterwards (AMS-S-13165, Table VI note 5).";
        }
    }

    private static string Band(PeenedStep step) => step.IsCustomary ? "customary for this steel and thickness, AMS-S-13165 Table VI" : "by the drawing";

    private static IEnumerable<string> Words(View view, string step) =>
        [.. view.WordOr(Peening.Media, "", step) is { Length: > 0 } media ? new[] { $"Media: {media}." } : [], $"Strip {new PeenedStep(view, step).Strip}."];

    private static IEnumerable<string> Cautions(View view, string name) =>
        new TreatedPart(view, name).Metal == PeenedMetal.Steel ? [SurfaceCautions.Peening] : [SurfaceCautions.Peening, SurfaceCautions.LightMetal];
}
