namespace Gudgeon.Cli.Sheets;

/// <summary>One closed course on a polar picture.</summary>
/// <param name="Name">In the legend.</param>
/// <param name="X">To the right, in the unit of the picture.</param>
/// <param name="Y">Up, in the unit of the picture.</param>
public sealed record PolarCurve(string Name, IReadOnlyList<double> X, IReadOnlyList<double> Y);

/// <summary>Rings of a polar picture.</summary>
public static class PolarScale
{
    /// <summary>A step between rings such as 1, 2 or 5, and how many of them take in every course: three to ten.</summary>
    public static (double Step, int Rings) Of(IReadOnlyList<PolarCurve> curves)
    {
        var most = curves.SelectMany(c => c.X.Zip(c.Y, (x, y) => Math.Sqrt((x * x) + (y * y)))).Where(double.IsFinite).DefaultIfEmpty(1).Max();
        if (most <= 0)
        {
            return (1, 1);
        }

        var decade = Math.Pow(10, Math.Floor(Math.Log10(most / 5)));
        var step = decade * (most / 5 / decade) switch { <= 1 => 1, <= 2 => 2, <= 5 => 5, _ => 10 };
        return (step, Math.Max(1, (int)Math.Ceiling(most / step)));
    }
}
