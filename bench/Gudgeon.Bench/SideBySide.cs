using System.Diagnostics;

namespace Gudgeon.Bench;

/// <summary>
/// Times several ways of doing one thing in turn, so that all of them meet the same machine, and prints median and best of
/// each with the ratio of its median to the first's. On a busy machine only the best says anything.
/// </summary>
internal static class SideBySide
{
    private const int Rounds = 9;

    public static void Run(string title, string unit, double scale, params (string Name, Action Work)[] ways)
    {
        Array.ForEach(ways, w => w.Work());
        var times = ways.Select(_ => new double[Rounds]).ToArray();
        for (var round = 0; round < Rounds; round++)
        {
            for (var w = 0; w < ways.Length; w++)
            {
                var started = Stopwatch.GetTimestamp();
                ways[w].Work();
                times[w][round] = Stopwatch.GetElapsedTime(started).TotalSeconds * scale;
            }
        }

        Console.WriteLine(title);
        var first = Median(times[0]);
        for (var w = 0; w < ways.Length; w++)
        {
            Console.WriteLine(FormattableString.Invariant($"  {ways[w].Name,-58} {Median(times[w]),9:0.##} {unit}  best {times[w].Min(),9:0.##}  x {Median(times[w]) / first:0.00}"));
        }
    }

    private static double Median(double[] values) => values.Order().ElementAt(values.Length / 2);
}
