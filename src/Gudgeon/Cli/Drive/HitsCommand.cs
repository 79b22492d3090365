using Gudgeon.Book.Build;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Drive;

/// <summary>gudgeon drive hits: what start, shift and cut do to the drive, and the burst of the impeller.</summary>
internal sealed class HitsCommand : DriveCommand<HitSheet>
{
    protected override string Remark => HitSheet.Remark;

    protected override HitSheet Work(Snapshot now, DutyDesk desk) => HitSheet.Of(now, desk);

    protected override (IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows) Table(HitSheet sheet, bool imperial) => (HitCells.Headings, [.. sheet.Hits.Select(new HitCells(imperial).Of)]);

    protected override object Rows(HitSheet sheet) => new { sheet.Hits, sheet.Paths };

    protected override IEnumerable<Plot> Panels(HitSheet sheet, bool imperial)
    {
        if (sheet.Hits.Count == 0)
        {
            yield break;
        }

        var unit = Figures.Shown(Dimension.Torque, "N·m", imperial);
        var plot = new Plot();
        (string Name, double Torque, bool Hit)[] rows = [.. sheet.Paths.Select(p => ($"carried by {p.Name}", p.Torque, false)).Reverse(), .. sheet.Hits.Select(h => (h.Name, h.Torque, true)).Reverse(), ("greatest steady torque", sheet.Hits[0].Steady, true)];
        plot.Add.Bars(rows.Select((r, i) => new Bar { Position = i, Value = unit.FromSi(r.Torque), Orientation = Orientation.Horizontal, FillColor = r.Hit ? Colors.SteelBlue : Colors.LightGray, Label = Figures.Print(r.Torque, Dimension.Torque, "N·m", 3, imperial) }).ToArray()).Horizontal = true;
        plot.Axes.Left.SetTicks([.. rows.Select((_, i) => (double)i)], [.. rows.Select(r => r.Name)]);
        plot.Axes.SetLimitsX(0, unit.FromSi(rows.Max(r => r.Torque)) * 1.15);
        plot.XLabel($"torque at the crank, {unit.Symbol}");
        plot.Title("Hits on the drive, and below them what carries them");
        yield return plot;
    }
}
