using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Sweeps;

/// <summary>The engine with one value of each varied field.</summary>
/// <param name="Values">The values, in the order of the fields.</param>
/// <param name="Points">A point for each speed of the sweep; none when the engine cannot be run with these values.</param>
/// <param name="Refusal">Why it cannot be run; empty when it can.</param>
public sealed record SweepCell(IReadOnlyList<KnownValue> Values, IReadOnlyList<OperatingPoint> Points, string Refusal)
{
    /// <summary>Whether every speed settled.</summary>
    public bool Settled => Points.Count > 0 && Points.All(p => p.Converged);

    /// <summary>A figure at one of the speeds, SI; NaN where the point did not settle.</summary>
    public double At(int speed, EngineFigure figure) => speed < Points.Count && Points[speed].Figures is { } f ? figure.Of(f) : double.NaN;

    /// <summary>Greatest of a figure over the speeds that settled, SI; NaN when none did.</summary>
    public double Most(EngineFigure figure) => Points.Where(p => p.Converged).Select(p => figure.Of(p.Figures!)).DefaultIfEmpty(double.NaN).Max();

    /// <summary>Mean of a figure over the speeds, SI; NaN unless every speed settled.</summary>
    public double Mean(EngineFigure figure) => SpeedMean.Of(Points, figure);

    /// <summary>"1.05", "1200 mm² and 9.5 mm".</summary>
    public string Words(bool imperial) => string.Join(" and ", Values.Select(v => v.Shown(imperial)));
}

/// <summary>The engine over values of one field or two.</summary>
/// <param name="Varied">The fields and their values.</param>
/// <param name="Speeds">Crank speeds, rad/s.</param>
/// <param name="Cells">A cell for each combination; the values of the first field run fastest.</param>
public sealed record EngineSweep(IReadOnlyList<Variation> Varied, IReadOnlyList<double> Speeds, IReadOnlyList<SweepCell> Cells)
{
    /// <summary>Most fields that are varied together.</summary>
    public const int MostFields = 2;

    /// <summary>The cell with these values, counted from 0.</summary>
    /// <param name="first">Which value of the first field.</param>
    /// <param name="second">Which value of the second.</param>
    public SweepCell Cell(int first, int second = 0) => Cells[(second * Varied[0].Count) + first];

    /// <summary>The cell in which something is greatest, or least; null when it is known in none.</summary>
    public SweepCell? Best(Func<SweepCell, double> merit, bool least = false)
    {
        var known = Cells.Where(c => double.IsFinite(merit(c)));
        return least ? known.MinBy(merit) : known.MaxBy(merit);
    }

    /// <summary>Runs the engine over every combination. Each run starts from its neighbour's, as close to settled as any run is.</summary>
    /// <param name="book">The build.</param>
    /// <param name="varied">The fields, one or two.</param>
    /// <param name="speeds">Crank speeds, rad/s.</param>
    /// <param name="near">The run of the book as it stands, when there is one, to start from.</param>
    /// <param name="progress">Told the share of combinations done, 0 to 1.</param>
    /// <param name="stop">Stops it between cycles.</param>
    /// <exception cref="BadInputException">The run does not read a field, or can be made with none of the values.</exception>
    public static EngineSweep Run(BuildBook book, IReadOnlyList<Variation> varied, IReadOnlyList<double> speeds, EngineDuty? near = null, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        Check(varied);
        var engine = new VariedEngine(book);
        engine.DemandRead(Laid(varied, varied.Select(v => v.Values[0])), Laid(varied, varied.Select(v => v.Values[^1])));
        var (columns, rows) = (varied[0].Values, varied.Count > 1 ? varied[1].Values.Select(v => (KnownValue?)v).ToList() : [null]);
        var cells = new SweepCell[columns.Count * rows.Count];
        var done = 0;
        Parallel.For(0, rows.Count, new ParallelOptions { CancellationToken = stop }, row =>
        {
            var last = near;
            for (var column = 0; column < columns.Count; column++)
            {
                KnownValue[] values = rows[row] is { } second ? [columns[column], second] : [columns[column]];
                (cells[(row * columns.Count) + column], last) = Cell(engine, varied, values, speeds, last, stop);
                progress?.Report((double)Interlocked.Increment(ref done) / cells.Length);
            }
        });
        return Array.TrueForAll(cells, c => c.Refusal.Length > 0) ? throw new BadInputException(cells[0].Refusal) : new EngineSweep(varied, speeds, cells);
    }

    /// <summary>The run of the book as it stands, of the speeds that settle.</summary>
    /// <param name="book">The build.</param>
    /// <param name="speeds">Crank speeds, rad/s.</param>
    /// <param name="stop">Stops it between cycles.</param>
    /// <exception cref="BadInputException">It cannot be run, or settles at none of the speeds.</exception>
    public static EngineDuty AsItStands(BuildBook book, IReadOnlyList<double> speeds, CancellationToken stop = default) =>
        new VariedEngine(book).Run(new Dictionary<string, KnownValue>(StringComparer.Ordinal), speeds, null, stop).Settled
        ?? throw new BadInputException("the engine run of the book as it stands settles at none of the speeds, so there is none of greatest power; give one with --at");

    private static void Check(IReadOnlyList<Variation> varied)
    {
        if (varied.Count is < 1 or > MostFields)
        {
            throw new BadInputException($"--vary: given {varied.Count} fields, wanted one or two");
        }

        if (varied.Select(v => v.Address.Path).Distinct(StringComparer.Ordinal).Count() < varied.Count)
        {
            throw new BadInputException($"--vary: {varied[0].Address.Path} is given twice");
        }
    }

    private static (SweepCell Cell, EngineDuty? Last) Cell(VariedEngine engine, IReadOnlyList<Variation> varied, KnownValue[] values, IReadOnlyList<double> speeds, EngineDuty? last, CancellationToken stop)
    {
        try
        {
            var (points, settled) = engine.Run(Laid(varied, values), speeds, last, stop);
            return (new SweepCell(values, points, ""), settled ?? last);
        }
        catch (BadInputException e)
        {
            return (new SweepCell(values, [], e.Message), last);
        }
    }

    private static Dictionary<string, KnownValue> Laid(IReadOnlyList<Variation> varied, IEnumerable<KnownValue> values) =>
        varied.Zip(values).ToDictionary(v => v.First.Address.Path, v => v.Second, StringComparer.Ordinal);
}
