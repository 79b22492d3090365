using Gudgeon.Book.Checks.Surfaces;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Surfaces;

/// <summary>Superfinishing on a route card.</summary>
internal static class FinishRoute
{
    private const string Source = "Ra by ISO 21920; lambda ratio by Tallian; stock and hours common practice, no source; Ra of superfinished flanks Krantz et al. (2001), AGMA 06FTM02 (2006)";

    private static readonly string[] Before =
    [
        "Ra across the lay, three places on each face that runs.",
        "Size of each face: micrometer, of gears the span over several teeth; what the tolerance leaves is written down.",
        "Depth of the case, on a test piece of the same batch.",
        "Threads, bores with fits and oil holes plugged, and photographed.",
    ];

    private static readonly string[] After =
    [
        "The same sizes at the same places: half of the difference is the stock taken off each face, of a span over teeth too; not of a size over pins, which changes more.",
        "Ra across the old lay; a part that still shows its grinding lines goes in again, if its size lets it.",
        "Rinsed, dried and inhibited the same hour; stones counted out of bores and holes.",
    ];

    /// <summary>The step of the values that hold.</summary>
    public static RouteStep Of(View view, string step)
    {
        var name = TreatedPart.Of(step);
        var acid = view.WordOr(Superfinish.Chemistry, Superfinish.Neutral, step) == Superfinish.Acid;
        Fact Length(string what, double? value, string remark = "") => new(what, value, Dimension.Length, "µm") { Remark = remark };
        Fact Ratio(string what, Field roughness) => new(what, view.Knows(Superfinish.Film, step) ? Sketch.Known(() => LambdaCheck.Lambda(view, step, roughness)) : null, Dimension.Number, "") { Digits = 3, Remark = "below about 1 the peaks carry, above about 3 the film" };
        var removal = view.AmountIf(Superfinish.Removal, step);
        Fact[] facts =
        [
            Length("stock off each face", removal, "2.5 to 10 µm is usual, common practice"),
            Length("stock that it may lose", view.AmountIf(Superfinish.RemovalMax, step), "by the tolerance"),
            new Fact("case left", view.AmountIf(Treatment.CaseDepth, name) - removal, Dimension.Length, "mm"),
            Length("Ra before", view.AmountIf(Superfinish.RoughnessBefore, step)),
            Length("Ra after", view.AmountIf(Superfinish.RoughnessAfter, step)),
            Length("Ra wanted, at most", view.AmountIf(Superfinish.RoughnessMax, step)),
            Length("oil film of the contact", view.AmountIf(Superfinish.Film, step)),
            Ratio("lambda ratio before", Superfinish.RoughnessBefore),
            Ratio("lambda ratio after", Superfinish.RoughnessAfter),
            new Fact("time in the bowl", view.AmountIf(Superfinish.Time, step), Dimension.Time, "h"),
        ];
        var compound = view.WordOr(Superfinish.Compound, "", step);
        return new RouteStep(step, "Superfinishing", [.. facts.Where(f => f.Known)], [.. compound.Length > 0 ? new[] { $"Compound: {compound}." } : [], acid ? "Acid: a source of hydrogen." : "Neutral: no source of hydrogen."], Before, After, acid ? [SurfaceCautions.Vibratory, SurfaceCautions.Acid] : [SurfaceCautions.Vibratory], Source)
        {
            Masked = RouteSheet.List(view.WordOr(Superfinish.Masked, "", step)),
            MaskedPath = Superfinish.Masked.At(step),
        };
    }
}
