using Gudgeon.Book.Bottom;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Bottom;

/// <summary>What is allowed at every bearing and what the chosen shells give, on paper.</summary>
internal static class ShellsPicture
{
    public static void Draw(ShellsSheet sheet, string file, bool imperial)
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
        for (var i = 0; i < rows.Count; i++)
        {
            if (rows[i] is { Tightest: { } tight, Loosest: { } loose, Clearance: { } clearance, Upper: { } upper, Lower: { } lower })
            {
                var line = plot.Add.Line(unit.FromSi(tight), i, unit.FromSi(loose), i);
                (line.LineWidth, line.Color) = (3, Colors.Black);
                plot.Add.Marker(unit.FromSi(clearance), i, MarkerShape.FilledDiamond, 11, Colors.Black);
                plot.Add.Text($"grades {Figures.Number(upper)} and {Figures.Number(lower)}", unit.FromSi(clearance), i + 0.22).LabelAlignment = Alignment.LowerCenter;
            }
        }

        plot.Axes.Left.SetTicks([.. rows.Select((_, i) => (double)i)], [.. rows.Select(r => r.Bearing)]);
        plot.XLabel($"diametral clearance, cold, {unit.Symbol}; diamond: middle of the grades, line: their tolerance, bar: allowed");
        plot.Title("Shells chosen");
        plot.Axes.AutoScale();
        plot.Axes.SetLimitsY(-0.8, rows.Count - 0.2);
        Pictures.Save(plot, file);
    }
}
