using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Cli.Head;

/// <summary>The figures of valve to piston as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class RoomCells(bool imperial)
{
    /// <summary>Headings of a valve's row.</summary>
    public static readonly IReadOnlyList<string> Headings = ["cold", "at", "timing", "lash", "thrown", "rod stretch", "running", "at", "by clay", "beside"];

    /// <summary>What the headings mean.</summary>
    public const string Legend = "Least room along the stem, cold and running, and at which crank angle after overlap TDC. Between them what timing off by its tolerance, lash closed up, the valve thrown above its lift curve and rod stretch take, each by itself, all at the rev limit. \"Beside\" is what the pocket leaves around the valve.";

    /// <summary>The row of a valve.</summary>
    public IReadOnlyList<string> Of(RoomFigures valve) =>
    [
        Length(valve.LeastCold.Room), Angle(valve.LeastCold), Length(valve.Takes.Timing), Length(valve.Takes.Lash), Length(valve.Takes.Thrown), Length(valve.Takes.Stretch),
        Length(valve.LeastRunning.Room), Angle(valve.LeastRunning), Length(valve.Clay), Length(valve.Beside),
    ];

    /// <summary>A length to a hundredth of a millimetre.</summary>
    public string Length(double? si) => si is { } metres ? Figures.Print(Math.Round(metres, imperial ? 6 : 5), Dimension.Length, "mm", 4, imperial) : SpringCells.Unknown;

    private static string Angle(LeastRoom least) => Figures.Print(least.Angle, Dimension.Angle, "°", 3);
}
