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
            Line(side.CurveNow, side.Now.Words, i, before: false);
            if (side.IsPortChanged)
            {
                Line(side.CurveBefore, side.Now.Words + ", before", i, before: true);
            }
        }

        plot.Axes.AutoScale();
        plot.Axes.SetLimitsY(0, plot.Axes.GetLimits().Top);
        plot.Axes.SetLimitsX(0, plot.Axes.GetLimits().Right);
        Marks(plot, [.. sheet.Sides.Where(s => s.Now.ThroatLift is not null).Select(s => (lift.FromSi(s.Now.ThroatLift!.Value), $"{s.Now.Words}, from {Gudgeon.Book.Fields.Valve.Lift.Print(s.Now.ThroatLift.Value, imperial)}: the throat is narrowest"))]);
        plot.XLabel($"lift, {lift.Symbol}");
        plot.YLabel($"flow at {FlowWords.Pressure(sheet)}, {flow.Symbol}");
        plot.Title("Port flow over lift");
        plot.ShowLegend(Alignment.UpperLeft);
        Pictures.Save(plot, file);

        void Line(IReadOnlyList<(double Lift, double Flow)> points, string words, int place, bool before)
        {
            var line = plot.Add.Scatter(points.Select(p => lift.FromSi(p.Lift)).ToArray(), points.Select(p => flow.FromSi(p.Flow)).ToArray());
            line.LegendText = words;
            line.Color = Inks[place % Inks.Length];
            line.MarkerShape = Pictures.Shapes[((2 * place) + (before ? 1 : 0)) % Pictures.Shapes.Length];
            line.MarkerSize = 9;
            line.LineWidth = before ? 1 : 3;
        }
    }

    /// <summary>Uprights, and their words one above the other on the side where no upright crosses them.</summary>
    private static void Marks(Plot plot, IReadOnlyList<(double At, string Words)> marks)
    {
        if (marks.Count == 0)
        {
            return;
        }

        var limits = plot.Axes.GetLimits();
        var (first, last) = (marks.Min(m => m.At), marks.Max(m => m.At));
        var right = last < 0.7 * limits.Right;
        foreach (var ((at, words), i) in marks.Select((m, i) => (m, i)))
        {
            plot.Add.VerticalLine(at, 1, Colors.Black);
            var label = plot.Add.Text(words, right ? last : first, limits.Top * (0.03 + (0.06 * i)));
            label.LabelFontSize = 12;
            label.LabelFontColor = Colors.Black;
            label.LabelBackgroundColor = Colors.White;
            label.LabelAlignment = right ? Alignment.LowerLeft : Alignment.LowerRight;
            label.OffsetX = right ? 6 : -6;
        }
    }
}
