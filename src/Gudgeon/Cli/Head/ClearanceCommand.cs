using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head clearance: the room between valves and pistons.</summary>
internal sealed class ClearanceCommand : Command<HeadSettings>
{
    public override int Execute(CommandContext context, HeadSettings settings, CancellationToken cancellationToken)
    {
        var sheet = ClearanceSheet.Of(settings.Open().Book.Now());
        if (sheet.Valves.Count == 0)
        {
            throw new BadInputException(string.Join("; ", sheet.Missing));
        }

        if (settings.Svg is not null)
        {
            ClearancePicture.Draw(sheet, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(new { angles = ClearanceSheet.Angles, valves = sheet.Valves.Select(v => new { index = v.Index, cold = v.Cold, running = v.Running, lift = v.Lift, wanted = v.Wanted, facts = FactLines.Json(v.Facts) }), missing = sheet.Missing });
            return 0;
        }

        foreach (var valve in sheet.Valves)
        {
            Out.Line(valve.Index);
            FactLines.Print(valve.Facts, settings.Imperial);
        }

        foreach (var missing in sheet.Missing)
        {
            Out.Line(missing);
        }

        Out.Line(ClearanceSheet.Caution);
        return 0;
    }
}
