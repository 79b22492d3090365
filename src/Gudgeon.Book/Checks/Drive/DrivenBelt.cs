using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Belts;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>Where the belt pulls most.</summary>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Torque">Torque at the crank, N·m.</param>
/// <param name="Pull">Pull of the belt, N.</param>
/// <param name="BeltSpeed">m/s.</param>
public readonly record struct BeltPull(double Speed, double Torque, double Pull, double BeltSpeed)
{
    /// <summary>An engine that stands.</summary>
    public static readonly BeltPull AtRest;
}

/// <summary>The belt from the crank to the blower as its values have it. What is not known reads as NaN.</summary>
/// <param name="view">The values.</param>
public sealed class DrivenBelt(View view)
{
    /// <summary>Whether teeth carry the pull.</summary>
    public bool Toothed { get; } = view.WordOr(Belt.Kind, BeltKinds.Toothed) == BeltKinds.Toothed;

    /// <summary>Whether an idler runs on the slack span.</summary>
    public bool HasIdler => view.Knows(Belt.IdlerDiameter);

    /// <summary>Effective diameter of the crank pulley, m.</summary>
    public double Crank() => Diameter(Belt.CrankTeeth, Belt.CrankDiameter);

    /// <summary>Effective diameter of the blower pulley, m.</summary>
    public double Blower() => Diameter(Belt.BlowerTeeth, Belt.BlowerDiameter);

    /// <summary>Speed of the blower pulley over that of the crank, without slip.</summary>
    public double Ratio() => view.Work(BeltSetting.Ratio, Crank(), Blower());

    /// <summary>Length, wraps and spans; without an idler its wrap is nought and both slack spans are the one.</summary>
    public IdlerCourse Course()
    {
        var (crank, blower, centres) = (Crank(), Blower(), view.Amount(Belt.Centres));
        if (HasIdler)
        {
            return view.Work(IdlerBelt.Course, crank, blower, centres, view.Amount(Belt.IdlerDiameter), view.Amount(Belt.IdlerAlong), view.Amount(Belt.IdlerAcross), Side);
        }

        var open = view.Work(BeltGeometry.Open, crank, blower, centres);
        var span = Math.Sqrt((centres * centres) - ((crank - blower) * (crank - blower) / 4));
        return new IdlerCourse(open.Length, crank < blower ? open.SmallWrap : open.LargeWrap, crank < blower ? open.LargeWrap : open.SmallWrap, 0, span, span, span);
    }

    /// <summary>Pulleys as the belt meets them, for the drawing.</summary>
    public IReadOnlyList<BeltPulley> Pulleys() => HasIdler
        ? IdlerBelt.Pulleys(Crank(), Blower(), view.Amount(Belt.Centres), view.Amount(Belt.IdlerDiameter), view.Amount(Belt.IdlerAlong), view.Amount(Belt.IdlerAcross), Side)
        : [new(0, 0, Crank() / 2), new(view.Amount(Belt.Centres), 0, Blower() / 2)];

    /// <summary>Tension of a span at rest, N: by its note where that was measured, else as drawn.</summary>
    public double SetUp() => view.Knows(Belt.SpanFrequency)
        ? view.Work(BeltSetting.Tension, view.Amount(Belt.SpanFrequency), view.Amount(Belt.Mass), Course().TightSpan)
        : view.Amount(Belt.SetUpTension);

    /// <summary>Pull at one crank speed for a power that the blower takes from the crank.</summary>
    public BeltPull At(double speed, double power)
    {
        var (torque, radius) = (power / speed, Crank() / 2);
        return new BeltPull(speed, torque, torque / radius, speed * radius);
    }

    /// <summary>The pulls of the engine run; empty without one.</summary>
    public IReadOnlyList<BeltPull> Pulls() => [.. view.Duty()?.Figures.Select(f => At(f.Speed, f.Figures.Blower?.DrivePower ?? double.NaN)) ?? []];

    /// <summary>Where the belt pulls most over the engine run; NaN without a run.</summary>
    public BeltPull Worst() => Pulls() is { Count: > 0 } pulls ? pulls.MaxBy(p => p.Torque) : new BeltPull(double.NaN, double.NaN, double.NaN, double.NaN);

    /// <summary>Teeth in mesh on the pulley that has fewer.</summary>
    public double InMesh()
    {
        var (course, crank, blower) = (Course(), view.Count(Belt.CrankTeeth), view.Count(Belt.BlowerTeeth));
        return crank == 0 || blower == 0 || double.IsNaN(course.Length)
            ? double.NaN
            : Math.Min(view.Work(BeltGeometry.TeethInMesh, crank, course.DriverWrap), view.Work(BeltGeometry.TeethInMesh, blower, course.DrivenWrap));
    }

