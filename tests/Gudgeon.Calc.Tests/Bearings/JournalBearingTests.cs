using CsCheck;
using Gudgeon.Calc.Bearings;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Tests.Bearings;

/// <summary>Oil films against their limits and against each other.</summary>
public class JournalBearingTests
{
    [Fact]
    public void FrictionMovesTheAttitude()
    {
        // Moment balance: journal friction less shell friction is the load times its eccentric arm, so the full-circle
        // friction variable is Petroff's share plus ε sin φ / 2.
        var film = FiniteBearing.At(0.6, 1);
        Assert.Equal((2 * Math.PI * Math.PI * film.Sommerfeld / 0.8) + (0.3 * Math.Sin(film.Attitude)), film.FrictionVariable, 1e-9);
        Assert.True(film.FrictionFilmOnly < film.FrictionStreamers && film.FrictionStreamers < film.FrictionVariable);
    }

    [Fact]
    public void AShortFiniteBearingTendsToOcvirk()
    {
        // At a tenth of the diameter the length no longer matters and the rupture line alone differs.
        var finite = FiniteBearing.At(0.3, 0.1);
        var brief = ShortBearing.Load(0.3, 0.1);
        Assert.Equal(brief.Sommerfeld, finite.Sommerfeld, 0.02 * brief.Sommerfeld);
        Assert.Equal(brief.Attitude, finite.Attitude, 0.02);
    }

    [Fact]
    public void MoreLoadIsLessFilm() => Gen.Select(Gen.Double[500, 20_000], Gen.Double[1.05, 2]).Sample(
        (load, factor) => Assert.True(Film(load).LeastFilm > Film(load * factor).LeastFilm),
        iter: 4);

    [Fact]
    public void TheSteadyStateMeetsItsOwnSommerfeldNumber()
    {
        var state = Film(4000);
        Assert.Equal(state.Sommerfeld, FiniteBearing.At(state.Eccentricity, 0.5).Sommerfeld, 1e-4 * state.Sommerfeld);
        Assert.Equal(JournalBearing.Sommerfeld(0.01, 800, 4000, 0.04, 0.02, 3e-5), state.Sommerfeld, 1e-12);
    }

    [Fact]
    public void ShortBearingReturnsTheLoadItWasGiven() => Gen.Double[0.05, 0.95].Sample(eccentricity =>
    {
        var load = ShortBearing.Load(eccentricity).Load * 0.01 * 500 * 0.02 * Math.Pow(0.015, 3) / (3e-5 * 3e-5);
        var state = ShortBearing.Film(0.01, 500, load, 0.04, 0.015, 3e-5);
        Assert.Equal(eccentricity, state.Eccentricity, 1e-9);
    });

    [Fact]
    public void ExactMobilityUnderASteadyLoadReturnsOcvirk()
    {
        // At rest in the film the squeeze velocity cancels half of the rotation: M F = (ω/2) × ε turned to the load.
        const double eccentricity = 0.6, slenderness = 0.5;
        var brief = ShortBearing.Load(eccentricity, slenderness);
        var along = eccentricity * Math.Cos(brief.Attitude);
        var across = eccentricity * Math.Sin(brief.Attitude);
        var mobility = Mobility.Exact(along, across, slenderness);
        var perRadian = 1 / (Math.PI * 2 * brief.Sommerfeld);
        Assert.Equal(0.5 * across, perRadian * mobility.Along, 1e-6);
        Assert.Equal(-0.5 * along, perRadian * mobility.Across, 1e-6);
    }

    [Fact]
    public void AnOrbitUnderASteadyLoadSettlesWhereTheSteadyFilmIs()
    {
        var settled = ShortBearing.Film(0.01, 500, 2000, 0.04, 0.02, 3e-5);
        var orbit = JournalOrbit.March([0, Math.PI], [2000, 2000], [0, 0], 0.04, 0.02, 3e-5, 0.01, 500, form: MobilityForm.Exact);
        Assert.Equal(settled.LeastFilm, orbit.LeastFilm, 0.001 * settled.LeastFilm);
        Assert.True(orbit.Drift < 1e-6);
    }

    [Fact]
    public void ViscosityPassesThroughItsTwoPoints() => Gen.Select(Gen.Double[30e-6, 150e-6], Gen.Double[4e-6, 20e-6]).Sample((cold, hot) =>
    {
        Assert.Equal(cold, OilViscosity.AtTemperature(313.15, cold, hot).Kinematic, 1e-9 * cold);
        Assert.Equal(hot, OilViscosity.AtTemperature(373.15, cold, hot).Kinematic, 1e-9 * hot);
    });

    [Fact]
    public void LivesAtTheMeanLoadAddUpAsDamageDoes()
    {
        // 30 % of the turns at 2 kN and 70 % at 5 kN use up the life in proportion (Miner).
        var mean = RollingLife.MeanLoad([2000, 5000], [0.3, 0.7], RollingElement.Roller);
        double Life(double load) => RollingLife.Life(20_000, load, 100, RollingElement.Roller).Revolutions;
        Assert.Equal((0.3 / Life(2000)) + (0.7 / Life(5000)), 1 / Life(mean), 1e-12);
    }

    [Fact]
    public void ALoadBeyondTheFilmIsRefused() =>
        Assert.Contains("load", Assert.Throws<FormulaDomainException>(() => Film(1e8)).Message, StringComparison.Ordinal);

    private static JournalState Film(double load) => JournalBearing.Steady(0.01, 800, load, 0.04, 0.02, 3e-5);
}
