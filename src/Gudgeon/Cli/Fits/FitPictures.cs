using Gudgeon.Book.Fits;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Fits;

/// <summary>Tolerance zones and measured parts on paper, and the temperature window of a tight fit.</summary>
internal static class FitPictures
{
    /// <summary>Fits of a book side by side, and below the window of each that is tight.</summary>
    public static void Draw(FitsSheet sheet, string file, bool imperial)
    {
        var rows = sheet.Rows.Where(r => SizeZone.Of(r).Any(z => z.Known)).ToList();
        if (rows.Count == 0)
        {
            throw new BadInputException("--svg: no fit has a class or a measurement, so there is none to draw");
        }

        var panels = Pictures.Sheet();
        panels.AddPlot(Zones([.. rows.SelectMany(r => SizeZone.Of(r).Select(z => z with { Name = $"{r.Index}\n{z.Name}" }))], "Hole and shaft from the basic size", imperial));
        var tight = rows.Where(r => r.Window.Count > 0 && r.Greatest > 0).ToList();
        if (tight.Count > 0)
        {
            panels.AddPlot(Windows(tight, imperial));
        }

        Pictures.Save(panels, file);
    }

    /// <summary>One hole and shaft by their classes.</summary>
    public static void Draw(LimitsOfSize limits, string file, bool imperial) => Pictures.Save(Zones(limits.Zones, $"{Figures.Print(limits.Size, Dimension.Length, "mm", 5, imperial)} {limits.HoleClass}/{limits.ShaftClass}: {limits.Kind}", imperial), file);

    private static Plot Zones(IReadOnlyList<SizeZone> zones, string title, bool imperial)
    {
        var unit = Unit(imperial);
        var plot = new Plot();
        for (var i = 0; i < zones.Count; i++)
        {
            var zone = zones[i];
            if (zone is { Low: { } low, High: { } high })
            {
                var box = plot.Add.Rectangle(i - 0.32, i + 0.32, unit.FromSi(low), unit.FromSi(high));
                (box.FillColor, box.LineColor, box.LineWidth) = (i % 2 == 0 ? Colors.LightGray : Colors.SteelBlue.WithAlpha(0.45), Colors.Black, 1);
            }

            if (zone.Found is { } found)
            {
                var band = plot.Add.ErrorBar([i], [unit.FromSi(found)], [unit.FromSi(zone.Band ?? 0)]);
                (band.Color, band.LineWidth) = (Colors.Black, 2);
                plot.Add.Marker(i, unit.FromSi(found), MarkerShape.FilledDiamond, 11, Colors.Black);
            }
        }

        plot.Add.HorizontalLine(0, 1.5f, Colors.Black);
        plot.Axes.Bottom.SetTicks([.. zones.Select((_, i) => (double)i)], [.. zones.Select(z => z.Name)]);
        plot.Axes.Bottom.TickLabelStyle.FontSize = 11;
        plot.Axes.SetLimitsX(-0.7, zones.Count - 0.3);
        plot.YLabel($"from the basic size, {unit.Symbol}");
        plot.Title(title);
        return plot;
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
