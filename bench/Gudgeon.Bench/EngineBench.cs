using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Tests.Engine;

namespace Gudgeon.Bench;

/// <summary>The lumped engine model: sweep, single points, the march itself.</summary>
internal static class EngineBench
{
    private static readonly EngineModel Twin = new(Engines.BlownTwin());
    private static readonly double[] Speeds = [.. Enumerable.Range(0, 14).Select(i => Engines.Rpm(3000 + (500 * i)))];
    private static readonly RunOptions Sweeping = new() { Speeds = Speeds };

    /// <summary>Fourteen full-load points of the blown twin to a relative change of 1e-6.</summary>
    public static void Sweep() => SideBySide.Run(
        "14-speed full-load sweep, blown 900 cm³ twin, cold start",
        "ms",
        1e3,
        ("one core", () => Twin.Run(Sweeping with { DegreeOfParallelism = 1 })),
        ("two cores", () => Twin.Run(Sweeping with { DegreeOfParallelism = 2 })),
        ("two cores, gas tables made anew", () => new EngineModel(Engines.BlownTwin()).Run(Sweeping with { DegreeOfParallelism = 2 })));

    public static void Points()
    {
        var near = Twin.RunPoint(Engines.Rpm(7000), Sweeping).State;
        var nudged = new EngineModel(Engines.BlownTwin() with { Lambda = 0.861 });
        SideBySide.Run(
            "one point, 7000 rpm",
            "ms",
            1e3,
            ("cold start", () => Twin.RunPoint(Engines.Rpm(7000), Sweeping)),
            ("from the point at 6930 rpm", () => Twin.RunPoint(Engines.Rpm(7070), Sweeping, near)),
            ("from the same speed at another mixture", () => nudged.RunPoint(Engines.Rpm(7000), Sweeping, near)),
            ("cold start to 1e-4", () => Twin.RunPoint(Engines.Rpm(7000), Sweeping with { Tolerance = 1e-4 })));
    }

    /// <summary>Ten cycles of the march alone, with and without what surrounds it.</summary>
    public static void Cycles()
    {
        var setup = new MarchSetup(Engines.BlownTwin());
        var speed = Engines.Rpm(7000);
        var march = new March(setup, speed, setup.Steps(speed, 1), setup.Spec.Combustion);
        march.FillFresh();
        SideBySide.Run(
            FormattableString.Invariant($"ten cycles at 7000 rpm, {march.Steps} steps each"),
            "ms",
            1e3,
            ("march", () => Repeat(march, 10)),
            ("plain repetition to 1e-6, without foresight", () => SettlePlainly(setup, speed)),
            ("Anderson's acceleration to 1e-6", () => Twin.RunPoint(speed, Sweeping)));
    }

    private static void Repeat(March march, int cycles)
    {
        for (var i = 0; i < cycles; i++)
        {
            march.Cycle();
        }
    }

    private static void SettlePlainly(MarchSetup setup, double speed)
    {
        var march = new March(setup, speed, setup.Steps(speed, 1), setup.Spec.Combustion);
        march.FillFresh();
        var repetition = new Repetition(setup, march);
        do
        {
            repetition.Begin();
            march.Cycle();
        }
        while (repetition.End() > 1e-6);
    }
}
