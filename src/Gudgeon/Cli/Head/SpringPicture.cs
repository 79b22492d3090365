using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Head;

/// <summary>Load over height of a valve's springs on paper.</summary>
internal static class SpringPicture
{
    public static void Draw(SpringDiagram diagram, string file, bool imperial)
    {
        var (length, force) = (Figures.Shown(Dimension.Length, "mm", imperial), Figures.Shown(Dimension.Force, "N", imperial));
        var plot = new Plot();
        if (diagram.Line.Count > 0)
        {
            var line = plot.Add.ScatterLine(diagram.Line.Select(p => length.FromSi(p.Height)).ToArray(), diagram.Line.Select(p => force.FromSi(p.Load)).ToArray());
            line.LegendText = "load";
            line.LineWidth = 2;
        }

        foreach (var (mark, i) in diagram.Marks.Select((m, i) => (m, i)))
        {
            var point = plot.Add.Marker(length.FromSi(mark.Height), force.FromSi(mark.Load));
            point.Shape = Pictures.Shapes[i];
            point.Size = 13;
            point.LegendText = $"{mark.Name}: {Figures.Print(mark.Load, Dimension.Force, "N", 4, imperial)} at {Figures.Print(mark.Height, Dimension.Length, "mm", 4, imperial)}";
        }

        if (diagram.Tested.Count > 0)
        {
            var tested = plot.Add.ScatterPoints(diagram.Tested.Select(p => length.FromSi(p.Height)).ToArray(), diagram.Tested.Select(p => force.FromSi(p.Load)).ToArray());
            tested.MarkerShape = MarkerShape.OpenCircle;
            tested.MarkerSize = 20;
            tested.LegendText = "read by the tester";
        }

        plot.Title($"Valve spring {diagram.Valve}: load over height");
        plot.XLabel($"height of the spring, {length.Symbol}");
        plot.YLabel($"load, {force.Symbol}");
        plot.Axes.AutoScale();
        plot.ShowLegend(Alignment.UpperRight);
        Pictures.Save(plot, file);
    }
}
