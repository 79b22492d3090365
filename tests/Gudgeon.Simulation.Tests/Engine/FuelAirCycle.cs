using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Simulation.Tests.Engine;

/// <summary>
/// The constant-volume fuel-air cycle from a trapped charge, with polynomials and the equilibrium solver only: the other
/// side of the comparison.
/// </summary>
internal sealed class FuelAirCycle
{
    private readonly GasMixture _air = Air.Of(AirModel.StandardDry);
    private readonly GasMixture _residual;
    private readonly Fuel _fuel;
    private readonly double _airShare;
    private readonly double _fuelShare;
    private readonly CylinderFigures _trapped;
    private readonly Elements _elements;

    public FuelAirCycle(EngineSpec spec, CylinderFigures trapped)
    {
        (_fuel, _trapped) = (spec.Fuel, trapped);
        var fuelPerAir = 1 / (spec.Lambda * _fuel.StoichiometricAirFuelRatio());
        var mixture = (1 / (1 + fuelPerAir) * _air.Elements) + (fuelPerAir / (1 + fuelPerAir) * _fuel.ElementsPerKilogram);
        _residual = Equilibrium.AtTemperaturePressure(mixture, 1700, 10e5).Frozen();
        _airShare = (1 - trapped.ResidualFraction) / (1 + fuelPerAir);
        _fuelShare = _airShare * fuelPerAir;
        _elements = mixture;
    }

    public double ClosingVolume => _trapped.TrappedMass * R * _trapped.TrappedTemperature / _trapped.TrappedPressure;

    private double R => (_airShare * _air.GasConstant) + (_fuelShare * _fuel.VapourGasConstant) + (_trapped.ResidualFraction * _residual.GasConstant);

    /// <summary>Isentropic compression of the frozen charge by Runge and Kutta's method in ln V.</summary>
    public (double Temperature, double Pressure) Compress(double from, double to)
    {
        const int Steps = 2000;
        var (t, h) = (_trapped.TrappedTemperature, Math.Log(to / from) / Steps);
        for (var i = 0; i < Steps; i++)
        {
            var k1 = Slope(t);
            var k2 = Slope(t + (h / 2 * k1));
            var k3 = Slope(t + (h / 2 * k2));
            var k4 = Slope(t + (h * k3));
            t += h / 6 * (k1 + (2 * k2) + (2 * k3) + k4);
        }

        return (t, _trapped.TrappedMass * R * t / to);
    }

    public EquilibriumState Burn(double temperature, double volume)
    {
        var energy = (_airShare * _air.Energy(temperature)) + (_fuelShare * _fuel.VapourEnergy(temperature)) + (_trapped.ResidualFraction * _residual.Energy(temperature));
        return Equilibrium.AtEnergyVolume(_elements, energy, volume / _trapped.TrappedMass);
    }

    public EquilibriumState Expand(EquilibriumState from, double volume)
    {
        var (low, high) = (1e4, from.Pressure);
        var state = from;
        while (high / low > 1 + 1e-10)
        {
            var middle = Math.Sqrt(low * high);
            state = Equilibrium.AtEntropyPressure(_elements, from.Entropy, middle, state);
            (low, high) = state.SpecificVolume * _trapped.TrappedMass > volume ? (middle, high) : (low, middle);
        }

        return state;
    }

    private double Slope(double t)
    {
        var cp = (_airShare * _air.HeatCapacity(t)) + (_fuelShare * _fuel.VapourHeatCapacity(t)) + (_trapped.ResidualFraction * _residual.HeatCapacity(t));
        return -R * t / (cp - R);
    }
}
