using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Materials;

/// <summary>What heat leaves of the strength of aluminium alloys.</summary>
public static class HotStrength
{
    private const double Zero = 273.15;

    /// <summary>Temperatures of the rows, °C.</summary>
    private static readonly double[] Temperatures = [24, 100, 149, 204, 260];

    /// <summary>Tensile strength at them, MPa, typical, after 10 000 h there.</summary>
    private static readonly Dictionary<MaterialGrade, double[]> Tensile = new()
    {
        [MaterialGrade.Aluminium2618T61] = [440, 425, 345, 220, 90],
        [MaterialGrade.Aluminium7075T6] = [570, 485, 215, 110, 75],
        [MaterialGrade.Aluminium2024T351] = [485, 455, 380, 185, 75],
        [MaterialGrade.Aluminium6061T6] = [310, 290, 235, 130, 51],
    };

    /// <summary>Whether the hot strength of a material is known here.</summary>
    public static bool Knows(MaterialGrade material) => Tensile.ContainsKey(material);

    /// <summary>Tensile strength at a temperature over that in the room.</summary>
    /// <param name="material">Material and condition.</param>
    /// <param name="temperature">Temperature, K; 260 °C at the most.</param>
    [Formula(
        "share of strength left when hot",
        "share = Rm(T) / Rm(24 °C), straight between 24, 100, 149, 204 and 260 °C",
        "Aluminum Association and ASM, typical tensile properties at various temperatures, lowest strength in 10 000 h there",
        Provenance = Provenance.FromMemory,
        Validity = "2618A-T61, 7075-T6, 2024-T351 and 6061-T6 up to 260 °C. Parts that are hot for minutes only keep more, 7075 much more at 150 °C; what it has lost in long heat does not come back.")]
    [return: Quantity("share of the strength", Dimension.Number, Symbol = "share")]
    public static double Share(
        [Quantity("material", Dimension.Number)] MaterialGrade material,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0, Max = 260 + Zero)] double temperature)
    {
        FormulaDomainException.Unless(Knows(material), "material: its strength when hot is known of aluminium 2618A-T61, 7075-T6, 2024-T351 and 6061-T6 only");
        var (rows, celsius) = (Tensile[material], Math.Clamp(temperature - Zero, Temperatures[0], Temperatures[^1]));
        var upper = Math.Clamp(Array.FindIndex(Temperatures, t => t >= celsius), 1, Temperatures.Length - 1);
        var along = (celsius - Temperatures[upper - 1]) / (Temperatures[upper] - Temperatures[upper - 1]);
        return (rows[upper - 1] + (along * (rows[upper] - rows[upper - 1]))) / rows[0];
    }
}
