using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Boost;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>The worst hit of start, shift, cut and missed gear against what belt, fit and key carry.</summary>
public sealed class DriveHitCheck : DriveCheck
{
    private const string ByBelt = "belt", ByFit = "fit", ByKey = "key", BySpigot = "spigot";

    public override string Id => "drive-hit";

    public override string Title => "Hits of start, shift and cut on the boost drive";

    public override string Source => "inertia of rotors behind the belt times the engine's acceleration, one spring without damping (Thomson, from memory); the spigot to the yield of its notch (DIN 743-2 and Peterson, from memory); builders report 5 to 10 times the steady torque: common practice, no source";

    public override string Caution => "A belt or key that lets go at speed whips, and the engine leans out: guard on, nobody in the plane of the belt, first shifts at part throttle.";

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Any() ? Paths(view) : [];

    public override Judgement Examine(View view, string index)
    {
        var hits = new DriveHits(view);
        var worst = hits.Worst();
        var nose = new LoadedNose(view);
        var carried = index switch { ByBelt => hits.BeltTorque(), ByFit => nose.Joint.SlipTorque(), BySpigot => nose.SpigotTorque(), _ => nose.KeyTorque() };
        return Judgement.AtLeast($"torque that the {index} carries", carried, worst.Torque, Dimension.Torque, "N·m", "the worst hit") with { Remark = worst.Name };
    }

    protected override bool Applies(View view) => view.Knows(Belt.Kind) && view.Knows(Rotor.Inertia, DriveHits.Driven);

    private static IEnumerable<string> Paths(View view)
    {
        yield return ByBelt;
        if (view.Knows(Fit.Length, Nose.Fit))
        {
            yield return ByFit;
        }

        if (view.Knows(Fit.KeyLength, Nose.Fit))
        {
            yield return ByKey;
        }

        if (LoadedNose.HasSpigot(view))
        {
            yield return BySpigot;
        }
    }
}

/// <summary>Burst speed of the impeller against its greatest speed.</summary>
public sealed class ImpellerBurstCheck : DriveCheck
{
    public override string Id => "impeller-burst";

    public override string Title => "Burst speed of the impeller";

    public override string Source => "mean hoop stress of a flat disc (Robinson, from memory), strength at the temperature of the impeller (Aluminum Association, typical, 10 000 h, from memory); 1.2 times the greatest speed, as rotors of aircraft engines are proved (from memory)";

    public override string Caution => "An impeller that bursts leaves its housing: the maker's greatest speed and containment go first, a guard round the plane of the impeller, nobody in it.";

    public override Judgement Examine(View view, string index)
    {
        var impeller = new HotImpeller(view);
        return Judgement.AtLeast(
            "burst speed", impeller.Burst(), view.Limit("impeller-burst.factor", Dimension.Number, "", 1.2) * Speed(view), Dimension.RotationalSpeed, "rpm", "1.2 times the speed at the rev limit") with
        {
            Remark = impeller.StrengthWords(imperial: false),
        };
    }

    /// <summary>Speed at the rev limit, rad/s.</summary>
    internal static double Speed(View view) =>
        view.Work(RotorSpeed.FromRatio, view.Amount(Engine.RevLimit), view.Amount(Blower.DriveRatio), view.AmountOr(Blower.StepUp, 1), view.AmountOr(Blower.BeltSlip, 0));

    protected override bool Applies(View view) => view.Knows(Impeller.Diameter);
}
