using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Book.Tests.Duty;

public class PipeworkAssemblyTests
{
    private static readonly (string, string)[] Twin = [("engine.cylinders", "2"), ("engine.firingIntervals", "360-360")];

    private static readonly (string, string)[] Four = [("engine.cylinders", "4"), ("engine.firingOrder", "1-3-4-2"), ("exhaust.layout", "in pairs, then into one"), ("exhaust.secondary.length", "450 mm"), ("exhaust.secondary.diameter", "46 mm")];

    private static readonly (string, string)[] Tail = [("exhaust.tail.length", "600 mm"), ("exhaust.tail.diameter", "50 mm")];

    private static BuildBook Single { get; } = Engines.Bare.Set(("intake.runner.length", "240 mm"), ("intake.runner.diameter", "46 mm"), ("exhaust.primary.length", "700 mm"), ("exhaust.primary.diameter", "42 mm"));

    [Fact]
    public void A_lumped_engine_has_no_pipes_and_reads_none()
    {
        var view = new View(Single.Now());
        Assert.Null(EngineAssembly.Build(view)!.Pipework);
        Assert.DoesNotContain(view.Trace.Reads, r => r.Address.Field.Subject.Path is "intake.runner" or "exhaust.primary" or "exhaust.tail");
    }

    [Fact]
    public void A_wave_engine_does_not_ask_for_what_stands_in_for_its_pipes()
    {
        string[] lumped = ["intake.portVolume", "intake.runnerArea", "exhaust.collectorVolume", "exhaust.outletArea"];
        var view = new View(lumped.Aggregate(Single, (book, path) => book.Without(path)).Now());
        Assert.NotNull(EngineAssembly.Build(view, Depth.Wave));
        Assert.DoesNotContain(view.Trace.Reads, r => lumped.Contains(r.Address.Path));
    }

    [Theory]
    [InlineData("intake.runner.length")]
    [InlineData("intake.runner.diameter")]
    [InlineData("exhaust.primary.length")]
    [InlineData("exhaust.primary.diameter")]
    [InlineData("exhaust.tail.length")]
    [InlineData("exhaust.tail.diameter")]
    public void What_the_pipes_need_is_listed(string path)
    {
        var view = new View(Single.Set(Twin).Set(Tail).Without(path).Now());
        Assert.Null(EngineAssembly.Build(view, Depth.Wave));
        Assert.Equal(path, Wanted.Words(view.Trace.Missing));
    }

    [Fact]
    public void A_single_has_a_runner_and_a_pipe_with_customary_stand_ins()
    {
        var view = new View(Single.Now());
        var pipes = EngineAssembly.Build(view, Depth.Wave)!.Pipework!;
        var inlet = Assert.Single(pipes.Inlets);
        Assert.Equal((0, 0), (inlet.Cylinder, inlet.Branches.Count));
        Assert.Equal([new Taper(0.24, 0.046, 0.046)], Stretches(inlet.Pipe));
        Assert.Equal((0.0, 0.1, 50e-6, 333.15), (inlet.Pipe.BendLoss, inlet.Pipe.EntryLoss, inlet.Pipe.Roughness, inlet.Pipe.Wall.Temperature));
        var exhaust = Assert.Single(pipes.Exhausts);
        Assert.Equal((0, 0), (exhaust.Cylinder, exhaust.Branches.Count));
        Assert.Equal([new Taper(0.7, 0.042, 0.042)], Stretches(exhaust.Pipe));
        Assert.Equal((0.3, 10e-6, 40.0, 0.7, (double?)null), (exhaust.Pipe.BendLoss, exhaust.Pipe.Roughness, exhaust.Pipe.Wall.OutsideCoefficient, exhaust.Pipe.Wall.Emissivity, exhaust.Pipe.Wall.Temperature));
        Assert.Equal(15e-3, pipes.CellLength, 12);
        Assert.Contains(view.Trace.Reads, r => r.Address.Path == "intake.runner[1].roughness" && r.Fallback == "50 µm");
        Assert.DoesNotContain(view.Trace.Reads, r => r.Address.Field == Exhaust.Layout);
    }

