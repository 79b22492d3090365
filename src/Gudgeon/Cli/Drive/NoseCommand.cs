using Gudgeon.Book.Build;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Drive;

/// <summary>gudgeon drive nose: the spigot, its seat and its outboard bearing.</summary>
internal sealed class NoseCommand : DriveCommand<NoseSheet>
{
    protected override string Remark => NoseSheet.Remark;

    protected override NoseSheet Work(Snapshot now, DutyDesk desk) => NoseSheet.Of(now, desk);

    protected override (IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows) Table(NoseSheet sheet, bool imperial) => (NoseCells.Headings, [.. sheet.Loads.Select(new NoseCells(imperial).Of)]);

    protected override object Rows(NoseSheet sheet) => new { sheet.Loads, moments = sheet.Moments.Select(m => new { m.Place, m.Moment }) };

    protected override IEnumerable<Plot> Panels(NoseSheet sheet, bool imperial)
    {
        if (sheet.Loads.Count == 0)
        {
            yield break;
        }

        var length = Figures.Shown(Dimension.Length, "mm", imperial);
        yield return Loads(sheet, length, Figures.Shown(Dimension.Force, "N", imperial));
        yield return Moments(sheet, length, Figures.Shown(Dimension.Torque, "N·m", imperial));
    }

    private static Plot Loads(NoseSheet sheet, Unit length, Unit force)
    {
        var plot = new Plot();
        foreach (var load in sheet.Loads)
        {
            var (x, y) = (length.FromSi(load.Place), force.FromSi(load.Load));
            var stem = plot.Add.Line(x, 0, x, y);
            (stem.LineWidth, stem.LineColor) = (5, Colors.SteelBlue);
            plot.Add.Marker(x, y, load.Load < 0 ? MarkerShape.FilledTriangleDown : MarkerShape.FilledTriangleUp, 14, Colors.SteelBlue);
            var words = plot.Add.Text($"{load.Name} {Figures.Print(load.Load, Dimension.Force, "N", 3, force.Symbol != "N")}", x, y);
            (words.LabelFontSize, words.LabelAlignment, words.OffsetY) = (13, load.Load < 0 ? Alignment.UpperCenter : Alignment.LowerCenter, load.Load < 0 ? 10 : -10);
        }

        plot.Add.HorizontalLine(0, 2, Colors.Black);
        plot.Axes.Margins(0.14, 0.22);
        plot.YLabel($"against the pull, {force.Symbol}");
        plot.Title("Loads on the nose, the bore of the cover true");
        return plot;
    }

    private static Plot Moments(NoseSheet sheet, Unit length, Unit moment)
    {
        var plot = new Plot();
        var line = plot.Add.ScatterLine(sheet.Moments.Select(m => length.FromSi(m.Place)).ToArray(), sheet.Moments.Select(m => moment.FromSi(m.Moment)).ToArray());
        (line.LineWidth, line.FillY, line.FillYColor) = (2, true, Colors.SteelBlue.WithAlpha(0.2));
        foreach (var (name, place) in sheet.Sections)
        {
            plot.Add.VerticalLine(length.FromSi(place), 1, Colors.Black, LinePattern.Dotted);
            var words = plot.Add.Text(name, length.FromSi(place), 0);
            (words.LabelFontSize, words.LabelAlignment) = (13, Alignment.LowerLeft);
        }

        plot.Axes.Margins(0.14, 0.12);
        plot.XLabel($"from the near main bearing, {length.Symbol}");
        plot.YLabel($"bending moment, {moment.Symbol}");
        plot.Title("Greatest bending moment, the offset the worst way round");
        return plot;
    }
}
