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

    [Fact] // 84 mm of 7075 with an 8 mm bore: row BD-13, in the room; at 149 °C it has 215 of 570 MPa left (row BD-31).
    public void TheImpellerBurstsAboveItsSpeed()
    {
        var cold = Burst(("impeller.material", "aluminium 7075-T6"), ("impeller.temperature", "20 °C"));
        Assert.Equal(155880.5 * Math.PI / 30, cold.Judgement!.Value, 0.1);
        Assert.Equal(Verdict.Holds, cold.Verdict);
        var hot = Burst(("impeller.material", "aluminium 7075-T6"), ("impeller.temperature", "149 °C"));
        Assert.Equal(Math.Sqrt(215.0 / 570), hot.Judgement!.Value / cold.Judgement.Value, 1e-9);
        Assert.Equal((Verdict.FallsShort, "strength at 149 °C"), (hot.Verdict, hot.Judgement.Remark));
        Assert.Equal(Verdict.Holds, Burst(("impeller.material", "aluminium 7075-T6"), ("impeller.temperature", "149 °C"), ("impeller.hotStrength", "450 MPa")).Verdict);
        Assert.Equal(Verdict.Holds, DriveBooks.Of(DriveBooks.Heron, "impeller-burst").Verdict);
        Assert.Equal(Verdict.FallsShort, Burst(("impeller.diameter", "130 mm")).Verdict);

        static Finding Burst(params (string Path, string Text)[] other) => DriveBooks.Of(DriveBooks.Heron.Changed("other", other), "impeller-burst");
    }

    [Fact] // As hot as the air that leaves the blower: the run's own, where it is hottest.
    public void TheImpellerIsAsHotAsItsAir()
    {
        var hottest = Demo.DemoBooks.Heron.Run.Most(f => f.Blower!.DeliveryTemperature).Value;
        var own = DriveBooks.Of(DriveBooks.Heron, "impeller-burst").Judgement!.Value;
        var given = DriveBooks.Of(DriveBooks.Heron.Changed("given", ("impeller.temperature", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{hottest - 273.15:F9} °C"))), "impeller-burst").Judgement!.Value;
        Assert.Equal(1, given / own, 1e-9);
        Assert.InRange(hottest - 273.15, 80, 180);
    }

    [Fact] // 26 mm solid, keyed: K = 0.56 · 3 · Rm^0.38 + 0.1; T = π d³ / 16 · Re / √3 / K.
    public void TheSpigotItselfIsHeldToTheWorstHit()
    {
        var spigot = DriveBooks.Of(DriveBooks.Heron, "drive-hit[spigot]");
        var steel = Calc.Materials.MaterialTable.Properties(Calc.Materials.MaterialGrade.Steel34CrNiMo6, 0.026);
        var keyed = (0.56 * 3 * Math.Pow(steel.Tensile / 1e9, 0.38)) + 0.1;
        Assert.Equal(Math.PI * Math.Pow(0.026, 3) / 16 * steel.Yield / Math.Sqrt(3) / keyed, spigot.Judgement!.Value, 1e-6);
        Assert.Equal(Of(DriveBooks.Heron).Worst().Torque, spigot.Judgement.Lower!.Value, 1e-6);
        Assert.Equal(Verdict.Holds, spigot.Verdict);

        // A wall of 1 mm is left by a bore of 24 mm: 1 - (24/26)^4 of the solid one.
        var hollow = DriveBooks.Of(DriveBooks.Heron.Changed("hollow", ("fit[spigot].shaftBore", "24 mm")), "drive-hit[spigot]");
        Assert.Equal(1 - Math.Pow(24.0 / 26, 4), hollow.Judgement!.Value / spigot.Judgement.Value, 0.002);
    }

    [Fact]
    public void TheSheetCautionsBesideTheImpeller()
    {
        var sheet = HitSheet.Of(DriveBooks.Heron.Now(), DriveBooks.Desk);
        Assert.Contains("shrapnel", sheet.Steps.Single(s => s.Title == "Impeller").Caution, StringComparison.Ordinal);
        Assert.Equal(4, sheet.Hits.Count);
        Assert.Equal(4, sheet.Paths.Count);
        Assert.NotEmpty(HitSheet.Of(DriveBooks.Wren.Now(), DriveBooks.Desk).Missing);
    }
}
