using System.Globalization;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>
/// Loads in the bottom end at speeds of the engine run. Gas is that of the run as it stands: uncertainties of what only
/// the run reads are not carried into them, those of masses and lengths are.
/// </summary>
internal static class CycleLoads
{
    /// <summary>At every speed of the run, rising; none, and what is missing noted, when they cannot be worked.</summary>
    public static IReadOnlyList<CrankLoads> All(View view)
    {
        if (view.SteadyDuty() is not { } duty || CrankAssembly.Of(view) is not { } line)
        {
            return [];
        }

        duty.TraceAll();
        return [.. Enumerable.Range(0, duty.Points.Count).Select(i => At(view, duty, line, i)).OfType<CrankLoads>()];
    }

    /// <summary>
    /// At the speeds where parts have it hardest: that of the greatest cylinder pressure and the highest of the run. Between
    /// them the gas eases what the inertia asks.
    /// </summary>
    public static IReadOnlyList<CrankLoads> Hardest(View view)
    {
        if (view.SteadyDuty() is not { } duty || CrankAssembly.Of(view) is not { } line)
        {
            return [];
        }

        var peak = duty.PeakPressure.Speed;
        return [.. Enumerable.Range(0, duty.Points.Count).Where(i => i == duty.Points.Count - 1 || duty.Points[i].Speed == peak).Select(i => At(view, duty, line, i)).OfType<CrankLoads>()];
    }

    /// <summary>Those loads and, among them, those of one throw; none for a cylinder that the crank has not.</summary>
    public static IReadOnlyList<(CrankLoads Loads, ThrowLoads Throw)> Hardest(View view, string cylinder) =>
        [.. Hardest(view).Select(l => (l, Throw(l, cylinder))).Where(p => p.Item2 is not null).Select(p => (p.l, p.Item2!))];

    /// <summary>Loads of a cylinder's throw; null for one that the crank has not.</summary>
    public static ThrowLoads? Throw(CrankLoads loads, string cylinder) =>
        int.TryParse(cylinder, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= loads.Throws.Count ? loads.Throws[number - 1] : null;

    private static CrankLoads? At(View view, EngineDuty duty, CrankLine line, int point)
    {
        if (duty.Cycle(point) is not { } cycle)
        {
            view.Unknown($"a cycle that settles at {Fields.Engine.RevLimit.Print(duty.Points[point].Speed)}");
            return null;
        }

        return duty.Loads.At(line, point, () => Of(line, cycle, duty.Ambient.Pressure));
    }

    private static CrankLoads Of(CrankLine line, TracedCycle cycle, double ambient)
    {
        var angles = Array.ConvertAll(cycle.Trace.CrankAngle, a => a * Math.PI / 180);
        var pressures = cycle.Trace.Cylinders.Select(c => Array.ConvertAll(c.Pressure, p => p - ambient)).ToList();
        return CrankLoads.Of(line, cycle.Speed, angles, pressures);
    }
}