    [Fact]
    public void What_is_given_goes_before_the_stand_ins()
    {
        var pipes = Pipes(Single.Set(
            ("intake.runner.portDiameter", "40 mm"),
            ("intake.runner.entryLoss", "0.03"),
            ("intake.runner.bendLoss", "0.2"),
            ("intake.runner.wallTemperature", "45 °C"),
            ("exhaust.primary.endDiameter", "48 mm"),
            ("exhaust.wallCoefficient", "100 W/(m²·K)"),
            ("exhaust.emissivity", "0.9"),
            ("engine.cellLength", "20 mm")));
        var (inlet, exhaust) = (pipes.Inlets[0].Pipe, pipes.Exhausts[0].Pipe);
        Assert.Equal([new Taper(0.24, 0.046, 0.04)], Stretches(inlet));
        Assert.Equal((0.2, 0.03, 318.15), (inlet.BendLoss, inlet.EntryLoss, inlet.Wall.Temperature));
        Assert.Equal([new Taper(0.7, 0.042, 0.048)], Stretches(exhaust));
        Assert.Equal((100.0, 0.9, 0.02), (exhaust.Wall.OutsideCoefficient, exhaust.Wall.Emissivity, pipes.CellLength));
    }

    [Fact]
    public void A_megaphone_goes_on_from_a_separate_pipe()
    {
        var pipe = Pipes(Single.Set(("exhaust.tail.length", "350 mm"), ("exhaust.tail.diameter", "45 mm"), ("exhaust.tail.endDiameter", "90 mm"))).Exhausts.Single().Pipe;
        Assert.Equal([new Taper(0.7, 0.042, 0.042), new Taper(0.35, 0.045, 0.09)], Stretches(pipe));
    }

    [Fact]
    public void Two_cylinders_stay_apart_or_meet()
    {
        var separate = Pipes(Single.Set(Twin).Set(("exhaust.layout", "separate pipes")));
        Assert.Equal([0, 1], separate.Exhausts.Select(t => t.Cylinder));
        Assert.Equal([0, 1], separate.Inlets.Select(t => t.Cylinder));

        var joined = Pipes(Single.Set(Twin).Set(Tail).Set(("exhaust.merge.volume", "150 cm³"))).Exhausts.Single();
        Assert.Equal(-1, joined.Cylinder);
        Assert.Equal([new Taper(0.6, 0.05, 0.05)], Stretches(joined.Pipe));
        Assert.Equal((150e-6, new PipeTree { Pipe = joined.Pipe }.JunctionRecovery), (Math.Round(joined.JunctionVolume, 9), joined.JunctionRecovery));
        Assert.Equal([0, 1], joined.Branches.Select(t => t.Cylinder));
        Assert.All(joined.Branches, b => Assert.Equal([new Taper(0.7, 0.042, 0.042)], Stretches(b.Pipe)));
    }

    [Fact]
    public void Pipes_of_their_own_lengths_are_told_apart()
    {
        var pipes = Pipes(Single.Set(Twin).Set(Tail).Set(("intake.runner[2].length", "255 mm"), ("exhaust.primary[1].length", "680 mm"), ("exhaust.primary[2].diameter", "43 mm")));
        Assert.Equal([0.24, 0.255], pipes.Inlets.Select(t => Math.Round(t.Pipe.Tapers[0].Length, 9)));
        Assert.Equal([new Taper(0.68, 0.042, 0.042), new Taper(0.7, 0.043, 0.043)], pipes.Exhausts[0].Branches.SelectMany(b => Stretches(b.Pipe)));
    }

    [Theory]
    [InlineData("", "1-4|2-3")]
    [InlineData("1-2, 3-4", "1-2|3-4")]
    [InlineData(" 4-1,3 - 2 ", "4-1|3-2")]
    public void Four_cylinders_meet_in_pairs(string pairs, string wanted)
    {
        var book = Single.Set(Four).Set(Tail);
        var tail = Pipes(pairs.Length > 0 ? book.Set(("exhaust.pairs", pairs)) : book).Exhausts.Single();
        Assert.Equal([new Taper(0.6, 0.05, 0.05)], Stretches(tail.Pipe));
        Assert.Equal(wanted, string.Join('|', tail.Branches.Select(s => string.Join('-', s.Branches.Select(p => p.Cylinder + 1)))));
        Assert.All(tail.Branches, s => Assert.Equal([new Taper(0.45, 0.046, 0.046)], Stretches(s.Pipe)));
    }

