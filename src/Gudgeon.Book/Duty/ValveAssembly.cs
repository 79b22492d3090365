using Gudgeon.Book.Fields;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.ValveTrain;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>The valves of one port as they breathe: what the engine model runs on, and what the flow sheet shows.</summary>
public static class ValveAssembly
{
    /// <summary>The valves of a port; null when something needed is not known, and then the view's trace says what.</summary>
    /// <param name="view">The values.</param>
    /// <param name="index">"inlet", "exhaust.2".</param>
    public static ValveSpec? Build(View view, string index)
    {
        var (count, diameter) = (view.Count(Valve.Count, index), view.Amount(Valve.HeadDiameter, index));
        var lift = ValveLift.Of(view, index);
        var flow = Flow(view, index, count, diameter);
        return lift is null || flow is null || count == 0 ? null : new ValveSpec { Count = count, HeadDiameter = diameter, Lift = lift, Flow = flow };
    }

    private static FlowTable? Flow(View view, string index, int count, double diameter)
    {
        if (view.TableIf(Valve.FlowTable, index) is { } coefficients)
        {
            return Coefficients(coefficients["lift"], coefficients["forward"], coefficients["reverse"], diameter);
        }

        var bench = view.Table(Valve.BenchTable, index);
        var pressure = view.Amount(Valve.BenchPressure, index);
        if (bench is null || count == 0 || double.IsNaN(pressure + diameter))
        {
            return null;
        }

        var air = view.AmountOr(Valve.BenchAirPressure, FlowBench.StandardPressure, index);
        var temperature = view.AmountOr(Valve.BenchTemperature, FlowBench.StandardTemperature, index);
        if (pressure >= FlowBench.ChokingDrop * air)
        {
            view.Unknown($"a test pressure of the flow bench below the choking drop, {FlowBench.ChokingDrop:P0} of the air pressure ({Valve.BenchPressure.At(index)})");
            return null;
        }

        // A shut valve has no curtain; its leakage is no coefficient.
        var (lifts, open) = (bench["lift"], Array.FindAll([.. Enumerable.Range(0, bench.Rows.Count)], row => bench["lift"][row] > 0));
        double[] Curtain(double[] flows) => flows.Length == 0 ? [] : [.. open.Select(i => FlowBench.CurtainCoefficient(FlowBench.EffectiveArea(flows[i], pressure, air, temperature), count, diameter, lifts[i]))];
        return open.Length == 0 ? null : Coefficients([.. open.Select(i => lifts[i])], Curtain(bench["flow"]), Curtain(bench["reverse"]), diameter);
    }

    private static FlowTable Coefficients(double[] lifts, double[] forward, double[] reverse, double diameter) => new()
    {
        LiftOverDiameter = [.. lifts.Select(l => l / diameter)],
        Forward = forward,
        Reverse = reverse.Length == 0 ? null : reverse,
        Reference = FlowReference.Curtain,
    };
}
