using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Materials;

/// <summary>Strength of a material up to a section thickness.</summary>
/// <param name="UpTo">Greatest section, m.</param>
/// <param name="Yield">Yield strength Rp0.2, Pa.</param>
/// <param name="Tensile">Tensile strength, Pa.</param>
public readonly record struct SectionStrength(double UpTo, double Yield, double Tensile);

/// <summary>One row of the material table.</summary>
/// <param name="Grade">Which material and condition.</param>
/// <param name="Modulus">Young's modulus, Pa.</param>
/// <param name="Poisson">Poisson's ratio.</param>
/// <param name="Expansion">Linear expansion 20 to 100 °C, 1/K.</param>
/// <param name="Density">Density, kg/m³.</param>
/// <param name="Strengths">Strength by section, thinnest first.</param>
/// <param name="Source">Where the strengths come from.</param>
/// <param name="Provenance">How the row is known.</param>
public sealed record Material(
    MaterialGrade Grade,
    double Modulus,
    double Poisson,
    double Expansion,
    double Density,
    IReadOnlyList<SectionStrength> Strengths,
    string Source,
    Provenance Provenance)
{
    /// <summary>Strength at a section thickness.</summary>
    /// <param name="section">Ruling section, m.</param>
    /// <exception cref="FormulaDomainException">The section is thicker than the table goes.</exception>
    public SectionStrength At(double section)
    {
        foreach (var strength in Strengths)
        {
            if (section <= strength.UpTo * (1 + 1e-9))
            {
                return strength;
            }
        }

        throw new FormulaDomainException($"section: {Grade} has no strength in the table at this thickness");
    }
}
