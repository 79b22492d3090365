using Gudgeon.Book.Build;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Drive;

/// <summary>gudgeon drive belt: ratio, course, tension and pull of the belt.</summary>
internal sealed class BeltCommand : DriveCommand<BeltSheet>
{
    protected override string Remark => BeltSheet.Remark;

    protected override BeltSheet Work(Snapshot now, DutyDesk desk) => BeltSheet.Of(now, desk);

    protected override (IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows) Table(BeltSheet sheet, bool imperial) => (BeltCells.Headings, [.. sheet.Rows.Select(new BeltCells(imperial).Of)]);

    protected override object Rows(BeltSheet sheet) => sheet.Rows;

    protected override IEnumerable<Plot> Panels(BeltSheet sheet, bool imperial)
    {
        if (sheet.Pulleys.Count > 0)
        {
            yield return Layout(sheet, Figures.Shown(Dimension.Length, "mm", imperial));
        }

        if (sheet.Rows.Count > 0)
        {
            yield return Pulls(sheet, Figures.Shown(Dimension.Force, "N", imperial));
        }
    }

    private static Plot Layout(BeltSheet sheet, Unit unit)
    {
        var plot = new Plot();
        foreach (var pulley in sheet.Pulleys)
        {
            var circle = plot.Add.Circle(unit.FromSi(pulley.X), -unit.FromSi(pulley.Y), unit.FromSi(Math.Abs(pulley.Radius)));
            (circle.LineColor, circle.LineWidth, circle.FillColor) = (Colors.Black, 2, Colors.LightGray.WithAlpha(0.5));
        }

        foreach (var span in sheet.Spans)
        {
            var line = plot.Add.Line(unit.FromSi(span.FromX), -unit.FromSi(span.FromY), unit.FromSi(span.ToX), -unit.FromSi(span.ToY));
            (line.LineColor, line.LineWidth) = (Colors.SteelBlue, 4);
        }

        foreach (var (pulley, name) in sheet.Pulleys.Zip(BeltNames.Of(sheet.Pulleys.Count)))
        {
            var words = plot.Add.Text(name, unit.FromSi(pulley.X), -unit.FromSi(pulley.Y));
            (words.LabelFontSize, words.LabelAlignment) = (14, Alignment.MiddleCenter);
        }

        plot.Axes.SquareUnits();
        plot.Title("Belt to scale: the slack span, above, leaves the crank, which turns clockwise in this picture");
        plot.XLabel($"along the line of centres, {unit.Symbol}");
        return plot;
    }

    private static Plot Pulls(BeltSheet sheet, Unit unit)
    {
        var plot = new Plot();
        double[] rpm = [.. sheet.Rows.Select(r => r.Speed * 30 / Math.PI)];
        Line(plot, rpm, [.. sheet.Rows.Select(r => unit.FromSi(r.Pull))], "pull", 0);
        if (sheet.Rows.All(r => r.Carries is not null))
        {
            Line(plot, rpm, [.. sheet.Rows.Select(r => unit.FromSi(r.Carries!.Value))], "pull that the belt carries", 1);
        }

        plot.XLabel("crank speed, rpm");
        plot.YLabel($"pull, {unit.Symbol}");
        plot.Title("Steady pull over the speeds");
        plot.ShowLegend(Edge.Right);
        return plot;
    }

    private static void Line(Plot plot, double[] x, double[] y, string name, int shape)
    {
        var line = plot.Add.Scatter(x, y);
        (line.LegendText, line.LineWidth, line.MarkerShape) = (name, 2, Pictures.Shapes[shape]);
    }
}