    /// <summary>Pull that the belt carries at a belt speed, m/s: of its teeth, or at the edge of slip.</summary>
    public double Capacity(double beltSpeed) => Toothed
        ? view.Work(BeltSetting.ToothedPull, view.Amount(Belt.TensionMax), InMesh(), view.AmountOr(Belt.Mass, 0), beltSpeed)
        : AtSlip(beltSpeed).Pull;

    /// <summary>A belt without teeth where it slips, or would by its design, at a belt speed, m/s.</summary>
    public BeltPower AtSlip(double beltSpeed) =>
        view.Work(BeltDrive.FromSetUpTension, SetUp(), SlipFriction(), LeastWrap(), beltSpeed, view.AmountOr(Belt.Mass, 0), Groove);

    /// <summary>What the belt's own turning takes of its tension at a belt speed, m/s, N.</summary>
    public double Centrifugal(double beltSpeed) => view.AmountOr(Belt.Mass, 0) * beltSpeed * beltSpeed;

    /// <summary>Pull of one rib of a V-ribbed belt, N.</summary>
    /// <param name="pull">Pull of the belt, N.</param>
    public double PullOfARib(double pull) => view.Count(Belt.Ribs) is > 0 and var ribs ? view.Work(BeltDrive.PullOfARib, pull, ribs) : double.NaN;

    /// <summary>Pull at which a toothed belt comes near to jumping a tooth at a belt speed, m/s, N.</summary>
    /// <param name="beltSpeed">m/s.</param>
    /// <param name="ratio">Tight over slack span at that pull.</param>
    public double JumpPull(double beltSpeed, double ratio) => view.Work(BeltSetting.JumpPull, SetUp(), view.AmountOr(Belt.Mass, 0), beltSpeed, ratio);

    /// <summary>Set-up tension that would bear a pull without jumping, N.</summary>
    /// <param name="at">The pull.</param>
    /// <param name="ratio">Tight over slack span at that pull.</param>
    public double JumpTension(BeltPull at, double ratio) => view.Work(BeltSetting.JumpTension, at.Pull, view.AmountOr(Belt.Mass, 0), at.BeltSpeed, ratio);

    /// <summary>What of the set-up tension presses on the pulleys at a belt speed, m/s: the belt's own turning takes the rest, N.</summary>
    public double Pressing(double beltSpeed) => SetUp() - Centrifugal(beltSpeed);

    /// <summary>Load of the belt on the crank pulley when it pulls, N; what the belt's own turning takes of the tension presses on no pulley.</summary>
    public double HubLoad(BeltPull at)
    {
        var (mean, half) = (Pressing(at.BeltSpeed), at.Pull / 2);
        return view.Work(BeltDrive.HubLoad, Math.Max(0, mean) + half, Math.Max(0, mean - half), Course().DriverWrap);
    }

    private IdlerSide Side => view.ChoiceOr(Belt.IdlerOn, IdlerSide.Back);

    /// <summary>Whether ribs carry the pull.</summary>
    public bool Ribbed => view.WordOr(Belt.Kind, BeltKinds.Toothed) == BeltKinds.Ribbed;

    /// <summary>What its slip rests on.</summary>
    public string SlipWords => view.Knows(Belt.Friction) ? "by belt.friction" : Ribbed ? "4 over half a turn, for which belts are designed (from memory); clean ribs bear more" : "friction 0.3: common practice, no source";

    private double Groove => Ribbed ? view.AmountOr(Belt.Groove, 40 * Math.PI / 180) : Math.PI;

    /// <summary>The user's friction, else 0.3 on a flat pulley; clean ribs would bear a ratio of 17 with that, and belts are not designed for it.</summary>
    private double SlipFriction() => Ribbed && !view.Knows(Belt.Friction)
        ? view.Work(BeltDrive.DesignFriction, view.Limit("belt-pull.ratio", Dimension.Number, "", 4), Groove)
        : view.AmountOr(Belt.Friction, 0.3);

    private double LeastWrap()
    {
        var course = Course();
        return Math.Min(course.DriverWrap, course.DrivenWrap);
    }

    private double Diameter(Field teeth, Field diameter)
    {
        if (!Toothed)
        {
            return view.Amount(diameter);
        }

        var (count, pitch) = (view.Count(teeth), view.Amount(Belt.Pitch));
        return count == 0 ? double.NaN : view.Work(BeltSetting.PitchDiameter, count, pitch);
    }
}
