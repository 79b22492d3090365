using Gudgeon.Calc.Bearings;
using Gudgeon.Simulation.Bearings;

namespace Gudgeon.Simulation.Tests.Bearings;

/// <summary>Bearings run through their loads: against steady films, and what must hold for any load.</summary>
public class FilmRunTests
{
    private static readonly OilSpec Oil = new(100e-6, 14e-6, double.NaN, 870, 2000);

    private static FilmSpec Bearing(double slenderness) => new()
    {
        Diameter = 0.045,
        Width = 0.045 * slenderness,
        Clearance = 22e-6,
        SupplyPressure = 4e5,
        SupplyTemperature = 363.15,
        Opening = 3e-3,
        Oil = Oil,
    };

    // Raimondi and Boyd's case: the march under a load that stays settles where the solution of the steady film is.
    [Theory]
    [InlineData(0.25, 3000)]
    [InlineData(0.4, 8000)]
    [InlineData(0.5, 6000)]
    [InlineData(0.5, 15000)]
    [InlineData(1.0, 20000)]
    public void A_load_that_stays_gives_the_steady_film(double slenderness, double load)
    {
        const double speed = 600;
        var state = FilmRun.Of(Bearing(slenderness), Steady(load), speed);
        var spec = state.Spec;
        var steady = JournalBearing.Steady(state.Viscosity, speed, load, spec.Diameter, spec.Width, spec.Clearance);
        Assert.True(state.Settled);
        Assert.Equal(steady.LeastFilm, state.Least.Film, 0.02 * steady.LeastFilm);
        Assert.Equal(steady.PeakPressure, state.Peak.Pressure, 0.03 * steady.PeakPressure);
        Assert.Equal(steady.SideFlow, state.SideFlow, 0.02 * steady.SideFlow);
        Assert.Equal(steady.Loss, state.Loss, 0.02 * steady.Loss);
    }

    [Fact]
    public void What_the_film_takes_leaves_with_the_oil()
    {
        var state = FilmRun.Of(Bearing(0.4), Turning(8000), 800);
        var carried = Oil.DensityAt(state.Temperature) * Oil.SpecificHeat * state.Flow * (state.Temperature - 363.15);
        Assert.Equal(state.Loss, carried, 1e-3 * state.Loss);
        Assert.Equal(Oil.ViscosityAt(state.Temperature), state.Viscosity, 1e-6);
    }

    // A load that turns with half of the journal's speed finds no wedge: the film only gives way. One that turns backwards finds more of it.
    [Fact]
    public void A_load_that_turns_with_the_oil_is_the_worst()
    {
        var half = FilmRun.Of(Bearing(0.4), Turning(4000, 0.5), 800);
        var back = FilmRun.Of(Bearing(0.4), Turning(4000, -1), 800);
        Assert.True(half.Least.Film < 0.2 * back.Least.Film);
    }

    [Fact]
    public void A_groove_all_round_leaves_two_short_films()
    {
        var (plain, grooved) = (Bearing(0.5), Bearing(0.5) with { Feed = OilFeed.FullGroove });
        Assert.Equal(grooved.Width - grooved.Opening, grooved.Carrying, 1e-12);
        var (one, two) = (FilmRun.Of(plain, Steady(8000), 600), FilmRun.Of(grooved, Steady(8000), 600));
        Assert.True(two.Least.Film < 0.7 * one.Least.Film);
        Assert.True(two.FeedFlow > one.FeedFlow);
    }

    [Fact]
    public void Thinner_oil_and_more_load_leave_less_film()
    {
        var usual = FilmRun.Of(Bearing(0.4), Turning(8000), 800);
        Assert.True(FilmRun.Of(Bearing(0.4), Turning(12000), 800).Least.Film < usual.Least.Film);
        Assert.True(FilmRun.Of(Bearing(0.4) with { SupplyTemperature = 393.15 }, Turning(8000), 800).Least.Film < usual.Least.Film);
        Assert.True(FilmRun.Of(Bearing(0.4) with { Oil = Oil with { HighShear = 3e-3 } }, Turning(8000), 800).Viscosity < usual.Viscosity);
    }

    [Fact]
    public void The_steps_are_small_enough()
    {
        var (coarse, fine) = (FilmRun.Of(Bearing(0.4), Pulsing(30000, 720), 800), FilmRun.Of(Bearing(0.4), Pulsing(30000, 5760), 800));
        Assert.Equal(fine.Least.Film, coarse.Least.Film, 0.005 * fine.Least.Film);
        Assert.Equal(fine.Peak.Pressure, coarse.Peak.Pressure, 0.005 * fine.Peak.Pressure);
        Assert.Equal(fine.Loss, coarse.Loss, 0.002 * fine.Loss);
    }

    [Fact]
    public void What_cannot_be_marched_is_refused_in_a_sentence()
    {
        Refused("clearance, running: given 0 µm", Bearing(0.4) with { Clearance = 0 });
        Refused("groove or hole", Bearing(0.4) with { Opening = 0.1 });
        Refused("oil viscosity", Bearing(0.4) with { Oil = Oil with { Hot = 120e-6 } });
        void Refused(string sentence, FilmSpec spec) => Assert.Contains(sentence, Assert.Throws<BearingSpecException>(() => FilmRun.Of(spec, Steady(1000), 600)).Message, StringComparison.Ordinal);
    }

    private static OrbitCourse Steady(double load) => Course(720, _ => (0, load));

    /// <summary>A load that turns at so many times crank speed.</summary>
    private static OrbitCourse Turning(double load, double times = -0.5) => Course(720, angle => (load * Math.Cos(times * angle), load * Math.Sin(times * angle)));

    /// <summary>Inertia once a turn and a firing stroke once a cycle.</summary>
    private static OrbitCourse Pulsing(double load, int count) => Course(count, angle => (0.2 * load * Math.Sin(angle), (0.3 * load * Math.Cos(angle)) - (load * Math.Exp(-8 * (1 - Math.Cos((angle - 0.3) / 2))))));

    private static OrbitCourse Course(int count, Func<double, (double X, double Y)> load)
    {
        var loads = Enumerable.Range(0, count).Select(i => load(i * 4 * Math.PI / count)).ToList();
        return new OrbitCourse([.. loads.Select(f => f.X)], [.. loads.Select(f => f.Y)], [.. loads.Select(_ => 0.5)], 4 * Math.PI);
    }
}
