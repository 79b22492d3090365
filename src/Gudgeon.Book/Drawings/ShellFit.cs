using Gudgeon.Book.Bottom;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Drawings;

/// <summary>Journal, shell and housing of one bearing. SI; null where it is not known.</summary>
/// <param name="Journal">Journal diameter, m.</param>
/// <param name="Shell">Shell thickness at the crown, m.</param>
/// <param name="Housing">Housing bore, m.</param>
/// <param name="Clearance">Diametral clearance, m; negative when the journal does not go in.</param>
/// <param name="Least">Least clearance wanted, m.</param>
/// <param name="Most">Greatest clearance wanted, m.</param>
public sealed record ShellFit(double? Journal, double? Shell, double? Housing, double? Clearance, double? Least, double? Most)
{
    /// <summary>Keys of the bearings.</summary>
    public static IReadOnlyList<string> Keys(Snapshot now) => Sketch.Keys(BearingFit.Keys(new View(now)));

    /// <summary>The numbers of one bearing.</summary>
    public static ShellFit Of(Snapshot now, string index)
    {
        var view = new View(now);
        return new ShellFit(
            Sketch.Known(() => BearingFit.Journal(view, index)),
            view.AmountIf(Bearing.ShellThickness, index),
            Sketch.Known(() => BearingFit.Housing(view, index)),
            Sketch.Known(() => BearingFit.Clearance(view, index)),
            view.AmountIf(Bearing.ClearanceMin, index),
            view.AmountIf(Bearing.ClearanceMax, index));
    }
}
