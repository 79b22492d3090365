using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>A number that sums up a cycle.</summary>
/// <typeparam name="T">What it is of: a cylinder of a cycle, or a pipe.</typeparam>
/// <param name="Name">"trapped mass".</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Unit">Display unit, metric.</param>
/// <param name="Of">The number, SI.</param>
public sealed record CycleFact<T>(string Name, Dimension Dimension, string Unit, Func<T, double> Of)
{
    /// <summary>The number with its unit.</summary>
    public string Print(T of, bool imperial) => Figures.Print(Of(of), Dimension, Unit, 4, imperial);
}

/// <summary>The numbers that sum up a cycle, declared once.</summary>
public static class CycleFacts
{
    private const double Degree = Math.PI / 180;

    /// <summary>Of each cylinder.</summary>
    public static IReadOnlyList<CycleFact<(CylinderFigures Figures, CylinderTrace Trace)>> OfCylinder { get; } =
    [
        new("peak pressure", Dimension.Pressure, "bar", c => c.Figures.PeakPressure),
        new("at, after firing TDC", Dimension.Angle, "°", c => c.Figures.PeakPressureAngle * Degree),
        new("trapped mass", Dimension.Mass, "g", c => c.Figures.TrappedMass),
        new("residual gas in it", Dimension.Number, "%", c => c.Figures.ResidualFraction),
        new("reverse flow through the inlet valves", Dimension.Number, "%", c => c.Figures.InletReversal),
        new("reverse flow through the exhaust valves", Dimension.Number, "%", c => c.Figures.ExhaustReversal),
        new("greatest pressure at the inlet valve", Dimension.Pressure, "bar", c => c.Trace.InletPressure.Max()),
        new("least pressure at the inlet valve", Dimension.Pressure, "bar", c => c.Trace.InletPressure.Min()),
        new("greatest pressure at the exhaust valve", Dimension.Pressure, "bar", c => c.Trace.ExhaustPressure.Max()),
        new("least pressure at the exhaust valve", Dimension.Pressure, "bar", c => c.Trace.ExhaustPressure.Min()),
    ];

    /// <summary>Of each pipe.</summary>
    public static IReadOnlyList<CycleFact<PipeTrace>> OfPipe { get; } =
    [
        new("length", Dimension.Length, "mm", p => p.Length),
        new("greatest pressure", Dimension.Pressure, "bar", p => p.Pressure.Max(row => row.Max())),
        new("least pressure", Dimension.Pressure, "bar", p => p.Pressure.Min(row => row.Min())),
        new("greatest speed of the gas", Dimension.Speed, "m/s", p => p.Velocity.Max(row => row.Max())),
        new("greatest speed backwards", Dimension.Speed, "m/s", p => Math.Max(0, -p.Velocity.Min(row => row.Min()))),
        new("part of the cycle with reverse flow", Dimension.Number, "%", p => p.Velocity.Count(row => row.Any(v => v < -Backwards)) / (double)p.Velocity.Length),
    ];

    /// <summary>Slower than this, m/s, gas that goes back is called still.</summary>
    public const double Backwards = 5;

    /// <summary>The cylinders of a cycle.</summary>
    public static IEnumerable<(CylinderFigures Figures, CylinderTrace Trace)> Cylinders(TracedCycle cycle) => cycle.Figures.Cylinders.Zip(cycle.Trace.Cylinders);
}
