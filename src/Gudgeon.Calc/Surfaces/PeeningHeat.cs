using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Surfaces;

/// <summary>Metals that are peened.</summary>
public enum PeenedMetal
{
    /// <summary>Steel.</summary>
    Steel,

    /// <summary>Aluminium alloy.</summary>
    Aluminium,

    /// <summary>Titanium alloy.</summary>
    Titanium,
}

/// <summary>Heat that peening outlasts.</summary>
public static class PeeningHeat
{
    /// <summary>Hottest that a peened part may be made afterwards, K: above it the compression fades.</summary>
    /// <param name="metal">Metal.</param>
    [Formula(
        "heat allowed after peening",
        "steel 475 °F, aluminium 200 °F, titanium 600 °F",
        "AMS-S-13165 (from memory)",
        Provenance = Provenance.FromMemory,
        Caution = "A part that was carburised and tempered at 150 °C to 200 °C loses its hardness sooner: the lower of both rules.")]
    [return: Quantity("greatest temperature", Dimension.Temperature, "°C")]
    public static double Greatest([Quantity("metal", Dimension.Number)] PeenedMetal metal)
    {
        var fahrenheit = metal switch { PeenedMetal.Aluminium => 200, PeenedMetal.Titanium => 600, _ => 475 };
        return ((fahrenheit - 32) / 1.8) + 273.15;
    }
}
