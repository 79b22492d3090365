using System.Runtime.CompilerServices;

namespace Gudgeon.Calc.Gas;

/// <summary>
/// Amounts of the twelve product species CO2 CO H2O H2 H O OH O2 NO N2 N Ar, mol per kilogram of gas, held in place so
/// that no state of a gas is ever allocated. Index with <c>(int)Species</c>.
/// </summary>
[InlineArray(Count)]
public struct ProductAmounts
{
    /// <summary>Number of product species.</summary>
    public const int Count = 12;

    private double _first;
}
