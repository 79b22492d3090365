using Gudgeon.Book.Bottom;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;
using Gudgeon.Simulation.Crank;
using ScottPlot;

namespace Gudgeon.Cli.Bottom;

/// <summary>Balance on paper: the rose of each shaft in time and a tooth out, and the whole force through a turn.</summary>
internal static class BalancePicture
{
    private const int Most = 3;

    public static void Draw(BalanceSheet sheet, string file, bool imperial)
    {
        if (sheet.Shaking is not { } shaking)
        {
            throw new BadInputException($"the shaking is not known, so there is none to draw: {string.Join(" ", sheet.Missing)}");
        }

        var force = Figures.Shown(Dimension.Force, "N", imperial);
        var speed = Figures.Rpm(shaking.Speed);
        List<Plot> above = [.. BalanceRoses.Of(sheet, force).Take(Most).Select(r => PolarPanel.Of(r.Curves, $"{r.Name} at {speed}: force left at its order", $"{force.Symbol}; round: crank angle, TDC above"))];
        var whole = Over(shaking, force, $"Whole force through a turn at {speed}");
        var picture = Pictures.Sheet();
        var rows = above.Count > 0 ? 2 : 1;
        var grid = new ScottPlot.MultiplotLayouts.CustomGrid();
        for (var i = 0; i < above.Count; i++)
        {
            picture.AddPlot(above[i]);
            grid.Set(above[i], new GridCell(0, i, rows, above.Count));
        }

        picture.AddPlot(whole);
        grid.Set(whole, new GridCell(rows - 1, 0, rows, 1));
        picture.Layout = grid;
        Pictures.Save(picture, file);
    }

    private static Plot Over(Shaking shaking, Unit force, string title)
    {
        var plot = new Plot();
        foreach (var (curve, pattern) in BalanceRoses.Over(shaking, force).Zip([LinePattern.Solid, LinePattern.Dashed]))
        {
            var line = plot.Add.ScatterLine(curve.X, curve.Y);
            (line.LegendText, line.LineWidth, line.LinePattern) = (curve.Name, 2, pattern);
        }

        plot.Title(title);
        plot.XLabel("crank angle after TDC of cylinder 1, °");
        plot.YLabel($"force, {force.Symbol}");
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(90, 190, 52, 44));
        return plot;
    }
}
