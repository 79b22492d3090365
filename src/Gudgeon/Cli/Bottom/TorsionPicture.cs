using Gudgeon.Book.Bottom;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Crank;
using ScottPlot;

namespace Gudgeon.Cli.Bottom;

/// <summary>Torsion on paper: critical speeds where orders cross natural frequencies, and torque in the joints over the speed.</summary>
internal static class TorsionPicture
{
    private const int Between = 14;

    private static readonly LinePattern[] Patterns = [LinePattern.Solid, LinePattern.Dashed, LinePattern.DenselyDashed, LinePattern.Dotted];

    public static void Draw(TorsionSheet sheet, string file, bool imperial)
    {
        if (sheet.Sweep is not { } sweep)
        {
            throw new BadInputException($"the torsional line is not known, so there is none to draw: {sheet.Missing}");
        }

        Pictures.Save(Pictures.Sheet(Criticals(sheet, sweep), Torques(sheet, sweep, Figures.Shown(Dimension.Torque, "N·m", imperial))), file);
    }

    private static Plot Criticals(TorsionSheet sheet, TorsionalSweep sweep)
    {
        var plot = new Plot();
        var (from, to) = (TorsionCurves.Rpm(sweep.Points[0].Speed), TorsionCurves.Rpm(sweep.Points[^1].Speed));
        var top = TorsionCurves.TopFrequency(sweep);
        foreach (var order in TorsionCurves.Orders(sheet))
        {
            var line = plot.Add.Line(0, 0, to, order * to / 60);
            (line.LineColor, line.LineWidth) = (Colors.Gray, 1);
            var end = Math.Min(to, 60 * top / order);
            var words = plot.Add.Text(Figures.Number(order, 3), end, order * end / 60);
            (words.LabelFontSize, words.LabelAlignment) = (11, end < to ? Alignment.LowerCenter : Alignment.MiddleLeft);
        }

        foreach (var (shape, i) in sweep.Shapes.Select((s, i) => (s, i)).Where(s => s.s.Frequency <= top))
        {
            var line = plot.Add.HorizontalLine(shape.Frequency, 2, Colors.SteelBlue, LinePattern.Solid);
            line.LegendText = $"mode {i + 1}, {Figures.Number(shape.Frequency, 4)} Hz";
            line.LinePattern = Patterns[i % Patterns.Length];
        }

        var strong = TorsionCurves.Strong(sheet);
        var marks = plot.Add.ScatterPoints(strong.Select(c => c.Rpm).ToArray(), strong.Select(c => c.Hertz).ToArray());
        (marks.MarkerShape, marks.MarkerSize, marks.Color, marks.LegendText) = (MarkerShape.FilledCircle, 9, Colors.Black, "strongest critical speeds");
        TorsionCurves.Edges(plot, sheet);
        plot.Axes.SetLimits(from, to * 1.03, 0, top * 1.06);
        plot.Title("Critical speeds: orders (grey, numbered) over natural frequencies");
        plot.YLabel("frequency, Hz");
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(86, 250, 44, 44));
        return plot;
    }

    private static Plot Torques(TorsionSheet sheet, TorsionalSweep sweep, Unit torque)
    {
        var plot = new Plot();
        var rpm = sweep.Points.Select(p => TorsionCurves.Rpm(p.Speed)).ToArray();
        for (var j = 1; j < sheet.Build!.Joints.Count; j++)
        {
            var place = j;
            var line = plot.Add.ScatterLine(rpm, sweep.Points.Select(p => torque.FromSi(p.Joints[place])).ToArray());
            (line.LineWidth, line.LinePattern) = (2, Patterns[(j - 1) % Patterns.Length]);
            var every = sweep.Points.Where((_, i) => i % Between == place % Between).ToList();
            var marks = plot.Add.ScatterPoints(every.ConvertAll(p => TorsionCurves.Rpm(p.Speed)), every.ConvertAll(p => torque.FromSi(p.Joints[place])));
            (marks.LegendText, marks.MarkerShape, marks.MarkerSize, marks.Color) = (sheet.Build.Joints[j].Name, Pictures.Shapes[(j - 1) % Pictures.Shapes.Length], 7, line.Color);
        }

        TorsionCurves.Edges(plot, sheet);
        plot.Axes.SetLimitsX(rpm[0], rpm[^1] * 1.03);
        plot.Title("Greatest vibratory torque in the joints, all orders together");
        plot.XLabel("crank speed, rpm");
        plot.YLabel($"torque, {torque.Symbol}");
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(86, 250, 52, 44));
        return plot;
    }
}
