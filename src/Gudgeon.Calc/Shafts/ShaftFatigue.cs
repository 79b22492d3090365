using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Shafts;

/// <summary>Line between alternating and mean stress.</summary>
public enum FatigueCriterion
{
    /// <summary>Straight to the tensile strength; the usual careful choice.</summary>
    Goodman,

    /// <summary>Parabola through the tensile strength.</summary>
    Gerber,

    /// <summary>Quarter ellipse to the yield strength (ASME).</summary>
    Elliptic,

    /// <summary>Straight to the yield strength; the most careful.</summary>
    Soderberg,
}

/// <summary>How a surface was made, for its fatigue factor.</summary>
public enum SurfaceFinish
{
    /// <summary>Ground.</summary>
    Ground,

    /// <summary>Machined or cold drawn.</summary>
    Machined,

    /// <summary>Hot rolled.</summary>
    HotRolled,

    /// <summary>As forged.</summary>
    Forged,
}

/// <summary>Safety of a shaft against fatigue and first-cycle yield.</summary>
/// <param name="Fatigue">Safety factor against fatigue.</param>
/// <param name="Yield">Safety factor against yield, with stress concentration.</param>
public readonly record struct ShaftSafety(
    [Quantity("safety factor against fatigue", Dimension.Number, Symbol = "n")] double Fatigue,
    [Quantity("safety factor against yield", Dimension.Number, Symbol = "ny")] double Yield);

/// <summary>Endurance limit of a shaft and its factors.</summary>
/// <param name="Limit">Endurance limit of the part, Pa.</param>
/// <param name="Surface">Surface factor ka.</param>
/// <param name="Size">Size factor kb.</param>
public readonly record struct EnduranceLimit(
    [Quantity("endurance limit", Dimension.Pressure, "MPa", Symbol = "Se")] double Limit,
    [Quantity("surface factor", Dimension.Number, Symbol = "ka")] double Surface,
    [Quantity("size factor", Dimension.Number, Symbol = "kb")] double Size);

/// <summary>Round shafts under bending and torsion by the distortion-energy criteria.</summary>
public static class ShaftFatigue
{
    private const string Source = "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eqs 7-7 to 7-16";
    private const string Relations = "A = sqrt(4 (Kf Ma)^2 + 3 (Kfs Ta)^2); B = sqrt(4 (Kf Mm)^2 + 3 (Kfs Tm)^2); Goodman 1/n = 16 (A / Se + B / Sut) / (π d^3); Gerber 1/n = 8 A (1 + sqrt(1 + (2 B Se / (A Sut))^2)) / (π d^3 Se); elliptic 1/n = 16 sqrt((A / Se)^2 + (B / Sy)^2) / (π d^3); Soderberg 1/n = 16 (A / Se + B / Sy) / (π d^3)";

    /// <summary>Shaft diameter for a safety factor against fatigue, m.</summary>
    /// <param name="alternatingMoment">Alternating bending moment, N·m.</param>
    /// <param name="meanMoment">Mean bending moment, N·m.</param>
    /// <param name="alternatingTorque">Alternating torque, N·m.</param>
    /// <param name="meanTorque">Mean torque, N·m.</param>
    /// <param name="endurance">Endurance limit of the part, Pa.</param>
    /// <param name="tensile">Tensile strength, Pa.</param>
    /// <param name="yield">Yield strength, Pa.</param>
    /// <param name="bendingFactor">Fatigue stress concentration in bending.</param>
    /// <param name="torsionFactor">Fatigue stress concentration in torsion.</param>
    /// <param name="safety">Safety factor.</param>
    /// <param name="criterion">Criterion.</param>
    [Formula("shaft diameter for fatigue", Relations, Source)]
    [return: Quantity("shaft diameter", Dimension.Length, "mm", Symbol = "d")]
    public static double Diameter(
        [Quantity("alternating bending moment", Dimension.Torque, "N·m", Symbol = "Ma", Min = 0)] double alternatingMoment,
        [Quantity("mean bending moment", Dimension.Torque, "N·m", Symbol = "Mm", Min = 0)] double meanMoment,
        [Quantity("alternating torque", Dimension.Torque, "N·m", Symbol = "Ta", Min = 0)] double alternatingTorque,
        [Quantity("mean torque", Dimension.Torque, "N·m", Symbol = "Tm", Min = 0)] double meanTorque,
        [Quantity("endurance limit", Dimension.Pressure, "MPa", Symbol = "Se", Above = 0)] double endurance,
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Sut", Above = 0)] double tensile,
        [Quantity("yield strength", Dimension.Pressure, "MPa", Symbol = "Sy", Above = 0)] double yield,
        [Quantity("bending stress concentration", Dimension.Number, Symbol = "Kf", Min = 1)] double bendingFactor = 1,
        [Quantity("torsion stress concentration", Dimension.Number, Symbol = "Kfs", Min = 1)] double torsionFactor = 1,
        [Quantity("safety factor", Dimension.Number, Symbol = "n", Above = 0)] double safety = 2,
        [Quantity("criterion", Dimension.Number)] FatigueCriterion criterion = FatigueCriterion.Goodman)
    {
        var a = Equivalent(bendingFactor * alternatingMoment, torsionFactor * alternatingTorque);
        var b = Equivalent(bendingFactor * meanMoment, torsionFactor * meanTorque);
        return Math.Cbrt(safety * Demand(criterion, a, b, endurance, tensile, yield));
    }

