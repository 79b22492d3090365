using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Calc.Performance;

/// <summary>Gas velocity and heat transfer coefficient in the cylinder.</summary>
/// <param name="GasVelocity">Characteristic gas velocity, m/s.</param>
/// <param name="Coefficient">Heat transfer coefficient, W/(m²·K).</param>
public readonly record struct WallHeatTransfer(
    [Quantity("gas velocity", Dimension.Speed, "m/s", Symbol = "w")] double GasVelocity,
    [Quantity("heat transfer coefficient", Dimension.HeatTransferCoefficient, "W/(m²·K)", Symbol = "h")] double Coefficient);

/// <summary>Heat flux to the wall by convection and radiation.</summary>
/// <param name="Reynolds">Reynolds number on bore and mean piston speed.</param>
/// <param name="Convective">Convective heat flux, W/m².</param>
/// <param name="Radiative">Radiative heat flux, W/m².</param>
/// <param name="Total">Both, W/m².</param>
public readonly record struct WallHeatFlux(
    [Quantity("Reynolds number", Dimension.Number, Symbol = "Re")] double Reynolds,
    [Quantity("convective heat flux", Dimension.HeatFlux, "W/m²")] double Convective,
    [Quantity("radiative heat flux", Dimension.HeatFlux, "W/m²")] double Radiative,
    [Quantity("heat flux", Dimension.HeatFlux, "W/m²", Symbol = "q")] double Total);

/// <summary>Heat transfer from the gas to the walls of the cylinder.</summary>
public static class WallHeat
{
    private const string PairCaution = "3.26 belongs to T^-0.55 with p in kPa; the 1967 paper has about 130 with T^-0.53 and p in bar. Mixing the pairs is wrong by about 15 %.";

