using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Joints;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Joints;

/// <summary>The numbers of one bolted joint. SI; NaN where they are not known.</summary>
/// <param name="Key">The joint: "head".</param>
/// <param name="Thread">"M10 × 1.25"; empty when it is not known.</param>
public sealed record JointFigures(string Key, string Thread)
{
    /// <summary>Names of the facts that a comparison gives a verdict on.</summary>
    public const string WhileTightening = "stress while tightening, greatest", InService = "stress in service, greatest", ClampLeftName = "clamp left, least";

    /// <summary>Preload of a bolt at the mean, after tightening.</summary>
    public double Preload { get; init; }

    /// <summary>The least and the greatest that the tightening may give.</summary>
    public double Least { get; init; }

    /// <inheritdoc cref="Least"/>
    public double Greatest { get; init; }

    /// <summary>Share by which it scatters.</summary>
    public double Scatter { get; init; }

    /// <summary>Resilience of bolt and parts, m/N.</summary>
    public double BoltResilience { get; init; }

    /// <inheritdoc cref="BoltResilience"/>
    public double PartResilience { get; init; }

    /// <summary>Share of the working force that comes on the bolt.</summary>
    public double LoadFactor { get; init; }

    /// <summary>Greatest working force on one bolt.</summary>
    public double Force { get; init; }

    /// <summary>Where that force comes from; empty when it is as the book has it.</summary>
    public string ForceFrom { get; init; } = "";

    /// <summary>Preload lost by embedding.</summary>
    public double Embedding { get; init; }

    /// <summary>Change of preload from assembly to work.</summary>
    public double Thermal { get; init; }

    /// <summary>Clamp left at the bolt that was tightened least.</summary>
    public double ClampLeft { get; init; }

    /// <summary>Greatest bolt force in service.</summary>
    public double BoltForce { get; init; }

    /// <summary>Combined stress while tightening to the greatest preload, and in service.</summary>
    public double TighteningStress { get; init; }

    /// <inheritdoc cref="TighteningStress"/>
    public double WorkingStress { get; init; }

    /// <summary>Yield strength of the bolt.</summary>
    public double Yield { get; init; }

    /// <summary>Share of yield that the mean preload uses, torsion counted.</summary>
    public double YieldShare { get; init; }

    /// <summary>Swing of the stress, and what the bolt bears for good.</summary>
    public double Amplitude { get; init; }

    /// <inheritdoc cref="Amplitude"/>
    public double FatigueStrength { get; init; }

    /// <summary>Pressure under the head, and what its face bears.</summary>
    public double HeadPressure { get; init; }

    /// <inheritdoc cref="HeadPressure"/>
    public double HeadLimit { get; init; }

    /// <summary>Thread engagement, that at which the bolt breaks first, and the force that strips.</summary>
    public double Engagement { get; init; }

    /// <inheritdoc cref="Engagement"/>
    public double EngagementWanted { get; init; }

    /// <inheritdoc cref="Engagement"/>
    public double Stripping { get; init; }

    /// <summary>Stretch of the bolt at the mean preload, and the angle from snug that leads there.</summary>
    public double Stretch { get; init; }

    /// <inheritdoc cref="Stretch"/>
    public double Angle { get; init; }

    /// <summary>Lengthening that stays when it is turned past yield, nought when it is not; and the angle at which it yields.</summary>
    public double Set { get; init; }

    /// <inheritdoc cref="Set"/>
    public double YieldAngle { get; init; }

    /// <summary>What the tightening wants and is not known, in one sentence; empty when nothing is.</summary>
    public string Missing { get; init; } = "";

    /// <summary>What the formulas refuse, in sentences; empty when nothing is.</summary>
    public string Refused { get; init; } = "";

    /// <summary>The figures as lines of a sheet.</summary>
    public IReadOnlyList<Fact> Facts =>
    [
        Newtons("preload, mean", Preload), Newtons("preload, least", Least), Newtons("preload, greatest", Greatest),
        new("scatter of the preload", Scatter, Dimension.Number, "%") { Remark = "either way, by the tightening method, or by the ± of a stretch that was read" },
        new("share of yield at the mean, torsion counted", YieldShare, Dimension.Number, "%"),
        new("resilience of the bolt", BoltResilience, Dimension.Compliance, "µm/kN"), new("resilience of the parts", PartResilience, Dimension.Compliance, "µm/kN"),
        new("load factor", LoadFactor, Dimension.Number, "%") { Remark = "of the working force comes on the bolt" },
        Newtons("working force on one bolt", Force) with { Remark = ForceFrom }, Newtons("lost by embedding", Embedding), Newtons("change by heat", Thermal) with { Remark = Thermal == 0 ? "no working temperature known" : Thermal > 0 ? "gained" : "lost" },
        Newtons(ClampLeftName, ClampLeft) with { Remark = ClampLeft < 0 ? "the joint opens" : "" }, Newtons("bolt force in service, greatest", BoltForce),
        Stress(WhileTightening, TighteningStress), Stress(InService, WorkingStress) with { RemarkIn = Held("yield ", Yield) },
        Stress("stress amplitude", Amplitude) with { RemarkIn = Held("borne for good ", FatigueStrength) },
        Stress("pressure under the head", HeadPressure) with { RemarkIn = Held("face bears ", HeadLimit) },
        Length("thread engagement", Engagement) with { RemarkIn = double.IsNaN(EngagementWanted) ? null : new NumberInWords("bolt breaks first from ", EngagementWanted, Dimension.Length, "mm") { Digits = 4 }.Print },
        Newtons("force that strips the thread", Stripping),
        Length("stretch at the mean preload", Stretch),
        new("angle from snug to the mean preload", Angle, Dimension.Angle, "°"),
        .. double.IsNaN(YieldAngle) ? Array.Empty<Fact>() : [new Fact("angle from snug to yield", YieldAngle, Dimension.Angle, "°"), Length("lengthening that stays", Set)],
    ];

