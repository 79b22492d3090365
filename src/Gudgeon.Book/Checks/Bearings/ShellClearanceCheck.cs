using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Bearings;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Bearings;

/// <summary>Clearance of each shell bearing from housing, shell and journal as measured.</summary>
public sealed class ShellClearanceCheck : Check
{
    public override string Id => "bearing-clearance";

    public override string Title => "Shell bearing clearance";

    public override string Family => "bearings";

    public override string Source => "housing less two shells less journal; limits by the maker of engine or shells";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Bearing.Journal.Subject);

    public override Judgement Examine(View view, string index) => Judgement.Between(
        "diametral clearance",
        view.Work(ShellClearance.Clearance, view.Amount(Bearing.Housing, index), view.Amount(Bearing.ShellThickness, index), view.Amount(Bearing.Journal, index), 0.0),
        view.Amount(Bearing.ClearanceMin, index),
        view.Amount(Bearing.ClearanceMax, index),
        Dimension.Length,
        "mm",
        "bearing.clearanceMin and clearanceMax");
}
