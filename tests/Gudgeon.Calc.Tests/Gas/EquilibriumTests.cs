using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Calc.Tests.Gas;

/// <summary>Laws that every equilibrium state obeys, whatever the data.</summary>
public class EquilibriumTests
{
    private static readonly Gen<(Charge Charge, double T, double P)> States =
        from fuel in Gen.Enum<FuelChoice>()
        from air in Gen.Enum<AirModel>()
        from phi in Gen.OneOf(Gen.Const(1.0), Gen.Double[0.3, 2])
        from t in Gen.Double[300, 4000]
        from logP in Gen.Double[3, 7.5]
        select (new Charge(Fuels.Of(fuel), phi, air), t, Math.Pow(10, logP));

    [Fact]
    public void Atoms_are_conserved() => States.Sample(s =>
    {
        var given = s.Charge.Elements;
        var found = Equilibrium.AtTemperaturePressure(given, s.T, s.P).Frozen().Elements;
        Near(given.Carbon, found.Carbon, 1e-12);
        Near(given.Hydrogen, found.Hydrogen, 1e-12);
        Near(given.Oxygen, found.Oxygen, 1e-12);
        Near(given.Nitrogen, found.Nitrogen, 1e-12);
        Near(given.Argon, found.Argon, 1e-12);
        Near(1, found.Mass, 1e-12);
    });

    [Fact]
    public void Reactions_are_in_balance() => States.Sample(s =>
    {
        // CO + H2O = CO2 + H2 and 2 OH = H2O + O: the Gibbs function gains nothing either way.
        var gas = Equilibrium.AtTemperaturePressure(s.Charge.Elements, s.T, s.P);
        double Mu(Species species) =>
            ((NasaPolynomial.Enthalpy(species, s.T) / s.T) - NasaPolynomial.Entropy(species, s.T)) / 8.314462618
            + Math.Log(gas.MoleFraction(species) * s.P / 1e5);
        Assert.Equal(Mu(Species.CO) + Mu(Species.H2O), Mu(Species.CO2) + Mu(Species.H2), 1e-6);
        Assert.Equal(2 * Mu(Species.OH), Mu(Species.H2O) + Mu(Species.O), 1e-6);
        Assert.Equal(2 * Mu(Species.NO), Mu(Species.N2) + Mu(Species.O2), 1e-6);
    });

    [Fact]
    public void Enthalpy_less_energy_is_pressure_times_volume() => States.Sample(s =>
    {
        var gas = Equilibrium.AtTemperaturePressure(s.Charge.Elements, s.T, s.P);
        Near(s.P / gas.Density, gas.Enthalpy - gas.Energy, 1e-9);
    });

    [Fact]
    public void Heat_capacity_is_the_slope_of_enthalpy() => States.Where(s => Math.Abs(s.T - 1000) > 2).Sample(s =>
    {
        // Steps small enough for the sharp turn of a stoichiometric gas, large enough for round-off.
        var step = 1e-4 * s.T;
        var gas = Equilibrium.AtTemperaturePressure(s.Charge.Elements, s.T, s.P);
        var above = Equilibrium.AtTemperaturePressure(s.Charge.Elements, s.T + step, s.P, gas);
        var below = Equilibrium.AtTemperaturePressure(s.Charge.Elements, s.T - step, s.P, gas);
        Near(gas.HeatCapacity, (above.Enthalpy - below.Enthalpy) / (2 * step), 1e-4);
        Near(gas.HeatCapacity / s.T, (above.Entropy - below.Entropy) / (2 * step), 1e-4);
    });

    [Fact]
    public void Isentropic_exponent_is_the_slope_along_an_isentrope() => States.Where(s => s.T > 1100).Sample(s =>
    {
        var gas = Equilibrium.AtTemperaturePressure(s.Charge.Elements, s.T, s.P);
        var up = Equilibrium.AtEntropyPressure(s.Charge.Elements, gas.Entropy, s.P * 1.001, gas);
        var down = Equilibrium.AtEntropyPressure(s.Charge.Elements, gas.Entropy, s.P / 1.001, gas);
        Near(2 * Math.Log(1.001) / Math.Log(up.Density / down.Density), gas.IsentropicExponent, 2e-5);
        Assert.InRange(gas.IsentropicExponent, 1, gas.FrozenHeatCapacityRatio + 1e-9);
    });