    /// <summary>The figures of one joint.</summary>
    /// <param name="view">With a desk where a head joint is to see the engine run.</param>
    /// <param name="index">The joint.</param>
    public static JointFigures Of(View view, string index)
    {
        var numbers = new JointNumbers(view);
        double Known(Func<View, double> work) => numbers.Of(work);
        var from = "";
        var trial = new View(view.Snapshot);
        _ = Sketch.Known(() => TightenedJoint.Preload(trial, index));
        return new JointFigures(index, ThreadWords(view, index))
        {
            Preload = Known(v => TightenedJoint.Preload(v, index)),
            Least = Known(v => TightenedJoint.Least(v, index)),
            Greatest = Known(v => TightenedJoint.Greatest(v, index)),
            Scatter = Known(v => TightenedJoint.Scatter(v, index)),
            BoltResilience = Known(v => TightenedJoint.Resilience(v, index).Bolt),
            PartResilience = Known(v => TightenedJoint.Resilience(v, index).Parts),
            LoadFactor = Known(v => WorkingJoint.Share(v, index, 1).LoadFactor),
            Force = Known(v =>
            {
                var force = WorkingForce.On(v, index);
                from = force.From;
                return force.Greatest;
            }),
            ForceFrom = from,
            Embedding = Known(v => TightenedJoint.EmbeddingLoss(v, index)),
            Thermal = Known(v => TightenedJoint.ThermalChange(v, index)),
            ClampLeft = Known(v => WorkingJoint.ClampLeft(v, index)),
            BoltForce = Known(v => WorkingJoint.GreatestForce(v, index)),
            TighteningStress = Known(v => v.Work(BoltService.Stress, TightenedJoint.Greatest(v, index), TightenedJoint.Greatest(v, index), TightenedJoint.Section(v, index), v.Amount(Joint.Thread, index), v.Amount(Joint.Pitch, index), TightenedJoint.ThreadFriction(v, index), 1.0).Combined),
            WorkingStress = Known(v => WorkingJoint.Stress(v, index).Combined),
            Yield = Known(v => v.Amount(Joint.YieldStrength, index)),
            YieldShare = Known(v => TightenedJoint.Preload(v, index) / TightenedJoint.AtYield(v, index, 1).Preload),
            Amplitude = Known(v => WorkingJoint.Amplitude(v, index)),
            FatigueStrength = Known(v => WorkingJoint.FatigueStrength(v, index)),
            HeadPressure = Known(v => WorkingJoint.HeadPressure(v, index)),
            HeadLimit = Known(v => v.Choice<BearingMaterial>(Joint.FaceMaterial, index) is { } face ? v.Work(Calc.Joints.HeadPressure.Limit, face) : double.NaN),
            Engagement = Known(v => v.Amount(Joint.Engagement, index)),
            EngagementWanted = Known(v => WorkingJoint.EngagementWanted(v, index)),
            Stripping = Known(v => WorkingJoint.StrippingForce(v, index)),
            Stretch = Known(v => v.Work(JointDiagram.Stretch, TightenedJoint.Preload(v, index), TightenedJoint.GaugedResilience(v, index))),
            Angle = Known(v => FromSnug(v, index)),
            Set = Known(v => Turned(v, index).Set),
            YieldAngle = Known(v => Turned(v, index).YieldAngle),
            Missing = !trial.Trace.Missing.Any() ? "" : $"Not known yet: wants {string.Join(", ", trial.Trace.Missing)}.",
            Refused = numbers.Refused.Length > 0 ? $"Joint {index}: {numbers.Refused}" : "",
        };
    }

    /// <summary>A number that a computation of the checks gives; NaN when something that it takes is missing or out of range.</summary>
    internal static double Known(View view, Func<View, double> work) => new JointNumbers(view).Of(work);

    /// <summary>"M10 × 1.25".</summary>
    internal static string ThreadWords(View view, string index) => view.AmountIf(Joint.Thread, index) is { } thread && view.AmountIf(Joint.Pitch, index) is { } pitch
        ? $"M{Figures.Number(thread * 1e3, 4)} × {Figures.Number(pitch * 1e3, 3)}"
        : "";

    private static double FromSnug(View view, string index)
    {
        var (bolt, parts) = TightenedJoint.Resilience(view, index);
        var snug = TightenedJoint.FromTorque(view, view.Amount(Joint.SnugTorque, index), index);
        return view.Work(JointDiagram.Angle, snug, TightenedJoint.Preload(view, index), view.Amount(Joint.Pitch, index), bolt, parts);
    }

    private static AngleTightening Turned(View view, string index)
    {
        _ = view.Amount(Joint.Angle, index);
        return TightenedJoint.ByAngle(view, index);
    }

    private static Fact Newtons(string name, double value) => new(name, value, Dimension.Force, "kN");

    private static Fact Stress(string name, double value) => new(name, value, Dimension.Pressure, "MPa");

    private static Fact Length(string name, double value) => new(name, value, Dimension.Length, "mm");

    private static Func<bool, string>? Held(string words, double value) => double.IsNaN(value) ? null : new NumberInWords(words, value, Dimension.Pressure, "MPa") { Digits = 4 }.Print;
}
