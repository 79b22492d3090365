using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Gudgeon.Simulation.Pipes;

/// <summary>Vectors out of arrays and into them at any index. Arrays are padded for it; nothing is checked.</summary>
internal static class Lanes
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ref double First(double[] array) => ref MemoryMarshal.GetArrayDataReference(array);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector<double> At(ref double first, int i) => Unsafe.ReadUnaligned<Vector<double>>(ref Unsafe.As<double, byte>(ref Unsafe.Add(ref first, i)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector<double> At(double[] array, int i) => At(ref First(array), i);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Put(double[] array, int i, Vector<double> value) => Unsafe.WriteUnaligned(ref Unsafe.As<double, byte>(ref Unsafe.Add(ref First(array), i)), value);
}
