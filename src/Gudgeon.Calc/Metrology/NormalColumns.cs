using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Gudgeon.Calc.Metrology;

/// <summary>
/// Normal numbers from a seed, a column of rows at a time: four generators of <see cref="SeededDraws"/> side by side in one
/// vector, and a fifth for the few numbers at the rim of a layer. The same seed gives the same numbers, whether a machine
/// works on four at once or one after the other.
/// </summary>
public struct NormalColumns
{
    private const int Lanes = 4;

    /// <summary>Vectors between two visits to the rims.</summary>
    private const int Most = 64;

    private Vector256<ulong> _a;
    private Vector256<ulong> _b;
    private Vector256<ulong> _c;
    private Vector256<ulong> _d;
    private SeededDraws _rim;

    /// <param name="seed">Seed.</param>
    /// <param name="stream">Number of the stream: streams of one seed are independent of each other.</param>
    public NormalColumns(ulong seed, ulong stream = 0)
    {
        // Streams beyond those that single draws are numbered by.
        var first = (1UL << 63) + (stream * (Lanes + 1));
        (ulong A, ulong B, ulong C, ulong D) Lane(ulong lane) => new SeededDraws(seed, first + lane).State;
        var (p, q, r, s) = (Lane(0), Lane(1), Lane(2), Lane(3));
        _a = Vector256.Create(p.A, q.A, r.A, s.A);
        _b = Vector256.Create(p.B, q.B, r.B, s.B);
        _c = Vector256.Create(p.C, q.C, r.C, s.C);
        _d = Vector256.Create(p.D, q.D, r.D, s.D);
        _rim = new SeededDraws(seed, first + Lanes);
    }

    /// <summary>Fills one column of rows with normal numbers.</summary>
    /// <param name="rows">The rows, one after the other.</param>
    /// <param name="column">The column.</param>
    /// <param name="width">Numbers in a row.</param>
    /// <param name="mean">Mean.</param>
    /// <param name="deviation">Standard deviation.</param>
    public void Fill(Span<double> rows, int column, int width, double mean, double deviation)
    {
        Span<Rim> rims = stackalloc Rim[Most];
        for (var from = 0; from < rows.Length; from += Most * Lanes * width)
        {
            var some = rows[from..Math.Min(rows.Length, from + (Most * Lanes * width))];
            foreach (var rim in rims[..Fill(some, column, width, mean, deviation, rims)])
            {
                AtTheRim(some, width, mean, deviation, rim);
            }
        }
    }

    /// <summary>Fills what lies in the middle of its layer, and notes the rest: a branch for each would be guessed wrong too often.</summary>
    /// <returns>How many are noted.</returns>
    private int Fill(Span<double> rows, int column, int width, double mean, double deviation, Span<Rim> rims)
    {
        // The state in locals, which stay in registers: a struct whose address is taken does not.
        var (a, b, c, d) = (_a, _b, _c, _d);
        ref var inside = ref MemoryMarshal.GetArrayDataReference(SeededDraws.Inside);
        ref var widths = ref MemoryMarshal.GetArrayDataReference(SeededDraws.Widths);
        var noted = 0;
        for (var i = column; i < rows.Length; i += Lanes * width)
        {
            var bits = Turned(a + d, 23) + a;
            var t = b << 17;
            c ^= a;
            d ^= b;
            b ^= c;
            a ^= d;
            c ^= t;
            d = Turned(d, 45);

            var layers = bits & Vector256.Create((ulong)SeededDraws.Layers - 1);
            var (l0, l1, l2, l3) = ((nint)layers[0], (nint)layers[1], (nint)layers[2], (nint)layers[3]);
            var place = (2 * ((bits >>> SeededDraws.NotOfThePlace) | Vector256.Create(SeededDraws.One)).AsDouble()) - Vector256.Create(3.0);
            var edge = Vector256.Create(Unsafe.Add(ref inside, l0), Unsafe.Add(ref inside, l1), Unsafe.Add(ref inside, l2), Unsafe.Add(ref inside, l3));
            var value = place * Vector256.Create(Unsafe.Add(ref widths, l0), Unsafe.Add(ref widths, l1), Unsafe.Add(ref widths, l2), Unsafe.Add(ref widths, l3));
            var outside = Vector256.GreaterThanOrEqual(Vector256.Abs(place), edge).ExtractMostSignificantBits();
            rims[noted] = new Rim(i, outside, layers, place);
            noted += outside == 0 ? 0 : 1;
            Write(rows, i, width, Vector256.Create(mean) + (deviation * value));
        }

        (_a, _b, _c, _d) = (a, b, c, d);
        return noted;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Write(Span<double> rows, int at, int width, Vector256<double> value)
    {
        if (at + ((Lanes - 1) * width) < rows.Length)
        {
            rows[at] = value[0];
            rows[at + width] = value[1];
            rows[at + (2 * width)] = value[2];
            rows[at + (3 * width)] = value[3];
            return;
        }

        for (var lane = 0; at + (lane * width) < rows.Length; lane++)
        {
            rows[at + (lane * width)] = value[lane];
        }
    }

    private void AtTheRim(Span<double> rows, int width, double mean, double deviation, in Rim rim)
    {
        for (var left = rim.Lanes; left != 0; left &= left - 1)
        {
            var lane = BitOperations.TrailingZeroCount(left);
            if (rim.At + (lane * width) < rows.Length)
            {
                rows[rim.At + (lane * width)] = mean + (deviation * _rim.AtTheRim((int)rim.Layers[lane], rim.Places[lane]));
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<ulong> Turned(Vector256<ulong> bits, int by) => (bits << by) | (bits >>> (64 - by));

    /// <summary>A vector with numbers that do not lie in the middle of their layers.</summary>
    /// <param name="At">Where its first number belongs.</param>
    /// <param name="Lanes">Which they are, a bit for each.</param>
    /// <param name="Layers">Their layers.</param>
    /// <param name="Places">Their places in the width of the layer.</param>
    private readonly record struct Rim(int At, uint Lanes, Vector256<ulong> Layers, Vector256<double> Places);
}
