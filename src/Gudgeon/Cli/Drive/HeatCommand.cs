using Gudgeon.Book.Build;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Drive;

/// <summary>gudgeon drive heat: oil tank and charge cooler.</summary>
internal sealed class HeatCommand : DriveCommand<HeatSheet>
{
    protected override string Remark => HeatSheet.Remark;

    protected override HeatSheet Work(Snapshot now, DutyDesk desk) => HeatSheet.Of(now, desk);

    protected override (IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows) Table(HeatSheet sheet, bool imperial) => (CoolerCells.Headings, [.. sheet.Rows.Select(new CoolerCells(imperial).Of)]);

    protected override object Rows(HeatSheet sheet) => new { oil = sheet.Oil.Select(o => new { o.AirSpeed, o.Temperature }), cooler = sheet.Rows };

    protected override IEnumerable<Plot> Panels(HeatSheet sheet, bool imperial)
    {
        var degrees = Figures.Shown(Dimension.Temperature, "°C", imperial);
        if (sheet.Oil.Count > 0)
        {
            var speed = Figures.Shown(Dimension.Speed, "m/s", imperial);
            var plot = new Plot();
            plot.Add.ScatterLine(sheet.Oil.Select(o => speed.FromSi(o.AirSpeed)).ToArray(), sheet.Oil.Select(o => degrees.FromSi(o.Temperature)).ToArray()).LegendText = "oil after a run";
            plot.Add.HorizontalLine(degrees.FromSi(sheet.Limit), 2, Colors.Black, LinePattern.Dashed).LegendText = "allowed";
            plot.XLabel($"air past the tank, {speed.Symbol}");
            plot.YLabel($"oil, {degrees.Symbol}");
            plot.Title("Oil tank in place of a cooler");
            plot.ShowLegend(Edge.Right);
            yield return plot;
        }

        if (sheet.Rows.Count > 0)
        {
            double[] rpm = [.. sheet.Rows.Select(r => r.Speed * 30 / Math.PI)];
            var plot = new Plot();
            plot.Add.Scatter(rpm, sheet.Rows.Select(r => degrees.FromSi(r.Delivery)).ToArray()).LegendText = "from the blower";
            var behind = plot.Add.Scatter(rpm, sheet.Rows.Select(r => degrees.FromSi(r.Outlet)).ToArray());
            (behind.LegendText, behind.MarkerShape) = ("behind the cooler", MarkerShape.OpenSquare);
            plot.XLabel("crank speed, rpm");
            plot.YLabel($"charge, {degrees.Symbol}");
            plot.Title("Charge before and behind its cooler");
            plot.ShowLegend(Edge.Right);
            yield return plot;
        }
    }
}
