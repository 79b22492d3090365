using System.Runtime.CompilerServices;

namespace Gudgeon.Simulation.Pipes;

/// <summary>Something that grows with a pressure and is to be brought to nothing.</summary>
internal interface IBalance
{
    /// <summary>How much is over at a pressure; below zero where more pressure is wanted.</summary>
    double At(double pressure);
}

/// <summary>The pressure at which a growing balance is nothing.</summary>
internal static class Root
{
    private const double Closely = 1e-9;
    private const int Patient = 12;

    /// <summary>Secants from where the root last was, inside a bracket that every value narrows; halved when a secant leaves it.</summary>
    /// <param name="balance">The balance: not above zero at the lower end, not below at the upper.</param>
    /// <param name="low">Lower end of the bracket, Pa.</param>
    /// <param name="high">Upper end, Pa.</param>
    /// <param name="start">A guess, Pa.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Find<T>(ref T balance, double low, double high, double start)
        where T : struct, IBalance
    {
        low = Math.Max(low, 1e-3 * high);
        var (before, beforeValue) = (0.0, 0.0);
        var x = start > low && start < high ? start : 0.5 * (low + high);
        for (var turn = 0; turn < 60; turn++)
        {
            var value = balance.At(x);
            (low, high) = value < 0 ? (x, high) : (low, x);
            if (value == 0 || high - low < Closely * high)
            {
                return x;
            }

            var next = turn == 0 ? x * (value < 0 ? 1.002 : 0.998) : x - (value * (x - before) / (value - beforeValue));
            // Where the balance bends sharply secants creep along one side: then every other step halves.
            if (!(next > low && next < high) || (turn > Patient && turn % 2 == 0))
            {
                next = 0.5 * (low + high);
            }

            if (Math.Abs(next - x) < Closely * x)
            {
                return next;
            }

            (before, beforeValue, x) = (x, value, next);
        }

        return x;
    }
}
