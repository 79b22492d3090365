using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Gudgeon.Calc.Metrology;

/// <summary>
/// Random numbers from a seed: the same seed gives the same numbers on every machine and in every version.
/// Generator xoshiro256++ (Blackman and Vigna, 2019), seeded by SplitMix64; normal numbers by the ziggurat of Marsaglia and Tsang
/// (2000) in the form of Doornik (2005). Source: both from memory; the tests hold mean, spread, tails and independence.
/// </summary>
public struct SeededDraws
{
    private const int Layers = 128;
    private const double Edge = 3.442619855899;
    private const double LayerArea = 9.91256303526217e-3;
    private const double Unit = 1.0 / (1L << 53);
    private const double Step = 2 * Unit;

    private static readonly double[] Widths = MakeWidths();
    private static readonly double[] Inside = [.. Enumerable.Range(0, Layers).Select(i => Widths[i + 1] / Widths[i])];

    // The same counted in steps of a place, so that most numbers take one comparison of integers and one product.
    private static readonly long[] InsideSteps = [.. Inside.Select(r => (long)(r / Step))];
    private static readonly double[] StepWidths = [.. Widths.Select(w => w * Step)];

    private ulong _a;
    private ulong _b;
    private ulong _c;
    private ulong _d;

    /// <param name="seed">Seed.</param>
    /// <param name="stream">Number of the stream: streams of one seed are independent of each other.</param>
    public SeededDraws(ulong seed, ulong stream = 0)
    {
        var state = seed ^ Mixed(stream + 0x632BE59BD9B4E019);
        _a = Next(ref state);
        _b = Next(ref state);
        _c = Next(ref state);
        _d = Next(ref state);
    }

    /// <summary>A number from 0 up to 1, 1 left out.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Uniform() => (long)(Bits() >> 11) * Unit;

    /// <summary>A number of the normal distribution with mean 0 and standard deviation 1.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Normal()
    {
        // Layer and place come from bits of one number that do not overlap.
        var bits = Bits();
        var (layer, steps) = ((int)(bits & (Layers - 1)), (long)bits >> 11);
        return (ulong)(steps + InsideSteps[layer]) < (ulong)(2 * InsideSteps[layer]) ? steps * StepWidths[layer] : AtTheRim(layer, steps * Step);
    }

    /// <summary>Fills one column of rows with normal numbers: the same as one call of <see cref="Normal"/> after the other.</summary>
    /// <param name="rows">The rows, one after the other.</param>
    /// <param name="column">The column.</param>
    /// <param name="width">Numbers in a row.</param>
    /// <param name="mean">Mean.</param>
    /// <param name="deviation">Standard deviation.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Normals(Span<double> rows, int column, int width, double mean, double deviation)
    {
        // The state in locals, which stay in registers: a struct whose address is taken does not.
        var (a, b, c, d) = (_a, _b, _c, _d);
        ref var widths = ref MemoryMarshal.GetArrayDataReference(StepWidths);
        ref var inside = ref MemoryMarshal.GetArrayDataReference(InsideSteps);
        for (var i = column; i < rows.Length; i += width)
        {
            var bits = BitOperations.RotateLeft(a + d, 23) + a;
            var t = b << 17;
            c ^= a;
            d ^= b;
            b ^= c;
            a ^= d;
            c ^= t;
            d = BitOperations.RotateLeft(d, 45);
            var (layer, steps) = ((int)(bits & (Layers - 1)), (long)bits >> 11);
            var edge = Unsafe.Add(ref inside, layer);
            if ((ulong)(steps + edge) < (ulong)(2 * edge))
            {
                rows[i] = mean + (deviation * (steps * Unsafe.Add(ref widths, layer)));
            }
            else
            {
                (_a, _b, _c, _d) = (a, b, c, d);
                rows[i] = mean + (deviation * AtTheRim(layer, steps * Step));
                (a, b, c, d) = (_a, _b, _c, _d);
            }
        }

        (_a, _b, _c, _d) = (a, b, c, d);
    }

    private double AtTheRim(int layer, double place)
    {
        while (true)
        {
            if (Math.Abs(place) < Inside[layer])
            {
                return place * Widths[layer];
            }

            if (layer == 0)
            {
                return Math.CopySign(Tail(), place);
            }

            var x = place * Widths[layer];
            var (outer, inner) = (Math.Exp(-0.5 * ((Widths[layer] * Widths[layer]) - (x * x))), Math.Exp(-0.5 * ((Widths[layer + 1] * Widths[layer + 1]) - (x * x))));
            if (inner + (Uniform() * (outer - inner)) < 1)
            {
                return x;
            }

            var bits = Bits();
            (layer, place) = ((int)(bits & (Layers - 1)), ((long)bits >> 11) * Step);
        }
    }

    /// <summary>A number beyond the outermost layer (Marsaglia 1964).</summary>
    private double Tail()
    {
        while (true)
        {
            var x = -Math.Log(1 - Uniform()) / Edge;
            if (-2 * Math.Log(1 - Uniform()) >= x * x)
            {
                return Edge + x;
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private ulong Bits()
    {
        var result = BitOperations.RotateLeft(_a + _d, 23) + _a;
        var t = _b << 17;
        _c ^= _a;
        _d ^= _b;
        _b ^= _c;
        _a ^= _d;
        _c ^= t;
        _d = BitOperations.RotateLeft(_d, 45);
        return result;
    }

    private static ulong Next(ref ulong state) => Mixed(state += 0x9E3779B97F4A7C15);

    private static ulong Mixed(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    private static double[] MakeWidths()
    {
        var widths = new double[Layers + 1];
        var density = Math.Exp(-0.5 * Edge * Edge);
        (widths[0], widths[1]) = (LayerArea / density, Edge);
        for (var i = 2; i < Layers; i++)
        {
            widths[i] = Math.Sqrt(-2 * Math.Log((LayerArea / widths[i - 1]) + density));
            density = Math.Exp(-0.5 * widths[i] * widths[i]);
        }

        return widths;
    }
}