    /// <summary>Safety of a shaft against fatigue and yield.</summary>
    /// <param name="diameter">Shaft diameter at the section, m.</param>
    /// <param name="alternatingMoment">Alternating bending moment, N·m.</param>
    /// <param name="meanMoment">Mean bending moment, N·m.</param>
    /// <param name="alternatingTorque">Alternating torque, N·m.</param>
    /// <param name="meanTorque">Mean torque, N·m.</param>
    /// <param name="endurance">Endurance limit of the part, Pa.</param>
    /// <param name="tensile">Tensile strength, Pa.</param>
    /// <param name="yield">Yield strength, Pa.</param>
    /// <param name="bendingFactor">Fatigue stress concentration in bending.</param>
    /// <param name="torsionFactor">Fatigue stress concentration in torsion.</param>
    /// <param name="criterion">Criterion.</param>
    [Formula("shaft fatigue safety", Relations + "; ny = Sy / sqrt((32 Kf (Ma + Mm) / (π d^3))^2 + 3 (16 Kfs (Ta + Tm) / (π d^3))^2)", Source)]
    public static ShaftSafety Safety(
        [Quantity("shaft diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("alternating bending moment", Dimension.Torque, "N·m", Symbol = "Ma", Min = 0)] double alternatingMoment,
        [Quantity("mean bending moment", Dimension.Torque, "N·m", Symbol = "Mm", Min = 0)] double meanMoment,
        [Quantity("alternating torque", Dimension.Torque, "N·m", Symbol = "Ta", Min = 0)] double alternatingTorque,
        [Quantity("mean torque", Dimension.Torque, "N·m", Symbol = "Tm", Min = 0)] double meanTorque,
        [Quantity("endurance limit", Dimension.Pressure, "MPa", Symbol = "Se", Above = 0)] double endurance,
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Sut", Above = 0)] double tensile,
        [Quantity("yield strength", Dimension.Pressure, "MPa", Symbol = "Sy", Above = 0)] double yield,
        [Quantity("bending stress concentration", Dimension.Number, Symbol = "Kf", Min = 1)] double bendingFactor = 1,
        [Quantity("torsion stress concentration", Dimension.Number, Symbol = "Kfs", Min = 1)] double torsionFactor = 1,
        [Quantity("criterion", Dimension.Number)] FatigueCriterion criterion = FatigueCriterion.Goodman)
    {
        var a = Equivalent(bendingFactor * alternatingMoment, torsionFactor * alternatingTorque);
        var b = Equivalent(bendingFactor * meanMoment, torsionFactor * meanTorque);
        FormulaDomainException.Unless(a + b > 0, "alternating bending moment: the shaft carries no load at all");
        var cube = diameter * diameter * diameter;
        var greatest = 16 / (Math.PI * cube) * Equivalent(bendingFactor * (alternatingMoment + meanMoment), torsionFactor * (alternatingTorque + meanTorque));
        return new ShaftSafety(cube / Demand(criterion, a, b, endurance, tensile, yield), yield / greatest);
    }

    /// <summary>Endurance limit of a steel shaft in bending.</summary>
    /// <param name="tensile">Tensile strength, Pa.</param>
    /// <param name="diameter">Diameter, m.</param>
    /// <param name="surface">How the surface was made.</param>
    /// <param name="reliability">Reliability factor: 1 for 50 %, 0.897 for 90 %, 0.814 for 99 %.</param>
    [Formula(
        "endurance limit of a shaft",
        "Se = ka kb ke Se0; Se0 = Sut / 2, at most 700 MPa; ka = a Sut^b; kb = (d / 7.62 mm)^-0.107 to 51 mm, 1.51 d^-0.157 above",
        "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eqs 6-8, 6-19, 6-20",
        Validity = "Steel, rotating bending, 2.79 mm to 254 mm.")]
    public static EnduranceLimit Endurance(
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Sut", Above = 0)] double tensile,
        [Quantity("diameter", Dimension.Length, "mm", Symbol = "d", Min = 2.79e-3, Max = 0.254)] double diameter,
        [Quantity("surface finish", Dimension.Number)] SurfaceFinish surface = SurfaceFinish.Machined,
        [Quantity("reliability factor", Dimension.Number, Symbol = "ke", Above = 0, Max = 1)] double reliability = 1)
    {
        var (a, b) = surface switch
        {
            SurfaceFinish.Ground => (1.58, -0.085),
            SurfaceFinish.Machined => (4.51, -0.265),
            SurfaceFinish.HotRolled => (57.7, -0.718),
            _ => (272.0, -0.995),
        };
        var ka = a * Math.Pow(tensile / 1e6, b);
        var millimetres = diameter * 1e3;
        var kb = millimetres <= 51 ? Math.Pow(millimetres / 7.62, -0.107) : 1.51 * Math.Pow(millimetres, -0.157);
        return new EnduranceLimit(ka * kb * reliability * Math.Min(tensile / 2, 700e6), ka, kb);
    }

    /// <summary>sqrt(4 M² + 3 T²): twice the bending moment with the same distortion energy.</summary>
    private static double Equivalent(double moment, double torque) => Math.Sqrt((4 * moment * moment) + (3 * torque * torque));

    /// <summary>Cube of the diameter at safety factor 1, m³.</summary>
    private static double Demand(FatigueCriterion criterion, double a, double b, double endurance, double tensile, double yield) => 16 / Math.PI * criterion switch
    {
        FatigueCriterion.Gerber => (a / endurance / 2) + Math.Sqrt((a * a / (4 * endurance * endurance)) + (b * b / (tensile * tensile))),
        FatigueCriterion.Elliptic => Math.Sqrt((a * a / (endurance * endurance)) + (b * b / (yield * yield))),
        FatigueCriterion.Soderberg => (a / endurance) + (b / yield),
        _ => (a / endurance) + (b / tensile),
    };
}
