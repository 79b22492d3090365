using Gudgeon.Book.Changes;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Book.Tests.Demo;

/// <summary>What the demo books are there to show: which parts hold, which do not, and what the engine gives.</summary>
public class DemoVerdictTests
{
    private const double Rpm = Math.PI / 30;

    [Theory]
    [InlineData("heron", "squish", "1", Verdict.Holds)]
    [InlineData("heron", "squish", "2", Verdict.TooCloseToTell)]
    [InlineData("heron", "ring-gap-top", "1", Verdict.Holds)]
    [InlineData("heron", "ring-gap-top", "2", Verdict.FallsShort)]
    [InlineData("heron", "bearing-clearance", "main.1", Verdict.Holds)]
    [InlineData("heron", "bearing-clearance", "bigEnd.1", Verdict.TooCloseToTell)]
    [InlineData("heron", "bearing-clearance", "bigEnd.2", Verdict.NotKnownYet)]
    [InlineData("heron", "compression-ratio", "1", Verdict.Holds)]
    [InlineData("heron", "piston-clearance", "2", Verdict.Holds)]
    [InlineData("heron", "coil-bind", "inlet.2.1", Verdict.Holds)]
    [InlineData("heron", "seat-load", "inlet.1.2", Verdict.Holds)]
    [InlineData("heron", "valve-float", "exhaust.1.1", Verdict.Holds)]
    [InlineData("heron", "bolt-preload", "mount", Verdict.Holds)]
    [InlineData("wren", "bearing-clearance", "main.1", Verdict.Holds)]
    [InlineData("wren", "bearing-clearance", "main.2", Verdict.NotKnownYet)]
    [InlineData("wren", "valve-float", "inlet", Verdict.Holds)]
    [InlineData("wren", "ring-gap-top", "1", Verdict.Holds)]
    [InlineData("wren", "rod-tension", "1", Verdict.Holds)]
    [InlineData("wren", "crank-end-float", "", Verdict.Holds)]
    [InlineData("heron", "rod-bolt-separation", "rod", Verdict.Holds)]
    [InlineData("heron", "bolt-stretch", "rod", Verdict.Holds)]
    [InlineData("heron", "piston-clearance-hot", "1", Verdict.TooCloseToTell)]
    [InlineData("heron", "squish-running", "2", Verdict.Holds)]
    public void The_readings_lead_to_the_verdict(string book, string check, string index, Verdict verdict) =>
        Assert.Equal(verdict, DemoBooks.Named(book).Measured(check, index).Verdict);

    [Fact]
    public void What_is_not_known_yet_names_the_reading_that_is_wanted() =>
        Assert.Equal(["bearing[bigEnd.2].housing"], DemoBooks.Heron.Measured("bearing-clearance", "bigEnd.2").Missing);

    [Fact]
    public void What_is_too_close_to_tell_names_the_reading_to_improve() =>
        Assert.Equal("cylinder[2].deckHeight", DemoBooks.Heron.Measured("squish", "2").Contributions[0].Found.Source);

    [Theory]
    [InlineData("heron", "clutch", Verdict.FallsShort)]
    [InlineData("heron", "injector-duty", Verdict.Holds)]
    [InlineData("heron", "peak-pressure", Verdict.Holds)]
    [InlineData("heron", "head-separation[head]", Verdict.Holds)]
    [InlineData("heron", "rod-buckling[1]", Verdict.Holds)]
    [InlineData("heron", "rod-fatigue[2]", Verdict.Holds)]
    [InlineData("heron", "pin-bore[1]", Verdict.Holds)]
    [InlineData("heron", "crank-journal-fillet[2]", Verdict.Holds)]
    [InlineData("heron", "blower-speed", Verdict.Holds)]
    [InlineData("heron", "surge-margin", Verdict.Holds)]
    [InlineData("heron", "knock", Verdict.Holds)]
    [InlineData("heron", "target-power", Verdict.Holds)]
    [InlineData("wren", "clutch", Verdict.Holds)]
    [InlineData("wren", "target-power", Verdict.Holds)]
    [InlineData("wren", "knock", Verdict.Holds)]
    [InlineData("wren", "head-separation[head]", Verdict.Holds)]
    public void The_engine_run_leads_to_the_verdict(string book, string finding, Verdict verdict) =>
        Assert.Equal(verdict, DemoBooks.Named(book).Findings.Single(f => f.Id == finding).Verdict);

