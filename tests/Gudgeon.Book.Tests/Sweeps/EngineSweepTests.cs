using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Sweeps;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Tests.Sweeps;

public class EngineSweepTests
{
    private static readonly double[] Speeds = [Engines.Speed(5000), Engines.Speed(7000), Engines.Speed(9000)];
    private static readonly double[] Slower = [Engines.Speed(5500), Engines.Speed(7500)];
    private static readonly Lazy<EngineSweep> Heron = new(() => EngineSweep.Run(DemoBooks.Heron.Book, [Variation.Parse("--vary", "blower.driveRatio=0.9..1.35/4")], Speeds));

    [Fact]
    public void Each_value_gives_what_setting_it_and_running_gives()
    {
        var sweep = Heron.Value;
        Assert.Equal(4, sweep.Cells.Count);
        Assert.All(sweep.Cells, cell => Same(Edited(DemoBooks.Heron.Book, Speeds, ("blower.driveRatio", cell.Values[0].Written)), cell.Points));
    }

    [Fact]
    public void A_quicker_blower_gives_more_boost_at_every_speed()
    {
        for (var speed = 0; speed < Speeds.Length; speed++)
        {
            var boosts = Heron.Value.Cells.Select(c => c.At(speed, EngineFigures.Boost)).ToList();
            Assert.True(boosts.Zip(boosts.Skip(1)).All(b => b.Second > b.First * 1.05), string.Join(", ", boosts));
        }

        Assert.Equal(1.35, Heron.Value.Best(c => c.Most(EngineFigures.Power))!.Values[0].Si);
        Assert.Equal(0.9, Heron.Value.Best(c => c.At(0, EngineFigures.PeakPressure), least: true)!.Values[0].Si);
    }

    [Fact]
    public void A_value_of_one_instance_leaves_the_others_as_they_are()
    {
        var book = Engines.Bare.Set(("engine.cylinders", "2"));
        var sweep = EngineSweep.Run(book, [Variation.Parse("--vary", "cylinder[2].chamberVolume=50..58cm³/2")], Slower);
        var (small, big) = (sweep.Cells[0].Points[0].Figures!, sweep.Cells[1].Points[0].Figures!);
        Assert.True(small.Cylinders[1].PeakPressure > big.Cylinders[1].PeakPressure * 1.05);
        Assert.Equal(1, small.Cylinders[0].PeakPressure / big.Cylinders[0].PeakPressure, 0.01);
    }

    // A reading goes before baseline and changes, but not before what is tried.
    [Fact]
    public void What_is_tried_goes_before_a_reading()
    {
        var book = Engines.Bare.Read("cylinder[1].chamberVolume", "54 cm³");
        var sweep = EngineSweep.Run(book, [Variation.Parse("--vary", "cylinder.chamberVolume=48..60cm³/2")], Slower);
        Same(Edited(Engines.Bare, Slower, ("cylinder.chamberVolume", "48 cm³")), sweep.Cells[0].Points);
        Assert.True(sweep.Cells[0].At(0, EngineFigures.PeakPressure) > sweep.Cells[1].At(0, EngineFigures.PeakPressure) * 1.1);
    }

    [Fact]
    public void Two_fields_give_every_combination()
    {
        var sweep = EngineSweep.Run(Engines.Bare, [Variation.Parse("--vary", "fuel.lambda=0.8..1/3"), Variation.Parse("--vary", "combustion.burned50=8..20°/2")], Slower);
        Assert.Equal(6, sweep.Cells.Count);
        var cell = sweep.Cell(2, 1);
        Assert.Equal(["1", "20 °"], cell.Values.Select(v => v.Written));
        Same(Edited(Engines.Bare, Slower, ("fuel.lambda", "1"), ("combustion.burned50", "20°")), cell.Points);

        // Burning so late costs torque with every mixture.
        Assert.All([0, 1, 2], i => Assert.True(sweep.Cell(i, 0).Mean(EngineFigures.Torque) > sweep.Cell(i, 1).Mean(EngineFigures.Torque) * 1.005));
    }

