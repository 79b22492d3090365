using System.ComponentModel;
using Gudgeon.Book.AsBuilt;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Files;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Values;
using Gudgeon.Web.AsBuilt;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon book: the as-built book.</summary>
internal sealed class AsBuiltCommand : AsyncCommand<AsBuiltCommand.Settings>
{
    internal sealed class Settings : ReadSettings
    {
        [CommandOption("-o|--out <FILE>")]
        [Description("The HTML file; named like the book when left out.")]
        public string? Out { get; init; }

        [CommandOption("--pdf")]
        [Description("Print it to a PDF beside it, by an installed browser of the Chromium family.")]
        public bool Pdf { get; init; }

        [CommandOption("--summary")]
        [Description("Only the first page, for scrutineers.")]
        public bool Summary { get; init; }
    }

    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var path = Books.Find(settings.Path);
        var file = BookFile.Open(path);
        var html = settings.Out ?? Path.ChangeExtension(Path.GetFileName(path), ".html");
        if (Path.Exists(html) && Books.IsBook(html))
        {
            throw new BadInputException($"--out: '{html}' is a book, and is not written over");
        }

        if (Path.GetExtension(html).Equals(".pdf", StringComparison.OrdinalIgnoreCase))
        {
            throw new BadInputException($"--out: given '{html}', wanted the name of the HTML file; with --pdf the PDF is made beside it");
        }

        var desk = Books.Desk(file, cancellationToken);
        var built = AsBuiltBook.Of(file, new Appraiser(desk), desk, Progress.OnTerminal("every check"));
        AtomicFile.Write(html, await AsBuiltFile.Html(built, Days.Today, settings.Summary, settings.Imperial));
        var pdf = settings.Pdf ? AsBuiltFile.Pdf(html) : "";
        if (settings.Json)
        {
            Cli.Out.Json(new { html, pdf, open = built.Open(imperial: false), revision = built.Revision, built.Seal });
            return 0;
        }

        Cli.Out.Line($"{(pdf.Length > 0 ? $"{html} and {pdf}" : html)}: {built.Readings.Count} readings, {built.Findings.Count} findings, {built.Cards.Count(c => c.Standing == Standing.Signed)} cards signed, {built.Open(imperial: false).Count} open points");
        return 0;
    }
}
