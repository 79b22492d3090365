using Gudgeon.Calc.Catalogue;
using static Gudgeon.Calc.Gas.PhysicalConstants;

namespace Gudgeon.Calc.Gas;

/// <summary>Whether the fuel enters as vapour or as liquid.</summary>
public enum FuelPhase
{
    /// <summary>Fully evaporated.</summary>
    Vapour,

    /// <summary>Liquid; its latent heat cools the charge.</summary>
    Liquid,
}

/// <summary>
/// A fuel: average molecule, heat and octane figures. Its absolute enthalpy per kilogram follows the shares of iso-octane,
/// ethanol and methanol that stand for it, shifted so that burning the liquid at 298.15 K gives exactly the heating value
/// and evaporating it takes exactly the latent heat.
/// </summary>
public sealed record Fuel
{
    private readonly double _liquidShift;
    private readonly double _vapourShift;

    /// <param name="name">Trade name.</param>
    /// <param name="molecule">Atoms of the average molecule: carbon, hydrogen, oxygen.</param>
    /// <param name="shares">Mass shares that stand for its heat capacity.</param>
    /// <param name="heatingValue">Lower heating value of the liquid at 298.15 K, J/kg.</param>
    /// <param name="latentHeat">Latent heat of evaporation at 298.15 K, J/kg.</param>
    public Fuel(string name, Elements molecule, FuelShares shares, double heatingValue, double latentHeat)
    {
        (Name, Molecule, Shares, HeatingValue, LatentHeat) = (name, molecule, shares, heatingValue, latentHeat);
        var formation = HeatingValue + BurnedEnthalpy(molecule);
        _liquidShift = formation - shares.LiquidEnthalpy(ReferenceTemperature);
        _vapourShift = formation + latentHeat - shares.VapourEnthalpy(ReferenceTemperature);
    }

    /// <summary>Trade name.</summary>
    public string Name { get; }

    /// <summary>Atoms of the average molecule.</summary>
    public Elements Molecule { get; }

    /// <summary>Mass shares of the substances that stand for its heat capacity.</summary>
    public FuelShares Shares { get; }

    /// <summary>Lower heating value of the liquid at 298.15 K, J/kg.</summary>
    public double HeatingValue { get; }

    /// <summary>Latent heat of evaporation at 298.15 K, J/kg.</summary>
    public double LatentHeat { get; }

    /// <summary>Density of the liquid at 15 °C (pure substances 20 °C), kg/m³.</summary>
    public required double Density { get; init; }

    /// <summary>Research octane number.</summary>
    public required double ResearchOctane { get; init; }

    /// <summary>Motor octane number.</summary>
    public required double MotorOctane { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required string Source { get; init; }

    /// <summary>How the source is known.</summary>
    public required Provenance Provenance { get; init; }

    /// <summary>Mean molar mass, kg/mol.</summary>
    public double MolarMass => Molecule.Mass;

    /// <summary>Gas constant of the vapour, J/(kg·K).</summary>
    public double VapourGasConstant => MolarGasConstant / MolarMass;

    /// <summary>Atoms, mol per kilogram of fuel.</summary>
    public Elements ElementsPerKilogram => 1 / Molecule.Mass * Molecule;

    /// <summary>Mass of air that burns one kilogram of fuel to CO2 and H2O.</summary>
    public double StoichiometricAirFuelRatio(AirModel air = AirModel.StandardDry) =>
        -ElementsPerKilogram.OxygenExcess / Air.Of(air).Elements.OxygenExcess;

    /// <summary>Heat capacity of the vapour, J/(kg·K), at <paramref name="temperature"/>, K.</summary>
    public double VapourHeatCapacity(double temperature) => Shares.VapourHeatCapacity(temperature);

    /// <summary>Absolute enthalpy of the vapour, J/kg, at <paramref name="temperature"/>, K.</summary>
    public double VapourEnthalpy(double temperature) => Shares.VapourEnthalpy(temperature) + _vapourShift;

    /// <summary>Absolute internal energy of the vapour, J/kg, at <paramref name="temperature"/>, K.</summary>
    public double VapourEnergy(double temperature) => VapourEnthalpy(temperature) - (VapourGasConstant * temperature);

    /// <summary>Absolute enthalpy of the liquid, J/kg, at <paramref name="temperature"/>, K.</summary>
    public double LiquidEnthalpy(double temperature) => Shares.LiquidEnthalpy(temperature) + _liquidShift;

    /// <summary>Absolute enthalpy in the given phase, J/kg, at <paramref name="temperature"/>, K.</summary>
    public double Enthalpy(FuelPhase phase, double temperature) =>
        phase == FuelPhase.Liquid ? LiquidEnthalpy(temperature) : VapourEnthalpy(temperature);

    /// <summary>Enthalpy at 298.15 K of the CO2 and H2O vapour that one kilogram burns to, less that of the oxygen (zero), J/kg.</summary>
    private static double BurnedEnthalpy(Elements molecule) =>
        ((molecule.Carbon * NasaPolynomial.Enthalpy(Species.CO2, ReferenceTemperature))
        + (0.5 * molecule.Hydrogen * NasaPolynomial.Enthalpy(Species.H2O, ReferenceTemperature))
        + (0.5 * molecule.OxygenExcess * NasaPolynomial.Enthalpy(Species.O2, ReferenceTemperature))) / molecule.Mass;
}

/// <summary>Mass shares, together 1, of the three substances whose polynomials stand for a fuel.</summary>
/// <param name="IsoOctane">Iso-octane, also for any hydrocarbon of petrol.</param>
/// <param name="Ethanol">Ethanol.</param>
/// <param name="Methanol">Methanol.</param>
public readonly record struct FuelShares(double IsoOctane = 0, double Ethanol = 0, double Methanol = 0)
{
    private static readonly double OctaneMass = Species.IsoOctane.MolarMass();
    private static readonly double EthanolMass = Species.Ethanol.MolarMass();
    private static readonly double MethanolMass = Species.Methanol.MolarMass();

    internal double VapourHeatCapacity(double t) =>
        Sum(NasaPolynomial.HeatCapacity(Species.IsoOctane, t), NasaPolynomial.HeatCapacity(Species.Ethanol, t), NasaPolynomial.HeatCapacity(Species.Methanol, t));

    internal double VapourEnthalpy(double t) =>
        Sum(NasaPolynomial.Enthalpy(Species.IsoOctane, t), NasaPolynomial.Enthalpy(Species.Ethanol, t), NasaPolynomial.Enthalpy(Species.Methanol, t));

    internal double LiquidEnthalpy(double t) =>
        Sum(NasaPolynomial.Enthalpy(Species.IsoOctaneLiquid, t), NasaPolynomial.Enthalpy(Species.EthanolLiquid, t), NasaPolynomial.Enthalpy(Species.MethanolLiquid, t));

    private double Sum(double octane, double ethanol, double methanol) =>
        (IsoOctane * octane / OctaneMass) + (Ethanol * ethanol / EthanolMass) + (Methanol * methanol / MethanolMass);
}
