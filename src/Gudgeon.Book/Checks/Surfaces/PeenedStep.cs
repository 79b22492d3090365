using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Book.Checks.Surfaces;

/// <summary>One step of peening: its strips, and what the part got.</summary>
/// <param name="view">The values.</param>
/// <param name="step">Its name: "gears.coarse".</param>
internal sealed class PeenedStep(View view, string step)
{
    private readonly TreatedPart _part = new(view, TreatedPart.Of(step));

    /// <summary>The strip that the readings and the wanted intensity are on.</summary>
    public AlmenStrip Strip => Enum.Parse<AlmenStrip>(view.WordOr(Peening.Strip, nameof(AlmenStrip.A), step));

    /// <summary>Nominal size of the media, m.</summary>
    public double ShotSize => view.Amount(Peening.ShotSize, step);

    /// <summary>Saturation curve through the readings, times in seconds; unknown without readings.</summary>
    public SaturationCurve Curve()
    {
        var readings = view.Table(Peening.Readings, step);
        return view.Work(AlmenIntensity.Fit, readings?["time"] ?? [], readings?["height"] ?? []);
    }

    /// <summary>Intensity, m: NaN, and noted as missing, where the last strip does not reach twice the saturation time.</summary>
    public double Intensity()
    {
        var curve = Curve();
        if (curve.Reach >= SaturationCheck.Reach || double.IsNaN(curve.Reach))
        {
            return curve.Intensity;
        }

        view.Unknown($"a strip of {Peening.Readings.At(step)} at twice the saturation time or more");
        return double.NaN;
    }

    /// <summary>The same on strip A, for comparing steps; nominal.</summary>
    public double IntensityOnA() => view.Work(AlmenIntensity.Compare, Intensity(), Strip, AlmenStrip.A);

    /// <summary>Intensity that is wanted: by the drawing, else the customary one of steel on strip A.</summary>
    public IntensityRange Wanted()
    {
        var drawn = view.Knows(Peening.IntensityMin, step) || view.Knows(Peening.IntensityMax, step) || Strip != AlmenStrip.A || _part.Metal != PeenedMetal.Steel;
        return drawn ? new IntensityRange(view.Amount(Peening.IntensityMin, step), view.Amount(Peening.IntensityMax, step)) : Customary();
    }

    /// <summary>Whether the wanted intensity is the customary one.</summary>
    public bool IsCustomary => !view.Knows(Peening.IntensityMin, step) && !view.Knows(Peening.IntensityMax, step);

    /// <summary>Time to full coverage of the part, s.</summary>
    public double FullTime() => view.Work(PeeningCoverage.FullTime, view.Amount(Peening.CoverageSeen, step), view.Amount(Peening.CoverageTime, step));

    /// <summary>Exposure of the part over its time to full coverage.</summary>
    public double Coverage() => view.Amount(Peening.Exposure, step) / FullTime();

    /// <summary>Coverage that is wanted, as a multiple of the time to full coverage.</summary>
    public double CoverageWanted => view.AmountOr(Peening.CoverageWanted, 1, step);

    /// <summary>The step before it; null for the first.</summary>
    public PeenedStep? Before()
    {
        var all = _part.Peenings;
        var at = all.ToList().IndexOf(step);
        return at > 0 ? new PeenedStep(view, all[at - 1]) : null;
    }

    private IntensityRange Customary()
    {
        var (strength, thickness) = (_part.Strength, view.Amount(Treatment.Thickness, TreatedPart.Of(step)));
        var steel = strength >= TreatedPart.HighStrength ? PeenedSteel.HighStrength : PeenedSteel.BelowHighStrength;
        return double.IsNaN(strength) ? new IntensityRange(double.NaN, double.NaN) : view.Work(PeeningMedia.DefaultIntensity, steel, thickness);
    }
}
