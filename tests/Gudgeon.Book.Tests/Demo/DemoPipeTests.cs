using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Book.Tests.Demo;

/// <summary>The pipes of the demo books are those for which their lumped volumes stand.</summary>
public class DemoPipeTests
{
    [Theory]
    [InlineData("heron", true)]
    [InlineData("heron", false)]
    [InlineData("wren", true)]
    [InlineData("wren", false)]
    public void Pipes_hold_what_the_lumped_volumes_say(string name, bool changed)
    {
        var book = DemoBooks.Named(name).Book;
        var now = changed ? book.Now() : new Snapshot(book, new HashSet<string>(StringComparer.Ordinal));
        var lumped = EngineAssembly.Build(new View(now))!;
        var view = new View(now);
        var wave = EngineAssembly.Build(view, Depth.Wave)!;
        Assert.Empty(view.Trace.Missing);
        Assert.All(wave.Pipework!.Inlets, t => Assert.InRange(Held(t) / lumped.Intake.PortVolume, 0.95, 1.05));
        Assert.InRange(wave.Pipework.Exhausts.Sum(Held) / lumped.Exhaust.CollectorVolume, 0.95, 1.05);

        // The effective area is that of the pipe less what the gas contracts: never more, and not much less.
        var (runner, way) = (wave.Pipework.Inlets[0].Pipe.Tapers[0].From, wave.Pipework.Exhausts[0].Pipe.Tapers[^1].To);
        Assert.InRange(lumped.Intake.RunnerArea / Area(runner), 0.85, 1.0);
        Assert.InRange(lumped.Exhaust.OutletArea / Area(way), 0.6, 1.0);
    }

    [Fact]
    public void The_silencer_goes_when_the_blower_comes()
    {
        var factory = new Snapshot(DemoBooks.Heron.Book, new HashSet<string>(StringComparer.Ordinal));
        Assert.Equal(0.0, Exhaust(factory).JunctionRecovery);
        Assert.Equal([new Taper(0.6, 0.05, 0.066)], Exhaust(DemoBooks.Heron.Now).Pipe.Tapers);
    }

    private static PipeTree Exhaust(Snapshot now) => Assert.Single(EngineAssembly.Build(new View(now), Depth.Wave)!.Pipework!.Exhausts);

    private static double Area(double diameter) => Math.PI / 4 * diameter * diameter;

    private static double Held(PipeTree tree) => new Duct(tree.Pipe.Tapers, 15e-3).Volume.Sum() + tree.JunctionVolume + tree.Branches.Sum(Held);
}
