using System.Globalization;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Cli;

/// <summary>The numbers that sum up a cycle as tables, worded alike on the terminal and on the pages.</summary>
internal static class CycleSheet
{
    /// <summary>Heads of the table of cylinders.</summary>
    public static IEnumerable<string> CylinderHeads(TracedCycle cycle) => cycle.Trace.Cylinders.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $"cylinder {i + 1}"));

    /// <summary>Rows of the table of cylinders: what it is, and of each.</summary>
    public static IEnumerable<(string Name, string[] Cells)> CylinderRows(TracedCycle cycle, bool imperial) =>
        CycleFacts.OfCylinder.Select(f => (f.Name, CycleFacts.Cylinders(cycle).Select(c => f.Print(c, imperial)).ToArray()));

    /// <summary>Rows of a table of pipes: what it is, and of each.</summary>
    public static IEnumerable<(string Name, string[] Cells)> PipeRows(IReadOnlyList<PipeTrace> pipes, bool imperial) =>
        CycleFacts.OfPipe.Select(f => (f.Name, pipes.Select(p => f.Print(p, imperial)).ToArray()));

    /// <summary>Prints them.</summary>
    public static void Print(TracedCycle cycle, bool imperial)
    {
        Out.Line($"{Engine.RevLimit.Print(cycle.Speed)}, full load, {cycle.Depth.From()}");
        Out.Line();
        Table([.. CylinderHeads(cycle).Prepend("")], [.. CylinderRows(cycle, imperial).Select(r => (string[])[r.Name, .. r.Cells])]);
        if (cycle.Trace.Pipes.Count > 0)
        {
            Out.Line();
            var pipes = Pipes.InOrder(cycle.Trace).ToList();
            Table([.. pipes.Select(p => p.Name).Prepend("")], [.. PipeRows(pipes, imperial).Select(r => (string[])[r.Name, .. r.Cells])]);
        }
    }

    private static void Table(string[] heads, string[][] rows)
    {
        var widths = heads.Select((h, i) => rows.Select(r => r[i].Length).Append(h.Length).Max()).ToArray();
        foreach (var row in rows.Prepend(heads))
        {
            Out.Line(string.Join("  ", row.Select((c, i) => i == 0 ? c.PadRight(widths[i]) : c.PadLeft(widths[i]))).TrimEnd());
        }
    }
}
