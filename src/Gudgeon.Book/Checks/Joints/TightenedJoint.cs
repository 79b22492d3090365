using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Checks.Joints;

/// <summary>A bolted joint as tightened: the preload that the torque gives, and how far it may scatter.</summary>
internal static class TightenedJoint
{
    /// <summary>Preload, N: from the stretch where it was read, else from the torque.</summary>
    public static double Preload(View view, string index) => view.AmountIf(Joint.Stretch, index) is { } stretch
        ? view.Work(JointDiagram.FromStretch, stretch, Resilience(view, index).Bolt)
        : FromTorque(view, index);

    /// <summary>Preload that the torque gives with the friction of the book, N.</summary>
    public static double FromTorque(View view, string index) => view.Work(
        Tightening.Preload,
        view.Amount(Joint.Torque, index),
        view.Amount(Joint.Thread, index),
        view.Amount(Joint.Pitch, index),
        view.Amount(Joint.ThreadFriction, index),
        view.Amount(Joint.HeadFriction, index),
        HeadDiameter(view, index));

    /// <summary>Share by which the preload of one bolt may lie above or below: none where the stretch was read, else from the greatest tightening factor of the method.</summary>
    public static double Scatter(View view, string index) => view.Knows(Joint.Stretch, index) ? 0 : view.Choice<TighteningMethod>(Joint.Method, index) is { } method
        ? view.Work(TighteningScatter.Scatter, view.Work(TighteningScatter.Guide, method).Greatest)
        : double.NaN;

    /// <summary>Effective diameter of the friction under the head, m.</summary>
    public static double HeadDiameter(View view, string index) => view.Work(
        Tightening.HeadDiameter, view.Amount(Joint.BearingDiameter, index), view.Amount(Joint.HoleDiameter, index));

    /// <summary>Resilience of the bolt and of the parts that it clamps, m/N.</summary>
    public static (double Bolt, double Parts) Resilience(View view, string index)
    {
        var (thread, modulus, grip) = (view.Amount(Joint.Thread, index), view.Amount(Joint.Modulus, index), view.Amount(Joint.Grip, index));
        var bolt = view.Work(BoltResilience.OfBolt, thread, view.Amount(Joint.Pitch, index), grip, view.AmountOr(Joint.ShankDiameter, thread, index), 0.0, modulus, view.Amount(Joint.ClampedModulus, index), BoltHead.Hexagon, MatingThread.TappedHole);
        var parts = view.Work(
            ClampedParts.Resilience,
            view.Amount(Joint.BearingDiameter, index),
            view.Amount(Joint.HoleDiameter, index),
            view.Amount(Joint.OuterDiameter, index),
            grip,
            view.Amount(Joint.ClampedModulus, index),
            JointForm.Tapped);
        return (bolt.Total, parts.Resilience);
    }

    /// <summary>Preload lost as rough faces settle, N.</summary>
    public static double EmbeddingLoss(View view, string index)
    {
        var (bolt, parts) = Resilience(view, index);
        return view.Work(JointDiagram.EmbeddingLoss, view.Amount(Joint.Embedding, index), bolt, parts);
    }
}
