using Gudgeon.Book.Checks.Joints;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Joints;

/// <summary>What the torque of the book does on one lubricant. SI; NaN where it is not known.</summary>
/// <param name="Lubricant">What thread and head run on.</param>
/// <param name="Least">Least friction.</param>
/// <param name="Usual">Usual friction.</param>
/// <param name="Worst">Greatest friction.</param>
/// <param name="Preload">Preload at the usual friction.</param>
/// <param name="Most">Preload at the least friction.</param>
/// <param name="YieldShare">Share of yield at the least friction, torsion counted.</param>
/// <param name="Torque">Torque that keeps the preload of the book.</param>
/// <param name="NutFactor">K of T = K F d at the usual friction.</param>
public sealed record LubricantRow(string Lubricant, double Least, double Usual, double Worst, double Preload, double Most, double YieldShare, double Torque, double NutFactor);

/// <summary>Torque and preload of one joint.</summary>
/// <param name="Key">The joint.</param>
/// <param name="Facts">Where the torque goes, and how good it is.</param>
/// <param name="Rows">The same torque on other lubricants.</param>
/// <param name="Missing">What is wanted, in one sentence; empty when nothing is.</param>
/// <param name="Refused">What the formulas refuse, in sentences; empty when nothing is.</param>
public sealed record TorqueSheet(string Key, IReadOnlyList<Fact> Facts, IReadOnlyList<LubricantRow> Rows, string Missing, string Refused)
{
    /// <summary>What the table rests on.</summary>
    public const string Remark = "Friction ranges are the classes of VDI 2230, usual values common practice without a source; thread and head alike. A torque tester with the bolts, the washers and the lubricant in hand goes before any table.";

    /// <summary>What can hurt.</summary>
    public const string Caution = "A torque given for dry threads pulls an oiled bolt much harder: it yields or breaks at the wrench. Oil, paste and thread lock go only where the torque was given for them, and never on the taper of a wheel or a brake.";

    /// <summary>The sheet of the values that hold.</summary>
    public static TorqueSheet Of(View view, string key)
    {
        double Known(Func<View, double> work) => JointFigures.Known(view, work);
        var torque = Known(v => v.Amount(Joint.Torque, key));
        var preload = Known(v => TightenedJoint.Preload(v, key));
        var joint = JointFigures.Of(view, key);
        return new TorqueSheet(key, [.. Told(view, key, torque, preload)], [.. Enum.GetValues<Lubricant>().Select(l => Row(view, key, l, torque, preload))], joint.Missing, joint.Refused);
    }

    private static LubricantRow Row(View view, string key, Lubricant lubricant, double torque, double preload)
    {
        var range = BoltFriction.Guide(lubricant);
        double Force(double friction, double given) => JointFigures.Known(view, v => v.Work(Tightening.Preload, given, v.Amount(Joint.Thread, key), v.Amount(Joint.Pitch, key), friction, friction, TightenedJoint.HeadDiameter(v, key)));
        var one = 1 / Force(range.Usual, 1);
        var yield = JointFigures.Known(view, v => TightenedJoint.AtYield(v, key, 1, range.Least, range.Least).Preload);
        var most = Force(range.Least, torque);
        return new LubricantRow(EnumWords.Of(lubricant.ToString()), range.Least, range.Usual, range.Greatest, Force(range.Usual, torque), most, most / yield, preload * one, one / JointFigures.Known(view, v => v.Amount(Joint.Thread, key)));
    }

    private static IEnumerable<Fact> Told(View view, string key, double torque, double preload)
    {
        TorqueSplit Split(View v) => v.Work(Tightening.Torque, TightenedJoint.FromTorque(v, v.Amount(Joint.Torque, key), key), v.Amount(Joint.Thread, key), v.Amount(Joint.Pitch, key), TightenedJoint.ThreadFriction(v, key), TightenedJoint.HeadFriction(v, key), TightenedJoint.HeadDiameter(v, key));
        double Known(Func<View, double> work) => JointFigures.Known(view, work);
        Fact Part(string name, Func<TorqueSplit, double> part) => new(name, Known(v => part(Split(v))), Dimension.Torque, "N·m");
        yield return new Fact("tightening torque", torque, Dimension.Torque, "N·m");
        yield return Part("of it stretches the bolt", s => s.PitchTorque);
        yield return Part("of it goes into the thread", s => s.ThreadTorque);
        yield return Part("of it goes under the head", s => s.HeadTorque);
        yield return new Fact("preload", preload, Dimension.Force, "kN");
        yield return new Fact("nut factor K", Known(v => Split(v).NutFactor), Dimension.Number, "") { Remark = "T = K F d, friction in one number" };
        yield return new Fact("preload by K = 0.2", Known(v => v.Work(NutFactor.Preload, v.Amount(Joint.Torque, key), v.Amount(Joint.Thread, key), 0.2)), Dimension.Force, "kN") { Remark = "the rule of thumb beside it" };
        yield return new Fact("share of yield, torsion counted", Known(v => TightenedJoint.Preload(v, key) / TightenedJoint.AtYield(v, key, 1).Preload), Dimension.Number, "%");
        yield return new Fact("torque at 90 % of yield", Known(v => TightenedJoint.AtYield(v, key, 0.9).Torque), Dimension.Torque, "N·m") { Remark = "with the friction of the book: the most that this bolt takes" };
        yield return new Fact("scatter by the method", Known(v => TightenedJoint.Scatter(v, key)), Dimension.Number, "%") { Remark = "either way: friction, feel and wrench together" };
        yield return Wrench(view, key, torque);
    }

    private static Fact Wrench(View view, string key, double torque)
    {
        var capacity = JointFigures.Known(view, v => v.Amount(Joint.WrenchCapacity, key));
        var share = JointFigures.Known(view, v => v.Choice<WrenchKind>(Joint.Wrench, key) is { } kind ? v.Work(TorqueWrench.Accuracy, kind, capacity).Uncertainty : double.NaN);
        var low = torque < 0.2 * capacity ? "below a fifth of its range, where no class holds: take a smaller one" : torque > capacity ? "more than this wrench takes: take a larger one" : "of the wrench alone, k = 2, within its class by ISO 6789";
        return new Fact("± of the torque", share * torque, Dimension.Torque, "N·m") { Remark = double.IsNaN(share) ? $"wants {Joint.Wrench.At(key)} and {Joint.WrenchCapacity.At(key)}" : low };
    }
}
