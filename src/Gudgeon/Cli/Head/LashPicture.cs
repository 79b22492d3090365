using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Head;

/// <summary>Lash of every valve before and after, and what is allowed, on paper.</summary>
internal static class LashPicture
{
    public static void Draw(LashSheet sheet, string file, bool imperial)
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
        }).ToArray()).LegendText = "allowed";
        Points(plot, rows, r => r.Lash, unit, MarkerShape.OpenCircle, "measured");
        Points(plot, rows, r => r.After, unit, MarkerShape.FilledDiamond, "with the shims of the table");
        plot.Axes.Left.SetTicks([.. rows.Select((_, i) => (double)i)], [.. rows.Select(r => r.Valve)]);
        plot.XLabel($"lash, cold, {unit.Symbol}");
        plot.Title("Valve lash");
        plot.Axes.AutoScale();
        plot.ShowLegend(Edge.Right);
        Pictures.Save(plot, file);
    }

    private static void Points(Plot plot, List<LashRow> rows, Func<LashRow, double?> lash, Unit unit, MarkerShape shape, string name)
    {
        var known = rows.Select((r, i) => (Lash: lash(r), At: (double)i)).Where(p => p.Lash is not null).ToList();
        if (known.Count > 0)
        {
            var points = plot.Add.ScatterPoints(known.ConvertAll(p => unit.FromSi(p.Lash!.Value)), known.ConvertAll(p => p.At));
            points.MarkerShape = shape;
            points.MarkerSize = 11;
            points.LegendText = name;
        }
    }
}
