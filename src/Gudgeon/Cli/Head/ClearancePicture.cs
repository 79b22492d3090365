using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Head;

/// <summary>Valve to piston on paper: for each side the room as a band from cold down to running, over the lift, with the least room wanted.</summary>
internal static class ClearancePicture
{
    public static void Draw(ClearanceSheet sheet, string file, bool imperial)
    {
        var tightest = sheet.Tightest;
        var figure = Pictures.Sheet(tightest.Select(v => Panel(v, imperial)));
        figure.GetPlot(tightest.Count - 1).XLabel("crank angle after overlap TDC, °");
        Pictures.Save(figure, file);
    }

    private static Plot Panel(RoomFigures valve, bool imperial)
    {
        var unit = Figures.Shown(Dimension.Length, "mm", imperial);
        var angles = ClearanceSheet.Angles.Select(a => a * 180 / Math.PI).ToArray();
        double[] In(double[] lengths) => [.. lengths.Select(unit.FromSi)];
        string Print(double metres) => Figures.Print(metres, Dimension.Length, "mm", 3, imperial);
        var (cold, running) = (In(valve.Cold), In(valve.Running));
        var plot = new Plot();
        var band = plot.Add.FillY(angles, running, cold);
        band.FillColor = Colors.SteelBlue.WithAlpha(0.25);
        band.LineColor = Colors.Transparent;
        band.LegendText = "taken by tolerance, lash and stretch";
        Line(plot, angles, cold, LinePattern.Solid, "room, cold");
        Line(plot, angles, running, LinePattern.Dashed, "room, running");
        Line(plot, angles, In(valve.Lift), LinePattern.Dotted, "lift of the valve");
        plot.Add.HorizontalLine(unit.FromSi(valve.Wanted), 1.5f, Colors.Black, LinePattern.DenselyDashed).LegendText = $"wanted, cold: {Print(valve.Wanted)}";
        plot.Add.VerticalLine(0, 1, Colors.Black, LinePattern.Dotted);
        plot.Title($"{valve.Index}: {Print(valve.LeastCold.Room)} cold, {Print(valve.LeastRunning.Room)} running");
        plot.YLabel($"along the stem, {unit.Symbol}");
        plot.Axes.SetLimits(-60, 60, Math.Min(0, running.Min() * 1.1), unit.FromSi(12e-3));
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(76, 300, 56, 44));
        return plot;
    }

    private static void Line(Plot plot, double[] x, double[] y, LinePattern pattern, string name)
    {
        var line = plot.Add.ScatterLine(x, y);
        line.LegendText = name;
        line.LineWidth = 2;
        line.LinePattern = pattern;
    }
}
