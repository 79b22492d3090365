using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Crank;
using ScottPlot;

namespace Gudgeon.Cli.Bottom;

/// <summary>Rods on paper: force over the cycle with what the rod bears, and the fatigue diagram of the shank.</summary>
internal static class RodPictures
{
    internal static readonly LinePattern[] Patterns = [LinePattern.Solid, LinePattern.Dashed, LinePattern.Dotted];

    /// <summary>Draws the sheet.</summary>
    public static void Draw(RodSheet sheet, string file, bool imperial)
    {
        Pictures.Save(Pictures.Sheet(Force(sheet.Rods[0], imperial), Fatigue(sheet, imperial)), file);
    }

    /// <summary>A line over the cycle of a cylinder at a speed.</summary>
    internal static void Line(Plot plot, string name, ThrowLoads loads, double[] values, Unit unit, LinePattern pattern)
    {
        var order = LoadsSheet.AfterFiring(loads);
        var line = plot.Add.ScatterLine(order.Select(p => p.Degrees).ToArray(), order.Select(p => unit.FromSi(values[p.At])).ToArray());
        (line.LegendText, line.LineWidth, line.LinePattern) = (name, 2, pattern);
    }

    /// <summary>A speed to the whole turn a minute.</summary>
    internal static string At(double speed) => Figures.Rpm(speed);

    private static Plot Force(RodFigures rod, bool imperial)
    {
        var plot = new Plot();
        var force = Figures.Shown(Dimension.Force, "kN", imperial);
        for (var i = 0; i < rod.Hardest.Count; i++)
        {
            Line(plot, $"at {At(rod.Hardest[i].Speed)}", rod.Hardest[i].Loads, rod.Hardest[i].Loads.Rod, force, Patterns[i % Patterns.Length]);
        }

        Level(plot, rod.Buckles, force, "buckles", LinePattern.DenselyDashed);
        Level(plot, -rod.Pull, force, "pull, throttle shut", LinePattern.Dotted);
        plot.Title(rod.Cylinder.Length > 0 ? $"Force in rod {rod.Cylinder}" : "Force in the rod");
        plot.XLabel("crank angle after firing TDC, °");
        plot.YLabel($"push positive, {force.Symbol}");
        return Framed(plot);
    }

    /// <summary>Amplitude over mean stress, with the line up to which the shank bears them.</summary>
    private static Plot Fatigue(RodSheet sheet, bool imperial)
    {
        var plot = new Plot();
        var stress = Figures.Shown(Dimension.Pressure, "MPa", imperial);
        var known = sheet.Rods.Where(r => r is { MeanStress: not null, StressSwing: not null, FatigueStrength: not null, TensileStrength: not null }).ToList();
        if (known.Count > 0)
        {
            var (strength, tensile) = (stress.FromSi(known[0].FatigueStrength!.Value), stress.FromSi(known[0].TensileStrength!.Value));
            var line = plot.Add.ScatterLine(new[] { -tensile / 2, 0, tensile }, new[] { strength, strength, 0 });
            (line.LegendText, line.LineWidth, line.Color) = ("what the shank bears", 2, Colors.Black);
        }

        for (var i = 0; i < known.Count; i++)
        {
            var point = plot.Add.ScatterPoints(new[] { stress.FromSi(known[i].MeanStress!.Value) }, new[] { stress.FromSi(known[i].StressSwing!.Value) });
            (point.LegendText, point.MarkerSize, point.MarkerShape) = ($"rod {known[i].Cylinder}", 12, Pictures.Shapes[i % Pictures.Shapes.Length]);
        }

        plot.Title("Fatigue of the shank");
        plot.XLabel($"mean stress, tension positive, {stress.Symbol}");
        plot.YLabel($"stress amplitude, {stress.Symbol}");
        plot.Axes.AutoScale();
        plot.Axes.SetLimitsY(0, plot.Axes.GetLimits().Top);
        return Framed(plot);
    }

    private static void Level(Plot plot, double? newtons, Unit force, string name, LinePattern pattern)
    {
        if (newtons is { } level)
        {
            plot.Add.HorizontalLine(force.FromSi(level), 2, Colors.Black, pattern).LegendText = name;
        }
    }

    private static Plot Framed(Plot plot)
    {
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(86, 220, 56, 44));
        return plot;
    }
}
