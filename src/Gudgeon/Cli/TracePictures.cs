using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using ScottPlot;

namespace Gudgeon.Cli;

/// <summary>A cycle on paper: port pressures above, valve flows below, over the same crank angle.</summary>
internal static class TracePictures
{
    /// <summary>The quantities that are drawn, one panel for each.</summary>
    public static readonly TraceQuantity[] Panels = [TraceQuantity.Port, TraceQuantity.Flow];

    private static readonly LinePattern[] Patterns = [LinePattern.Solid, LinePattern.Dashed, LinePattern.Dotted, LinePattern.DenselyDashed];

    public static void Draw(TracedCycle cycle, IReadOnlyList<TraceCurve> curves, string file, bool imperial)
    {
        var sheet = new Multiplot();
        sheet.RemovePlot(sheet.GetPlot(0));
        foreach (var quantity in Panels)
        {
            sheet.AddPlot(Panel(cycle, [.. curves.Where(c => c.Quantity == quantity)], quantity, imperial));
        }

        sheet.GetPlot(0).Title($"Port pressures and valve flows at {Engine.RevLimit.Print(cycle.Speed)}, {cycle.Depth.From()}");
        sheet.GetPlot(Panels.Length - 1).XLabel("crank angle after each cylinder's firing TDC, °");
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
            line.LegendText = curves[i].Name;
            line.LineWidth = 2;
            line.LinePattern = Patterns[i % Patterns.Length];
        }

        if (quantity == TraceQuantity.Flow)
        {
            plot.Add.HorizontalLine(0, 1, Colors.Black, LinePattern.Solid).LegendText = "below this line it flows back";
        }

        foreach (var (angle, words) in cycle.Events(0))
        {
            var mark = plot.Add.VerticalLine(angle, 1, Colors.Black, LinePattern.Dotted);
            mark.LabelText = words;
            mark.LabelOppositeAxis = true;
            mark.LabelRotation = -20;
            mark.LabelFontSize = 12;
            mark.LabelBold = false;
            mark.LabelFontColor = Colors.Black;
            mark.LabelBackgroundColor = Colors.Transparent;
            mark.LabelAlignment = Alignment.LowerLeft;
        }

        plot.YLabel(quantity.Label(imperial));
        plot.Axes.Bottom.TickGenerator = new ScottPlot.TickGenerators.NumericFixedInterval(90);
        plot.Axes.SetLimitsX(0, 720);
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(76, 310, 56, 62));
        return plot;
    }
}
