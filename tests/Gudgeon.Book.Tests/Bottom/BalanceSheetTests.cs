using Gudgeon.Book.Bottom;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Tests.Checks;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Bottom;

/// <summary>Rods weighed, balance factor, shafts and mounts, each against a value worked by hand.</summary>
public class BalanceSheetTests
{
    // m r ω² of one cylinder at 9000 rpm: 0.5 kg × 35 mm × (942.478 rad/s)² = 15 544 N.
    private const double Force = 0.5 * 0.035 * 942.47779608 * 942.47779608;

    private static readonly BuildBook Twin = Books.Of(
        ("engine.cylinders", "2"),
        ("engine.firingOrder", "1-2"),
        ("engine.firingIntervals", "360-360"),
        ("engine.revLimit", "9000 rpm"),
        ("crank.stroke", "70 mm"),
        ("crank.bobWeight", "550 g"),
        ("cylinder.bore", "80 mm"),
        ("cylinder[1].position", "0 mm"),
        ("cylinder[2].position", "100 mm"),
        ("rod.length", "130 mm"),
        ("rod.mass", "400 g"),
        ("rod.smallEndMass", "100 g"),
        ("piston.mass", "400 g"),
        ("balancer[front].unbalance", "8750 g·mm"),
        ("balancer[front].phase", "180°"),
        ("balancer[front].teeth", "36"),
        ("balancer[rear].mass", "350 g"),
        ("balancer[rear].radius", "25 mm"),
        ("balancer[rear].phase", "180°"),
        ("balancer[rear].teeth", "36"));

