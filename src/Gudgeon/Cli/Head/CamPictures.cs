using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Head;

/// <summary>Cams on paper: lift at the valve above, acceleration at the rev limit below, over the same crank angle.</summary>
internal static class CamPictures
{
    private static readonly LinePattern[] Patterns = [LinePattern.Solid, LinePattern.Dashed, LinePattern.Dotted, LinePattern.DenselyDashed];

    public static void Draw(CamSheet sheet, string file, bool imperial)
    {
        var lift = Figures.Shown(Dimension.Length, "mm", imperial);
        var turning = sheet.Speed / 2;
        var figure = Pictures.Sheet();
        figure.AddPlot(Panel(sheet, c => c.Motion.Points.Lift.Select(l => lift.FromSi(Math.Max(0, l - c.Motion.Lash))), $"lift at the valve, {lift.Symbol}"));
        figure.AddPlot(Panel(sheet, c => c.Motion.Points.Curvature.Select(a => a * turning * turning), "acceleration at the rev limit, m/s²"));
        figure.GetPlot(0).Title("Cams");
        figure.GetPlot(1).XLabel("crank angle after firing TDC, °");
        Pictures.Save(figure, file);
    }

    private static Plot Panel(CamSheet sheet, Func<CamFigures, IEnumerable<double>> of, string label)
    {
        var plot = new Plot();
        for (var i = 0; i < sheet.Cams.Count; i++)
        {
            var cam = sheet.Cams[i];
            var line = plot.Add.ScatterLine(cam.Motion.CrankDegrees, of(cam).ToArray());
            line.LegendText = cam.Index;
            line.LineWidth = 2;
            line.LinePattern = Patterns[i % Patterns.Length];
        }

        foreach (var (angle, words) in new[] { (180.0, "BDC"), (360.0, "overlap TDC"), (540.0, "BDC") })
        {
            var mark = plot.Add.VerticalLine(angle, 1, Colors.Black, LinePattern.Dotted);
            mark.Text = words;
            mark.LabelOppositeAxis = true;
            mark.LabelBackgroundColor = Colors.White;
            mark.LabelFontColor = Colors.Black;
        }

        plot.YLabel(label);
        plot.Axes.Bottom.TickGenerator = new ScottPlot.TickGenerators.NumericFixedInterval(90);
        plot.Axes.Top.MinimumSize = 24;
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(96, 150, 56, 44));
        return plot;
    }
}
