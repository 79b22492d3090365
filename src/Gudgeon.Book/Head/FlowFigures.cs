using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Head;

/// <summary>What ports come to in the engine: one notion for the flow sheet and the checks.</summary>
internal static class FlowFigures
{
    /// <summary>Test pressure at which the trade compares ports: 28 inches of water, Pa.</summary>
    public const double CustomaryPressure = 28 * 249.08891;

    private const double UsualMach = 0.6;

    /// <summary>Inlet Mach index at the rev limit; NaN when something needed is not known, or the port passes what cannot be.</summary>
    public static double Mach(View view, FlowPort port) => Believable(view, port) ? view.Work(
        InletMachIndex.Index,
        view.Amount(Cylinder.Bore, CylinderOf(port)),
        view.Amount(Crank.Stroke),
        view.Amount(Engine.RevLimit),
        port.Valves.HeadDiameter,
        port.HeadCoefficient,
        Temperature(view),
        port.Valves.Count,
        1.4,
        287.0).Index : double.NaN;

    /// <summary>Crank speed at which the inlet Mach index comes to a value, rad/s; NaN as the index is.</summary>
    public static double SpeedAt(View view, FlowPort port, double index) => Believable(view, port) ? view.Work(
        InletMachIndex.CrankSpeed,
        view.Amount(Cylinder.Bore, CylinderOf(port)),
        view.Amount(Crank.Stroke),
        port.Valves.HeadDiameter,
        index,
        port.HeadCoefficient,
        Temperature(view),
        port.Valves.Count,
        1.4,
        287.0) : double.NaN;

    /// <summary>Mean speed of the gas at the rev limit through an area, m/s.</summary>
    public static double Velocity(View view, FlowPort port, double area) =>
        view.Work(PortFlow.MeanVelocity, view.Amount(Cylinder.Bore, CylinderOf(port)), view.Amount(Crank.Stroke), view.Amount(Engine.RevLimit), area);

    /// <summary>Exhaust over inlet at the full lift of each.</summary>
    public static double Ratio(View view, FlowPort exhaust, FlowPort inlet) => view.Work(PortFlow.Ratio, exhaust.FullArea, inlet.FullArea);

    /// <summary>How far the ports of a side lie apart at full lift, over their mean.</summary>
    public static double Spread(View view, IEnumerable<FlowPort> ports) => view.Work(PortFlow.Spread, ports.Select(p => p.FullArea).ToArray());

    /// <summary>Index at which filling falls away: the user's limit, else the usual.</summary>
    public static double MachLimit(View view) => view.Limit("inlet-mach.max", Dimension.Number, "", UsualMach);

    /// <summary>No port passes more on the mean than an ideal nozzle of its valve heads.</summary>
    private static bool Believable(View view, FlowPort port)
    {
        if (port.HeadCoefficient > 1)
        {
            view.Unknown($"bench readings that can be ({Valve.BenchTable.At(port.Index)})");
        }

        return port.HeadCoefficient <= 1;
    }

    private static string CylinderOf(FlowPort port) => port.Index.Split('.') is [_, var cylinder, ..] ? cylinder : "";

    private static double Temperature(View view) => view.AmountOr(Weather.Temperature, new AmbientSpec().Temperature);
}
