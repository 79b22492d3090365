using CsCheck;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Check = Gudgeon.Book.Checks.Check;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>Uncertainties that come of nudging, against closed forms and published cases. A ± is two standard uncertainties.</summary>
public class UncertaintyTests
{
    private static readonly BuildBook Squish = Books.Of(
        ("engine.cylinders", "1"), ("cylinder.gasketThickness", "0.90 mm ± 0.02 mm"), ("cylinder.deckHeight", "0.20 mm ± 0.04 mm"));

    // c = t + h, so u² = u(t)² + u(h)² = 0.01² + 0.02².
    [Fact]
    public void A_sum_has_the_root_sum_square()
    {
        var finding = Appraisal.Of(Squish, "squish", "1");
        finding.Is(1.1e-3, 1.1, Verdict.Holds);
        Assert.Equal(Math.Sqrt(5e-4) * 1e-3, finding.ValueUncertainty, 12);
        Assert.Equal(Math.Sqrt(5e-4), finding.ReserveUncertainty, 9);
        Assert.Equal(["cylinder.deckHeight", "cylinder.gasketThickness"], finding.Contributions.Select(c => c.Found.Source));
        Assert.Equal(0.02, finding.Contributions[0].Effect, 9);
    }

    [Fact]
    public void Any_two_uncertainties_add_as_squares() => Gen.Select(Gen.Int[1, 60], Gen.Int[1, 60]).Sample((a, b) =>
    {
        var finding = Appraisal.Of(Squish.Set(("cylinder.gasketThickness", $"0.9 mm ± {a} um"), ("cylinder.deckHeight", $"0.2 mm ± {b} um")), "squish", "1");
        Assert.Equal(Math.Sqrt((a * a) + (b * b)) / 2 * 1e-6, finding.ValueUncertainty, 12);
    });

    // c = H − 2 w − d with one shell thickness for both: u² = u(H)² + (2 u(w))² + u(d)² = 2² + (2 · 1)² + 1.5² µm².
    [Fact]
    public void A_value_used_twice_counts_twice_and_not_as_two()
    {
        var book = Books.Of(
            ("bearing[main.1].housing", "42.008 mm ± 0.004 mm"),
            ("bearing[main].shellThickness", "1.991 mm ± 0.002 mm"),
            ("bearing[main.1].journal", "37.985 mm ± 0.003 mm"),
            ("bearing[main].clearanceMin", "0.025 mm"),
            ("bearing[main].clearanceMax", "0.055 mm"));
        var finding = Appraisal.Of(book, "bearing-clearance", "main.1");
        Assert.Equal(0.041e-3, finding.Judgement!.Value, 9);
        Assert.Equal(Math.Sqrt(4 + 4 + 2.25) * 1e-6, finding.ValueUncertainty, 12);
        Assert.Equal("bearing[main].shellThickness", finding.Contributions.MaxBy(c => c.Found.Source.Contains("shell", StringComparison.Ordinal))!.Found.Source);
    }

    // Row E04u of tests/reference/shop.csv: ratio 11.029, standard uncertainty 0.058, expanded 0.12.
    [Fact]
    public void The_compression_ratio_has_the_uncertainty_of_the_reference()
    {
        var book = Books.Of(
            ("engine.cylinders", "1"),
            ("crank.stroke", "48.5 mm"),
            ("cylinder.bore", "81 mm"),
            ("cylinder.chamberVolume", "24.80 cm³ ± 0.1642 cm³"),
            ("cylinder.domeVolume", "4.60 cm³ ± 0.1642 cm³"),
            ("cylinder.gasketBore", "82 mm"),
            ("cylinder.gasketThickness", "0.65 mm ± 0.023094 mm"),
            ("cylinder.deckHeight", "0.25 mm ± 0.023094 mm"),
            ("cylinder.ratioMin", "10.5"),
            ("cylinder.ratioMax", "11.5"));
        var finding = Appraisal.Of(book, "compression-ratio", "1");
        Assert.Equal(11.029, finding.Judgement!.Value, 1e-3);
        Assert.Equal(0.058, finding.ValueUncertainty, 1e-3);
        Assert.Equal(0.12, 2 * finding.ValueUncertainty, 5e-3);
        Assert.Equal(Math.Min(11.029 / 10.5, 11.5 / 11.029), finding.Reserve, 1e-4);
    }

    // JCGM 100:2008, H.1: u_c² = 25² + 9.7² + 2.9² + 16.6² nm², which it rounds to 32 nm.
    [Fact]
    public void The_end_gauge_of_the_guide_comes_out_as_published()
    {
        var book = Books.Of(
            ("cylinder.bore", "50.000623 mm ± 50e-6 mm"),
            ("cylinder.gasketThickness", "215e-6 mm ± 19.4e-6 mm"),
            ("cylinder.domeVolume", "0 m³ ± 1.16e-6 m³"),
            ("weather.headWind", "-0.1 m/s ± 0.82 m/s"),
            ("joint.expansion", "11.5e-6 1/K ± 2.4e-6 1/K"),
            ("cylinder.deckHeight", "0 m ± 0.058 m"));
        var finding = new Appraiser(new DutyDesk()).Appraise(new EndGauge(), "", book.Now());
        Assert.Equal(50.000838e-3, finding.Judgement!.Value, 12);
        Assert.Equal(32e-9, finding.ValueUncertainty, 0.5e-9);
        double[] published = [25, 16.6, 9.7, 2.9];
        Assert.All(published.Zip(finding.Contributions), p => Assert.Equal(p.First, Math.Abs(p.Second.Effect) * 0.05 / 1e-9, 0.1));
        Assert.Equal(4, finding.Contributions.Count);
    }

