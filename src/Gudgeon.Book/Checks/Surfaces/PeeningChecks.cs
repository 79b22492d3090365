using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Book.Checks.Surfaces;

/// <summary>A check of one step of peening.</summary>
public abstract class PeeningCheck : Check
{
    public sealed override string Family => "surfaces";

    public override string Caution => SurfaceCautions.Peening;

    public sealed override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Peening.ShotSize.Subject).Where(i => i.Length > 0 && Applies(view, i));

    /// <summary>Whether the step is of the kind that this check asks after.</summary>
    protected virtual bool Applies(View view, string step) => true;
}

/// <summary>Media against the smallest fillet: shot that is too large rides on the edges and leaves the root bare.</summary>
public sealed class PeeningFilletCheck : PeeningCheck
{
    public override string Id => "peening-fillet";

    public override string Title => "Peening media against the smallest fillet";

    public override string Source => "media not over half of the smallest fillet radius: shop rule, in peening specifications too (from memory)";

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "size of the media", new PeenedStep(view, index).ShotSize, view.Work(PeeningMedia.LargestForFillet, view.Amount(Treatment.SmallestFillet, TreatedPart.Of(index))), Dimension.Length, "mm", "half of the smallest fillet radius (from memory)");

    /// <summary>A part may have slots and no fillet.</summary>
    protected override bool Applies(View view, string step) => view.Knows(Treatment.SmallestFillet, TreatedPart.Of(step)) || !view.Knows(Treatment.SlotWidth, TreatedPart.Of(step));
}

/// <summary>Media against the narrowest slot or hole.</summary>
public sealed class PeeningSlotCheck : PeeningCheck
{
    public override string Id => "peening-slot";

    public override string Title => "Peening media against the narrowest slot";

    public override string Source => "media not over a quarter of slot width or hole diameter: common practice, no source";

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "size of the media", new PeenedStep(view, index).ShotSize, view.Work(PeeningMedia.LargestFor, view.Amount(Treatment.SlotWidth, TreatedPart.Of(index))), Dimension.Length, "mm", "a quarter of the narrowest slot: common practice, no source");

    protected override bool Applies(View view, string step) => view.Knows(Treatment.SlotWidth, TreatedPart.Of(step));
}

/// <summary>Whether the strips give a valid saturation curve.</summary>
public sealed class SaturationCheck : PeeningCheck
{
    /// <summary>Longest exposure of a strip over the saturation time, at least.</summary>
    internal const double Reach = 2;

    public override string Id => "peening-saturation";

    public override string Title => "Saturation curve of the Almen strips";

    public override string Source => "SAE J443 and AMS-S-13165 4.2.3: at least four strips, one at twice the saturation time or more; curve h = a (1 - exp(-b t)) by least squares";

    public override Judgement Examine(View view, string index)
    {
        var curve = new PeenedStep(view, index).Curve();
        return Judgement.AtLeast("longest exposure over saturation time", curve.Reach, Reach, Dimension.Number, "", "SAE J443");
    }
}

/// <summary>Peening intensity against what is wanted.</summary>
public sealed class IntensityCheck : PeeningCheck
{
    public override string Id => "peening-intensity";

    public override string Title => "Peening intensity";

    public override string Source => "arc height at the saturation time, SAE J443; wanted by the drawing, else for steel on strip A by AMS-S-13165 (1997), Table VI";

    public override Judgement Examine(View view, string index)
    {
        var step = new PeenedStep(view, index);
        var wanted = step.Wanted();
        return Judgement.Between("intensity", step.Intensity(), wanted.Least, wanted.Greatest, Dimension.Length, "mm", step.IsCustomary ? "AMS-S-13165, Table VI" : "peening.intensityMin and intensityMax") with { Remark = $"on strip {step.Strip}" };
    }
}

/// <summary>Whether the strip is the one for that intensity.</summary>
public sealed class StripCheck : PeeningCheck
{
    public override string Id => "peening-strip";

    public override string Title => "Almen strip for the intensity";

    public override string Source => "AMS-S-13165 (1997), 6.10 and Table VI note 3: strip N below 0.1 mm on strip A, strip C above 0.61 mm";

    public override Judgement Examine(View view, string index)
    {
        var step = new PeenedStep(view, index);
        var range = view.Work(AlmenIntensity.Range, step.Strip);
        return new Judgement("intensity", step.Intensity(), range.Least > 0 ? range.Least : null, double.IsFinite(range.Greatest) ? range.Greatest : null, Dimension.Length, "mm", $"what strip {step.Strip} is for");
    }
}

/// <summary>Coverage of the part.</summary>
public sealed class CoverageCheck : PeeningCheck
{
    public override string Id => "peening-coverage";

    public override string Title => "Peening coverage of the part";

    public override string Source => "SAE J2277: each pass leaves the same share of what was bare; 98 % counts as full, more is a multiple of that time";

    public override Judgement Examine(View view, string index)
    {
        var step = new PeenedStep(view, index);
        return Judgement.AtLeast("coverage", step.Coverage(), step.CoverageWanted, Dimension.Number, "%", view.Knows(Peening.CoverageWanted, index) ? "peening.coverageWanted" : "full coverage");
    }
}

/// <summary>A step after another one smooths what that one left: its media are finer.</summary>
public sealed class FinerShotCheck : PeeningCheck
{
    public override string Id => "peening-finer";

    public override string Title => "Media of the second step finer than of the first";

    public override string Source => "two steps, coarse for depth, then fine for the surface: common practice, no source";

    public override Judgement Examine(View view, string index)
    {
        var step = new PeenedStep(view, index);
        return Judgement.AtMost("size of the media", step.ShotSize, step.Before()!.ShotSize, Dimension.Length, "mm", "media of the step before");
    }

    protected override bool Applies(View view, string step) => new PeenedStep(view, step).Before() is not null;
}

/// <summary>A step after another one is lighter too, or it works the depth anew and roughens the face.</summary>
public sealed class LighterStepCheck : PeeningCheck
{
    public override string Id => "peening-lighter";

    public override string Title => "Second step lighter than the first";

    public override string Source => "two steps, coarse for depth, then fine for the surface: common practice, no source; strips compared by AMS-S-13165 6.10, nominal only";

    public override Judgement Examine(View view, string index)
    {
        var step = new PeenedStep(view, index);
        return Judgement.AtMost("intensity, told on strip A", step.IntensityOnA(), step.Before()!.IntensityOnA(), Dimension.Length, "mm", "intensity of the step before");
    }

    protected override bool Applies(View view, string step) => new PeenedStep(view, step).Before() is not null;
}

/// <summary>Heat after peening, which lets the compression fade.</summary>
public sealed class PeeningHeatCheck : PeeningCheck
{
    public override string Id => "peening-heat";

    public override string Title => "Heat after peening";

    public override string Source => "AMS-S-13165 (from memory): steel 246 °C, aluminium 93 °C, titanium 316 °C";

    public override Judgement Examine(View view, string index)
    {
        var part = new TreatedPart(view, TreatedPart.Of(index));
        return Judgement.AtMost("hottest afterwards", part.Hottest ?? double.NaN, view.Limit("peening-heat.max", Dimension.Temperature, "°C", view.Work(PeeningHeat.Greatest, part.Metal)), Dimension.Temperature, "°C", "AMS-S-13165 (from memory)");
    }

    protected override bool Applies(View view, string step) => new TreatedPart(view, TreatedPart.Of(step)).Hottest is not null;
}
