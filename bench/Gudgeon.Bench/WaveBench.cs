using System.Diagnostics;
using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Tests.Engine;
using ScottPlot;

namespace Gudgeon.Bench;

/// <summary>The engine with its pipes: sweeps, and how the cost grows with cells and speeds.</summary>
internal static class WaveBench
{
    private static readonly double[] Cells = [40e-3, 30e-3, 20e-3, 15e-3, 12e-3, 10e-3, 8e-3, 6e-3, 5e-3];
    private static readonly int[] Counts = [2, 4, 6, 8, 10, 12, 14];
    private static readonly double[] Speeds = [.. Enumerable.Range(0, 14).Select(i => Engines.Rpm(3000 + (500 * i)))];

    /// <summary>Fourteen full-load points of the blown twin with pipes in cells of 15 mm, from cold.</summary>
    public static void Sweep()
    {
        var (wave, lumped) = (new EngineModel(PipedEngines.Twin()), new EngineModel(Engines.BlownTwin()));
        var options = new RunOptions { Speeds = Speeds };
        SideBySide.Run(
            "14-speed full-load sweep by the wave model, blown 900 cm³ twin, 15 mm cells, cold start",
            "ms",
            1e3,
            ("one core", () => wave.Run(options with { DegreeOfParallelism = 1 })),
            ("two cores", () => wave.Run(options with { DegreeOfParallelism = 2 })),
            ("lumped to 1e-4, one core", () => lumped.Run(options with { DegreeOfParallelism = 1, Tolerance = 1e-4 })));
    }

    /// <summary>Time of a step against cells, and of a sweep against speeds; drawn into a folder when one is named.</summary>
    public static void Growth(string? folder)
    {
        var cells = Cells.Select(StepTime).ToArray();
        foreach (var (count, time) in cells)
        {
            Console.WriteLine(FormattableString.Invariant($"  {count,4} cells  {time,7:0.00} µs a step in which no pipe is divided  {1e3 * time / count,6:0.0} ns a cell"));
        }

        var speeds = Counts.Select(SweepTime).ToArray();
        foreach (var (count, time) in speeds)
        {
            Console.WriteLine(FormattableString.Invariant($"  {count,4} speeds {time,7:0} ms on two cores"));
        }

        if (folder is not null)
        {
            Draw(Path.Combine(folder, "wave-cells.svg"), cells, "cells", "one step, µs");
            Draw(Path.Combine(folder, "wave-speeds.svg"), speeds, "speeds", "sweep on two cores, ms");
        }
    }

    /// <summary>Best time of a step over several cycles, with as many steps that every pipe takes one in a single part, µs.</summary>
    private static (double Cells, double Time) StepTime(double cell)
    {
        var setup = new MarchSetup(PipedEngines.Twin(cell));
        var speed = Engines.Rpm(6000);
        var march = new March(setup, speed, (int)(4 * Math.PI / speed / (cell / 1600)), setup.Spec.Combustion);
        march.FillFresh();
        for (var i = 0; i < 4; i++)
        {
            march.Cycle();
        }

        var best = double.PositiveInfinity;
        for (var i = 0; i < 15; i++)
        {
            var started = Stopwatch.GetTimestamp();
            march.Cycle();
            best = Math.Min(best, Stopwatch.GetElapsedTime(started).TotalMicroseconds / march.Steps);
        }

        return (setup.Network.Pipes.Sum(p => p.Duct.Cells), best);
    }

    /// <summary>Best time of a sweep over so many speeds between the same ends, ms.</summary>
    private static (double Speeds, double Time) SweepTime(int count)
    {
        var model = new EngineModel(PipedEngines.Twin());
        var options = new RunOptions { Speeds = [.. Enumerable.Range(0, count).Select(i => Engines.Rpm(3000 + (6500.0 * i / (count - 1))))] };
        var best = double.PositiveInfinity;
        for (var i = 0; i < 5; i++)
        {
            var started = Stopwatch.GetTimestamp();
            model.Run(options);
            best = Math.Min(best, Stopwatch.GetElapsedTime(started).TotalMilliseconds);
        }

        return (count, best);
    }

    private static void Draw(string file, (double X, double Y)[] points, string across, string up)
    {
        var plot = new Plot();
        var curve = plot.Add.Scatter(points.Select(p => p.X).ToArray(), points.Select(p => p.Y).ToArray());
        curve.MarkerSize = 7;
        plot.XLabel(across);
        plot.YLabel(up);
        plot.Axes.SetLimits(0, 1.05 * points.Max(p => p.X), 0, 1.1 * points.Max(p => p.Y));
        File.WriteAllText(file, plot.GetSvgXml(480, 320));
    }
}
