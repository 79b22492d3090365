using Gudgeon.Book.Drive;

namespace Gudgeon.Web.Drawings;

/// <summary>The belt to scale, px.</summary>
public sealed class BeltGeometry
{
    /// <summary>Width of the drawing, px.</summary>
    public const double Width = 560;

    private const double Edge = 24, Most = 380;

    private readonly double _scale, _left, _top;

    /// <param name="sheet">The belt.</param>
    /// <param name="imperial">Whether in inch units.</param>
    public BeltGeometry(BeltSheet sheet, bool imperial)
    {
        var pulleys = sheet.Pulleys;
        (_left, _top) = (pulleys.Min(p => p.X - Math.Abs(p.Radius)), pulleys.Min(p => p.Y - Math.Abs(p.Radius)));
        var (wide, high) = (pulleys.Max(p => p.X + Math.Abs(p.Radius)) - _left, pulleys.Max(p => p.Y + Math.Abs(p.Radius)) - _top);
        _scale = Math.Min((Width - (2 * Edge)) / wide, Most / high);
        Height = (high * _scale) + (2 * Edge);
        var spans = sheet.Spans;
        Belt = string.Concat(spans.Select((s, i) => $"{(i == 0 ? "M" : "L")}{Point(s.FromX, s.FromY)}L{Point(s.ToX, s.ToY)}{Arc(pulleys[(i + 1) % pulleys.Count], spans[(i + 1) % spans.Count])}")) + "Z";
        Pulleys = [.. pulleys.Zip(Cli.Drive.BeltNames.Of(pulleys.Count)).Select(p => (X(p.First.X), Y(p.First.Y), Math.Abs(p.First.Radius) * _scale, p.Second))];
        Numbers =
        [
            Told.Length("crank pulley", 2 * pulleys[0].Radius, imperial),
            Told.Length("blower pulley", 2 * pulleys[^1].Radius, imperial),
            Told.Length("centre distance", pulleys[^1].X, imperial),
            .. pulleys.Count == 3 ? new[] { Told.Length("idler", 2 * Math.Abs(pulleys[1].Radius), imperial), Told.Length("idler along the line of centres", pulleys[1].X, imperial), Told.Length("idler across it", -pulleys[1].Y, imperial) } : [],
            Told.Length("free tight span", spans[^1].Length, imperial),
        ];
    }

    /// <summary>Height of the drawing, px.</summary>
    public double Height { get; }

    /// <summary>The belt's pitch line.</summary>
    public string Belt { get; }

    /// <summary>Pulleys with their names.</summary>
    public IReadOnlyList<(double X, double Y, double Radius, string Name)> Pulleys { get; }

    /// <summary>Its numbers.</summary>
    public IReadOnlyList<Told> Numbers { get; }

    private double X(double metres) => Edge + ((metres - _left) * _scale);

    private double Y(double metres) => Edge + ((metres - _top) * _scale);

    private string Point(double x, double y) => $"{Px.Of(X(x))} {Px.Of(Y(y))}";

    /// <summary>The belt round a pulley: clockwise to the eye where its inside runs on it.</summary>
    private string Arc(DrawnPulley pulley, DrawnSpan leaves)
    {
        var radius = Px.Of(Math.Abs(pulley.Radius) * _scale);
        var large = pulley.Wrap > Math.PI ? 1 : 0;
        return $"A{radius} {radius} 0 {large} {(pulley.Radius > 0 ? 1 : 0)} {Point(leaves.FromX, leaves.FromY)}";
    }
}
