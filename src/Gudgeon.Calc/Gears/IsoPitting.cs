using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gears;

/// <summary>Contact factors of ISO 6336-2.</summary>
/// <param name="Zone">Zone factor ZH.</param>
/// <param name="Elasticity">Elasticity factor ZE, √MPa.</param>
/// <param name="ContactRatio">Contact ratio factor Zε.</param>
/// <param name="Helix">Helix factor Zβ.</param>
public readonly record struct ContactFactors(
    [Quantity("zone factor", Dimension.Number, Symbol = "ZH")] double Zone,
    [Quantity("elasticity factor, √MPa", Dimension.Number, Symbol = "ZE")] double Elasticity,
    [Quantity("contact ratio factor", Dimension.Number, Symbol = "Zε")] double ContactRatio,
    [Quantity("helix factor", Dimension.Number, Symbol = "Zβ")] double Helix);

/// <summary>Contact stress of a pair.</summary>
/// <param name="Nominal">Nominal contact stress at the pitch point, Pa.</param>
/// <param name="Working">Contact stress with the load factors, Pa.</param>
public readonly record struct GearContactStress(
    [Quantity("nominal contact stress", Dimension.Pressure, "MPa", Symbol = "σH0")] double Nominal,
    [Quantity("contact stress", Dimension.Pressure, "MPa", Symbol = "σH")] double Working);

/// <summary>Film factors of ISO 6336-2.</summary>
/// <param name="Lubricant">Lubricant factor ZL.</param>
/// <param name="Velocity">Velocity factor Zv.</param>
/// <param name="Roughness">Roughness factor ZR.</param>
public readonly record struct FilmFactors(
    [Quantity("lubricant factor", Dimension.Number, Symbol = "ZL")] double Lubricant,
    [Quantity("velocity factor", Dimension.Number, Symbol = "Zv")] double Velocity,
    [Quantity("roughness factor", Dimension.Number, Symbol = "ZR")] double Roughness);

/// <summary>Permissible contact stress and safety.</summary>
/// <param name="Permissible">Permissible contact stress, Pa.</param>
/// <param name="Safety">Safety factor on stress.</param>
public readonly record struct PittingSafety(
    [Quantity("permissible contact stress", Dimension.Pressure, "MPa", Symbol = "σHP")] double Permissible,
    [Quantity("safety factor", Dimension.Number, Symbol = "SH")] double Safety);

/// <summary>Pitting resistance after ISO 6336-2.</summary>
public static class IsoPitting
{
    private const string Source = "ISO 6336-2:2006; checked on ISO/TR 6336-30:2017, example 1";

