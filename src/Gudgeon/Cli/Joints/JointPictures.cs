using System.Globalization;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Joints;

/// <summary>Bolted joints on paper: diagram, bolt pattern, lubricants, head joint, mass.</summary>
internal static class JointPictures
{
    private static readonly LinePattern[] Patterns = [LinePattern.Solid, LinePattern.Dashed, LinePattern.Dotted, LinePattern.DenselyDashed];

    /// <summary>Joint diagrams, one beside the other: force against stretch.</summary>
    public static void Diagrams(IReadOnlyList<(string Name, JointFigures Joint)> joints, string file, bool imperial)
    {
        var picture = Pictures.Sheet(joints.Select(j => Diagram(j.Name, j.Joint, imperial)));
        picture.Layout = new ScottPlot.MultiplotLayouts.Grid(Math.Max(1, (joints.Count + 1) / 2), Math.Min(2, Math.Max(1, joints.Count)));
        Pictures.Save(picture, file);
    }

    /// <summary>The bolts of a plan: large, the turn at which each is tightened; small below it, which bolt it is.</summary>
    public static void Plan(TighteningPlan plan, string file, bool imperial)
    {
        var unit = Figures.Shown(Dimension.Length, "mm", imperial);
        var plot = new Plot();
        var ordered = plan.Order.Select(n => plan.Places.FirstOrDefault(p => p.Number == n)).OfType<BoltPlace>().ToList();
        var way = plot.Add.ScatterLine(ordered.ConvertAll(p => unit.FromSi(p.X)), ordered.ConvertAll(p => unit.FromSi(p.Y)), Colors.Gray);
        (way.LinePattern, way.LineWidth) = (LinePattern.Dotted, 2);
        var dots = plot.Add.ScatterPoints(ordered.ConvertAll(p => unit.FromSi(p.X)), ordered.ConvertAll(p => unit.FromSi(p.Y)), Colors.Black);
        (dots.MarkerShape, dots.MarkerSize, dots.MarkerLineWidth) = (MarkerShape.OpenCircle, 46, 2);
        for (var i = 0; i < ordered.Count; i++)
        {
            var words = plot.Add.Text((i + 1).ToString(CultureInfo.InvariantCulture), unit.FromSi(ordered[i].X), unit.FromSi(ordered[i].Y));
            (words.LabelAlignment, words.LabelFontSize, words.LabelBold) = (Alignment.MiddleCenter, 22, true);
            var bolt = plot.Add.Text(string.Create(CultureInfo.InvariantCulture, $"bolt {ordered[i].Number}"), unit.FromSi(ordered[i].X), unit.FromSi(ordered[i].Y));
            (bolt.LabelAlignment, bolt.LabelFontSize, bolt.OffsetY) = (Alignment.UpperCenter, 14, 26);
        }

        plot.Axes.AutoScale();
        plot.Axes.Margins(0.2, 0.3);
        plot.Axes.SquareUnits();
        plot.Title($"Joint {plan.Key}: order of tightening, {plan.OrderName}. Large: turn; small: bolt");
        plot.XLabel($"across, {unit.Symbol}");
        plot.YLabel($"along, {unit.Symbol}");
        Pictures.Save(plot, file);
    }

    /// <summary>Preload that the torque gives on each lubricant, from usual to least friction.</summary>
    public static void Lubricants(TorqueSheet sheet, string file, bool imperial)
    {
        var unit = Figures.Shown(Dimension.Force, "kN", imperial);
        var rows = sheet.Rows.Reverse().ToList();
        var plot = new Plot();
        plot.Add.Bars(rows.Select((r, i) => (Row: r, At: i)).Where(r => double.IsFinite(r.Row.Preload + r.Row.Most)).Select(r => new Bar { Position = r.At, ValueBase = unit.FromSi(r.Row.Preload), Value = unit.FromSi(r.Row.Most), Orientation = Orientation.Horizontal, FillColor = Colors.LightGray }).ToArray()).LegendText = "usual to least friction";
        plot.Axes.Left.SetTicks([.. rows.Select((_, i) => (double)i)], [.. rows.Select(r => r.Lubricant)]);
        plot.XLabel($"preload at the torque of the book, {unit.Symbol}");
        plot.Title($"Joint {sheet.Key}: the same torque on other lubricants");
        plot.ShowLegend(Alignment.LowerRight);
        Pictures.Save(plot, file);
    }

