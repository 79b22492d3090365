using System.Globalization;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Sweeps;
using Gudgeon.Book.Values;

namespace Gudgeon.Cli;

/// <summary>A sweep as a table and the lines below it.</summary>
/// <param name="sweep">The sweep.</param>
/// <param name="figure">The figure shown.</param>
/// <param name="where">Its speeds in words: "at 9000 rpm".</param>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class SweepSheet(EngineSweep sweep, EngineFigure figure, string where, bool imperial)
{
    private const string Unsettled = "did not settle";

    /// <summary>A smaller share apart is the settling of the runs.</summary>
    private const double Same = 5e-5;

    public EngineSweep Sweep => sweep;

    public EngineFigure Figure => figure;

    public bool Imperial => imperial;

    /// <summary>"greatest", or "least" for what is better the less there is of it.</summary>
    private string Superlative => figure.LessIsBetter ? "least" : "greatest";

    /// <summary>Whether a cell of the sheet is a mean over speeds.</summary>
    public bool IsMean => sweep.Varied.Count == 2 && sweep.Speeds.Count > 1;

    /// <summary>"torque, N·m", "mean torque, N·m, over 3000 rpm to 9700 rpm".</summary>
    public string Title => $"{(IsMean ? "mean " : "")}{figure.Label(imperial)}, {where}";

    /// <summary>What two fields show in one cell: the figure, or its mean.</summary>
    public double Merit(SweepCell cell) => IsMean ? cell.Mean(figure) : cell.At(0, figure);

    /// <summary>The cell that stands out by <see cref="Merit"/>.</summary>
    public SweepCell? Best => sweep.Best(Merit, figure.LessIsBetter);

    /// <summary>"blower.driveRatio", "intake.runnerArea, mm²" as the head of an axis.</summary>
    public string Axis(int field) => Unit(field).Symbol is { Length: > 0 } unit ? $"{sweep.Varied[field].Address.Path}, {unit}" : sweep.Varied[field].Address.Path;

    /// <summary>A value of a field in the unit of <see cref="Axis"/>.</summary>
    public double Shown(int field, KnownValue value) => Unit(field).FromSi(value.Si);

    public void Print()
    {
        Out.Line(Title);
        if (sweep.Varied.Count == 1)
        {
            PrintOne();
        }
        else
        {
            PrintTwo();
        }

        Below();
    }

    private void PrintOne()
    {
        string[] rows = [.. sweep.Speeds.Select(Rpm), .. sweep.Speeds.Count > 1 ? new[] { "mean" } : []];
        string Cell(int row, SweepCell cell) => Text(cell, row < sweep.Speeds.Count ? cell.At(row, figure) : cell.Mean(figure));
        string Stands(int row) => StandsAt(c => row < sweep.Speeds.Count ? c.At(row, figure) : c.Mean(figure));
        Out.Line($"across: {Axis(0)}");
        Grid(
            ["rpm", .. sweep.Varied[0].Values.Select(v => Number(0, v)), $"{Superlative} at"],
            rows.Select((r, i) => (string[])[r, .. sweep.Cells.Select(c => Cell(i, c)), Stands(i)]));
        Summary("greatest power", sweep.Best(c => c.Most(EngineFigures.Power)), c => EngineFigures.Power.Print(c.Most(EngineFigures.Power), imperial) + (sweep.Speeds.Count > 1 ? $" at {Rpm(PeakSpeed(c))} rpm" : ""));
        if (sweep.Speeds.Count > 1)
        {
            Summary($"greatest mean torque {where}", sweep.Best(c => c.Mean(EngineFigures.Torque)), c => EngineFigures.Torque.Print(c.Mean(EngineFigures.Torque), imperial));
        }
    }

    private string StandsAt(Func<SweepCell, double> merit)
    {
        var known = sweep.Cells.Select(merit).Where(double.IsFinite).ToList();
        return known.Count == 0 ? "-" : known.Max() - known.Min() <= Same * Math.Abs(known.Max()) ? "all alike" : Value(0, sweep.Best(merit, figure.LessIsBetter)!);
    }

    private void PrintTwo()
    {
        Out.Line($"across: {Axis(0)}; down: {Axis(1)}");
        Grid(
            ["", .. sweep.Varied[0].Values.Select(v => Number(0, v))],
            sweep.Varied[1].Values.Select((v, row) => (string[])[Number(1, v), .. sweep.Varied[0].Values.Select((_, column) => Text(sweep.Cell(column, row), Merit(sweep.Cell(column, row))))]));
        Summary($"{Superlative} {(IsMean ? "mean " : "")}{figure.Name}", Best, c => figure.Print(Merit(c), imperial));
    }

    private void Summary(string what, SweepCell? best, Func<SweepCell, string> value)
    {
        Out.Line(best is null ? $"{what}: not known, for too little settled" : $"{what}: {value(best)} with {Named(best)}{AtEnd(best)}");
    }

    private string Named(SweepCell cell) => string.Join(" and ", sweep.Varied.Select((v, i) => $"{v.Address.Path} {cell.Values[i].Shown(imperial)}"));

    /// <summary>Says when the best stands at the end of a range, for more may lie beyond.</summary>
    private string AtEnd(SweepCell best)
    {
        var ends = sweep.Varied.Where((v, i) => best.Values[i].Si == v.Values[0].Si || best.Values[i].Si == v.Values[^1].Si).Select(v => v.Address.Path).ToList();
        return ends.Count == 0 ? "" : $" (at the end of the range{(sweep.Varied.Count > 1 ? " of " + string.Join(" and ", ends) : "")})";
    }

    private void Below()
    {
        var (all, settled) = (sweep.Cells.Count * sweep.Speeds.Count, sweep.Cells.Sum(c => c.Points.Count(p => p.Converged)));
        Out.Line(string.Create(CultureInfo.InvariantCulture, $"{settled} of {all} points settled"));
        var refusals = sweep.Cells.Where(c => c.Refusal.Length > 0).Select(c => (Words: $"cannot be run: {c.Refusal}", Cell: c));
        var remarks = sweep.Cells.SelectMany(c => RunSheet.Remarks(c.Points).Select(r => (Words: r, Cell: c)));
        foreach (var alike in refusals.Concat(remarks).GroupBy(r => r.Words))
        {
            Out.Line($"{alike.Key}; with {Folded([.. alike.Select(r => r.Cell.Words(imperial))])}");
        }

        foreach (var question in sweep.Varied.SelectMany(v => new[] { v.Values[0], v.Values[^1] }).Select(v => v.Question).Where(q => q.Length > 0))
        {
            Out.Line("? " + question);
        }
    }

    private static string Folded(List<string> cells) => cells.Count <= 4 ? string.Join(", ", cells) : string.Create(CultureInfo.InvariantCulture, $"{cells[0]} to {cells[^1]} ({cells.Count} of them)");

    private static void Grid(string[] heads, IEnumerable<string[]> rows)
    {
        string[][] lines = [heads, .. rows];
        var widths = heads.Select((_, i) => lines.Max(l => l[i].Length)).ToList();
        foreach (var line in lines)
        {
            Out.Line(string.Join("  ", line.Select((c, i) => c.PadLeft(widths[i]))));
        }
    }

    private static double PeakSpeed(SweepCell cell) => cell.Points.Where(p => p.Converged).MaxBy(p => p.Figures!.Power)!.Speed;

    private string Text(SweepCell cell, double si) => cell.Refusal.Length > 0 ? "cannot be run" : double.IsNaN(si) ? Blank(cell) : figure.Cell(si, imperial);

    /// <summary>A point that settled may yet lack a figure: no consumption without power.</summary>
    private static string Blank(SweepCell cell) => cell.Settled ? "-" : Unsettled;

    private Unit Unit(int field) => Figures.UnitFor(sweep.Varied[field].Range.To.Unit, sweep.Varied[field].Address.Field.Unit, imperial);

    private string Value(int field, SweepCell cell) => Number(field, cell.Values[field]);

    private string Number(int field, KnownValue value) => Figures.Number(Shown(field, value));

    private static string Rpm(double speed) => (speed * 30 / Math.PI).ToString("F0", CultureInfo.InvariantCulture);
}
