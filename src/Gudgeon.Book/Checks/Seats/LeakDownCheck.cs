using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;

namespace Gudgeon.Book.Checks.Seats;

/// <summary>Leak test of a cylinder.</summary>
public sealed class LeakDownCheck : SeatCheck
{
    public override string Id => "leak-down";

    public override string Title => "Leak test";

    public override string Source => "FAA AC 43.13-1B (Chg 1), chapter 8, differential pressure test; over 10 % find it, under 5 % is good in a race engine: common practice, no source (25 % is the usual aircraft limit)";

    public override string Caution => "Lock the crank before the air is opened: it pushes the piston down with several hundred newtons, and a spanner left on the crank flies.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view).Where(c => view.Knows(LeakDown.Leakage, c) || view.Knows(LeakDown.Held, c));

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "leakage", Leakage(view, index), view.Limit("leak-down.max", Dimension.Number, "%", 0.10), Dimension.Number, "%", "common practice, no source") with { Remark = Meaning(view, index) };

    /// <summary>Share lost: by both pressures where they are known, else as the tester reads.</summary>
    internal static double Leakage(View view, string index) => view.Knows(LeakDown.Held, index)
        ? view.Work(LeakTest.Leakage, view.Amount(LeakDown.Supply, index), view.Amount(LeakDown.Held, index))
        : view.Amount(LeakDown.Leakage, index);

    /// <summary>What the place means where the air is heard; empty when nobody wrote it down.</summary>
    internal static string Meaning(View view, string index) => !view.Knows(LeakDown.From, index) ? "" : view.Choice<LeakPath>(LeakDown.From, index) switch
    {
        LeakPath.InletValve => "heard at the throttle: an inlet valve does not seal; look at its seat, its lash and for a bent stem",
        LeakPath.ExhaustValve => "heard at the exhaust: an exhaust valve does not seal; look at its seat, its lash and for a burnt edge",
        LeakPath.Rings => "heard at the oil filler: past the rings, as all engines do a little; test again warm and oiled before the barrel comes off",
        LeakPath.Gasket => "heard at the gasket, the coolant or the next cylinder: gasket, head face or a crack",
        LeakPath.Several => "heard at more than one place: mend the loudest and test again",
        _ => "heard nowhere: it leaks evenly past everything",
    };
}
