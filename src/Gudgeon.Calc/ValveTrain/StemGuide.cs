using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Tension in a valve stem.</summary>
/// <param name="Spring">Of the spring at full lift, Pa.</param>
/// <param name="Seating">Of the spring with the valve shut and the blow of seating, Pa.</param>
/// <param name="Greatest">The greater of both, Pa.</param>
public readonly record struct StemStress(
    [Quantity("stress at full lift", Dimension.Pressure, "MPa", Symbol = "σ1")] double Spring,
    [Quantity("stress at seating", Dimension.Pressure, "MPa", Symbol = "σ2")] double Seating,
    [Quantity("greatest stress", Dimension.Pressure, "MPa", Symbol = "σ")] double Greatest);

/// <summary>A valve stem in its guide.</summary>
public static class StemGuide
{
    private const double Cold = 293.15;

    /// <summary>Clearance of a stem in its guide at running temperature, m; negative when it seizes.</summary>
    /// <param name="bore">Guide bore at 20 °C, m.</param>
    /// <param name="stem">Stem diameter at 20 °C, m.</param>
    /// <param name="guideTemperature">Guide, K.</param>
    /// <param name="stemTemperature">Stem, K.</param>
    /// <param name="guideExpansion">Expansion of the guide, 1/K.</param>
    /// <param name="stemExpansion">Expansion of the stem, 1/K.</param>
    [Formula("stem clearance at temperature", "c = B (1 + αg (Tg - 20 °C)) - d (1 + αs (Ts - 20 °C))", "linear expansion; a free guide's bore grows with its temperature", Provenance = Provenance.Definition, Validity = "a guide pressed into an aluminium head closes a little less or more than free; ream or hone it after fitting", Caution = "An exhaust stem runs hundreds of degrees hotter than its guide, hottest under the head: too little clearance seizes it, too much starves the head of cooling.")]
    [return: Quantity("stem clearance, hot", Dimension.Length, "mm", Symbol = "c")]
    public static double ClearanceHot(
        [Quantity("guide bore", Dimension.Length, "mm", Symbol = "B", Above = 0)] double bore,
        [Quantity("stem diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double stem,
        [Quantity("guide temperature", Dimension.Temperature, "°C", Symbol = "Tg", Above = 0)] double guideTemperature,
        [Quantity("stem temperature", Dimension.Temperature, "°C", Symbol = "Ts", Above = 0)] double stemTemperature,
        [Quantity("expansion of the guide", Dimension.ThermalExpansion, "µm/(m·K)", Symbol = "αg", Min = 0)] double guideExpansion,
        [Quantity("expansion of the stem", Dimension.ThermalExpansion, "µm/(m·K)", Symbol = "αs", Min = 0)] double stemExpansion) =>
        (bore * (1 + (guideExpansion * (guideTemperature - Cold)))) - (stem * (1 + (stemExpansion * (stemTemperature - Cold))));

    /// <summary>Clearance of a stem in its guide at 20 °C, m.</summary>
    /// <param name="bore">Guide bore, m.</param>
    /// <param name="stem">Stem diameter, m.</param>
    [Formula("stem clearance", "c = B - d", "arithmetic of lengths", Provenance = Provenance.Definition)]
    [return: Quantity("stem clearance", Dimension.Length, "mm", Symbol = "c")]
    public static double Clearance(
        [Quantity("guide bore", Dimension.Length, "mm", Symbol = "B", Above = 0)] double bore,
        [Quantity("stem diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double stem) => bore - stem;

    /// <summary>
    /// Greatest tension in a stem: the spring at full lift, or the blow of seating, a stress wave in a bar that is stopped at
    /// once.
    /// </summary>
    /// <param name="stem">Stem diameter, m; at the collets' groove where that is thinner.</param>
    /// <param name="openLoad">Spring load at full lift, N.</param>
    /// <param name="seatLoad">Spring load with the valve shut, N.</param>
    /// <param name="seatingSpeed">Speed at which the valve meets its seat, m/s.</param>
    /// <param name="modulus">Young's modulus of the stem, Pa.</param>
    /// <param name="density">Density of the stem, kg/m³.</param>
    [Formula("valve stem stress", "σ1 = F2 / (π / 4 d^2); σ2 = F1 / (π / 4 d^2) + v sqrt(E ρ); σ = max(σ1, σ2)", "tension of a bar; stress wave of a bar stopped at one end, σ = ρ c v with c = sqrt(E / ρ) (Timoshenko & Goodier, Theory of Elasticity, longitudinal impact of bars)", Provenance = Provenance.FromMemory, Validity = "an even stem and a rigid seat, which is more than a valve's springy head lets through; bending of a seat that is not square comes on top")]
    public static StemStress Stress(
        [Quantity("stem diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double stem,
        [Quantity("load at full lift", Dimension.Force, "N", Symbol = "F2", Min = 0)] double openLoad,
        [Quantity("seat load", Dimension.Force, "N", Symbol = "F1", Min = 0)] double seatLoad,
        [Quantity("seating speed", Dimension.Speed, "m/s", Symbol = "v", Min = 0)] double seatingSpeed,
        [Quantity("Young's modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 206e9,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density = 7850)
    {
        var area = Math.PI / 4 * stem * stem;
        var (spring, seating) = (openLoad / area, (seatLoad / area) + (seatingSpeed * Math.Sqrt(modulus * density)));
        return new StemStress(spring, seating, Math.Max(spring, seating));
    }

    /// <summary>Speed at which a valve meets its seat on a closing ramp of even slope, m/s.</summary>
    /// <param name="rampHeight">Height of the ramp at the cam, m.</param>
    /// <param name="rampAngle">Length of the ramp, crank rad.</param>
    /// <param name="crankSpeed">Crank speed, rad/s.</param>
    /// <param name="ratio">Valve lift over cam lift.</param>
    [Formula("seating speed on a ramp", "v = q h w / φ", "even slope of the ramp", Provenance = Provenance.Definition, Validity = "the lash is less than the ramp is high; a valve that bounces or floats meets its seat far quicker")]
    [return: Quantity("seating speed", Dimension.Speed, "m/s", Symbol = "v")]
    public static double SeatingSpeed(
        [Quantity("ramp height", Dimension.Length, "mm", Symbol = "h", Above = 0)] double rampHeight,
        [Quantity("ramp length, crank angle", Dimension.Angle, "°", Symbol = "φ", Above = 0)] double rampAngle,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double crankSpeed,
        [Quantity("ratio", Dimension.Number, Symbol = "q", Above = 0)] double ratio = 1) =>
        ratio * rampHeight * crankSpeed / rampAngle;
}
