using Gudgeon.Book.Duty;
using Gudgeon.Book.Limits;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Sprint;
using ScottPlot;

namespace Gudgeon.Cli;

/// <summary>Pictures on paper: SVG files.</summary>
internal static class Pictures
{
    private const int Width = 1000;
    private const int Height = 620;
    private const int Tall = 900;

    /// <summary>One shape for each line, so that colour is not needed to tell them apart.</summary>
    internal static readonly MarkerShape[] Shapes =
    [
        MarkerShape.FilledCircle, MarkerShape.OpenSquare, MarkerShape.FilledTriangleUp, MarkerShape.OpenDiamond,
        MarkerShape.Eks, MarkerShape.FilledTriangleDown, MarkerShape.OpenCircle, MarkerShape.Cross,
    ];

    /// <summary>Torque, power and boost over speed.</summary>
    public static void Run(IReadOnlyList<OperatingPoint> points, Depth depth, string file, bool imperial)
    {
        var settled = points.Where(p => p.Converged).ToList();
        var rpm = settled.ConvertAll(p => p.Speed * 30 / Math.PI);
        var plot = new Plot();
        Line(plot, rpm, settled, f => f.Torque, Dimension.Torque, imperial ? "lbf·ft" : "N·m", "torque", MarkerShape.FilledCircle);
        Line(plot, rpm, settled, f => f.Power, Dimension.Power, imperial ? "hp" : "kW", "power", MarkerShape.FilledSquare);
        if (settled.Exists(p => p.Figures!.Blower is not null))
        {
            var boost = Line(plot, rpm, settled, f => f.Boost, Dimension.Pressure, imperial ? "psi" : "bar", "boost (right)", MarkerShape.OpenTriangleUp);
            boost.Axes.YAxis = plot.Axes.Right;
            plot.Axes.Right.Label.Text = imperial ? "boost, psi" : "boost, bar";
        }

        plot.XLabel("engine speed, rpm");
        plot.YLabel(imperial ? "torque, lbf·ft; power, hp" : "torque, N·m; power, kW");
        plot.Title($"Full load, {depth.From()}");
        plot.ShowLegend(Alignment.UpperLeft);
        Save(plot, file);
    }

    /// <summary>Speed over distance, with the limit that acts.</summary>
    public static void Sprint(SprintResult result, string file, bool imperial)
    {
        var unit = imperial ? "mph" : "km/h";
        var speed = Units.Declared(Dimension.Speed, unit);
        var plot = new Plot();
        foreach (var limit in result.Trace.GroupBy(p => p.Limit))
        {
            var line = plot.Add.ScatterPoints(limit.Select(p => p.Distance).ToArray(), limit.Select(p => speed.FromSi(p.Speed)).ToArray());
            line.LegendText = Gudgeon.Book.Fields.EnumWords.Of(limit.Key.ToString());
            line.MarkerSize = 4;
            line.MarkerShape = Shapes[(int)limit.Key % Shapes.Length];
        }

        plot.XLabel("distance from the stage, m");
        plot.YLabel($"speed, {unit}");
        plot.Title("Standing start: speed and what holds it back");
        plot.ShowLegend(Alignment.LowerRight);
        Save(plot, file);
    }

    /// <summary>What gives first: a bar to the power at which each part gives, and the target.</summary>
    public static void Ladder(Ladder ladder, string file)
    {
        var scale = ladder.ByPower ? Units.Declared(Dimension.Power, "kW") : Units.Declared(Dimension.RotationalSpeed, "rpm");
        var rungs = ladder.Rungs.Reverse().ToList();
        var plot = new Plot();
        var bars = rungs.Select((r, i) => new Bar
        {
            Position = i,
            Value = scale.FromSi(ladder.At(r) ?? ladder.Top),
            Orientation = Orientation.Horizontal,
            FillColor = ladder.At(r) is null ? Colors.LightGray : Colors.SteelBlue,
            FillHatch = r.GivesBelow ? new ScottPlot.Hatches.Striped() : null,
        }).ToArray();
        plot.Add.Bars(bars).Horizontal = true;
        plot.Axes.Left.SetTicks([.. rungs.Select((_, i) => (double)i)], [.. rungs.Select(r => $"{r.Finding.Id} {(ladder.At(r) is null ? "holds to the end" : r.GivesBelow ? "below" : "")}".Trim())]);
        if (ladder.Mark is { } mark)
        {
            plot.Add.VerticalLine(scale.FromSi(mark), 3, Colors.Black, LinePattern.Solid).LegendText = ladder.ByPower ? "target" : "rev limit";
            plot.ShowLegend(Alignment.LowerRight);
        }

        plot.XLabel(ladder.ByPower ? "greatest power at which the reserve is 1, kW" : "rev limit at which the reserve is 1, rpm");
        plot.Title("What gives first");
        plot.Axes.SetLimitsX(0, scale.FromSi(ladder.Top) * 1.05);
        Save(plot, file);
    }

    private static ScottPlot.Plottables.Scatter Line(Plot plot, List<double> rpm, List<OperatingPoint> points, Func<PointFigures, double> figure, Dimension dimension, string unit, string name, MarkerShape marker)
    {
        var shown = Units.Declared(dimension, unit);
        var line = plot.Add.Scatter(rpm, points.ConvertAll(p => shown.FromSi(figure(p.Figures!))));
        line.LegendText = name;
        line.MarkerShape = marker;
        line.LineWidth = 2;
        return line;
    }

    internal static void Save(Plot plot, string file) => Write(plot.GetSvgXml(Width, Height), file);

    /// <summary>Saves panels one below the other.</summary>
    /// <summary>A sheet of panels, one above the other; ScottPlot begins with a panel that nobody asked for.</summary>
    internal static Multiplot Sheet(params IEnumerable<Plot> panels)
    {
        var sheet = new Multiplot();
        sheet.RemovePlot(sheet.GetPlot(0));
        foreach (var panel in panels)
        {
            sheet.AddPlot(panel);
        }

        return sheet;
    }

    internal static void Save(Multiplot sheet, string file)
    {
        using var stream = new MemoryStream();
        var frame = new PixelRect(0, Width, Tall, 0);
        using (var canvas = SkiaSharp.SKSvgCanvas.Create(frame.ToSKRect(), stream))
        {
            canvas.Clear(SkiaSharp.SKColors.White);
            sheet.Render(canvas, frame);
        }

        Write(System.Text.Encoding.UTF8.GetString(stream.ToArray()), file);
    }

    internal static void Write(string svg, string file)
    {
        try
        {
            File.WriteAllText(file, svg);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException($"the picture '{file}' cannot be written: {e.Message}");
        }
    }
}
