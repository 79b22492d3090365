using System.Numerics;
using System.Runtime.CompilerServices;

namespace Gudgeon.Calc.Metrology;

/// <summary>
/// Random numbers from a seed: the same seed gives the same numbers on every machine and in every version.
/// Generator xoshiro256++ (Blackman and Vigna, 2019), seeded by SplitMix64; normal numbers by the ziggurat of Marsaglia and Tsang
/// (2000) in the form of Doornik (2005). Source: both from memory; the tests hold mean, spread, tails and independence.
/// </summary>
public struct SeededDraws
{
    /// <summary>Layers of the ziggurat, numbered by the lowest bits of a random number.</summary>
    internal const int Layers = 256;

    /// <summary>A number of the generator without its lowest twelve bits becomes the fraction of a number from 1 up to 2.</summary>
    internal const int NotOfThePlace = 12;

    /// <summary>Bits of a floating-point number of 1.</summary>
    internal const ulong One = 0x3FF0_0000_0000_0000;

    private const double Edge = 3.6541528853610088;
    private const double LayerArea = 4.928673233974658e-3;
    private const double Unit = 1.0 / (1L << 53);

    /// <summary>Width of each layer.</summary>
    internal static readonly double[] Widths = MakeWidths();

    /// <summary>The share of each layer's width that is wholly under the curve.</summary>
    internal static readonly double[] Inside = [.. Enumerable.Range(0, Layers).Select(i => Widths[i + 1] / Widths[i])];

    // Height of the curve at the edge of each layer, over its middle.
    private static readonly double[] Heights = [.. Widths.Select(w => Math.Exp(-0.5 * w * w))];

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
        var (layer, place) = ((int)(bits & (Layers - 1)), Place(bits));
        return Math.Abs(place) < Inside[layer] ? place * Widths[layer] : AtTheRim(layer, place);
    }

    /// <summary>State of the generator.</summary>
    internal readonly (ulong A, ulong B, ulong C, ulong D) State => (_a, _b, _c, _d);

    /// <summary>A normal number that lies where its layer is not wholly under the curve, or beyond the last.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="place">Place in its width, from -1 up to 1.</param>
    internal double AtTheRim(int layer, double place)
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
            if (Heights[layer + 1] + (Uniform() * (Heights[layer] - Heights[layer + 1])) < Math.Exp(-0.5 * x * x))
            {
                return x;
            }

            var bits = Bits();
            (layer, place) = ((int)(bits & (Layers - 1)), Place(bits));
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

    /// <summary>A place from -1 up to 1.</summary>
    private static double Place(ulong bits) => (2 * BitConverter.UInt64BitsToDouble((bits >> NotOfThePlace) | One)) - 3;

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
