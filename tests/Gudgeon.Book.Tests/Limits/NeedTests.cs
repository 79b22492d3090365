using Gudgeon.Book.Duty;
using Gudgeon.Book.Limits;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Limits;

public class NeedTests
{
    [Theory]
    [InlineData(0.9)]
    [InlineData(1.1)]
    public void The_power_asked_for_is_the_power_found_to_a_thousandth(double share)
    {
        var power = Engines.BlownDuty.Power.Value * share;
        var need = new NeedSolver(Engines.Blown.Now(), Engines.BlownDesk).ForPower(power);
        Assert.True(need.Reached);
        Assert.Equal(1, Line(need, "power").Needed / power, 1e-3);
        Assert.Equal(Engines.BlownDuty.Power.Value, Line(need, "power").Now);
        Assert.Equal(0.9, Line(need, "drive ratio").Now, 12);
        Assert.Equal(share > 1, Line(need, "drive ratio").Needed > 0.9);
        Assert.Equal(share > 1, Line(need, "boost").Needed > Line(need, "boost").Now);

        // The drive ratio that it names does give the power.
        var nudged = new View(Engines.Blown.Now(), Engines.BlownDesk, new Dictionary<string, double>(StringComparer.Ordinal) { ["blower.driveRatio"] = Line(need, "drive ratio").Needed });
        Assert.Equal(1, nudged.Duty()!.Power.Value / power, 1e-3);
    }

    // An injector held open for 85 % of the time must pass the whole flow.
    [Fact]
    public void The_injector_wanted_passes_the_fuel_at_85_per_cent()
    {
        var need = new NeedSolver(Engines.Blown.Now(), Engines.BlownDesk).ForPower(Engines.BlownDuty.Power.Value * 0.9);
        Assert.Equal(Line(need, "fuel flow").Needed / 0.85, Line(need, "flow of each injector held open, 1 in all").Needed, 1e-9);
        Assert.Equal(5.5e-3, Line(need, "flow of each injector held open, 1 in all").Now, 12);
    }

    [Fact]
    public void What_the_blower_cannot_give_is_not_reached_and_says_the_most()
    {
        var need = new NeedSolver(Engines.Blown.Now(), Engines.BlownDesk).ForPower(1e6);
        Assert.False(need.Reached);
        Assert.StartsWith("not reached: ", need.Note, StringComparison.Ordinal);
        Assert.True(Line(need, "power").Needed < 1e6);
    }

    [Fact]
    public void What_the_engine_gives_already_needs_nothing()
    {
        var need = new NeedSolver(Engines.Bare.Now(), Engines.BareDesk).ForPower(Engines.BareDuty.Power.Value * 0.9);
        Assert.True(need.Reached);
        Assert.Equal("the engine gives this as it stands", need.Note);
    }

    [Fact]
    public void An_engine_without_a_blower_is_asked_through_an_ideal_one()
    {
        var power = Engines.BareDuty.Power.Value * 1.2;
        var need = new NeedSolver(Engines.Bare.Now(), Engines.BareDesk).ForPower(power);
        Assert.False(need.Reached);
        Assert.Contains("ideal", need.Note, StringComparison.Ordinal);
        Assert.Equal(1, Line(need, "power").Needed / power, 1e-3);
        Assert.True(Line(need, "boost").Needed > 0);
        Assert.DoesNotContain(need.Lines, l => l.Name == "drive ratio");
    }

    [Fact]
    public void A_run_that_lacks_something_is_refused_by_name()
    {
        var e = Assert.Throws<BadInputException>(() => new NeedSolver(Engines.Bare.Without("fuel.lambda").Now(), new DutyDesk()).ForPower(30e3));
        Assert.Contains("fuel.lambda", e.Message, StringComparison.Ordinal);
        e = Assert.Throws<BadInputException>(() => new NeedSolver(Engines.Bare.Now(), Engines.BareDesk).ForQuarter(12));
        Assert.Contains("driveline.launchSpeed", e.Message, StringComparison.Ordinal);
    }

    private static NeedLine Line(Need need, string name) => need.Lines.Single(l => l.Name == name);
}
