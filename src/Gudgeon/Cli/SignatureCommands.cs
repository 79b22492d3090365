using System.ComponentModel;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon sign: a statement over the book as it stands.</summary>
internal sealed class SignCommand : Command<SignCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<[BOOK] STATEMENT>")]
        [Description("The book, the only one in this folder when left out; what is stated.")]
        public string[] Words { get; init; } = [];

        [CommandOption("--by <NAME>")]
        [Description("Who signs.")]
        public string By { get; init; } = "";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (path, rest) = Books.Split(settings.Words, 1, "gudgeon sign [BOOK] STATEMENT --by NAME");
        if (settings.By.Trim().Length == 0)
        {
            throw new BadInputException("a signature needs the person: --by NAME");
        }

        var book = BookFile.Open(path, Hand.Here(settings.By)) as StoredBook
            ?? throw new BadInputException($"the book '{path}' is kept as JSON and bears no seal that could be signed; this makes one that does: gudgeon import {path} {Path.ChangeExtension(path, "gudgeon")}");
        var signed = (StoredBook)book.Sign(rest[0]);
        Out.Line(SignaturesCommand.Words(signed.Signatures.First(s => s.Revision == signed.Revision)));
        return 0;
    }
}

/// <summary>gudgeon signatures: who signed what, and whether the book is still as it was then.</summary>
internal sealed class SignaturesCommand : Command<ReadSettings>
{
    public override int Execute(CommandContext context, ReadSettings settings, CancellationToken cancellationToken)
    {
        Out.List(Books.Store(Books.Find(settings.Path)).Signatures, settings.Json, Words, "no signatures");
        return 0;
    }

    internal static string Words(Signature s) => string.Join(Environment.NewLine,
        $"{s.By} signed \"{s.Statement}\"",
        $"        {s.At} at {s.Device}, over revision {s.Over} with the seal {s.Seal}",
        $"        {s.Since}");
}
