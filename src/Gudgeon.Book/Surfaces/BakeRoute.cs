using Gudgeon.Book.Checks.Surfaces;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Book.Surfaces;

/// <summary>The bake for hydrogen on a route card.</summary>
internal static class BakeRoute
{
    private const string Source = "ASTM B850-98 (2009), ISO 9588; delay from memory";

    private static readonly string[] Before =
    [
        "Time out of the bath written down: the clock runs from there.",
        "Tempering temperature known: the oven stays below it.",
        "Part rinsed and dry, thermocouple on the part and not in the air.",
    ];

    private static readonly string[] After =
    [
        "Chart of the oven kept with the card.",
        "Crack test, cold: magnetic particles or dye.",
        "A passivation of zinc comes after the bake, not before (common practice, no source).",
    ];

    /// <summary>The step of the values that hold, also where the book has no bake yet.</summary>
    public static RouteStep Of(View view, string step)
    {
        var part = new TreatedPart(view, TreatedPart.Of(step));
        Fact[] facts =
        [
            new Fact("tensile strength", Sketch.Known(() => part.Strength), Dimension.Pressure, "MPa") { Remark = view.Knows(Treatment.TensileStrength, TreatedPart.Of(step)) ? "" : "from the hardness" },
            new Fact("least time for this strength", part.WantsBake ? Sketch.Known(() => view.Work(HydrogenRelief.BakeTime, part.Strength)) : null, Dimension.Time, "h"),
            new Fact("time at temperature", view.AmountIf(Bake.Time, step), Dimension.Time, "h"),
            new Fact("least temperature", BakeTemperatureCheck.Least, Dimension.Temperature, "°C"),
            new Fact("greatest temperature", BakeTemperatureCheck.Greatest, Dimension.Temperature, "°C") { Remark = "and below tempering" },
            new Fact("temperature", view.AmountIf(Bake.Temperature, step), Dimension.Temperature, "°C"),
            new Fact("tempered at", view.AmountIf(Treatment.Tempering, TreatedPart.Of(step)), Dimension.Temperature, "°C"),
            new Fact("delay from bath to oven", view.AmountIf(Bake.Delay, step), Dimension.Time, "h") { Remark = "within 4 h, the hardest within 1 h" },
        ];
        return new RouteStep(step, "Bake for hydrogen", [.. facts.Where(f => f.Known)], [], Before, After, [SurfaceCautions.Hydrogen], Source);
    }
}
