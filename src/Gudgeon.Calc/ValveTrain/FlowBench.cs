using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Readings of a flow bench turned into areas and coefficients.</summary>
public static class FlowBench
{
    private const double Gamma = 1.4;

    /// <summary>Effective area of a port: the area of an ideal nozzle that passes the same flow at the same pressures.</summary>
    /// <param name="flow">Volume flow at the conditions of the room, m³/s.</param>
    /// <param name="testPressure">Pressure drop across the port, Pa; below the choking drop.</param>
    /// <param name="roomPressure">Pressure before the port, Pa.</param>
    /// <param name="roomTemperature">Temperature before the port, K.</param>
    /// <returns>Effective area, m².</returns>
    [Formula("effective area from a flow bench", "A = V ρ / (p Ψ / sqrt(R T))", "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eq. 6.26 and C.8", Provenance = Provenance.FromMemory, Validity = "test pressure below the choking drop, 47 % of the room pressure")]
    [return: Quantity("effective area", Dimension.Area, "mm²", Symbol = "A")]
    public static double EffectiveArea(
        [Quantity("flow", Dimension.VolumeFlow, "L/s", Symbol = "V", Min = 0)] double flow,
        [Quantity("test pressure", Dimension.Pressure, "kPa", Symbol = "Δp", Above = 0, Max = 45e3)] double testPressure,
        [Quantity("room pressure", Dimension.Pressure, "kPa", Symbol = "p", Min = 60e3, Max = 120e3)] double roomPressure = 101325,
        [Quantity("room temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 250, Max = 330)] double roomTemperature = 293.15)
    {
        const double GasConstant = 287.05287;
        var ratio = (roomPressure - testPressure) / roomPressure;
        var psi = Math.Sqrt(2 * Gamma / (Gamma - 1) * (Math.Pow(ratio, 2 / Gamma) - Math.Pow(ratio, (Gamma + 1) / Gamma)));
        var density = roomPressure / (GasConstant * roomTemperature);
        return flow * density / (roomPressure * psi / Math.Sqrt(GasConstant * roomTemperature));
    }

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
}
