using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Fatigue of bolts: what amplitude the first engaged thread bears.</summary>
public static class BoltFatigue
{
    /// <summary>Permissible stress amplitude of a bolt whose thread was rolled before heat treatment, Pa.</summary>
    /// <param name="diameter">Thread diameter, m.</param>
    [Formula("bolt fatigue strength, rolled before heat treatment", "σA = 0.85 (150 / d + 45)", "VDI 2230-1:2003, eq. 5.5/20", Provenance = Provenance.FromMemory, Validity = "d in mm and σA in MPa; classes 8.8 to 12.9, two million cycles and more, mean load over 0.3 of yield")]
    [return: Quantity("stress amplitude", Dimension.Pressure, "MPa", Symbol = "σA")]
    public static double RolledBefore(
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter) =>
        0.85e6 * ((150 / (diameter * 1e3)) + 45);

    /// <summary>Permissible stress amplitude of a bolt whose thread was rolled after heat treatment, Pa.</summary>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="meanLoad">Mean bolt force, N; from 0.3 to 1 of the yield load.</param>
    /// <param name="yieldLoad">Bolt force at yield, N.</param>
    [Formula("bolt fatigue strength, rolled after heat treatment", "σA = (2 - Fm / Fy) 0.85 (150 / d + 45)", "VDI 2230-1:2003, eq. 5.5/21", Provenance = Provenance.FromMemory, Validity = "d in mm and σA in MPa; mean load between 0.3 and 1 of the yield load")]
    [return: Quantity("stress amplitude", Dimension.Pressure, "MPa", Symbol = "σA")]
    public static double RolledAfter(
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("mean bolt force", Dimension.Force, "kN", Symbol = "Fm", Min = 0)] double meanLoad,
        [Quantity("yield load", Dimension.Force, "kN", Symbol = "Fy", Above = 0)] double yieldLoad)
    {
        FormulaDomainException.Unless(meanLoad <= yieldLoad, "mean bolt force: must not be greater than the yield load");
        FormulaDomainException.Unless(meanLoad >= 0.3 * yieldLoad, "mean bolt force: must be at least 0.3 of the yield load, where the rule begins");
        return (2 - (meanLoad / yieldLoad)) * RolledBefore(diameter);
    }

    /// <summary>Stress amplitude in a bolt from its swing of force, Pa.</summary>
    /// <param name="greatest">Greatest additional bolt force, N.</param>
    /// <param name="least">Least additional bolt force, N.</param>
    /// <param name="stressArea">Stress area, m².</param>
    [Formula("bolt stress amplitude", "σa = (Fo - Fu) / (2 As)", "VDI 2230-1:2003, R9", Provenance = Provenance.FromMemory)]
    [return: Quantity("stress amplitude", Dimension.Pressure, "MPa", Symbol = "σa")]
    public static double Amplitude(
        [Quantity("greatest additional bolt force", Dimension.Force, "N", Symbol = "Fo")] double greatest,
        [Quantity("least additional bolt force", Dimension.Force, "N", Symbol = "Fu")] double least,
        [Quantity("stress area", Dimension.Area, "mm²", Symbol = "As", Above = 0)] double stressArea)
    {
        FormulaDomainException.Unless(greatest >= least, "greatest additional bolt force: must not be less than the least");
        return (greatest - least) / (2 * stressArea);
    }
}
