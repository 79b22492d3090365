using Gudgeon.Book.Checks.Surfaces;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Rows;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Book.Surfaces;

/// <summary>A reading of one Almen strip. SI.</summary>
/// <param name="Time">Exposure, s.</param>
/// <param name="Height">Arc height, m.</param>
public readonly record struct StripReading(double Time, double Height);

/// <summary>The strips of one step of peening, for the picture. SI.</summary>
/// <param name="Step">The step.</param>
/// <param name="Strip">The strip: "A".</param>
/// <param name="Readings">As read.</param>
/// <param name="Course">Saturation curve from nought to the end of the picture; empty where there is none.</param>
/// <param name="Saturation">The curve at the saturation time; null where there is none.</param>
/// <param name="Doubled">The curve at twice that time, a tenth higher.</param>
/// <param name="Least">Least intensity wanted; null where it is not known.</param>
/// <param name="Greatest">Greatest intensity wanted.</param>
/// <param name="Trouble">Why there is no valid curve, in one sentence; empty when there is.</param>
public sealed record StripCurve(string Step, string Strip, IReadOnlyList<StripReading> Readings, IReadOnlyList<StripReading> Course, StripReading? Saturation, StripReading? Doubled, double? Least, double? Greatest, string Trouble)
{
    private const int Points = 60;

    /// <summary>The strips of a step; null without readings.</summary>
    public static StripCurve? Of(View view, string step)
    {
        if (view.TableIf(Peening.Readings, step) is not { Rows.Count: > 0 } table)
        {
            return null;
        }

        var peened = new PeenedStep(view, step);
        var (fit, trouble) = Fitted(peened);
        IReadOnlyList<StripReading> readings = [.. table["time"].Zip(table["height"], (t, h) => new StripReading(t, h)).OrderBy(r => r.Time)];
        return new StripCurve(
            step,
            peened.Strip.ToString(),
            readings,
            fit is { } curve ? [.. Enumerable.Range(0, Points + 1).Select(i => At(curve, Math.Max(readings[^1].Time, 2 * curve.SaturationTime) * i / Points))] : [],
            fit is { } at ? At(at, at.SaturationTime) : null,
            fit is { } twice ? At(twice, 2 * twice.SaturationTime) : null,
            Sketch.Known(() => peened.Wanted().Least),
            Sketch.Known(() => peened.Wanted().Greatest),
            trouble);
    }

    /// <summary>Intensity, m; null where the curve is not valid.</summary>
    public double? Intensity => Trouble.Length == 0 ? Saturation?.Height : null;

    /// <summary>Longest time of the picture, s: all strips and twice the saturation time.</summary>
    public double End => Course.Count > 0 ? Course[^1].Time : Readings[^1].Time;

    /// <summary>Greatest height of the picture, m: all strips and the band.</summary>
    public double Top => Math.Max(Readings.Max(r => r.Height), Greatest ?? 0);

    private static StripReading At(SaturationCurve fit, double time) => new(time, fit.Limit * (1 - Math.Exp(-fit.Rate * time)));

    private static (SaturationCurve? Fit, string Trouble) Fitted(PeenedStep step)
    {
        try
        {
            var fit = step.Curve();
            return (fit, fit.Reach >= SaturationCheck.Reach ? "" : "The last strip does not reach twice the saturation time, so the curve is not valid and gives no intensity: one more strip, exposed longer, is wanted.");
        }
        catch (Exception e) when (e is FormulaDomainException or OutOfRangeException)
        {
            return (null, $"There is no saturation curve: {(e is OutOfRangeException range ? FormulaCall.Sentence(range) : e.Message)}.");
        }
    }
}
