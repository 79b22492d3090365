using System.Runtime.ExceptionServices;
using System.Runtime.Intrinsics;

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
    private const int Cached = 2048;

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
        ArgumentOutOfRangeException.ThrowIfZero(inputs.Count, nameof(inputs));
        DrawnInput[] drawn = [.. inputs];
        var values = GC.AllocateUninitializedArray<double>(draws);
        try
        {
            Parallel.For(0, (draws + Block - 1) / Block, new ParallelOptions { MaxDegreeOfParallelism = cores }, block => Fill(drawn, model, values.AsSpan(block * Block, Math.Min(Block, draws - (block * Block))), new Streams(seed, (ulong)block)));
        }
        catch (AggregateException e)
        {
            // What the formula throws is the caller's to catch.
            ExceptionDispatchInfo.Throw(e.InnerException!);
        }

        return new Propagated(values);
    }

    private static void Fill(DrawnInput[] inputs, DrawnModel model, Span<double> values, Streams streams)
    {
        // Few enough rows at a time to stay in the cache nearest the processor.
        var rows = Math.Clamp(Cached / inputs.Length, 1, values.Length);
        var x = new double[rows * inputs.Length];
        for (var from = 0; from < values.Length; from += rows)
        {
            var some = values.Slice(from, Math.Min(rows, values.Length - from));
            Draw(inputs, x.AsSpan(0, some.Length * inputs.Length), ref streams);
            for (var i = 0; i < some.Length; i++)
            {
                some[i] = model(x.AsSpan(i * inputs.Length, inputs.Length));
            }
        }
    }

    /// <summary>Draws every input into its column.</summary>
    private static void Draw(DrawnInput[] inputs, Span<double> x, ref Streams streams)
    {
        for (var k = 0; k < inputs.Length; k++)
        {
            var (shape, centre, spread) = inputs[k];
            if (shape == DrawnShape.Normal)
            {
                streams.Normal.Fill(x, k, inputs.Length, centre, spread);
            }
            else
            {
                for (var i = k; i < x.Length; i += inputs.Length)
                {
                    x[i] = centre + (spread * ((2 * streams.Even.Uniform()) - 1));
                }
            }
        }
    }
}

/// <summary>The generators of one block.</summary>
/// <param name="seed">Seed.</param>
/// <param name="block">Number of the block.</param>
internal struct Streams(ulong seed, ulong block)
{
    /// <summary>Normal numbers.</summary>
    public NormalColumns Normal = new(seed, block);

    /// <summary>Numbers that lie evenly.</summary>
    public SeededDraws Even = new(seed, block);
}

/// <summary>What random draws gave.</summary>
public sealed class Propagated
{
    private readonly double[] _values;
    private readonly List<int> _placed = [];

    internal Propagated(double[] values)
    {
        _values = values;
        Mean = Sum(values, 0, squared: false) / values.Length;
        Deviation = Math.Sqrt(Sum(values, Mean, squared: true) / (values.Length - 1));
    }

    /// <summary>How many draws.</summary>
    public int Draws => _values.Length;

    /// <summary>Mean.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation: the standard uncertainty.</summary>
    public double Deviation { get; }

    /// <summary>The value below which a share of the draws lies, by selection.</summary>
    /// <param name="share">Share, 0 to 1.</param>
    public double At(double share)
    {
        var rank = Math.Clamp((int)(share * Draws), 0, Draws - 1);
        if (!_placed.Contains(rank))
        {
            // A rank found before parts the values: the next one is sought on its side only.
            var (below, above) = (_placed.Where(r => r < rank).DefaultIfEmpty(-1).Max(), _placed.Where(r => r > rank).DefaultIfEmpty(Draws).Min());
            Selection.Of(_values.AsSpan(below + 1, above - below - 1), rank - below - 1);
            _placed.Add(rank);
        }

        return _values[rank];
    }

    /// <summary>The share of the draws that are as wanted.</summary>
    public double Share(Predicate<double> wanted) => (double)_values.Count(v => wanted(v)) / _values.Length;

    /// <summary>Sum of what the values have over a middle, or of its squares: four sums side by side, on every machine alike.</summary>
    private static double Sum(ReadOnlySpan<double> values, double middle, bool squared)
    {
        var sums = Vector256<double>.Zero;
        var whole = values.Length - (values.Length % Vector256<double>.Count);
        for (var i = 0; i < whole; i += Vector256<double>.Count)
        {
            var over = Vector256.Create(values[i..]) - Vector256.Create(middle);
            sums += squared ? over * over : over;
        }

        var sum = sums[0] + sums[1] + sums[2] + sums[3];
        foreach (var value in values[whole..])
        {
            sum += squared ? (value - middle) * (value - middle) : value - middle;
        }

        return sum;
    }
}
