using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Head;

/// <summary>Valve events in the words of the trade.</summary>
public static class CamWords
{
    /// <summary>"at 1 mm: opens 12.3° before TDC, closes 45.6° after BDC; 238° long, centre 106.6° after TDC".</summary>
    public static string Timing(CamFigures cam, TimingAt timing, bool imperial)
    {
        var inlet = cam.Index.StartsWith("inlet", StringComparison.Ordinal);
        var (opens, closes) = inlet ? (CamMotion.OverlapTdc, 3 * Math.PI) : (Math.PI, CamMotion.OverlapTdc);
        return $"{At(timing.Lift, imperial)}: opens {From(timing.Crossings.Opens - opens, inlet ? "TDC" : "BDC")}, closes {From(timing.Crossings.Closes - closes, inlet ? "BDC" : "TDC")}; {Degrees(timing.Crossings.Duration)} long, centre {From(timing.Crossings.Middle - CamMotion.OverlapTdc, "TDC")}";
    }

    /// <summary>"at 12 mm: the valve does not lift so far".</summary>
    public static string NotReached(double lift, bool imperial) => $"{At(lift, imperial)}: the valve does not lift so far";

    private static string At(double lift, bool imperial) => lift == 0 ? "at the seat" : $"at {Figures.Print(lift, Dimension.Length, "mm", 4, imperial)}";

    private static string From(double angle, string deadCentre) => $"{Degrees(Math.Abs(angle))} {(angle < 0 ? "before" : "after")} {deadCentre}";

    private static string Degrees(double radians) => Figures.Print(radians, Dimension.Angle, "°", 4);
}
