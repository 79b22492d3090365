using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Cooling;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>The charge cooler from its size. What is not known reads as NaN.</summary>
/// <param name="view">The values.</param>
public sealed class SizedCooler(View view)
{
    /// <summary>Heat of air and of water, J/(kg·K), and heat that melts ice, J/kg: from memory.</summary>
    private const double AirHeat = 1005, WaterHeat = 4186, Melting = 334e3;

    /// <summary>Effectiveness on the charge at an air flow, kg/s.</summary>
    public double Effectiveness(double flow)
    {
        var (charge, coolant) = (flow * AirHeat, view.Amount(Cooler.CoolantFlow) * view.AmountOr(Cooler.CoolantHeat, WaterHeat));
        var units = view.Amount(Cooler.Area) * view.Amount(Cooler.Coefficient) / Math.Min(charge, coolant);
        var of = view.Work<double, double, double>(Passing == CoolerFlow.CounterFlow ? Exchanger.CounterFlow : Exchanger.CrossFlow, units, Math.Min(charge, coolant) / Math.Max(charge, coolant));
        return of * Math.Min(charge, coolant) / charge;
    }

    /// <summary>Heat taken from the charge at a point of the run, W.</summary>
    public double Heat(BlowerFigures blower) => blower.Flow * AirHeat * Effectiveness(blower.Flow) * (blower.DeliveryTemperature - view.Amount(Cooler.CoolantTemperature));

    /// <summary>Temperature of the charge behind it, K.</summary>
    public double Outlet(BlowerFigures blower) =>
        view.Work(Calc.Boost.ChargeCooler.Outlet, blower.DeliveryTemperature, view.Amount(Cooler.CoolantTemperature), Effectiveness(blower.Flow), 2e5, 0.0).OutletTemperature;

    /// <summary>What its tank warms by in a time at a heat, K; ice melts first.</summary>
    public double TankRise(double heat, double time)
    {
        var (water, ice) = (view.Amount(Cooler.TankWater), view.AmountOr(Cooler.TankIce, 0));
        return Math.Max(0, (heat * time) - (ice * Melting)) / ((water + ice) * WaterHeat);
    }

    private CoolerFlow Passing => view.ChoiceOr(Cooler.Passing, CoolerFlow.CrossFlow);
}
