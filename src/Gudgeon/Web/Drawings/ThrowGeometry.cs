using Gudgeon.Book.Bottom;

namespace Gudgeon.Web.Drawings;

/// <summary>A throw of the crank end on and from the side, px. What is not known is drawn at a usual size.</summary>
public sealed class ThrowGeometry
{
    /// <summary>Size of the drawing, px.</summary>
    public const double Width = 620, Height = 400;

    private const double EndOn = 140, Side = 440, Axis = 270, Reach = 180;
    private const double UsualPin = 40e-3, UsualJournal = 42e-3, UsualRadius = 34e-3, UsualThickness = 17e-3, UsualWidth = 75e-3, UsualLength = 22e-3, Stub = 14e-3;

    private readonly double _scale;

    /// <param name="crank">The numbers.</param>
    /// <param name="imperial">Whether in inch units.</param>
    public ThrowGeometry(ThrowFigures crank, bool imperial)
    {
        var (pin, journal, radius) = ((crank.Pin ?? UsualPin) / 2, (crank.Journal ?? UsualJournal) / 2, crank.Radius ?? UsualRadius);
        var (thickness, width, length) = (crank.WebThickness ?? UsualThickness, (crank.WebWidth ?? UsualWidth) / 2, crank.PinLength ?? UsualLength);
        _scale = Math.Min(Reach / (radius + width), 290 / (length + (2 * (thickness + Stub))));
        (PinRadius, JournalRadius, PinY) = (pin * _scale, journal * _scale, Axis - (radius * _scale));
        var half = width * _scale;
        Web = $"M{Px.Of(EndOn - half)} {Px.Of(Axis)}V{Px.Of(PinY)}A{Px.Of(half)} {Px.Of(half)} 0 0 1 {Px.Of(EndOn + half)} {Px.Of(PinY)}V{Px.Of(Axis)}A{Px.Of(half)} {Px.Of(half)} 0 0 1 {Px.Of(EndOn - half)} {Px.Of(Axis)}Z";
        Lens = radius < pin + journal && radius > Math.Abs(pin - journal) ? Common(pin, journal, radius) : "";
        var (web, stub, mid) = (thickness * _scale, Stub * _scale, length * _scale / 2);
        var (top, foot) = (PinY - half, Axis + half);
        Webs = [Box(Side - mid - web, top, web, foot - top), Box(Side + mid, top, web, foot - top)];
        Pins = [Box(Side - mid, PinY - PinRadius, 2 * mid, 2 * PinRadius), Box(Side - mid - web - stub, Axis - JournalRadius, stub, 2 * JournalRadius), Box(Side + mid + web, Axis - JournalRadius, stub, 2 * JournalRadius)];
        Words =
        [
            (EndOn, PinY - 6, "pin"), (EndOn, Axis + JournalRadius + 16, "journal"),
            (Side, PinY, "pin"), (Side - mid - (web / 2), foot + 18, "web"), (Side + mid + (web / 2), foot + 18, "web"),
        ];
        Numbers =
        [
            Told.Length("crank pin", crank.Pin, imperial),
            Told.Length("main journal", crank.Journal, imperial),
            Told.Length("crank radius", crank.Radius, imperial),
            Told.Length("overlap", crank.Overlap is { } o ? Math.Round(o, 6) : null, imperial),
            Told.Length("web thickness", crank.WebThickness, imperial),
            Told.Length("web width", crank.WebWidth, imperial),
            Told.Length("pin length", crank.PinLength, imperial),
        ];
    }

    /// <summary>Middle of the end-on view.</summary>
    public static double X => EndOn;

    /// <summary>Height of the crank's axis.</summary>
    public static double Y => Axis;

    /// <summary>Radius of the crank pin.</summary>
    public double PinRadius { get; }

    /// <summary>Radius of the journal.</summary>
    public double JournalRadius { get; }

    /// <summary>Height of the pin's axis.</summary>
    public double PinY { get; }

    /// <summary>The web end on.</summary>
    public string Web { get; }

    /// <summary>Where pin and journal overlap, end on; empty when they do not.</summary>
    public string Lens { get; }

    /// <summary>The webs from the side.</summary>
    public IReadOnlyList<string> Webs { get; }

    /// <summary>Pin and journals from the side.</summary>
    public IReadOnlyList<string> Pins { get; }

    /// <summary>Words in the drawing.</summary>
    public IReadOnlyList<(double X, double Y, string Words)> Words { get; }

    /// <summary>Every number, for the list.</summary>
    public IReadOnlyList<Told> Numbers { get; }

    private static string Box(double x, double y, double width, double height) => $"M{Px.Of(x)} {Px.Of(y)}h{Px.Of(width)}v{Px.Of(height)}h{Px.Of(-width)}Z";

    /// <summary>What two circles have in common, the journal's below the pin's.</summary>
    private string Common(double pin, double journal, double radius)
    {
        var up = ((radius * radius) + (journal * journal) - (pin * pin)) / (2 * radius);
        var half = Math.Sqrt((journal * journal) - (up * up)) * _scale;
        var y = Px.Of(Axis - (up * _scale));
        var (left, right) = (Px.Of(EndOn - half), Px.Of(EndOn + half));
        return $"M{left} {y}A{Px.Of(JournalRadius)} {Px.Of(JournalRadius)} 0 0 1 {right} {y}A{Px.Of(PinRadius)} {Px.Of(PinRadius)} 0 0 1 {left} {y}Z";
    }
}
