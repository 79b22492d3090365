using Gudgeon.Calc.Bearings;
using Gudgeon.Simulation.Bearings;

namespace Gudgeon.Simulation.Tests.Bearings;

/// <summary>Films of finite length against closed forms, and the table against films solved afresh.</summary>
public class FiniteMobilityTests
{
    // Without ends and with the free edges a quarter turn and more away: p = 6/ε (1/h² − 1/(1 + ε)²), which carries 12 π/(1 − ε²)^1.5.
    // Of a film without ends the grid loses half a cell at each.
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.3)]
    [InlineData(0.6)]
    [InlineData(0.8)]
    public void A_very_long_film_carries_what_one_without_ends_does(double eccentricity)
    {
        var film = new SqueezeFilm(eccentricity, 200, 720);
        film.Solve(0);
        Near(12 * Math.PI / Math.Pow(1 - (eccentricity * eccentricity), 1.5), film.Along * 32 / 31, 0.005);
        Near(6 / eccentricity * (Math.Pow(1 - eccentricity, -2) - Math.Pow(1 + eccentricity, -2)), film.Peak, 0.02);
    }

    // A load that stays: the journal "sinks" across the line of centres as fast as the oil turns. Held at nought where the film is
    // thickest, as Raimondi and Boyd feed it, the film is theirs; left to begin where it will, it carries as much.
    [Theory]
    [InlineData(0.25, 0.6, 1.07, 46.72)]
    [InlineData(0.5, 0.6, 0.319, 48.14)]
    [InlineData(0.5, 0.8, 0.0923, 33.31)]
    [InlineData(1, 0.6, 0.121, 50.58)]
    [InlineData(1, 0.8, 0.0446, 36.24)]
    public void A_film_under_a_steady_load_is_that_of_Raimondi_and_Boyd(double slenderness, double eccentricity, double sommerfeld, double attitude)
    {
        var (fed, free) = (new SqueezeFilm(eccentricity, slenderness, 360) { Fed = 180 }, new SqueezeFilm(eccentricity, slenderness, 360));
        fed.Solve(Math.PI / 2);
        free.Solve(Math.PI / 2);
        double Sommerfeld(SqueezeFilm film) => 2 / (Math.PI * eccentricity * Load(film));
        Near(sommerfeld, Sommerfeld(fed), 0.02);
        Assert.Equal(attitude, Math.Atan2(fed.Sideways, fed.Along) * 180 / Math.PI, 1.0);
        Near(Load(fed), Load(free), 0.005);
    }

    // At the middle of a short bearing the mobility after Moes is exact; over the clearance his form and ours part by no more than his fit.
    [Fact]
    public void A_closed_form_for_any_length_is_not_far_off()
    {
        var table = new FiniteMobility(0.5);
        foreach (var (along, across) in new[] { (0.0, 0.1), (0.3, 0.4), (0.6, -0.5), (-0.5, 0.3) })
        {
            var mobility = table.At(along, across);
            Near(MobilityNode.ClosedAlong(along, 0.5), mobility.Along, 0.2);
            Near(MobilityNode.ClosedAcross(along, across, 0.5), mobility.Across, 0.25);
        }
    }

    [Fact]
    public void A_short_film_is_the_short_form()
    {
        foreach (var (along, across) in new[] { (0.3, 0.4), (0.6, -0.5), (0.8, 0.1), (-0.5, 0.3) })
        {
            const double slenderness = 0.05;
            var table = new FiniteMobility(slenderness).At(along, across);
            var exact = Mobility.Exact(along, across, slenderness);
            Assert.Equal(exact.Along, table.Along, 0.012 * exact.Along);
            Assert.Equal(exact.Across, table.Across, 0.012 * Math.Abs(exact.Across));
        }
    }

    [Theory]
    [InlineData(0.35, 0.3, 0.5)]
    [InlineData(0.62, 1.1, 0.42)]
    [InlineData(0.8, 0.15, 0.3)]
    [InlineData(0.9, 0.4, 0.6)]
    [InlineData(0.93, 2.2, 0.85)]
    [InlineData(0.968, 0.2, 0.55)]
    public void The_table_reads_what_a_film_solved_afresh_gives(double eccentricity, double angle, double slenderness)
    {
        var fresh = MobilityNode.Solve(eccentricity, angle, slenderness);
        var (sin, cos) = Math.SinCos(angle);
        var (along, across) = (eccentricity * cos, eccentricity * sin);
        var table = new FiniteMobility(slenderness);
        var mobility = table.At(along, across);
        var (peak, flow) = table.Film(along, across);
        Near(fresh.Along * MobilityNode.ClosedAlong(along, slenderness), mobility.Along, 0.01);
        Near(fresh.Across * MobilityNode.ClosedAcross(along, across, slenderness), mobility.Across, 0.01);
        Near(fresh.Peak / Math.Sqrt(1 - along), peak, 0.015);
        Near(fresh.SideFlow, flow, 0.01);
    }

    /// <summary>Films that were not tabulated, on a grid twice as fine, hold the grid of the table.</summary>
    [Fact]
    public void A_finer_grid_moves_little()
    {
        var (coarse, fine) = (new SqueezeFilm(0.95, 0.5, 720), new SqueezeFilm(0.95, 0.5, 1440));
        coarse.Solve(0.6);
        fine.Solve(0.6);
        Near(fine.Along, coarse.Along, 0.003);
        Near(fine.Peak, coarse.Peak, 0.005);
    }

    [Fact]
    public void Lengths_that_it_does_not_hold_are_refused()
    {
        Assert.Contains("bearing length", Assert.Throws<BearingSpecException>(() => new FiniteMobility(1.2)).Message, StringComparison.Ordinal);
        Assert.Throws<BearingSpecException>(() => new FiniteMobility(double.NaN));
    }

    private static void Near(double expected, double actual, double share) => Assert.Equal(expected, actual, share * Math.Abs(expected));

    private static double Load(SqueezeFilm film) => Math.Sqrt((film.Along * film.Along) + (film.Sideways * film.Sideways));
}