    [Fact]
    public void A_pair_that_fires_half_a_cycle_apart_is_the_usual_one()
    {
        Assert.Equal("1-4, 2-3", CylinderGroups.UsualPairs(FiringOrder.Angles(4, "1-2-4-3", "")));
        Assert.Equal("1-6, 2-5, 3-4", CylinderGroups.UsualPairs(FiringOrder.Angles(6, "1-5-3-6-2-4", "")));
    }

    [Theory]
    [InlineData("1-2-3-4", "exhaust.pairs: given '1-2-3-4', wanted each of the 4 cylinders in one pair, such as 1-4, 2-3")]
    [InlineData("1-4", "exhaust.pairs: given '1-4', wanted each of the 4 cylinders in one pair, such as 1-4, 2-3")]
    [InlineData("1-4, 2-4", "exhaust.pairs: given '1-4, 2-4', wanted each of the 4 cylinders in one pair, such as 1-4, 2-3")]
    [InlineData("1-4, 2-5", "exhaust.pairs: given '1-4, 2-5', wanted each of the 4 cylinders in one pair, such as 1-4, 2-3")]
    [InlineData("front", "exhaust.pairs: given 'front', wanted each of the 4 cylinders in one pair, such as 1-4, 2-3")]
    public void Wrong_pairs_are_one_sentence(string pairs, string sentence)
    {
        var book = Single.Set(Four).Set(Tail).Set(("exhaust.pairs", pairs));
        Assert.Equal(sentence, Assert.Throws<BadInputException>(() => Pipes(book)).Message);
        Assert.Equal(sentence, Assert.Throws<BadInputException>(() => BookRules.Verify(book)).Message);
    }

    [Theory]
    [InlineData(1, "exhaust.pairs: given '1-2', but the one cylinder makes no pairs")]
    [InlineData(3, "exhaust.pairs: given '1-2', but the 3 cylinders make no pairs")]
    public void An_odd_number_makes_no_pairs(int cylinders, string sentence) =>
        Assert.Equal(sentence, Assert.Throws<BadInputException>(() => CylinderGroups.Pairs("1-2", cylinders)).Message);

    [Fact]
    public void Three_cylinders_do_not_meet_in_pairs()
    {
        var book = Single.Set(Four).Set(Tail).Set(("engine.cylinders", "3"), ("engine.firingOrder", "1-3-2"));
        Assert.Equal(
            "exhaust.layout: given 'in pairs, then into one' with the 3 cylinders, wanted an even number of cylinders",
            Assert.Throws<BadInputException>(() => Pipes(book)).Message);
    }

    [Fact]
    public void Siamese_ports_branch_from_a_stem_and_a_cylinder_of_its_own_does_not()
    {
        var book = Single.Set(Four).Set(Tail).Set(("intake.runner.shared", "2-3"), ("intake.runner.stemLength", "90 mm"), ("intake.runner.stemDiameter", "48 mm"), ("intake.runner.junctionVolume", "40 cm³"), ("intake.runner[3].length", "80 mm"));
        var inlets = Pipes(book).Inlets;
        Assert.Equal([0, 3, -1], inlets.Select(t => t.Cylinder));
        var stem = inlets[2];
        Assert.Equal([new Taper(0.09, 0.048, 0.048)], Stretches(stem.Pipe));
        Assert.Equal((40e-6, 0.1), (Math.Round(stem.JunctionVolume, 9), stem.Pipe.EntryLoss));
        Assert.Equal([(1, 0.24, 0.0), (2, 0.08, 0.0)], stem.Branches.Select(b => (b.Cylinder, Math.Round(b.Pipe.Tapers[0].Length, 9), b.Pipe.EntryLoss)));

        Assert.Equal([0, 1, 2, 3], Pipes(book.Changed("new-head", ("intake.runner.shared", "none"))).Inlets.Select(t => t.Cylinder));
        Assert.Equal("intake.runner.stemLength", Wanted.Words(Missing(book.Without("intake.runner.stemLength"))));
    }

