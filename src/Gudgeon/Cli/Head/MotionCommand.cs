using Gudgeon.Cli.Sheets;
using System.ComponentModel;
using System.Globalization;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head motion: how the valves move up to the rev limit and beyond.</summary>
internal sealed class MotionCommand : Command<MotionCommand.Settings>
{
    internal sealed class Settings : SheetSettings
    {
        [CommandOption("--from <SPEED>")]
        [Description("Lowest crank speed; half the rev limit when left out.")]
        public string? From { get; init; }

        [CommandOption("--to <SPEED>")]
        [Description("Highest crank speed; a third beyond the rev limit when left out.")]
        public string? To { get; init; }

        [CommandOption("--points <NUMBER>")]
        [Description("How many speeds, 2 to 200.")]
        [DefaultValue(33)]
        public int Points { get; init; }

        [CommandOption("--valve <VALVE>")]
        [Description("The valve, such as exhaust.1.2; of each side the one that comes apart first when left out.")]
        public string Valve { get; init; } = "";

        [CommandOption("--trace-svg <FILE>")]
        [Description("Draw lift and cam force at the rev limit against the cam's angle.")]
        public string? TraceSvg { get; init; }

        [CommandOption("--csv")]
        [Description("Print the speeds as CSV.")]
        public bool Csv { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.Points is < 2 or > 200)
        {
            throw new BadInputException($"--points: given {settings.Points}, wanted 2 to 200");
        }

        var file = settings.Open();
        var wish = new MotionWish(RunCommand.Asked(settings.From, "--from"), RunCommand.Asked(settings.To, "--to"), settings.Points, settings.Valve);
        var sheet = MotionSheet.Of(new View(file.Book.Now(), Books.Desk(file, cancellationToken)), wish, Progress.OnTerminal("valve motion"), cancellationToken);
        if (sheet.Valves.Count == 0)
        {
            throw new BadInputException(string.Join("; ", sheet.Missing));
        }

        if (settings.Svg is not null)
        {
            MotionPictures.Map(sheet, settings.Svg, settings.Imperial);
        }

        if (settings.TraceSvg is not null)
        {
            MotionPictures.Trace(sheet, settings.TraceSvg, settings.Imperial);
        }

        Print(settings, sheet);
        return sheet.Valves.All(v => v.AtLimit.Settled) ? 0 : 3;
    }

    private static void Print(Settings settings, MotionSheet sheet)
    {
        if (settings.Json)
        {
            Out.Json(Json(sheet));
        }
        else if (settings.Csv)
        {
            Csv(sheet);
        }
        else
        {
            Table(sheet, settings.Imperial);
        }
    }

    private static void Table(MotionSheet sheet, bool imperial)
    {
        var cells = new MotionCells(imperial);
        foreach (var valve in sheet.Valves)
        {
            Out.Line($"{valve.Index}: {valve.Motion.From}{(sheet.WithGas ? ", gas of the engine run on it" : ", without gas: the engine cannot be run yet")}");
            FactLines.Print(valve.Facts, imperial);
            Columns.Print(MotionCells.Headings, valve.Sweep.Points.Select(cells.Of));
            Out.Line();
        }

        foreach (var missing in sheet.Missing)
        {
            Out.Line(missing);
        }

        Out.Line(MotionSheet.Remark);
    }

    private static void Csv(MotionSheet sheet)
    {
        Out.Line("valve,crank speed rpm,settled,gap mm,bounce mm,seating speed m/s,greatest cam force N,surge mm");
        foreach (var valve in sheet.Valves)
        {
            foreach (var point in valve.Sweep.Points)
            {
                var m = point.Motion;
                double?[] numbers = m is null ? [] : [1e3 * (m.Lost?.Gap ?? 0), 1e3 * m.BounceHeight, m.SeatingVelocity, m.GreatestCamForce, 1e3 * m.Springs.Max(s => s.Surge)];
                Out.Line(string.Join(',', new[] { valve.Index, (2 * point.Speed * 30 / Math.PI).ToString("R", CultureInfo.InvariantCulture), m is null ? "false" : "true" }.Concat((m is null ? new double?[5] : numbers).Select(n => n?.ToString("R", CultureInfo.InvariantCulture) ?? ""))));
            }
        }
    }

    private static object Json(MotionSheet sheet) => new
    {
        revLimit = sheet.RevLimit,
        withGas = sheet.WithGas,
        valves = sheet.Valves.Select(v => new
        {
            index = v.Index,
            from = v.Motion.From,
            facts = FactLines.Json(v.Facts),
            points = v.Sweep.Points.Select(p => new { crankSpeed = 2 * p.Speed, settled = p.Settled, gap = p.Motion is null ? null : (double?)(p.Motion.Lost?.Gap ?? 0), bounce = p.Motion?.BounceHeight, seatingVelocity = p.Motion?.SeatingVelocity, camForce = p.Motion?.GreatestCamForce }),
        }),
        missing = sheet.Missing,
    };
}
