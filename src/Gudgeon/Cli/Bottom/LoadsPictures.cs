using Gudgeon.Book.Bottom;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;
using Gudgeon.Simulation.Crank;
using ScottPlot;

namespace Gudgeon.Cli.Bottom;

/// <summary>Loads of the bottom end on paper: polar loads of the big end and the mains, and the forces over the cycle.</summary>
internal static class LoadsPictures
{
    /// <summary>Draws the sheet's cycle.</summary>
    public static void Draw(LoadsSheet sheet, string file, bool imperial)
    {
        var loads = sheet.Shown!;
        var force = Figures.Shown(Dimension.Force, "kN", imperial);
        var first = loads.Throws[0];
        List<Plot> plots =
        [
            PolarPanel.Of([Curve("on the shells, up the rod", LoadsSheet.OnShell(first), force), Curve("on the pin, up along the throw", LoadsSheet.OnPin(first), force)], $"Big end 1 at {sheet.At}", force.Symbol),
        ];
        if (loads.Mains.Count > 0 && !double.IsNaN(loads.Line.BobWeight))
        {
            plots.Add(PolarPanel.Of([.. loads.Mains.Select((m, i) => Curve(sheet.MainNames[i], m, force))], "Main bearings, up along the first cylinder", force.Symbol));
        }

        plots.Add(Over(first, force));
        var picture = Pictures.Sheet(plots);
        var grid = new ScottPlot.MultiplotLayouts.CustomGrid();
        for (var i = 0; i < plots.Count - 1; i++)
        {
            grid.Set(plots[i], new GridCell(0, i, 2, plots.Count - 1));
        }

        grid.Set(plots[^1], new GridCell(1, 0, 2, 1));
        picture.Layout = grid;
        Pictures.Save(picture, file);
    }

    private static PolarCurve Curve(string name, LoadCourse course, Unit force) => new(name, Array.ConvertAll(course.X, force.FromSi), Array.ConvertAll(course.Y, force.FromSi));

    private static Plot Over(ThrowLoads cylinder, Unit force)
    {
        var plot = new Plot();
        var order = LoadsSheet.AfterFiring(cylinder);
        void Line(string name, double[] newtons, LinePattern pattern)
        {
            var line = plot.Add.ScatterLine(order.Select(p => p.Degrees).ToArray(), order.Select(p => force.FromSi(newtons[p.At])).ToArray());
            (line.LegendText, line.LineWidth, line.LinePattern) = (name, 2, pattern);
        }

        Line("gas", cylinder.Gas, LinePattern.Dashed);
        Line("inertia", cylinder.Inertia, LinePattern.Dotted);
        Line("rod, push positive", cylinder.Rod, LinePattern.Solid);
        Line("side thrust", cylinder.Side, LinePattern.DenselyDashed);
        plot.XLabel("crank angle after firing TDC, °");
        plot.YLabel($"force, {force.Symbol}");
        plot.ShowLegend(Alignment.UpperRight);
        return plot;
    }
}
