using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Limits;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Limits;

/// <summary>What is said of a turbocharged engine: its boost is set at the wastegate, and nothing asks for a drive.</summary>
public class TurboLimitTests
{
    private static readonly Lazy<Ladder> Climbed = new(() => GivesFirst.Climb(Engines.Turbo.Now(), Engines.TurboDesk));

    private static BuildBook Shut { get; } = Engines.Turbo.Set(("turbine.wastegate.openingPressure", "2.4 bar"));

    [Fact]
    public void The_ladder_opens_the_wastegate_later_and_later()
    {
        var ladder = Climbed.Value;
        Assert.Same(Wastegate.OpeningPressure, ladder.Varied);
        Assert.Equal(0.3e5, ladder.Now, 6);
        Assert.True(ladder.ByPower);
        Assert.Empty(ladder.Dropped);
        Assert.Equal(8, ladder.Levels.Count);
        Assert.All(ladder.Levels.Zip(ladder.Levels.Skip(1)), p => Assert.True(p.Second.Boost > p.First.Boost && p.Second.Power > p.First.Power));
        Assert.Contains(ladder.Rungs, r => r.Finding.Id == "turbo-speed");
        Assert.Contains(ladder.Rungs, r => r.Finding.Id == "surge-margin");
        Assert.Matches(@"^0\.3 bar gives [0-9.]+ kW at 0\.3[0-9] bar", ladder.Words(ladder.Levels[4], imperial: false));
        Assert.All(ladder.Rungs, r => Assert.DoesNotContain("drive", ladder.Words(r, imperial: false), StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void A_wastegate_that_never_opens_leaves_the_rev_limit() => Assert.Same(Engine.RevLimit, GivesFirst.Climb(Shut.Now(), new DutyDesk()).Varied);

    [Fact]
    public void A_power_is_had_by_opening_the_wastegate_later()
    {
        var power = Engines.TurboDuty.Power.Value * 1.04;
        var need = new NeedSolver(Engines.Turbo.Now(), Engines.TurboDesk).ForPower(power);
        Assert.True(need.Reached, need.Note);
        Assert.Equal("found by running the engine model with other opening pressures of the wastegate", need.Note.Split(';')[0]);
        var opening = Line(need, "opening pressure of the wastegate");
        Assert.True(opening.Needed > opening.Now);
        Assert.DoesNotContain(need.Lines, l => l.Name.Contains("drive", StringComparison.Ordinal));
        Assert.True(Line(need, "greatest speed of the turbocharger").Needed > Engines.TurboDuty.Most(f => f.Blower!.Speed).Value);
        var nudged = new View(Engines.Turbo.Now(), Engines.TurboDesk, new Dictionary<string, double>(StringComparer.Ordinal) { ["turbine.wastegate.openingPressure"] = opening.Needed });
        Assert.Equal(1, nudged.Duty()!.Power.Value / power, 1e-3);
    }

    [Fact]
    public void What_the_turbine_cannot_give_is_not_reached()
    {
        var need = new NeedSolver(Engines.Turbo.Now(), Engines.TurboDesk).ForPower(1e6);
        Assert.False(need.Reached);
        Assert.Matches("^not reached: with the wastegate opening at [0-9.]+ bar this turbocharger gives ", need.Note);
        var bare = new NeedSolver(Engines.Turbo.Without("turbine.wastegate.area").Now(), new DutyDesk()).ForPower(1e6);
        Assert.False(bare.Reached);
        Assert.StartsWith("not reached: this turbocharger has no wastegate to set its boost by", bare.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_checks_are_those_of_a_turbocharger()
    {
        var findings = new Appraiser(Engines.TurboDesk) { WithUncertainty = false }.Appraise(Engines.Turbo.Now());
        Assert.DoesNotContain(findings, f => f.Id == "blower-speed");
        Assert.DoesNotContain(findings, f => f.Trace.Missing.Any(m => m.StartsWith("blower.", StringComparison.Ordinal)));
        var speed = findings.Single(f => f.Id == "turbo-speed");
        var most = Engines.TurboDuty.Most(f => f.Blower!.Speed).Value;
        Assert.Equal(most, speed.Judgement!.Value);

        // The quickest line of the map is 66,000 rpm.
        Assert.Equal(Engines.Speed(66000) / most, speed.Reserve, 1e-6);
        Assert.True(findings.Single(f => f.Id == "surge-margin").Reserve > 0);
        var given = new Appraiser(Engines.TurboDesk) { WithUncertainty = false }.Appraise(CheckCatalogue.Find("turbo-speed"), "", Engines.Turbo.Set(("blower.maxSpeed", "20000 rpm")).Now());
        Assert.Equal((Verdict.FallsShort, Engines.Speed(20000) / most), (given.Verdict, Math.Round(given.Reserve / (Engines.Speed(20000) / most), 6) * (Engines.Speed(20000) / most)));
    }

    private static NeedLine Line(Need need, string name) => need.Lines.Single(l => l.Name == name);
}
