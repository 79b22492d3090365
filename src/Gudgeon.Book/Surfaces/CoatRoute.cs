using Gudgeon.Book.Checks.Surfaces;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Surfaces;

/// <summary>A coating on a route card.</summary>
internal static class CoatRoute
{
    private const string Source = "build-up by geometry; hard anodising half in and half out, MIL-PRF-8625 type III practice; dry coats twice the thickness on a diameter, coater's page";

    private static readonly string[] Before =
    [
        "Every size that the coat changes, before; threads tried with their gauge.",
        "Peening and superfinishing are done and passed: a coat is not peened over.",
        "Masks and plugs on, photographed; earth point agreed with the plater.",
    ];

    private static readonly string[] After =
    [
        "Thickness at three places, edges and middle: a bath builds more on edges.",
        "The same sizes again; threads with their gauge.",
        "Looked at for blisters and bare places; the book says done, so that the fit no longer counts what is to come.",
    ];

    /// <summary>The step of the values that hold.</summary>
    public static RouteStep Of(View view, string step)
    {
        var (where, wet) = (view.WordOr(Coating.Where, Coating.Shaft, step), view.WordOr(Coating.Process, Coating.Electrolytic, step) == Coating.Electrolytic);
        Fact Length(string what, double? value, string remark = "") => new(what, value, Dimension.Length, "µm") { Remark = remark };
        Fact[] facts =
        [
            Length("thickness", view.AmountIf(Coating.Thickness, step)),
            new Fact("share that grows outward", view.AmountOr(Coating.Outward, 1, step), Dimension.Number, ""),
            Length("build-up", Sketch.Known(() => CoatingRoomCheck.Growth(view, step)), On(where)),
            Length("room left for it", view.AmountIf(Coating.Room, step)),
            new Fact("hottest in the process", view.AmountIf(Coating.Temperature, step), Dimension.Temperature, "°C"),
        ];
        return new RouteStep(step, "Coating", [.. facts.Where(f => f.Known)], [.. Words(view, step, wet)], Before, After, [wet ? SurfaceCautions.Bath : SurfaceCautions.HotCoat], Source)
        {
            Masked = RouteSheet.List(view.WordOr(Coating.Masked, "", step)),
            MaskedPath = Coating.Masked.At(step),
        };
    }

    /// <summary>What the coat does to the fit that it names; none where it names none.</summary>
    public static IEnumerable<Fact> Handed(View view, string step)
    {
        var (fit, where) = (view.WordOr(Coating.Fit, "", step), view.WordOr(Coating.Where, Coating.Shaft, step));
        if (fit.Length == 0 || where is not (Coating.Shaft or Coating.Bore))
        {
            return [];
        }

        var own = view.Knows(where == Coating.Bore ? Fit.HoleCoating : Fit.ShaftCoating, fit);
        var done = view.WordOr(Coating.State, Coating.ToCome, step) == Coating.Done;
        return [new Fact($"fit[{fit}] loses of its clearance", Sketch.Known(() => CoatingRoomCheck.Growth(view, step)), Dimension.Length, "µm") { Remark = done ? "not counted there: the coat is on, and the size is as measured" : own ? "not counted there: the fit has a coating of its own, which goes first" : "counted there, as the coat is still to come" }];
    }

    private static IEnumerable<string> Words(View view, string step, bool wet) =>
    [
        .. view.WordOr(Coating.Kind, "", step) is { Length: > 0 } kind ? new[] { $"Coat: {kind}." } : [],
        view.WordOr(Coating.State, Coating.ToCome, step) == Coating.Done ? "The coat is on." : "The coat is still to come.",
        wet && new TreatedPart(view, TreatedPart.Of(step)).Plated ? "Acid or electrolytic, on steel: a source of hydrogen." : "No source of hydrogen.",
    ];

    private static string On(string where) => where switch
    {
        Coating.Bore => "the bore closes by it",
        Coating.Face => "on the face",
        Coating.Thread => "on the pitch diameter, four coats",
        _ => "on the diameter",
    };
}
