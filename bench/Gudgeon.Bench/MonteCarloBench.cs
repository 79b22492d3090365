using System.Diagnostics;
using Gudgeon.Calc.Metrology;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;

namespace Gudgeon.Bench;

/// <summary>
/// A million draws of a formula of ten inputs with mean, standard deviation and three percentiles: drawn and selected by our own
/// code, against a general library's generator and a full sort, and, where it is installed, against NumPy in the same minute.
/// </summary>
internal static class MonteCarloBench
{
    private const int Draws = 1_000_000;
    private static readonly double[] Shares = [0.025, 0.5, 0.975];
    private static readonly DrawnInput[] Inputs = [.. Enumerable.Range(0, 10).Select(i => new DrawnInput(DrawnShape.Normal, 1 + (0.1 * i), 0.01))];

    public static void Rate()
    {
        SideBySide.Run(
            "a million draws of a formula of ten inputs, with mean, sd and three percentiles",
            "ms",
            1e3,
            ("one core, own generator, selection", () => Own(1)),
            ("the same without percentiles", () => Propagation.Run(Inputs, Formula, Draws, cores: 1)),
            ("all cores, the same", () => Own(Environment.ProcessorCount)),
            ("one core, System.Random and polar normals, selection", Plain),
            ("one core, library generator, selection", () => Library(v => Array.ForEach(Shares, s => Selection.Quantile(v, s)))),
            ("one core, library generator, full sort", () => Library(Array.Sort)));
        NumPy();
    }

    private static double Formula(ReadOnlySpan<double> x) => (x[0] * x[1] / x[2]) + (x[3] * x[4]) - (x[5] / x[6]) + (x[7] * x[8] * x[9]);

    private static void Own(int cores)
    {
        var drawn = Propagation.Run(Inputs, Formula, Draws, cores: cores);
        Array.ForEach(Shares, s => drawn.At(s));
    }

    /// <summary>The plain way in C#, unseeded: where NumPy cannot be had, the bridge to a machine on which both were timed.</summary>
    private static void Plain()
    {
        var random = new Random();
        var (values, x) = (new double[Draws], new double[Inputs.Length]);
        for (var i = 0; i < Draws; i++)
        {
            for (var k = 0; k < x.Length; k += 2)
            {
                double u, v, square;
                do
                {
                    (u, v) = ((2 * random.NextDouble()) - 1, (2 * random.NextDouble()) - 1);
                    square = (u * u) + (v * v);
                }
                while (square is >= 1 or 0);

                var scale = Math.Sqrt(-2 * Math.Log(square) / square);
                x[k] = Inputs[k].Centre + (Inputs[k].Spread * u * scale);
                x[k + 1] = Inputs[k + 1].Centre + (Inputs[k + 1].Spread * v * scale);
            }

            values[i] = Formula(x);
        }

        var mean = values.Average();
        _ = Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (Draws - 1));
        Array.ForEach(Shares, s => Selection.Quantile(values, s));
    }

    private static void Library(Action<double[]> percentiles)
    {
        var random = new Xoshiro256StarStar(7);
        var (values, x) = (new double[Draws], new double[Inputs.Length]);
        for (var i = 0; i < Draws; i++)
        {
            for (var k = 0; k < x.Length; k++)
            {
                x[k] = Normal.Sample(random, Inputs[k].Centre, Inputs[k].Spread);
            }

            values[i] = Formula(x);
        }

        var mean = values.Average();
        _ = Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (Draws - 1));
        percentiles(values);
    }

    /// <summary>The same by NumPy on one core, nine rounds.</summary>
    private static void NumPy()
    {
        const string Script = """
            import time, numpy as np
            times = []
            for i in range(9):
                start = time.perf_counter()
                g = np.random.default_rng(7)
                x = [g.normal(1 + 0.1 * k, 0.01, 1000000) for k in range(10)]
                y = x[0] * x[1] / x[2] + x[3] * x[4] - x[5] / x[6] + x[7] * x[8] * x[9]
                y.mean(); y.std(ddof=1); np.percentile(y, [2.5, 50, 97.5])
                times.append(1e3 * (time.perf_counter() - start))
            print("  %-58s %9.2f ms  best %9.2f" % ("NumPy " + np.__version__ + ", one core", sorted(times)[4], min(times)))
            """;
        try
        {
            using var python = Process.Start(new ProcessStartInfo("python3", ["-c", Script]) { UseShellExecute = false });
            python!.WaitForExit();
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Console.WriteLine("  no Python here: NumPy's rate stands in docs/performance.md");
        }
    }
}