    /// <summary>Clamp left and gas load over the peak pressure of the levels.</summary>
    public static void Head(HeadJointSheet sheet, string file, bool imperial)
    {
        var (force, pressure) = (Figures.Shown(Dimension.Force, "kN", imperial), Figures.Shown(Dimension.Pressure, "bar", imperial));
        var plot = new Plot();
        void Line(string name, Func<HeadLevel, double> of, MarkerShape shape, LinePattern pattern)
        {
            var line = plot.Add.Scatter(sheet.Levels.Select(l => pressure.FromSi(l.Peak)).ToArray(), sheet.Levels.Select(l => force.FromSi(of(l))).ToArray());
            (line.LegendText, line.MarkerShape, line.MarkerSize, line.LineWidth, line.LinePattern) = (name, shape, 9, 2, pattern);
        }

        Line("gas load of one cylinder", l => l.Gas, MarkerShape.OpenSquare, LinePattern.Dashed);
        Line("clamp left around it, least", l => l.Clamp, MarkerShape.FilledCircle, LinePattern.Solid);
        plot.XLabel($"peak cylinder pressure above ambient, {pressure.Symbol}");
        plot.YLabel($"force, {force.Symbol}");
        plot.Title($"Joint {sheet.Key} over {sheet.Varied.Label.ToLowerInvariant()}");
        plot.ShowLegend(Edge.Bottom);
        Pictures.Save(plot, file);
    }

    /// <summary>Mass of the bolts of each joint, and what is saved over steel.</summary>
    public static void Masses(BoltList list, string file, bool imperial)
    {
        var unit = Figures.Shown(Dimension.Mass, "g", imperial);
        var rows = list.Lines.Reverse().Where(l => l.MassAll is not null).ToList();
        var plot = new Plot();
        plot.Add.Bars(rows.Select((r, i) => new Bar { Position = i, Value = unit.FromSi(r.MassAll!.Value), Orientation = Orientation.Horizontal, FillColor = Colors.SteelBlue }).ToArray()).LegendText = "bolts";
        plot.Add.Bars(rows.Select((r, i) => new Bar { Position = i, ValueBase = unit.FromSi(r.MassAll!.Value), Value = unit.FromSi(r.MassAll.Value + Math.Max(0, r.MassSaved ?? 0)), Orientation = Orientation.Horizontal, FillColor = Colors.White, FillHatch = new ScottPlot.Hatches.Striped() }).ToArray()).LegendText = "saved over steel";
        plot.Axes.Left.SetTicks([.. rows.Select((_, i) => (double)i)], [.. rows.Select(r => r.Key)]);
        plot.XLabel($"mass, {unit.Symbol}");
        plot.Title("Bolts by joint");
        plot.ShowLegend(Alignment.LowerRight);
        Pictures.Save(plot, file);
    }

    private static Plot Diagram(string name, JointFigures joint, bool imperial)
    {
        var (force, length) = (Figures.Shown(Dimension.Force, "kN", imperial), Figures.Shown(Dimension.Length, "mm", imperial));
        var plot = new Plot();
        var lines = DiagramLine.Of(joint);
        for (var i = 0; i < lines.Count; i++)
        {
            var line = plot.Add.ScatterLine(lines[i].Stretch.Select(length.FromSi).ToArray(), lines[i].Force.Select(force.FromSi).ToArray());
            (line.LegendText, line.LinePattern, line.LineWidth) = lines[i].Name == DiagramLine.WorkingForce ? (lines[i].Name, LinePattern.Solid, 4) : (lines[i].Name, Patterns[i % Patterns.Length], 2);
        }

        plot.Axes.SetLimits(left: 0, bottom: 0);
        plot.XLabel($"stretch above the place where the force enters, then squeeze below it, {length.Symbol}");
        plot.YLabel($"force, {force.Symbol}");
        plot.Title(name);
        plot.ShowLegend(Edge.Bottom);
        return plot;
    }
}