    [Fact]
    public void Rods_and_pistons_are_held_against_each_other()
    {
        var weighed = Twin.Set(("rod[1].mass", "400 g"), ("rod[2].mass", "401.5 g"), ("rod[1].smallEndMass", "100 g"), ("rod[2].smallEndMass", "98 g"), ("rod[1].bigEndMass", "300 g"), ("rod[2].bigEndMass", "303 g"), ("piston[1].mass", "400 g"), ("piston[2].mass", "400.8 g"));
        Appraisal.Of(weighed, "rod-match").Is(3e-3, 2.0 / 3, Verdict.FallsShort);
        Assert.Equal("of the big ends", Appraisal.Of(weighed, "rod-match").Judgement!.Remark);
        Appraisal.Of(weighed, "piston-match").Is(0.8e-3, 1.25, Verdict.Holds);
        Assert.Equal(Verdict.Holds, Appraisal.Of(weighed, "rod-weighing", "2").Verdict);
        Assert.Equal(0.5e-3, Appraisal.Of(weighed, "rod-weighing", "2").Judgement!.Value, 1e-9);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(weighed.Set(("rod[1].bigEndMass", "302 g")), "rod-weighing", "1").Verdict);
        Assert.Empty(CheckCatalogue.Find("rod-match").Instances(new(Twin.Now())));
        Assert.Empty(CheckCatalogue.Find("rod-weighing").Instances(new(Twin.Now())));
    }

    // The readings' ± make 1.2 g too close to tell: √(0.5² + 0.5²) g of it.
    [Fact]
    public void What_the_scale_cannot_tell_is_too_close()
    {
        var weighed = Twin.Set(("piston[1].mass", "400 g ± 0.5 g"), ("piston[2].mass", "401.1 g ± 0.5 g"));
        Assert.Equal(Verdict.TooCloseToTell, Appraisal.Of(weighed, "piston-match").Verdict);
    }

    // Centre of mass 26 mm from the big end of 130 mm: a fifth of 400 g at the small end.
    [Fact]
    public void A_rod_that_was_only_balanced_on_an_edge_has_its_shares_too()
    {
        var balanced = Twin.Without("rod.smallEndMass").Set(("rod.massCentre", "26 mm"));
        var row = BalanceSheet.Of(balanced).Rods[0];
        Assert.Equal(0.080, row.SmallEnd!.Value, 1e-12);
        Assert.Equal(0.320, row.BigEnd!.Value, 1e-12);
        Assert.Null(row.Left);
        Assert.Null(row.Gyration);

        // Hung 10 mm above the small-end centre, 114 mm above the centre of mass: k = √(g a (t / 2π)² − a²).
        var swung = BalanceSheet.Of(balanced.Set(("rod.swingPeriod", "0.75 s"), ("rod.swingPivot", "10 mm"))).Rods[0];
        Assert.Equal(Math.Sqrt((9.80665 * 0.114 * Math.Pow(0.75 / (2 * Math.PI), 2)) - (0.114 * 0.114)), swung.Gyration!.Value, 1e-9);
    }

    // Bob weight 550 g = 300 g + 50 % of 500 g; pistons 40 g heavier make it 250 / 540 = 46.3 %, and 50 % of 540 g takes 570 g.
    [Fact]
    public void Heavier_pistons_lower_the_factor_and_ask_for_metal()
    {
        var heavier = Twin.Set(("crank.counterweightRadius", "50 mm"), ("crank.balanceHole", "14 mm"), ("crank.balanceFactor", "50 %")).Changed("pistons", ("piston.mass", "440 g"));
        var pin = BalanceSheet.Of(heavier).Pins[0];
        Assert.Equal(0.5, pin.Before!.Value, 1e-12);
        Assert.Equal(250.0 / 540, pin.Factor!.Value, 1e-12);
        Assert.Equal(0.570, pin.BobWeight!.Value, 1e-12);
        Assert.Equal(0.020 * 35 / 50, pin.Change!.Value, 1e-12);
        Assert.Equal(0.014 * 4 / (Math.PI * 0.014 * 0.014 * (17000 - 7850)), pin.HoleDepth!.Value, 1e-12);
        Appraisal.Of(heavier, "balance-factor", "1").Is(250.0 / 540, 250.0 / 540 / 0.48, Verdict.FallsShort);
        Assert.Equal(Verdict.Holds, Appraisal.Of(heavier.Switched("pistons", false), "balance-factor", "2").Verdict);
        Assert.Equal(-0.020 * 35 / 50, BalanceSheet.Of(heavier.Set(("crank.bobWeight", "590 g"))).Pins[0].Change!.Value, 1e-12);
        Assert.Empty(CheckCatalogue.Find("balance-factor").Instances(new(Twin.Now())));
    }

    // A half-balanced 360° twin leaves 2 × ½ m r ω² turning against the crank; two shafts of a quarter each take it away.
    [Fact]
    public void Shafts_take_the_first_order_and_a_tooth_out_brings_a_part_of_it_back()
    {
        var sheet = BalanceSheet.Of(Twin);
        Assert.Equal(Force, sheet.Bare[0].Force.Against.Magnitude, 0.01);
        Assert.Equal(0, sheet.Bare[0].Force.With.Magnitude, 1e-6);
        Assert.Equal(0, sheet.Orders[0].Force.Greatest, 1e-6);
        var shaft = sheet.Shafts[0];
        Assert.Equal(2 * Math.PI / 36, shaft.Tooth!.Value, 1e-12);
        Assert.Equal(0, shaft.Timing.Early!.Value, 1e-9);
        Assert.Equal(Force * Math.Sin(Math.PI / 36), shaft.Late!.Force.Greatest, 0.01);
        Assert.Equal(Force * Math.Sin(Math.PI / 36), shaft.Early!.Force.Greatest, 0.01);
        Assert.Equal(0, shaft.AsMarked.Couple.Greatest, 1e-6);

        // Half a tooth is 5°: a shaft 10° late falls short, one 4° early holds.
        Appraisal.Of(Twin.Set(("balancer[front].phase", "190°")), "balance-shaft-timing", "front").Is(10 * Math.PI / 180, 0.5, Verdict.FallsShort);
        Assert.StartsWith("stands late", Appraisal.Of(Twin.Set(("balancer[front].phase", "190°")), "balance-shaft-timing", "front").Judgement!.Remark, StringComparison.Ordinal);
        Appraisal.Of(Twin.Set(("balancer[rear].phase", "176°")), "balance-shaft-timing", "rear").Is(4 * Math.PI / 180, 1.25, Verdict.Holds);
        Assert.Equal(["balancer[rear].teeth"], Appraisal.Of(Twin.Without("balancer[rear].teeth"), "balance-shaft-timing", "rear").Missing);
    }

    [Fact]
    public void What_is_not_known_is_named()
    {
        Assert.Contains("crank.bobWeight", Assert.Single(BalanceSheet.Of(Twin.Without("crank.bobWeight")).Missing), StringComparison.Ordinal);
        Assert.Contains("balancer.phase", Assert.Single(BalanceSheet.Of(Twin.Without("balancer[rear].phase")).Missing).Replace("[rear]", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("rod.mass", Assert.Single(BalanceSheet.Of(Twin.Without("rod.mass")).Missing), StringComparison.Ordinal);
        var ratio = Assert.Throws<BadInputException>(() => BalanceSheet.Of(Twin.Set(("balancer[front].ratio", "0.7"))));
        Assert.Contains("balancer[front].ratio: given 0.7, wanted 0.5, 1, 1.5 or 2", ratio.Message, StringComparison.Ordinal);
        var two = Twin.Set(("mount[a].x", "0.2 m"), ("mount[a].y", "0 mm"), ("mount[a].position", "0 mm"), ("mount[b].x", "-0.2 m"), ("mount[b].y", "0 mm"), ("mount[b].position", "0 mm"));
        Assert.Contains("three or more", Assert.Single(BalanceSheet.Of(two).Missing), StringComparison.Ordinal);
    }

    // Four mounts about the middle of the engine, level with the crank: each carries a quarter of the second order's force.
    [Fact]
    public void Mounts_carry_their_shares()
    {
        var mounted = Twin;
        foreach (var (name, x, z) in new[] { ("a", "200 mm", "0 mm"), ("b", "200 mm", "100 mm"), ("c", "-200 mm", "0 mm"), ("d", "-200 mm", "100 mm") })
        {
            mounted = mounted.Set(($"mount[{name}].x", x), ($"mount[{name}].y", "0 mm"), ($"mount[{name}].position", z));
        }

        var sheet = BalanceSheet.Of(mounted);
        var (force, roll) = (sheet.Orders[1].Force.Greatest, sheet.Orders[1].Roll);

        // The roll goes up on one side and down on the other, a quarter of a turn away from the force.
        Assert.All(sheet.Mounts, m => Assert.Equal(Math.Sqrt(Math.Pow(force / 4, 2) + Math.Pow(roll / 0.8, 2)), m.Orders[1], 0.01));
    }
}
