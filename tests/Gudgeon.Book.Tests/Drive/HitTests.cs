using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Drive;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Tests.Drive;

/// <summary>Hits on the drive of the invented twin: blower rotor 520 kg·mm² at 1.3226, impeller 58 kg·mm² at 9.92.</summary>
public class HitTests
{
    private static DriveHits Of(BuildBook book) => new(new View(book.Now(), DriveBooks.Desk));

    [Fact] // Each rotor times the square of its ratio.
    public void RotorsAreFeltAtTheCrank() => Assert.Equal((520e-6 * 1.3226 * 1.3226) + (58e-6 * 9.92 * 9.92), Of(DriveBooks.Heron).Inertia(), 1e-9);

    [Fact] // 9700 rpm to 9700 · 1.94 / 2.72 in 25 ms, the longest swing of the belt taken whole.
    public void AShiftThrowsTheRotorsInertiaBack()
    {
        var shift = Of(DriveBooks.Heron).All().First();
        var change = 9700 * Math.PI / 30 * (1 - (1.94 / 2.72));
        Assert.Equal("shift from gear 1 to 2", shift.Name);
        Assert.Equal(Of(DriveBooks.Heron).Inertia() * change / 25e-3, shift.Stiff, 1e-6);
        Assert.Equal(2, shift.Factor, 1e-9);
        Assert.Equal((2 * shift.Stiff) - shift.Steady, shift.Torque, 1e-6);
        Assert.Equal(shift.Torque / shift.Steady, shift.Times, 1e-9);
    }

    [Fact]
    public void ASlowerShiftHitsLess()
    {
        var slow = Of(DriveBooks.Heron.Changed("slow", ("shock.engageTime", "100 ms"))).All().First();
        Assert.Equal(4, Of(DriveBooks.Heron).All().First().Stiff / slow.Stiff, 1e-9);
    }

    [Fact]
    public void AShortHitOnASoftBeltIsEased() =>
        Assert.InRange(Of(DriveBooks.Heron.Changed("soft", ("shock.engageTime", "5 ms"))).All().First().Factor, 1.0, 1.5);

    [Fact]
    public void TheWorstHitIsHeldToEachPath()
    {
        var worst = Of(DriveBooks.Heron).Worst();
        foreach (var path in new[] { "belt", "fit", "key" })
        {
            Assert.Equal(worst.Torque, DriveBooks.Of(DriveBooks.Heron, $"drive-hit[{path}]").Judgement!.Lower!.Value, 1e-6);
        }

        Assert.Equal(Verdict.Holds, DriveBooks.Of(DriveBooks.Heron, "drive-hit[fit]").Verdict);
        Assert.Equal(Verdict.Holds, DriveBooks.Of(DriveBooks.Heron, "drive-hit[key]").Verdict);
        var soft = DriveBooks.Heron.Changed("soft", ("fit[spigot].keyPressureLimit", "150 MPa"));
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(soft, "drive-hit[key]").Verdict);

        // With the shift eased the missed gear is the worst, and a heavier engine eases that.
        var eased = soft.Changed("slow", ("shock.engageTime", "60 ms"));
        Assert.Equal("full torque at once, no gear", Of(eased).Worst().Name);
        Assert.Equal(Verdict.Holds, DriveBooks.Of(eased.Changed("flywheel", ("rotor[alternator].inertia", "4000 kg·mm²")), "drive-hit[key]").Verdict);
    }

    [Fact] // 84 mm of 7075 with an 8 mm bore: row BD-13.
    public void TheImpellerBurstsAboveItsSpeed()
    {
        var burst = DriveBooks.Of(DriveBooks.Heron, "impeller-burst");
        Assert.Equal(155880 * Math.PI / 30, burst.Judgement!.Value, 0.02 * burst.Judgement.Value);
        Assert.Equal(Verdict.Holds, burst.Verdict);
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(DriveBooks.Heron.Changed("larger", ("impeller.diameter", "130 mm")), "impeller-burst").Verdict);
    }

    [Fact]
    public void TheSheetCautionsBesideTheImpeller()
    {
        var sheet = HitSheet.Of(DriveBooks.Heron.Now(), DriveBooks.Desk);
        Assert.Contains("shrapnel", sheet.Steps.Single(s => s.Title == "Impeller").Caution, StringComparison.Ordinal);
        Assert.Equal(4, sheet.Hits.Count);
        Assert.Equal(3, sheet.Paths.Count);
        Assert.NotEmpty(HitSheet.Of(DriveBooks.Wren.Now(), DriveBooks.Desk).Missing);
    }
}
