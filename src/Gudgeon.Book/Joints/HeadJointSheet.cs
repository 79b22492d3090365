using Gudgeon.Book.Build;
using Gudgeon.Book.Checks.Joints;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Limits;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Joints;

/// <summary>The head joint at one level of load. SI; NaN where it is not known.</summary>
/// <param name="Value">The value that makes the level.</param>
/// <param name="Power">Greatest power, W.</param>
/// <param name="Boost">Greatest boost, Pa gauge.</param>
/// <param name="Peak">Peak cylinder pressure above ambient, Pa.</param>
/// <param name="Gas">Gas load of one cylinder, N.</param>
/// <param name="Clamp">Clamp left around one cylinder by bolts tightened least, N.</param>
/// <param name="LineLoad">The same per length of the seal, N/m.</param>
/// <param name="RingStress">The same per area of the ring, Pa.</param>
/// <param name="Reserve">Pressure at which it lifts over peak pressure.</param>
public sealed record HeadLevel(double Value, double Power, double Boost, double Peak, double Gas, double Clamp, double LineLoad, double RingStress, double Reserve);

/// <summary>A head joint over the family of loads that what gives first climbs as well.</summary>
/// <param name="Key">The joint.</param>
/// <param name="Varied">The field that makes the levels.</param>
/// <param name="Now">Its value as things stand.</param>
/// <param name="Levels">Levels in rising order.</param>
/// <param name="Facts">The joint as things stand.</param>
/// <param name="Refused">What the formulas refuse, in sentences; empty when nothing is.</param>
public sealed record HeadJointSheet(string Key, Field Varied, double Now, IReadOnlyList<HeadLevel> Levels, IReadOnlyList<Fact> Facts, string Refused)
{
    /// <summary>What the figures rest on.</summary>
    public const string Remark = "Clamp left by bolts at the low end of their scatter, embedding off, heat counted only where it loosens; the whole of it on the seal's circle. An O-ring or fire ring puts the load where the pressure is and wants its own line load from its maker; the gas then acts on its diameter, which is wider than the bore.";

    /// <summary>What can hurt.</summary>
    public static string Caution => new HeadSeparationCheck().Caution;

    /// <summary>The first joint that holds cylinders.</summary>
    /// <exception cref="BadInputException">There is none.</exception>
    public static string Named(View view, string? key)
    {
        var heads = JointSheet.Keys(view).Where(k => WorkingJoint.Holds(view, k)).ToList();
        return key is not null && !heads.Contains(key) ? throw new BadInputException($"joint[{key}] holds no cylinders; wanted one of {string.Join(", ", heads)}")
            : key ?? (heads.Count > 0 ? heads[0] : throw new BadInputException("no joint holds cylinders yet; wanted joint[head].cylinders"));
    }

    /// <summary>Runs the engine over the family and sees what is left of the clamp at each level.</summary>
    /// <exception cref="BadInputException">The engine cannot be run yet.</exception>
    public static HeadJointSheet Of(Snapshot now, DutyDesk desk, string? key = null, IProgress<double>? progress = null)
    {
        var view = new View(now, desk);
        var joint = Named(view, key);
        var (varied, source, value, _) = GivesFirst.Varied(now, desk);
        var levels = new List<HeadLevel>();
        var shares = GivesFirst.Shares(varied);
        for (var i = 0; i < shares.Count; i++)
        {
            var nudge = new Dictionary<string, double>(StringComparer.Ordinal) { [source] = value * shares[i] };
            if (Level(new View(now, desk, nudge), joint, value * shares[i]) is { } level)
            {
                levels.Add(level);
            }

            progress?.Report((i + 1.0) / shares.Count);
        }

        return new HeadJointSheet(joint, varied, value, levels, Told(view, joint, Level(view, joint, value)), JointFigures.Of(view, joint).Refused);
    }

    private static HeadLevel? Level(View view, string key, double value)
    {
        if (view.Duty() is not { } duty)
        {
            return null;
        }

        double Known(Func<View, double> work) => JointFigures.Known(view, work);
        return new HeadLevel(
            value,
            duty.Power.Value,
            duty.Most(f => f.Boost).Value,
            Known(v => WorkingJoint.Peak(v).Pressure),
            Known(v => WorkingJoint.Head(v, key).GasLoad),
            Known(v => WorkingJoint.Head(v, key).Clamp),
            Known(v => SealedJoint.LineLoad(v, key, WorkingJoint.Head(v, key).Clamp)),
            Known(v => SealedJoint.RingStress(v, key, WorkingJoint.Head(v, key).Clamp)),
            Known(v => WorkingJoint.Head(v, key).SeparationFactor));
    }

