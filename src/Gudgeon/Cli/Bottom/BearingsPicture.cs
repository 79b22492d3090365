using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;
using ScottPlot;

namespace Gudgeon.Cli.Bottom;

/// <summary>The bearings on paper: loads on the shells, orbits of the journals, clearances.</summary>
internal static class BearingsPicture
{
    /// <summary>The shell about an orbit: the whole clearance away from its middle.</summary>
    public static readonly PolarCurve Shell = new("shell", [.. Enumerable.Range(0, 72).Select(i => Math.Cos(i * Math.PI / 36))], [.. Enumerable.Range(0, 72).Select(i => Math.Sin(i * Math.PI / 36))]);

    public static void Draw(BearingsSheet sheet, string file, bool imperial)
    {
        var picture = Pictures.Sheet();
        var grid = new ScottPlot.MultiplotLayouts.CustomGrid();
        var columns = Math.Max(1, sheet.Courses.Count);
        var rows = sheet.Courses.Count == 0 ? 1 : 3;
        for (var i = 0; i < sheet.Courses.Count; i++)
        {
            Put(Load(sheet.Courses[i], imperial), 0, i);
            Put(Orbit(sheet.Courses[i]), 1, i);
        }

        var clearances = Clearances(sheet, imperial);
        picture.AddPlot(clearances);
        grid.Set(clearances, new GridCell(rows - 1, 0, rows, 1));
        picture.Layout = grid;
        Pictures.Save(picture, file);

        void Put(Plot plot, int row, int column)
        {
            picture.AddPlot(plot);
            grid.Set(plot, new GridCell(row, column, rows, columns));
        }
    }

    private static Plot Load(BearingCourse course, bool imperial)
    {
        var force = Figures.Shown(Dimension.Force, "kN", imperial);
        return PolarPanel.Of([new PolarCurve(course.Bearing, Array.ConvertAll(course.Load.X, force.FromSi), Array.ConvertAll(course.Load.Y, force.FromSi))], $"{course.Bearing}, load", force.Symbol, legend: false);
    }

    private static Plot Orbit(BearingCourse course) =>
        PolarPanel.Of([new PolarCurve(course.Bearing, course.OrbitX, course.OrbitY), Shell], "journal in its clearance", "share of the clearance", legend: false);

    /// <summary>What is allowed as a bar, what was measured as a point, what its stations say as a line.</summary>
    private static Plot Clearances(BearingsSheet sheet, bool imperial)
    {
        var unit = Figures.Shown(Dimension.Length, "mm", imperial);
        var rows = sheet.Rows.Reverse().ToList();
        var plot = new Plot();
        plot.Add.Bars(rows.Select((r, i) => (Row: r, At: i)).Where(r => r.Row is { Least: not null, Greatest: not null }).Select(r => new Bar
        {
            Position = r.At,
            ValueBase = unit.FromSi(r.Row.Least!.Value),
            Value = unit.FromSi(r.Row.Greatest!.Value),
            Orientation = Orientation.Horizontal,
            FillColor = Colors.LightGray,
        }).ToArray()).LegendText = "allowed, cold";
        for (var i = 0; i < rows.Count; i++)
        {
            if (rows[i] is { Tightest: { } tight, Loosest: { } loose })
            {
                var line = plot.Add.Line(unit.FromSi(tight), i, unit.FromSi(loose), i);
                (line.LineWidth, line.Color, line.LegendText) = (4, Colors.Black, "over its stations, cold");
            }
        }

        Points(r => r.Clearance, MarkerShape.FilledDiamond, "cold");
        Points(r => r.Hot, MarkerShape.OpenCircle, "running");
        plot.Axes.Left.SetTicks([.. rows.Select((_, i) => (double)i)], [.. rows.Select(r => r.Bearing)]);
        plot.Title(sheet.Speed is { } speed ? $"Diametral clearances; above: loads and orbits at {Engine.RevLimit.Print(speed)}" : "Diametral clearances");
        plot.XLabel($"diametral clearance, {unit.Symbol}");
        plot.Axes.AutoScale();
        plot.ShowLegend(Edge.Right);
        return plot;

        void Points(Func<BearingRow, double?> of, MarkerShape shape, string name)
        {
            var known = rows.Select((r, i) => (Si: of(r), At: (double)i)).Where(p => p.Si is { } si && !double.IsNaN(si)).ToList();
            if (known.Count > 0)
            {
                var points = plot.Add.ScatterPoints(known.ConvertAll(p => unit.FromSi(p.Si!.Value)), known.ConvertAll(p => p.At));
                (points.MarkerShape, points.MarkerSize, points.LegendText) = (shape, 10, name);
            }
        }
    }
}
