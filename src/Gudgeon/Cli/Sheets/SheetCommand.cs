using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Sheets;

/// <summary>A sheet on the terminal: worked, drawn where that is asked for, then printed or given to a program.</summary>
/// <typeparam name="TSettings">What it takes.</typeparam>
/// <typeparam name="TSheet">The sheet.</typeparam>
internal abstract class SheetCommand<TSettings, TSheet> : Command<TSettings>
    where TSettings : SheetSettings
{
    /// <summary>Exit code when something that the sheet is for stays open.</summary>
    private const int Unfinished = 3;

    public sealed override int Execute(CommandContext context, TSettings settings, CancellationToken cancellationToken)
    {
        var file = settings.Open();
        var sheet = Work(settings, file, Books.Desk(file, cancellationToken));
        if (settings.Svg is { } picture)
        {
            Draw(sheet, picture, settings);
        }

        if (settings.Json)
        {
            Out.Json(Json(sheet));
        }
        else
        {
            Print(sheet, settings.Imperial);
        }

        return Finished(sheet) ? 0 : Unfinished;
    }

    /// <summary>Works the sheet of a book.</summary>
    protected abstract TSheet Work(TSettings settings, BookFile file, DutyDesk desk);

    /// <summary>Draws it into a file.</summary>
    protected abstract void Draw(TSheet sheet, string picture, TSettings settings);

    /// <summary>The sheet for a program, SI.</summary>
    protected abstract object Json(TSheet sheet);

    /// <summary>The sheet for people.</summary>
    protected abstract void Print(TSheet sheet, bool imperial);

    /// <summary>Whether nothing that the sheet is for stays open.</summary>
    protected virtual bool Finished(TSheet sheet) => true;
}