    // What engines of this size and kind are known to do; a figure outside is a fault of the book or of the model.
    [Fact]
    public void The_blown_twin_gives_believable_figures()
    {
        var run = DemoBooks.Heron.Run;
        Assert.InRange(run.Power.Value, 155e3, 172e3);
        Assert.InRange(run.Most(f => f.Boost).Value, 0.8e5, 1.35e5);
        Assert.InRange(run.PeakPressure.Value, 80e5, 115e5);
        var atPower = run.Figures.MaxBy(p => p.Figures.Power).Figures;
        Assert.InRange(atPower.Bsfc!.Value * 3.6e9, 300, 360);
    }

    [Fact]
    public void The_twin_as_it_left_its_factory_gives_believable_figures()
    {
        var run = DemoBooks.Heron.Factory;
        Assert.InRange(run.Power.Value, 58e3, 75e3);
        Assert.InRange(run.Power.Speed, 7500 * Rpm, 9000 * Rpm);
        Assert.InRange(run.Most(f => f.KnockIntegral).Value, 0, 0.95);
    }

    [Fact]
    public void The_single_on_methanol_gains_on_the_single_on_petrol()
    {
        Assert.InRange(DemoBooks.Wren.Run.Power.Value / DemoBooks.Wren.Factory.Power.Value, 1.2, 1.6);
        Assert.InRange(DemoBooks.Wren.Run.Figures.Last().Figures.ChargeTemperature, 270, DemoBooks.Wren.Factory.Figures.Last().Figures.ChargeTemperature);
    }

    [Theory]
    [InlineData("heron", 9.4, 10.2)]
    [InlineData("wren", 11.5, 12.6)]
    public void The_quarter_mile_is_run(string book, double quickest, double slowest)
    {
        var result = StandingStart.Run(SprintAssembly.Build(DemoBooks.Named(book).View, 402.336)!);
        Assert.True(result.Finished);
        Assert.InRange(result.At(402.336)!.Time, quickest, slowest);
    }

    [Fact]
    public void The_gasket_calls_for_the_deck_height_that_was_read_before_it()
    {
        var book = DemoBooks.Heron.Book;
        var consequences = Consequences.Of(book, book.Find("copper-gasket"), new Appraiser(DemoBooks.Heron.Desk) { WithUncertainty = false });
        Assert.Contains(consequences.Measure, m => m.Path == "cylinder[2].deckHeight");
        Assert.DoesNotContain(consequences.Measure, m => m.Path == "cylinder[1].deckHeight");
    }

    [Fact]
    public void The_spacers_add_load_and_take_coil_bind_margin()
    {
        var book = DemoBooks.Heron.Book;
        var consequences = Consequences.Of(book, book.Find("spring-spacers"), new Appraiser(DemoBooks.Heron.Desk) { WithUncertainty = false });
        Assert.All(consequences.Moves.Where(m => m.Id.StartsWith("seat-load", StringComparison.Ordinal)), m => Assert.True(m.Turned && m.Shift > 0));
        Assert.All(consequences.Moves.Where(m => m.Id.StartsWith("coil-bind[", StringComparison.Ordinal)), m => Assert.Equal(-2.01e-3, m.After!.Judgement!.Value - m.Before!.Judgement!.Value, 6));
        Assert.Equal(16, consequences.Moves.Count(m => m.Id.StartsWith("seat-load", StringComparison.Ordinal) || m.Id.StartsWith("coil-bind[", StringComparison.Ordinal)));
    }
}
