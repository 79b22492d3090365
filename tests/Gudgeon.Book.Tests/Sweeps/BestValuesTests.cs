using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Sweeps;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Sweeps;

public class BestValuesTests
{
    private static readonly double[] Fast = [Engines.Speed(7500)];
    private static readonly Lazy<BestAnswer> HeronAnswer = new(() => new BestValues(DemoBooks.Heron.Book, [Range("blower.driveRatio=1.2..1.5")], Aim.Find("power")) { Holding = ["injector-duty", "peak-pressure", "blower-speed"] }.Find());

    // The best burn angle by a fine sweep: the search must come to it.
    [Fact]
    public void Finds_the_best_burn_angle_that_a_sweep_finds()
    {
        var sweep = EngineSweep.Run(Engines.Bare, [Variation.Parse("--vary", "combustion.burned50=1..25°/25")], Fast);
        var top = sweep.Best(c => c.At(0, EngineFigures.Power))!;
        var answer = new BestValues(Engines.Bare, [Range("combustion.burned50=1..25°")], Aim.Find("power")) { Speeds = Fast }.Find();
        Assert.Equal(top.Values[0].Si, answer.Fields[0].Best.Si, 1.01 * Math.PI / 180);
        Assert.True(answer.After >= top.At(0, EngineFigures.Power) * (1 - 1e-5));
        Assert.True(answer.IsBetter && answer.Closed);
        Assert.Equal(0, answer.Fields[0].Bound);
        Assert.Empty(answer.Held);
    }

    [Fact]
    public void What_it_finds_laid_in_the_book_gives_what_it_says()
    {
        FieldRange[] free = [Range("fuel.lambda=0.75..1"), Range("combustion.burned50=1..25°")];
        var answer = new BestValues(Engines.Bare, free, Aim.Find("mean-torque")) { Speeds = [Engines.Speed(5000), Engines.Speed(6500), Engines.Speed(8000)] }.Find();
        var laid = Engines.Bare.Changed("best", [.. answer.Fields.Select(f => (f.Range.Address.Path, f.Best.Written))]);
        var points = EngineRun.Run(EngineAssembly.Build(new Gudgeon.Book.Tracing.View(laid.Now()))!, [Engines.Speed(5000), Engines.Speed(6500), Engines.Speed(8000)]);
        Assert.Equal(1, SpeedMean.Of(points, EngineFigures.Torque) / answer.After, 1e-4);
        Assert.True(answer.After > answer.Before * 1.001);
    }

    [Fact]
    public void On_the_demo_it_gains_power_and_holds_the_checks()
    {
        var answer = HeronAnswer.Value;
        Assert.True(answer.Holds && answer.IsBetter);
        Assert.Equal(DemoBooks.Heron.Run.Power.Value, answer.Before, answer.Before * 1e-4);
        Assert.Equal(["blower-speed", "injector-duty", "peak-pressure"], answer.Held.Select(h => h.After.Id).Order(StringComparer.Ordinal));
        Assert.All(answer.Held, h => Assert.Equal(Verdict.Holds, h.After.Verdict));

        // The injectors are what stops it, and a little more drive would pass them.
        Assert.Equal("injector-duty", answer.Held[0].After.Id);
        Assert.InRange(answer.Held[0].After.Reserve, 1, 1.005);
        Assert.Contains(answer.Held[0], answer.Near);
        var more = KnownValue.Read(answer.Fields[0].Best.Field, Figures.Number(answer.Fields[0].Best.Si * 1.01, 5));
        var beyond = DemoBooks.Heron.Book.Changed("more", ("blower.driveRatio", more.Written));
        Assert.Equal(Verdict.FallsShort, new Appraiser(new DutyDesk()) { WithUncertainty = false }.Appraise(CheckCatalogue.Find("injector-duty"), "", beyond.Now()).Verdict);
    }