    [Fact]
    public void A_value_that_makes_no_engine_says_why_and_the_others_are_run()
    {
        var sweep = EngineSweep.Run(Engines.Bare, [Variation.Parse("--vary", "fuel.lambda=0.9..2.1/3")], Slower);
        var refused = sweep.Cells[2];
        Assert.Contains("lambda 2.1", refused.Refusal, StringComparison.Ordinal);
        Assert.Empty(refused.Points);
        Assert.False(refused.Settled);
        Assert.True(double.IsNaN(refused.At(0, EngineFigures.Torque)) && double.IsNaN(refused.Mean(EngineFigures.Torque)) && double.IsNaN(refused.Most(EngineFigures.Torque)));
        Assert.True(sweep.Cells[0].Settled);
        Assert.Contains("lambda", Refused(Engines.Bare, "fuel.lambda=1.9..2.1/2"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_point_that_did_not_settle_is_never_a_number_nor_the_best()
    {
        var settled = Heron.Value.Cells[0];
        var moving = settled with { Points = [.. settled.Points.Take(2), new OperatingPoint(Speeds[2], 80, 0.1, null, null, null)] };
        Assert.True(double.IsNaN(moving.At(2, EngineFigures.Torque)));
        Assert.True(double.IsNaN(moving.Mean(EngineFigures.Torque)));
        Assert.Equal(settled.At(1, EngineFigures.Torque), moving.At(1, EngineFigures.Torque));
        Assert.Null((Heron.Value with { Cells = [moving] }).Best(c => c.Mean(EngineFigures.Torque)));
        Assert.Equal(moving.Points.Take(2).Max(p => p.Figures!.Power), moving.Most(EngineFigures.Power));
    }

    // The area under a curve through (5000, a), (7000, b), (9000, c) is 2000·(a/2 + b + c/2).
    [Fact]
    public void The_mean_is_the_area_under_the_curve_over_its_width()
    {
        var cell = Heron.Value.Cells[1];
        var torque = Enumerable.Range(0, 3).Select(i => cell.At(i, EngineFigures.Torque)).ToList();
        Assert.Equal((torque[0] / 4) + (torque[1] / 2) + (torque[2] / 4), cell.Mean(EngineFigures.Torque), 1e-9);
        Assert.Equal(torque[2], (cell with { Points = [cell.Points[2]] }).Mean(EngineFigures.Torque));
    }

    [Theory]
    [InlineData("clutch.friction=0.1..0.2/2", "clutch.friction: the run does not read it")]
    [InlineData("engine.revLimit=7000..8000rpm/2", "engine.revLimit: the run does not read it")]
    [InlineData("blower.driveRatio=1..2/2", "blower.driveRatio: the run does not read it")]
    [InlineData("valve[inlet.1.2].lift=8..10mm/2", "the run does not read it")]
    public void Refuses_what_the_run_does_not_read(string varied, string sentence) => Assert.Contains(sentence, Refused(Engines.Bare, varied), StringComparison.Ordinal);

    [Fact]
    public void Refuses_one_field_twice_three_fields_and_an_engine_with_something_missing()
    {
        Assert.Contains("given twice", Refused(Engines.Bare, "fuel.lambda=0.8..0.9/2", "fuel.lambda=0.9..1/2"), StringComparison.Ordinal);
        Assert.Contains("given 3 fields, wanted one or two", Refused(Engines.Bare, "fuel.lambda=0.8..0.9/2", "crank.stroke=70..80mm/2", "rod.length=140..150mm/2"), StringComparison.Ordinal);
        Assert.Contains("the engine cannot be run yet; wanted: rod", Refused(Engines.Bare.Without("rod.length"), "fuel.lambda=0.8..0.9/2"), StringComparison.Ordinal);
    }

    [Fact]
    public void Stops_when_told_and_tells_how_far_it_is()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => EngineSweep.Run(Engines.Bare, [Variation.Parse("--vary", "fuel.lambda=0.8..0.9/2")], Slower, stop: stop.Token));
        var told = new Told();
        EngineSweep.Run(Engines.Bare, [Variation.Parse("--vary", "fuel.lambda=0.8..0.9/2")], Slower, progress: told);
        Assert.Equal([0.5, 1], told.Shares);
    }

    private static string Refused(BuildBook book, params string[] varied) =>
        Assert.Throws<BadInputException>(() => EngineSweep.Run(book, [.. varied.Select(v => Variation.Parse("--vary", v))], Slower)).Message;

    private static IReadOnlyList<OperatingPoint> Edited(BuildBook book, double[] speeds, params (string Path, string Text)[] values) =>
        EngineRun.Run(EngineAssembly.Build(new View(book.Changed("edit", values).Now()))!, speeds);

    private static void Same(IReadOnlyList<OperatingPoint> expected, IReadOnlyList<OperatingPoint> actual)
    {
        Assert.Equal(expected.Select(p => p.Speed), actual.Select(p => p.Speed));
        foreach (var (e, a) in expected.Zip(actual))
        {
            Assert.Equal(1, a.Figures!.Torque / e.Figures!.Torque, 1e-4);
            Assert.Equal(1, a.Figures.PeakPressure / e.Figures.PeakPressure, 1e-4);
            Assert.Equal(e.Figures.Boost, a.Figures.Boost, Math.Abs(e.Figures.Boost) * 1e-3);
        }
    }

    private sealed class Told : IProgress<double>
    {
        public List<double> Shares { get; } = [];

        public void Report(double value) => Shares.Add(value);
    }
}
