using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Clutch;

/// <summary>How the pressure is spread over a friction face.</summary>
public enum FacePressure
{
    /// <summary>Run in: pressure times radius is constant.</summary>
    UniformWear,

    /// <summary>New and flat: the same pressure everywhere.</summary>
    UniformPressure,
}

/// <summary>Torque of a plate clutch and what the faces carry.</summary>
/// <param name="Torque">Torque at which it slips, N·m.</param>
/// <param name="MeanRadius">Friction radius, m.</param>
/// <param name="PeakPressure">Greatest pressure on a face, Pa.</param>
public readonly record struct PlateClutchCapacity(
    [Quantity("slip torque", Dimension.Torque, "N·m", Symbol = "T")] double Torque,
    [Quantity("friction radius", Dimension.Length, "mm", Symbol = "Rm")] double MeanRadius,
    [Quantity("greatest face pressure", Dimension.Pressure, "MPa", Symbol = "pmax")] double PeakPressure);

/// <summary>Clamp force of a plate clutch and what the faces carry.</summary>
/// <param name="Force">Axial clamp force, N.</param>
/// <param name="MeanRadius">Friction radius, m.</param>
/// <param name="PeakPressure">Greatest pressure on a face, Pa.</param>
public readonly record struct PlateClutchClamp(
    [Quantity("clamp force", Dimension.Force, "N", Symbol = "W")] double Force,
    [Quantity("friction radius", Dimension.Length, "mm", Symbol = "Rm")] double MeanRadius,
    [Quantity("greatest face pressure", Dimension.Pressure, "MPa", Symbol = "pmax")] double PeakPressure);

/// <summary>Single and multi-plate friction clutches.</summary>
public static class PlateClutch
{
    private const string Source = "Khurmi & Gupta, Theory of Machines, 14th ed., ch. 10; Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eqs 16-23 to 16-28";
    private const string Relations = "T = z μ W Rm; uniform wear Rm = (Ro + Ri) / 2, pmax = W / (2 π Ri (Ro - Ri)); uniform pressure Rm = 2 (Ro^3 - Ri^3) / (3 (Ro^2 - Ri^2)), pmax = W / (π (Ro^2 - Ri^2))";

    /// <summary>Torque at which a plate clutch slips.</summary>
    /// <param name="force">Axial clamp force, N.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="outer">Outer diameter of the friction face, m.</param>
    /// <param name="inner">Inner diameter of the friction face, m.</param>
    /// <param name="faces">Number of friction faces in series; plates driven plus plates driving less one.</param>
    /// <param name="pressure">How the pressure is spread; run in is the safe one.</param>
    [Formula("plate clutch torque", Relations, Source, Caution = "Friction of a wet clutch depends on the oil; a friction-modified oil can take a third of it.")]
    public static PlateClutchCapacity Torque(
        [Quantity("clamp force", Dimension.Force, "N", Symbol = "W", Min = 0)] double force,
        [Quantity("coefficient of friction", Dimension.Number, Symbol = "μ", Above = 0, Max = 1.5)] double friction,
        [Quantity("outer diameter of the face", Dimension.Length, "mm", Symbol = "Do", Above = 0)] double outer,
        [Quantity("inner diameter of the face", Dimension.Length, "mm", Symbol = "Di", Above = 0)] double inner,
        [Quantity("friction faces", Dimension.Number, Symbol = "z", Min = 1)] int faces,
        [Quantity("face pressure", Dimension.Number)] FacePressure pressure = FacePressure.UniformWear)
    {
        var radius = FrictionRadius(outer, inner, pressure);
        return new PlateClutchCapacity(faces * friction * force * radius, radius, force / PressureArea(outer, inner, pressure));
    }

    /// <summary>Clamp force that carries a torque.</summary>
    /// <param name="torque">Torque to carry without slip, N·m.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="outer">Outer diameter of the friction face, m.</param>
    /// <param name="inner">Inner diameter of the friction face, m.</param>
    /// <param name="faces">Number of friction faces in series.</param>
    /// <param name="pressure">How the pressure is spread.</param>
    [Formula("plate clutch clamp force", "W = T / (z μ Rm); " + Relations, Source)]
    public static PlateClutchClamp ClampForce(
        [Quantity("torque", Dimension.Torque, "N·m", Symbol = "T", Min = 0)] double torque,
        [Quantity("coefficient of friction", Dimension.Number, Symbol = "μ", Above = 0, Max = 1.5)] double friction,
        [Quantity("outer diameter of the face", Dimension.Length, "mm", Symbol = "Do", Above = 0)] double outer,
        [Quantity("inner diameter of the face", Dimension.Length, "mm", Symbol = "Di", Above = 0)] double inner,
        [Quantity("friction faces", Dimension.Number, Symbol = "z", Min = 1)] int faces,
        [Quantity("face pressure", Dimension.Number)] FacePressure pressure = FacePressure.UniformWear)
    {
        var radius = FrictionRadius(outer, inner, pressure);
        var force = torque / (faces * friction * radius);
        return new PlateClutchClamp(force, radius, force / PressureArea(outer, inner, pressure));
    }

