using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Tests.Duty;

public class DutyDeskTests
{
    [Fact]
    public void A_run_goes_from_the_lowest_speed_to_the_rev_limit()
    {
        var speeds = Engines.BareDuty.Points.Select(p => p.Speed).ToList();
        Assert.Equal(DutyDesk.Speeds, speeds.Count);
        Assert.Equal(Engines.Speed(5000), speeds[0], 1e-9);
        Assert.Equal(Engines.Speed(8000), speeds[^1], 1e-9);
        Assert.Equal(speeds.Order(), speeds);
        Assert.All(Engines.BareDuty.Points, p => Assert.True(p.Converged));
    }

    [Fact]
    public void A_run_is_made_again_only_when_something_that_it_read_has_changed()
    {
        Assert.Same(Engines.BareDuty, Engines.BareDuty);
        var runs = Engines.BareDesk.Runs;
        Assert.Same(Engines.BareDuty, Duty(Engines.Bare.Set(("piston.mass", "380 g"), ("target.power", "30 kW"))));
        Assert.Equal(runs, Engines.BareDesk.Runs);
    }

    [Fact]
    public void An_engine_that_lacks_something_is_not_run_and_says_what()
    {
        var (desk, book) = (new DutyDesk(), Engines.Bare.Without("fuel.lambda"));
        var view = new View(book.Now(), desk);
        Assert.Null(view.Duty());
        Assert.Equal(["fuel.lambda"], view.Trace.Missing);
        Assert.Equal(0, desk.Runs);
        Assert.Null(new View(book.Now()).Duty());
    }

    [Fact]
    public void A_nudged_run_that_was_stopped_is_made_when_it_is_asked_for_again()
    {
        var desk = new DutyDesk();
        var now = Engines.Bare.Now();
        Assert.NotNull(new View(now, desk).Duty());
        View Nudged() => new(now, desk, new Dictionary<string, double>(StringComparer.Ordinal) { ["fuel.lambda"] = 0.9 });
        desk.Cancellation = new CancellationToken(canceled: true);
        Assert.ThrowsAny<OperationCanceledException>(() => Nudged().Duty());
        desk.Cancellation = CancellationToken.None;
        Assert.NotNull(Nudged().Duty());
    }

    [Fact]
    public void What_the_run_read_is_part_of_the_trace_but_not_read_directly()
    {
        var view = new View(Engines.Bare.Now(), Engines.BareDesk);
        view.Duty();
        view.Amount(Gudgeon.Book.Fields.Crank.Stroke);
        Assert.Contains("cylinder.bore", view.Trace.DutySources);
        Assert.Equal(["crank.stroke"], view.Trace.Direct.Select(r => r.Address.Path));
    }

    [Fact]
    public void The_figures_are_those_of_the_points()
    {
        var duty = Engines.BareDuty;
        Assert.Equal(duty.Points.Max(p => p.Figures!.Power), duty.Power.Value);
        Assert.Equal(duty.Points.MaxBy(p => p.Figures!.Torque)!.Speed, duty.Torque.Speed);
        Assert.Contains(duty.PeakPressure.Speed, duty.TellingSpeeds);

        // Power is torque times speed.
        Assert.All(duty.Figures, p => Assert.Equal(p.Figures.Power, p.Figures.Torque * p.Speed, p.Figures.Power * 1e-9));
    }

    // What engines of this kind are known to do: 70 to 115 N·m a litre at best, unblown.
    [Fact]
    public void The_single_gives_believable_figures()
    {
        Assert.InRange(Engines.BareDuty.Torque.Value / 0.4999, 70, 115);
        Assert.InRange(Engines.BlownDuty.Torque.Value / Engines.BareDuty.Torque.Value, 1.1, 2);
    }

    private static EngineDuty? Duty(BuildBook book) => new View(book.Now(), Engines.BareDesk).Duty();
}
