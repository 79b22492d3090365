using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>
/// Checks of the room between valve and piston on the reference case VT-12: 1.59187 mm at 7.994° after TDC with the lobe
/// centre at 102°, 1.24643 mm with the cam 4° earlier.
/// </summary>
public class ValveToPistonCheckTests
{
    private const double Degree = Math.PI / 180;

    private static readonly BuildBook Case = Books.Of(
        ("crank.stroke", "55 mm"),
        ("rod.length", "104 mm"),
        ("valve[inlet].stemAngle", "12°"),
        ("valve[inlet].pistonClearance", "3.0 mm"),
        ("cam[inlet].law", "cubed"),
        ("cam[inlet].lift", "9.2 mm"),
        ("cam[inlet].duration", "288°"),
        ("cam[inlet].centre", "102°"));

    /// <summary>350 g on a shank of 150 mm², 9000 rpm.</summary>
    private static readonly BuildBook Turning = Case.Set(("engine.revLimit", "9000 rpm"), ("piston.mass", "260 g"), ("rod.smallEndMass", "90 g"), ("rod.shankArea", "150 mm²"));

    private static List<string> InstancesOf(BuildBook book, string check) => [.. CheckCatalogue.Find(check).Instances(new(book.Now()))];

    [Fact]
    public void The_cold_room_is_that_of_the_reference()
    {
        var finding = Appraisal.Of(Case, "valve-piston", "inlet");
        Assert.Equal(1.59187e-3, finding.Judgement!.Value, 1e-7);
        Assert.Equal(1.59187 / 2, finding.Reserve, 1e-4);
        Assert.Equal(Verdict.FallsShort, finding.Verdict);
        Assert.Equal("at 8° after overlap TDC", finding.Judgement.Remark);
        Assert.Equal(Verdict.Holds, Appraisal.Of(Case.Limited("valve-piston.inlet", "1.5 mm"), "valve-piston", "inlet").Verdict);
    }

    /// <summary>A millimetre more at TDC is a millimetre more everywhere; ± 0.1 mm on it is a guard band of 0.082 mm.</summary>
    [Theory]
    [InlineData("3.45 mm ± 0.1 mm", Verdict.TooCloseToTell)]
    [InlineData("3.35 mm ± 0.1 mm", Verdict.TooCloseToTell)]
    [InlineData("3.55 mm ± 0.1 mm", Verdict.Holds)]
    [InlineData("3.25 mm ± 0.1 mm", Verdict.FallsShort)]
    public void What_was_read_at_TDC_decides_how_sure_it_is(string room, Verdict verdict) =>
        Assert.Equal(verdict, Appraisal.Of(Case.Set(("valve[inlet].pistonClearance", room)), "valve-piston", "inlet").Verdict);

    /// <summary>The mirror image of the inlet: as much room as far before TDC, and 2.5 mm wanted.</summary>
    [Fact]
    public void The_exhaust_valve_is_chased_by_the_piston()
    {
        var mirrored = Case.Set(("valve[exhaust].stemAngle", "12°"), ("valve[exhaust].pistonClearance", "4.0 mm"), ("cam[exhaust].law", "cubed"), ("cam[exhaust].lift", "9.2 mm"), ("cam[exhaust].duration", "288°"), ("cam[exhaust].centre", "102°"));
        var finding = Appraisal.Of(mirrored, "valve-piston", "exhaust");
        Assert.Equal(2.59187e-3, finding.Judgement!.Value, 1e-7);
        Assert.Equal(2.5e-3, finding.Judgement.Lower);
        Assert.Equal("at 8° before overlap TDC", finding.Judgement.Remark);
    }