    [Fact]
    public void Laid_in_the_demo_the_findings_hold_as_it_said()
    {
        var answer = HeronAnswer.Value;
        var laid = DemoBooks.Heron.Book.Changed("best", ("blower.driveRatio", answer.Fields[0].Best.Written));
        var appraiser = new Appraiser(new DutyDesk()) { WithUncertainty = false };
        Assert.All(answer.Held, h => Assert.Equal(h.After.Reserve, appraiser.Appraise(h.After.Check, h.After.Index, laid.Now()).Reserve, 1e-4));
    }

    [Fact]
    public void Says_when_nothing_between_the_bounds_holds()
    {
        var book = Engines.Bare.Set(("piston.peakPressureLimit", "20 bar"));
        var answer = new BestValues(book, [Range("combustion.burned50=8..12°")], Aim.Find("power")) { Speeds = Fast, Holding = ["peak-pressure"] }.Find();
        Assert.False(answer.Holds);
        Assert.False(answer.IsBetter);

        // The least short is the latest burn.
        Assert.Equal(1, answer.Fields[0].Bound);
        Assert.Contains(answer.Near, h => h.After.Id == "peak-pressure");
    }

    [Fact]
    public void All_holds_what_holds_now_and_nothing_else()
    {
        var held = HeldChecks.Of(Engines.Bare.Now(), Engines.BareDesk, ["all"]).On(Engines.Bare.Now());
        var now = new Appraiser(Engines.BareDesk) { WithUncertainty = false }.Appraise(Engines.Bare.Now());
        Assert.Equal(now.Where(f => f.Verdict == Verdict.Holds).Select(f => f.Id), held.Select(f => f.Id));
        Assert.Contains(now, f => f.Verdict != Verdict.Holds);
        Assert.True(HeldChecks.Margin(held) >= 0);
        Assert.Equal(held.Min(f => f.Reserve) - 1, HeldChecks.Margin(held), 1e-12);
    }

    [Theory]
    [InlineData("sqish", "there is no check 'sqish'; the nearest is 'squish'")]
    [InlineData("peak-pressure[9]", "there is no finding 'peak-pressure[9]'; the nearest is 'peak-pressure'")]
    [InlineData("blower-speed", "the build has nothing for 'blower-speed' to look at")]
    [InlineData("clutch", "clutch is not known yet; wanted: clutch.friction")]
    public void Refuses_checks_that_cannot_be_held(string holding, string sentence)
    {
        var e = Assert.Throws<BadInputException>(() => HeldChecks.Of(Engines.Bare.Without("clutch.friction").Now(), Engines.BareDesk, [holding]));
        Assert.Contains(sentence, e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_no_field_seven_fields_one_twice_and_one_that_the_run_does_not_read()
    {
        Assert.Contains("given 0 fields, wanted 1 to 6", Refused(), StringComparison.Ordinal);
        Assert.Contains("given 7 fields, wanted 1 to 6", Refused([.. Enumerable.Repeat("fuel.lambda=0.8..1", 7)]), StringComparison.Ordinal);
        Assert.Contains("fuel.lambda is given twice", Refused("fuel.lambda=0.8..1", "fuel.lambda=0.8..0.9"), StringComparison.Ordinal);
        Assert.Contains("clutch.friction: the run does not read it", Refused("clutch.friction=0.1..0.2"), StringComparison.Ordinal);
    }

    [Fact]
    public void Stops_when_told()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => new BestValues(Engines.Bare, [Range("fuel.lambda=0.8..1")], Aim.Find("power")) { Cancellation = stop.Token }.Find());
    }

    [Fact]
    public void A_reading_that_names_no_changes_is_said_to_go_before_a_change()
    {
        var book = Engines.Bare.Read("cylinder[1].chamberVolume", "54 cm³", null);
        var answer = new BestValues(book, [Range("cylinder.chamberVolume=50..56cm³")], Aim.Find("power")) { Speeds = Fast }.Find();
        Assert.True(answer.Fields[0].Ahead);
        Assert.Equal(-1, answer.Fields[0].Bound);
    }

    private static string Refused(params string[] free) => Assert.Throws<BadInputException>(() => new BestValues(Engines.Bare, [.. free.Select(Range)], Aim.Find("power")).Find()).Message;

    private static FieldRange Range(string text) => FieldRange.Parse("--let", text);
}
