using System.Globalization;
using System.Text;
using Gudgeon.Simulation.Engine;
using ScottPlot;

namespace Gudgeon.Cli;

/// <summary>One pipe of a wave picture: its numbers at the rows and columns that are drawn.</summary>
internal sealed class WaveColumn
{
    private const double Overlap = 0.25;

    private readonly double[] _xs;

    /// <param name="pipe">The pipe.</param>
    /// <param name="x">Its left edge, px.</param>
    /// <param name="width">px.</param>
    /// <param name="picked">Place in the trace of each row.</param>
    /// <param name="shown">From Pa to the unit shown.</param>
    public WaveColumn(PipeTrace pipe, double x, double width, int[] picked, Func<double, double> shown)
    {
        (Pipe, X, Width) = (pipe, x, width);
        _xs = [x, .. pipe.Places.Select(p => x + (p / pipe.Length * width)), x + width];
        Pressure = [.. picked.Select(i => Ends(pipe.Pressure[i], shown))];
        Backwards = [.. picked.Select(i => Ends(pipe.Velocity[i], v => -v))];
    }

    public PipeTrace Pipe { get; }

    public double X { get; }

    public double Width { get; }

    /// <summary>In the unit shown; the ends as the cells next to them.</summary>
    public double[][] Pressure { get; }

    /// <summary>Speed against the way the engine breathes, m/s.</summary>
    public double[][] Backwards { get; }

    /// <summary>Pressure over the picture, for lines.</summary>
    public Coordinates3d[,] Grid(Func<int, double> y)
    {
        var grid = new Coordinates3d[Pressure.Length, _xs.Length];
        for (var row = 0; row < Pressure.Length; row++)
        {
            for (var k = 0; k < _xs.Length; k++)
            {
                grid[row, k] = new(_xs[k], y(row), Pressure[row][k]);
            }
        }

        return grid;
    }

    /// <summary>Path over everything above a level: a strip for each stretch of each row.</summary>
    public string Above(double[][] values, double level, Func<int, double> y, double high)
    {
        var path = new StringBuilder();
        for (var row = 0; row < values.Length; row++)
        {
            // The first and the last row are the same angle, half of it at each end. Strips overlap a little, so that no light shows between.
            var (top, tall) = (y(row) - (row == values.Length - 1 ? 0 : (high / 2) + Overlap), row == 0 || row == values.Length - 1 ? (high / 2) + Overlap : high + (2 * Overlap));
            foreach (var (from, to) in Stretches(values[row], level))
            {
                path.Append(CultureInfo.InvariantCulture, $"M{from:0.#} {top:0.#}h{to - from:0.#}v{tall:0.#}h{from - to:0.#}z");
            }
        }

        return path.ToString();
    }

    private IEnumerable<(double From, double To)> Stretches(double[] row, double level)
    {
        var from = row[0] > level ? _xs[0] : double.NaN;
        for (var k = 1; k < row.Length; k++)
        {
            if (row[k - 1] > level == row[k] > level)
            {
                continue;
            }

            var x = _xs[k - 1] + ((level - row[k - 1]) / (row[k] - row[k - 1]) * (_xs[k] - _xs[k - 1]));
            if (row[k] > level)
            {
                from = x;
            }
            else
            {
                yield return (from, x);
            }
        }

        if (row[^1] > level)
        {
            yield return (from, _xs[^1]);
        }
    }

    private static double[] Ends(double[] cells, Func<double, double> shown) => [shown(cells[0]), .. cells.Select(shown), shown(cells[^1])];
}
