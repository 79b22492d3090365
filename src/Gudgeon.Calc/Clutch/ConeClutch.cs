using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Clutch;

/// <summary>Cone clutches and synchroniser cones.</summary>
public static class ConeClutch
{
    /// <summary>Torque of a narrow cone clutch, N·m.</summary>
    /// <param name="force">Axial force, N.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="meanDiameter">Mean diameter of the cone, m.</param>
    /// <param name="halfAngle">Half of the included cone angle, rad.</param>
    [Formula(
        "cone clutch torque",
        "T = μ W D / (2 sin(α))",
        "Khurmi & Gupta, Theory of Machines, 14th ed., ch. 10; Jindal, Machine Design, 1st ed., ch. 22",
        Validity = "Narrow face; force after engagement.")]
    [return: Quantity("slip torque", Dimension.Torque, "N·m", Symbol = "T")]
    public static double Torque(
        [Quantity("axial force", Dimension.Force, "N", Symbol = "W", Min = 0)] double force,
        [Quantity("coefficient of friction", Dimension.Number, Symbol = "μ", Above = 0, Max = 1.5)] double friction,
        [Quantity("mean cone diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("half cone angle", Dimension.Angle, "°", Symbol = "α", Above = 0, Max = 1.5707963267948966)] double halfAngle) =>
        friction * force * meanDiameter / (2 * Math.Sin(halfAngle));
}
