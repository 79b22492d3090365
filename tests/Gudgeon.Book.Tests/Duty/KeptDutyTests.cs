using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Duty;

public class KeptDutyTests
{
    public static TheoryData<string> Paths => [.. FieldCatalogue.All.Where(f => f.Kind == FieldKind.Amount).Select(f => f.Path)];

    /// <summary>One speed region, so that a run is short.</summary>
    private static BuildBook Wave { get; } = Engines.Bare.Set(
        ("engine.depth", "wave"),
        ("engine.runFrom", "6500 rpm"),
        ("engine.revLimit", "7000 rpm"),
        ("engine.cellLength", "40 mm"),
        ("intake.runner.length", "240 mm"),
        ("intake.runner.diameter", "46 mm"),
        ("exhaust.primary.length", "700 mm"),
        ("exhaust.primary.diameter", "42 mm"));

    [Theory]
    [MemberData(nameof(Paths))]
    public void An_amount_that_is_held_reads_back_to_the_last_digit(string path)
    {
        var field = FieldCatalogue.Find(path)!;
        var value = KnownValue.Read(field, field.Print((field.Plausible.Low + (2 * field.Plausible.High)) / 3));
        Assert.Equal(value.Si, HeldValue.Of(value, null).As(field).Si);
    }

    [Fact]
    public void A_table_that_is_held_reads_back()
    {
        var value = KnownValue.Read(InletRunner.Shape, "0 mm at 50 mm; 120.25 mm at 46 mm");
        Assert.Equal(value.Content, HeldValue.Of(value, null).As(InletRunner.Shape).Content);
    }

    [Fact]
    public void A_wave_run_is_made_once_and_found_again_by_another_desk_with_the_same_figures()
    {
        var shelf = new Shelf();
        var (made, first) = Duty(Wave, shelf);
        Assert.Equal((1, 1), (first.Runs, shelf.Content.Count));
        var (found, second) = Duty(Wave.Set(("piston.mass", "380 g")), shelf);
        Assert.Equal(0, second.Runs);
        Assert.Equal(made.Points.Select(p => p.Speed), found.Points.Select(p => p.Speed));
        Assert.Equal(made.Figures.Select(f => (f.Figures.Torque, f.Figures.Cylinders[0].KnockIntegral, f.Figures.Bsfc)), found.Figures.Select(f => (f.Figures.Torque, f.Figures.Cylinders[0].KnockIntegral, f.Figures.Bsfc)));
        Assert.Equal((Depth.Wave, made.Power, made.PeakPressure), (found.Depth, found.Power, found.PeakPressure));
        Assert.Equal(made.TellingSpeeds, found.TellingSpeeds);
    }

    [Fact]
    public void Another_value_is_another_run_and_so_is_a_nudged_one()
    {
        var shelf = new Shelf();
        Duty(Wave, shelf);
        Assert.Equal(1, Duty(Wave.Set(("intake.runner.length", "250 mm")), shelf).Desk.Runs);

        // The run without the nudge is found, the nudged one is made, and is found the next time.
        var nudge = new Dictionary<string, double>(StringComparer.Ordinal) { ["intake.runner.length"] = 0.241 };
        Assert.Equal([1, 0], Enumerable.Range(0, 2).Select(_ =>
        {
            var desk = new DutyDesk { Shelf = shelf };
            Assert.NotNull(new View(Wave.Now(), desk, nudge, slightly: true).Duty());
            return desk.Runs;
        }));
        Assert.Equal([false, false, true], shelf.Nudged);
    }

    [Fact]
    public void A_lumped_run_is_not_kept()
    {
        var shelf = new Shelf();
        Assert.Equal(Depth.Lumped, Duty(Wave.Set(("engine.depth", "lumped")), shelf).Duty.Depth);
        Assert.Empty(shelf.Content);
    }

    [Fact]
    public void A_run_that_no_longer_holds_is_told_with_what_has_changed()
    {
        var shelf = new Shelf();
        var (made, _) = Duty(Wave, shelf);
        Assert.Null(StaleDuty.Of(shelf, Wave.Now()));
        Assert.Null(StaleDuty.Of(shelf, Wave.Set(("piston.mass", "380 g")).Now()));
        var stale = StaleDuty.Of(shelf, Wave.Set(("intake.runner.length", "250 mm"), ("intake.runner.roughness", "20 µm")).Now())!;
        Assert.Equal("computed before intake.runner[1].length, intake.runner[1].roughness changed", stale.Sentence);
        Assert.Equal(made.Power, stale.Duty.Power);
        Assert.Equal(0.24, stale.Duty.Spec.Pipework!.Inlets[0].Pipe.Tapers[0].Length, 9);
        Assert.Null(StaleDuty.Of(shelf, Wave.Set(("engine.depth", "lumped")).Now()));
        Assert.Null(StaleDuty.Of(null, Wave.Now()));
    }

    [Fact]
    public void What_another_program_kept_is_made_again()
    {
        var shelf = new Shelf { Answer = """{ "Model": "0", "Points": [{}] }""" };
        Assert.Equal(1, Duty(Wave, shelf).Desk.Runs);
        Assert.Null(StaleDuty.Of(shelf, Wave.Now()));
    }

    private static (EngineDuty Duty, DutyDesk Desk) Duty(BuildBook book, IDutyShelf shelf)
    {
        var desk = new DutyDesk { Shelf = shelf };
        var view = new View(book.Now(), desk);
        var duty = view.Duty();
        Assert.True(duty is not null, string.Join(", ", view.Trace.Missing));
        return (duty, desk);
    }

    private sealed class Shelf : IDutyShelf
    {
        public Dictionary<string, string> Content { get; } = new(StringComparer.Ordinal);

        public List<bool> Nudged { get; } = [];

        public string? Answer { get; init; }

        private string? Last { get; set; }

        public string? Find(string key) => Answer ?? Content.GetValueOrDefault(key);

        public string? Latest() => Answer ?? Last;

        public void Keep(string key, bool nudged, string content)
        {
            Content[key] = content;
            Nudged.Add(nudged);
            Last = nudged ? Last : content;
        }
    }
}
