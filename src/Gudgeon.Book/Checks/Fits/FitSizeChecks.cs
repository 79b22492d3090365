using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Fits;

/// <summary>Interference or clearance of measured parts against what is wanted.</summary>
public sealed class FitInterferenceCheck : FitCheck
{
    public override string Id => "fit-interference";

    public override string Title => "Interference or clearance as measured";

    public override string Source => "shaft less hole at 20 °C (ISO 1:2022), coatings counted in; limits as asked for, else by the tolerance classes of ISO 286-2:2010";

    public override Judgement Examine(View view, string index)
    {
        var pair = new FittedPair(view, index);
        var (least, greatest) = pair.Wanted();
        var found = pair.Interference();
        return (least, greatest) switch
        {
            ( < 0, <= 0) => Judgement.Between("clearance", -found, -greatest, -least, Dimension.Length, "µm", Limits),

            // Limits of either sign give no reserve as a ratio: the band itself is the scale.
            ( < 0, _) => Judgement.Between("interference above the loosest fit", found - least, 0, greatest - least, Dimension.Length, "µm", Limits),
            _ => Judgement.Between("interference", found, least, greatest, Dimension.Length, "µm", Limits),
        };
    }

    protected override bool Applies(View view, string index) => view.Knows(Fit.Hole, index) || view.Knows(Fit.Shaft, index);

    private const string Limits = "fit.interferenceMin and interferenceMax, else the tolerance classes";
}

/// <summary>A fit at running temperatures: tight ones stay tight, free ones stay free.</summary>
public sealed class FitHotCheck : FitCheck
{
    public override string Id => "fit-hot";

    public override string Title => "Fit at running temperatures";

    public override string Source => "linear expansion of hub and shaft; roughness counted off where it is known (DIN 7190-1, from memory)";

    public override Judgement Examine(View view, string index)
    {
        var pair = new FittedPair(view, index);
        return pair.Wanted().Greatest > 0
            ? Judgement.AtMost("interference lost to heat", pair.Lost(), pair.Effective(), Dimension.Length, "µm", "the interference cold: what is tight stays tight")
            : Judgement.AtMost("clearance lost to heat", -pair.Lost(), -pair.Effective(), Dimension.Length, "µm", "the clearance cold: what is free stays free");
    }

    protected override bool Applies(View view, string index) => view.Knows(Fit.HubTemperature, index) && view.Knows(Fit.Hole, index);
}
