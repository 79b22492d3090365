using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>Rate and free length found on a spring tester.</summary>
/// <param name="Rate">Spring rate, N/m.</param>
/// <param name="FreeLength">Length at which the line through both readings meets zero load, m.</param>
public readonly record struct TestedSpring(
    [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R")] double Rate,
    [Quantity("free length", Dimension.Length, "mm", Symbol = "L0")] double FreeLength);

/// <summary>Load, length and energy of a spring of known rate.</summary>
public static class SpringLoad
{
    /// <summary>Load at a length between solid and free, N. Past coil bind there is no answer.</summary>
    /// <param name="rate">Spring rate, N/m.</param>
    /// <param name="freeLength">Free length, m.</param>
    /// <param name="height">Length at which the load is wanted, m.</param>
    /// <param name="solidLength">Solid length, m.</param>
    [Formula("spring load at a height", "F = R (L0 - L)", "EN 13906-1:2013; definition of the rate", Provenance = Provenance.Definition, Validity = "between the solid length Ls and the free length")]
    [return: Quantity("load", Dimension.Force, "N", Symbol = "F")]
    public static double AtHeight(
        [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R", Above = 0)] double rate,
        [Quantity("free length", Dimension.Length, "mm", Symbol = "L0", Above = 0)] double freeLength,
        [Quantity("height", Dimension.Length, "mm", Symbol = "L", Above = 0)] double height,
        [Quantity("solid length", Dimension.Length, "mm", Symbol = "Ls", Above = 0)] double solidLength)
    {
        FormulaDomainException.Unless(solidLength < freeLength, "solid length: must be less than the free length");
        FormulaDomainException.Unless(height >= solidLength, "height: less than the solid length, the spring is coil-bound");
        FormulaDomainException.Unless(height <= freeLength, "height: greater than the free length, the spring is loose");
        return rate * (freeLength - height);
    }

    /// <summary>Free length that carries a given load at a given length, m.</summary>
    /// <param name="load">Load, N.</param>
    /// <param name="rate">Spring rate, N/m.</param>
    /// <param name="height">Length under that load, m.</param>
    [Formula("spring free length", "L0 = L + F / R", "EN 13906-1:2013; definition of the rate", Provenance = Provenance.Definition)]
    [return: Quantity("free length", Dimension.Length, "mm", Symbol = "L0")]
    public static double FreeLength(
        [Quantity("load", Dimension.Force, "N", Symbol = "F", Min = 0)] double load,
        [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R", Above = 0)] double rate,
        [Quantity("height under the load", Dimension.Length, "mm", Symbol = "L", Above = 0)] double height) =>
        height + (load / rate);

    /// <summary>Rate and free length from two readings of a spring tester.</summary>
    /// <param name="firstHeight">Greater length, m.</param>
    /// <param name="firstLoad">Load there, N.</param>
    /// <param name="secondHeight">Smaller length, m.</param>
    /// <param name="secondLoad">Load there, N.</param>
    [Formula("spring rate from two heights", "R = (F2 - F1) / (L1 - L2); L0 = L1 + F1 / R", "definition of the rate; EN 13906-1:2013 measures between 30 % and 70 % of the travel", Provenance = Provenance.Definition)]
    public static TestedSpring FromTwoHeights(
        [Quantity("first height", Dimension.Length, "mm", Symbol = "L1", Above = 0)] double firstHeight,
        [Quantity("load at first height", Dimension.Force, "N", Symbol = "F1", Min = 0)] double firstLoad,
        [Quantity("second height", Dimension.Length, "mm", Symbol = "L2", Above = 0)] double secondHeight,
        [Quantity("load at second height", Dimension.Force, "N", Symbol = "F2", Min = 0)] double secondLoad)
    {
        FormulaDomainException.Unless(secondHeight < firstHeight, "second height: must be less than the first height");
        FormulaDomainException.Unless(secondLoad > firstLoad, "load at second height: must be greater than the load at the first height");
        var rate = (secondLoad - firstLoad) / (firstHeight - secondHeight);
        return new TestedSpring(rate, firstHeight + (firstLoad / rate));
    }

    /// <summary>Energy that goes into a spring between two deflections, J.</summary>
    /// <param name="rate">Spring rate, N/m.</param>
    /// <param name="start">Deflection at the start, m.</param>
    /// <param name="end">Deflection at the end, m.</param>
    [Formula("spring energy", "W = R (f2^2 - f1^2) / 2", "integral of load over deflection", Provenance = Provenance.Definition)]
    [return: Quantity("energy", Dimension.Energy, "J", Symbol = "W")]
    public static double Energy(
        [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R", Above = 0)] double rate,
        [Quantity("deflection at the start", Dimension.Length, "mm", Symbol = "f1", Min = 0)] double start,
        [Quantity("deflection at the end", Dimension.Length, "mm", Symbol = "f2", Min = 0)] double end) =>
        rate * (end - start) * (end + start) / 2;

    /// <summary>Load left in hand before a spring goes solid, as a share of the working load.</summary>
    /// <param name="solidLoad">Load at solid, N.</param>
    /// <param name="load">Greatest working load, N.</param>
    [Formula("spring clash allowance", "ξ = Fs / F - 1", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-17 (advises 0.15 or more)")]
    [return: Quantity("clash allowance", Dimension.Number, Symbol = "ξ")]
    public static double ClashAllowance(
        [Quantity("load at solid", Dimension.Force, "N", Symbol = "Fs", Above = 0)] double solidLoad,
        [Quantity("greatest working load", Dimension.Force, "N", Symbol = "F", Above = 0)] double load) =>
        (solidLoad / load) - 1;
}
