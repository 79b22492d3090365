using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.ValveTrain;
using ScottPlot;

namespace Gudgeon.Cli.Head;

/// <summary>The motion of the valves on paper.</summary>
internal static class MotionPictures
{
    private static readonly LinePattern[] Patterns = [LinePattern.Solid, LinePattern.Dashed];

    /// <summary>Gap, bounce and seating speed over the crank's speed, with the rev limit.</summary>
    public static void Map(MotionSheet sheet, string file, bool imperial)
    {
        var length = Figures.Shown(Dimension.Length, "mm", imperial);
        var speed = Figures.Shown(Dimension.Speed, "m/s", imperial);
        var figure = Pictures.Sheet();
        figure.AddPlot(Panel(sheet, m => length.FromSi(m.Lost?.Gap ?? 0), $"greatest gap, {length.Symbol}"));
        figure.AddPlot(Panel(sheet, m => length.FromSi(m.BounceHeight), $"bounce, {length.Symbol}"));
        figure.AddPlot(Panel(sheet, m => speed.FromSi(m.SeatingVelocity ?? double.NaN), $"meets seat at, {speed.Symbol}"));
        figure.GetPlot(0).Title("Valve motion: gap in the train, bounce on the seat, seating speed");
        figure.GetPlot(2).XLabel("crank speed, rpm");
        Pictures.Save(figure, file);
    }

    /// <summary>Lift and cam force at the rev limit against the cam's angle, one valve under the other.</summary>
    public static void Trace(MotionSheet sheet, string file, bool imperial)
    {
        var figure = Pictures.Sheet();
        foreach (var valve in sheet.Valves)
        {
            if (valve.AtLimit.Motion?.Trace is { } trace)
            {
                figure.AddPlot(Traced(valve.Index, trace, imperial));
            }
        }

        if (figure.GetPlots().Length == 0)
        {
            throw new BadInputException("no motion repeats at the rev limit, so there is none to draw");
        }

        figure.GetPlot(figure.GetPlots().Length - 1).XLabel("cam angle from the nose, °");
        Pictures.Save(figure, file);
    }

    private static Plot Panel(MotionSheet sheet, Func<TrainMotion, double> of, string label)
    {
        var plot = new Plot();
        for (var i = 0; i < sheet.Valves.Count; i++)
        {
            var settled = sheet.Valves[i].Sweep.Points.Where(p => p.Motion is not null).ToList();
            var line = plot.Add.Scatter(settled.ConvertAll(p => 2 * p.Speed * 30 / Math.PI), settled.ConvertAll(p => of(p.Motion!)));
            line.LegendText = sheet.Valves[i].Index;
            line.LineWidth = 2;
            line.LinePattern = Patterns[i % Patterns.Length];
            line.MarkerShape = Pictures.Shapes[i];
        }

        if (!double.IsNaN(sheet.RevLimit))
        {
            var limit = plot.Add.VerticalLine(sheet.RevLimit * 30 / Math.PI, 1.5f, Colors.Black, LinePattern.Solid);
            limit.LegendText = "rev limit";
        }

        plot.YLabel(label);
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(86, 150, 40, 36));
        return plot;
    }

    private static Plot Traced(string valve, TrainTrace trace, bool imperial)
    {
        var (length, force) = (Figures.Shown(Dimension.Length, "mm", imperial), Figures.Shown(Dimension.Force, "N", imperial));
        var angles = trace.Angles.Select(a => a * 180 / Math.PI).ToArray();
        var plot = new Plot();
        void Line(double[] values, string name, LinePattern pattern, bool right)
        {
            var line = plot.Add.ScatterLine(angles, values);
            line.LegendText = name;
            line.LineWidth = 2;
            line.LinePattern = pattern;
            line.Axes.YAxis = right ? plot.Axes.Right : plot.Axes.Left;
        }

        Line([.. trace.CamLift.Select(length.FromSi)], "lift that the cam asks for", LinePattern.Dashed, right: false);
        Line([.. trace.Lift.Select(length.FromSi)], "lift of the valve", LinePattern.Solid, right: false);
        Line([.. trace.CamForce.Select(force.FromSi)], "force of the cam (right)", LinePattern.Dotted, right: true);
        plot.Title($"{valve} at the rev limit");
        plot.YLabel($"lift, {length.Symbol}");
        plot.Axes.Right.Label.Text = $"force, {force.Symbol}";
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(76, 290, 44, 44));
        return plot;
    }
}
