using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Property class of a steel bolt.</summary>
public enum PropertyClass
{
    /// <summary>4.6</summary>
    Class4_6,

    /// <summary>4.8</summary>
    Class4_8,

    /// <summary>5.6</summary>
    Class5_6,

    /// <summary>5.8</summary>
    Class5_8,

    /// <summary>6.8</summary>
    Class6_8,

    /// <summary>8.8</summary>
    Class8_8,

    /// <summary>9.8</summary>
    Class9_8,

    /// <summary>10.9</summary>
    Class10_9,

    /// <summary>12.9</summary>
    Class12_9,
}

/// <summary>Least strengths of a property class.</summary>
/// <param name="Tensile">Tensile strength, Pa.</param>
/// <param name="Yield">Yield: Rp0.2, or ReL of the soft classes, Pa.</param>
/// <param name="Proof">Stress under proof load, Pa.</param>
public readonly record struct BoltStrength(
    [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Rm")] double Tensile,
    [Quantity("yield strength", Dimension.Pressure, "MPa", Symbol = "Rp")] double Yield,
    [Quantity("proof stress", Dimension.Pressure, "MPa", Symbol = "Sp")] double Proof);

/// <summary>Loads that a bolt of a property class must bear.</summary>
/// <param name="StressArea">Nominal stress area as the standard prints it, m².</param>
/// <param name="ProofLoad">Load without lasting stretch, N.</param>
/// <param name="YieldLoad">Load at yield, N.</param>
/// <param name="UltimateLoad">Least breaking load, N.</param>
public readonly record struct BoltLoads(
    [Quantity("nominal stress area", Dimension.Area, "mm²", Symbol = "As")] double StressArea,
    [Quantity("proof load", Dimension.Force, "kN", Symbol = "Fp")] double ProofLoad,
    [Quantity("yield load", Dimension.Force, "kN", Symbol = "Fy")] double YieldLoad,
    [Quantity("ultimate load", Dimension.Force, "kN", Symbol = "Fm")] double UltimateLoad);

/// <summary>Strengths and loads of bolts by property class.</summary>
public static class PropertyClasses
{
    private const double MPa = 1e6;

    /// <summary>Least tensile strength, yield and proof stress of a property class.</summary>
    /// <param name="propertyClass">Property class.</param>
    /// <param name="diameter">Thread diameter, m; class 8.8 is stronger above 16 mm.</param>
    [Formula("bolt property class", "Rm, Rp, Sp", "ISO 898-1:2013, table 3", Validity = "carbon and alloy steel bolts, -50 to 150 °C", Caution = "Class 12.9 and harder are prone to hydrogen embrittlement: no acid, no electroplating without the relief bake.")]
    public static BoltStrength Strength(
        [Quantity("property class", Dimension.Number)] PropertyClass propertyClass,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter)
    {
        var (tensile, yield, proof) = propertyClass switch
        {
            PropertyClass.Class4_6 => (400, 240, 225),
            PropertyClass.Class4_8 => (420, 340, 310),
            PropertyClass.Class5_6 => (500, 300, 280),
            PropertyClass.Class5_8 => (520, 420, 380),
            PropertyClass.Class6_8 => (600, 480, 440),
            PropertyClass.Class8_8 => diameter <= 16e-3 ? (800, 640, 580) : (830, 660, 600),
            PropertyClass.Class9_8 => (900, 720, 650),
            PropertyClass.Class10_9 => (1040, 940, 830),
            _ => (1220, 1100, 970),
        };
        return new BoltStrength(tensile * MPa, yield * MPa, proof * MPa);
    }

    /// <summary>Proof, yield and least ultimate load of a metric bolt.</summary>
    /// <param name="propertyClass">Property class.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    [Formula("bolt proof and ultimate load", "Fp = As Sp; Fy = As Rp; Fm = As Rm", "ISO 898-1:2013, tables 4 to 7", Validity = "strengths Sp, Rp, Rm of the property class; As rounded to three figures as the standard does; its tables round again, some 8.8 loads down by 0.5 %")]
    public static BoltLoads Loads(
        [Quantity("property class", Dimension.Number)] PropertyClass propertyClass,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch)
    {
        var area = ThreeFigures(MetricThread.Sizes(diameter, pitch).StressArea);
        var strength = Strength(propertyClass, diameter);
        return new BoltLoads(area, area * strength.Proof, area * strength.Yield, area * strength.Tensile);
    }

    private static double ThreeFigures(double value)
    {
        var step = Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);
        return Math.Round(value / step) * step;
    }
}
