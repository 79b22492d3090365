using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>What a load does to a gudgeon pin and the bores around it.</summary>
/// <param name="Bending">Greatest bending stress, mid-length, Pa.</param>
/// <param name="Shear">Greatest shear stress, in the gaps between rod and bosses, Pa.</param>
/// <param name="RodPressure">Mean pressure in the small end, Pa.</param>
/// <param name="BossPressure">Mean pressure in the bosses, Pa.</param>
public readonly record struct PinStresses(
    [Quantity("bending stress of the pin", Dimension.Pressure, "MPa", Symbol = "σb")] double Bending,
    [Quantity("shear stress of the pin", Dimension.Pressure, "MPa", Symbol = "τ")] double Shear,
    [Quantity("pressure in the small end", Dimension.Pressure, "MPa", Symbol = "qr")] double RodPressure,
    [Quantity("pressure in the bosses", Dimension.Pressure, "MPa", Symbol = "qb")] double BossPressure);

/// <summary>How far a gudgeon pin goes oval, and the stresses of that.</summary>
/// <param name="Growth">Greatest growth of its diameter, across the load, m.</param>
/// <param name="Bore">Stress in the bore in line with the load, Pa; tension, as the wall bends inward there.</param>
/// <param name="Outside">Stress on the outside across the load, Pa; tension.</param>
public readonly record struct PinOvality(
    [Quantity("ovality", Dimension.Length, "mm", Symbol = "x")] double Growth,
    [Quantity("stress in the bore, in line with the load", Dimension.Pressure, "MPa", Symbol = "σi")] double Bore,
    [Quantity("stress outside, across the load", Dimension.Pressure, "MPa", Symbol = "σo")] double Outside);

/// <summary>The gudgeon pin as a short beam and as a ring.</summary>
public static class GudgeonPin
{
    private const string Source = "Kolchin & Demidov, Design of Automotive Engines, piston pin (from memory)";

    /// <summary>Bending, shear and bearing pressures: load even over the small end, falling off outwards from the inner edges of the bosses.</summary>
    /// <param name="load">Greatest load on the pin, N.</param>
    /// <param name="diameter">Outside diameter, m.</param>
    /// <param name="bore">Inside diameter, m.</param>
    /// <param name="length">Length in the bosses and between them, m.</param>
    /// <param name="bossGap">Distance between the bosses, m.</param>
    /// <param name="rodWidth">Bearing length in the small end, m.</param>
    [Formula(
        "gudgeon pin stress",
        "σb = 32 F (l + 2 b - 1.5 a) / (12 π d^3 (1 - α^4)); τ = 8 F (1 + α + α^2) / (3 π d^2 (1 - α^4)); qr = F / (d a); qb = F / (d (l - b)); α = di / d",
        Source + ", with the section modulus π d^3 / 32 in place of 0.1 d^3",
        Provenance = Provenance.FromMemory,
        Validity = "A beam as short as a pin: bending comes out somewhat high.")]
    public static PinStresses Stress(
        [Quantity("load on the pin", Dimension.Force, "kN", Symbol = "F", Min = 0)] double load,
        [Quantity("pin diameter", Dimension.Length, "mm", Symbol = "d", Above = 0, Max = 0.5)] double diameter,
        [Quantity("bore of the pin", Dimension.Length, "mm", Symbol = "di", Min = 0, Max = 0.5)] double bore,
        [Quantity("length of the pin", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 1)] double length,
        [Quantity("distance between the bosses", Dimension.Length, "mm", Symbol = "b", Above = 0, Max = 1)] double bossGap,
        [Quantity("bearing length in the small end", Dimension.Length, "mm", Symbol = "a", Above = 0, Max = 1)] double rodWidth)
    {
        Hollow(diameter, bore);
        FormulaDomainException.Unless(bossGap < length, "distance between the bosses: must be less than the length of the pin");
        FormulaDomainException.Unless(rodWidth <= bossGap, "bearing length in the small end: must not be more than the distance between the bosses");
        var ratio = bore / diameter;
        var ring = 1 - (ratio * ratio * ratio * ratio);
        var moment = load * (length + (2 * bossGap) - (1.5 * rodWidth)) / 12;
        return new PinStresses(
            32 * moment / (Math.PI * diameter * diameter * diameter * ring),
            8 * load * (1 + ratio + (ratio * ratio)) / (3 * Math.PI * diameter * diameter * ring),
            load / (diameter * rodWidth),
            load / (diameter * (length - bossGap)));
    }

    /// <summary>How far a hollow pin goes oval and how high that stresses it, load spread over the half circle as a sine.</summary>
    /// <param name="load">Greatest load on the pin, N.</param>
    /// <param name="diameter">Outside diameter, m.</param>
    /// <param name="bore">Inside diameter, m.</param>
    /// <param name="length">Length, m.</param>
    /// <param name="modulus">Young's modulus, Pa.</param>
    [Formula(
        "gudgeon pin ovality",
        "K = 0.1 - (α - 0.4)^3; x = 1.35 F / (E l) ((1 + α) / (1 - α))^3 K; σi = 15 F K / (l d) (0.19 (1 + 2 α) (1 + α) / ((1 - α)^2 α) + 1 / (1 - α)); σo = 15 F K / (l d) (0.174 (2 + α) (1 + α) / (1 - α)^2 + 0.636 / (1 - α)); α = di / d",
        Source,
        Provenance = Provenance.FromMemory,
        Validity = "Bore 0.4 to 0.8 of the diameter. Signs by the load that presses; the stresses change sign with it.")]
    public static PinOvality Ovality(
        [Quantity("load on the pin", Dimension.Force, "kN", Symbol = "F", Min = 0)] double load,
        [Quantity("pin diameter", Dimension.Length, "mm", Symbol = "d", Above = 0, Max = 0.5)] double diameter,
        [Quantity("bore of the pin", Dimension.Length, "mm", Symbol = "di", Above = 0, Max = 0.5)] double bore,
        [Quantity("length of the pin", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 1)] double length,
        [Quantity("Young's modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 206e9)
    {
        Hollow(diameter, bore);
        var ratio = bore / diameter;
        FormulaDomainException.Unless(ratio is >= 0.4 and <= 0.8, "bore of the pin: the formula holds from 0.4 to 0.8 of the diameter");
        var spread = 0.1 - Math.Pow(ratio - 0.4, 3);
        var wall = 1 - ratio;
        var unit = 15 * load * spread / (length * diameter);
        return new PinOvality(
            1.35 * load / (modulus * length) * Math.Pow((1 + ratio) / wall, 3) * spread,
            unit * ((0.19 * (1 + (2 * ratio)) * (1 + ratio) / (wall * wall * ratio)) + (1 / wall)),
            unit * ((0.174 * (2 + ratio) * (1 + ratio) / (wall * wall)) + (0.636 / wall)));
    }

    private static void Hollow(double diameter, double bore) => FormulaDomainException.Unless(bore < diameter, "bore of the pin: must be less than its diameter");
}
