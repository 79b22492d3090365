namespace Gudgeon.Calc.Gas;

/// <summary>Amounts of the five elements: atoms per molecule, or mol of atoms per kilogram of a mixture.</summary>
public readonly record struct Elements(double Carbon = 0, double Hydrogen = 0, double Oxygen = 0, double Nitrogen = 0, double Argon = 0)
{
    /// <summary>Mass of these amounts, kg/mol (of the molecule) or kg per kg (of a mixture: 1). Atomic weights as in the NASA Glenn data file.</summary>
    public double Mass => 1e-3 * ((12.0107 * Carbon) + (1.00794 * Hydrogen) + (15.9994 * Oxygen) + (14.0067 * Nitrogen) + (39.948 * Argon));

    /// <summary>Oxygen atoms beyond what burns all carbon to CO2 and all hydrogen to H2O; negative when rich.</summary>
    public double OxygenExcess => Oxygen - (2 * Carbon) - (0.5 * Hydrogen);

    public static Elements operator +(Elements a, Elements b) =>
        new(a.Carbon + b.Carbon, a.Hydrogen + b.Hydrogen, a.Oxygen + b.Oxygen, a.Nitrogen + b.Nitrogen, a.Argon + b.Argon);

    public static Elements operator *(double factor, Elements a) =>
        new(factor * a.Carbon, factor * a.Hydrogen, factor * a.Oxygen, factor * a.Nitrogen, factor * a.Argon);
}
