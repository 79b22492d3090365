using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Book.Head;

/// <summary>What the motion of a valve comes to, in words and numbers.</summary>
internal static class MotionFacts
{
    private const string AtLimit = "at the rev limit";

    public static IEnumerable<Fact> Of(View view, string index, TrainSweep sweep, TrainPoint at, RigidLiftOff rigid, CamMotion motion, double limit)
    {
        yield return Speed("comes apart at", sweep.LiftOff, limit);
        yield return Speed("bounces at", sweep.Bounce, limit);
        yield return new Fact("a rigid train would come apart at", 2 * rigid.Speed, Dimension.RotationalSpeed, "rpm") { Remark = Margin(2 * rigid.Speed, limit) };
        if (at.Motion is not { } settled)
        {
            yield return new Fact("motion at the rev limit", null, Dimension.Number, "") { Remark = at.WhyNot ?? "" };
            yield break;
        }

        yield return Length("greatest gap in the train", settled.Lost?.Gap ?? 0, AtLimit);
        yield return new Fact("speed at which the valve meets its seat", settled.SeatingVelocity, Dimension.Speed, "m/s") { Remark = AtLimit };
        yield return Length("leaves its seat again by", settled.BounceHeight, AtLimit);
        yield return Length("thrown above its lift curve around overlap TDC", Thrown(settled, motion), AtLimit);
        yield return new Fact("greatest force of the cam, at the valve", settled.GreatestCamForce, Dimension.Force, "N") { Remark = $"{AtLimit}, {Figures.Number(settled.GreatestCamForceAngle * 180 / Math.PI, 3)} cam degrees from the nose" };
        if (NoseContact.Of(view, index, settled, motion) is { } contact)
        {
            yield return new Fact("contact pressure under it", contact, Dimension.Pressure, "MPa") { Remark = "line contact after Hertz" };
        }

        foreach (var (spring, i) in settled.Springs.Select((s, i) => (s, i)))
        {
            var name = settled.Springs.Count == 1 ? "spring" : i == 0 ? "outer spring" : "inner spring";
            yield return Length($"{name}: coils off their place by", spring.Surge, AtLimit);
            yield return new Fact($"{name}: load on the valve, least", spring.LeastForce, Dimension.Force, "N") { Remark = AtLimit };
            if (spring.LeastRoom <= 0)
            {
                yield return new Fact($"{name}: room between coils", 0, Dimension.Length, "mm") { Remark = "coils clash " + AtLimit };
            }
        }
    }

    /// <summary>How far the valve runs above its lift curve within a quarter turn of overlap TDC, m.</summary>
    public static double Thrown(TrainMotion motion, CamMotion cam)
    {
        if (motion.Trace is not { } trace || double.IsNaN(cam.Centre))
        {
            return 0;
        }

        var most = 0.0;
        for (var i = 0; i < trace.Angles.Length; i++)
        {
            var crank = Math.IEEERemainder(cam.Centre + (2 * trace.Angles[i]) - CamMotion.OverlapTdc, 4 * Math.PI);
            most = Math.Abs(crank) < Math.PI / 2 ? Math.Max(most, trace.Lift[i] - trace.CamLift[i]) : most;
        }

        return most;
    }

    private static Fact Length(string name, double metres, string remark) => new(name, metres, Dimension.Length, "mm") { Remark = remark };

    private static Fact Speed(string name, TrainLimit limit, double revLimit) => limit.Kind switch
    {
        LimitKind.Found => new Fact(name, 2 * limit.Speed, Dimension.RotationalSpeed, "rpm") { Remark = Margin(2 * limit.Speed, revLimit) },
        LimitKind.Unsettled => new Fact(name, 2 * limit.Speed, Dimension.RotationalSpeed, "rpm") { Remark = "up to there all is well; just above it the motion no longer repeats" },
        LimitKind.Passed => new Fact(name, null, Dimension.RotationalSpeed, "rpm") { Remark = $"already at {Engine.RevLimit.Print(2 * limit.Speed)}, the lowest speed looked at" },
        _ => new Fact(name, null, Dimension.RotationalSpeed, "rpm") { Remark = $"not up to {Engine.RevLimit.Print(2 * limit.Speed)}, the highest speed looked at" },
    };

    private static string Margin(double speed, double revLimit) => double.IsNaN(revLimit) || !double.IsFinite(speed) ? ""
        : FormattableString.Invariant($"{Math.Abs((speed / revLimit) - 1):P0} {(speed < revLimit ? "below" : "above")} the rev limit");
}
