namespace Gudgeon.Calc.Metrology;

/// <summary>Distributions from which an input is drawn.</summary>
public enum DrawnShape
{
    /// <summary>Normal; the spread is the standard uncertainty.</summary>
    Normal,

    /// <summary>Rectangular; the spread is the half width.</summary>
    Rectangular,
}

/// <summary>An input of which random values are drawn.</summary>
/// <param name="Shape">Distribution.</param>
/// <param name="Centre">Its middle.</param>
/// <param name="Spread">Standard uncertainty, or half width.</param>
public readonly record struct DrawnInput(DrawnShape Shape, double Centre, double Spread);

/// <summary>A formula of several inputs.</summary>
/// <param name="inputs">One value for each input.</param>
public delegate double DrawnModel(ReadOnlySpan<double> inputs);

/// <summary>
/// Propagation of distributions by random draws (JCGM 101:2008, clause 7). Draws are made in blocks, each from a stream of its own
/// of the seed, so that the answer does not depend on how many processors there are.
/// </summary>
public static class Propagation
{
    private const int Block = 8192;

    /// <summary>The seed where nobody wants another.</summary>
    public const ulong Seed = 20250101;

    /// <summary>Draws.</summary>
    /// <param name="inputs">The inputs.</param>
    /// <param name="model">The formula; it is worked on several threads at once.</param>
    /// <param name="draws">How many, at least 2.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="cores">Most threads at once; all that there are when -1.</param>
    public static Propagated Run(IReadOnlyList<DrawnInput> inputs, DrawnModel model, int draws, ulong seed = Seed, int cores = -1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 2);
        DrawnInput[] drawn = [.. inputs];
        var values = new double[draws];
        Parallel.For(0, (draws + Block - 1) / Block, new ParallelOptions { MaxDegreeOfParallelism = cores }, block => Fill(drawn, model, values.AsSpan(block * Block, Math.Min(Block, draws - (block * Block))), new SeededDraws(seed, (ulong)block)));
        return new Propagated(values);
    }

    private static void Fill(DrawnInput[] inputs, DrawnModel model, Span<double> values, SeededDraws stream)
    {
        Span<double> x = inputs.Length <= 64 ? stackalloc double[inputs.Length] : new double[inputs.Length];
        for (var i = 0; i < values.Length; i++)
        {
            for (var k = 0; k < inputs.Length; k++)
            {
                ref readonly var input = ref inputs[k];
                x[k] = input.Centre + (input.Spread * (input.Shape == DrawnShape.Normal ? stream.Normal() : (2 * stream.Uniform()) - 1));
            }

            values[i] = model(x);
        }
    }
}

/// <summary>What random draws gave.</summary>
public sealed class Propagated
{
    private readonly double[] _values;

    internal Propagated(double[] values)
    {
        _values = values;
        var sum = 0.0;
        foreach (var value in values)
        {
            sum += value;
        }

        Mean = sum / values.Length;
        var squares = 0.0;
        foreach (var value in values)
        {
            squares += (value - Mean) * (value - Mean);
        }

        Deviation = Math.Sqrt(squares / (values.Length - 1));
    }

    /// <summary>How many draws.</summary>
    public int Draws => _values.Length;

    /// <summary>Mean.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation: the standard uncertainty.</summary>
    public double Deviation { get; }

    /// <summary>The value below which a share of the draws lies, by selection.</summary>
    /// <param name="share">Share, 0 to 1.</param>
    public double At(double share) => Selection.Quantile(_values, share);

    /// <summary>The share of the draws that are as wanted.</summary>
    public double Share(Predicate<double> wanted) => (double)_values.Count(v => wanted(v)) / _values.Length;
}
