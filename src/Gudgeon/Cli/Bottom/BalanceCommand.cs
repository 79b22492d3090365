using System.ComponentModel;
using Gudgeon.Book.Bottom;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;
using Gudgeon.Simulation.Crank;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom balance: rods weighed, balance factor, shaking, balance shafts.</summary>
internal sealed class BalanceCommand : SheetCommand<BalanceCommand.Settings, BalanceSheet>
{
    internal sealed class Settings : SheetSettings
    {
        [CommandOption("--at <SPEED>")]
        [Description("Crank speed; the rev limit when left out.")]
        public string? At { get; init; }

        [CommandOption("--about <PLACE>")]
        [Description("Place along the crank that couples are about, such as 54mm; the middle of the cylinders when left out.")]
        public string? About { get; init; }
    }

    protected override BalanceSheet Work(Settings settings, BookFile file, DutyDesk desk)
    {
        var about = settings.About is { } place ? Amount.Parse("--about", place, Dimension.Length, "mm").Si : (double?)null;
        var at = RunCommand.Asked(settings.At, "--at");
        return at is <= 0
            ? throw new BadInputException($"--at: given {settings.At}, wanted a speed above zero")
            : BalanceSheet.Of(file.Book, at, about);
    }

    protected override void Draw(BalanceSheet sheet, string picture, Settings settings) => BalancePicture.Draw(sheet, picture, settings.Imperial);

    protected override bool Finished(BalanceSheet sheet) => sheet.Shaking is not null;

    protected override void Print(BalanceSheet sheet, bool imperial)
    {
        var cells = new BalanceCells(imperial);
        Table("Rods and pistons", Worded(BalanceCells.RodHeadings), sheet.Rods.Select(cells.Of));
        Table("Balance factor", Worded(BalanceCells.PinHeadings), sheet.Pins.Select(cells.Of));
        if (sheet.Shaking is { } shaking)
        {
            Out.Line(cells.Speed(shaking));
            Table("", Worded(BalanceCells.OrderHeadings), sheet.Orders.Select(cells.Of));
            Table("Without the balance shafts", Worded(BalanceCells.OrderHeadings), sheet.Bare.Select(cells.Of));
            Table("Balance shafts", Worded(BalanceCells.ShaftHeadings), sheet.Shafts.Select(cells.Of));
            Table("", Worded(BalanceCells.LeftHeadings), cells.Left(sheet));
            Table("Loads on the mounts", Worded(BalanceCells.MountHeadings), sheet.Mounts.Select(cells.Of));
        }

        foreach (var line in sheet.Missing.Concat(BalanceSheet.Steps).Append(BalanceSheet.Remark))
        {
            Out.Line(line);
        }

        Out.Line("Caution: " + BalanceSheet.Caution);
    }

    private static List<string> Worded(IReadOnlyList<string> headings) => [headings[0] + "\t", .. headings.Skip(1)];

    private static void Table(string title, IReadOnlyList<string> headings, IEnumerable<IReadOnlyList<string>> rows)
    {
        var all = rows.ToList();
        if (all.Count == 0)
        {
            return;
        }

        if (title.Length > 0)
        {
            Out.Line(title);
        }

        Columns.Print(headings, all);
        Out.Line();
    }

    protected override object Json(BalanceSheet sheet) => new
    {
        rods = sheet.Rods,
        pins = sheet.Pins.Select(p => new { pin = p.Mass.Pin, rotating = p.Mass.Rotating, reciprocating = p.Mass.Reciprocating, p.Factor, p.Before, p.Wanted, p.BobWeight, p.Change, p.HoleDepth }),
        speed = sheet.Shaking?.Speed,
        about = sheet.Shaking?.About,
        greatestForce = sheet.Shaking?.GreatestForce,
        greatestCouple = sheet.Shaking?.GreatestCouple,
        orders = sheet.Orders.Select(Json),
        withoutShafts = sheet.Bare.Select(Json),
        shafts = sheet.Shafts.Select(s => new
        {
            name = s.Timing.Shaft.Name,
            unbalance = s.Timing.Shaft.Unbalance,
            ratio = s.Timing.Shaft.Ratio,
            phase = s.Timing.Shaft.Phase,
            best = s.Timing.Best,
            early = s.Timing.Early,
            tooth = s.Tooth,
            asMarked = Json(s.AsMarked),
            toothEarly = s.Early is null ? null : Json(s.Early),
            toothLate = s.Late is null ? null : Json(s.Late),
        }),
        mounts = sheet.Mounts.Select(m => new { m.Name, orders = BalanceSheet.Told.Zip(m.Orders, (order, load) => new { order, load }), m.Greatest }),
        missing = sheet.Missing,
    };

    private static object Json(OrderRow row) => new { order = row.Force.Order, force = Json(row.Force), couple = Json(row.Couple), roll = row.Roll };

    private static object Json(Turning turning) => new { with = turning.With.Magnitude, withAngle = turning.With.Phase, against = turning.Against.Magnitude, againstAngle = turning.Against.Phase, greatest = turning.Greatest, least = turning.Least };
}
