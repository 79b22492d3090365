using Gudgeon.Book.Fields;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>What the checks of the marched valve train share.</summary>
public abstract class MotionCheck : SpringCheck
{
    /// <summary>Where the springs and a lift curve or lobe are known, for without them there is nothing to march.</summary>
    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.Try(v => TrainAssembly.Build(v, i)) is not null);

    /// <summary>A way, m, of less than a micrometre is none.</summary>
    private protected static double Seen(double way) => way < 1e-6 ? 0 : way;

    /// <summary>The motion at so many times the rev limit; null, and why noted, when there is none.</summary>
    private protected static TrainMotion? At(View view, string index, double factor, out CamMotion? motion)
    {
        var speed = factor * view.Amount(Engine.RevLimit);
        motion = null;
        if (TrainAssembly.Build(view, index) is not var (spec, cam) || double.IsNaN(speed))
        {
            return null;
        }

        motion = cam;
        var point = view.Motion(spec, speed / 2);
        if (point.Motion is null)
        {
            view.Unknown($"a motion of {index} that repeats at {Engine.RevLimit.Print(speed)} (it does not: the train bounces or flutters)");
        }

        return point.Motion;
    }
}

/// <summary>Whether cam, follower and valve stay together at the rev limit and a little beyond.</summary>
public sealed class LiftOffCheck : MotionCheck
{
    public override string Id => "valve-lift-off";

    public override string Title => "Valve train stays on its cam";

    public override string Source => "lumped masses with surging springs and the gas of the engine run, marched until the motion repeats, at 1.05 times the rev limit; a gap of 0.05 mm: common practice, no source";

    public override Judgement Examine(View view, string index)
    {
        var motion = At(view, index, view.Limit("valve-lift-off.factor", Dimension.Number, "", 1.05), out _);
        var gap = motion is null ? double.NaN : Seen(motion.Lost?.Gap ?? 0);
        return Judgement.AtMost("greatest gap", gap, view.Limit("valve-lift-off.max", Dimension.Length, "mm", 0.05e-3), Dimension.Length, "mm", "common practice, no source") with { Remark = motion?.Lost is { } lost ? FormattableString.Invariant($"from {lost.From * 180 / Math.PI:F0} to {lost.To * 180 / Math.PI:F0} cam degrees from the nose") : "" };
    }
}

/// <summary>How far the valve leaves its seat again at the rev limit.</summary>
public sealed class BounceCheck : MotionCheck
{
    public override string Id => "valve-bounce";

    public override string Title => "Valve bounce at the rev limit";

    public override string Source => "lumped masses with surging springs and the gas of the engine run, marched until the motion repeats; 0.2 mm: common practice, no source";

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "height of the bounce", At(view, index, 1, out _) is { } motion ? Seen(motion.BounceHeight) : double.NaN, view.Limit("valve-bounce.max", Dimension.Length, "mm", 0.2e-3), Dimension.Length, "mm", "common practice, no source");
}

/// <summary>Contact pressure of cam and follower where the cam pushes hardest.</summary>
public sealed class CamContactCheck : MotionCheck
{
    public override string Id => "cam-contact";

    public override string Title => "Contact pressure of cam and follower";

    public override string Source => "line contact after Hertz under the greatest force of the marched motion at the rev limit; limit by the maker of cam and follower";

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.Knows(Cam.BaseRadius, i) && view.Knows(Cam.Width, i));

    public override Judgement Examine(View view, string index)
    {
        var motion = At(view, index, 1, out var cam);
        var pressure = motion is null ? null : NoseContact.Of(view, index, motion, cam!);
        if (motion is not null && pressure is null)
        {
            view.Unknown($"the lobe of {index} itself ({Cam.LiftTable.At(index)} or {Cam.Law.At(index)}): a curve read at the valve does not give it");
        }

        return Judgement.AtMost("greatest contact pressure", pressure ?? double.NaN, view.Amount(Cam.ContactLimit, index), Dimension.Pressure, "MPa", "cam.contactLimit");
    }
}
