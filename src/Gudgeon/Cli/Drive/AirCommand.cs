using Gudgeon.Book.Build;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;
using ScottPlot;

namespace Gudgeon.Cli.Drive;

/// <summary>gudgeon drive air: filter, ducts and compressor map.</summary>
internal sealed class AirCommand : DriveCommand<AirSheet>
{
    protected override string Remark => AirSheet.Remark;

    protected override AirSheet Work(Snapshot now, DutyDesk desk) => AirSheet.Of(now, desk);

    protected override (IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows) Table(AirSheet sheet, bool imperial) => (AirCells.Headings(sheet), [.. sheet.Rows.Select(new AirCells(imperial).Of)]);

    protected override object Rows(AirSheet sheet) => new { sheet.Ducts, speeds = sheet.Rows };

    protected override IEnumerable<Plot> Panels(AirSheet sheet, bool imperial)
    {
        if (sheet.Duty is { } duty && BlowerDuty.Map(duty) is { } map)
        {
            yield return OnMap(map, BlowerDuty.Line(duty), Figures.Shown(Dimension.MassFlow, "g/s", imperial));
            yield return Margins(sheet);
        }
    }

    private static Plot OnMap(CompressorMap map, IReadOnlyList<MapSpot> spots, Unit flow)
    {
        var plot = new Plot();
        foreach (var line in map.Lines)
        {
            Faint(plot, [.. line.Points.Select(p => flow.FromSi(p.CorrectedFlow))], [.. line.Points.Select(p => p.PressureRatio)]);
            var words = plot.Add.Text(Figures.Print(line.CorrectedSpeed, Dimension.RotationalSpeed, "rpm"), flow.FromSi(line.Points[^1].CorrectedFlow), line.Points[^1].PressureRatio);
            (words.LabelFontSize, words.LabelAlignment, words.OffsetX, words.OffsetY) = (12, Alignment.UpperLeft, -4, 5);
        }

        Bound(plot, [.. map.Lines.Select(l => l.Points[0])], flow, "surge", LinePattern.Dashed);
        Bound(plot, [.. map.Lines.Select(l => l.Points[^1])], flow, "choke", LinePattern.Dotted);
        var run = plot.Add.Scatter(spots.Select(s => flow.FromSi(s.Flow)).ToArray(), spots.Select(s => s.Ratio).ToArray());
        (run.LegendText, run.LineWidth, run.MarkerShape, run.MarkerSize, run.Color) = ("the run", 3, MarkerShape.FilledCircle, 7, Colors.SteelBlue);
        foreach (var end in (MapSpot[])[spots[0], spots[^1]])
        {
            var words = plot.Add.Text(Figures.Print(end.EngineSpeed, Dimension.RotationalSpeed, "rpm", 4), flow.FromSi(end.Flow), end.Ratio);
            (words.LabelFontSize, words.LabelAlignment, words.OffsetX, words.OffsetY) = (13, Alignment.UpperLeft, 6, 4);
        }

        plot.Axes.Margins(0.1, 0.1);
        plot.Axes.SetLimitsX(0, 1.15 * flow.FromSi(map.Lines.Max(l => l.Points[^1].CorrectedFlow)));
        plot.XLabel($"flow at the map's reference conditions, {flow.Symbol}");
        plot.YLabel("pressure ratio");
        plot.Title("Compressor map with the run on it");
        plot.ShowLegend(Edge.Right);
        return plot;
    }

    private static Plot Margins(AirSheet sheet)
    {
        var plot = new Plot();
        Line(plot, sheet, r => r.SurgeMargin, "surge margin at its speed", 0);
        Line(plot, sheet, r => r.ChokeMargin, "choke margin", 1);
        Line(plot, sheet, r => 1 - r.SpeedShare, "speed left", 2);
        plot.Add.HorizontalLine(100 * sheet.Allowed.Surge, 2, Colors.Black, LinePattern.Dashed).LegendText = "surge margin wanted";
        plot.Add.HorizontalLine(100 * sheet.Allowed.Choke, 2, Colors.Black, LinePattern.Dotted).LegendText = "choke margin wanted";
        plot.XLabel("crank speed, rpm");
        plot.YLabel("left, %");
        plot.Title("Margins over the speeds");
        plot.ShowLegend(Edge.Right);
        return plot;
    }

    private static void Line(Plot plot, AirSheet sheet, Func<AirRow, double?> margin, string name, int shape)
    {
        var rows = sheet.Rows.Where(r => margin(r) is not null).ToList();
        if (rows.Count > 0)
        {
            var line = plot.Add.Scatter(rows.Select(r => r.Speed * 30 / Math.PI).ToArray(), rows.Select(r => 100 * margin(r)!.Value).ToArray());
            (line.LegendText, line.LineWidth, line.MarkerShape) = (name, 2, Pictures.Shapes[shape]);
        }
    }

    private static void Bound(Plot plot, IReadOnlyList<CompressorPoint> points, Unit flow, string name, LinePattern pattern)
    {
        var line = plot.Add.ScatterLine(points.Select(p => flow.FromSi(p.CorrectedFlow)).ToArray(), points.Select(p => p.PressureRatio).ToArray());
        (line.LegendText, line.LineWidth, line.LinePattern, line.Color) = (name, 2, pattern, Colors.Black);
    }

    private static void Faint(Plot plot, double[] x, double[] y)
    {
        var line = plot.Add.ScatterLine(x, y);
        (line.LineWidth, line.Color) = (1, Colors.Gray);
    }
}