    [Theory]
    [InlineData("1")]
    [InlineData("1-5")]
    [InlineData("1-2, 2-3")]
    [InlineData("both")]
    public void Wrong_shared_ports_are_one_sentence(string shared) => Assert.Equal(
        $"intake.runner.shared: given '{shared}', wanted the numbers of two or more of the 4 cylinders for each port and none twice, such as 1-2, 3-4",
        Assert.Throws<BadInputException>(() => Pipes(Single.Set(Four).Set(Tail).Set(("intake.runner.shared", shared)))).Message);

    [Fact]
    public void A_silencer_is_a_box_with_a_pipe_out_of_it()
    {
        var silencer = Pipes(Single.Set(Twin).Set(Tail).Set(("exhaust.silencer.volume", "4 L"), ("exhaust.silencer.tailLength", "120 mm"), ("exhaust.silencer.tailDiameter", "40 mm"))).Exhausts.Single();
        Assert.Equal([new Taper(0.12, 0.04, 0.04)], Stretches(silencer.Pipe));
        Assert.Equal((4e-3, 0.0), (Math.Round(silencer.JunctionVolume, 9), silencer.JunctionRecovery));
        var tail = Assert.Single(silencer.Branches);
        Assert.Equal([new Taper(0.6, 0.05, 0.05)], Stretches(tail.Pipe));
        Assert.Equal([0, 1], tail.Branches.Select(t => t.Cylinder));
    }

    [Fact]
    public void A_table_of_diameters_goes_before_lengths_and_steps_where_a_distance_stands_twice()
    {
        var view = new View(Single.Without("intake.runner.length").Without("intake.runner.diameter").Set(("intake.runner.shape", "0 mm at 50 mm; 120 mm at 46 mm; 120 mm at 44 mm; 240 mm at 44 mm")).Now());
        var pipe = EngineAssembly.Build(view, Depth.Wave)!.Pipework!.Inlets[0].Pipe;
        Assert.Equal([new Taper(0.12, 0.05, 0.046), new Taper(0.12, 0.044, 0.044)], Stretches(pipe));
        Assert.DoesNotContain(view.Trace.Reads, r => r.Address.Field == InletRunner.Length);
        Assert.Equal(0.24, new Duct(pipe.Tapers, 15e-3).Length, 9);
    }

    [Theory]
    [InlineData("10 mm at 50 mm; 120 mm at 46 mm")]
    [InlineData("0 mm at 50 mm; 120 mm at 46 mm; 100 mm at 44 mm")]
    [InlineData("0 mm at 50 mm; 0 mm at 46 mm")]
    [InlineData("0 mm at 50 mm")]
    [InlineData("0 mm at 50 mm; 120 mm at 0 mm")]
    public void A_shape_that_is_none_is_one_sentence(string rows)
    {
        var book = Single.Set(("exhaust.primary[1].shape", rows));
        const string Sentence = "exhaust.primary[1].shape: wanted distances that begin at 0 and do not fall, and diameters above zero";
        Assert.Equal(Sentence, Assert.Throws<BadInputException>(() => Pipes(book)).Message);
        Assert.Equal(Sentence, Assert.Throws<BadInputException>(() => BookRules.Verify(book)).Message);
    }

    /// <summary>Rounded as far as amounts lose in their units.</summary>
    private static IEnumerable<Taper> Stretches(PipeSpec pipe) => pipe.Tapers.Select(t => new Taper(Math.Round(t.Length, 9), Math.Round(t.From, 9), Math.Round(t.To, 9)));

    private static PipeworkSpec Pipes(BuildBook book)
    {
        var view = new View(book.Now());
        var spec = EngineAssembly.Build(view, Depth.Wave);
        Assert.True(spec is not null, Wanted.Words(view.Trace.Missing));
        return spec.Pipework!;
    }

    private static IEnumerable<string> Missing(BuildBook book)
    {
        var view = new View(book.Now());
        Assert.Null(EngineAssembly.Build(view, Depth.Wave));
        return view.Trace.Missing;
    }
}
