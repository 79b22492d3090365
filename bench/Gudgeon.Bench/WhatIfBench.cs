using System.Diagnostics;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Bench;

/// <summary>What a move of a slider costs beside the sweep from cold.</summary>
internal static class WhatIfBench
{
    private const int Moves = 20;

    private static readonly Gudgeon.Book.Build.BuildBook Heron = BookFile.Open(Path.Combine(AppContext.BaseDirectory, "heron.json")).Book;
    private static readonly EngineDuty Now = new View(Heron.Now(), new DutyDesk()).Duty()!;

    /// <summary>Each way moves its slider to a place where it has not been.</summary>
    public static void Sliders()
    {
        var speeds = Now.Points.Select(p => p.Speed).ToList();
        var boost = Now.Most(f => f.Boost).Value;
        SideBySide.Run(
            "Heron, what-if",
            "ms",
            1e3,
            ("14-speed sweep from cold", () => EngineRun.Run(Now.Spec, speeds)),
            ("drive ratio moved, first look", Look((w, x) => new Wishes { DriveRatio = w.DriveRatio * x })),
            ("boost moved, first look", Look((_, x) => new Wishes { Boost = boost * x })),
            ("burn moved, first look", Look((w, x) => new Wishes { Burned50 = w.Burned50 * x })),
            ("compression moved, first look", Look((w, x) => new Wishes { CompressionRatio = w.CompressionRatio * x })),
            ("mixture moved, first look", Look((w, x) => new Wishes { Lambda = w.Lambda * x })),
            ("drive ratio moved, all speeds", Whole((w, x) => new Wishes { DriveRatio = w.DriveRatio * x })));
    }

    /// <summary>Twenty moves of all sliders in turn, by hand-sized steps: median and worst of the first look.</summary>
    public static void TwentyMoves()
    {
        var whatIf = new WhatIf(Heron, Now);
        var boost = Now.Most(f => f.Boost).Value;
        whatIf.Look(new Wishes { Lambda = Now.Spec.Lambda * 1.001 });
        var times = new double[Moves];
        var wishes = new Wishes();
        for (var i = 0; i < Moves; i++)
        {
            var x = Share(i);
            wishes = (i % 5) switch
            {
                0 => wishes with { DriveRatio = whatIf.DriveRatio * x, Boost = null },
                1 => wishes with { Boost = boost * x },
                2 => wishes with { Burned50 = whatIf.Burned50 * x },
                3 => wishes with { CompressionRatio = whatIf.CompressionRatio * x },
                _ => wishes with { Lambda = whatIf.Lambda * x },
            };
            var started = Stopwatch.GetTimestamp();
            whatIf.Look(wishes);
            times[i] = Stopwatch.GetElapsedTime(started).TotalMilliseconds;
        }

        Console.WriteLine(FormattableString.Invariant($"Heron, first look after each of {Moves} moves of the sliders\n  median {times.Order().ElementAt(Moves / 2):0} ms, worst {times.Max():0} ms"));
    }

    private static Action Look(Func<WhatIf, double, Wishes> wish)
    {
        var (whatIf, move) = (new WhatIf(Heron, Now), 0);
        return () => whatIf.Look(wish(whatIf, Share(move++)));
    }

    private static Action Whole(Func<WhatIf, double, Wishes> wish)
    {
        var (whatIf, move) = (new WhatIf(Heron, Now), 0);
        return () => whatIf.Whole(whatIf.Look(wish(whatIf, Share(move++))));
    }

    /// <summary>Up and down by up to 7 %, never the same place twice in a row.</summary>
    private static double Share(int move) => 1 + (0.07 * Math.Sin(1 + (0.9 * move)));
}