    private static IReadOnlyList<Fact> Told(View view, string key, HeadLevel? now)
    {
        double Known(Func<View, double> work) => JointFigures.Known(view, work);
        var (wanted, by) = (Known(v => SealedJoint.LineLoadWanted(v, key)), SealedJoint.ByTable(view, key) ? "by the table of gaskets" : "by its maker");
        List<Fact> all =
        [
            new("bolts around each cylinder", Known(v => WorkingJoint.BoltsPerCylinder(v, key)), Dimension.Number, ""),
            new("diameter that the seal closes", Known(v => v.Amount(Joint.SealDiameter, key)), Dimension.Length, "mm"),
            new("clamp around one cylinder, cold, least", Known(v => SealedJoint.LeastClamp(v, key)), Dimension.Force, "kN"),
            .. Seating(view, key),
            new("peak pressure above ambient", now?.Peak, Dimension.Pressure, "bar"),
            new("gas load of one cylinder", now?.Gas, Dimension.Force, "kN"),
            new("clamp left around one cylinder", now?.Clamp, Dimension.Force, "kN"),
            new("line load left on the seal", now?.LineLoad, Dimension.ForcePerLength, "N/mm") { RemarkIn = double.IsNaN(wanted) ? null : new NumberInWords("wanted ", wanted, Dimension.ForcePerLength, "N/mm", $", {by}").Print, Remark = double.IsNaN(wanted) ? $"what the seal wants: {Joint.LineLoadWanted.At(key)}, by its maker" : "" },
            new("pressure left on the ring", now?.RingStress, Dimension.Pressure, "MPa") { Remark = now is not null && double.IsNaN(now.RingStress) ? $"wants {Joint.RingWidth.At(key)}" : "" },
            new("pressure at which it lifts, over peak pressure", now?.Reserve, Dimension.Number, ""),
            .. Ring(view, key),
        ];
        return all;
    }

    /// <summary>Whether the tightening alone seats the gasket; nothing where the table does not have it.</summary>
    private static IEnumerable<Fact> Seating(View view, string key)
    {
        var cold = JointFigures.Known(view, v => SealedJoint.LineLoad(v, key, SealedJoint.LeastClamp(v, key)));
        var seats = view.Knows(Joint.Gasket, key) ? JointFigures.Known(view, v => SealedJoint.SeatingWanted(v, key)) : double.NaN;
        yield return new Fact("line load, cold, least", cold, Dimension.ForcePerLength, "N/mm") { RemarkIn = double.IsNaN(seats) ? null : new NumberInWords("", seats, Dimension.ForcePerLength, "N/mm", " seats the gasket by the table, made for vessel flanges").Print };
    }

    /// <summary>The ring or wire itself; nothing where the book has none.</summary>
    private static IEnumerable<Fact> Ring(View view, string key)
    {
        double Known(Func<View, double> work) => JointFigures.Known(view, work);
        if (view.Knows(Joint.RingWidth, key))
        {
            var most = view.AmountIf(Joint.RingStressMost, key);
            yield return new Fact("pressure on the ring when tightened, greatest", Known(v => SealedJoint.RingStress(v, key, SealedJoint.GreatestClamp(v, key))), Dimension.Pressure, "MPa") { RemarkIn = most is { } bears ? new NumberInWords("", bears, Dimension.Pressure, "MPa", " allowed").Print : null, Remark = most is null ? $"what crushes it: {Joint.RingStressMost.At(key)}, by its maker" : "" };
        }

        if (view.Knows(Joint.Cord, key))
        {
            yield return new Fact("O-ring squeezed, or wire out of its groove, by", Known(v => SealedJoint.Squeeze(v, key).Squeeze), Dimension.Length, "mm") { Digits = 3 };
            yield return new Fact("of its cord", Known(v => SealedJoint.Squeeze(v, key).Ratio), Dimension.Number, "%") { Digits = 3 };
        }

        if (view.Knows(Joint.GrooveWidth, key))
        {
            yield return new Fact("groove filled", Known(v => SealedJoint.Fill(v, key)), Dimension.Number, "%") { Digits = 3 };
        }
    }
}
