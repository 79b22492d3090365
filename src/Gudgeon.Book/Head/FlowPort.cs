using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.ValveTrain;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Head;

/// <summary>Where a port is narrowest at a lift.</summary>
public enum Narrowest
{
    /// <summary>Not known: the throat has not been measured.</summary>
    Unknown,

    /// <summary>Between the cones of valve and seat, square on them: the first stage, or the curtain where the seat's width is not known.</summary>
    Curtain,

    /// <summary>Between the corners of valve and seat: the second stage.</summary>
    SeatCorner,

    /// <summary>The throat less the stems: the last stage, in which more lift helps no more.</summary>
    Throat,
}

/// <summary>A port at one lift. SI.</summary>
/// <param name="Lift">Lift.</param>
/// <param name="LiftOverDiameter">Lift over head diameter.</param>
/// <param name="Flow">Flow at the comparison pressure and standard air.</param>
/// <param name="Area">Effective area.</param>
/// <param name="OnCurtain">Coefficient on the curtain; NaN at no lift.</param>
/// <param name="OnThroat">Coefficient on the throat less the stems; null when the throat is not known.</param>
/// <param name="OnSeat">Coefficient on the seat's inner area; null when the seat's width is not known.</param>
/// <param name="ReverseFlow">Flow the other way; null when it was not measured.</param>
/// <param name="ReverseOnCurtain">Coefficient on the curtain the other way; null when it was not measured.</param>
/// <param name="Narrowest">Which area governs.</param>
public sealed record FlowRow(double Lift, double LiftOverDiameter, double Flow, double Area, double OnCurtain, double? OnThroat, double? OnSeat, double? ReverseFlow, double? ReverseOnCurtain, Narrowest Narrowest)
{
    /// <summary>The greatest of its coefficients on curtain and throat, either way.</summary>
    internal double Greatest => Math.Max(Math.Max(OnCurtain, OnThroat ?? 0), ReverseOnCurtain ?? 0);
}

/// <summary>One port, by its bench readings or its coefficients. SI.</summary>
/// <param name="Index">"inlet", "exhaust.2".</param>
/// <param name="Rows">By lift.</param>
/// <param name="FullLift">Greatest lift of the cam.</param>
/// <param name="FullArea">Effective area there.</param>
/// <param name="MeanArea">Mean effective area over the lift curve.</param>
/// <param name="HeadCoefficient">Mean flow coefficient on the head area.</param>
/// <param name="ThroatLift">Lift at which the throat becomes the narrowest place; null when the throat is not known.</param>
public sealed record FlowPort(string Index, IReadOnlyList<FlowRow> Rows, double FullLift, double FullArea, double MeanArea, double HeadCoefficient, double? ThroatLift)
{
    /// <summary>Degrees of crank between the points at which the area is taken for its mean.</summary>
    private const double Step = 1;

    /// <summary>The valves with their flow, as the engine model has them.</summary>
    internal ValveSpec Valves { get; private init; } = null!;

    /// <summary>"inlet", "inlet, cylinder 2".</summary>
    public string Words => Index.Split('.') is [var side, var cylinder, ..] ? $"{side}, cylinder {cylinder}" : Index;

    /// <summary>Whether it is an inlet port.</summary>
    public bool IsInlet => Index.StartsWith("inlet", StringComparison.Ordinal);

    /// <summary>Keys of the ports of a side: one, or one for each cylinder where the book tells cylinders apart.</summary>
    public static IReadOnlyList<string> Keys(View view, string side) =>
        view.Indices(Valve.Count.Subject).Where(i => i.StartsWith(side + ".", StringComparison.Ordinal) && i.Split('.').Length == 2).ToList() is { Count: > 0 }
            ? [.. Checks.Instances.Cylinders(view).Select(c => c.Length > 0 ? $"{side}.{c}" : side)]
            : [side];

    /// <summary>The port; null when something needed is not known, and then the view's trace says what.</summary>
    /// <param name="view">The values.</param>
    /// <param name="index">"inlet", "exhaust.2".</param>
    /// <param name="comparison">Test pressure to which flows are brought, Pa.</param>
    public static FlowPort? Of(View view, string index, double comparison)
    {
        if (ValveAssembly.Build(view, index) is not { } valves)
        {
            return null;
        }

        var area = new ValveArea(valves);
        var full = valves.Lift.Lifts.Max();
        if (!(area.Forward(full) > 0))
        {
            view.Unknown($"flow above zero at full lift ({Valve.BenchTable.At(index)})");
            return null;
        }

        var passage = Passage.Of(view, index, valves);
        var lifts = valves.Flow.LiftOverDiameter.Select(r => r * valves.HeadDiameter).ToList();
        var mean = Mean(view, valves, area);
        return new FlowPort(
            index,
            [.. lifts.Where(l => l > 0).Select(l => Row(valves, area, passage, l, comparison))],
            full,
            area.Forward(full),
            mean,
            view.Work(PortFlow.HeadCoefficient, mean, valves.Count, valves.HeadDiameter),
            passage.ThroatLift)
        {
            Valves = valves,
        };
    }

    /// <summary>Effective area at a lift, m².</summary>
    public double AreaAt(double lift) => new ValveArea(Valves).Forward(lift);

    /// <summary>Mean effective area that these ports would give over the lift curve of others, m².</summary>
    internal double MeanOver(FlowPort cam) => Mean(null, Valves with { Lift = cam.Valves.Lift }, new ValveArea(Valves));

    private static double Mean(View? view, ValveSpec valves, ValveArea area)
    {
        var (opens, closes) = (valves.Lift.Opens, valves.Lift.Closes);
        var steps = (int)Math.Ceiling((closes - opens) / Step);
        double[] angles = [.. Enumerable.Range(0, steps + 1).Select(i => opens + ((closes - opens) * i / steps))];
        double[] radians = [.. angles.Select(a => a * Math.PI / 180)];
        double[] areas = [.. angles.Select(a => area.Forward(valves.Lift.At(a)))];
        return view is null ? PortFlow.MeanArea(radians, areas) : view.Work(PortFlow.MeanArea, radians, areas);
    }

    private static FlowRow Row(ValveSpec valves, ValveArea area, Passage passage, double lift, double comparison)
    {
        var (forward, back) = (area.Forward(lift), area.Reverse(lift));
        double Curtain(double effective) => FlowBench.CurtainCoefficient(effective, valves.Count, valves.HeadDiameter, lift);
        var measured = valves.Flow.Reverse is not null;
        return new FlowRow(
            lift,
            lift / valves.HeadDiameter,
            FlowBench.Flow(forward, comparison),
            forward,
            Curtain(forward),
            passage.Throat is { } throat ? PortFlow.Coefficient(forward, throat) : null,
            passage.Seat is { } seat ? PortFlow.Coefficient(forward, seat) : null,
            measured ? FlowBench.Flow(back, comparison) : null,
            measured ? Curtain(back) : null,
            passage.At(lift));
    }
}
