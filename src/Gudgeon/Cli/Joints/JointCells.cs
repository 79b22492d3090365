using System.Globalization;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Joints;

/// <summary>Bolted joints as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class JointCells(bool imperial)
{
    /// <summary>Headings of the joints; the first is the joint's name.</summary>
    public static readonly IReadOnlyList<string> Joints = ["joint\t", "thread\t", "preload", "least", "greatest", "clamp left", "in service", "yield", "amplitude", "under head", "stretch"];

    /// <summary>Headings of the lubricants.</summary>
    public static readonly IReadOnlyList<string> Lubricants = ["lubricant\t", "friction", "usual", "preload", "at most", "of yield", "same preload at", "K"];

    /// <summary>Headings of a plan's stages.</summary>
    public static readonly IReadOnlyList<string> Stages = ["stage", "every bolt\t", "order\t", "note\t"];

    /// <summary>Headings of the bolt list.</summary>
    public static readonly IReadOnlyList<string> Bolts = ["joint\t", "head\t", "thread\t", "length", "quantity", "strength\t", "mass each", "mass", "saved", "price", "cost", "remark\t"];

    /// <summary>Headings of the head joint's levels.</summary>
    /// <param name="sheet">The sheet.</param>
    public static IReadOnlyList<string> Levels(HeadJointSheet sheet) => [sheet.Varied.Label.ToLowerInvariant(), "power", "boost", "peak", "gas load", "clamp left", "line load", "ring", "reserve"];

    /// <summary>The row of a joint.</summary>
    public IReadOnlyList<string> Of(JointFigures j) =>
        [j.Key, j.Thread, Force(j.Preload), Force(j.Least), Force(j.Greatest), Force(j.ClampLeft), Stress(j.WorkingStress), Stress(j.Yield), Stress(j.Amplitude), Stress(j.HeadPressure), Length(j.Stretch)];

    /// <summary>The row of a lubricant.</summary>
    public IReadOnlyList<string> Of(LubricantRow r) =>
        [r.Lubricant, $"{Number(r.Least)} to {Number(r.Worst)}", Number(r.Usual), Force(r.Preload), Force(r.Most), Share(r.YieldShare), Torque(r.Torque), Number(r.NutFactor)];

    /// <summary>The row of a stage.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="at">Its number, from 1.</param>
    public IReadOnlyList<string> Of(TighteningStage stage, int at) => [at.ToString(CultureInfo.InvariantCulture), stage.Words(imperial), string.Join(" ", stage.Order), stage.Note];

    /// <summary>The row of a joint's bolts.</summary>
    public IReadOnlyList<string> Of(BoltLine l) =>
    [
        l.Key, l.Head, l.Thread, Length(l.Length), l.Quantity.ToString(CultureInfo.InvariantCulture), l.StrengthIn(imperial),
        Mass(l.Mass), Mass(l.MassAll), Mass(l.MassSaved), Money(l.Price), Money(l.Cost), l.RemarkIn(imperial),
    ];

    /// <summary>The row of a level.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="level">The level.</param>
    public IReadOnlyList<string> Of(HeadJointSheet sheet, HeadLevel level) =>
    [
        sheet.Varied.Print(level.Value, imperial) + (Math.Abs(level.Value - sheet.Now) < 1e-9 * sheet.Now ? " now" : ""), Cell.Of(level.Power, Dimension.Power, "kW", 4, imperial), Pressure(level.Boost), Pressure(level.Peak),
        Force(level.Gas), Force(level.Clamp), Cell.Of(level.LineLoad, Dimension.ForcePerLength, "N/mm", 4, imperial), Stress(level.RingStress), Number(level.Reserve),
    ];

    /// <summary>Rows of a comparison: name, then a cell for each column.</summary>
    public IEnumerable<IReadOnlyList<string>> Rows(SwapSheet sheet)
    {
        yield return ["tightening torque", .. sheet.Columns.Select(c => Torque(c.Torque))];
        yield return ["mass of the bolts", .. sheet.Columns.Select(c => Mass(c.Mass))];
        var facts = sheet.Columns.Select(c => c.Figures.Facts).ToList();
        for (var i = 0; i < facts.Min(f => f.Count); i++)
        {
            var at = i;
            yield return [facts[0][i].Name, .. sheet.Columns.Select(c => Fact(c, facts[0][at].Name, c.Figures.Facts[at]))];
        }

        foreach (var title in sheet.Columns.SelectMany(c => c.Verdicts).Select(v => v.Title).Distinct(StringComparer.Ordinal))
        {
            yield return [$"reserve: {title.ToLowerInvariant()}", .. sheet.Columns.Select(c => Verdict(c.Verdicts.FirstOrDefault(v => v.Title == title)))];
        }

        yield return ["yield strength", .. sheet.Columns.Select(c => Stress(c.Figures.Yield))];
        yield return ["amplitude borne for good", .. sheet.Columns.Select(c => Stress(c.Figures.FatigueStrength))];
        yield return ["engagement wanted", .. sheet.Columns.Select(c => Length(c.Figures.EngagementWanted))];
    }

    private static string Verdict(SwapVerdict? verdict) => verdict is null ? "" : double.IsNaN(verdict.Reserve) ? verdict.Verdict.Words() : $"{Figures.Number(verdict.Reserve, 3)} {verdict.Verdict.Words()}";

    /// <summary>A number of a column with its verdict where a check holds it to something, and that the joint opens where it does.</summary>
    private string Fact(SwapColumn column, string name, Fact fact)
    {
        var word = name switch
        {
            JointFigures.WhileTightening => column.By(SwapVerdict.Tightening)?.Verdict.Words(),
            JointFigures.InService => column.By(SwapVerdict.Service)?.Verdict.Words(),
            JointFigures.ClampLeftName => fact.Remark,
            _ => null,
        };
        return !fact.Known ? Cell.Unknown : string.IsNullOrEmpty(word) ? fact.Print(imperial) : $"{fact.Print(imperial)}, {word}";
    }

    /// <summary>A mass.</summary>
    public string Mass(double? kilograms) => Cell.Of(kilograms, Dimension.Mass, "g", 4, imperial);

    /// <summary>Money of the shop.</summary>
    public static string Money(double? price) => Parts.PartCells.Money(price);

    private static string Number(double value) => double.IsNaN(value) ? Cell.Unknown : value.ToString("0.00#", CultureInfo.InvariantCulture);

    private static string Share(double value) => double.IsNaN(value) ? Cell.Unknown : value.ToString("0 %", CultureInfo.InvariantCulture);

    private string Force(double newtons) => Cell.Of(newtons, Dimension.Force, "kN", 4, imperial);

    private string Stress(double pascals) => Cell.Of(pascals, Dimension.Pressure, "MPa", 4, imperial);

    private string Pressure(double pascals) => Cell.Of(pascals, Dimension.Pressure, "bar", 3, imperial);

    private string Length(double? metres) => Cell.Of(metres, Dimension.Length, "mm", 4, imperial);

    private string Torque(double? newtonMetres) => Cell.Of(newtonMetres, Dimension.Torque, "N·m", 4, imperial);
}
