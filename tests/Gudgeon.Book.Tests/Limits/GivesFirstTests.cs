using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Limits;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Limits;

public class GivesFirstTests
{
    public static TheoryData<string> Ladders => ["blown", "bare"];

    [Fact]
    public void A_blown_engine_is_driven_harder_and_a_bare_one_faster()
    {
        Assert.Same(Blower.DriveRatio, Engines.Ladder.Varied);
        Assert.Equal(0.9, Engines.Ladder.Now, 12);
        Assert.Same(Engine.RevLimit, Engines.LadderOfSpeeds.Varied);
        Assert.Equal(Engines.Speed(8000), Engines.LadderOfSpeeds.Now, 9);
    }

    [Theory]
    [MemberData(nameof(Ladders))]
    public void Levels_rise_about_things_as_they_stand(string which)
    {
        var ladder = Named(which);
        Assert.Empty(ladder.Dropped);
        Assert.Equal(8, ladder.Levels.Count);
        Assert.Equal(ladder.Levels.Select(l => l.Value).Order(), ladder.Levels.Select(l => l.Value));
        Assert.Contains(ladder.Levels, l => Math.Abs((l.Value / ladder.Now) - 1) < 1e-12);
        Assert.Null(ladder.Target);
    }

    [Fact]
    public void The_level_as_things_stand_is_the_run_as_things_stand()
    {
        var level = Engines.Ladder.Levels.Single(l => Math.Abs((l.Value / 0.9) - 1) < 1e-12);
        Assert.Equal(Engines.BlownDuty.Power.Value, level.Power, level.Power * 1e-4);
        Assert.All(Engines.Ladder.Rungs, r => Assert.Equal(r.Finding.Reserve, r.Reserves[Engines.Ladder.Levels.ToList().IndexOf(level)], Math.Abs(r.Finding.Reserve) * 1e-3));
    }

    [Fact]
    public void More_boost_never_lowers_boost_power_or_peak_pressure()
    {
        var levels = Engines.Ladder.Levels;
        Assert.All(levels.Zip(levels.Skip(1)), p => Assert.True(p.Second.Boost > p.First.Boost && p.Second.Power > p.First.Power));
        var peak = Engines.Ladder.Rungs.Single(r => r.Finding.Id == "peak-pressure").Reserves;
        Assert.All(peak.Zip(peak.Skip(1)), p => Assert.True(p.Second < p.First));
    }

    [Theory]
    [MemberData(nameof(Ladders))]
    public void Rungs_stand_in_the_order_in_which_they_give(string which)
    {
        var rungs = Named(which).Rungs;
        Assert.NotEmpty(rungs);
        Assert.Equal(rungs.Select(Place).Order(), rungs.Select(Place));
        Assert.DoesNotContain(rungs, r => r.Finding.Check.Family == "goal");
        Assert.All(rungs, r => Assert.True(r.Reserves.Max() > r.Reserves.Min()));

        (int, double) Place(Rung r) => (r.GivesBelow ? 0 : r.Power is null ? 2 : 1, r.GivesBelow ? 0 : Named(which).At(r) ?? 0);
    }

    [Theory]
    [MemberData(nameof(Ladders))]
    public void A_part_gives_between_the_levels_on_either_side_of_1(string which)
    {
        var ladder = Named(which);
        var crossed = 0;
        foreach (var rung in ladder.Rungs)
        {
            var at = rung.Reserves.TakeWhile(r => r >= 1).Count();
            Assert.Equal(at == 0, rung.GivesBelow);
            Assert.Equal(at == rung.Reserves.Count, rung.Power is null && rung.Value is null);
            if (at > 0 && at < rung.Reserves.Count)
            {
                crossed++;
                var (low, high) = (ladder.Levels[at - 1], ladder.Levels[at]);
                Assert.InRange(rung.Value!.Value, low.Value, high.Value);
                Assert.InRange(rung.Power!.Value, Math.Min(low.Power, high.Power), Math.Max(low.Power, high.Power));
            }
        }

        Assert.NotEqual(0, crossed);
    }

    // Mean piston speed goes with the rev limit: 25 m/s at 25 / (2 · 75.2 mm) = 9973 rpm.
    [Fact]
    public void The_piston_speed_gives_where_arithmetic_says()
    {
        var rung = Engines.LadderOfSpeeds.Rungs.Single(r => r.Finding.Id == "piston-speed");
        Assert.Equal(25 / (2 * 75.2e-3) * 2 * Math.PI, rung.Value!.Value, 0.5);
        Assert.All(Engines.LadderOfSpeeds.Levels.Zip(rung.Reserves), p => Assert.Equal(25 / (2 * 75.2e-3 * p.First.Value / (2 * Math.PI)), p.Second, 1e-9));
    }

    [Fact]
    public void An_engine_that_cannot_be_run_says_what_it_wants() =>
        Assert.Equal("the engine cannot be run yet; wanted: fuel.lambda", Assert.Throws<BadInputException>(() => GivesFirst.Climb(Engines.Bare.Without("fuel.lambda").Now(), new DutyDesk())).Message);

    private static Ladder Named(string which) => which == "blown" ? Engines.Ladder : Engines.LadderOfSpeeds;
}
