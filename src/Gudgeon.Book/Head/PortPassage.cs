using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Head;

/// <summary>The passage of a port. SI.</summary>
/// <param name="Areas">Distance from the seat and area there; none when not known.</param>
/// <param name="VolumeByAreas">Volume by the areas; null when they are not known.</param>
/// <param name="VolumeMeasured">Volume by burette; null when not measured.</param>
/// <param name="Velocity">Mean speed of the gas at the rev limit through the narrowest place; null when not known.</param>
public sealed record PortPassage(IReadOnlyList<(double Distance, double Area)> Areas, double? VolumeByAreas, double? VolumeMeasured, double? Velocity)
{
    /// <summary>The narrowest place; null when the areas are not known.</summary>
    public (double Distance, double Area)? Least => Areas.Count == 0 ? null : Areas.MinBy(a => a.Area);

    /// <summary>What is known of a port's passage; null when nothing is.</summary>
    internal static PortPassage? Of(View view, FlowPort port)
    {
        var (table, volume) = (view.TableIf(Port.AreaTable, port.Index), view.AmountIf(Port.Volume, port.Index));
        if (table is not { Rows.Count: >= 2 })
        {
            return volume is null ? null : new PortPassage([], null, volume, null);
        }

        var (distances, areas) = (table["distance"], table["area"]);
        double? velocity = Drawings.Sketch.Known(() => FlowFigures.Velocity(view, port, areas.Min()));
        return new PortPassage([.. distances.Zip(areas)], view.Work(PortFlow.Volume, distances, areas), volume, velocity);
    }
}
