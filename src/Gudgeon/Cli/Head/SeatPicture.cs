using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Head;

/// <summary>Stem clearances cold and hot, and seat widths, of every valve on paper.</summary>
internal static class SeatPicture
{
    public static void Draw(SeatSheet sheet, string file, bool imperial)
    {
        var rows = sheet.Rows.Reverse().ToList();
        var panels = Pictures.Sheet();
        var length = Figures.Shown(Dimension.Length, "mm", imperial);
        var seats = Panel(rows, "Valve seats", $"width of the contact band, {length.Symbol}");
        Points(seats, rows, r => r.Width, length, MarkerShape.FilledSquare, "seat width");
        seats.Axes.SetLimitsX(0, Math.Max(seats.Axes.GetLimits().Right, length.FromSi(2.2e-3)));
        panels.AddPlot(seats);
        var stems = Panel(rows, "Stems in their guides", $"clearance, {length.Symbol}");
        Points(stems, rows, r => r.Cold, length, MarkerShape.OpenCircle, "cold");
        Points(stems, rows, r => r.Hot, length, MarkerShape.FilledTriangleUp, "hot");
        stems.Axes.SetLimitsX(0, Math.Max(stems.Axes.GetLimits().Right, length.FromSi(0.08e-3)));
        panels.AddPlot(stems);
        Pictures.Save(panels, file);
    }

    private static Plot Panel(List<SeatRow> rows, string title, string along)
    {
        var plot = new Plot();
        plot.Title(title);
        plot.XLabel(along);
        plot.Axes.Left.SetTicks([.. rows.Select((_, i) => (double)i)], [.. rows.Select(r => r.Valve)]);
        plot.Axes.SetLimitsY(-0.7, rows.Count - 0.3);
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(100, 180, 56, 44));
        return plot;
    }

    private static void Points(Plot plot, List<SeatRow> rows, Func<SeatRow, double?> figure, Unit unit, MarkerShape shape, string name)
    {
        var known = rows.Select((r, i) => (Figure: figure(r), At: (double)i)).Where(p => p.Figure is not null).ToList();
        if (known.Count > 0)
        {
            var points = plot.Add.ScatterPoints(known.ConvertAll(p => unit.FromSi(p.Figure!.Value)), known.ConvertAll(p => p.At));
            points.MarkerShape = shape;
            points.MarkerSize = 11;
            points.LegendText = name;
        }

        plot.Axes.AutoScaleX();
    }
}
