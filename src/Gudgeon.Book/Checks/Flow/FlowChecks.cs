using Gudgeon.Book.Fields;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Flow;

/// <summary>A check of ports by what they pass on the flow bench.</summary>
public abstract class FlowCheck : Check
{
    public override string Family => "flow";

    /// <summary>Ports of a side of which flow is known; none when it is not.</summary>
    protected static IEnumerable<string> Known(View view, string side) =>
        FlowPort.Keys(view, side).Where(i => view.Knows(Valve.BenchTable, i) || view.Knows(Valve.FlowTable, i));

    /// <summary>The port; null when something needed is not known.</summary>
    private protected static FlowPort? Port(View view, string index) => FlowPort.Of(view, index, FlowFigures.CustomaryPressure);
}

/// <summary>Mean inlet Mach index at the rev limit: whether the inlet valves choke the engine on the mean.</summary>
public sealed class InletMachCheck : FlowCheck
{
    public override string Id => "inlet-mach";

    public override string Title => "Inlet Mach index";

    public override string Source => "Taylor, The Internal-Combustion Engine in Theory and Practice, vol. 1, chapter 6; filling falls away somewhere between 0.5 and 0.6, a threshold and no sharp law, and 0.6 is held here";

    public override IEnumerable<string> Instances(View view) => Known(view, "inlet");

    public override Judgement Examine(View view, string index)
    {
        var limit = FlowFigures.MachLimit(view);
        var port = Port(view, index);
        var judged = Judgement.AtMost("inlet Mach index at the rev limit", port is null ? double.NaN : FlowFigures.Mach(view, port), limit, Dimension.Number, "", "where filling falls away");
        return port is null ? judged : judged with { Remark = $"({FlowWords.Speed(FlowFigures.SpeedAt(view, port, limit))} would be the limit)" };
    }
}

/// <summary>Exhaust ports against inlet ports.</summary>
public sealed class FlowRatioCheck : FlowCheck
{
    private const double Least = 0.70;
    private const double Most = 0.85;

    public override string Id => "flow-ratio";

    public override string Title => "Exhaust against inlet flow";

    public override string Source => "effective areas at the full lift of each; 0.70 to 0.85 suits an engine that breathes by itself, more is wanted with a blower: common practice, no source";

    public override IEnumerable<string> Instances(View view) => Known(view, "exhaust").Any() && Known(view, "inlet").Any() ? Cylinders(view) : [];

    public override Judgement Examine(View view, string index)
    {
        var suffix = index.Length > 0 ? "." + index : "";
        var (inlet, exhaust) = (Port(view, "inlet" + suffix), Port(view, "exhaust" + suffix));
        return Judgement.Between(
            "exhaust over inlet",
            inlet is null || exhaust is null ? double.NaN : FlowFigures.Ratio(view, exhaust, inlet),
            view.Limit("flow-ratio.min", Dimension.Number, "", Least),
            view.Limit("flow-ratio.max", Dimension.Number, "", Most),
            Dimension.Number,
            "",
            "what is usual");
    }

    /// <summary>One for each cylinder where the ports of either side are told apart.</summary>
    private static IEnumerable<string> Cylinders(View view) =>
        Valve.Sides.Any(s => FlowPort.Keys(view, s).Count > 1) ? Checks.Instances.Cylinders(view) : [""];
}

/// <summary>Ports of one side that ought to be alike.</summary>
public sealed class FlowScatterCheck : FlowCheck
{
    private const double Usual = 0.03;

    public override string Id => "flow-scatter";

    public override string Title => "Ports alike from cylinder to cylinder";

    public override string Source => "greatest less least over the mean, at full lift; 2 to 3 % is what a careful hand reaches: common practice, no source";

    public override IEnumerable<string> Instances(View view) => Valve.Sides.Where(s => FlowPort.Keys(view, s).Count > 1 && Known(view, s).Any());

    public override Judgement Examine(View view, string index)
    {
        var ports = FlowPort.Keys(view, index).Select(i => Port(view, i)).ToList();
        var spread = ports.Contains(null) ? double.NaN : FlowFigures.Spread(view, ports.OfType<FlowPort>());
        return Judgement.AtMost("spread between cylinders", spread, view.Limit("flow-scatter.max", Dimension.Number, "%", Usual), Dimension.Number, "%", "what is usual");
    }
}

/// <summary>Bench readings that cannot be: more than an ideal nozzle of the curtain's or the throat's area would pass.</summary>
public sealed class BenchCheck : FlowCheck
{
    public override string Id => "bench";

    public override string Title => "Bench readings can be";

    public override string Source => "conservation of energy: no port passes more than an ideal nozzle of its narrowest area; above 1 a reading, the test pressure, or a diameter is wrong";

    public override IEnumerable<string> Instances(View view) => Valve.Sides.SelectMany(s => Known(view, s));

    public override Judgement Examine(View view, string index)
    {
        var limit = view.Limit("bench.max", Dimension.Number, "", 1);
        if (Port(view, index) is not { } port)
        {
            return Judgement.AtMost("greatest flow coefficient", double.NaN, limit, Dimension.Number, "", "an ideal nozzle");
        }

        var worst = port.Rows.MaxBy(r => r.Greatest)!;
        return Judgement.AtMost("greatest flow coefficient", worst.Greatest, limit, Dimension.Number, "", "an ideal nozzle") with { Remark = $"at {Valve.Lift.Print(worst.Lift)} of lift" };
    }
}
