using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Vehicle;

namespace Gudgeon.Book.Duty;

/// <summary>Road speed over engine speed in one gear: a straight line from nothing.</summary>
/// <param name="Gear">Counted from 1.</param>
/// <param name="EngineSpeed">Rev limit, rad/s.</param>
/// <param name="RoadSpeed">Road speed there, m/s; no slip, no growth of the tyre.</param>
public sealed record GearLine(int Gear, double EngineSpeed, double RoadSpeed);

/// <summary>What each gear gives.</summary>
public static class GearChart
{
    /// <summary>One line for each gear; empty when ratios, tyre or rev limit are not known.</summary>
    public static IReadOnlyList<GearLine> Of(Snapshot snapshot)
    {
        var view = new View(snapshot);
        var (limit, primary, final, tyre) = (view.Amount(Engine.RevLimit), view.Amount(Driveline.Primary), view.Amount(Driveline.Final), view.Amount(Vehicle.TyreCircumference));
        var gears = view.Table(Driveline.Gears)?["ratio"] ?? [];
        return view.Trace.Missing.Any() ? [] : [.. gears.Select((ratio, i) => new GearLine(i + 1, limit, view.Work(Gearing.RoadSpeed, limit, primary, ratio, final, tyre)))];
    }
}
