using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Values;

/// <summary>A unit in which people write amounts of one dimension: SI = Factor × value + Offset.</summary>
/// <param name="Symbol">How it is printed: "mm", "N·m", "°C".</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">SI units per unit.</param>
/// <param name="Offset">SI value of zero in this unit; only temperatures have one.</param>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, double Offset)
{
    /// <summary>SI value of an amount in this unit.</summary>
    public double ToSi(double value) => (value * Factor) + Offset;

    /// <summary>Amount in this unit of an SI value.</summary>
    public double FromSi(double si) => (si - Offset) / Factor;
}
