using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Joints;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Checks.Joints;

/// <summary>A bolted joint as tightened: the preload that it has, how far it may scatter, and what it loses.</summary>
internal static class TightenedJoint
{
    /// <summary>Preload, N: from the stretch where it was read, else from snug and an angle where it is turned by one, else from the torque.</summary>
    public static double Preload(View view, string index)
    {
        if (view.AmountIf(Joint.Stretch, index) is { } stretch)
        {
            return view.Work(JointDiagram.FromStretch, stretch, GaugedResilience(view, index));
        }

        return Turned(view, index) ? ByAngle(view, index).Preload : FromTorque(view, index);
    }

    /// <summary>Preload that the torque of the book gives, N.</summary>
    public static double FromTorque(View view, string index) => FromTorque(view, view.Amount(Joint.Torque, index), index);

    /// <summary>Preload that a torque gives with the friction of the book, N.</summary>
    public static double FromTorque(View view, double torque, string index) => view.Work(
        Tightening.Preload,
        torque,
        view.Amount(Joint.Thread, index),
        view.Amount(Joint.Pitch, index),
        ThreadFriction(view, index),
        HeadFriction(view, index),
        HeadDiameter(view, index));

    /// <summary>A bolt turned by an angle from snug.</summary>
    public static AngleTightening ByAngle(View view, string index)
    {
        var (bolt, parts) = Resilience(view, index);
        var yield = AtYield(view, index, 1);
        return view.Work(StretchBolt.ByAngle, FromTorque(view, view.Amount(Joint.SnugTorque, index), index), view.Amount(Joint.Angle, index), view.Amount(Joint.Pitch, index), bolt, parts, yield.Preload);
    }

    /// <summary>Preload and torque at a share of the bolt's yield strength, torsion counted.</summary>
    public static YieldPreload AtYield(View view, string index, double share) => AtYield(view, index, share, ThreadFriction(view, index), HeadFriction(view, index));

    /// <summary>The same with other friction.</summary>
    public static YieldPreload AtYield(View view, string index, double share, double threadFriction, double headFriction) => view.Work(
        AssemblyPreload.FromYield,
        view.Amount(Joint.YieldStrength, index),
        view.Amount(Joint.Thread, index),
        view.Amount(Joint.Pitch, index),
        threadFriction,
        headFriction,
        HeadDiameter(view, index),
        share,
        Section(view, index));

    /// <summary>Whether the bolt is turned by an angle, so that it yields before it is overdone.</summary>
    public static bool Turned(View view, string index) => !view.Knows(Joint.Stretch, index) && view.Knows(Joint.Angle, index) && view.Choice<TighteningMethod>(Joint.Method, index) is TighteningMethod.YieldOrAngle;

    /// <summary>The greatest preload that the tightening may give, N: no more than the yield of a bolt that is turned by an angle.</summary>
    public static double Greatest(View view, string index)
    {
        var greatest = Preload(view, index) * (1 + Scatter(view, index));
        return Turned(view, index) ? Math.Min(greatest, AtYield(view, index, 1).Preload) : greatest;
    }

    /// <summary>The least preload after tightening, N.</summary>
    public static double Least(View view, string index) => Preload(view, index) * (1 - Scatter(view, index));

    /// <summary>The least preload once the faces have settled, N.</summary>
    public static double LeastSettled(View view, string index) => Least(view, index) - EmbeddingLoss(view, index);

    /// <summary>The least preload that is left at work without a working force, N: faces settled, and what heat takes.</summary>
    public static double LeastKept(View view, string index) => LeastSettled(view, index) - Math.Max(0, -ThermalChange(view, index));

    /// <summary>
    /// Share by which the preload of one bolt may lie above or below: the ± of the stretch where it was read with one, else
    /// from the greatest tightening factor of the method, which is the measured stretch where it was read without.
    /// </summary>
    public static double Scatter(View view, string index)
    {
        var read = view.AmountIf(Joint.Stretch, index);
        if (read is { } stretch && view.Spread(Joint.Stretch, index) is var band and > 0)
        {
            return band / stretch;
        }

        return (read is null ? view.Choice<TighteningMethod>(Joint.Method, index) : TighteningMethod.StretchMeasured) is { } method
            ? view.Work(TighteningScatter.Scatter, view.Work(TighteningScatter.Guide, method).Greatest)
            : double.NaN;
    }

    /// <summary>Friction in the thread: as written, else by the lubricant.</summary>
    public static double ThreadFriction(View view, string index) => Friction(view, Joint.ThreadFriction, index);

    /// <summary>Friction under the head: as written, else by the lubricant.</summary>
    public static double HeadFriction(View view, string index) => Friction(view, Joint.HeadFriction, index);

    /// <summary>Effective diameter of the friction under the head, m.</summary>
    public static double HeadDiameter(View view, string index) => view.Work(
        Tightening.HeadDiameter, view.Amount(Joint.BearingDiameter, index), view.Amount(Joint.HoleDiameter, index));

    /// <summary>Resilience of the bolt and of the parts that it clamps, m/N.</summary>
    public static (double Bolt, double Parts) Resilience(View view, string index) => (Bolt(view, index).Total, Parts(view, index));

    /// <summary>Resilience of the bolt that a gauge over both its ends sees, m/N: without the thread that it is screwed into.</summary>
    public static double GaugedResilience(View view, string index) => Bolt(view, index).Gauged;

