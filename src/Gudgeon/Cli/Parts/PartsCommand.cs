using System.ComponentModel;
using Gudgeon.Book.Files;
using Gudgeon.Book.Parts;
using Gudgeon.Book.Values;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Parts;

/// <summary>gudgeon parts: the parts of the build, what they cost and weigh, what to order, what puts off the first start.</summary>
internal sealed class PartsCommand : Command<PartsCommand.Settings>
{
    internal sealed class Settings : ReadSettings
    {
        [CommandOption("--orders")]
        [Description("Only what is to be ordered, by supplier.")]
        public bool Orders { get; init; }

        [CommandOption("--save <FILE>")]
        [Description("Write what is to be ordered as .csv or .xlsx.")]
        public string? Save { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var book = settings.Open().Book;
        var sheet = PartSheet.Of(book, book.Now(), Days.Today);
        if (settings.Save is not null)
        {
            PartOrderFile.Write(sheet, settings.Save);
        }

        if (settings.Json)
        {
            Out.Json(settings.Orders ? sheet.Orders : sheet);
        }
        else if (sheet.Lines.Count == 0)
        {
            Out.Line("no parts yet; this begins one: gudgeon set \"part[pistons].state\" needed");
        }
        else if (settings.Orders)
        {
            Ordered(sheet);
        }
        else
        {
            Whole(sheet, settings.Imperial);
        }

        return 0;
    }

    private static void Whole(PartSheet sheet, bool imperial)
    {
        Columns.Print(PartCells.Lines, sheet.Lines.Select(new PartCells(imperial).Of));
        Out.Line();
        Out.Line("Money: " + sheet.BudgetWords);
        Out.Line("Mass: " + sheet.MassWords(imperial));
        foreach (var remark in sheet.Remarks)
        {
            Out.Line(remark);
        }

        Out.Line();
        Ordered(sheet);
        Out.Line();
        Out.Line($"First start on {Days.Written(sheet.FirstStart)} at the earliest.{(sheet.Blocks.Count > 0 ? " Not here yet:" : " No part is waited for.")}");
        foreach (var block in sheet.Blocks)
        {
            Out.Line("  " + block.Words);
        }

        Out.Line();
        Out.Line(PartSheet.Remark);
    }

    private static void Ordered(PartSheet sheet)
    {
        Out.LineIf(sheet.Orders.Count == 0, "nothing is to be ordered");
        foreach (var supplier in sheet.Orders)
        {
            Out.Line($"To order from {supplier.Words}: {PartCells.Money(supplier.Cost)}");
            Columns.Print(PartCells.Orders, supplier.Orders.Select(PartCells.Of));
        }
    }
}
