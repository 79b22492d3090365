using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Bearings;

/// <summary>Clearance of each shell bearing from housing, shell and journal as measured.</summary>
public sealed class ShellClearanceCheck : Check
{
    public override string Id => "bearing-clearance";

    public override string Title => "Shell bearing clearance";

    public override string Family => "bearings";

    public override string Source => "housing less two shells less journal; limits by the maker of engine or shells";

    public override IEnumerable<string> Instances(View view) => BearingFit.Keys(view);

    public override Judgement Examine(View view, string index) => Judgement.Between(
        "diametral clearance",
        BearingFit.Clearance(view, index),
        view.Amount(Bearing.ClearanceMin, index),
        view.Amount(Bearing.ClearanceMax, index),
        Dimension.Length,
        "mm",
        "bearing.clearanceMin and clearanceMax") with { Remark = Stations(view, index) };

    /// <summary>"0.034 mm to 0.041 mm over its stations"; nothing where only single readings are known.</summary>
    private static string Stations(View view, string index) => BearingFit.Stations(view, index) is var (least, greatest) && !double.IsNaN(least + greatest)
        ? $"{Bearing.ClearanceMin.Print(least)} to {Bearing.ClearanceMin.Print(greatest)} over its stations"
        : "";
}
