using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Boost;

/// <summary>What an air filter takes of the pressure, from one point at which it was tested.</summary>
public static class FilterFlow
{
    private const string Law = "Darcy's and Forchheimer's law of a porous layer, a μ v + b ρ v²; e.g. Nield & Bejan, Convection in Porous Media, ch. 1";
    private const string Clean = "Clean and dry media; dirt raises the drop, most of all its linear part.";

    /// <summary>Pressure drop of a filter, Pa.</summary>
    /// <param name="velocity">Air through the medium as fitted, m/s: flow over the area of the medium.</param>
    /// <param name="testVelocity">The same at the test, m/s.</param>
    /// <param name="testDrop">Pressure drop at the test, Pa.</param>
    /// <param name="linear">Share of the tested drop that rises with the flow itself; the rest rises with its square.</param>
    /// <param name="viscosityRatio">Viscosity of the air as run over that of the test.</param>
    /// <param name="densityRatio">Density of the air as run over that of the test.</param>
    [Formula("air filter pressure drop", "Δp = Δpt (s μ v / vt + (1 - s) ρ (v / vt)^2)", Law, Provenance = Provenance.FromMemory, Validity = Clean)]
    [return: Quantity("pressure drop", Dimension.Pressure, "kPa", Symbol = "Δp")]
    public static double Drop(
        [Quantity("velocity through the medium", Dimension.Speed, "m/s", Symbol = "v", Min = 0)] double velocity,
        [Quantity("velocity through the medium at the test", Dimension.Speed, "m/s", Symbol = "vt", Above = 0)] double testVelocity,
        [Quantity("pressure drop at the test", Dimension.Pressure, "kPa", Symbol = "Δpt", Above = 0)] double testDrop,
        [Quantity("linear share at the test", Dimension.Number, Symbol = "s", Min = 0, Max = 1)] double linear = 0.5,
        [Quantity("viscosity over that of the test", Dimension.Number, Symbol = "μ", Above = 0)] double viscosityRatio = 1,
        [Quantity("density over that of the test", Dimension.Number, Symbol = "ρ", Above = 0)] double densityRatio = 1)
    {
        var share = velocity / testVelocity;
        return testDrop * share * ((linear * viscosityRatio) + ((1 - linear) * densityRatio * share));
    }

    /// <summary>Velocity through the medium at which a filter takes a given pressure drop, m/s.</summary>
    /// <param name="drop">Pressure drop as run, Pa.</param>
    /// <param name="testVelocity">Air through the medium at the test, m/s.</param>
    /// <param name="testDrop">Pressure drop at the test, Pa.</param>
    /// <param name="linear">Share of the tested drop that rises with the flow itself; the rest rises with its square.</param>
    /// <param name="viscosityRatio">Viscosity of the air as run over that of the test.</param>
    /// <param name="densityRatio">Density of the air as run over that of the test.</param>
    [Formula("air filter velocity at a pressure drop", "Δp = Δpt (s μ v / vt + (1 - s) ρ (v / vt)^2), solved for v", Law, Provenance = Provenance.FromMemory, Validity = Clean)]
    [return: Quantity("velocity through the medium", Dimension.Speed, "m/s", Symbol = "v")]
    public static double Velocity(
        [Quantity("pressure drop", Dimension.Pressure, "kPa", Symbol = "Δp", Above = 0)] double drop,
        [Quantity("velocity through the medium at the test", Dimension.Speed, "m/s", Symbol = "vt", Above = 0)] double testVelocity,
        [Quantity("pressure drop at the test", Dimension.Pressure, "kPa", Symbol = "Δpt", Above = 0)] double testDrop,
        [Quantity("linear share at the test", Dimension.Number, Symbol = "s", Min = 0, Max = 1)] double linear = 0.5,
        [Quantity("viscosity over that of the test", Dimension.Number, Symbol = "μ", Above = 0)] double viscosityRatio = 1,
        [Quantity("density over that of the test", Dimension.Number, Symbol = "ρ", Above = 0)] double densityRatio = 1)
    {
        // The root of the quadratic in the form that holds when its square term vanishes.
        var (square, first, wanted) = ((1 - linear) * densityRatio, linear * viscosityRatio, drop / testDrop);
        return testVelocity * 2 * wanted / (first + Math.Sqrt((first * first) + (4 * square * wanted)));
    }
}
