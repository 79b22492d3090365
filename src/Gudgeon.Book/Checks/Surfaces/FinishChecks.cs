using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gears;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Book.Checks.Surfaces;

/// <summary>A check of superfinishing.</summary>
public abstract class SuperfinishCheck : Check
{
    public sealed override string Family => "surfaces";

    public sealed override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Superfinish.Removal.Subject).Where(i => i.Length > 0 && Applies(view, i));

    /// <summary>Whether the step is of the kind that this check asks after.</summary>
    protected virtual bool Applies(View view, string step) => true;
}

/// <summary>Stock taken off against what the tolerance leaves.</summary>
public sealed class StockRemovalCheck : SuperfinishCheck
{
    public override string Id => "superfinish-removal";

    public override string Title => "Stock removal against the tolerance";

    public override string Source => "measured size against the least of the drawing; usual removal 2.5 to 10 µm for each face: common practice, no source";

    public override string Caution => SurfaceCautions.Vibratory;

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "stock taken off each face", view.Amount(Superfinish.Removal, index), view.Amount(Superfinish.RemovalMax, index), Dimension.Length, "µm", "superfinish.removalMax");
}

/// <summary>What superfinishing leaves of the hardened case.</summary>
public sealed class CaseLeftCheck : SuperfinishCheck
{
    public override string Id => "superfinish-case";

    public override string Title => "Hardened case left under the finish";

    public override string Source => "case depth less stock removal; least depth by the drawing";

    public override Judgement Examine(View view, string index)
    {
        var name = TreatedPart.Of(index);
        return Judgement.AtLeast("case left", view.Amount(Treatment.CaseDepth, name) - view.Amount(Superfinish.Removal, index), view.Amount(Treatment.CaseLeast, name), Dimension.Length, "mm", "treatment.caseLeast");
    }

    protected override bool Applies(View view, string step) => view.Knows(Treatment.CaseDepth, TreatedPart.Of(step));
}

/// <summary>Roughness after superfinishing.</summary>
public sealed class FinishedRoughnessCheck : SuperfinishCheck
{
    public override string Id => "superfinish-roughness";

    public override string Title => "Roughness after superfinishing";

    public override string Source => "Ra by ISO 21920; superfinished gear flanks have been given as 0.056 to 0.083 µm (Krantz et al., J. Tribology 123(4) 709, 2001) and below 0.076 µm (AGMA 06FTM02, 2006)";

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "Ra", view.Amount(Superfinish.RoughnessAfter, index), view.Amount(Superfinish.RoughnessMax, index), Dimension.Length, "µm", "superfinish.roughnessMax");
}

/// <summary>Oil film of the finished contact over its roughness.</summary>
public sealed class LambdaCheck : SuperfinishCheck
{
    public override string Id => "superfinish-lambda";

    public override string Title => "Oil film over roughness after superfinishing";

    public override string Source => "Λ = hmin / √(Rq1² + Rq2²), Tallian; Rq from Ra of a Gaussian profile; below about 1 the peaks carry";

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "lambda ratio", Lambda(view, index, Superfinish.RoughnessAfter), view.Limit("superfinish-lambda.min", Dimension.Number, "", 1), Dimension.Number, "", "Tallian: below about 1 the peaks carry");

    /// <summary>Lambda ratio with the part before or after; where nothing tells of the other face, it fares alike.</summary>
    internal static double Lambda(View view, string step, Field roughness)
    {
        double Rq(double ra) => view.Work(Roughness.RqFromRa, ra, ProfileShape.Gaussian);
        var own = view.Amount(roughness, step);
        return view.Work(OilFilm.Lambda, view.Amount(Superfinish.Film, step), Rq(own), Rq(view.AmountIf(Superfinish.MatingRoughness, step) ?? own));
    }

    protected override bool Applies(View view, string step) => view.Knows(Superfinish.Film, step);
}
