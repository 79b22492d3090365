using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Tests.Duty;

public class BurnAssemblyTests
{
    private static readonly (string, string)[] Placed = [("combustion.placing", "for best torque")];

    /// <summary>Fuel that is allowed little of a knock integral, which at the angle given it passes.</summary>
    private static BuildBook Knocking { get; } = Engines.Blown.Set(Placed).Set(("fuel.kind", "petrol 98"), ("engine.runFrom", "4000 rpm"), ("combustion.knockLimit", "0.6"), ("piston.peakPressureLimit", "80 bar"));

    private static BuildBook Piped { get; } = Engines.Bare.Set(("intake.runner.length", "240 mm"), ("intake.runner.diameter", "46 mm"), ("exhaust.primary.length", "700 mm"), ("exhaust.primary.diameter", "42 mm"));

    [Fact]
    public void A_burn_as_given_is_not_looked_for()
    {
        foreach (var book in (BuildBook[])[Engines.Bare, Engines.Bare.Set(("combustion.placing", "as given"))])
        {
            var view = new View(book.Now());
            Assert.Null(EngineAssembly.Build(view)!.Combustion!.Search);
            Assert.DoesNotContain(view.Trace.Reads, r => r.Address.Path is "combustion.placingMargin" or "combustion.knockLimit" or "piston.peakPressureLimit");
        }
    }

    [Fact]
    public void A_placed_burn_keeps_off_the_limits_that_checks_hold_it_to()
    {
        // 0.95 of 0.9 and of 75 bar; without a margin 0.8 as it stands; no limit of the piston when none is known.
        Assert.Equal((0.855, 71.25e5), Limits(Engines.Bare.Set(Placed)));
        Assert.Equal((0.8, 75e5), Limits(Engines.Bare.Set(Placed).Set(("combustion.knockLimit", "0.8"), ("combustion.placingMargin", "0 %"))));
        Assert.Equal((0.855, double.PositiveInfinity), Limits(Engines.Bare.Set(Placed).Without("piston.peakPressureLimit")));

        (double, double) Limits(BuildBook book) => Burn(book, Depth.Lumped).Search is { } s ? (Math.Round(s.KnockLimit, 9), Math.Round(s.PressureLimit, 3)) : default;
    }

    [Fact]
    public void A_placed_burn_obeys_its_limits_at_every_speed_and_one_as_given_does_not()
    {
        var given = Run(Knocking.Set(("combustion.placing", "as given")));
        Assert.True(given.Most(f => f.KnockIntegral).Value > 0.6);
        var placed = Run(Knocking);
        Assert.Equal(given.Points.Count, placed.Points.Count);
        Assert.InRange(placed.Most(f => f.KnockIntegral).Value, 0, 0.57);
        Assert.InRange(placed.PeakPressure.Value, 0, 76e5);

        // As far as the nearer limit lets it go, and no farther back than that.
        Assert.All(placed.Figures, p => Assert.True(Math.Max(p.Figures.KnockIntegral / 0.57, p.Figures.PeakPressure / 76e5) > 0.98 || p.Figures.Burned50 < 12));
        Assert.All(placed.Figures, p => Assert.InRange(p.Figures.Burned50!.Value, 2, 40));
        Assert.True(placed.Most(f => f.Burned50!.Value).Value > placed.Figures.Min(p => p.Figures.Burned50!.Value) + 0.5, "the angle goes with the speed");
        Assert.Contains("50 % burned", EngineFigures.For(placed.Spec).Select(f => f.Name));
        Assert.DoesNotContain("50 % burned", EngineFigures.For(given.Spec).Select(f => f.Name));
    }

    [Fact]
    public void Residual_gas_lengthens_the_burn_of_the_wave_depth_and_of_the_lumped_one_when_asked()
    {
        Assert.Equal(0.05, Burn(Piped, Depth.Wave).ReferenceResidual);
        Assert.Null(Burn(Piped, Depth.Lumped).ReferenceResidual);
        var given = Piped.Set(("combustion.residualReference", "8 %"));
        Assert.Equal(0.08, Burn(given, Depth.Wave).ReferenceResidual!.Value, 12);
        Assert.Equal(0.08, Burn(given, Depth.Lumped).ReferenceResidual!.Value, 12);
    }

    [Fact]
    public void The_wall_film_is_read_by_the_wave_depth_alone()
    {
        var book = Piped.Set(("fuel.filmShare", "0.4"), ("fuel.filmTime", "0.5 s"), ("fuel.injectorDistance", "180 mm"), ("engine.pipeHeat", "1.5"));
        var wave = EngineAssembly.Build(new View(book.Now()), Depth.Wave)!;
        Assert.Equal((0.4, 0.5, 0.18, 1.5), (wave.Delivery.FilmShare, wave.Delivery.FilmTime, Math.Round(wave.Delivery.InjectorDistance, 9), wave.Pipework!.HeatScale));
        var view = new View(book.Now());
        Assert.Equal(0.0, EngineAssembly.Build(view)!.Delivery.FilmShare);
        Assert.DoesNotContain(view.Trace.Reads, r => r.Address.Path is "fuel.filmShare" or "fuel.filmTime" or "fuel.injectorDistance" or "engine.pipeHeat");
    }

    [Fact]
    public void Without_a_film_its_time_is_not_asked_for()
    {
        var view = new View(Piped.Now());
        Assert.Equal((0.0, 0.1, 1.0), (EngineAssembly.Build(view, Depth.Wave)!.Delivery.FilmShare, new FuelDelivery().InjectorDistance, EngineAssembly.Build(new View(Piped.Now()), Depth.Wave)!.Pipework!.HeatScale));
        Assert.DoesNotContain(view.Trace.Reads, r => r.Address.Path == "fuel.filmTime");
        Assert.Contains(view.Trace.Reads, r => r.Address.Path == "fuel.injectorDistance" && r.Fallback == "100 mm");
    }

    private static CombustionSpec Burn(BuildBook book, Depth depth) => EngineAssembly.Build(new View(book.Now()), depth)!.Combustion!;

    private static EngineDuty Run(BuildBook book)
    {
        var view = new View(book.Now(), new DutyDesk());
        return view.Duty() ?? throw new InvalidOperationException("the engine does not run; wanted: " + Wanted.Words(view.Trace.Missing));
    }
}
