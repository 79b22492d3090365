using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Head;

/// <summary>A port as it is now, and as it was before the changes that are on. SI.</summary>
/// <param name="Now">With the changes that are on.</param>
/// <param name="Before">Without changes; null when nothing that bears on it was changed, or it is not known.</param>
public sealed record FlowSide(FlowPort Now, FlowPort? Before)
{
    /// <summary>Inlet Mach index at the rev limit; null for an exhaust port, or when not known.</summary>
    public double? Mach { get; init; }

    /// <summary>The same before the changes.</summary>
    public double? MachBefore { get; init; }

    /// <summary>The index at which filling falls away.</summary>
    public double MachLimit { get; init; }

    /// <summary>Crank speed at which the index comes to its limit, rad/s; null as the index is.</summary>
    public double? MachSpeed { get; init; }

    /// <summary>The passage; null when neither its areas nor its volume are known.</summary>
    public PortPassage? Passage { get; init; }

    /// <summary>Share by which the mean effective area grew, ports and cam together; null without a before.</summary>
    public double? MeanChange => Before is null ? null : (Now.MeanArea / Before.MeanArea) - 1;

    /// <summary>The same with the cam of now on both: what the ports alone did.</summary>
    public double? MeanChangeByPorts => Before is null ? null : (Now.MeanArea / Before.MeanOver(Now)) - 1;

    /// <summary>Whether the port itself passes something else than before, not only its cam.</summary>
    public bool IsPortChanged => Before is not null && !Before.Rows.SequenceEqual(Now.Rows);

    /// <summary>Effective area before at the lift of a row; null when the port is as it was, or where its readings did not reach.</summary>
    public double? AreaBefore(FlowRow row) => !IsPortChanged || row.Lift > Before!.Rows[^1].Lift * (1 + 1e-9) ? null : Before.AreaAt(row.Lift);

    /// <summary>Flow before at the lift of a row, at the comparison pressure; null as <see cref="AreaBefore"/> is.</summary>
    public double? FlowBefore(FlowRow row) => AreaBefore(row) is { } before ? row.Flow * before / row.Area : null;

    /// <summary>Lift and flow before, from the shut valve on; none when the port is as it was.</summary>
    public IReadOnlyList<(double Lift, double Flow)> CurveBefore => !IsPortChanged ? [] : [(0, 0), .. Now.Rows.Where(r => FlowBefore(r) is not null).Select(r => (r.Lift, FlowBefore(r)!.Value))];

    /// <summary>Lift and flow now, from the shut valve on.</summary>
    public IReadOnlyList<(double Lift, double Flow)> CurveNow => [(0, 0), .. Now.Rows.Select(r => (r.Lift, r.Flow))];

    /// <summary>Share by which the effective area grew at the lift of a row; null as <see cref="AreaBefore"/> is.</summary>
    public double? Change(FlowRow row) => AreaBefore(row) is { } before ? (row.Area / before) - 1 : null;
}

/// <summary>Exhaust over inlet at the full lift of each.</summary>
/// <param name="Words">Which cylinder; empty for all.</param>
/// <param name="Now">With the changes that are on.</param>
/// <param name="Before">Without changes; null when the same or not known.</param>
public sealed record FlowRatio(string Words, double Now, double? Before);

/// <summary>How far the ports of a side lie apart at full lift, over their mean.</summary>
public sealed record FlowSpread(string Side, double Spread);

/// <summary>What the ports pass: by lift, on the mean, against each other, and before and after. SI.</summary>
/// <param name="ComparisonPressure">Test pressure to which all flows are brought, in standard air.</param>
/// <param name="Sides">The ports of which flow is known.</param>
/// <param name="Ratios">Exhaust against inlet.</param>
/// <param name="Spreads">Sides of which cylinders are told apart.</param>
/// <param name="Missing">Fields that are wanted for the ports that are not shown.</param>
public sealed record FlowSheet(double ComparisonPressure, IReadOnlyList<FlowSide> Sides, IReadOnlyList<FlowRatio> Ratios, IReadOnlyList<FlowSpread> Spreads, IReadOnlyList<string> Missing)
{
    /// <summary>The sheet of a book as its changes are switched.</summary>
    /// <param name="book">The book.</param>
    /// <param name="comparison">Test pressure to which flows are brought, Pa; 28 inH2O when left out. Above 0, below 45 kPa.</param>
    public static FlowSheet Of(BuildBook book, double comparison = FlowFigures.CustomaryPressure)
    {
        var (now, before) = (book.Now(), new Snapshot(book, new HashSet<string>(StringComparer.Ordinal)));
        var view = new View(now);
        var ports = Valve.Sides.SelectMany(s => FlowPort.Keys(view, s)).Select(i => FlowPort.Of(view, i, comparison)).OfType<FlowPort>().ToList();
        return new FlowSheet(
            comparison,
            [.. ports.Select(p => Side(p, Earlier(before, p, comparison), now, before))],
            [.. ports.Where(p => p.IsInlet).Select(p => Ratio(p, ports, before, comparison)).OfType<FlowRatio>()],
            [.. ports.GroupBy(p => p.Index.Split('.')[0]).Where(g => g.Count() > 1).Select(g => new FlowSpread(g.Key, FlowFigures.Spread(new View(now), g)))],
            [.. view.Trace.Missing]);
    }

    private static FlowSide Side(FlowPort port, FlowPort? earlier, Snapshot now, Snapshot before)
    {
        var side = new FlowSide(port, earlier) { Passage = PortPassage.Of(new View(now), port) };
        if (!port.IsInlet)
        {
            return side;
        }

        var limit = FlowFigures.MachLimit(new View(now));
        return side with
        {
            Mach = Known(now, v => FlowFigures.Mach(v, port)),
            MachBefore = earlier is null ? null : Known(before, v => FlowFigures.Mach(v, earlier)),
            MachLimit = limit,
            MachSpeed = Known(now, v => FlowFigures.SpeedAt(v, port, limit)),
        };
    }

    private static FlowRatio? Ratio(FlowPort inlet, List<FlowPort> ports, Snapshot before, double comparison)
    {
        var cylinder = inlet.Index.Split('.') is [_, var number, ..] ? number : "";
        var exhaust = ports.FirstOrDefault(p => !p.IsInlet && (p.Index == "exhaust" || p.Index == "exhaust." + cylinder));
        if (exhaust is null)
        {
            return null;
        }

        var (inletBefore, exhaustBefore) = (Earlier(before, inlet, comparison) ?? inlet, Earlier(before, exhaust, comparison) ?? exhaust);
        var ratio = exhaust.FullArea / inlet.FullArea;
        var was = exhaustBefore.FullArea / inletBefore.FullArea;
        return new FlowRatio(cylinder.Length > 0 ? $"cylinder {cylinder}" : "", ratio, was == ratio ? null : was);
    }

    /// <summary>The port before the changes; null when it is as it was, or was not known.</summary>
    private static FlowPort? Earlier(Snapshot before, FlowPort port, double comparison) =>
        FlowPort.Of(new View(before), port.Index, comparison) is { } earlier && !(earlier.Rows.SequenceEqual(port.Rows) && earlier.MeanArea == port.MeanArea) ? earlier : null;

    /// <summary>A number of a snapshot; null when something that it needs is not known.</summary>
    private static double? Known(Snapshot snapshot, Func<View, double> work)
    {
        var view = new View(snapshot);
        return Drawings.Sketch.Known(() => work(view)) is { } number && !view.Trace.Missing.Any() ? number : null;
    }
}
