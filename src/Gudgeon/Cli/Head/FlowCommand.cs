using System.ComponentModel;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head flow: what the ports pass.</summary>
internal sealed class FlowCommand : SheetCommand<FlowCommand.Settings, FlowSheet>
{
    internal sealed class Settings : SheetSettings
    {
        [CommandOption("--at <PRESSURE>")]
        [Description("Test pressure to bring the flows to; 28 inH2O when left out.")]
        public string At { get; init; } = "28 inH2O";
    }

    protected override FlowSheet Work(Settings settings, BookFile file, DutyDesk desk) =>
        FlowSheet.Of(file.Book, ((Amount)KnownValue.Read(Valve.BenchPressure, settings.At).Content).Si);

    protected override void Draw(FlowSheet sheet, string picture, Settings settings) => FlowPicture.Draw(sheet, picture, settings.Imperial);

    protected override object Json(FlowSheet sheet) => sheet;

    protected override void Print(FlowSheet sheet, bool imperial)
    {
        Out.Line($"Flows at {FlowWords.Pressure(sheet)} in air of 20 °C and 1013.25 hPa");
        foreach (var side in sheet.Sides)
        {
            Out.Line();
            Out.Line(side.Now.Words);
            Columns(FlowWords.Heads(side, imperial), FlowWords.Cells(side, imperial));
            Facts(FlowWords.Facts(side, imperial));
        }

        Out.LineIf(sheet.Sides.Count > 0, "");
        Facts(FlowWords.Between(sheet));
        Out.LineIf(sheet.Missing.Count > 0, $"not known yet: {string.Join(", ", sheet.Missing)}");
    }

    private static void Facts(IReadOnlyList<(string Name, string Words)> facts)
    {
        foreach (var (name, words) in facts)
        {
            Out.Line($"  {name}: {words}");
        }
    }

    private static void Columns(IReadOnlyList<string> heads, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        var widths = heads.Select((h, i) => rows.Select(r => r[i].Length).Append(h.Length).Max()).ToArray();
        foreach (var row in rows.Prepend(heads))
        {
            Out.Line("  " + string.Join("  ", row.Select((c, i) => c.PadLeft(widths[i]))).TrimEnd());
        }
    }
}
