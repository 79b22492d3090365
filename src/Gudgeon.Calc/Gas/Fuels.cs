using Gudgeon.Calc.Catalogue;
using static Gudgeon.Calc.Gas.PhysicalConstants;

namespace Gudgeon.Calc.Gas;

/// <summary>The fuels that formulas offer by name.</summary>
public enum FuelChoice
{
    /// <summary>2,2,4-trimethylpentane.</summary>
    IsoOctane,

    /// <summary>Unleaded petrol of 95 research octane.</summary>
    Petrol95,

    /// <summary>Unleaded petrol of 98 research octane.</summary>
    Petrol98,

    /// <summary>Unleaded race petrol of 102 research octane.</summary>
    Petrol102,

    /// <summary>Ethanol, water-free.</summary>
    Ethanol,

    /// <summary>85 % ethanol, 15 % petrol by volume.</summary>
    E85,

    /// <summary>Methanol, water-free.</summary>
    Methanol,
}

/// <summary>
/// Fuels with their figures. Petrols are types, not analyses: CH1.87 with a mean molar mass of 110 g/mol; use the supplier's
/// data sheet for a fuel that is really bought.
/// </summary>
public static class Fuels
{
    private const string PureSource = "heats of formation NASA/TP-2002-211556; octane numbers Florian and Liming, measured";
    private const string PetrolSource = "type of fuel: Heywood, Internal Combustion Engine Fundamentals, 1st ed., table D.4; heating value and latent heat U.S. DOE AFDC, Properties of Fuels";

    /// <summary>2,2,4-trimethylpentane.</summary>
    public static Fuel IsoOctane { get; } = Pure("iso-octane", Species.IsoOctane, Species.IsoOctaneLiquid, new(IsoOctane: 1), 692, 100, 100);

    /// <summary>Ethanol.</summary>
    public static Fuel Ethanol { get; } = Pure("ethanol", Species.Ethanol, Species.EthanolLiquid, new(Ethanol: 1), 789, 108.6, 89.7);

    /// <summary>Methanol.</summary>
    public static Fuel Methanol { get; } = Pure("methanol", Species.Methanol, Species.MethanolLiquid, new(Methanol: 1), 792, 108.7, 88.6);

    /// <summary>Petrol 95.</summary>
    public static Fuel Petrol95 { get; } = Petrol("petrol 95", 95, 85, 745);

    /// <summary>Petrol 98.</summary>
    public static Fuel Petrol98 { get; } = Petrol("petrol 98", 98, 88, 750);

    /// <summary>Race petrol 102.</summary>
    public static Fuel Petrol102 { get; } = Petrol("race petrol 102", 102, 90, 755);

    /// <summary>E85.</summary>
    public static Fuel E85 { get; } = EthanolBlend("E85", Petrol95, 0.85);

    /// <summary>The fuel of a choice.</summary>
    public static Fuel Of(FuelChoice choice) => choice switch
    {
        FuelChoice.IsoOctane => IsoOctane,
        FuelChoice.Petrol95 => Petrol95,
        FuelChoice.Petrol98 => Petrol98,
        FuelChoice.Petrol102 => Petrol102,
        FuelChoice.Ethanol => Ethanol,
        FuelChoice.E85 => E85,
        FuelChoice.Methanol => Methanol,
        _ => throw new ArgumentOutOfRangeException(nameof(choice), choice, null),
    };

    /// <summary>Petrol with a volume share of ethanol. Octane numbers are blended by mole, which octane only roughly follows.</summary>
    /// <param name="name">Name of the blend.</param>
    /// <param name="petrol">The petrol.</param>
    /// <param name="volumeShare">Volume of ethanol in the volume of both before mixing.</param>
    public static Fuel EthanolBlend(string name, Fuel petrol, double volumeShare)
    {
        var ethanolMass = volumeShare * Ethanol.Density;
        var density = ethanolMass + ((1 - volumeShare) * petrol.Density);
        var e = ethanolMass / density;
        var ethanolMoles = e / Ethanol.MolarMass;
        var petrolMoles = (1 - e) / petrol.MolarMass;
        var m = ethanolMoles / (ethanolMoles + petrolMoles);
        return new Fuel(
            name,
            (m * Ethanol.Molecule) + ((1 - m) * petrol.Molecule),
            new(IsoOctane: (1 - e) * petrol.Shares.IsoOctane, Ethanol: e + ((1 - e) * petrol.Shares.Ethanol), Methanol: (1 - e) * petrol.Shares.Methanol),
            (e * Ethanol.HeatingValue) + ((1 - e) * petrol.HeatingValue),
            (e * Ethanol.LatentHeat) + ((1 - e) * petrol.LatentHeat))
        {
            Density = density,
            ResearchOctane = (m * Ethanol.ResearchOctane) + ((1 - m) * petrol.ResearchOctane),
            MotorOctane = (m * Ethanol.MotorOctane) + ((1 - m) * petrol.MotorOctane),
            Source = "mass-weighted from ethanol and " + petrol.Name + "; octane by mole share",
            Provenance = Provenance.CommonPractice,
        };
    }

    private static Fuel Pure(string name, Species vapour, Species liquid, FuelShares shares, double density, double research, double motor)
    {
        var molecule = vapour.Atoms();
        var liquidEnthalpy = NasaPolynomial.Enthalpy(liquid, ReferenceTemperature);
        var burned = (molecule.Carbon * NasaPolynomial.Enthalpy(Species.CO2, ReferenceTemperature))
            + (0.5 * molecule.Hydrogen * NasaPolynomial.Enthalpy(Species.H2O, ReferenceTemperature));
        return new Fuel(
            name,
            molecule,
            shares,
            (liquidEnthalpy - burned) / molecule.Mass,
            (NasaPolynomial.Enthalpy(vapour, ReferenceTemperature) - liquidEnthalpy) / molecule.Mass)
        {
            Density = density,
            ResearchOctane = research,
            MotorOctane = motor,
            Source = PureSource,
            Provenance = Provenance.Published,
        };
    }

    private static Fuel Petrol(string name, double research, double motor, double density)
    {
        var carbon = 110e-3 / new Elements(Carbon: 1, Hydrogen: 1.87).Mass;
        return new Fuel(name, carbon * new Elements(Carbon: 1, Hydrogen: 1.87), new(IsoOctane: 1), 43.44e6, 349e3)
        {
            Density = density,
            ResearchOctane = research,
            MotorOctane = motor,
            Source = PetrolSource,
            Provenance = Provenance.FromMemory,
        };
    }
}
