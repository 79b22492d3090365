using Gudgeon.Book.Fits;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Fits;

/// <summary>Tolerance zones and measured parts on paper, and the temperature window of a tight fit.</summary>
internal static class FitPictures
{
    /// <summary>Fits in one row of a picture, so that their names have room.</summary>
    private const int Abreast = 8;

    /// <summary>Room between one fit and the next.</summary>
    private const double Gap = 0.7;

    /// <summary>Fits of a book side by side, and below the window of each that is tight.</summary>
    public static void Draw(FitsSheet sheet, string file, bool imperial)
    {
        var rows = sheet.Rows.Where(r => SizeZone.Of(r).Any(z => z.Known)).ToList();
        if (rows.Count == 0)
        {
            throw new BadInputException("--svg: no fit has a class or a measurement, so there is none to draw");
        }

        var panels = Pictures.Sheet();
        foreach (var some in rows.Chunk(Abreast))
        {
            panels.AddPlot(Zones([.. some.Select(r => (r.Index, SizeZone.Of(r)))], "Hole and shaft from the basic size", imperial));
        }

        var tight = rows.Where(r => r.Window.Count > 0 && r.Greatest > 0).ToList();
        if (tight.Count > 0)
        {
            panels.AddPlot(Windows(tight, imperial));
        }

        Pictures.Save(panels, file);
    }

    /// <summary>One hole and shaft by their classes.</summary>
    public static void Draw(LimitsOfSize limits, string file, bool imperial) => Pictures.Save(Zones([("", limits.Zones)], $"{Figures.Print(limits.Size, Dimension.Length, "mm", 5, imperial)} {limits.HoleClass}/{limits.ShaftClass}: {limits.Kind}", imperial), file);

    private static Plot Zones(IReadOnlyList<(string Fit, IReadOnlyList<SizeZone> Zones)> fits, string title, bool imperial)
    {
        var unit = Unit(imperial);
        var plot = new Plot();
        List<(double Place, string Words)> ticks = [];
        var x = -1.0;
        foreach (var (fit, zones) in fits)
        {
            var first = x + 1;
            foreach (var zone in zones)
            {
                x += zone.BuildUp is null ? 1 : 2;
                Part(plot, zone, x, unit);
                ticks.Add((x, InLines(zone.Name)));
                if (zone is { BuildUp: { } grown, Middle: { } end })
                {
                    BuildUp(plot, x - 1, unit.FromSi(end - grown), unit.FromSi(end), unit);
                }
            }

            ticks.Add(((first + x) / 2, $"\n\n\n{fit}"));
            x += Gap;
        }

        plot.Add.HorizontalLine(0, 1.5f, Colors.Black);
        plot.Axes.Bottom.SetTicks([.. ticks.Select(t => t.Place)], [.. ticks.Select(t => t.Words)]);
        plot.Axes.Bottom.TickLabelStyle.FontSize = 11;
        plot.Axes.SetLimitsX(-0.7, x - Gap + 0.7);
        plot.YLabel($"from the basic size, {unit.Symbol}");
        plot.Title(title);
        return plot;
    }

    /// <summary>"hole P7, coated" in three short lines, so that neighbours do not run into each other.</summary>
    private static string InLines(string name) => name.Replace(", ", "\n", StringComparison.Ordinal).Replace(' ', '\n');

    /// <summary>The box of a part and where it is; hollow where its coating is still to come.</summary>
    private static void Part(Plot plot, SizeZone zone, double x, Unit unit)
    {
        if (zone is { Low: { } low, High: { } high })
        {
            var box = plot.Add.Rectangle(x - 0.32, x + 0.32, unit.FromSi(low), unit.FromSi(high));
            (box.LineColor, box.LineWidth) = (Colors.Black, 1);
            box.FillColor = zone.Bare ? Colors.Transparent : zone.OfShaft ? Colors.SteelBlue.WithAlpha(0.45) : Colors.LightGray;
        }

        if (zone.Found is { } found)
        {
            var band = plot.Add.ErrorBar([x], [unit.FromSi(found)], [unit.FromSi(zone.Band ?? 0)]);
            (band.Color, band.LineWidth) = (Colors.Black, 2);
            plot.Add.Marker(x, unit.FromSi(found), zone.Bare ? MarkerShape.OpenDiamond : MarkerShape.FilledDiamond, 11, Colors.Black);
        }
    }

    /// <summary>An arrow from the bare size to the coated one, with what the coating makes of the diameter in words.</summary>
    private static void BuildUp(Plot plot, double x, double from, double to, Unit unit)
    {
        var arrow = plot.Add.Arrow(x, from, x, to);
        (arrow.ArrowFillColor, arrow.ArrowLineColor, arrow.ArrowWidth, arrow.ArrowheadWidth) = (Colors.Black, Colors.Black, 2, 10);
        var words = plot.Add.Text($"coating\n{(to > from ? "+" : "−")}{Figures.Number(Math.Abs(to - from), 3)} {unit.Symbol}", x, Math.Max(from, to));
        (words.LabelFontSize, words.LabelAlignment, words.OffsetY) = (12, Alignment.LowerCenter, -4);
    }

    private static Plot Windows(List<FitRow> rows, bool imperial)
    {
        var (unit, degrees) = (Unit(imperial), Units.Declared(Dimension.Temperature, imperial ? "°F" : "°C"));
        var plot = new Plot();
        for (var i = 0; i < rows.Count; i++)
        {
            var line = plot.Add.Scatter(rows[i].Window.Select(w => degrees.FromSi(w.Temperature)).ToArray(), rows[i].Window.Select(w => unit.FromSi(w.Interference)).ToArray());
            (line.LegendText, line.LineWidth, line.MarkerShape) = (rows[i].Index, 2, Pictures.Shapes[i % Pictures.Shapes.Length]);
        }

        plot.Add.HorizontalLine(0, 1.5f, Colors.Black);
        plot.XLabel($"hub and shaft at, {degrees.Symbol}");
        plot.YLabel($"interference, {unit.Symbol}");
        plot.ShowLegend(Edge.Right);
        plot.Title("Interference over temperature: below the line the fit is loose");
        return plot;
    }

    private static Unit Unit(bool imperial) => Units.Declared(Dimension.Length, imperial ? "in" : "µm");
}