    [Fact]
    public void States_of_given_enthalpy_and_energy_come_back() => States.Sample(s =>
    {
        var gas = Equilibrium.AtTemperaturePressure(s.Charge.Elements, s.T, s.P);
        Near(s.T, Equilibrium.AtEnthalpyPressure(s.Charge.Elements, gas.Enthalpy, s.P).Temperature, 1e-8);
        var vessel = Equilibrium.AtEnergyVolume(s.Charge.Elements, gas.Energy, gas.SpecificVolume);
        Near(s.T, vessel.Temperature, 1e-8);
        Near(s.P, vessel.Pressure, 1e-8);
    });

    [Fact]
    public void Given_volume_and_given_pressure_are_the_same_state() => States.Sample(s =>
    {
        var gas = Equilibrium.AtTemperaturePressure(s.Charge.Elements, s.T, s.P);
        var vessel = Equilibrium.AtTemperatureVolume(s.Charge.Elements, s.T, gas.SpecificVolume);
        Near(s.P, vessel.Pressure, 1e-11);
        Near(gas.Energy, vessel.Energy, 1e-10);
    });

    [Fact]
    public void A_start_nearby_changes_nothing() => States.Sample(s =>
    {
        var near = Equilibrium.AtTemperaturePressure(s.Charge.Elements, 0.98 * s.T + 6, s.P * 1.3);
        var cold = Equilibrium.AtTemperaturePressure(s.Charge.Elements, s.T, s.P);
        var warm = Equilibrium.AtTemperaturePressure(s.Charge.Elements, s.T, s.P, near);
        Near(cold.Enthalpy, warm.Enthalpy, 1e-10);
        Near(cold.MolarMass, warm.MolarMass, 1e-12);
    });

    [Fact]
    public void Burning_the_liquid_cold_gives_the_heating_value()
    {
        foreach (var choice in Enum.GetValues<FuelChoice>())
        {
            var charge = new Charge(Fuels.Of(choice), 0.8, AirModel.StandardDry);
            var burned = Equilibrium.AtTemperaturePressure(charge.Elements, 298.15, 1e5);
            Near(charge.FuelFraction * charge.Fuel.HeatingValue, charge.Enthalpy(298.15, FuelPhase.Liquid) - burned.Enthalpy, 1e-6);
            Near(charge.FuelFraction * charge.Fuel.LatentHeat, charge.Enthalpy(298.15) - charge.Enthalpy(298.15, FuelPhase.Liquid), 1e-6);
        }
    }

    [Fact]
    public void A_state_allocates_nothing()
    {
        var elements = new Charge(Fuels.IsoOctane, 1.1, AirModel.StandardDry).Elements;
        var state = Equilibrium.AtTemperaturePressure(elements, 2000, 1e6);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 50; i++)
        {
            state = Equilibrium.AtTemperaturePressure(elements, 2000 + (10 * i), 1e6, state);
        }

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.True(state.Temperature > 2400);
    }

    [Fact]
    public void Too_rich_too_cold_and_no_pressure_are_refused()
    {
        var sooty = new Charge(Fuels.IsoOctane, 3.5, AirModel.StandardDry).Elements;
        var fair = new Charge(Fuels.IsoOctane, 1, AirModel.StandardDry).Elements;
        Assert.Throws<FormulaDomainException>(() => Equilibrium.AtTemperaturePressure(sooty, 2000, 1e5));
        Assert.Throws<FormulaDomainException>(() => Equilibrium.AtTemperaturePressure(fair, 150, 1e5));
        Assert.Throws<FormulaDomainException>(() => Equilibrium.AtTemperaturePressure(fair, double.NaN, 1e5));
        Assert.Throws<FormulaDomainException>(() => Equilibrium.AtTemperaturePressure(fair, 2000, 0));
        Assert.Throws<FormulaDomainException>(() => Equilibrium.AtEnthalpyPressure(fair, 1e9, 1e5));
    }

    private static void Near(double expected, double actual, double relative) =>
        Assert.InRange(actual, expected - (relative * Math.Abs(expected)), expected + (relative * Math.Abs(expected)));
}
