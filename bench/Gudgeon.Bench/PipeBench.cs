using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Bench;

/// <summary>Sod's tube, one gas: the vector kernel against a plain loop of the same scheme.</summary>
internal static class PipeBench
{
    private const double Gamma = 1.4;

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
