using System.ComponentModel;
using System.Globalization;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon attach: keeps a file with the book.</summary>
internal sealed class AttachCommand : Command<AttachCommand.Settings>
{
    internal sealed class Settings : EditSettings
    {
        [CommandArgument(0, "<[BOOK] FILE>")]
        [Description("The book, the only one in this folder when left out; the file, at most 20 MiB.")]
        public string[] Words { get; init; } = [];

        [CommandOption("--to <PATH>")]
        [Description("Path of the field that it is about.")]
        public string To { get; init; } = "";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (path, rest) = Books.Split(settings.Words, 1, "gudgeon attach [BOOK] FILE");
        var book = Books.Store(path, settings.By);
        var kept = book.Attach(rest[0], settings.To);
        Out.Line($"{AttachmentsCommand.Words(book.Attachments.First(a => a.Revision == kept.Revision))}");
        return 0;
    }
}

/// <summary>gudgeon attachments: lists the attached files.</summary>
internal sealed class AttachmentsCommand : Command<ReadSettings>
{
    public override int Execute(CommandContext context, ReadSettings settings, CancellationToken cancellationToken)
    {
        Out.List(Books.Store(Books.Find(settings.Path)).Attachments, settings.Json, Words, "no attachments");
        return 0;
    }

    internal static string Words(Attachment a) =>
        string.Create(CultureInfo.InvariantCulture, $"{a.Revision,5}  {a.Name} ({a.Type}, {a.Size} bytes){(a.About.Length > 0 ? $" about {a.About}" : "")}, {a.By}, {a.At}, SHA-256 {a.Sha256}");
}

/// <summary>gudgeon extract: writes an attached file to the disk again.</summary>
internal sealed class ExtractCommand : Command<ExtractCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<[BOOK] WHICH FILE>")]
        [Description("The book, the only one in this folder when left out; name or number of the attachment; the new file.")]
        public string[] Words { get; init; } = [];
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (path, rest) = Books.Split(settings.Words, 2, "gudgeon extract [BOOK] WHICH FILE");
        var book = Books.Store(path);
        var attachments = book.Attachments;
        var wanted = attachments.LastOrDefault(a => a.Name == rest[0] || a.Revision.ToString(CultureInfo.InvariantCulture) == rest[0])
            ?? throw new BadInputException(attachments.Count == 0 ? "the book has no attachments" : $"there is no attachment '{rest[0]}'; the nearest is '{Nearest.To(rest[0], attachments.Select(a => a.Name))}'");
        if (Path.Exists(rest[1]))
        {
            throw new BadInputException($"'{rest[1]}' exists; an attachment does not write over it");
        }

        AtomicFile.Write(rest[1], book.Content(wanted));
        Out.Line($"{rest[1]} holds {wanted.Name}, {wanted.Size} bytes");
        return 0;
    }
}
