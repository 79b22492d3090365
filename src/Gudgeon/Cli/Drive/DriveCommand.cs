using Gudgeon.Book.Build;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;
using Gudgeon.Cli.Sheets;
using ScottPlot;

namespace Gudgeon.Cli.Drive;

/// <summary>What the sheets of the boost drive have in common on the terminal: steps with their cautions, a table, a picture.</summary>
/// <typeparam name="TSheet">The sheet.</typeparam>
internal abstract class DriveCommand<TSheet> : SheetCommand<SheetSettings, TSheet>
    where TSheet : IDriveSheet
{
    protected sealed override TSheet Work(SheetSettings settings, BookFile file, DutyDesk desk) => Work(file.Book.Now(), desk);

    protected sealed override bool Finished(TSheet sheet) => sheet.Steps.Count > 0 && sheet.Refused.Count == 0;

    protected sealed override object Json(TSheet sheet) => new { steps = sheet.Steps.Select(s => new { s.Title, facts = FactLines.Json(s.Facts), s.Caution }), table = Rows(sheet), sheet.Missing, sheet.Refused };

    /// <summary>Works the sheet.</summary>
    protected abstract TSheet Work(Snapshot now, DutyDesk desk);

    /// <summary>What the sheet leaves out.</summary>
    protected abstract string Remark { get; }

    /// <summary>Headings and rows of its table; no rows when it has none.</summary>
    protected abstract (IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows) Table(TSheet sheet, bool imperial);

    /// <summary>The table for a program, SI.</summary>
    protected abstract object Rows(TSheet sheet);

    /// <summary>Panels of its picture; none when there is nothing to draw.</summary>
    protected abstract IEnumerable<Plot> Panels(TSheet sheet, bool imperial);

    protected sealed override void Draw(TSheet sheet, string picture, SheetSettings settings)
    {
        var panels = Pictures.Sheet(Panels(sheet, settings.Imperial));

        if (panels.Subplots.Count == 0)
        {
            throw new BadInputException($"--svg: there is nothing to draw. {sheet.Missing}".Trim());
        }

        Pictures.Save(panels, picture);
    }

    protected sealed override void Print(TSheet sheet, bool imperial)
    {
        foreach (var step in sheet.Steps)
        {
            Out.Line(step.Title);
            FactLines.Print(step.Facts, imperial);
            Out.LineIf(step.Caution.Length > 0, "  Caution: " + step.Caution);
            Out.Line();
        }

        var (headings, rows) = Table(sheet, imperial);
        if (rows.Count > 0)
        {
            Columns.Print(headings, rows);
            Out.Line();
        }

        FactLines.PrintRefused(sheet.Refused);
        Out.LineIf(sheet.Missing.Length > 0, sheet.Missing);
        Out.LineIf(sheet.Steps.Count > 0, Remark);
    }
}
