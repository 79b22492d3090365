using Gudgeon.Book.Drawings;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Web.Drawings;

/// <summary>One end of an arc: where it stands and what is written there.</summary>
public sealed record ArcEnd(double X, double Y, string Words, string Anchor);

/// <summary>One valve's time open, px.</summary>
/// <param name="Side">"inlet".</param>
/// <param name="Path">The arc; empty when an end of it is not known.</param>
/// <param name="Ends">Opening and closing, as far as known.</param>
public sealed record ValveArc(string Side, string Path, IReadOnlyList<ArcEnd> Ends);

/// <summary>Valve timing on the circle of the crank, TDC above, turning clockwise, px.</summary>
public sealed class TimingGeometry
{
    /// <summary>Size of the drawing, px.</summary>
    public const double Width = 780, Height = 380;

    /// <summary>Middle of the circle.</summary>
    public const double X = 390, Y = 190;

    /// <summary>Radii of the arcs.</summary>
    public const double InletRadius = 104, ExhaustRadius = 132;

    private const double WordsAway = 16;

    /// <param name="timing">The numbers.</param>
    /// <param name="imperial">Whether in inch units; angles have none.</param>
    public TimingGeometry(ValveTiming timing, bool imperial)
    {
        Inlet = Arc("inlet", InletRadius, -timing.InletOpens, Math.PI + timing.InletCloses, timing.InletDuration);
        Exhaust = Arc("exhaust", ExhaustRadius, Math.PI - timing.ExhaustOpens, (2 * Math.PI) + timing.ExhaustCloses, timing.ExhaustDuration);
        Overlap = timing.Overlap is > 0 and var overlap ? Sector(InletRadius - 22, -timing.InletOpens!.Value, overlap) : "";
        Numbers =
        [
            Angle("inlet opens before TDC", timing.InletOpens, imperial),
            Angle("inlet closes after BDC", timing.InletCloses, imperial),
            Angle("exhaust opens before BDC", timing.ExhaustOpens, imperial),
            Angle("exhaust closes after TDC", timing.ExhaustCloses, imperial),
            Angle("inlet duration", timing.InletDuration, imperial),
            Angle("exhaust duration", timing.ExhaustDuration, imperial),
            Angle("overlap", timing.Overlap, imperial),
        ];
    }

    /// <summary>The inlet valve.</summary>
    public ValveArc Inlet { get; }

    /// <summary>The exhaust valve.</summary>
    public ValveArc Exhaust { get; }

    /// <summary>Sector in which both are open; empty when there is none or it is not known.</summary>
    public string Overlap { get; }

    /// <summary>Every number, for the list.</summary>
    public IReadOnlyList<Told> Numbers { get; }

    /// <summary>Where a crank angle after TDC, rad, stands on a circle.</summary>
    public static (double X, double Y) At(double angle, double radius) => (X + (radius * Math.Sin(angle)), Y - (radius * Math.Cos(angle)));

    private static Told Angle(string name, double? radians, bool imperial) => Told.Of(name, radians, Dimension.Angle, "°", imperial);

    private static ValveArc Arc(string side, double radius, double? from, double? to, double? duration) => new(
        side,
        from is { } start && duration is { } open ? Along(radius, start, open) : "",
        [.. new[] { End("opens", radius, from), End("closes", radius, to) }.OfType<ArcEnd>()]);

    private static string Along(double radius, double from, double angle)
    {
        var (a, b) = (At(from, radius), At(from + angle, radius));
        return $"M{Px.Of(a.X)} {Px.Of(a.Y)}A{Px.Of(radius)} {Px.Of(radius)} 0 {(angle > Math.PI ? 1 : 0)} 1 {Px.Of(b.X)} {Px.Of(b.Y)}";
    }

    private static string Sector(double radius, double from, double angle) => $"{Along(radius, from, angle)}L{Px.Of(X)} {Px.Of(Y)}Z";

    private static ArcEnd? End(string what, double radius, double? angle)
    {
        if (angle is not { } at)
        {
            return null;
        }

        var (x, y) = At(at, ExhaustRadius + WordsAway);
        var dead = Math.Round(at / Math.PI) * Math.PI;
        var degrees = Math.Abs(at - dead) * 180 / Math.PI;
        var centre = Math.Abs(Math.Round(at / Math.PI)) % 2 == 0 ? "TDC" : "BDC";
        var words = $"{(radius == InletRadius ? "inlet" : "exhaust")} {what} {Book.Values.Figures.Number(degrees, 4)}° {(at < dead ? "before" : "after")} {centre}";
        return new ArcEnd(x, y, words, x < X - 20 ? "end" : x > X + 20 ? "start" : "middle");
    }
}
