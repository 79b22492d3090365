using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>Flame temperatures and burned gas in chemical equilibrium.</summary>
public static class Flame
{
    private const string Source = "Gordon and McBride, NASA RP-1311 part I, 1994, chs 2-3; species data NASA/TP-2002-211556";
    private const string Limits = "Products CO2 CO H2O H2 H O OH O2 NO N2 N Ar, 200-6000 K; no soot and no methane, so not for more carbon than oxygen atoms nor for cold rich gas.";

    /// <summary>Burning at constant pressure without heat loss.</summary>
    /// <param name="fuel">Fuel.</param>
    /// <param name="equivalenceRatio">Fuel/air ratio over the stoichiometric one.</param>
    /// <param name="temperature">Temperature of fuel and air before, K.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="phase">Whether the fuel enters as vapour or liquid.</param>
    /// <param name="air">Which dry air.</param>
    [Formula("flame at constant pressure", "h(products at T, p) = h(reactants); products of least Gibbs energy at T, p", Source, Validity = Limits)]
    public static BurnedGas AtConstantPressure(
        [Quantity("fuel", Dimension.Number)] FuelChoice fuel,
        [Quantity("equivalence ratio", Dimension.Number, Symbol = "φ", Min = 0.1, Max = 3)] double equivalenceRatio = 1,
        [Quantity("temperature before", Dimension.Temperature, "°C", Min = 200, Max = 1500)] double temperature = 298.15,
        [Quantity("pressure", Dimension.Pressure, "bar", Symbol = "p", Above = 0, Max = 1e8)] double pressure = 101325,
        [Quantity("fuel enters as", Dimension.Number)] FuelPhase phase = FuelPhase.Vapour,
        [Quantity("air model", Dimension.Number)] AirModel air = AirModel.StandardDry) =>
        BurnedGas.Of(new Charge(Fuels.Of(fuel), equivalenceRatio, air).BurnAtConstantPressure(temperature, pressure, phase));

    /// <summary>Burning in a closed vessel without heat loss, the fuel evaporated before.</summary>
    /// <param name="fuel">Fuel.</param>
    /// <param name="equivalenceRatio">Fuel/air ratio over the stoichiometric one.</param>
    /// <param name="temperature">Temperature before, K.</param>
    /// <param name="pressure">Pressure before, Pa.</param>
    /// <param name="air">Which dry air.</param>
    [Formula("flame at constant volume", "u(products at T, v) = u(reactants); products of least Gibbs energy at T, p(T, v)", Source, Validity = Limits)]
    public static BurnedGas AtConstantVolume(
        [Quantity("fuel", Dimension.Number)] FuelChoice fuel,
        [Quantity("equivalence ratio", Dimension.Number, Symbol = "φ", Min = 0.1, Max = 3)] double equivalenceRatio = 1,
        [Quantity("temperature before", Dimension.Temperature, "°C", Min = 200, Max = 1500)] double temperature = 298.15,
        [Quantity("pressure before", Dimension.Pressure, "bar", Above = 0, Max = 1e8)] double pressure = 101325,
        [Quantity("air model", Dimension.Number)] AirModel air = AirModel.StandardDry) =>
        BurnedGas.Of(new Charge(Fuels.Of(fuel), equivalenceRatio, air).BurnAtConstantVolume(temperature, pressure));

