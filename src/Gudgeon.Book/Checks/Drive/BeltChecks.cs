using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>A check of the drive between crank and supercharger; there is none without a crank-driven one.</summary>
public abstract class DriveCheck : Check
{
    public sealed override string Family => "boost drive";

    public override IEnumerable<string> Instances(View view) => BlowerKinds.IsDriven(view.WordOr(Blower.Kind, BlowerKinds.None)) && Applies(view) ? [""] : [];

    /// <summary>Whether the book has what it is about.</summary>
    protected virtual bool Applies(View view) => view.Knows(Belt.Kind);
}

/// <summary>Ratio of the pulleys against the one that the engine is run with.</summary>
public sealed class BeltRatioCheck : DriveCheck
{
    public override string Id => "belt-ratio";

    public override string Title => "Ratio of the pulleys against blower.driveRatio";

    public override string Source => "kinematics; within 1 %: common practice, no source";

    public override bool Gives => false;

    public override Judgement Examine(View view, string index)
    {
        var (wanted, slack) = (view.Amount(Blower.DriveRatio), view.Limit("belt-ratio.within", Dimension.Number, "%", 0.01));
        return Judgement.Between("ratio of the pulleys", new DrivenBelt(view).Ratio(), wanted * (1 - slack), wanted * (1 + slack), Dimension.Number, "", "blower.driveRatio, within 1 %");
    }
}

/// <summary>What the belt carries against what the blower takes at its worst.</summary>
public sealed class BeltPullCheck : DriveCheck
{
    public override string Id => "belt-pull";

    public override string Title => "Pull that the belt carries";

    public override string Source => "toothed: ISO 5295 (from memory) on the maker's tension; others: Eytelwein with centrifugal tension, ribs at the tension ratio of 4 over half a turn that belts are designed for (from memory); 1.5 times the greatest steady pull: common practice, no source";

    public override string Caution => "A belt that breaks at speed whips, and the blower stops feeding: guard it, stand out of its plane, and keep hair, gloves and rags away from a running belt.";

    public override Judgement Examine(View view, string index)
    {
        var belt = new DrivenBelt(view);
        var worst = belt.Worst();
        return Judgement.AtLeast("pull that the belt carries", belt.Capacity(worst.BeltSpeed), view.Limit("belt-pull.factor", Dimension.Number, "", 1.5) * worst.Pull, Dimension.Force, "N", "1.5 times the greatest steady pull") with
        {
            Remark = Motion.PeakPressureCheck.At(worst.Speed),
        };
    }
}

/// <summary>What each rib of a V-ribbed belt pulls, against what its maker allows.</summary>
public sealed class BeltRibCheck : DriveCheck
{
    public override string Id => "belt-rib";

    public override string Title => "Pull of each rib of the belt";

    public override string Source => "greatest steady pull of the engine run, even over the ribs; limit by the maker of the belt";

    public override string Caution => "A belt whose cords tear at speed whips, and the blower stops feeding: guard on, nobody in its plane.";

    public override Judgement Examine(View view, string index)
    {
        var belt = new DrivenBelt(view);
        var worst = belt.Worst();
        return Judgement.AtMost("pull of a rib", belt.PullOfARib(worst.Pull), view.Amount(Belt.RibPull), Dimension.Force, "N", "belt.ribPull, by the maker") with { Remark = Motion.PeakPressureCheck.At(worst.Speed) };
    }

    protected override bool Applies(View view) => view.WordOr(Belt.Kind, "") == BeltKinds.Ribbed;
}

/// <summary>Whether the slack span stays tight.</summary>
public sealed class BeltSlackCheck : DriveCheck
{
    public override string Id => "belt-slack";

    public override string Title => "Set-up tension that keeps the slack span tight";

    public override string Source => "statics on fixed centres: half of the pull comes off the slack span, centrifugal tension presses on no pulley";

    public override string Caution => "Set the tension with the engine off and the key out; fingers between belt and pulley are lost when somebody turns the crank.";

    public override Judgement Examine(View view, string index)
    {
        var belt = new DrivenBelt(view);
        var worst = belt.Worst();
        var least = (worst.Pull / 2) + belt.Centrifugal(worst.BeltSpeed);
        return Judgement.AtLeast("tension of a span at rest", belt.SetUp(), least, Dimension.Force, "N", "half of the greatest steady pull and the centrifugal tension") with { Remark = Motion.PeakPressureCheck.At(worst.Speed) };
    }
}

/// <summary>The pull at which a toothed belt comes near to jumping a tooth, against the greatest pull, hits counted in.</summary>
public sealed class BeltJumpCheck : DriveCheck
{
    public override string Id => "belt-jump";

    public override string Title => "Tooth jump of the belt";

    public override string Source => "statics on fixed centres: a belt jumps as its slack span goes slack; tight span at most 8 times the slack one: belt makers' custom, from memory; shifts from the rev limit, felt half-way down";

    public override string Caution => "A belt that jumps at speed strips its teeth and whips: guard on, nobody in its plane. Set the tension with the engine off and the key out; the maker's greatest tension goes first.";

    public override Judgement Examine(View view, string index)
    {
        var (hardest, cause) = new DriveHits(view).Hardest();
        var carried = new DrivenBelt(view).JumpPull(hardest.BeltSpeed, view.Limit("belt-jump.ratio", Dimension.Number, "", 8));
        return Judgement.AtLeast("pull at which it may jump", carried, hardest.Pull, Dimension.Force, "N", "the greatest pull, hits counted in") with { Remark = cause };
    }

    protected override bool Applies(View view) => view.WordOr(Belt.Kind, "") == BeltKinds.Toothed;
}

/// <summary>Teeth in mesh on the pulley that has fewer.</summary>
public sealed class BeltMeshCheck : DriveCheck
{
    public override string Id => "belt-mesh";

    public override string Title => "Teeth in mesh";

    public override string Source => "geometry; six, below which ISO 5295 derates the belt (from memory)";

    public override Judgement Examine(View view, string index) =>
        Judgement.AtLeast("teeth in mesh", new DrivenBelt(view).InMesh(), view.Limit("belt-mesh.min", Dimension.Number, "", 6), Dimension.Number, "", "ISO 5295 (from memory)");

    protected override bool Applies(View view) => view.WordOr(Belt.Kind, "") == BeltKinds.Toothed;
}