    // Room with the cam 4° early, less the lash, less F l / (E A) cos(12°) with F = m r w² (1 + r / l).
    [Fact]
    public void Running_takes_tolerance_lash_and_stretch_at_their_worst()
    {
        var book = Turning.Set(("cam[inlet].centreTolerance", "4°"), ("valve[inlet].lash", "0.15 mm"), ("cam[inlet].rampHeight", "0.3 mm"), ("cam[inlet].rampAngle", "40°"));
        var speed = 9000 * Math.PI / 30;
        var stretch = 0.35 * 27.5e-3 * speed * speed * (1 + (27.5 / 104)) * 104e-3 / (205e9 * 150e-6);
        Assert.Equal(0.0366e-3, stretch, 1e-7);
        var plain = Turning.Set(("cam[inlet].centreTolerance", "4°"));
        var finding = Appraisal.Of(plain, "valve-piston-running", "inlet");
        Assert.Equal(1.24643e-3 - (stretch * Math.Cos(12 * Degree)), finding.Judgement!.Value, 5e-7);
        Assert.Equal(finding.Judgement.Value / 0.7e-3, finding.Reserve, 1e-9);
        Assert.Equal("at 9° after overlap TDC", finding.Judgement.Remark);

        // Lash taken off a lobe cold and closed up hot leaves the room of the lobe alone.
        double Room(BuildBook of) => Appraisal.Of(of, "valve-piston-running", "inlet").Judgement!.Value;
        Assert.Equal(Room(book.Set(("valve[inlet].lash", "0.02 mm"))), Room(book), 1e-9);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(plain.Set(("valve[inlet].pistonClearance", "2.4 mm")), "valve-piston-running", "inlet").Verdict);
    }

    [Fact]
    public void A_room_by_opening_closing_and_lift_alone_says_so()
    {
        var smooth = Books.Of(("crank.stroke", "55 mm"), ("rod.length", "104 mm"), ("valve[inlet].pistonClearance", "6 mm"), ("valve[inlet].opens", "42°"), ("valve[inlet].closes", "66°"), ("valve[inlet].lift", "9.2 mm"));
        Assert.EndsWith("; by a smooth curve of its opening, closing and lift: read a lift curve before it is believed", Appraisal.Of(smooth, "valve-piston", "inlet").Judgement!.Remark, StringComparison.Ordinal);
        Assert.Contains(Gudgeon.Book.Head.ClearanceSheet.Of(smooth.Now()).Missing, m => m.StartsWith("inlet: by a smooth curve", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_missing_is_named()
    {
        Assert.Equal(["crank.stroke"], Appraisal.Of(Case.Without("crank.stroke"), "valve-piston", "inlet").Missing);
        Assert.Equal(["valve[inlet].pistonClearance"], Appraisal.Of(Case.Without("valve[inlet].pistonClearance"), "valve-piston", "inlet").Missing);
        Assert.Equal(["cam[inlet].centre"], Appraisal.Of(Case.Without("cam[inlet].centre"), "valve-piston", "inlet").Missing);
        Assert.Equal(["engine.revLimit", "piston.mass", "rod.shankArea", "rod.smallEndMass"], Appraisal.Of(Case, "valve-piston-running", "inlet").Missing.Order(StringComparer.Ordinal));
        Assert.Equal(Verdict.NotKnownYet, Appraisal.Of(Case, "valve-piston-running", "inlet").Verdict);
        Assert.Equal(["valve[inlet].headDiameter"], Appraisal.Of(Case.Set(("valve[inlet].pocketDiameter", "39.6 mm")), "valve-pocket", "inlet").Missing);
        Assert.Equal(["valve[inlet].pistonClearance"], Appraisal.Of(Case.Without("valve[inlet].pistonClearance").Set(("valve[inlet].clayClearance", "1.4 mm")), "clay", "inlet").Missing);
    }

    // (39.6 − 36) / 2 = 1.8 mm.
    [Fact]
    public void The_pocket_leaves_room_beside_the_valve()
    {
        var pocket = Case.Set(("valve[inlet].pocketDiameter", "39.6 mm"), ("valve[inlet].headDiameter", "36 mm"));
        Appraisal.Of(pocket, "valve-pocket", "inlet").Is(1.8e-3, 1.8 / 1.3, Verdict.Holds);
        Appraisal.Of(pocket.Set(("valve[inlet].headDiameter", "37.4 mm")), "valve-pocket", "inlet").Is(1.1e-3, 1.1 / 1.3, Verdict.FallsShort);
        Assert.Equal(["inlet"], InstancesOf(pocket, "valve-pocket"));
        Assert.Empty(InstancesOf(Case, "valve-pocket"));
    }

    /// <summary>Clay that is pressed too thin and clay that was never touched are both a story that does not agree.</summary>
    [Theory]
    [InlineData("1.4 mm", 0.19187e-3, Verdict.Holds)]
    [InlineData("1.2 mm", 0.39187e-3, Verdict.FallsShort)]
    [InlineData("1.95 mm", 0.35813e-3, Verdict.FallsShort)]
    [InlineData("1.3 mm ± 0.1 mm", 0.29187e-3, Verdict.TooCloseToTell)]
    public void Clay_is_held_against_the_computed_room(string clay, double difference, Verdict verdict)
    {
        var finding = Appraisal.Of(Case.Set(("valve[inlet].clayClearance", clay)), "clay", "inlet");
        Assert.Equal(difference, finding.Judgement!.Value, 1e-7);
        Assert.Equal(verdict, finding.Verdict);
        Assert.EndsWith("found, 1.5919 mm computed", finding.Judgement.Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_valve_is_told_apart_when_the_book_does()
    {
        var twin = Case.Set(("engine.cylinders", "2"), ("valve[inlet].count", "2"), ("valve[inlet.2.1].pistonClearance", "3.5 mm"), ("valve[inlet.1.2].clayClearance", "1.6 mm"));
        Assert.Equal(["inlet.1.1", "inlet.1.2", "inlet.2.1", "inlet.2.2", "exhaust"], InstancesOf(twin, "valve-piston"));
        Assert.Equal(["inlet", "exhaust"], InstancesOf(Case, "valve-piston-running"));
        Assert.Equal(["inlet.1.2"], InstancesOf(twin, "clay"));
        Assert.Empty(InstancesOf(Case, "clay"));
        Assert.Equal(2.09187e-3, Appraisal.Of(twin, "valve-piston", "inlet.2.1").Judgement!.Value, 1e-7);
        Assert.Equal(1.59187e-3, Appraisal.Of(twin, "valve-piston", "inlet.2.2").Judgement!.Value, 1e-7);
    }
}