    /// <summary>Burned gas at a given temperature and pressure.</summary>
    /// <param name="fuel">Fuel.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="equivalenceRatio">Fuel/air ratio over the stoichiometric one.</param>
    /// <param name="air">Which dry air.</param>
    [Formula("burned gas at temperature and pressure", "products of least Gibbs energy at T, p; γs = (∂ ln p / ∂ ln ρ) at constant s; a = sqrt(γs R T / W)", Source, Validity = Limits)]
    public static BurnedGas AtTemperature(
        [Quantity("fuel", Dimension.Number)] FuelChoice fuel,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 200, Max = 6000)] double temperature,
        [Quantity("pressure", Dimension.Pressure, "bar", Symbol = "p", Above = 0, Max = 1e8)] double pressure,
        [Quantity("equivalence ratio", Dimension.Number, Symbol = "φ", Min = 0, Max = 3)] double equivalenceRatio = 1,
        [Quantity("air model", Dimension.Number)] AirModel air = AirModel.StandardDry) =>
        BurnedGas.Of(Equilibrium.AtTemperaturePressure(new Charge(Fuels.Of(fuel), equivalenceRatio, air).Elements, temperature, pressure));

    /// <summary>Burned gas of a fuel given by its atoms, at a given temperature and pressure.</summary>
    /// <param name="carbon">Carbon atoms, in any proportion to the others.</param>
    /// <param name="hydrogen">Hydrogen atoms.</param>
    /// <param name="oxygen">Oxygen atoms.</param>
    /// <param name="airFuelRatio">Mass of air to mass of fuel.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="air">Which dry air.</param>
    [Formula("products of a C-H-O fuel at temperature and pressure", "products of least Gibbs energy at T, p; γs = (∂ ln p / ∂ ln ρ) at constant s", Source, Validity = Limits)]
    public static BurnedGas OfAtomsAtTemperature(
        [Quantity("carbon atoms", Dimension.Number, Symbol = "C", Min = 0)] double carbon,
        [Quantity("hydrogen atoms", Dimension.Number, Symbol = "H", Min = 0)] double hydrogen,
        [Quantity("air/fuel ratio by mass", Dimension.Number, Symbol = "AFR", Above = 0)] double airFuelRatio,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 200, Max = 6000)] double temperature,
        [Quantity("pressure", Dimension.Pressure, "bar", Symbol = "p", Above = 0, Max = 1e8)] double pressure,
        [Quantity("oxygen atoms", Dimension.Number, Symbol = "O", Min = 0)] double oxygen = 0,
        [Quantity("air model", Dimension.Number)] AirModel air = AirModel.StandardDry) =>
        BurnedGas.Of(Equilibrium.AtTemperaturePressure(Mixed(new(carbon, hydrogen, oxygen), airFuelRatio, air), temperature, pressure));

    /// <summary>Burned gas of a fuel given by its atoms, at a given enthalpy and pressure.</summary>
    /// <param name="carbon">Carbon atoms, in any proportion to the others.</param>
    /// <param name="hydrogen">Hydrogen atoms.</param>
    /// <param name="oxygen">Oxygen atoms.</param>
    /// <param name="airFuelRatio">Mass of air to mass of fuel.</param>
    /// <param name="enthalpy">Absolute enthalpy of fuel and air before, J/kg.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="air">Which dry air.</param>
    [Formula("products of a C-H-O fuel at enthalpy and pressure", "h(products at T, p) = h; products of least Gibbs energy at T, p", Source, Validity = Limits)]
    public static BurnedGas OfAtomsAtEnthalpy(
        [Quantity("carbon atoms", Dimension.Number, Symbol = "C", Min = 0)] double carbon,
        [Quantity("hydrogen atoms", Dimension.Number, Symbol = "H", Min = 0)] double hydrogen,
        [Quantity("air/fuel ratio by mass", Dimension.Number, Symbol = "AFR", Above = 0)] double airFuelRatio,
        [Quantity("enthalpy", Dimension.SpecificEnergy, "kJ/kg", Symbol = "h", Help = "Of fuel and air.")] double enthalpy,
        [Quantity("pressure", Dimension.Pressure, "bar", Symbol = "p", Above = 0, Max = 1e8)] double pressure,
        [Quantity("oxygen atoms", Dimension.Number, Symbol = "O", Min = 0)] double oxygen = 0,
        [Quantity("air model", Dimension.Number)] AirModel air = AirModel.StandardDry) =>
        BurnedGas.Of(Equilibrium.AtEnthalpyPressure(Mixed(new(carbon, hydrogen, oxygen), airFuelRatio, air), enthalpy, pressure));

    /// <summary>Atoms of fuel and air together, mol/kg.</summary>
    private static Elements Mixed(Elements fuel, double airFuelRatio, AirModel air)
    {
        FormulaDomainException.Unless(fuel.Mass > 0, "fuel: give carbon or hydrogen atoms");
        return 1 / (1 + airFuelRatio) * ((1 / fuel.Mass * fuel) + (airFuelRatio * Air.Of(air).Elements));
    }
}
