using Gudgeon.Book.Bottom;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Crank;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Book.Tests.Bottom;

/// <summary>Rods, pins and crank of the invented twin against its loads over the cycle, each worked once more by hand.</summary>
public class RodSheetTests
{
    private static readonly Lazy<LoadsSheet> Loads = new(() => LoadsSheet.Of(DemoBooks.Heron.View));
    private static readonly Lazy<RodSheet> Rods = new(() => RodSheet.Of(DemoBooks.Heron.View));
    private static readonly Lazy<PistonSheet> Pistons = new(() => PistonSheet.Of(DemoBooks.Heron.View));

    private static double Known(string path) => DemoBooks.Heron.Now.Find(FieldCatalogue.Address(path))!.Value.Si;

    private static Finding Found(string id) => DemoBooks.Heron.Findings.Single(f => f.Id == id);

    // 168 mm² as given; radii of gyration of the I of 23 × 15.5 × 3.6 mm.
    [Fact]
    public void The_push_of_the_run_stands_against_buckling()
    {
        var section = RodSection.OfI(23e-3, 15.5e-3, 3.6e-3, 3.6e-3);
        var push = Loads.Value.Shown!.Throws[0].Rod.Max();
        var swing = RodSection.Johnson(168e-6, section.SwingGyration, 128e-3, 1, 800e6).Load;
        var across = RodSection.Johnson(168e-6, section.AcrossGyration, 128e-3, 4, 800e6).Load;
        var finding = Found("rod-buckling[1]");
        Assert.Equal(push, finding.Judgement!.Value, push * 1e-9);
        Assert.Equal(Math.Min(swing, across) / 2, finding.Judgement.Upper!.Value, 1e-3);
        Assert.Equal("at 9700 rpm", finding.Judgement.Remark);
    }

    // Without whip the swing would be that between push and pull; the whip widens it by no more than its own greatest.
    [Fact]
    public void The_whip_widens_the_swing_of_the_stress()
    {
        var rod = Rods.Value.Rods[0];
        var push = Loads.Value.Shown!.Throws[0].Rod.Max() / 168e-6;
        var plain = (push + (rod.Pull!.Value / 168e-6)) / 2;
        var whip = RodSection.Whip(168e-6, 2 * 168e-6 * Math.Pow(RodSection.OfI(23e-3, 15.5e-3, 3.6e-3, 3.6e-3).SwingGyration, 2) / 23e-3, 128e-3, 35.75e-3, 9700 * Math.PI / 30).Stress;
        Assert.InRange(rod.Swing!.Value.Amplitude, plain, plain + whip);
        Assert.Equal(330e6 / rod.Swing.Value.Amplitude, Found("rod-fatigue[1]").Judgement!.Value, 1e-9);
        Assert.True(rod.Swing.Value.Mean < 0);
    }

    [Fact]
    public void The_pin_bears_gas_less_the_pistons_inertia()
    {
        var push = Loads.Value.Shown!.Throws[1].PinAlong.Max();
        Assert.Equal(GudgeonPin.Stress(push, 22e-3, 11e-3, 58e-3, 26e-3, 24e-3).RodPressure, Found("pin-small-end[2]").Judgement!.Value, 1);
        Assert.Equal(GudgeonPin.Ovality(push, 22e-3, 11e-3, 58e-3).Growth, Found("pin-ovality[2]").Judgement!.Value, 1e-12);
        Assert.Equal(push, Pistons.Value.Pistons[1].Pin[0].Value!.Value, 1e-3);
        Assert.Equal(Loads.Value.Shown.Throws[1].Side.Max(Math.Abs) / (42e-3 * 89.421e-3), Found("skirt-pressure[2]").Judgement!.Value, 2e3);
    }

