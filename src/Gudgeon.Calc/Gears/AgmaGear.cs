using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gears;

/// <summary>Factors of a spur gear set by the AGMA method as Shigley gives it.</summary>
/// <param name="Speed">Pitch-line speed, m/s.</param>
/// <param name="Force">Tangential force, N.</param>
/// <param name="Dynamic">Dynamic factor.</param>
/// <param name="PinionSize">Size factor of the pinion.</param>
/// <param name="WheelSize">Size factor of the wheel.</param>
/// <param name="LoadDistribution">Load-distribution factor.</param>
/// <param name="Ratio">Gear ratio.</param>
/// <param name="Geometry">Pitting geometry factor I.</param>
public readonly record struct AgmaFactors(
    [Quantity("pitch-line speed", Dimension.Speed, "m/s", Symbol = "v")] double Speed,
    [Quantity("tangential force", Dimension.Force, "N", Symbol = "Wt")] double Force,
    [Quantity("dynamic factor", Dimension.Number, Symbol = "Kv")] double Dynamic,
    [Quantity("size factor of the pinion", Dimension.Number, Symbol = "KsP")] double PinionSize,
    [Quantity("size factor of the wheel", Dimension.Number, Symbol = "KsG")] double WheelSize,
    [Quantity("load-distribution factor", Dimension.Number, Symbol = "Km")] double LoadDistribution,
    [Quantity("gear ratio", Dimension.Number, Symbol = "mG")] double Ratio,
    [Quantity("pitting geometry factor", Dimension.Number, Symbol = "I")] double Geometry);

/// <summary>A stress against what is allowed.</summary>
/// <param name="Strength">Strength number before life and reliability, Pa.</param>
/// <param name="LifeFactor">Stress-cycle factor.</param>
/// <param name="Allowable">Allowed stress, Pa.</param>
/// <param name="Safety">Safety factor on stress.</param>
public readonly record struct AgmaSafety(
    [Quantity("strength number", Dimension.Pressure, "MPa", Symbol = "S")] double Strength,
    [Quantity("stress-cycle factor", Dimension.Number, Symbol = "YZ")] double LifeFactor,
    [Quantity("allowed stress", Dimension.Pressure, "MPa", Symbol = "Sa")] double Allowable,
    [Quantity("safety factor", Dimension.Number, Symbol = "SF")] double Safety);

/// <summary>Spur gears by the AGMA method.</summary>
public static class AgmaGear
{
    private const string Source = "ANSI/AGMA 2001-D04 as given in Shigley's Mechanical Engineering Design, ch. 14";
    private const double Psi = 6894.757293168361;
    private const double Inch = 0.0254;