    [Fact]
    public void Without_uncertainties_the_edge_itself_decides()
    {
        var edge = Squish.Set(("cylinder.gasketThickness", "0.9 mm"), ("cylinder.deckHeight", "0.11 mm"));
        Assert.Equal(Verdict.Holds, Appraisal.Of(edge, "squish", "1").Verdict);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(edge.Set(("cylinder.deckHeight", "0.09 mm")), "squish", "1").Verdict);
    }

    // 1.02 ± 1.645 · 0.0224 straddles 1; the deck gauge does more of it than the gasket's micrometer.
    [Fact]
    public void Too_close_to_tell_names_the_reading_to_improve()
    {
        var close = Squish.Set(("cylinder.deckHeight", "0.12 mm ± 0.04 mm"));
        var finding = Appraisal.Of(close, "squish", "1");
        Assert.Equal(Verdict.TooCloseToTell, finding.Verdict);
        Assert.Equal("measure cylinder.deckHeight more closely", finding.Advice);
        Assert.Equal("measure cylinder.gasketThickness more closely", Appraisal.Of(close.Set(("cylinder.gasketThickness", "0.9 mm ± 0.05 mm")), "squish", "1").Advice);
        Assert.Equal(Verdict.Holds, Appraisal.Of(close.Set(("cylinder.deckHeight", "0.12 mm ± 0.01 mm"), ("cylinder.gasketThickness", "0.9 mm ± 0.01 mm")), "squish", "1").Verdict);
    }

    [Fact]
    public void Random_draws_agree_with_the_first_order_where_the_check_is_linear()
    {
        const int Draws = 20000;
        var (appraiser, book) = (new Appraiser(new DutyDesk()), Squish.Set(("cylinder.deckHeight", "0.12 mm ± 0.04 mm")));
        var finding = appraiser.Appraise(CheckCatalogue.Find("squish"), "1", book.Now());
        var drawn = MonteCarlo.Run(appraiser, finding, book.Now(), Draws)!;
        var u = finding.ReserveUncertainty;

        // Four standard errors of each.
        Assert.Equal(1.02, drawn.Mean, 4 * u / Math.Sqrt(Draws));
        Assert.Equal(u, drawn.Deviation, 4 * u / Math.Sqrt(2.0 * Draws));
        Assert.Equal(1.02 - (1.96 * u), drawn.Low, 0.07 * u);
        Assert.Equal(1.02 + (1.96 * u), drawn.High, 0.07 * u);
        var p = new Margin(0.02, u).Conformity;
        Assert.Equal(p, drawn.Conformity, 4 * Math.Sqrt(p * (1 - p) / Draws));
        Assert.Equal(p, finding.Conformity, 1e-9);
        Assert.Equal(drawn, MonteCarlo.Run(new Appraiser(new DutyDesk()), finding, book.Now(), Draws));
    }

    [Fact]
    public void Random_draws_want_something_uncertain_and_enough_of_them()
    {
        var appraiser = new Appraiser(new DutyDesk());
        var sure = Squish.Set(("cylinder.gasketThickness", "0.9 mm"), ("cylinder.deckHeight", "0.2 mm"));
        Assert.Null(MonteCarlo.Run(appraiser, appraiser.Appraise(CheckCatalogue.Find("squish"), "1", sure.Now()), sure.Now(), 1000));
        var finding = Appraisal.Of(Squish, "squish", "1");
        Assert.Throws<Gudgeon.Book.Values.BadInputException>(() => MonteCarlo.Run(appraiser, finding, Squish.Now(), 99));
    }

    /// <summary>
    /// Length of an end gauge compared with a standard: l = ls + d − ls (δα θ + αs δθ). The fields are only carriers of the
    /// guide's six quantities; what they are about is of no account here.
    /// </summary>
    private sealed class EndGauge : Check
    {
        public override string Id => "end-gauge";

        public override string Title => "End gauge";

        public override string Family => "test";

        public override string Source => "JCGM 100:2008, H.1";

        public override Judgement Examine(View view, string index)
        {
            var (standard, difference) = (view.Amount(Cylinder.Bore), view.Amount(Cylinder.GasketThickness));
            var (expansionDifference, temperature) = (view.Amount(Cylinder.DomeVolume), view.Amount(Weather.HeadWind));
            var (expansion, temperatureDifference) = (view.Amount(Joint.Expansion), view.Amount(Cylinder.DeckHeight));
            var length = standard + difference - (standard * ((expansionDifference * temperature) + (expansion * temperatureDifference)));
            return Judgement.AtLeast("length", length, 0.05, Dimension.Length, "mm", "none");
        }
    }
}
