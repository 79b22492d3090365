using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Readings of a flow bench turned into areas and coefficients.</summary>
public static class FlowBench
{
    /// <summary>Air pressure of the standard atmosphere at sea level, Pa.</summary>
    public const double StandardPressure = 101325;

    /// <summary>Air temperature that a bench's flow is stated at when nobody says which, 20 °C, K.</summary>
    public const double StandardTemperature = 293.15;

    /// <summary>Share of the room pressure at which a nozzle begins to choke, a little less than for air.</summary>
    public const double ChokingDrop = 0.47;

    private const double Gamma = 1.4;
    private const double GasConstant = 287.05287;
    private const double LargestDrop = 45e3;
    private const string Nozzle = "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eq. 6.26 and C.8";
    private const string BelowChoking = "test pressures below the choking drop, 47 % of the room pressure";

    /// <summary>Effective area of a port: the area of an ideal nozzle that passes the same flow at the same pressures.</summary>
    /// <param name="flow">Volume flow at the conditions of the room, m³/s.</param>
    /// <param name="testPressure">Pressure drop across the port, Pa; below the choking drop.</param>
    /// <param name="roomPressure">Pressure before the port, Pa.</param>
    /// <param name="roomTemperature">Temperature before the port, K.</param>
    /// <returns>Effective area, m².</returns>
    [Formula("effective area from a flow bench", "A = V ρ / (p Ψ / sqrt(R T))", Nozzle, Provenance = Provenance.FromMemory, Validity = "test pressure below the choking drop, 47 % of the room pressure")]
    [return: Quantity("effective area", Dimension.Area, "mm²", Symbol = "A")]
    public static double EffectiveArea(
        [Quantity("flow", Dimension.VolumeFlow, "L/s", Symbol = "V", Min = 0)] double flow,
        [Quantity("test pressure", Dimension.Pressure, "kPa", Symbol = "Δp", Above = 0, Max = LargestDrop)] double testPressure,
        [Quantity("room pressure", Dimension.Pressure, "kPa", Symbol = "p", Min = 60e3, Max = 120e3)] double roomPressure = StandardPressure,
        [Quantity("room temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 250, Max = 330)] double roomTemperature = StandardTemperature)
    {
        var density = roomPressure / (GasConstant * roomTemperature);
        return flow * density / (roomPressure * FlowFunction(testPressure, roomPressure) / Math.Sqrt(GasConstant * roomTemperature));
    }

    /// <summary>Flow that an effective area passes on a bench, m³/s at the conditions of the room.</summary>
    /// <param name="area">Effective area, m².</param>
    /// <param name="testPressure">Pressure drop across the port, Pa; below the choking drop.</param>
    /// <param name="roomPressure">Pressure before the port, Pa.</param>
    /// <param name="roomTemperature">Temperature before the port, K.</param>
    [Formula("bench flow of an effective area", "V = A Ψ(Δp / p) sqrt(R T)", Nozzle, Provenance = Provenance.FromMemory, Validity = BelowChoking)]
    [return: Quantity("flow", Dimension.VolumeFlow, "L/s", Symbol = "V")]
    public static double Flow(
        [Quantity("effective area", Dimension.Area, "mm²", Symbol = "A", Min = 0)] double area,
        [Quantity("test pressure", Dimension.Pressure, "kPa", Symbol = "Δp", Above = 0, Max = LargestDrop)] double testPressure,
        [Quantity("room pressure", Dimension.Pressure, "kPa", Symbol = "p", Min = 60e3, Max = 120e3)] double roomPressure = StandardPressure,
        [Quantity("room temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 250, Max = 330)] double roomTemperature = StandardTemperature) =>
        area * FlowFunction(testPressure, roomPressure) * Math.Sqrt(GasConstant * roomTemperature);

    /// <summary>Bench flow brought to another test pressure, the air being compressible, m³/s.</summary>
    /// <param name="flow">Flow as read, m³/s.</param>
    /// <param name="testPressure">Test pressure at which it was read, Pa.</param>
    /// <param name="wantedPressure">Test pressure that it is wanted at, Pa.</param>
    /// <param name="roomPressure">Pressure before the port, Pa.</param>
    [Formula("bench flow at another test pressure", "V2 = V1 Ψ(Δp2) / Ψ(Δp1)", Nozzle, Provenance = Provenance.FromMemory, Validity = BelowChoking + "; the same air before the port")]
    [return: Quantity("flow", Dimension.VolumeFlow, "L/s", Symbol = "V2")]
    public static double AtTestPressure(
        [Quantity("flow", Dimension.VolumeFlow, "L/s", Symbol = "V1", Min = 0)] double flow,
        [Quantity("test pressure", Dimension.Pressure, "kPa", Symbol = "Δp1", Above = 0, Max = LargestDrop)] double testPressure,
        [Quantity("wanted pressure", Dimension.Pressure, "kPa", Symbol = "Δp2", Above = 0, Max = LargestDrop)] double wantedPressure,
        [Quantity("room pressure", Dimension.Pressure, "kPa", Symbol = "p", Min = 60e3, Max = 120e3)] double roomPressure = StandardPressure) =>
        flow * FlowFunction(wantedPressure, roomPressure) / FlowFunction(testPressure, roomPressure);

    /// <summary>Bench flow brought to another test pressure as if air were water, m³/s.</summary>
    /// <param name="flow">Flow as read, m³/s.</param>
    /// <param name="testPressure">Test pressure at which it was read, Pa.</param>
    /// <param name="wantedPressure">Test pressure that it is wanted at, Pa.</param>
    [Formula("bench flow by the square-root rule", "V2 = V1 sqrt(Δp2 / Δp1)", "Bernoulli for a constant density: common practice on flow benches, no source", Validity = "small drops; from 10 to 28 inH2O it is 2.5 % high")]
    [return: Quantity("flow", Dimension.VolumeFlow, "L/s", Symbol = "V2")]
    public static double BySquareRoot(
        [Quantity("flow", Dimension.VolumeFlow, "L/s", Symbol = "V1", Min = 0)] double flow,
        [Quantity("test pressure", Dimension.Pressure, "kPa", Symbol = "Δp1", Above = 0, Max = LargestDrop)] double testPressure,
        [Quantity("wanted pressure", Dimension.Pressure, "kPa", Symbol = "Δp2", Above = 0, Max = LargestDrop)] double wantedPressure) =>
        flow * Math.Sqrt(wantedPressure / testPressure);

    /// <summary>Flow coefficient on the valve curtain.</summary>
    /// <param name="effectiveArea">Effective area of the port, all its valves together, m².</param>
    /// <param name="count">Valves of the port.</param>
    /// <param name="headDiameter">Head diameter of one valve, m.</param>
    /// <param name="lift">Lift, m.</param>
    [Formula("curtain flow coefficient", "C = A / (z π D L)", "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eq. 6.27", Provenance = Provenance.Definition)]
    [return: Quantity("flow coefficient", Dimension.Number, Symbol = "C")]
    public static double CurtainCoefficient(
        [Quantity("effective area", Dimension.Area, "mm²", Symbol = "A", Min = 0)] double effectiveArea,
        [Quantity("valves", Dimension.Number, Symbol = "z", Min = 1)] int count,
        [Quantity("head diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double headDiameter,
        [Quantity("lift", Dimension.Length, "mm", Symbol = "L", Above = 0)] double lift) =>
        effectiveArea / (count * Math.PI * headDiameter * lift);

    /// <summary>Ψ of an ideal nozzle: mass flow over area, times sqrt(R T) / p.</summary>
    private static double FlowFunction(double drop, double pressure)
    {
        FormulaDomainException.Unless(drop < ChokingDrop * pressure, "test pressure: must be below the choking drop, 47 % of the room pressure");
        var ratio = (pressure - drop) / pressure;
        return Math.Sqrt(2 * Gamma / (Gamma - 1) * (Math.Pow(ratio, 2 / Gamma) - Math.Pow(ratio, (Gamma + 1) / Gamma)));
    }
}
