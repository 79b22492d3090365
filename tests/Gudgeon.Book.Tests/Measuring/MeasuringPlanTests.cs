using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Tests.Checks;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Measuring;

public class MeasuringPlanTests
{
    private const string Twice = "10 mm at 80.002 mm at 80.006 mm; 40 mm at 80.001 mm at 80.003 mm; 10 mm at 80.004 mm at 80.008 mm; 40 mm at 80.001 mm at 80.005 mm";

    private static readonly BuildBook Book = Books.Of(("engine.cylinders", "2"), ("crank.stroke", "70 mm"), ("bearing[main.1].width", "20 mm"), ("bearing[main.1].journal", "40 mm"));

    [Fact]
    public void A_build_has_a_plan_for_each_bore_journal_and_housing() =>
        Assert.Equal(["cylinder[1].bore", "cylinder[2].bore", "bearing[main.1].journal", "bearing[main.1].housing"], MeasuringPlan.All(Book.Now()).Select(p => p.Mean.Path));

    [Fact]
    public void Readings_go_through_all_places_and_then_through_all_again()
    {
        var readings = MeasuringPlan.All(Book.Now())[0].Readings(2).Select(r => $"{r.Round} {r.Station.Name} {Math.Round(r.Station.At * 1000)} {r.Axis}").ToList();
        Assert.Equal(12, readings.Count);
        Assert.Equal(["1 top 10 along the crank", "1 top 10 across it", "1 middle 35 along the crank"], readings[..3]);
        Assert.Equal(["1 bottom 60 across it", "2 top 10 along the crank"], readings[5..7]);
        Assert.Equal([5, 15], MeasuringPlan.All(Book.Now())[2].Stations.Select(s => Math.Round(s.At * 1000)));
        Assert.Throws<BadInputException>(() => MeasuringPlan.All(Book.Now())[0].Readings(0));
        Assert.Throws<BadInputException>(() => MeasuringPlan.All(Book.Now())[0].Readings(11));
    }

    [Fact]
    public void Repeats_of_a_place_are_averaged_before_form_is_told()
    {
        // Means: top 80.003 and 80.007, bottom 80.001 and 80.004.
        var form = new Roundness((Table)KnownValue.Read(Cylinder.BoreTable, Twice).Content);
        Assert.Equal(80.00375e-3, form.Mean, 1e-12);
        Assert.Equal(4e-6, form.OutOfRound, 1e-12);
        Assert.Equal(3e-6, form.Taper!.Value, 1e-12);
        Assert.Equal((80.001e-3, 80.007e-3), (Math.Round(form.Least, 9), Math.Round(form.Greatest, 9)));

        // Squares about the means: 1 + 1, 1 + 1, 0, 1 + 1 µm²: s = √(6/4) µm.
        Assert.Equal((8, 4), (form.Readings, form.Freedom));
        Assert.Equal(Math.Sqrt(1.5) * 1e-6, form.Scatter, 1e-12);
    }

    // u of repeats √1.5/√8 = 0.4330 µm with 4 degrees of freedom, instrument 3/√3 = 1.7321 µm, temperatures 8 K off:
    // 80.00375 mm √(2 (8 × 0.57735e-6)² + (23e-6 × 0.57735)² + (11.5e-6 × 0.57735)²) = 1.2977 µm; together 2.2071 µm.
    // ν = 4 × 2.2071⁴/0.4330⁴ = 2700; k = t95(2700) = 1.9608.
    [Fact]
    public void The_mean_has_its_uncertainty_with_effective_degrees_of_freedom()
    {
        var book = Book.Set(("cylinder[1].boreTable", Twice), ("cylinder.expansion", "23 µm/(m·K)"), ("instrument[bore-100].kind", "bore gauge"), ("instrument[bore-100].error", "0.003 mm"));
        var plan = MeasuringPlan.All(book.Now())[0];
        var result = PlanResult.Of(plan, book.Now(), "bore-100", new ReadAt("28 °C", "28 °C"))!;
        Assert.Equal(80.00375e-3 * (1 - (8 * 11.5e-6)), result.Mean, 1e-12);
        Assert.Equal(0.4330e-6, result.FromRepeats, 1e-10);
        Assert.Equal(1.7321e-6, result.FromInstrument!.Value, 1e-10);
        Assert.Equal(1.2977e-6, result.FromTemperature, 1e-10);
        Assert.Equal(2.2071e-6, result.Uncertainty.Combined, 2e-10);
        Assert.Equal(2700, result.Uncertainty.Freedom, 5.0);
        Assert.Equal(1.9608, result.Uncertainty.Factor, 2e-4);
        Assert.Equal(1.9608 * 2.2071e-6, result.Uncertainty.Expanded, 1e-9);
        Assert.Equal("79.9964 mm ± 0.0044 mm", result.Written(plan));
    }

