using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>A tyre's nominal size.</summary>
/// <param name="SectionHeight">m.</param>
/// <param name="Diameter">m.</param>
/// <param name="Circumference">m.</param>
public readonly record struct NominalTyre(
    [Quantity("section height", Dimension.Length, "mm", Symbol = "H")] double SectionHeight,
    [Quantity("diameter", Dimension.Length, "mm", Symbol = "D")] double Diameter,
    [Quantity("circumference", Dimension.Length, "mm", Symbol = "C")] double Circumference);

/// <summary>Size arithmetic of tyres.</summary>
public static class TyreSize
{
    /// <summary>Diameter and circumference from the size on the sidewall: 180/55-17.</summary>
    /// <param name="width">Section width, m.</param>
    /// <param name="aspect">Section height over width (55 on the sidewall is 0.55).</param>
    /// <param name="rim">Rim diameter, m.</param>
    /// <returns>Section height, diameter and circumference of the unloaded tyre, without growth.</returns>
    [Formula("tyre size", "H = S A; D = R + 2 H; C = pi D", "meaning of the size marking, UN Regulation No. 75; 1 in = 25.4 mm", Provenance = Provenance.Definition, Caution = "Measure the rolling circumference: the tyre is squashed by its load and grows with speed.")]
    public static NominalTyre Nominal(
        [Quantity("section width", Dimension.Length, "mm", Symbol = "S", Above = 0, Max = 0.6)] double width,
        [Quantity("aspect ratio", Dimension.Number, "%", Symbol = "A", Above = 0, Max = 1.2)] double aspect,
        [Quantity("rim diameter", Dimension.Length, "in", Symbol = "R", Above = 0, Max = 1)] double rim)
    {
        var section = width * aspect;
        var diameter = rim + (2 * section);
        return new NominalTyre(section, diameter, Math.PI * diameter);
    }

    /// <summary>Longitudinal slip of the driven tyre.</summary>
    /// <param name="wheelSpeed">Rotational speed of the wheel, rad/s.</param>
    /// <param name="circumference">Rolling circumference, m.</param>
    /// <param name="roadSpeed">Road speed, m/s.</param>
    /// <returns>Slip: tread speed over road speed, less one.</returns>
    [Formula("driven tyre slip", "s = n C / v - 1", "definition of longitudinal slip (SAE J670)", Provenance = Provenance.FromMemory)]
    [return: Quantity("slip", Dimension.Number, "%", Symbol = "s")]
    public static double Slip(
        [Quantity("wheel speed", Dimension.RotationalSpeed, "rpm", Symbol = "n", Min = 0)] double wheelSpeed,
        [Quantity("rolling circumference", Dimension.Length, "mm", Symbol = "C", Above = 0)] double circumference,
        [Quantity("road speed", Dimension.Speed, "km/h", Symbol = "v", Above = 0)] double roadSpeed) =>
        (wheelSpeed * circumference / (2 * Math.PI * roadSpeed)) - 1;

    /// <summary>Rolling resistance of a motorcycle tyre over its load.</summary>
    /// <param name="pressure">Inflation pressure, gauge, Pa.</param>
    /// <param name="speed">Road speed, m/s; up to 165 km/h.</param>
    /// <returns>Rolling resistance over load.</returns>
    [Formula("tyre rolling resistance", "f = 0.0085 + 0.018 / p + 1.59e-6 v^2 / p", "Cossalter, Motorcycle Dynamics, tyres chapter; below 165 km/h", Provenance = Provenance.FromMemory)]
    [return: Quantity("rolling resistance over load", Dimension.Number, Symbol = "f")]
    public static double RollingResistance(
        [Quantity("inflation pressure", Dimension.Pressure, "bar", Symbol = "p", Min = 0.5e5, Max = 6e5)] double pressure,
        [Quantity("road speed", Dimension.Speed, "km/h", Symbol = "v", Min = 0, Max = 165 / 3.6)] double speed)
    {
        var bar = pressure / 1e5;
        var kilometresPerHour = speed * 3.6;
        return 0.0085 + ((0.018 + (1.59e-6 * kilometresPerHour * kilometresPerHour)) / bar);
    }
}