    /// <summary>Woschni's coefficient without combustion: compression, or gas exchange with velocity factor 6.18.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="pressure">Gas pressure, Pa.</param>
    /// <param name="temperature">Gas temperature, K.</param>
    /// <param name="pistonSpeed">Mean piston speed, m/s.</param>
    /// <param name="velocityFactor">2.28 for compression, 6.18 for gas exchange.</param>
    [Formula("Woschni heat transfer, motored", "w = c1 Sp; h = 3.26 B^-0.2 (p / 1 kPa)^0.8 T^-0.55 w^0.8", "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eqs 12.18-12.19; Woschni, SAE 670931", Provenance = Provenance.FromMemory, Caution = PairCaution)]
    public static WallHeatTransfer WoschniMotored(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0)] double bore,
        [Quantity("gas pressure", Dimension.Pressure, "kPa", Symbol = "p", Min = 0)] double pressure,
        [Quantity("gas temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("mean piston speed", Dimension.Speed, "m/s", Symbol = "Sp", Min = 0)] double pistonSpeed,
        [Quantity("velocity factor", Dimension.Number, Symbol = "c1", Min = 0)] double velocityFactor = 2.28) =>
        Woschni(bore, pressure, temperature, velocityFactor * pistonSpeed);

    /// <summary>Woschni's coefficient during combustion and expansion.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="pressure">Gas pressure, Pa.</param>
    /// <param name="motoredPressure">Pressure at the same angle without combustion, Pa.</param>
    /// <param name="temperature">Mean gas temperature, K.</param>
    /// <param name="pistonSpeed">Mean piston speed, m/s.</param>
    /// <param name="sweptVolume">Swept volume of the cylinder, m³.</param>
    /// <param name="referenceVolume">Volume at the reference state (inlet valve closing), m³.</param>
    /// <param name="referencePressure">Pressure there, Pa.</param>
    /// <param name="referenceTemperature">Temperature there, K.</param>
    /// <param name="velocityFactor">2.28.</param>
    /// <param name="combustionFactor">3.24e-3 m/(s·K).</param>
    [Formula("Woschni heat transfer, firing", "w = c1 Sp + c2 Vd Tr / (pr Vr) (p - pm); h = 3.26 B^-0.2 (p / 1 kPa)^0.8 T^-0.55 w^0.8", "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eqs 12.18-12.19; Woschni, SAE 670931", Provenance = Provenance.FromMemory, Caution = PairCaution)]
    public static WallHeatTransfer WoschniFiring(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0)] double bore,
        [Quantity("gas pressure", Dimension.Pressure, "kPa", Symbol = "p", Min = 0)] double pressure,
        [Quantity("motored pressure", Dimension.Pressure, "kPa", Symbol = "pm", Min = 0)] double motoredPressure,
        [Quantity("gas temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("mean piston speed", Dimension.Speed, "m/s", Symbol = "Sp", Min = 0)] double pistonSpeed,
        [Quantity("swept volume", Dimension.Volume, "cm³", Symbol = "Vd", Above = 0)] double sweptVolume,
        [Quantity("volume at the reference state", Dimension.Volume, "cm³", Symbol = "Vr", Above = 0)] double referenceVolume,
        [Quantity("pressure at the reference state", Dimension.Pressure, "kPa", Symbol = "pr", Above = 0)] double referencePressure,
        [Quantity("temperature at the reference state", Dimension.Temperature, "°C", Symbol = "Tr", Above = 0)] double referenceTemperature,
        [Quantity("velocity factor", Dimension.Number, Symbol = "c1", Min = 0)] double velocityFactor = 2.28,
        [Quantity("combustion factor, m/(s·K)", Dimension.Number, Symbol = "c2", Min = 0)] double combustionFactor = 3.24e-3)
    {
        var combustion = combustionFactor * sweptVolume * referenceTemperature / (referencePressure * referenceVolume) * (pressure - motoredPressure);
        return Woschni(bore, pressure, temperature, (velocityFactor * pistonSpeed) + Math.Max(0, combustion));
    }

    /// <summary>Annand's convective and radiative flux.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="density">Gas density, kg/m³.</param>
    /// <param name="viscosity">Dynamic viscosity of the gas, Pa·s.</param>
    /// <param name="conductivity">Thermal conductivity of the gas, W/(m·K).</param>
    /// <param name="pistonSpeed">Mean piston speed, m/s.</param>
    /// <param name="temperature">Gas temperature, K.</param>
    /// <param name="wallTemperature">Wall temperature, K.</param>
    /// <param name="convectionFactor">0.35 to 0.8, with the intensity of charge motion.</param>
    /// <param name="radiationFactor">0.075 spark ignition, 0.57 compression ignition.</param>
    [Formula("Annand heat flux", "Re = ρ Sp B / μ; q = a k/B Re^0.7 (T - Tw) + c 5.670374419e-8 (T^4 - Tw^4)", "Annand, Proc. IMechE 177 (1963) 973; Heywood, Internal Combustion Engine Fundamentals, 1st ed., eq. 12.16", Provenance = Provenance.FromMemory)]
    public static WallHeatFlux Annand(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0)] double bore,
        [Quantity("gas density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density,
        [Quantity("gas viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "μ", Above = 0)] double viscosity,
        [Quantity("gas conductivity", Dimension.ThermalConductivity, "W/(m·K)", Symbol = "k", Above = 0)] double conductivity,
        [Quantity("mean piston speed", Dimension.Speed, "m/s", Symbol = "Sp", Min = 0)] double pistonSpeed,
        [Quantity("gas temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("wall temperature", Dimension.Temperature, "°C", Symbol = "Tw", Above = 0)] double wallTemperature,
        [Quantity("convection factor", Dimension.Number, Symbol = "a", Min = 0)] double convectionFactor = 0.49,
        [Quantity("radiation factor", Dimension.Number, Symbol = "c", Min = 0)] double radiationFactor = 0.075)
    {
        var reynolds = density * pistonSpeed * bore / viscosity;
        var convective = convectionFactor * conductivity / bore * Math.Pow(reynolds, 0.7) * (temperature - wallTemperature);
        var radiative = radiationFactor * PhysicalConstants.StefanBoltzmann * (Fourth(temperature) - Fourth(wallTemperature));
        return new(reynolds, convective, radiative, convective + radiative);
    }

    /// <summary>Hohenberg's coefficient, W/(m²·K).</summary>
    /// <param name="volume">Cylinder volume at the moment, m³.</param>
    /// <param name="pressure">Gas pressure, Pa.</param>
    /// <param name="temperature">Gas temperature, K.</param>
    /// <param name="pistonSpeed">Mean piston speed, m/s.</param>
    [Formula("Hohenberg heat transfer", "h = 130 V^-0.06 (p / 1 bar)^0.8 T^-0.4 (Sp + 1.4)^0.8", "Hohenberg, SAE 790825", Provenance = Provenance.FromMemory, Validity = "Fitted to diesel engines.")]
    [return: Quantity("heat transfer coefficient", Dimension.HeatTransferCoefficient, "W/(m²·K)", Symbol = "h")]
    public static double Hohenberg(
        [Quantity("cylinder volume", Dimension.Volume, "cm³", Symbol = "V", Above = 0)] double volume,
        [Quantity("gas pressure", Dimension.Pressure, "kPa", Symbol = "p", Min = 0)] double pressure,
        [Quantity("gas temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("mean piston speed", Dimension.Speed, "m/s", Symbol = "Sp", Min = 0)] double pistonSpeed) =>
        130 * Math.Pow(volume, -0.06) * Math.Pow(pressure / 1e5, 0.8) * Math.Pow(temperature, -0.4) * Math.Pow(pistonSpeed + 1.4, 0.8);

    private static WallHeatTransfer Woschni(double bore, double pressure, double temperature, double velocity) => new(
        velocity,
        3.26 * Math.Pow(bore, -0.2) * Math.Pow(pressure / 1000 * velocity, 0.8) * Math.Pow(temperature, -0.55));

    private static double Fourth(double t) => t * t * (t * t);
}
