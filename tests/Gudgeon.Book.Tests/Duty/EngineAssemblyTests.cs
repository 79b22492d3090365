using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Tests.Duty;

public class EngineAssemblyTests
{
    public static TheoryData<string> Needed =>
    [
        "engine.cylinders", "crank.stroke", "rod.length", "cylinder.bore", "cylinder.chamberVolume", "cylinder.domeVolume", "cylinder.deckHeight", "cylinder.gasketThickness", "cylinder.gasketBore",
        "intake.filterArea", "intake.throttleArea", "intake.runnerArea", "exhaust.collectorVolume", "exhaust.outletArea", "blower.kind", "fuel.kind", "fuel.lambda",
    ];

    [Fact]
    public void The_engine_is_put_together_from_the_book()
    {
        var spec = Build(Engines.Bare)!;
        var cylinder = Assert.Single(spec.Cylinders);
        Assert.Equal((92e-3, 75.2e-3, 145e-3), (Math.Round(cylinder.Bore, 9), Math.Round(cylinder.Stroke, 9), Math.Round(cylinder.Rod, 9)));

        // 54 cm³ + 1 cm³ of dish + π/4 · 93.5² · 0.8 + π/4 · 92² · 0.3.
        Assert.Equal(55e-6 + (Math.PI / 4 * ((93.5e-3 * 93.5e-3 * 0.8e-3) + (92e-3 * 92e-3 * 0.3e-3))), cylinder.ClearanceVolume!.Value, 1e-12);
        Assert.Equal(2, cylinder.Inlet.Count);
        Assert.Equal(38e-3, cylinder.Inlet.HeadDiameter, 12);
        Assert.Null(spec.Intake.Induction);
        Assert.Equal("petrol 98", spec.Fuel.Name);
    }

    [Theory]
    [MemberData(nameof(Needed))]
    public void What_is_needed_is_listed(string path)
    {
        var view = new View(Engines.Bare.Without(path).Now());
        Assert.Null(EngineAssembly.Build(view));
        Assert.Equal(path, Wanted.Words(view.Trace.Missing).Replace("[1]", "", StringComparison.Ordinal));
    }

    [Fact]
    public void An_empty_book_lists_few_words_and_how_many_more()
    {
        var view = new View(Books.Of().Now());
        Assert.Null(EngineAssembly.Build(view));
        Assert.Matches("^([a-zA-Z.]+, ){7}[a-zA-Z.]+ and [0-9]+ more$", Wanted.Words(view.Trace.Missing));
    }

    [Fact]
    public void Several_instances_that_lack_a_field_are_one_entry()
    {
        string[] missing = ["cylinder[1].deckHeight", "cylinder[2].deckHeight", "valve[inlet.1].lift", "valve[inlet.2].lift", "valve[exhaust.1].lift", "limit squish.min"];
        Assert.Equal("cylinder.deckHeight, valve[inlet].lift, valve[exhaust.1].lift, limit squish.min", Wanted.Words(missing));
    }

    [Fact]
    public void Two_cylinders_of_their_own_are_two_cylinders()
    {
        var spec = Build(Engines.Bare.Set(("engine.cylinders", "2"), ("engine.firingIntervals", "270-450"), ("cylinder[2].bore", "92.1 mm"), ("valve[inlet.2].lift", "9.5 mm")))!;
        Assert.Equal([0.0, 270], spec.Cylinders.Select(c => c.FiringAngle));
        Assert.Equal([92e-3, 92.1e-3], spec.Cylinders.Select(c => Math.Round(c.Bore, 9)));
        Assert.NotEqual(spec.Cylinders[0].Inlet.Lift, spec.Cylinders[1].Inlet.Lift);
    }

    [Fact]
    public void A_blower_and_a_cooler_come_in_with_their_fields()
    {
        var spec = Build(Engines.Blown.Set(("blower.beltSlip", "2 %"), ("cooler.effectiveness", "0.7"), ("cooler.coolantTemperature", "12 °C"), ("cooler.flowArea", "3000 mm²")))!;
        var blower = Assert.IsType<PositiveDisplacementInduction>(spec.Intake.Induction);
        Assert.Equal((0.9, 0.02, 400e-6), (blower.DriveRatio, blower.BeltSlip, Math.Round(blower.Displacement, 12)));
        Assert.Equal((0.7, 285.15), (spec.Intake.Cooler!.Effectiveness, Math.Round(spec.Intake.Cooler.CoolantTemperature, 9)));
    }

    [Fact]
    public void A_stand_in_is_shown_and_not_missing()
    {
        var view = new View(Engines.Bare.Now());
        EngineAssembly.Build(view);
        Assert.Empty(view.Trace.Missing);
        Assert.Contains(view.Trace.Reads, r => r.Address.Path == "cylinder[1].blowByArea" && r.Fallback == "0.3 mm²");
    }

    private static EngineSpec? Build(BuildBook book) => EngineAssembly.Build(new View(book.Now()));
}
