using System.Globalization;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using ScottPlot;

namespace Gudgeon.Cli;

/// <summary>A cycle on paper: port pressures above, valve flows below, over the same crank angle.</summary>
internal static class TracePictures
{
    /// <summary>The quantities that are drawn, one panel for each.</summary>
    public static readonly TraceQuantity[] Panels = [TraceQuantity.Port, TraceQuantity.Flow];

    /// <summary>Room for the marks above the curves, as a share of their height.</summary>
    private const double Room = 0.14;

    private static readonly LinePattern[] Patterns = [LinePattern.Solid, LinePattern.Dashed, LinePattern.Dotted, LinePattern.DenselyDashed];

    public static void Draw(TracedCycle cycle, IReadOnlyList<TraceCurve> curves, string file, bool imperial)
    {
        var sheet = Pictures.Sheet(Panels.Select(quantity => Panel(cycle, [.. curves.Where(c => c.Quantity == quantity)], quantity, imperial)));
        sheet.GetPlot(0).Title($"Port pressures and valve flows at {Engine.RevLimit.Print(cycle.Speed)}, {cycle.Depth.From()}");
        sheet.GetPlot(Panels.Length - 1).XLabel("crank angle after each cylinder's firing TDC, °; the valves marked are cylinder 1's");
        Pictures.Save(sheet, file);
    }

    private static Plot Panel(TracedCycle cycle, IReadOnlyList<TraceCurve> curves, TraceQuantity quantity, bool imperial)
    {
        var plot = new Plot();
        var unit = quantity.Shown(imperial);
        for (var i = 0; i < curves.Count; i++)
        {
            var after = cycle.After(curves[i].Cylinder).ToList();
            var line = plot.Add.ScatterLine(after.ConvertAll(a => a.Angle), after.ConvertAll(a => unit.FromSi(curves[i].Values[a.At])));
            line.LegendText = curves[i].Brief;
            line.LineWidth = 2;
            line.LinePattern = Patterns[i % Patterns.Length];
        }

        if (quantity == TraceQuantity.Flow)
        {
            plot.Add.HorizontalLine(0, 1, Colors.Black, LinePattern.Solid).LegendText = "below it: flows back";
        }

        plot.Axes.AutoScale();
        var (low, high) = (plot.Axes.GetLimits().Bottom, plot.Axes.GetLimits().Top);
        Mark(plot, cycle, high, Room * (high - low));
        plot.YLabel(quantity.Label(imperial));
        plot.Axes.Bottom.TickGenerator = new ScottPlot.TickGenerators.NumericFixedInterval(90);
        plot.Axes.SetLimitsX(0, 720);
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(76, 226, 56, 44));
        return plot;
    }

    /// <summary>The valves of the first cylinder: uprights with words above the curves, two high, for opening and closing stand close.</summary>
    private static void Mark(Plot plot, TracedCycle cycle, double high, double room)
    {
        foreach (var ((angle, words), i) in cycle.Events(0).Select((e, i) => (e, i)))
        {
            plot.Add.VerticalLine(angle, 1, Colors.Black, LinePattern.Dotted);
            var label = plot.Add.Text(string.Create(CultureInfo.InvariantCulture, $"{words} {angle:F0}°"), angle, high + (room * (1 - (i % 2 / 2.0))));
            label.LabelFontSize = 12;
            label.LabelFontColor = Colors.Black;
            label.LabelBackgroundColor = Colors.White;
            label.LabelAlignment = i == 3 ? Alignment.UpperRight : Alignment.UpperLeft;
            label.OffsetX = i == 3 ? -4 : 4;
        }

        plot.Axes.SetLimitsY(plot.Axes.GetLimits().Bottom, high + room);
    }
}
