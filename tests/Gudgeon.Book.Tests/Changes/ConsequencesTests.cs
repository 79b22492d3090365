using Gudgeon.Book.Build;
using Gudgeon.Book.Changes;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;

namespace Gudgeon.Book.Tests.Changes;

public class ConsequencesTests
{
    private static readonly BuildBook Twin = Books.Of(
            ("engine.cylinders", "2"),
            ("crank.stroke", "71.5 mm"),
            ("cylinder.bore", "89.5 mm"),
            ("cylinder.chamberVolume", "37.2 cm³"),
            ("cylinder.domeVolume", "0 cm³"),
            ("cylinder.deckHeight", "0.35 mm"),
            ("cylinder.gasketThickness", "0.7 mm"),
            ("cylinder.gasketBore", "91 mm"),
            ("cylinder.ratioMin", "10.9"),
            ("cylinder.ratioMax", "11.5"),
            ("valve[inlet].lift", "10 mm"),
            ("spring[inlet].loadTable", "286 N at 39 mm; 604 N at 29 mm"),
            ("spring[inlet].installedHeight", "39 mm"),
            ("spring[inlet].solidHeight", "24.6 mm"),
            ("spring[inlet].seatLoadMin", "300 N"),
            ("spring[inlet].openLoadMax", "700 N"))
        .Changed("gasket", ("cylinder.gasketThickness", "0.6 mm"))
        .Changed("spacers", ("spring[inlet].spacer", "2 mm"))
        .Read("cylinder[1].deckHeight", "0.34 mm ± 0.02 mm", ["gasket", "spacers"])
        .Read("cylinder[2].deckHeight", "0.36 mm ± 0.02 mm", [])
        .Read("crank.stroke", "71.49 mm ± 0.02 mm", [])
        .Read("spring[inlet].installedHeight", "38.9 mm ± 0.06 mm", ["gasket"]);

    [Fact]
    public void A_spacer_moves_what_it_must_and_leaves_the_rest()
    {
        var found = Of(Twin, "spacers");
        Assert.Equal(["coil-bind[inlet]", "open-load[inlet]", "seat-load[inlet]"], found.Moves.Select(m => m.Id).Order(StringComparer.Ordinal));

        // 286 N at 39 mm at 31.8 N/mm: 289.18 N at 38.9 mm falls short of 300 N; two more millimetres make 352.78 N.
        var seat = found.Moves.Single(m => m.Id == "seat-load[inlet]");
        Assert.Same(seat, found.Moves[0]);
        Assert.True(seat.Turned);
        Assert.Equal(Verdict.FallsShort, seat.Before!.Verdict);
        Assert.Equal(289.18, seat.Before.Judgement!.Value, 1e-6);
        Assert.Equal(352.78, seat.After!.Judgement!.Value, 1e-6);
        Assert.Equal(63.6 / 300, seat.Shift, 1e-9);
        Assert.All(found.Moves.Skip(1), m => Assert.False(m.Turned));
        Assert.Equal(found.Moves.Skip(1).OrderByDescending(m => Math.Abs(m.Shift)), found.Moves.Skip(1));
    }

    [Fact]
    public void Moves_and_what_stays_make_up_all_findings()
    {
        var found = Of(Twin, "spacers");
        Assert.Equal(new Appraiser(new DutyDesk()).Appraise(Twin.Now()).Count, found.Moves.Count + found.Still);
    }

    // The deck of cylinder 2 and the stroke were read before the gasket and stand in its findings, but the gasket leaves the
    // crank alone; the deck of cylinder 1 was read with it in place, the spring has nothing to do with it. The gasket is new.
    [Fact]
    public void What_was_read_before_the_change_is_measured_again()
    {
        var found = Of(Twin, "gasket");
        Assert.Equal(["cylinder.gasketThickness", "cylinder[2].deckHeight"], found.Measure.Select(m => m.Path));
        Assert.Equal(["crank.stroke"], found.RestsOn);
        Assert.Equal(["new with the change and not measured yet", "read before the change"], found.Measure.Select(m => m.Reason));
    }

    [Fact]
    public void Nothing_is_measured_again_once_it_was_read_with_the_change()
    {
        var read = Twin
            .Read("cylinder[2].deckHeight", "0.36 mm ± 0.02 mm", ["gasket"])
            .Read("crank.stroke", "71.49 mm ± 0.02 mm", ["gasket"])
            .Read("cylinder.gasketThickness", "0.61 mm ± 0.01 mm", ["gasket"]);
        Assert.Empty(Of(read, "gasket").Measure);
        Assert.Empty(Of(read, "gasket").RestsOn);
    }

    [Fact]
    public void A_change_is_compared_the_same_whether_it_is_on_or_off()
    {
        var (on, off) = (Of(Twin, "spacers"), Of(Twin.Switched("spacers", false), "spacers"));
        Assert.Equal(on.Moves.Select(m => (m.Id, m.Shift)), off.Moves.Select(m => (m.Id, m.Shift)));
        Assert.Equal(on.Still, off.Still);
    }

    [Fact]
    public void A_change_of_nothing_moves_nothing()
    {
        var same = Twin.Changed("nothing", ("cylinder.chamberVolume", "37.2 cm³"));
        Assert.Empty(Of(same, "nothing").Moves);
    }

    [Fact]
    public void A_part_that_comes_with_the_change_moves_from_nothing()
    {
        var blower = Twin.Changed("blower", ("blower.kind", "positive displacement"));
        var move = Of(blower, "blower").Moves.Single(m => m.Id == "blower-speed");
        Assert.Null(move.Before);
        Assert.Equal(Verdict.NotKnownYet, move.After!.Verdict);
        Assert.True(double.IsNaN(move.Shift));
    }

    // A richer mixture moves pressures through the run; nobody has to measure the stroke again for it.
    [Fact]
    public void What_moves_through_the_run_alone_calls_for_no_reading()
    {
        var book = Engines.Bare.Changed("rich", ("fuel.lambda", "0.82")).Read("crank.stroke", "75.21 mm ± 0.02 mm", []);
        var found = Consequences.Of(book, book.Find("rich"), new Appraiser(Engines.BareDesk) { WithUncertainty = false });
        Assert.Contains(found.Moves, m => m.Id == "peak-pressure");
        Assert.Contains(found.Moves, m => m.Id == "injector-duty" && m.Shift < 0);
        Assert.DoesNotContain(found.Moves, m => m.Id is "piston-speed" or "squish[1]");
        Assert.Equal(["fuel.lambda"], found.Measure.Select(m => m.Path));
    }

    private static Consequences Of(BuildBook book, string change) => Consequences.Of(book, book.Find(change), new Appraiser(new DutyDesk()));
}
