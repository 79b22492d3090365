using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Materials;

/// <summary>Strength of steel from its hardness.</summary>
public static class RockwellHardness
{
    /// <summary>Hardness of the first entry, HRC; the others follow one by one.</summary>
    private const int First = 30;

    /// <summary>Tensile strength at each whole HRC from <see cref="First"/>, MPa.</summary>
    private static readonly double[] Table =
    [
        950, 980, 1000, 1025, 1055, 1080, 1115, 1160, 1180, 1215,
        1250, 1295, 1340, 1385, 1435, 1480, 1530, 1580, 1635, 1695,
        1760, 1820, 1880, 1950, 2015, 2075,
    ];

    /// <summary>Tensile strength of through-hardened steel, Pa.</summary>
    /// <param name="hardness">Rockwell hardness, HRC.</param>
    [Formula(
        "tensile strength from Rockwell hardness",
        "table, straight lines between whole HRC",
        "SAE J417 as tabled by makers (44 HRC to 55 HRC read, below from memory)",
        Provenance = Provenance.FromMemory,
        Validity = "Through-hardened steel, 30 HRC to 55 HRC.",
        Caution = "Approximate. The case of a carburised or nitrided part has no tensile strength of its own: take that of the core.")]
    [return: Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Rm")]
    public static double Strength([Quantity("Rockwell hardness, HRC", Dimension.Number, Symbol = "HRC", Min = 30, Max = 55)] double hardness)
    {
        var below = Math.Min((int)(hardness - First), Table.Length - 2);
        var share = hardness - First - below;
        return 1e6 * (Table[below] + (share * (Table[below + 1] - Table[below])));
    }
}
