using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Sweeps;

/// <summary>What is to be as great as it can be.</summary>
/// <param name="Word">How it is asked for: "mean-torque".</param>
/// <param name="Name">What it is: "mean torque".</param>
/// <param name="Figure">The figure of a point.</param>
/// <param name="IsMean">Whether its mean over the speeds is meant, the area under its curve; else its greatest.</param>
public sealed record Aim(string Word, string Name, EngineFigure Figure, bool IsMean)
{
    /// <summary>Everything that can be aimed at.</summary>
    public static IReadOnlyList<Aim> All { get; } =
    [
        new("power", "power", EngineFigures.Power, IsMean: false),
        new("torque", "torque", EngineFigures.Torque, IsMean: false),
        new("mean-torque", "mean torque", EngineFigures.Torque, IsMean: true),
    ];

    /// <summary>The aim of this name.</summary>
    /// <exception cref="BadInputException">There is none.</exception>
    public static Aim Find(string word) => All.FirstOrDefault(a => a.Word == word)
        ?? throw new BadInputException($"--for: given '{word}', wanted {string.Join(", ", All.SkipLast(1).Select(a => a.Word))} or {All[^1].Word}");

    /// <summary>Its value on a run, SI; NaN when a speed did not settle.</summary>
    public double Of(IReadOnlyList<Gudgeon.Simulation.Engine.OperatingPoint> points) => points.Count == 0 || points.Any(p => !p.Converged)
        ? double.NaN
        : IsMean ? SpeedMean.Of(points, Figure) : points.Max(p => Figure.Of(p.Figures!));
}