    /// <summary>Clamp force that loads the faces to a permitted pressure, N.</summary>
    /// <param name="peakPressure">Permitted greatest pressure, Pa.</param>
    /// <param name="outer">Outer diameter of the friction face, m.</param>
    /// <param name="inner">Inner diameter of the friction face, m.</param>
    /// <param name="pressure">How the pressure is spread.</param>
    [Formula(
        "plate clutch clamp force from face pressure",
        "uniform wear W = 2 π pmax Ri (Ro - Ri); uniform pressure W = π pmax (Ro^2 - Ri^2)",
        Source)]
    [return: Quantity("clamp force", Dimension.Force, "N", Symbol = "W")]
    public static double ClampForceFromPressure(
        [Quantity("greatest face pressure", Dimension.Pressure, "MPa", Symbol = "pmax", Min = 0)] double peakPressure,
        [Quantity("outer diameter of the face", Dimension.Length, "mm", Symbol = "Do", Above = 0)] double outer,
        [Quantity("inner diameter of the face", Dimension.Length, "mm", Symbol = "Di", Above = 0)] double inner,
        [Quantity("face pressure", Dimension.Number)] FacePressure pressure = FacePressure.UniformWear)
    {
        RequireRing(outer, inner);
        return peakPressure * PressureArea(outer, inner, pressure);
    }

    /// <summary>Clamp force left when the pack has worn and the springs have extended, N.</summary>
    /// <param name="force">Clamp force when new, N.</param>
    /// <param name="springs">Number of springs.</param>
    /// <param name="rate">Rate of one spring, N/m.</param>
    /// <param name="wear">Wear of one surface, m.</param>
    /// <param name="surfaces">Number of wearing surfaces.</param>
    [Formula("clutch clamp force after wear", "W2 = W1 - n k m x", "Springs in parallel, wear of all surfaces in series; Khurmi & Gupta, Theory of Machines, 14th ed., ch. 10")]
    [return: Quantity("clamp force after wear", Dimension.Force, "N", Symbol = "W2")]
    public static double ForceAfterWear(
        [Quantity("clamp force when new", Dimension.Force, "N", Symbol = "W1", Min = 0)] double force,
        [Quantity("springs", Dimension.Number, Symbol = "n", Min = 1)] int springs,
        [Quantity("rate of one spring", Dimension.ForcePerLength, "N/mm", Symbol = "k", Min = 0)] double rate,
        [Quantity("wear of one surface", Dimension.Length, "mm", Symbol = "x", Min = 0)] double wear,
        [Quantity("wearing surfaces", Dimension.Number, Symbol = "m", Min = 1)] int surfaces)
    {
        var left = force - (springs * rate * surfaces * wear);
        FormulaDomainException.Unless(left >= 0, "wear of one surface: the springs have lost all their load");
        return left;
    }

    /// <summary>Clamp force of a set of clutch springs compressed by a known amount, N.</summary>
    /// <param name="springs">Number of springs.</param>
    /// <param name="rate">Rate of one spring, N/m.</param>
    /// <param name="compression">Compression of one spring in the assembled clutch, m.</param>
    [Formula("clutch spring clamp force", "W = n k x", "Springs in parallel", Provenance = Provenance.Definition)]
    [return: Quantity("clamp force", Dimension.Force, "N", Symbol = "W")]
    public static double SpringForce(
        [Quantity("springs", Dimension.Number, Symbol = "n", Min = 1)] int springs,
        [Quantity("rate of one spring", Dimension.ForcePerLength, "N/mm", Symbol = "k", Above = 0)] double rate,
        [Quantity("compression of one spring", Dimension.Length, "mm", Symbol = "x", Min = 0)] double compression) =>
        springs * rate * compression;

    private static double FrictionRadius(double outer, double inner, FacePressure pressure)
    {
        RequireRing(outer, inner);
        var (ro, ri) = (outer / 2, inner / 2);
        return pressure == FacePressure.UniformWear
            ? (ro + ri) / 2
            : 2 * ((ro * ro) + (ro * ri) + (ri * ri)) / (3 * (ro + ri));
    }

    /// <summary>Clamp force over greatest pressure, m².</summary>
    private static double PressureArea(double outer, double inner, FacePressure pressure) => pressure == FacePressure.UniformWear
        ? Math.PI * inner * (outer - inner) / 2
        : Math.PI * ((outer * outer) - (inner * inner)) / 4;

    private static void RequireRing(double outer, double inner) =>
        FormulaDomainException.Unless(outer > inner, "outer diameter of the face: must be greater than the inner diameter");
}