    /// <summary>Preload lost as rough faces settle, N.</summary>
    public static double EmbeddingLoss(View view, string index)
    {
        var (bolt, parts) = Resilience(view, index);
        return view.Work(JointDiagram.EmbeddingLoss, view.Amount(Joint.Embedding, index), bolt, parts);
    }

    /// <summary>Change of preload from assembly to work, N; nought when no working temperature is known.</summary>
    public static double ThermalChange(View view, string index)
    {
        var layers = view.TableIf(Joint.Layers, index);
        var apart = layers?["temperature"] is { Length: > 0 } read ? read : null;
        var parts = view.AmountIf(Joint.PartTemperature, index);
        if (parts is null && apart is null)
        {
            return 0;
        }

        var cold = view.AmountOr(Joint.AssemblyTemperature, ThermalLength.Reference, index);
        var boltRise = (view.AmountIf(Joint.BoltTemperature, index) ?? parts ?? apart!.Average()) - cold;
        var expansion = view.Amount(Joint.Expansion, index);
        var (bolt, resilience) = Resilience(view, index);
        if (layers is null)
        {
            return view.Work(JointDiagram.ThermalChange, view.Amount(Joint.Grip, index), view.Amount(Joint.ClampedExpansion, index), expansion, parts!.Value - cold, boltRise, bolt, resilience);
        }

        var thick = layers["thickness"];
        var each = layers["expansion"] is { Length: > 0 } own ? own : Array.ConvertAll(thick, _ => view.Amount(Joint.ClampedExpansion, index));
        var rises = apart is null ? Array.ConvertAll(thick, _ => parts!.Value - cold) : Array.ConvertAll(apart, t => t - cold);
        return view.Work(LayeredParts.ThermalChange, thick, each, rises, expansion, boltRise, bolt, resilience);
    }

    /// <summary>Clamped length, m: that of the layers where they are told apart.</summary>
    public static double Grip(View view, string index) => view.TableIf(Joint.Layers, index) is { } layers ? layers["thickness"].Sum() : view.Amount(Joint.Grip, index);

    /// <summary>Diameter of the section that is stressed most, m.</summary>
    public static double Section(View view, string index)
    {
        var thread = view.Amount(Joint.Thread, index);
        return view.Work(BoltService.WeakestSection, thread, view.Amount(Joint.Pitch, index), view.AmountOr(Joint.ShankDiameter, thread, index));
    }

    private static double Friction(View view, Field field, string index) => view.AmountIf(field, index)
        ?? (view.Knows(Joint.Lubricant, index) && view.Choice<Lubricant>(Joint.Lubricant, index) is { } lubricant ? view.Work(BoltFriction.Guide, lubricant).Usual : view.Amount(field, index));

    private static (double Total, double Gauged) Bolt(View view, string index)
    {
        var (thread, grip) = (view.Amount(Joint.Thread, index), Grip(view, index));
        var shank = Math.Min(view.AmountOr(Joint.ShankLength, grip, index), grip);
        var pitch = view.Amount(Joint.Pitch, index);
        var modulus = view.Amount(Joint.Modulus, index);

        // A stud has a nut in place of its head: its thread there, and the nut.
        var nut = Head(view, index) == BoltHead.None ? view.Work(BoltResilience.OfBolt, thread, pitch, 0.0, thread, 0.0, modulus, modulus, BoltHead.None, MatingThread.Nut) : default;
        var bolt = view.Work(
            BoltResilience.OfBolt,
            thread,
            pitch,
            shank,
            view.AmountOr(Joint.ShankDiameter, thread, index),
            grip - shank,
            modulus,
            MatingModulus(view, index),
            Head(view, index),
            Mating(view, index));
        return (nut.Total + bolt.Total, nut.Gauged + bolt.Gauged);
    }

    /// <summary>Head of the bolt; a hexagon when it is not known.</summary>
    public static BoltHead Head(View view, string index) => view.ChoiceOr(Joint.Head, BoltHead.Hexagon, index);

    /// <summary>What it is screwed into; a tapped hole when it is not known.</summary>
    public static MatingThread Mating(View view, string index) => view.ChoiceOr(Joint.Mating, MatingThread.TappedHole, index);

    /// <summary>A nut is of the bolt's own metal, a tapped hole of the part's.</summary>
    private static double MatingModulus(View view, string index) => Mating(view, index) == MatingThread.Nut
        ? view.Amount(Joint.Modulus, index)
        : view.TableIf(Joint.Layers, index) is { } layers ? view.AmountOr(Joint.ClampedModulus, layers["modulus"][^1], index) : view.Amount(Joint.ClampedModulus, index);

    private static double Parts(View view, string index)
    {
        var (bearing, hole) = (view.Amount(Joint.BearingDiameter, index), view.Amount(Joint.HoleDiameter, index));
        var form = Mating(view, index) == MatingThread.Nut ? JointForm.Through : JointForm.Tapped;
        return view.TableIf(Joint.Layers, index) is { } layers
            ? view.Work(LayeredParts.Resilience, bearing, hole, layers["thickness"], layers["modulus"], layers["diameter"], form)
            : view.Work(ClampedParts.Resilience, bearing, hole, view.Amount(Joint.OuterDiameter, index), view.Amount(Joint.Grip, index), view.Amount(Joint.ClampedModulus, index), form).Resilience;
    }
}
