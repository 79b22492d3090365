using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>The seal of the head joint that <see cref="JointCheckTests"/> works by hand, and an O-ring of 3 mm.</summary>
public class SealCheckTests
{
    // From cold, as each finding here is worked: a desk that others use may start its run from one of theirs.
    private static readonly EngineDuty Duty = new View(Engines.Bare.Now(), new DutyDesk()).Duty()!;

    private static readonly double Preload = Tightening.Preload(44, 10e-3, 1.5e-3, 0.12, 0.12, 13.8e-3);

    // Line load: 4 bolts at 2/3 of the preload less embedding, less what the gas takes off the parts, over π · 94 mm.
    private static double Left()
    {
        var bolt = BoltResilience.OfBolt(10e-3, 1.5e-3, 128e-3, 10e-3, 0, 205e9, 72e9).Total;
        var parts = ClampedParts.Resilience(17e-3, 10.6e-3, 26e-3, 128e-3, 72e9).Resilience;
        var least = (Preload * 2 / 3) - (13e-6 / (bolt + parts));
        var gas = (Duty.PeakPressure.Value - 101325) * Math.PI / 4 * 94e-3 * 94e-3;
        return ((4 * least) - ((1 - (0.5 * parts / (bolt + parts))) * gas)) / (Math.PI * 94e-3);
    }

    private static Finding Head(string check, params (string, string)[] more) => Appraisal.Of(Engines.Bare.Set(more), check, "head");

    private static Finding Ring(string check, params (string, string)[] more) => Appraisal.Of(Books.Of([("joint[cover].cord", "3 mm"), .. more]), check, "cover");

    [Fact]
    public void The_line_load_left_is_held_to_the_makers()
    {
        Assert.InRange(Left(), 20e3, 200e3);
        Head("gasket-line-load", ("joint[head].lineLoadWanted", "20 N/mm")).Is(Left(), Left() / 20e3, Verdict.Holds);
        Head("gasket-line-load", ("joint[head].lineLoadWanted", "400 N/mm")).Is(Left(), Left() / 400e3, Verdict.FallsShort);
    }

    [Fact]
    public void Without_the_maker_it_is_not_known() => Assert.Equal(["joint[head].lineLoadWanted"], Head("gasket-line-load").Missing);

    // 4.75 times the peak pressure over a ring 2 mm wide; the maker's word goes before it.
    [Fact]
    public void Without_the_maker_the_table_of_gaskets_gives_it()
    {
        var wanted = 4.75 * (Duty.PeakPressure.Value - 101325) * 2e-3;
        var finding = Head("gasket-line-load", ("joint[head].gasket", "soft copper"), ("joint[head].ringWidth", "2 mm"));
        Assert.Equal(wanted, finding.Judgement!.Lower!.Value, wanted * 1e-9);
        Assert.Contains("vessel flanges", finding.Judgement.LimitSource, StringComparison.Ordinal);
        Assert.Equal(["joint[head].ringWidth"], Head("gasket-line-load", ("joint[head].gasket", "soft copper")).Missing);
        Assert.Equal(20e3, Head("gasket-line-load", ("joint[head].gasket", "soft copper"), ("joint[head].lineLoadWanted", "20 N/mm")).Judgement!.Lower!.Value, 1e-6);
    }

    // 4 bolts at 4/3 of the preload on a ring from 92 to 96 mm.
    [Theory]
    [InlineData("300 MPa", Verdict.Holds)]
    [InlineData("150 MPa", Verdict.FallsShort)]
    public void The_ring_is_pressed_hardest_when_tightened_most(string most, Verdict verdict)
    {
        var pressed = 4 * Preload * 4 / 3 / (Math.PI / 4 * ((96e-3 * 96e-3) - (92e-3 * 92e-3)));
        var finding = Head("gasket-crush", ("joint[head].ringWidth", "2 mm"), ("joint[head].ringStressMost", most));
        Assert.Equal(pressed, finding.Judgement!.Value, pressed * 1e-9);
        Assert.Equal(verdict, finding.Verdict);
    }

    [Fact]
    public void A_seal_of_which_nothing_is_known_is_not_asked_about()
    {
        var bare = new View(Engines.Bare.Now());
        Assert.Empty(CheckCatalogue.Find("gasket-crush").Instances(bare));
        Assert.Empty(CheckCatalogue.Find("o-ring-squeeze").Instances(bare));
        Assert.Empty(CheckCatalogue.Find("o-ring-fill").Instances(new(Books.Of(("joint[cover].cord", "3 mm")).Now())));
    }

    // H10: 0.7 mm of 3 mm is 23.3 %.
    [Theory]
    [InlineData("2.3 mm", 0.7 / 3, Verdict.Holds)]
    [InlineData("2.7 mm", 0.3 / 3, Verdict.FallsShort)]
    [InlineData("1.9 mm", 1.1 / 3, Verdict.FallsShort)]
    public void An_O_ring_is_squeezed_neither_too_little_nor_too_much(string depth, double squeeze, Verdict verdict)
    {
        var finding = Ring("o-ring-squeeze", ("joint[cover].grooveDepth", depth));
        Assert.Equal(squeeze, finding.Judgement!.Value, 1e-9);
        Assert.Equal(verdict, finding.Verdict);
    }

    [Fact]
    public void A_squeeze_without_its_groove_is_not_known() => Assert.Equal(["joint[cover].grooveDepth"], Ring("o-ring-squeeze").Missing);

    // π / 4 · 3² over 2.3 mm times the width.
    [Theory]
    [InlineData("4 mm", Verdict.Holds)]
    [InlineData("3.5 mm", Verdict.FallsShort)]
    public void An_O_ring_needs_room_to_swell(string width, Verdict verdict)
    {
        var finding = Ring("o-ring-fill", ("joint[cover].grooveDepth", "2.3 mm"), ("joint[cover].grooveWidth", width));
        Assert.Equal(Math.PI / 4 * 9 / (2.3 * double.Parse(width.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)), finding.Judgement!.Value, 1e-9);
        Assert.Equal(verdict, finding.Verdict);
    }
}
