using ScottPlot;

namespace Gudgeon.Cli.Sheets;

/// <summary>Vectors over the cycle on paper: rings of equal size, one scale both ways.</summary>
internal static class PolarPanel
{
    private static readonly LinePattern[] Patterns = [LinePattern.Solid, LinePattern.Dashed, LinePattern.DenselyDashed, LinePattern.Dotted];

    /// <summary>A panel of one or more courses.</summary>
    /// <param name="curves">The courses.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="unit">Unit of the rings.</param>
    /// <param name="legend">Whether the courses are named.</param>
    public static Plot Of(IReadOnlyList<PolarCurve> curves, string title, string unit, bool legend = true)
    {
        var plot = new Plot();
        var (step, rings) = PolarScale.Of(curves);
        for (var i = 1; i <= rings; i++)
        {
            var ring = plot.Add.Circle(0, 0, i * step);
            (ring.LineColor, ring.LineWidth, ring.FillStyle.Color) = (Colors.LightGray, 1, Colors.Transparent);
            var words = plot.Add.Text(Book.Values.Figures.Number(i * step, 3), 0, i * step);
            (words.LabelFontSize, words.LabelFontColor, words.LabelAlignment) = (11, Colors.Gray, Alignment.LowerLeft);
        }

        for (var i = 0; i < curves.Count; i++)
        {
            var line = plot.Add.ScatterLine(curves[i].X.Append(curves[i].X[0]).ToArray(), curves[i].Y.Append(curves[i].Y[0]).ToArray());
            (line.LegendText, line.LineWidth, line.LinePattern) = (curves[i].Name, 2, Patterns[i % Patterns.Length]);
        }

        var edge = rings * step * 1.06;
        plot.Axes.SetLimits(-edge, edge, -edge, edge);
        plot.Axes.SquareUnits();
        plot.HideGrid();
        plot.Add.VerticalLine(0, 1, Colors.LightGray);
        plot.Add.HorizontalLine(0, 1, Colors.LightGray);
        plot.Title(title);
        plot.XLabel(unit);
        if (legend)
        {
            plot.ShowLegend(Edge.Bottom);
        }
        else
        {
            plot.HideLegend();
        }

        return plot;
    }
}
