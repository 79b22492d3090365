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
        var places = Places(zones);
        foreach (var (zone, x) in zones.Zip(places))
        {
            Part(plot, zone, x, unit);
            if (zone is { BuildUp: { } grown, Middle: { } end })
            {
                BuildUp(plot, x - 1, unit.FromSi(end - grown), unit.FromSi(end), unit);
            }
        }

        plot.Add.HorizontalLine(0, 1.5f, Colors.Black);
        plot.Axes.Bottom.SetTicks([.. places], [.. zones.Select(z => z.Name)]);
        plot.Axes.Bottom.TickLabelStyle.FontSize = 11;
        plot.Axes.SetLimitsX(-0.7, places[^1] + 0.7);
        plot.YLabel($"from the basic size, {unit.Symbol}");
        plot.Title(title);
        return plot;
    }

    /// <summary>Where the zones stand: side by side, with a place for the arrow between a bare part and the coated one.</summary>
    private static IReadOnlyList<double> Places(IReadOnlyList<SizeZone> zones)
    {
        var x = -1.0;
        return [.. zones.Select(z => x += z.BuildUp is null ? 1 : 2)];
    }

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