    /// <summary>Kinematics and factors of a spur gear set.</summary>
    /// <param name="pinion">Pinion teeth.</param>
    /// <param name="wheel">Wheel teeth.</param>
    /// <param name="module">Module, m.</param>
    /// <param name="face">Face width, m.</param>
    /// <param name="speed">Pinion speed, rad/s.</param>
    /// <param name="power">Power, W.</param>
    /// <param name="quality">Quality number Qv.</param>
    /// <param name="pinionForm">Lewis form factor of the pinion.</param>
    /// <param name="wheelForm">Lewis form factor of the wheel.</param>
    /// <param name="pressureAngle">Pressure angle, rad.</param>
    [Formula(
        "AGMA spur gear factors",
        "Wt = P / v; Kv = ((A + sqrt(200 v)) / A)^B, B = 0.25 (12 - Qv)^(2/3), A = 50 + 56 (1 - B); Ks = 1.192 (F sqrt(Y) / Pd)^0.0535; Km = 1 + F / (10 d) - 0.025 + (0.0125 F above 1 in) + Cma; I = cos(α) sin(α) mG / (2 (mG + 1))",
        Source,
        Validity = "Uncrowned, straddle-mounted at the middle, commercial enclosed unit; face 1 in to 17 in for the second mesh term.")]
    public static AgmaFactors Factors(
        [Quantity("pinion teeth", Dimension.Number, Symbol = "zP", Min = 5)] int pinion,
        [Quantity("wheel teeth", Dimension.Number, Symbol = "zG", Min = 5)] int wheel,
        [Quantity("module", Dimension.Length, "mm", Symbol = "m", Above = 0)] double module,
        [Quantity("face width", Dimension.Length, "mm", Symbol = "F", Above = 0)] double face,
        [Quantity("pinion speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double speed,
        [Quantity("power", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("quality number", Dimension.Number, Symbol = "Qv", Min = 3, Max = 11)] double quality,
        [Quantity("Lewis form factor of the pinion", Dimension.Number, Symbol = "YP", Above = 0, Below = 1)] double pinionForm,
        [Quantity("Lewis form factor of the wheel", Dimension.Number, Symbol = "YG", Above = 0, Below = 1)] double wheelForm,
        [Quantity("pressure angle", Dimension.Angle, "°", Symbol = "α", Above = 0.1, Below = 0.8)] double pressureAngle = 20 * Math.PI / 180)
    {
        var diameter = pinion * module;
        var pitchLine = speed * diameter / 2;
        var ratio = (double)wheel / pinion;
        return new AgmaFactors(
            pitchLine,
            power / pitchLine,
            DynamicFactor(pitchLine, quality),
            SizeFactor(face, module, pinionForm),
            SizeFactor(face, module, wheelForm),
            LoadDistribution(face, diameter),
            ratio,
            Math.Cos(pressureAngle) * Math.Sin(pressureAngle) / 2 * ratio / (ratio + 1));
    }

    /// <summary>Bending stress at the root, Pa.</summary>
    /// <param name="force">Tangential force, N.</param>
    /// <param name="face">Face width, m.</param>
    /// <param name="module">Module, m.</param>
    /// <param name="geometry">Bending geometry factor J.</param>
    /// <param name="dynamic">Dynamic factor.</param>
    /// <param name="size">Size factor.</param>
    /// <param name="distribution">Load-distribution factor.</param>
    /// <param name="overload">Overload factor.</param>
    /// <param name="rim">Rim-thickness factor.</param>
    [Formula("AGMA bending stress", "σ = Wt Ko Kv Ks Km KB / (F m J)", Source)]
    [return: Quantity("bending stress", Dimension.Pressure, "MPa", Symbol = "σ")]
    public static double BendingStress(
        [Quantity("tangential force", Dimension.Force, "N", Symbol = "Wt", Above = 0)] double force,
        [Quantity("face width", Dimension.Length, "mm", Symbol = "F", Above = 0)] double face,
        [Quantity("module", Dimension.Length, "mm", Symbol = "m", Above = 0)] double module,
        [Quantity("bending geometry factor", Dimension.Number, Symbol = "J", Above = 0, Below = 1)] double geometry,
        [Quantity("dynamic factor", Dimension.Number, Symbol = "Kv", Min = 1)] double dynamic = 1,
        [Quantity("size factor", Dimension.Number, Symbol = "Ks", Above = 0)] double size = 1,
        [Quantity("load-distribution factor", Dimension.Number, Symbol = "Km", Min = 1)] double distribution = 1,
        [Quantity("overload factor", Dimension.Number, Symbol = "Ko", Min = 1)] double overload = 1,
        [Quantity("rim-thickness factor", Dimension.Number, Symbol = "KB", Min = 1)] double rim = 1) =>
        force * overload * dynamic * size * distribution * rim / (face * module * geometry);

    /// <summary>Contact stress, Pa.</summary>
    /// <param name="force">Tangential force, N.</param>
    /// <param name="face">Face width, m.</param>
    /// <param name="diameter">Pitch diameter of the pinion, m.</param>
    /// <param name="geometry">Pitting geometry factor I.</param>
    /// <param name="dynamic">Dynamic factor.</param>
    /// <param name="size">Size factor.</param>
    /// <param name="distribution">Load-distribution factor.</param>
    /// <param name="overload">Overload factor.</param>
    /// <param name="elastic">Elastic coefficient squared, Pa: 2300² psi for steel on steel.</param>
    [Formula("AGMA contact stress", "σc = sqrt(Cp2 Wt Ko Kv Ks Km / (d F I))", Source)]
    [return: Quantity("contact stress", Dimension.Pressure, "MPa", Symbol = "σc")]
    public static double ContactStress(
        [Quantity("tangential force", Dimension.Force, "N", Symbol = "Wt", Above = 0)] double force,
        [Quantity("face width", Dimension.Length, "mm", Symbol = "F", Above = 0)] double face,
        [Quantity("pitch diameter of the pinion", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitting geometry factor", Dimension.Number, Symbol = "I", Above = 0, Below = 1)] double geometry,
        [Quantity("dynamic factor", Dimension.Number, Symbol = "Kv", Min = 1)] double dynamic = 1,
        [Quantity("size factor", Dimension.Number, Symbol = "Ks", Above = 0)] double size = 1,
        [Quantity("load-distribution factor", Dimension.Number, Symbol = "Km", Min = 1)] double distribution = 1,
        [Quantity("overload factor", Dimension.Number, Symbol = "Ko", Min = 1)] double overload = 1,
        [Quantity("elastic coefficient squared", Dimension.Pressure, "GPa", Symbol = "Cp2", Above = 0)] double elastic = 2300.0 * 2300 * Psi) =>
        Math.Sqrt(elastic * force * overload * dynamic * size * distribution / (diameter * face * geometry));

    /// <summary>Safety against bending fatigue of a through-hardened steel gear, grade 1.</summary>
    /// <param name="stress">Bending stress, Pa.</param>
    /// <param name="hardness">Brinell hardness.</param>
    /// <param name="cycles">Stress cycles.</param>
    /// <param name="reliability">Reliability factor KR: 0.85 for 90 %, 1 for 99 %.</param>
    [Formula("AGMA bending safety", "S = 77.3 HB + 12800 psi; YZ = 1.3558 N^-0.0178; Sa = S YZ / KR; SF = Sa / σ", Source, Validity = "Through-hardened steel, grade 1; 3 million cycles and more.")]
    public static AgmaSafety BendingSafety(
        [Quantity("bending stress", Dimension.Pressure, "MPa", Symbol = "σ", Above = 0)] double stress,
        [Quantity("Brinell hardness", Dimension.Number, Symbol = "HB", Min = 150, Max = 400)] double hardness,
        [Quantity("stress cycles", Dimension.Number, Symbol = "N", Min = 3e6)] double cycles,
        [Quantity("reliability factor", Dimension.Number, Symbol = "KR", Above = 0)] double reliability = 1)
    {
        var strength = ((77.3 * hardness) + 12_800) * Psi;
        return Safety(strength, 1.3558 * Math.Pow(cycles, -0.0178), 1 / reliability, stress);
    }

    /// <summary>Safety against pitting of a through-hardened steel gear, grade 1.</summary>
    /// <param name="stress">Contact stress, Pa.</param>
    /// <param name="hardness">Brinell hardness.</param>
    /// <param name="cycles">Stress cycles.</param>
    /// <param name="reliability">Reliability factor KR.</param>
    /// <param name="hardnessRatio">Hardness-ratio factor CH of the wheel; 1 for the pinion.</param>
    [Formula("AGMA pitting safety", "S = 322 HB + 29100 psi; YZ = 1.4488 N^-0.023; Sa = S YZ CH / KR; SF = Sa / σ", Source, Validity = "Through-hardened steel, grade 1; 10 million cycles and more.")]
    public static AgmaSafety PittingSafety(
        [Quantity("contact stress", Dimension.Pressure, "MPa", Symbol = "σ", Above = 0)] double stress,
        [Quantity("Brinell hardness", Dimension.Number, Symbol = "HB", Min = 150, Max = 400)] double hardness,
        [Quantity("stress cycles", Dimension.Number, Symbol = "N", Min = 1e7)] double cycles,
        [Quantity("reliability factor", Dimension.Number, Symbol = "KR", Above = 0)] double reliability = 1,
        [Quantity("hardness-ratio factor", Dimension.Number, Symbol = "CH", Min = 1)] double hardnessRatio = 1)
    {
        var strength = ((322 * hardness) + 29_100) * Psi;
        return Safety(strength, 1.4488 * Math.Pow(cycles, -0.023), hardnessRatio / reliability, stress);
    }

    /// <summary>Hardness-ratio factor of the wheel.</summary>
    /// <param name="pinion">Brinell hardness of the pinion.</param>
    /// <param name="wheel">Brinell hardness of the wheel.</param>
    /// <param name="ratio">Gear ratio.</param>
    [Formula("AGMA hardness-ratio factor", "CH = 1 + (0.00898 HP / HG - 0.00829) (mG - 1), HP / HG from 1.2 to 1.7", Source)]
    [return: Quantity("hardness-ratio factor", Dimension.Number, Symbol = "CH")]
    public static double HardnessRatio(
        [Quantity("Brinell hardness of the pinion", Dimension.Number, Symbol = "HP", Above = 0)] double pinion,
        [Quantity("Brinell hardness of the wheel", Dimension.Number, Symbol = "HG", Above = 0)] double wheel,
        [Quantity("gear ratio", Dimension.Number, Symbol = "mG", Min = 1)] double ratio)
    {
        var hardness = pinion / wheel;
        var slope = hardness < 1.2 ? 0 : hardness > 1.7 ? 0.00698 : (8.98e-3 * hardness) - 8.29e-3;
        return 1 + (slope * (ratio - 1));
    }

    private static AgmaSafety Safety(double strength, double life, double others, double stress)
    {
        var allowable = strength * life * others;
        return new AgmaSafety(strength, life, allowable, allowable / stress);
    }

    private static double DynamicFactor(double speed, double quality)
    {
        var b = 0.25 * Math.Pow(12 - quality, 2.0 / 3);
        var a = 50 + (56 * (1 - b));
        var feetPerMinute = speed * 60 / 0.3048;
        return Math.Pow((a + Math.Sqrt(feetPerMinute)) / a, b);
    }

    private static double SizeFactor(double face, double module, double form) =>
        1.192 * Math.Pow(face / Inch * Math.Sqrt(form) * (module / Inch), 0.0535);

    private static double LoadDistribution(double face, double diameter)
    {
        var inches = face / Inch;
        var slender = Math.Max(0.05, face / (10 * diameter));
        var proportion = inches <= 1 ? slender - 0.025 : slender - 0.0375 + (0.0125 * inches);
        var mesh = 0.127 + (0.0158 * inches) - (0.93e-4 * inches * inches);
        return 1 + proportion + mesh;
    }
}
