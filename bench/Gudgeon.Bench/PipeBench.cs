using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Bench;

/// <summary>Pipes: the vector kernel against a plain loop of the same scheme, and the pipe of an engine beside both.</summary>
internal static class PipeBench
{
    private const double Gamma = 1.4;

    /// <summary>One gas: Sod's tube.</summary>
    public static void Sod()
    {
        foreach (var cells in new[] { 200, 1000, 10_000 })
        {
            var steps = 4_000_000 / cells;
            var dt = 0.4 / cells;
            SideBySide.Run(
                FormattableString.Invariant($"Sod's tube, {cells} cells, one cell-update"),
                "ns",
                1e9 / ((double)cells * steps),
                ("vectors", () => Vectors(cells, steps, dt)),
                ("plain loop", () => new PlainTube(cells, Gamma).March(steps, dt)));
        }
    }

    /// <summary>
    /// What several gases, their own heat capacities, friction, heat and mouths cost over one perfect gas without walls: as many
    /// cells as a runner has, and so many that the mouths no longer count.
    /// </summary>
    public static void Real()
    {
        foreach (var cells in new[] { 24, 200 })
        {
            var steps = 1_000_000 / cells;
            var dt = 0.4 / cells;
            SideBySide.Run(
                FormattableString.Invariant($"A pipe of {cells} cells, one cell-update"),
                "ns",
                1e9 / ((double)cells * steps),
                ("one gas, vectors", () => Vectors(cells, steps, dt)),
                ("one gas, plain loop", () => new PlainTube(cells, Gamma).March(steps, dt)),
                ("engine's exhaust pipe: 2 shares, friction, heat, mouths", () => new RealPipe(cells, 2).March(steps)),
                ("engine's inlet pipe: 3 shares", () => new RealPipe(cells, 3).March(steps)));
        }
    }

    private static void Vectors(int cells, int steps, double dt)
    {
        var pipe = new PerfectPipe(new Duct([Taper.Straight(1, 0.04)], 1.0 / cells), Gamma);
        for (var i = 0; i < cells; i++)
        {
            PerfectGas.Set(pipe.Gas, i, Gamma, i < cells / 2 ? 1 : 0.125, 0, i < cells / 2 ? 1 : 0.1);
        }

        for (var k = 0; k < steps; k++)
        {
            pipe.March(dt);
        }
    }
}