    /// <summary>Zone, elasticity, contact ratio and helix factors.</summary>
    /// <param name="helix">Helix angle, rad.</param>
    /// <param name="workingAngle">Working transverse pressure angle, rad.</param>
    /// <param name="transverseRatio">Transverse contact ratio.</param>
    /// <param name="overlapRatio">Overlap ratio.</param>
    /// <param name="pressureAngle">Normal pressure angle, rad.</param>
    /// <param name="modulus">Young's modulus of both gears, Pa.</param>
    /// <param name="poisson">Poisson's ratio of both gears.</param>
    [Formula(
        "ISO 6336 contact factors",
        "ZH = sqrt(2 cos(βb) cos(αwt) / (cos(αt)^2 sin(αwt))); ZE = sqrt(E / (2 π (1 - ν^2))); Zε = sqrt((4 - εα) / 3 (1 - εβ) + εβ / εα), εβ at most 1; Zβ = 1 / sqrt(cos(β))",
        Source)]
    public static ContactFactors Factors(
        [Quantity("helix angle", Dimension.Angle, "°", Symbol = "β", Min = 0, Below = 0.9)] double helix,
        [Quantity("working transverse pressure angle", Dimension.Angle, "°", Symbol = "αwt", Above = 0.1, Below = 0.9)] double workingAngle,
        [Quantity("transverse contact ratio", Dimension.Number, Symbol = "εα", Min = 1, Below = 4)] double transverseRatio,
        [Quantity("overlap ratio", Dimension.Number, Symbol = "εβ", Min = 0)] double overlapRatio,
        [Quantity("normal pressure angle", Dimension.Angle, "°", Symbol = "αn", Above = 0.1, Below = 0.8)] double pressureAngle = 20 * Math.PI / 180,
        [Quantity("Young's modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 206e9,
        [Quantity("Poisson's ratio", Dimension.Number, Symbol = "ν", Min = 0, Max = 0.5)] double poisson = 0.3)
    {
        var cosTransverse = Math.Cos(Math.Atan(Math.Tan(pressureAngle) / Math.Cos(helix)));
        var cosBase = Math.Cos(Math.Asin(Math.Sin(helix) * Math.Cos(pressureAngle)));
        var overlap = Math.Min(1, overlapRatio);
        return new ContactFactors(
            Math.Sqrt(2 * cosBase / (cosTransverse * cosTransverse * Math.Tan(workingAngle))),
            Math.Sqrt(modulus / 1e6 / (2 * Math.PI * (1 - (poisson * poisson)))),
            Math.Sqrt(((4 - transverseRatio) / 3 * (1 - overlap)) + (overlap / transverseRatio)),
            1 / Math.Sqrt(Math.Cos(helix)));
    }

    /// <summary>Nominal and working contact stress.</summary>
    /// <param name="force">Tangential force, N.</param>
    /// <param name="diameter">Reference diameter of the pinion, m.</param>
    /// <param name="face">Face width, m.</param>
    /// <param name="ratio">Wheel teeth over pinion teeth.</param>
    /// <param name="zone">Zone factor ZH.</param>
    /// <param name="elasticity">Elasticity factor ZE, √MPa.</param>
    /// <param name="contactRatio">Contact ratio factor.</param>
    /// <param name="helixFactor">Helix factor.</param>
    /// <param name="application">Application factor KA.</param>
    /// <param name="dynamic">Dynamic factor Kv.</param>
    /// <param name="faceLoad">Face load factor KHβ.</param>
    /// <param name="sharing">Transverse load factor KHα.</param>
    /// <param name="singlePair">Single pair contact factor ZB.</param>
    [Formula(
        "ISO 6336 contact stress",
        "σH0 = ZH ZE Zε Zβ sqrt(Ft / (d1 b) (u + 1) / u); σH = ZB σH0 sqrt(KA Kv KHβ KHα)",
        Source)]
    public static GearContactStress Stress(
        [Quantity("tangential force", Dimension.Force, "N", Symbol = "Ft", Above = 0)] double force,
        [Quantity("reference diameter of the pinion", Dimension.Length, "mm", Symbol = "d1", Above = 0)] double diameter,
        [Quantity("face width", Dimension.Length, "mm", Symbol = "b", Above = 0)] double face,
        [Quantity("gear ratio", Dimension.Number, Symbol = "u", Min = 1)] double ratio,
        [Quantity("zone factor", Dimension.Number, Symbol = "ZH", Above = 0)] double zone,
        [Quantity("elasticity factor, √MPa", Dimension.Number, Symbol = "ZE", Above = 0)] double elasticity,
        [Quantity("contact ratio factor", Dimension.Number, Symbol = "Zε", Above = 0)] double contactRatio,
        [Quantity("helix factor", Dimension.Number, Symbol = "Zβ", Above = 0)] double helixFactor = 1,
        [Quantity("application factor", Dimension.Number, Symbol = "KA", Min = 1)] double application = 1,
        [Quantity("dynamic factor", Dimension.Number, Symbol = "Kv", Min = 1)] double dynamic = 1,
        [Quantity("face load factor", Dimension.Number, Symbol = "KHβ", Min = 1)] double faceLoad = 1,
        [Quantity("transverse load factor", Dimension.Number, Symbol = "KHα", Min = 1)] double sharing = 1,
        [Quantity("single pair contact factor", Dimension.Number, Symbol = "ZB", Min = 1)] double singlePair = 1)
    {
        var nominal = zone * elasticity * 1e3 * contactRatio * helixFactor * Math.Sqrt(force / (diameter * face) * (ratio + 1) / ratio);
        return new GearContactStress(nominal, singlePair * nominal * Math.Sqrt(application * dynamic * faceLoad * sharing));
    }

    /// <summary>Lubricant, velocity and roughness factors.</summary>
    /// <param name="strength">Pitting strength number σHlim, Pa.</param>
    /// <param name="viscosity">Kinematic viscosity of the oil at 40 °C, m²/s.</param>
    /// <param name="speed">Pitch-line speed, m/s.</param>
    /// <param name="roughness">Mean Rz of the two flanks, m; six times Ra where only Ra is known.</param>
    /// <param name="relativeRadius">Relative radius of curvature at the pitch point, m.</param>
    [Formula(
        "ISO 6336 film factors",
        "ZL = C + 4 (1 - C) / (1.2 + 134 / ν40)^2; Zv = Cv + 2 (1 - Cv) / sqrt(0.8 + 32 / v), Cv = C + 0.02; ZR = (3 / Rz10)^CR, Rz10 = Rz (10 / ρred)^(1/3)",
        Source,
        Validity = "C 0.83 below 850 MPa, 0.91 above 1200 MPa; CR 0.15 below 850 MPa, 0.08 above 1200 MPa; linear in between.")]
    public static FilmFactors Film(
        [Quantity("pitting strength number", Dimension.Pressure, "MPa", Symbol = "σHlim", Above = 0)] double strength,
        [Quantity("oil viscosity at 40 °C", Dimension.KinematicViscosity, "mm²/s", Symbol = "ν40", Above = 0)] double viscosity,
        [Quantity("pitch-line speed", Dimension.Speed, "m/s", Symbol = "v", Above = 0)] double speed,
        [Quantity("mean Rz of the flanks", Dimension.Length, "µm", Symbol = "Rz", Above = 0)] double roughness,
        [Quantity("relative radius of curvature", Dimension.Length, "mm", Symbol = "ρred", Above = 0)] double relativeRadius)
    {
        var megapascals = Math.Clamp(strength / 1e6, 850, 1200);
        var c = 0.83 + (0.08 * (megapascals - 850) / 350);
        var roughnessExponent = 0.32 - (0.0002 * megapascals);
        var thick = 1.2 + (134 / (viscosity * 1e6));
        var rz10 = roughness * 1e6 * Math.Cbrt(0.010 / relativeRadius);
        return new FilmFactors(
            c + (4 * (1 - c) / (thick * thick)),
            c + 0.02 + (2 * (0.98 - c) / Math.Sqrt(0.8 + (32 / speed))),
            Math.Pow(3 / rz10, roughnessExponent));
    }

    /// <summary>Permissible contact stress and safety factor.</summary>
    /// <param name="strength">Pitting strength number σHlim, Pa.</param>
    /// <param name="stress">Contact stress, Pa.</param>
    /// <param name="life">Life factor ZNT.</param>
    /// <param name="lubricant">Lubricant factor.</param>
    /// <param name="velocity">Velocity factor.</param>
    /// <param name="roughness">Roughness factor.</param>
    /// <param name="hardening">Work-hardening factor ZW.</param>
    /// <param name="size">Size factor ZX.</param>
    [Formula(
        "ISO 6336 pitting safety",
        "σHP = σHlim ZNT ZL Zv ZR ZW ZX; SH = σHP / σH",
        Source,
        Caution = "No standard gives a rating credit for peening or superfinishing: agree it and prove it by test.")]
    public static PittingSafety Safety(
        [Quantity("pitting strength number", Dimension.Pressure, "MPa", Symbol = "σHlim", Above = 0)] double strength,
        [Quantity("contact stress", Dimension.Pressure, "MPa", Symbol = "σH", Above = 0)] double stress,
        [Quantity("life factor", Dimension.Number, Symbol = "ZNT", Above = 0)] double life = 1,
        [Quantity("lubricant factor", Dimension.Number, Symbol = "ZL", Above = 0)] double lubricant = 1,
        [Quantity("velocity factor", Dimension.Number, Symbol = "Zv", Above = 0)] double velocity = 1,
        [Quantity("roughness factor", Dimension.Number, Symbol = "ZR", Above = 0)] double roughness = 1,
        [Quantity("work-hardening factor", Dimension.Number, Symbol = "ZW", Above = 0)] double hardening = 1,
        [Quantity("size factor", Dimension.Number, Symbol = "ZX", Above = 0)] double size = 1)
    {
        var permissible = strength * life * lubricant * velocity * roughness * hardening * size;
        return new PittingSafety(permissible, permissible / stress);
    }
}
