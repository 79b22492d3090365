using System.Globalization;
using System.Text;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Cli;

/// <summary>
/// Pressure over the length of a pipe and the crank angle, as SVG: shades from light to dark with labelled lines over
/// them, hatched where the gas runs back. Drawn alike for a file and for a page, whose stylesheet may set the ink.
/// </summary>
internal sealed class WavePicture
{
    /// <summary>Size of the drawing, px.</summary>
    public const double Width = 760, Height = 640;

    private const double Left = 74, Top = 64, Right = 640, Bottom = 540;
    private const double Narrowest = 84, Joint = 6, CylinderGap = 34, Bar = 10;
    private const int Rows = 180, MostLevels = 14;

    private static readonly (int R, int G, int B) Dark = (0x46, 0x82, 0xaa);

    private readonly TracedCycle _cycle;
    private readonly WaveColumn[] _columns;
    private readonly double[] _levels;
    private readonly Unit _unit;
    private readonly bool _imperial;
    private readonly int _cylinder;
    private readonly string _name;

    private WavePicture(TracedCycle cycle, string name, bool imperial)
    {
        (_cycle, _imperial, _unit) = (cycle, imperial, TraceQuantity.Port.Shown(imperial));
        Way = Pipes.Way(cycle.Trace, name);
        _cylinder = Math.Max(0, Way.Max(p => p.Cylinder));
        _name = Way.Count == 1 ? Way[0].Name : $"the pipes of {name.Trim()}";
        _columns = Columns(Picked());
        var all = _columns.SelectMany(c => c.Pressure.SelectMany(row => row)).ToList();
        (Least, Greatest) = (all.Min(), all.Max());
        _levels = LevelLines.Levels(Least, Greatest, MostLevels);
    }

    /// <summary>What is drawn, the way the gas goes.</summary>
    public IReadOnlyList<PipeTrace> Way { get; }

    /// <summary>Least and greatest pressure in it, in the unit shown.</summary>
    public double Least { get; }

    /// <inheritdoc cref="Least"/>
    public double Greatest { get; }

    /// <summary>"Pressure in runner 1 at 9000 rpm, from the wave model".</summary>
    public string Title => $"Pressure in {_name} at {Engine.RevLimit.Print(_cycle.Speed)}, {_cycle.Depth.From()}";

    /// <summary>The picture in words.</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"{Title}: over length and crank angle, from {Figures.Number(Least, 3)} to {Figures.Number(Greatest, 3)} {_unit.Symbol}; {Back}");

    /// <summary>What is drawn of a pipe, or of the way through a cylinder.</summary>
    /// <param name="cycle">The cycle.</param>
    /// <param name="name">"primary 1", "cylinder 1".</param>
    /// <param name="imperial">Whether in inch units.</param>
    /// <exception cref="BadInputException">There is no such pipe.</exception>
    public static WavePicture Of(TracedCycle cycle, string name, bool imperial) => new(cycle, name, imperial);

