using ScottPlot;

namespace Gudgeon.Cli;

/// <summary>Lines of equal height over a grid of points, some of which may be unknown: no line comes near those.</summary>
internal static class LevelLines
{
    private const int Lines = 8;

    private static readonly double[] Round = [1, 2, 5, 10];

    /// <summary>Round figures inside a range.</summary>
    /// <param name="low">Its lower end.</param>
    /// <param name="high">Its upper end.</param>
    /// <param name="lines">So many at most.</param>
    public static double[] Levels(double low, double high, int lines = Lines)
    {
        if (high - low <= 1e-9 * Math.Abs(high))
        {
            return [];
        }

        var rough = (high - low) / lines;
        var decade = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var step = Round.First(s => s * decade >= rough * 0.999) * decade;
        var from = (int)Math.Ceiling((low + (1e-6 * step)) / step);
        return [.. Enumerable.Range(from, (int)Math.Floor((high - (1e-6 * step)) / step) - from + 1).Select(i => Math.Round(i * step, 10))];
    }

    /// <summary>The stretches of one line, each from a point to a point: every mesh of four known points is two triangles, in which the height is a plane.</summary>
    /// <param name="grid">The points; a height that is NaN is not known.</param>
    /// <param name="level">The height.</param>
    public static IEnumerable<(Coordinates From, Coordinates To)> Of(Coordinates3d[,] grid, double level)
    {
        for (var row = 1; row < grid.GetLength(0); row++)
        {
            for (var column = 1; column < grid.GetLength(1); column++)
            {
                var (a, b, c, d) = (grid[row - 1, column - 1], grid[row - 1, column], grid[row, column], grid[row, column - 1]);
                if (double.IsFinite(a.Z + b.Z + c.Z + d.Z))
                {
                    foreach (var stretch in new[] { Across(a, b, c, level), Across(a, c, d, level) }.OfType<(Coordinates, Coordinates)>())
                    {
                        yield return stretch;
                    }
                }
            }
        }
    }

    private static (Coordinates, Coordinates)? Across(Coordinates3d a, Coordinates3d b, Coordinates3d c, double level)
    {
        Coordinates[] ends = [.. new[] { Between(a, b, level), Between(b, c, level), Between(c, a, level) }.OfType<Coordinates>()];
        return ends.Length == 2 ? (ends[0], ends[1]) : null;
    }

    private static Coordinates? Between(Coordinates3d a, Coordinates3d b, double level)
    {
        if (a.Z < level == b.Z < level)
        {
            return null;
        }

        var t = (level - a.Z) / (b.Z - a.Z);
        return new(a.X + (t * (b.X - a.X)), a.Y + (t * (b.Y - a.Y)));
    }
}
