using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Cli.Head;

/// <summary>The figures of a valve's motion as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class MotionCells(bool imperial)
{
    /// <summary>Headings of a speed's row.</summary>
    public static readonly IReadOnlyList<string> Headings = ["crank speed", "gap", "bounce", "meets seat at", "cam force", "coils off place"];

    /// <summary>The row of a speed.</summary>
    public IReadOnlyList<string> Of(TrainPoint point) => point.Motion is { } motion
        ?
        [
            Speed(point), Length(motion.Lost?.Gap ?? 0), Length(motion.BounceHeight),
            motion.SeatingVelocity is { } seating ? Figures.Print(seating, Dimension.Speed, "m/s", 3, imperial) : "never",
            Figures.Print(motion.GreatestCamForce, Dimension.Force, "N", 4, imperial), Length(motion.Springs.Max(s => s.Surge)),
        ]
        : [Speed(point), "not settled", "", "", "", ""];

    private static string Speed(TrainPoint point) => Figures.Rpm(2 * point.Speed);

    private string Length(double metres) => Figures.Print(Math.Round(metres, 6), Dimension.Length, "mm", 3, imperial);
}