    [Fact]
    public void Few_repeats_alone_ask_for_a_larger_factor()
    {
        // Four places twice: 4 degrees of freedom, t95 = 2.776.
        var book = Book.Set(("cylinder[1].boreTable", "10 mm at 80.002 mm at 80.006 mm; 10 mm at 80.002 mm at 80.006 mm; 40 mm at 80.001 mm at 80.003 mm; 40 mm at 80.001 mm at 80.005 mm"));
        var result = PlanResult.Of(MeasuringPlan.All(book.Now())[0], book.Now())!;
        Assert.Null(result.FromInstrument);
        Assert.False(result.Corrected);
        Assert.Equal(4, result.Uncertainty.Freedom, 9);
        Assert.Equal(2.776, result.Uncertainty.Factor, 5e-4);
    }

    [Fact]
    public void Nothing_read_twice_has_no_scatter_and_nothing_read_has_no_result()
    {
        var book = Book.Set(("cylinder[1].boreTable", "10 mm at 80.002 mm at 80.006 mm; 40 mm at 80.001 mm at 80.003 mm"), ("instrument[bore-100].kind", "bore gauge"), ("instrument[bore-100].error", "0.003 mm"));
        var plans = MeasuringPlan.All(book.Now());
        Assert.Null(PlanResult.Of(plans[1], book.Now()));
        var result = PlanResult.Of(plans[0], book.Now(), "bore-100")!;
        Assert.Equal(0, result.FromRepeats);
        Assert.True(double.IsPositiveInfinity(result.Uncertainty.Freedom));
        Assert.Equal(1.96, result.Uncertainty.Factor, 1e-3);
        Assert.Equal("80.0030 mm ± 0.0035 mm", result.Written(plans[0]));
    }

    [Fact]
    public void The_note_says_at_how_many_stations_was_read()
    {
        string Note(string table) => PlanResult.Of(MeasuringPlan.All(Book.Now())[0], Book.Set(("cylinder[1].boreTable", table)).Now())!.Note(MeasuringPlan.All(Book.Now())[0]);
        Assert.Equal("mean of 8 readings at 2 stations in two axes; out of round 0.004 mm, taper 0.003 mm", Note(Twice));
        Assert.Equal("mean of 2 readings at 1 station in two axes; out of round 0.004 mm, taper not known yet: a second station is wanted", Note("10 mm at 80.002 mm at 80.006 mm"));
    }

    [Theory]
    [InlineData("cylinder[1].boreTable", "80", "bore", "1")]
    [InlineData("bearing[main.1].journalTable", "40", "bearing", "main.1")]
    [InlineData("bearing[main.1].housingTable", "40", "bearing", "main.1")]
    public void One_station_read_twice_says_nothing_of_taper(string path, string size, string check, string index)
    {
        var one = Book.Set((path, $"10 mm at {size}.000 mm at {size}.004 mm; 10 mm at {size}.000 mm at {size}.004 mm"));
        var taper = Appraisal.Of(one, $"{check}-taper", index);
        Assert.Equal((Verdict.NotKnownYet, $"wanted: a second station in {path}"), (taper.Verdict, taper.Advice));
        Assert.Equal(4e-6, Appraisal.Of(one, $"{check}-out-of-round", index).Judgement!.Value, 1e-12);
    }

    [Fact]
    public void The_part_at_two_stations_is_judged_while_the_other_is_not()
    {
        var finding = Appraisal.Of(Book.Set(("bearing[main.1].journalTable", "5 mm at 40.000 mm at 40.000 mm; 15 mm at 40.003 mm at 40.000 mm"), ("bearing[main.1].housingTable", "5 mm at 44.000 mm at 44.000 mm")), "bearing-taper", "main.1");
        Assert.Equal((3e-6, "of the journal"), (Math.Round(finding.Judgement!.Value, 12), finding.Judgement.Remark));
    }

    [Theory]
    [InlineData("10 mm at 80.000 mm at 80.009 mm; 40 mm at 80.000 mm at 80.009 mm", Verdict.Holds, Verdict.Holds)]
    [InlineData("10 mm at 80.000 mm at 80.012 mm; 40 mm at 80.000 mm at 80.012 mm", Verdict.FallsShort, Verdict.Holds)]
    [InlineData("10 mm at 80.000 mm at 80.000 mm; 40 mm at 80.012 mm at 80.012 mm", Verdict.Holds, Verdict.FallsShort)]
    public void Bores_are_held_to_round_and_straight(string table, Verdict round, Verdict straight)
    {
        var book = Book.Set(("cylinder[1].boreTable", table));
        Assert.Equal(round, Appraisal.Of(book, "bore-out-of-round", "1").Verdict);
        Assert.Equal(straight, Appraisal.Of(book, "bore-taper", "1").Verdict);
        Assert.Equal("1", Assert.Single(new Appraiser(new Gudgeon.Book.Duty.DutyDesk()).Appraise(book.Now(), [CheckCatalogue.Find("bore-taper")])).Index);
    }
}
