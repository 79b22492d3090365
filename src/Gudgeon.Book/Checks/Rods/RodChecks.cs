using Gudgeon.Book.Checks.Motion;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Book.Checks.Rods;

/// <summary>A check of each connecting rod.</summary>
public abstract class RodCheck : Check
{
    public override string Family => "rods";

    public override string Caution => "A rod that lets go comes through the case: crack-test rods and bolts before they are built in, and stand clear of the engine's sides on the dyno.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);
}

/// <summary>Tension in the least section of the shank at overlap TDC at the rev limit.</summary>
public sealed class RodTensionCheck : RodCheck
{
    public override string Id => "rod-tension";

    public override string Title => "Rod in tension at overlap, rev limit";

    public override string Source => "pull of the reciprocating mass at TDC without gas, exact slider-crank; 1.5 against yield: common practice, no source";

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "tension in the shank",
        new RodDuty(view, index).Pull / new RodShank(view, index).Area,
        view.Amount(Rod.YieldStrength, index) / view.Limit("rod-tension.factor", Dimension.Number, "", 1.5),
        Dimension.Pressure,
        "MPa",
        "rod.yieldStrength over 1.5");
}

/// <summary>Greatest push of the run against the load at which the rod buckles in the weaker plane.</summary>
public sealed class RodBucklingCheck : RodCheck
{
    public override string Id => "rod-buckling";

    public override string Title => "Rod as a strut at its greatest push";

    public override string Source => "Euler and Johnson (Shigley), hinged in the plane that it swings in, held at both ends across it; 2 against buckling: common practice, no source";

    public override Judgement Examine(View view, string index)
    {
        var (push, speed) = new RodDuty(view, index).Push;
        var buckles = new RodShank(view, index).Buckles() / view.Limit("rod-buckling.factor", Dimension.Number, "", 2);
        return Judgement.AtMost("push in the rod", push, buckles, Dimension.Force, "kN", "buckling load over 2") with { Remark = PeakPressureCheck.At(speed) };
    }
}

/// <summary>Fatigue of the shank between push, pull and whip.</summary>
public sealed class RodFatigueCheck : RodCheck
{
    public override string Id => "rod-fatigue";

    public override string Title => "Rod shank against fatigue";

    public override string Source => "push, pull and whip over the cycle at the hardest speeds and the pull with the throttle shut, Goodman's line with rod.fatigueStrength; 1.3: common practice, no source";

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "safety against fatigue",
        Swing(view, index).Safety,
        view.Limit("rod-fatigue.min", Dimension.Number, "", 1.3),
        Dimension.Number,
        "",
        "common practice, no source");

    /// <summary>The swing of the stress in the shank and its safety; NaN where it is not known.</summary>
    internal static SwingingStress Swing(View view, string index)
    {
        var (greatest, least) = new RodDuty(view, index).Stress(new RodShank(view, index));
        return view.Work(CrankFatigue.Goodman, greatest, least, view.Amount(Rod.FatigueStrength, index), view.Amount(Rod.TensileStrength, index));
    }
}

/// <summary>Side clearance of the big end on its pin.</summary>
public sealed class RodSideClearanceCheck : RodCheck
{
    public override string Id => "rod-side-clearance";

    public override string Title => "Side clearance of the rod";

    public override string Source => "as read, else pin length less width of the big end; limits by the maker of the engine";

    public override string Caution => "";

    public override Judgement Examine(View view, string index) => Judgement.Between(
        "side clearance",
        Clearance(view, index),
        view.Amount(Rod.SideClearanceMin, index),
        view.Amount(Rod.SideClearanceMax, index),
        Dimension.Length,
        "mm",
        "rod.sideClearanceMin and sideClearanceMax");

    /// <summary>The clearance, m. Rods that share a pin share it.</summary>
    internal static double Clearance(View view, string index) => view.AmountIf(Rod.SideClearance, index) ?? (view.Amount(Crank.PinLength) - Shared(view, index).Sum(c => view.Amount(Rod.BigEndWidth, c)));

    private static IEnumerable<string> Shared(View view, string index)
    {
        var all = Checks.Instances.Cylinders(view).Select((c, i) => (Cylinder: c, Pin: view.CountOr(Cylinder.Pin, i + 1, c))).ToList();
        return all.Where(c => c.Pin == all.Find(own => own.Cylinder == index).Pin).Select(c => c.Cylinder);
    }
}
