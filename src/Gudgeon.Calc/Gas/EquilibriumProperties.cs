using static Gudgeon.Calc.Gas.PhysicalConstants;

namespace Gudgeon.Calc.Gas;

/// <summary>
/// Properties of an equilibrium composition and their derivatives (Gordon and McBride, NASA RP-1311 part I, 1994, eqs 2.50
/// to 2.76), written on the balances of <see cref="ProductData.Contents"/>.
/// </summary>
internal static class EquilibriumProperties
{
    private const int Size = ProductData.Balances + 1;

    internal static EquilibriumState Of(ProductAmounts moles, double temperature, double pressure, ReadOnlySpan<double> cp, ReadOnlySpan<double> enthalpy, ReadOnlySpan<double> gibbs, EquilibriumGuess solution)
    {
        Span<double> matrix = stackalloc double[Size * Size];
        Span<double> byT = stackalloc double[Size];
        Span<double> byP = stackalloc double[Size];
        matrix.Clear();
        byT.Clear();
        byP.Clear();
        Fill(moles, enthalpy, matrix, byT, byP);
        SolveSymmetric(matrix, byT, byP);

        var (total, h, s, frozen, reacting) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var j = 0; j < ProductAmounts.Count; j++)
        {
            var n = moles[j];
            total += n;
            h += n * enthalpy[j];
            frozen += n * cp[j];
            s += n > 0 ? n * (enthalpy[j] - gibbs[j] - Math.Log(n)) : 0;
            var shift = enthalpy[j] + byT[Size - 1];
            for (var k = 0; k < ProductData.Balances; k++)
            {
                shift += ProductData.Contents[(j * ProductData.Balances) + k] * byT[k];
            }

            reacting += n * enthalpy[j] * shift;
        }

        return new EquilibriumState
        {
            Moles = moles,
            Temperature = temperature,
            Pressure = pressure,
            TotalMoles = total,
            Enthalpy = MolarGasConstant * temperature * h,
            Entropy = MolarGasConstant * (s - (total * Math.Log(pressure / StandardPressure / total))),
            FrozenHeatCapacity = MolarGasConstant * frozen,
            HeatCapacity = MolarGasConstant * (frozen + reacting),
            VolumeByTemperature = 1 + byT[Size - 1],
            VolumeByPressure = -1 + byP[Size - 1],
            Solution = solution,
        };
    }

    /// <summary>RP-1311 eqs 2.56-2.57 (temperature) and 2.64-2.65 (pressure): unknowns are the element potentials' derivatives and that of ln moles.</summary>
    private static void Fill(ReadOnlySpan<double> moles, ReadOnlySpan<double> enthalpy, Span<double> matrix, Span<double> byT, Span<double> byP)
    {
        for (var j = 0; j < ProductAmounts.Count; j++)
        {
            var n = moles[j];
            var a = ProductData.Contents.AsSpan(j * ProductData.Balances, ProductData.Balances);
            byT[Size - 1] -= n * enthalpy[j];
            byP[Size - 1] += n;
            for (var k = 0; k < ProductData.Balances; k++)
            {
                var content = a[k] * n;
                if (content == 0)
                {
                    continue;
                }

                byT[k] -= content * enthalpy[j];
                byP[k] += content;
                matrix[(k * Size) + Size - 1] += content;
                for (var i = k; i < ProductData.Balances; i++)
                {
                    matrix[(k * Size) + i] += content * a[i];
                }
            }
        }
    }

    /// <summary>
    /// Elimination of the upper triangle for two right-hand sides, in place, without pivoting: the balances' block is
    /// positive definite and the last row's complement negative. An element that is absent has a zero row and gets zero.
    /// </summary>
    private static void SolveSymmetric(Span<double> m, Span<double> b, Span<double> c)
    {
        for (var k = 0; k < Size; k++)
        {
            var pivot = m[(k * Size) + k];
            var inverse = pivot == 0 ? 0 : 1 / pivot;
            for (var i = k + 1; i < Size; i++)
            {
                var factor = m[(k * Size) + i] * inverse;
                for (var j = i; j < Size; j++)
                {
                    m[(i * Size) + j] -= factor * m[(k * Size) + j];
                }

                b[i] -= factor * b[k];
                c[i] -= factor * c[k];
            }
        }

        for (var k = Size - 1; k >= 0; k--)
        {
            var pivot = m[(k * Size) + k];
            for (var j = k + 1; j < Size; j++)
            {
                b[k] -= m[(k * Size) + j] * b[j];
                c[k] -= m[(k * Size) + j] * c[j];
            }

            b[k] = pivot == 0 ? 0 : b[k] / pivot;
            c[k] = pivot == 0 ? 0 : c[k] / pivot;
        }
    }
}
