using System.Globalization;
using Gudgeon.Book.Sweeps;
using ScottPlot;

namespace Gudgeon.Cli;

/// <summary>A sweep as a picture: curves told apart by their marks, or a contour whose labelled lines read without colour.</summary>
internal static class SweepPictures
{
    /// <summary>Values from which on a contour is drawn instead of curves.</summary>
    private const int Many = 5;

    /// <summary>Room about a contour, for marks at its corners, as a share of it.</summary>
    private const double Room = 0.02;

    public static void Draw(SweepSheet sheet, string file)
    {
        var plot = new Plot();
        var sweep = sheet.Sweep;
        if (sweep.Varied.Count == 2)
        {
            Contour(plot, sheet, (column, row) => new(sheet.Shown(0, sweep.Varied[0].Values[column]), sheet.Shown(1, sweep.Varied[1].Values[row]), sheet.Merit(sweep.Cell(column, row))), sweep.Varied[0].Count, sweep.Varied[1].Count);
            Star(plot, sheet);
            plot.ShowLegend(Edge.Bottom);
            plot.XLabel(sheet.Axis(0));
            plot.YLabel(sheet.Axis(1));
        }
        else if (sweep.Speeds.Count > 1 && sweep.Varied[0].Count >= Many)
        {
            Contour(plot, sheet, (column, row) => new(Rpm(sweep.Speeds[column]), sheet.Shown(0, sweep.Varied[0].Values[row]), sweep.Cell(row).At(column, sheet.Figure)), sweep.Speeds.Count, sweep.Varied[0].Count);
            if (!sweep.Cells.All(c => c.Settled))
            {
                plot.ShowLegend(Edge.Bottom);
            }

            plot.XLabel("engine speed, rpm");
            plot.YLabel(sheet.Axis(0));
        }
        else
        {
            Curves(plot, sheet);
        }

        plot.Title(sheet.Title);
        Pictures.Save(plot, file);
    }

    private static void Curves(Plot plot, SweepSheet sheet)
    {
        var sweep = sheet.Sweep;
        if (sweep.Speeds.Count > 1)
        {
            for (var i = 0; i < sweep.Cells.Count; i++)
            {
                Curve(plot, sheet, [.. sweep.Speeds.Select((s, k) => (Rpm(s), sweep.Cell(i).At(k, sheet.Figure)))], i).LegendText = $"{sweep.Varied[0].Address.Path} {sweep.Cell(i).Words(sheet.Imperial)}";
            }

            plot.ShowLegend(Alignment.LowerRight);
        }
        else
        {
            Curve(plot, sheet, [.. sweep.Cells.Select(c => (sheet.Shown(0, c.Values[0]), c.At(0, sheet.Figure)))], 0);
        }

        plot.XLabel(sweep.Speeds.Count > 1 ? "engine speed, rpm" : sheet.Axis(0));
        plot.YLabel(sheet.Figure.Label(sheet.Imperial));
    }

    private static ScottPlot.Plottables.Scatter Curve(Plot plot, SweepSheet sheet, IReadOnlyList<(double X, double Si)> points, int which)
    {
        var unit = sheet.Figure.Shown(sheet.Imperial);
        var known = points.Where(p => double.IsFinite(p.Si)).ToList();
        var line = plot.Add.Scatter(known.ConvertAll(p => p.X), known.ConvertAll(p => unit.FromSi(p.Si)));
        line.MarkerShape = Pictures.Shapes[which % Pictures.Shapes.Length];
        line.MarkerSize = 8;
        line.LineWidth = 2;
        return line;
    }

    /// <summary>Shades from white to one tone with lines over them at round figures; what did not settle is crossed out.</summary>
    private static void Contour(Plot plot, SweepSheet sheet, Func<int, int, Coordinates3d> point, int columns, int rows)
    {
        var unit = sheet.Figure.Shown(sheet.Imperial);
        var grid = new Coordinates3d[rows, columns];
        var shades = new double[rows, columns];
        var unsettled = new List<Coordinates>();
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                var at = point(column, row);
                grid[row, column] = new(at.X, at.Y, unit.FromSi(at.Z));
                shades[rows - 1 - row, column] = grid[row, column].Z;
                if (double.IsNaN(at.Z))
                {
                    unsettled.Add(new(at.X, at.Y));
                }
            }
        }

        var (first, last) = (grid[0, 0], grid[rows - 1, columns - 1]);
        var heat = plot.Add.Heatmap(shades);
        heat.Position = new CoordinateRect(first.X, last.X, first.Y, last.Y);
        heat.Smooth = unsettled.Count == 0;
        heat.Colormap = new ScottPlot.Colormaps.CustomInterpolated([Colors.White, new Color(0x8f, 0xb4, 0xd0)]);
        plot.Add.ColorBar(heat, Edge.Right).Label = sheet.Figure.Label(sheet.Imperial);
        LinesOver(plot, grid);
        Cross(plot, unsettled);
        var (margin, rise) = ((last.X - first.X) * Room, (last.Y - first.Y) * Room);
        plot.Axes.SetLimits(first.X - margin, last.X + margin, first.Y - rise, last.Y + rise);
    }

    private static void LinesOver(Plot plot, Coordinates3d[,] grid)
    {
        var known = grid.Cast<Coordinates3d>().Select(p => p.Z).Where(double.IsFinite).ToList();
        foreach (var level in LevelLines.Levels(known.Min(), known.Max()))
        {
            var stretches = LevelLines.Of(grid, level).ToList();
            if (stretches.Count > 0)
            {
                LineOver(plot, stretches, Book.Values.Figures.Number(level));
            }
        }
    }

    private static void LineOver(Plot plot, List<(Coordinates From, Coordinates To)> stretches, string words)
    {
        var line = plot.Add.ScatterLine(stretches.SelectMany(s => new[] { s.From, s.To, Coordinates.NaN }).ToArray(), Colors.Black);
        line.LineWidth = 1.5f;
        var middle = stretches[stretches.Count / 2];
        var label = plot.Add.Text(words, (middle.From.X + middle.To.X) / 2, (middle.From.Y + middle.To.Y) / 2);
        label.LabelFontSize = 14;
        label.LabelBold = true;
        label.LabelFontColor = Colors.Black;
        label.LabelBackgroundColor = Colors.White;
        label.LabelPadding = 2;
        label.LabelAlignment = Alignment.MiddleCenter;
    }

    private static void Cross(Plot plot, List<Coordinates> unsettled)
    {
        if (unsettled.Count > 0)
        {
            var marks = plot.Add.ScatterPoints(unsettled.ToArray());
            marks.MarkerShape = MarkerShape.Eks;
            marks.MarkerSize = 12;
            marks.Color = Colors.Black;
            marks.LegendText = "did not settle or cannot be run";
        }
    }

    private static void Star(Plot plot, SweepSheet sheet)
    {
        if (sheet.Best is { } best)
        {
            var mark = plot.Add.Marker(sheet.Shown(0, best.Values[0]), sheet.Shown(1, best.Values[1]), MarkerShape.FilledDiamond, 16, Colors.Black);
            mark.LegendText = string.Create(CultureInfo.InvariantCulture, $"best: {sheet.Figure.Print(sheet.Merit(best), sheet.Imperial)} with {best.Words(sheet.Imperial)}");
        }
    }

    private static double Rpm(double speed) => speed * 30 / Math.PI;
}
