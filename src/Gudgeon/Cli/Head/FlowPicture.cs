using Gudgeon.Book.Head;
using ScottPlot;

namespace Gudgeon.Cli.Head;

/// <summary>Port flow over lift on paper: now and before, and where the throat takes over from the curtain.</summary>
internal static class FlowPicture
{
    private static readonly Color[] Inks = [Colors.DarkCyan, Colors.Sienna, Colors.Indigo, Colors.DarkGreen, Colors.Maroon, Colors.Navy, Colors.DarkGoldenRod, Colors.Black];

    public static void Draw(FlowSheet sheet, string file, bool imperial)
    {
        var (lift, flow) = (FlowWords.LiftUnit(imperial), FlowWords.FlowUnit(imperial));
        var plot = new Plot();
        foreach (var (side, i) in sheet.Sides.Select((s, i) => (s, i)))
        {
            Line(side.CurveNow, side.Now.Words, i, LinePattern.Solid);
            if (side.Before is not null)
            {
                Line(side.CurveBefore, side.Now.Words + ", before", i, LinePattern.Dashed);
            }
        }

        plot.Axes.AutoScale();
        plot.Axes.SetLimitsY(0, plot.Axes.GetLimits().Top);
        plot.Axes.SetLimitsX(0, plot.Axes.GetLimits().Right);
        foreach (var (side, i) in sheet.Sides.Where(s => s.Now.ThroatLift is not null).Select((s, i) => (s, i)))
        {
            Mark(plot, lift.FromSi(side.Now.ThroatLift!.Value), $"{side.Now.Words}: the throat is narrowest", i);
        }

        plot.XLabel($"lift, {lift.Symbol}");
        plot.YLabel($"flow at {FlowWords.Pressure(sheet)}, {flow.Symbol}");
        plot.Title("Port flow over lift");
        plot.ShowLegend(Alignment.UpperLeft);
        Pictures.Save(plot, file);

        void Line(IReadOnlyList<(double Lift, double Flow)> points, string words, int place, LinePattern pattern)
        {
            var line = plot.Add.Scatter(points.Select(p => lift.FromSi(p.Lift)).ToArray(), points.Select(p => flow.FromSi(p.Flow)).ToArray());
            line.LegendText = words;
            line.Color = Inks[place % Inks.Length];
            line.MarkerShape = Pictures.Shapes[place % Pictures.Shapes.Length];
            line.LinePattern = pattern;
            line.LineWidth = 2;
        }
    }

    /// <summary>An upright with its words at the foot, one line higher for each mark.</summary>
    private static void Mark(Plot plot, double at, string words, int place)
    {
        plot.Add.VerticalLine(at, 1, Colors.Black, LinePattern.Dotted);
        var limits = plot.Axes.GetLimits();
        var label = plot.Add.Text(words, at, limits.Top * (0.03 + (0.06 * place)));
        label.LabelFontSize = 12;
        label.LabelFontColor = Colors.Black;
        label.LabelBackgroundColor = Colors.White;
        label.LabelAlignment = at > limits.Right / 2 ? Alignment.LowerRight : Alignment.LowerLeft;
        label.OffsetX = at > limits.Right / 2 ? -4 : 4;
    }
}
