using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Calc.Boost;

/// <summary>What a compressor does to the air.</summary>
/// <param name="OutletTemperature">K.</param>
/// <param name="IsentropicTemperature">Outlet temperature of a lossless compressor, K.</param>
/// <param name="SpecificWork">J/kg.</param>
/// <param name="DensityRatio">Outlet over inlet density.</param>
public readonly record struct Compression(
    [Quantity("outlet temperature", Dimension.Temperature, "°C", Symbol = "T2")] double OutletTemperature,
    [Quantity("isentropic outlet temperature", Dimension.Temperature, "°C", Symbol = "T2s")] double IsentropicTemperature,
    [Quantity("specific work", Dimension.SpecificEnergy, "kJ/kg", Symbol = "w")] double SpecificWork,
    [Quantity("density ratio", Dimension.Number)] double DensityRatio);

/// <summary>Power a blower takes.</summary>
/// <param name="Power">At the crankshaft, W.</param>
/// <param name="CrankTorque">N·m.</param>
public readonly record struct DriveLoad(
    [Quantity("drive power", Dimension.Power, "kW", Symbol = "P")] double Power,
    [Quantity("torque at the crankshaft", Dimension.Torque, "N·m", Symbol = "M")] double CrankTorque);

/// <summary>Flow and speed referred to the conditions of a compressor map.</summary>
/// <param name="MassFlow">kg/s.</param>
/// <param name="Speed">rad/s.</param>
public readonly record struct MapPoint(
    [Quantity("corrected mass flow", Dimension.MassFlow, "kg/s")] double MassFlow,
    [Quantity("corrected speed", Dimension.RotationalSpeed, "rpm")] double Speed);

/// <summary>Three ways to say how far a compressor is from surge.</summary>
/// <param name="AtSpeed">Pressure ratio over flow against the surge point of the same speed.</param>
/// <param name="AtFlow">Pressure ratio of the surge line at the same flow.</param>
/// <param name="AtPressureRatio">Flow against the surge line at the same pressure ratio.</param>
public readonly record struct SurgeMargins(
    [Quantity("margin at the same speed", Dimension.Number, "%")] double AtSpeed,
    [Quantity("margin at the same flow", Dimension.Number, "%")] double AtFlow,
    [Quantity("margin at the same pressure ratio", Dimension.Number, "%")] double AtPressureRatio);

/// <summary>Compressors of any kind: outlet state, drive power, map conditions, surge margin.</summary>
public static class Compressor
{
    private const double AirHeatCapacity = 1005;

    /// <summary>Outlet temperature, work and density ratio.</summary>
    /// <param name="inletTemperature">Inlet temperature, K.</param>
    /// <param name="pressureRatio">Outlet over inlet pressure.</param>
    /// <param name="efficiency">Isentropic efficiency.</param>
    /// <param name="heatCapacity">Heat capacity, J/(kg·K).</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("compressor outlet", "T2s = T1 Π^((γ - 1)/γ); T2 = T1 + (T2s - T1) / η; w = cp (T2 - T1); density ratio = Π T1 / T2", "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eqs 6.42-6.45", Provenance = Provenance.Definition)]
    public static Compression Outlet(
        [Quantity("inlet temperature", Dimension.Temperature, "°C", Symbol = "T1", Above = 0)] double inletTemperature,
        [Quantity("pressure ratio", Dimension.Number, Symbol = "Π", Min = 1, Max = 50)] double pressureRatio,
        [Quantity("isentropic efficiency", Dimension.Number, Symbol = "η", Above = 0, Max = 1)] double efficiency,
        [Quantity("heat capacity", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "cp", Above = 0)] double heatCapacity = AirHeatCapacity,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var isentropic = inletTemperature * Math.Pow(pressureRatio, (gamma - 1) / gamma);
        var outlet = inletTemperature + ((isentropic - inletTemperature) / efficiency);
        return new(outlet, isentropic, heatCapacity * (outlet - inletTemperature), pressureRatio * inletTemperature / outlet);
    }