    /// <summary>The drawing.</summary>
    /// <param name="id">Names its pattern; one of its own for each drawing of a page.</param>
    public string Svg(string id = "wave")
    {
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Width} {Height}\" role=\"img\" aria-label=\"{Words}\" font-family=\"system-ui, DejaVu Sans, sans-serif\" font-size=\"14\">");
        svg.Append(CultureInfo.InvariantCulture, $"<rect class=\"wave-sheet\" width=\"{Width}\" height=\"{Height}\" fill=\"#fff\"/>");
        svg.Append(CultureInfo.InvariantCulture, $"<pattern id=\"{id}-back\" width=\"9\" height=\"9\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><rect width=\"1.6\" height=\"9\" fill=\"#7a1f0c\"/></pattern>");
        Text(svg, Width / 2, 24, Title, "middle", "bold");
        foreach (var column in _columns)
        {
            Shades(svg, column);
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"wave-back\" fill=\"url(#{id}-back)\" d=\"{column.Above(column.Backwards, CycleFacts.Backwards, Y, AsRow)}\"/>");
            Lines(svg, column);
            Valve(svg, column);
            Along(svg, column);
        }

        Upright(svg);
        Scale(svg);
        Legend(svg, id);
        return svg.Append("</svg>").ToString();
    }

    private string Back => _columns.Any(c => c.Backwards.Any(row => row.Any(v => v > CycleFacts.Backwards)))
        ? string.Create(CultureInfo.InvariantCulture, $"hatched: the gas runs back, faster than {Speed}")
        : $"nowhere does the gas run back faster than {Speed}";

    private string Speed => Figures.Print(CycleFacts.Backwards, Calc.Catalogue.Dimension.Speed, "m/s", 2, _imperial);

    private static double AsRow => (Bottom - Top) / Rows;

    private static double Y(int row) => Bottom - (row * AsRow);

    private static double YOf(double angle) => Bottom - (angle / 720 * (Bottom - Top));

    private int[] Picked()
    {
        var after = _cycle.After(_cylinder).Select(a => a.At).ToArray();
        return [.. Enumerable.Range(0, Rows + 1).Select(r => after[(int)Math.Round(r * (double)after.Length / Rows) % after.Length])];
    }

    /// <summary>Each pipe gets a width by its length, yet wide enough for its name.</summary>
    private WaveColumn[] Columns(int[] picked)
    {
        var gaps = Way.Zip(Way.Skip(1), (a, b) => a.Intake && !b.Intake ? CylinderGap : Joint).ToList();
        var room = Right - Left - gaps.Sum();
        var shares = Way.Select(p => p.Length / Way.Sum(w => w.Length)).ToList();
        var spare = room - (Narrowest * Way.Count);
        var (columns, x) = (new List<WaveColumn>(), Left);
        for (var i = 0; i < Way.Count; i++)
        {
            var width = Narrowest + (spare * shares[i]);
            columns.Add(new WaveColumn(Way[i], x, width, picked, _unit.FromSi));
            x += width + (i < gaps.Count ? gaps[i] : 0);
        }

        return [.. columns];
    }

    private void Shades(StringBuilder svg, WaveColumn column)
    {
        svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{F(column.X)}\" y=\"{Top}\" width=\"{F(column.Width)}\" height=\"{Bottom - Top}\" fill=\"{Shade(0)}\"/>");
        for (var i = 0; i < _levels.Length; i++)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"wave-shade\" shape-rendering=\"crispEdges\" fill=\"{Shade(i + 1)}\" d=\"{column.Above(column.Pressure, _levels[i], Y, AsRow)}\"/>");
        }
    }

    private void Lines(StringBuilder svg, WaveColumn column)
    {
        var labels = new List<(double X, double Y, string Words)>();
        var grid = column.Grid(Y);
        foreach (var level in _levels)
        {
            var stretches = LevelLines.Of(grid, level).ToList();
            if (stretches.Count == 0)
            {
                continue;
            }

            svg.Append("<path class=\"wave-line\" fill=\"none\" stroke=\"#1d2125\" stroke-width=\"1.1\" d=\"");
            foreach (var (from, to) in stretches)
            {
                svg.Append('M').Append(F(from.X)).Append(' ').Append(F(from.Y)).Append('l').Append(F(to.X - from.X)).Append(' ').Append(F(to.Y - from.Y));
            }

            svg.Append("\"/>");
            var free = stretches.ConvertAll(s => s.From).Where(p => p.X > column.X + 18 && p.X < column.X + column.Width - 18 && p.Y > Top + 12 && p.Y < Bottom - 12).ToList();
            if (free.Count > 0)
            {
                var best = free.MaxBy(p => labels.Select(l => Math.Abs(l.X - p.X) + Math.Abs(l.Y - p.Y)).Append(double.MaxValue).Min());
                labels.Add((best.X, best.Y + 4, Figures.Number(level)));
            }
        }

        svg.Append("<g font-size=\"12\" font-weight=\"bold\" text-anchor=\"middle\" fill=\"#1d2125\" stroke=\"#fff\" stroke-width=\"4\" stroke-linejoin=\"round\" paint-order=\"stroke\">");
        labels.ForEach(l => svg.Append(CultureInfo.InvariantCulture, $"<text class=\"wave-level\" x=\"{F(l.X)}\" y=\"{F(l.Y)}\">{l.Words}</text>"));
        svg.Append("</g>");
    }

    /// <summary>A bar beside the end at which a valve is, over the angles at which it is open.</summary>
    private void Valve(StringBuilder svg, WaveColumn column)
    {
        if (column.Pipe.Cylinder < 0)
        {
            return;
        }

        var intake = column.Pipe.Intake;
        var side = intake ? "inlet" : "exhaust";
        var events = _cycle.Events(column.Pipe.Cylinder).Where(e => e.Words.StartsWith(side, StringComparison.Ordinal)).ToDictionary(e => e.Words, e => e.Angle, StringComparer.Ordinal);
        var (opens, closes) = (events[side + " opens"], events[side + " closes"]);
        var x = intake ? column.X + column.Width + 2 : column.X - Bar - 2;
        foreach (var (from, to) in closes > opens ? [(opens, closes)] : new[] { (opens, 720.0), (0.0, closes) })
        {
            svg.Append(CultureInfo.InvariantCulture, $"<rect class=\"wave-ink wave-valve\" x=\"{F(x)}\" y=\"{F(YOf(to))}\" width=\"{Bar}\" height=\"{F(YOf(from) - YOf(to))}\" fill=\"#1d2125\"/>");
        }

        svg.Append("<g font-size=\"12\" fill=\"#1d2125\" stroke=\"#fff\" stroke-width=\"4\" stroke-linejoin=\"round\" paint-order=\"stroke\">");
        foreach (var (words, angle) in events)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{F(intake ? column.X + column.Width - 4 : column.X + 4)}\" y=\"{F(YOf(angle) + 4)}\" text-anchor=\"{(intake ? "end" : "start")}\">{words}</text>");
        }

        svg.Append("</g>");
    }

    /// <summary>Name and lengths of a pipe.</summary>
    private void Along(StringBuilder svg, WaveColumn column)
    {
        svg.Append(CultureInfo.InvariantCulture, $"<rect class=\"wave-frame\" x=\"{F(column.X)}\" y=\"{Top}\" width=\"{F(column.Width)}\" height=\"{Bottom - Top}\" fill=\"none\" stroke=\"#4b5157\"/>");
        Text(svg, column.X + (column.Width / 2), Top - 10, column.Pipe.Name, "middle", "bold");
        var unit = Figures.Shown(Calc.Catalogue.Dimension.Length, "mm", _imperial);
        var length = unit.FromSi(column.Pipe.Length);
        var step = LevelLines.Levels(0, length * Narrowest / column.Width * 4) is { Length: > 1 } levels ? 2 * (levels[1] - levels[0]) : length;
        for (var at = 0.0; at <= length * 0.999; at += step)
        {
            var x = column.X + (at / length * column.Width);
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"wave-frame\" stroke=\"#4b5157\" d=\"M{F(x)} {Bottom}v6\"/>");
            Text(svg, x, Bottom + 20, Figures.Number(at, 3), at == 0 ? "start" : "middle");
        }
    }

    private void Upright(StringBuilder svg)
    {
        for (var angle = 0; angle <= 720; angle += 90)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"wave-frame\" stroke=\"#4b5157\" d=\"M{Left - 18} {F(YOf(angle))}h4\"/>");
            Text(svg, Left - 22, YOf(angle) + 5, angle.ToString(CultureInfo.InvariantCulture), "end");
        }

        svg.Append(CultureInfo.InvariantCulture, $"<g transform=\"translate(16 {(Top + Bottom) / 2}) rotate(-90)\">");
        Text(svg, 0, 0, string.Create(CultureInfo.InvariantCulture, $"crank angle after firing TDC of cylinder {_cylinder + 1}, °"), "middle");
        svg.Append("</g>");
        Text(svg, (Left + Right) / 2, Bottom + 42, $"length from where the flow comes in, {Figures.Shown(Calc.Catalogue.Dimension.Length, "mm", _imperial).Symbol}", "middle");
    }

    private void Scale(StringBuilder svg)
    {
        var (x, high) = (Right + 44, (Bottom - Top) / (_levels.Length + 1));
        for (var i = 0; i <= _levels.Length; i++)
        {
            var y = Bottom - ((i + 1) * high);
            svg.Append(CultureInfo.InvariantCulture, $"<rect class=\"wave-frame\" x=\"{x}\" y=\"{F(y)}\" width=\"18\" height=\"{F(high)}\" fill=\"{Shade(i)}\" stroke=\"#4b5157\"/>");
            if (i < _levels.Length)
            {
                Text(svg, x + 24, y + 5, Figures.Number(_levels[i]), "start");
            }
        }

        Text(svg, x + 20, Top - 10, $"{_unit.Symbol} absolute", "middle");
    }

    private void Legend(StringBuilder svg, string id)
    {
        var y = Bottom + 72;
        svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{Left}\" y=\"{y - 13}\" width=\"34\" height=\"17\" fill=\"#fff\"/><rect class=\"wave-frame\" x=\"{Left}\" y=\"{y - 13}\" width=\"34\" height=\"17\" fill=\"url(#{id}-back)\" stroke=\"#4b5157\"/>");
        Text(svg, Left + 42, y, Back, "start");
        if (Way.Any(p => p.Cylinder >= 0))
        {
            svg.Append(CultureInfo.InvariantCulture, $"<rect class=\"wave-ink\" x=\"{Left + 430}\" y=\"{y - 13}\" width=\"{Bar}\" height=\"17\" fill=\"#1d2125\"/>");
            Text(svg, Left + 448, y, "valve open", "start");
        }
    }

    private string Shade(int band)
    {
        var t = band / (double)Math.Max(1, _levels.Length);
        return string.Create(CultureInfo.InvariantCulture, $"#{Mixed(Dark.R):x2}{Mixed(Dark.G):x2}{Mixed(Dark.B):x2}");

        int Mixed(int dark) => (int)Math.Round(255 + (t * (dark - 255)));
    }

    private static void Text(StringBuilder svg, double x, double y, string words, string anchor, string weight = "normal") =>
        svg.Append(CultureInfo.InvariantCulture, $"<text class=\"wave-ink\" x=\"{F(x)}\" y=\"{F(y)}\" text-anchor=\"{anchor}\" font-weight=\"{weight}\" fill=\"#1d2125\">{words}</text>");

    private static string F(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
