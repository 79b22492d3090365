using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Bearings;

/// <summary>Viscosity of an oil between and beyond two measured temperatures.</summary>
/// <param name="Kinematic">Kinematic viscosity at the asked temperature, m²/s.</param>
/// <param name="A">Constant A of the fit.</param>
/// <param name="B">Constant B of the fit.</param>
public readonly record struct ViscosityFit(
    [Quantity("kinematic viscosity", Dimension.KinematicViscosity, "mm²/s", Symbol = "ν")] double Kinematic,
    [Quantity("constant A", Dimension.Number, Symbol = "A")] double A,
    [Quantity("constant B", Dimension.Number, Symbol = "B")] double B);

/// <summary>Oil viscosity against temperature.</summary>
public static class OilViscosity
{
    /// <summary>Kinematic viscosity at a temperature from two known points.</summary>
    /// <param name="temperature">Temperature at which it is wanted, K.</param>
    /// <param name="first">Kinematic viscosity at the first temperature, m²/s; at 40 °C on a data sheet.</param>
    /// <param name="second">Kinematic viscosity at the second temperature, m²/s; at 100 °C on a data sheet.</param>
    /// <param name="firstTemperature">First temperature, K.</param>
    /// <param name="secondTemperature">Second temperature, K.</param>
    /// <param name="ice">Kelvin taken for 0 °C; older charts use 273.</param>
    [Formula(
        "oil viscosity at temperature",
        "lg(lg(ν + 0.7)) = A - B lg(T)",
        "ASTM D341 with two points",
        Validity = "Above 2 mm²/s; mineral and synthetic hydrocarbon oils without wax.")]
    public static ViscosityFit AtTemperature(
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 200, Below = 600)] double temperature,
        [Quantity("kinematic viscosity at the first temperature", Dimension.KinematicViscosity, "mm²/s", Symbol = "ν1", Above = 1e-6)] double first,
        [Quantity("kinematic viscosity at the second temperature", Dimension.KinematicViscosity, "mm²/s", Symbol = "ν2", Above = 1e-6)] double second,
        [Quantity("first temperature", Dimension.Temperature, "°C", Symbol = "T1", Above = 200, Below = 600)] double firstTemperature = 313.15,
        [Quantity("second temperature", Dimension.Temperature, "°C", Symbol = "T2", Above = 200, Below = 600)] double secondTemperature = 373.15,
        [Quantity("kelvin taken for 0 °C", Dimension.Number, Min = 273, Max = 273.16)] double ice = 273.15)
    {
        FormulaDomainException.Unless(firstTemperature != secondTemperature, "second temperature: must differ from the first");
        double Log(double kelvin) => Math.Log10(kelvin - 273.15 + ice);
        double Double(double viscosity) => Math.Log10(Math.Log10((viscosity * 1e6) + 0.7));
        var b = (Double(first) - Double(second)) / (Log(secondTemperature) - Log(firstTemperature));
        var a = Double(first) + (b * Log(firstTemperature));
        var wanted = Math.Pow(10, Math.Pow(10, a - (b * Log(temperature)))) - 0.7;
        FormulaDomainException.Unless(double.IsFinite(wanted), "temperature: too far below the two known points; the fit runs away");
        return new ViscosityFit(wanted * 1e-6, a, b);
    }

    /// <summary>Dynamic viscosity from kinematic viscosity, Pa·s.</summary>
    /// <param name="kinematic">Kinematic viscosity, m²/s.</param>
    /// <param name="density">Density at the same temperature, kg/m³.</param>
    [Formula("dynamic viscosity", "μ = ρ ν", "Definition", Provenance = Provenance.Definition)]
    [return: Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "μ")]
    public static double Dynamic(
        [Quantity("kinematic viscosity", Dimension.KinematicViscosity, "mm²/s", Symbol = "ν", Above = 0)] double kinematic,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density) =>
        density * kinematic;
}
