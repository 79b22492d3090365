using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Bench;

/// <summary>Temperature of a known energy: the tables against the polynomials and the equilibrium solver they stand for.</summary>
internal static class GasBench
{
    private const int Count = 20_000;
    private static double _sink;

    public static void TemperatureOfEnergy()
    {
        var air = Air.Of(AirModel.StandardDry);
        var fuelPerAir = 1 / Fuels.Petrol98.StoichiometricAirFuelRatio();
        var table = new GasTable(air, Fuels.Petrol98, fuelPerAir);
        var elements = (table.AirOfBurned * air.Elements) + (table.FuelOfBurned * Fuels.Petrol98.ElementsPerKilogram);
        SideBySide.Run(
            "temperature of a known energy, one gas state",
            "ns",
            1e9 / Count,
            ("air, table", () => Search(table, new(1, 0, 0, 0), 400, 900)),
            ("air, Newton on the polynomials", () => SearchPolynomials(air)),
            ("burned gas in equilibrium, table", () => Search(table, new(0, 0, 1, 0), 1800, 2700)),
            ("burned gas, equilibrium solved each time", () => SearchEquilibrium(elements)));
    }

    private static void Search(GasTable table, Mixture m, double low, double high)
    {
        var (a, b, node) = (table.Energy(m, low, 40e5), table.Energy(m, high, 40e5), 50);
        for (var i = 0; i < Count; i++)
        {
            _sink += table.AtEnergy(m, a + ((b - a) * i / Count), 40e5, ref node).Temperature;
        }
    }

    private static void SearchPolynomials(GasMixture air)
    {
        var (a, b, t) = (air.Energy(400), air.Energy(900), 400.0);
        for (var i = 0; i < Count; i++)
        {
            var energy = a + ((b - a) * i / Count);
            for (var k = 0; k < 2; k++)
            {
                t += (energy - air.Energy(t)) / (air.HeatCapacity(t) - air.GasConstant);
            }

            _sink += t;
        }
    }

    private static void SearchEquilibrium(Elements elements)
    {
        var near = Equilibrium.AtTemperaturePressure(elements, 1800, 40e5);
        var (a, b) = (near.Energy, Equilibrium.AtTemperaturePressure(elements, 2700, 40e5).Energy);
        var volume = near.SpecificVolume;
        for (var i = 0; i < Count; i++)
        {
            near = Equilibrium.AtEnergyVolume(elements, a + ((b - a) * i / Count), volume, near);
            _sink += near.Temperature;
        }
    }
}
