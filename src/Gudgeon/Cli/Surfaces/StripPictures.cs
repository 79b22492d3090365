using Gudgeon.Book.Surfaces;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Surfaces;

/// <summary>Saturation curves on paper, one panel for each step of peening.</summary>
internal static class StripPictures
{
    /// <summary>Draws the strips of every step.</summary>
    public static void Draw(IReadOnlyList<StripCurve> strips, string file, bool imperial) => Pictures.Save(Pictures.Sheet(strips.Select(s => Panel(s, imperial))), file);

    private static Plot Panel(StripCurve strips, bool imperial)
    {
        var (length, time) = (Figures.Shown(Dimension.Length, "mm", imperial), Units.Declared(Dimension.Time, "s"));
        var plot = new Plot();
        if (strips is { Least: { } least, Greatest: { } greatest })
        {
            var box = plot.Add.Rectangle(0, time.FromSi(strips.End) * 1.05, length.FromSi(least), length.FromSi(greatest));
            (box.FillColor, box.LineColor, box.LegendText) = (Colors.LightGray.WithAlpha(0.6), Colors.Gray, "intensity wanted");
        }

        var read = plot.Add.ScatterPoints(strips.Readings.Select(r => time.FromSi(r.Time)).ToArray(), strips.Readings.Select(r => length.FromSi(r.Height)).ToArray());
        (read.MarkerShape, read.MarkerSize, read.Color, read.LegendText) = (MarkerShape.FilledDiamond, 11, Colors.Black, "strips as read");
        if (strips is { Saturation: { } saturation, Doubled: { } doubled })
        {
            var line = plot.Add.ScatterLine(strips.Course.Select(r => time.FromSi(r.Time)).ToArray(), strips.Course.Select(r => length.FromSi(r.Height)).ToArray());
            (line.LineWidth, line.Color, line.LegendText) = (2, Colors.SteelBlue, "saturation curve");
            Upright(plot, time.FromSi(saturation.Time), "T");
            Upright(plot, time.FromSi(doubled.Time), "2 T");
        }

        plot.Axes.SetLimits(0, time.FromSi(strips.End) * 1.05, 0, length.FromSi(strips.Top) * 1.15);
        plot.XLabel($"exposure, {time.Symbol}");
        plot.YLabel($"arc height on strip {strips.Strip}, {length.Symbol}");
        plot.Title($"{strips.Step}: {(strips.Intensity is { } intensity ? $"intensity {Figures.Print(intensity, Dimension.Length, "mm", 3, imperial)}" : "not valid")}");
        plot.ShowLegend(Edge.Bottom);
        return plot;
    }

    private static void Upright(Plot plot, double at, string words)
    {
        plot.Add.VerticalLine(at, 1.5f, Colors.Black, LinePattern.Dashed);
        var text = plot.Add.Text(words, at, 0);
        (text.LabelFontSize, text.LabelFontColor, text.LabelAlignment, text.OffsetX) = (13, Colors.Black, Alignment.LowerLeft, 5);
    }
}