    // Mains at -36 and 54 mm, webs 17 mm beside a pin of 22 mm: the web on the long side is bent by 0.4 × (54 - 19.5) mm.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void The_fillets_swing_with_the_load_along_the_throw_and_the_torque_that_passes(int place)
    {
        var loads = Loads.Value.Shown!;
        static double Half(IEnumerable<double> course) => course.ToList() is var all ? (all.Max() - all.Min()) / 2 : 0;
        var radial = Half(loads.Throws[place].Radial);
        var torque = place == 0 ? Half(loads.Throws[0].Torque) : Half(loads.Throws[0].Torque.Zip(loads.Throws[1].Torque, (a, b) => a + b));
        var web = CrankFillets.Web(radial * 0.4 * 34.5e-3, radial * 0.4, 86e-3, 17e-3);
        var pin = Known($"bearing[bigEnd.{place + 1}].journal");
        const double journal = 44.983e-3;
        var overlap = CrankFillets.Overlap(pin, journal, Known("crank.stroke") / 2);
        var factors = CrankFillets.Journal(pin, overlap, 17e-3, 86e-3, 3e-3);
        var stress = CrankFatigue.Equivalent((factors.Bending * web.Bending) + (factors.Radial * web.Radial), factors.Torsion * CrankFillets.Torsion(torque, journal));
        var finding = Found($"crank-journal-fillet[{place + 1}]");
        Assert.Equal(stress, finding.Judgement!.Value, stress * 1e-9);
        Assert.Equal(CrankFatigue.Strength(journal, 3e-3, 1000e6, 1.05) * Roughness.FatigueFactor(2.5e-6, 1000e6) * 1.4 / 1.15, finding.Judgement.Upper!.Value, 1);
        var inPin = CrankFillets.Pin(pin, overlap, 17e-3, 86e-3, 3e-3);
        Assert.Equal(CrankFatigue.Equivalent(inPin.Bending * web.Bending, inPin.Torsion * CrankFillets.Torsion(torque, pin)), Found($"crank-pin-fillet[{place + 1}]").Judgement!.Value, 1);
    }

    [Fact]
    public void What_is_wanted_is_said()
    {
        Assert.Empty(Rods.Value.Missing);
        Assert.Empty(Pistons.Value.Missing);
        var bare = RodSheet.Of(new View(DemoBooks.Heron.Book.Without("crank.webWidth").Now(), new DutyDesk()));
        Assert.Contains("crank.webWidth", bare.Missing, StringComparison.Ordinal);
        Assert.Null(bare.Throws[0].WebWidth);
        Assert.Contains("bearing.position", Assert.Single(new Appraiser(DemoBooks.Heron.Desk) { WithUncertainty = false }.Appraise(CheckCatalogue.Find("crank-pin-fillet"), "1", DemoBooks.Heron.Book.Without("bearing[main.1].position").Now()).Missing), StringComparison.Ordinal);
    }

    // A fillet outside the rule's ranges is not known, and the sentence says why.
    [Fact]
    public void A_crank_outside_the_rule_is_not_known()
    {
        var sharp = DemoBooks.Heron.Book.Set(("crank.pinFillet", "1 mm"));
        var finding = new Appraiser(DemoBooks.Heron.Desk) { WithUncertainty = false }.Appraise(CheckCatalogue.Find("crank-pin-fillet"), "1", sharp.Now());
        Assert.Equal(Verdict.NotKnownYet, finding.Verdict);
        Assert.Contains("fillet radius", finding.Missing[0], StringComparison.Ordinal);
        Assert.False(RodSheet.Of(new View(sharp.Now(), DemoBooks.Heron.Desk)).Throws[0].Facts.Single(f => f.Name == "pin fillet, alternating stress").Known);
    }

    [Fact]
    public void The_squish_comes_down_by_what_takes_from_it()
    {
        var squish = Pistons.Value.Pistons[0].Squish;
        Assert.Equal(Found("squish-running[1]").Judgement!.Value, squish.Left!.Value, 1e-12);
        Assert.Equal(squish.Cold!.Value - squish.Takes.Sum(t => t.Takes!.Value), squish.Left.Value, 1e-12);
    }
}
