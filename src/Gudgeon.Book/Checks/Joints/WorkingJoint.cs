using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Checks.Joints;

/// <summary>A bolted joint at work: what pulls at one bolt, and what bolt and parts get of it.</summary>
internal static class WorkingJoint
{
    /// <summary>Bolts that share the load of one cylinder.</summary>
    public static double BoltsPerCylinder(View view, string index) => (double)view.Count(Joint.BoltCount, index) / view.Count(Joint.Cylinders, index);

    /// <summary>Whether it sees the gas of cylinders.</summary>
    public static bool Holds(View view, string index) => view.CountOr(Joint.Cylinders, 0, index) > 0;

    /// <summary>Peak cylinder pressure above ambient, Pa, and the speed at which it stands, rad/s.</summary>
    public static (double Pressure, double Speed) Peak(View view) => view.Duty()?.PeakGauge ?? (double.NaN, double.NaN);

    /// <summary>How the greatest force divides between bolt and parts.</summary>
    public static LoadShare Share(View view, string index, double force)
    {
        var (bolt, parts) = TightenedJoint.Resilience(view, index);
        return view.Work(JointDiagram.LoadFactor, bolt, parts, force, view.AmountOr(Joint.LoadIntroduction, 0.5, index));
    }

    /// <summary>Greatest bolt force in service, N: of the bolt tightened most, heat counted where it adds, embedding left out on the safe side.</summary>
    public static double GreatestForce(View view, string index)
    {
        var force = WorkingForce.On(view, index).Greatest;
        var most = TightenedJoint.Greatest(view, index) + Math.Max(0, TightenedJoint.ThermalChange(view, index));
        return view.Work(BoltService.ForceAtWork, most, Share(view, index, force).LoadFactor, force);
    }

    /// <summary>The head joint at peak pressure with bolts tightened least, faces settled, heat counted where it takes.</summary>
    public static HeadClamp Head(View view, string index)
    {
        var least = Math.Max(0, TightenedJoint.LeastKept(view, index));
        var factor = Share(view, index, WorkingForce.On(view, index).Greatest).LoadFactor;
        return view.Work(HeadJoint.Clamp, view.Amount(Joint.SealDiameter, index), Peak(view).Pressure, BoltsPerCylinder(view, index), least, factor);
    }

    /// <summary>Combined stress of the bolt in service.</summary>
    public static ServiceStress Stress(View view, string index) => view.Work(
        BoltService.Stress,
        GreatestForce(view, index),
        TightenedJoint.Greatest(view, index),
        TightenedJoint.Section(view, index),
        view.Amount(Joint.Thread, index),
        view.Amount(Joint.Pitch, index),
        TightenedJoint.ThreadFriction(view, index),
        0.5);

    /// <summary>Clamp left at the bolt that was tightened least, N: heat counts where it takes.</summary>
    public static double ClampLeft(View view, string index)
    {
        var force = WorkingForce.On(view, index).Greatest;
        return view.Work(BoltService.ClampLeft, TightenedJoint.Least(view, index), TightenedJoint.EmbeddingLoss(view, index), Share(view, index, force).LoadFactor, force, Math.Max(0, -TightenedJoint.ThermalChange(view, index)));
    }

    /// <summary>Stress area of the thread, m².</summary>
    public static double StressArea(View view, string index) => view.Work(MetricThread.Sizes, view.Amount(Joint.Thread, index), view.Amount(Joint.Pitch, index)).StressArea;

    /// <summary>Swing of the stress in the bolt that was tightened least, Pa: where the joint opens the bolt carries all of the force, and swings most.</summary>
    public static double Amplitude(View view, string index)
    {
        var force = WorkingForce.On(view, index);
        var factor = Share(view, index, force.Greatest).LoadFactor;
        var left = Math.Max(0, TightenedJoint.LeastKept(view, index));
        double At(double axial) => view.Work(BoltService.ForceAtWork, left, factor, axial);
        return view.Work(BoltFatigue.Amplitude, At(force.Greatest), At(force.Least), StressArea(view, index));
    }

    /// <summary>Stress amplitude that the bolt bears for good, Pa: as written, else by the standard for steel.</summary>
    public static double FatigueStrength(View view, string index) => view.AmountIf(Joint.FatigueStrength, index)
        ?? (view.Amount(Joint.Modulus, index) > 180e9 ? view.Work(BoltFatigue.RolledBefore, view.Amount(Joint.Thread, index)) : view.Amount(Joint.FatigueStrength, index));

    /// <summary>Pressure under the head at the greatest force, Pa: of a bolt that is turned by an angle also what its yield may come to.</summary>
    public static double HeadPressure(View view, string index)
    {
        var force = GreatestForce(view, index);
        if (TightenedJoint.Turned(view, index))
        {
            force = Math.Max(force, view.Work(Calc.Joints.HeadPressure.ForceAtYield, TightenedJoint.AtYield(view, index, 0.9).Preload));
        }

        return view.Work(Calc.Joints.HeadPressure.Under, force, view.Amount(Joint.BearingDiameter, index), view.Amount(Joint.HoleDiameter, index));
    }

    /// <summary>Shear areas of the bolt's thread and of the thread in the part, which an insert makes wider.</summary>
    public static (double Internal, double External) ShearAreas(View view, string index)
    {
        var (thread, pitch) = (view.Amount(Joint.Thread, index), view.Amount(Joint.Pitch, index));
        var bolt = view.Work(ThreadStripping.ShearAreas, thread, pitch);
        var wide = view.WordOr(Joint.Insert, Joint.NoInsert, index) switch
        {
            Joint.WireInsert => view.Work(ThreadStripping.WireInsertThread, thread, pitch),
            Joint.BushInsert => view.Amount(Joint.InsertDiameter, index),
            _ => (double?)null,
        };
        return (wide is { } outer ? view.Work(ThreadStripping.ShearAreas, outer, pitch).Internal : bolt.Internal, bolt.External);
    }

    /// <summary>Shear strength of the tapped part, Pa.</summary>
    public static double TappedShear(View view, string index) => view.AmountIf(Joint.TappedShear, index) ?? (0.6 * view.Amount(Joint.TappedStrength, index));

    /// <summary>Engagement at which the bolt breaks before a thread strips, m: also one that is stronger than it must be.</summary>
    public static double EngagementWanted(View view, string index)
    {
        var (inside, outside) = ShearAreas(view, index);
        var strongest = view.Work(ThreadStripping.GreatestStrength, view.Amount(Joint.TensileStrength, index));
        return view.Work(ThreadStripping.Wanted, strongest, StressArea(view, index), inside, outside, TappedShear(view, index));
    }

    /// <summary>Force that strips the weaker thread, N.</summary>
    public static double StrippingForce(View view, string index)
    {
        var (inside, outside) = ShearAreas(view, index);
        var engaged = view.Amount(Joint.Engagement, index);
        return Math.Min(
            view.Work(ThreadStripping.StrippingForce, inside, engaged, TappedShear(view, index)),
            view.Work(ThreadStripping.StrippingForce, outside, engaged, 0.6 * view.Amount(Joint.TensileStrength, index)));
    }
}
