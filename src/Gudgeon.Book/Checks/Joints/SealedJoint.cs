using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Checks.Joints;

/// <summary>The seal of a joint: what it gets of the clamp, and what it wants.</summary>
internal static class SealedJoint
{
    /// <summary>Greatest clamp around one cylinder while it is tightened, N.</summary>
    public static double GreatestClamp(View view, string index) => WorkingJoint.BoltsPerCylinder(view, index) * TightenedJoint.Greatest(view, index);

    /// <summary>Least clamp around one cylinder when tightened, cold, faces settled, N.</summary>
    public static double LeastClamp(View view, string index) => WorkingJoint.BoltsPerCylinder(view, index) * TightenedJoint.LeastSettled(view, index);

    /// <summary>A clamp per length of the seal's circle, N/m.</summary>
    public static double LineLoad(View view, string index, double clamp) => view.Work(Gasket.LineLoad, clamp, view.Amount(Joint.SealDiameter, index));

    /// <summary>A clamp per area of the ring, whose width lies on both sides of the seal's circle, Pa.</summary>
    public static double RingStress(View view, string index, double clamp)
    {
        var (seal, width) = (view.Amount(Joint.SealDiameter, index), view.Amount(Joint.RingWidth, index));
        return view.Work(HeadJoint.RingStress, clamp, seal - width, seal + width);
    }

    /// <summary>Whether the maker or the table of gaskets tells what the seal wants.</summary>
    public static bool ByTable(View view, string index) => !view.Knows(Joint.LineLoadWanted, index) && view.Knows(Joint.Gasket, index);

    /// <summary>Line load that must be left at peak pressure, N/m: by the maker, else by the table of gaskets; else the maker's word is wanted.</summary>
    public static double LineLoadWanted(View view, string index) => ByTable(view, index)
        ? LineLoad(view, index, ByTable(view, index, WorkingJoint.Peak(view).Pressure).Operating - WorkingJoint.Head(view, index).GasLoad)
        : view.Amount(Joint.LineLoadWanted, index);

    /// <summary>Line load that seats the gasket when it is tightened, N/m, by the table of gaskets.</summary>
    public static double SeatingWanted(View view, string index) => LineLoad(view, index, ByTable(view, index, 0).Seating);

    /// <summary>Squeeze of the O-ring, or what the wire stands out of its groove.</summary>
    public static ORingSqueeze Squeeze(View view, string index) => view.Work(Gasket.Squeeze, view.Amount(Joint.Cord, index), view.Amount(Joint.GrooveDepth, index));

    /// <summary>Share of its groove that the O-ring fills.</summary>
    public static double Fill(View view, string index) => view.Work(Gasket.Fill, view.Amount(Joint.Cord, index), view.Amount(Joint.GrooveDepth, index), view.Amount(Joint.GrooveWidth, index));

    /// <summary>Bolt loads around one cylinder by the table; a ring narrower than half an inch seats on half of its width.</summary>
    private static GasketLoads ByTable(View view, string index, double pressure)
    {
        if (view.Choice<GasketType>(Joint.Gasket, index) is not { } kind)
        {
            return Unknown<GasketLoads>.Value;
        }

        var factors = view.Work(Gasket.Factors, kind);
        return view.Work(Gasket.BoltLoads, view.Amount(Joint.SealDiameter, index), view.Amount(Joint.RingWidth, index) / 2, pressure, factors.Factor, factors.SeatingStress);
    }
}
