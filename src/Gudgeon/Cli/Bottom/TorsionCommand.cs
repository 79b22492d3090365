using System.ComponentModel;
using Gudgeon.Book.Bottom;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom torsion: natural frequencies, critical speeds and torques of the crank and all that hangs on it.</summary>
internal sealed class TorsionCommand : SheetCommand<TorsionCommand.Settings, TorsionSheet>
{
    internal sealed class Settings : SheetSettings
    {
        [CommandOption("--without <ROTOR>")]
        [Description("Hold the natural frequencies against those without this rotor and all that hangs on it; against those before the changes when left out.")]
        public string Without { get; init; } = "";
    }

    protected override TorsionSheet Work(Settings settings, BookFile file, DutyDesk desk) =>
        TorsionSheet.Of(file.Book, desk, settings.Without);

    protected override void Draw(TorsionSheet sheet, string picture, Settings settings) => TorsionPicture.Draw(sheet, picture, settings.Imperial);

    protected override bool Finished(TorsionSheet sheet) => sheet.Sweep is not null;

    protected override void Print(TorsionSheet sheet, bool imperial)
    {
        if (sheet.Sweep is null)
        {
            Out.Line(sheet.Missing);
            return;
        }

        var cells = new TorsionCells(imperial);
        Out.Line(TorsionCells.Range(sheet));
        Out.Line();
        Table(TorsionCells.RotorHeadings, cells.Rotors(sheet));
        Table(TorsionCells.ShapeHeadings(sheet), TorsionCells.Shapes(sheet));
        Table(TorsionCells.JointHeadings, sheet.Joints.Select(cells.Of));
        Columns.Print([.. TorsionCells.CriticalHeadings.Select((h, i) => i == 3 ? h + "\t" : h)], sheet.Criticals.Take(TorsionCells.Most).Select(cells.Of));
        Out.Line();
        Out.Line(TorsionSheet.Remark);
        Out.Line("Caution: " + TorsionSheet.Caution);
    }

    private static void Table(IReadOnlyList<string> headings, IEnumerable<IReadOnlyList<string>> rows)
    {
        Columns.Print([headings[0] + "\t", .. headings.Skip(1)], rows);
        Out.Line();
    }

    protected override object Json(TorsionSheet sheet) => new
    {
        rotors = sheet.Build?.Line.Rotors.Select((r, i) => new { r.Name, r.Inertia, joint = i == 0 ? null : sheet.Build.Joints[i].Name, stiffness = i == 0 ? (double?)null : r.Stiffness, loss = i == 0 ? (double?)null : r.Loss }),
        modes = sheet.Sweep?.Shapes,
        other = new { what = sheet.OtherIs, frequencies = sheet.Other },
        range = sheet.Sweep is null ? null : new { from = sheet.Range.From, to = sheet.Range.To },
        withGas = sheet.WithGas,
        joints = sheet.Joints.Select(j => new { j.Joint.Name, j.Torque, j.Speed, j.Order, j.Rigid, j.Stress, limit = j.Stress is null ? (double?)null : j.Joint.Limit }),
        criticals = sheet.Criticals.Select(c => new { mode = c.Critical.Mode, order = c.Critical.Order, speed = c.Critical.Speed, c.Frequency, c.Joint, c.Torque }),
        missing = sheet.Missing,
    };
}
