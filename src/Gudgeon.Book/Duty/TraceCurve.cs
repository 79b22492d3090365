using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Duty;

/// <summary>What a curve over the crank angle measures.</summary>
/// <param name="Name">"valve flow".</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Unit">Display unit, metric.</param>
public sealed record TraceQuantity(string Name, Dimension Dimension, string Unit)
{
    /// <summary>Pressure in the cylinder.</summary>
    public static readonly TraceQuantity Cylinder = new("cylinder pressure", Dimension.Pressure, "bar");

    /// <summary>Lift at the valve.</summary>
    public static readonly TraceQuantity Lift = new("valve lift", Dimension.Length, "mm");

    /// <summary>Flow through the valves of one side, the way the engine breathes.</summary>
    public static readonly TraceQuantity Flow = new("valve flow", Dimension.MassFlow, "g/s");

    /// <summary>Pressure at a valve, in the plenum or at a place of a pipe.</summary>
    public static readonly TraceQuantity Port = new("port pressure", Dimension.Pressure, "bar");

    /// <summary>Unit that a reader of one system is shown.</summary>
    public Unit Shown(bool imperial) => Figures.Shown(Dimension, Unit, imperial);

    /// <summary>"valve flow, g/s".</summary>
    public string Label(bool imperial) => $"{Name}, {Shown(imperial).Symbol}";
}

/// <summary>A curve over the crank angle: what tables, pictures and pages show of a cycle is made from these.</summary>
/// <param name="Name">"inlet flow, cylinder 1", "pressure in the plenum".</param>
/// <param name="Brief">Beside others of its quantity: "inlet 1", "plenum".</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="Cylinder">Place of the cylinder it belongs to; the first for what they share.</param>
/// <param name="Values">One for each crank angle of the trace, SI.</param>
public sealed record TraceCurve(string Name, string Brief, TraceQuantity Quantity, int Cylinder, double[] Values)
{
    /// <summary>Head of a column in SI, without commas: "inlet flow cylinder 1 kg/s".</summary>
    public string Head => $"{Name.Replace(",", "", StringComparison.Ordinal)} {Dimensions.SiUnit(Quantity.Dimension)}";
}

/// <summary>The curves of a cycle, declared once.</summary>
public static class TraceCurves
{
    private static readonly (string Name, string Brief, TraceQuantity Quantity, Func<TracedCycle, int, double[]> Of)[] OfCylinder =
    [
        ("cylinder pressure", "cylinder", TraceQuantity.Cylinder, (t, c) => t.Trace.Cylinders[c].Pressure),
        ("inlet valve lift", "inlet", TraceQuantity.Lift, (t, c) => Lift(t, c, t.Spec.Cylinders[c].Inlet.Lift)),
        ("exhaust valve lift", "exhaust", TraceQuantity.Lift, (t, c) => Lift(t, c, t.Spec.Cylinders[c].Exhaust.Lift)),
        ("inlet flow", "inlet", TraceQuantity.Flow, (t, c) => t.Trace.Cylinders[c].InletFlow),
        ("exhaust flow", "exhaust", TraceQuantity.Flow, (t, c) => t.Trace.Cylinders[c].ExhaustFlow),
        ("pressure at the inlet valve", "inlet", TraceQuantity.Port, (t, c) => t.Trace.Cylinders[c].InletPressure),
        ("pressure at the exhaust valve", "exhaust", TraceQuantity.Port, (t, c) => t.Trace.Cylinders[c].ExhaustPressure),
    ];

    /// <summary>Those of every cylinder, the plenum's, and those at places of pipes.</summary>
    /// <param name="cycle">The cycle.</param>
    /// <param name="places">Places besides.</param>
    public static IReadOnlyList<TraceCurve> Of(TracedCycle cycle, IReadOnlyList<PipePlace>? places = null) =>
    [
        .. Enumerable.Range(0, cycle.Spec.Cylinders.Count).SelectMany(c => OfCylinder.Select(o => new TraceCurve(Called(cycle, o.Name, ", cylinder", c), Called(cycle, o.Brief, "", c), o.Quantity, c, o.Of(cycle, c)))),
        new("pressure in the plenum", "plenum", TraceQuantity.Port, 0, cycle.Trace.PlenumPressure),
        .. (places ?? []).Select(p => p.Curve(cycle)),
    ];

    private static string Called(TracedCycle cycle, string name, string which, int cylinder) => cycle.Spec.Cylinders.Count == 1 ? name : FormattableString.Invariant($"{name}{which} {cylinder + 1}");

    private static double[] Lift(TracedCycle cycle, int cylinder, Simulation.Engine.LiftCurve lift) =>
        [.. cycle.Trace.CrankAngle.Select(a => lift.At(a - cycle.Trace.Cylinders[cylinder].FiringAngle))];
}
