using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;

namespace Gudgeon.Book.Checks.Chamber;

/// <summary>Compression ratio of each cylinder from what the burette, the gasket and the deck gauge said.</summary>
public sealed class CompressionRatioCheck : Check
{
    public override string Id => "compression-ratio";

    public override string Title => "Compression ratio";

    public override string Family => "chamber";

    public override string Source => "definition, ISO 7967-2; limits as wanted by the builder for fuel and boost";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index) => Judgement.Between(
        "compression ratio",
        Ratio(view, index),
        view.Amount(Cylinder.RatioMin, index),
        view.Amount(Cylinder.RatioMax, index),
        Dimension.Number,
        "",
        "cylinder.ratioMin and ratioMax");

    internal static double Ratio(View view, string cylinder) => view.Work(
        CompressionRatio.ByParts,
        view.Amount(Cylinder.Bore, cylinder),
        view.Amount(Crank.Stroke),
        view.Amount(Cylinder.ChamberVolume, cylinder),
        view.Amount(Cylinder.DomeVolume, cylinder),
        view.Amount(Cylinder.GasketBore, cylinder),
        view.Amount(Cylinder.GasketThickness, cylinder),
        view.Amount(Cylinder.DeckHeight, cylinder)).Ratio;
}

/// <summary>How far the compression ratios of the cylinders lie apart.</summary>
public sealed class CompressionSpreadCheck : Check
{
    private const double UsualSpread = 0.2;

    public override string Id => "compression-spread";

    public override string Title => "Compression ratio between cylinders";

    public override string Family => "chamber";

    public override string Source => "spread of 0.2 between cylinders: common practice, no source";

    public override IEnumerable<string> Instances(View view) => view.Count(Engine.Cylinders) > 1 ? [""] : [];

    public override Judgement Examine(View view, string index)
    {
        var ratios = Checks.Instances.Cylinders(view).Select(c => CompressionRatioCheck.Ratio(view, c)).ToList();
        var limit = view.Limit("compression-spread.max", Dimension.Number, "", UsualSpread);
        return Judgement.AtMost("spread of compression ratio", ratios.Max() - ratios.Min(), limit, Dimension.Number, "", "common practice, no source");
    }
}