    /// <summary>Isentropic efficiency from measured temperatures.</summary>
    /// <param name="inletTemperature">Inlet temperature, K.</param>
    /// <param name="outletTemperature">Outlet temperature, K.</param>
    /// <param name="pressureRatio">Outlet over inlet pressure.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("compressor efficiency", "η = T1 (Π^((γ - 1)/γ) - 1) / (T2 - T1)", "definition of the isentropic efficiency", Provenance = Provenance.Definition)]
    [return: Quantity("isentropic efficiency", Dimension.Number, Symbol = "η")]
    public static double Efficiency(
        [Quantity("inlet temperature", Dimension.Temperature, "°C", Symbol = "T1", Above = 0)] double inletTemperature,
        [Quantity("outlet temperature", Dimension.Temperature, "°C", Symbol = "T2", Above = 0)] double outletTemperature,
        [Quantity("pressure ratio", Dimension.Number, Symbol = "Π", Min = 1, Max = 50)] double pressureRatio,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        FormulaDomainException.Unless(outletTemperature > inletTemperature, "outlet temperature: must be above the inlet temperature");
        return inletTemperature * (Math.Pow(pressureRatio, (gamma - 1) / gamma) - 1) / (outletTemperature - inletTemperature);
    }

    /// <summary>Power and crank torque to drive a compressor.</summary>
    /// <param name="massFlow">Air flow, kg/s.</param>
    /// <param name="inletTemperature">Inlet temperature, K.</param>
    /// <param name="pressureRatio">Outlet over inlet pressure.</param>
    /// <param name="efficiency">Isentropic efficiency.</param>
    /// <param name="crankSpeed">Crank speed, rad/s.</param>
    /// <param name="driveEfficiency">Efficiency of belt and gears.</param>
    /// <param name="heatCapacity">Heat capacity, J/(kg·K).</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("blower drive power", "P = m cp T1 (Π^((γ - 1)/γ) - 1) / (η ηd); M = P / ω", "energy balance", Provenance = Provenance.Definition)]
    public static DriveLoad DrivePower(
        [Quantity("air flow", Dimension.MassFlow, "kg/s", Symbol = "m", Min = 0)] double massFlow,
        [Quantity("inlet temperature", Dimension.Temperature, "°C", Symbol = "T1", Above = 0)] double inletTemperature,
        [Quantity("pressure ratio", Dimension.Number, Symbol = "Π", Min = 1, Max = 50)] double pressureRatio,
        [Quantity("isentropic efficiency", Dimension.Number, Symbol = "η", Above = 0, Max = 1)] double efficiency,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Above = 0)] double crankSpeed,
        [Quantity("drive efficiency", Dimension.Number, Symbol = "ηd", Above = 0, Max = 1)] double driveEfficiency = 0.97,
        [Quantity("heat capacity", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "cp", Above = 0)] double heatCapacity = AirHeatCapacity,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var power = massFlow * Outlet(inletTemperature, pressureRatio, efficiency, heatCapacity, gamma).SpecificWork / driveEfficiency;
        return new(power, power / crankSpeed);
    }

    /// <summary>Flow and speed referred to a compressor map's conditions.</summary>
    /// <param name="massFlow">Air flow, kg/s.</param>
    /// <param name="speed">Compressor speed, rad/s.</param>
    /// <param name="inletTemperature">Inlet stagnation temperature, K.</param>
    /// <param name="inletPressure">Inlet stagnation pressure, Pa.</param>
    /// <param name="referenceTemperature">Reference temperature of the map, K.</param>
    /// <param name="referencePressure">Reference pressure of the map, Pa.</param>
    [Formula("corrected flow and speed", "mc = m sqrt(T1 / Tr) / (p1 / pr); Nc = N / sqrt(T1 / Tr)", "SAE J1826, SAE J922", Provenance = Provenance.FromMemory, Caution = "298 K/100 kPa, 302.6 K/96.2 kPa and 288.15 K/101.325 kPa are all in use: take the pair printed on the map.")]
    public static MapPoint Corrected(
        [Quantity("air flow", Dimension.MassFlow, "kg/s", Symbol = "m", Min = 0)] double massFlow,
        [Quantity("compressor speed", Dimension.RotationalSpeed, "rpm", Symbol = "N", Min = 0)] double speed,
        [Quantity("inlet temperature", Dimension.Temperature, "°C", Symbol = "T1", Above = 0)] double inletTemperature,
        [Quantity("inlet pressure", Dimension.Pressure, "kPa", Symbol = "p1", Above = 0)] double inletPressure,
        [Quantity("reference temperature", Dimension.Temperature, "°C", Symbol = "Tr", Above = 0)] double referenceTemperature = 298,
        [Quantity("reference pressure", Dimension.Pressure, "kPa", Symbol = "pr", Above = 0)] double referencePressure = 100e3)
    {
        var root = Math.Sqrt(inletTemperature / referenceTemperature);
        return new(massFlow * root * referencePressure / inletPressure, speed / root);
    }

    /// <summary>Distance from surge in the three customary definitions.</summary>
    /// <param name="pressureRatio">Pressure ratio as run.</param>
    /// <param name="massFlow">Corrected flow as run, kg/s.</param>
    /// <param name="surgePressureRatio">Pressure ratio of the surge point on the same speed line.</param>
    /// <param name="surgeFlow">Flow of the surge point on the same speed line, kg/s.</param>
    /// <param name="lineRatioAtFlow">Pressure ratio of the surge line at the flow as run.</param>
    /// <param name="lineFlowAtRatio">Flow of the surge line at the pressure ratio as run, kg/s.</param>
    [Formula("surge margin", "at speed = Πs m / (Π ms) - 1; at flow = Πm / Π - 1; at pressure ratio = 1 - mp / m", "definitions in use; state which one", Provenance = Provenance.Definition)]
    public static SurgeMargins SurgeMargin(
        [Quantity("pressure ratio", Dimension.Number, Symbol = "Π", Min = 1)] double pressureRatio,
        [Quantity("mass flow", Dimension.MassFlow, "kg/s", Symbol = "m", Above = 0)] double massFlow,
        [Quantity("pressure ratio at surge, same speed", Dimension.Number, Symbol = "Πs", Min = 1)] double surgePressureRatio,
        [Quantity("flow at surge, same speed", Dimension.MassFlow, "kg/s", Symbol = "ms", Above = 0)] double surgeFlow,
        [Quantity("surge line pressure ratio at this flow", Dimension.Number, Symbol = "Πm", Min = 1)] double lineRatioAtFlow,
        [Quantity("surge line flow at this pressure ratio", Dimension.MassFlow, "kg/s", Symbol = "mp", Min = 0)] double lineFlowAtRatio) => new(
        (surgePressureRatio * massFlow / (pressureRatio * surgeFlow)) - 1,
        (lineRatioAtFlow / pressureRatio) - 1,
        SurgeMarginAtRatio(massFlow, lineFlowAtRatio));

    /// <summary>Distance from surge by flow at the same pressure ratio: share of the flow that may be lost before the surge line.</summary>
    /// <param name="massFlow">Corrected flow as run, kg/s.</param>
    /// <param name="lineFlow">Flow of the surge line at the pressure ratio as run, kg/s.</param>
    [Formula("surge margin at the same pressure ratio", "margin = 1 - mp / m", "definition in use, one of three", Provenance = Provenance.Definition)]
    [return: Quantity("surge margin", Dimension.Number, "%")]
    public static double SurgeMarginAtRatio(
        [Quantity("mass flow", Dimension.MassFlow, "kg/s", Symbol = "m", Above = 0)] double massFlow,
        [Quantity("surge line flow at this pressure ratio", Dimension.MassFlow, "kg/s", Symbol = "mp", Min = 0)] double lineFlow) => 1 - (lineFlow / massFlow);

    /// <summary>Distance from choke: share of the choke flow that is left at the same corrected speed.</summary>
    /// <param name="massFlow">Corrected flow as run, kg/s.</param>
    /// <param name="chokeFlow">Flow at the choke end of the same speed line, kg/s.</param>
    [Formula("choke margin", "margin = 1 - m / mc", "definition in use; the maker's map says where its lines end", Provenance = Provenance.Definition)]
    [return: Quantity("choke margin", Dimension.Number, "%")]
    public static double ChokeMargin(
        [Quantity("mass flow", Dimension.MassFlow, "kg/s", Symbol = "m", Min = 0)] double massFlow,
        [Quantity("flow at choke, same speed", Dimension.MassFlow, "kg/s", Symbol = "mc", Above = 0)] double chokeFlow) => 1 - (massFlow / chokeFlow);

    /// <summary>Density of air as an ideal gas, kg/m³.</summary>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="gasConstant">Gas constant, J/(kg·K).</param>
    [Formula("charge density", "ρ = p / (R T)", "ideal gas", Provenance = Provenance.Definition)]
    [return: Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ")]
    public static double ChargeDensity(
        [Quantity("pressure", Dimension.Pressure, "kPa", Symbol = "p", Above = 0)] double pressure,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("gas constant", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "R", Above = 0)] double gasConstant = PhysicalConstants.DryAirGasConstant) =>
        pressure / (gasConstant * temperature);
}
