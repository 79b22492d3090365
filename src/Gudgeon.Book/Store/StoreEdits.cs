using System.Globalization;
using Gudgeon.Book.Files;

namespace Gudgeon.Book.Store;

/// <summary>The first entry of every journal: a whole book, empty or imported.</summary>
public sealed record BeginBook(JsonPlace Document) : Edit
{
    public override string Kind => "begin";

    public override string Words => $"{Document["name"]?.Text} begins";

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() => [("book", Document)];
}

/// <summary>A value that was set on an older revision than the one that set the same value last.</summary>
public sealed record ContestValue(string Path, string Change, JsonPlace Value, int BasedOn) : Edit
{
    public override string Kind => "contest";

    public override string Words => string.Create(CultureInfo.InvariantCulture, $"{Path} could be {Value.Words()}, says who saw revision {BasedOn}");

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() =>
        [("path", JsonPlace.Of(Path)), ("change", JsonPlace.Of(Change)), ("value", Value), ("basedOn", JsonPlace.Of(BasedOn))];
}

/// <summary>A conflict settled for the value that was there first, or for the one that came second.</summary>
/// <param name="Of">Revision of the conflict.</param>
/// <param name="Path">"cylinder[1].bore".</param>
/// <param name="Change">Id of the change; empty for the baseline.</param>
/// <param name="Second">The value that came second when that is taken; null for the first.</param>
public sealed record SettleValue(int Of, string Path, string Change, JsonPlace? Second) : Edit
{
    public override string Kind => "settle";

    public override string Words => $"{Path} is settled for the {(Second is null ? "first" : $"second, {Second.Words()}")}";

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts()
    {
        var parts = new List<(string, JsonPlace)> { ("of", JsonPlace.Of(Of)), ("path", JsonPlace.Of(Path)), ("change", JsonPlace.Of(Change)) };
        return Second is null ? parts : [.. parts, ("value", Second)];
    }

    internal override void Do(JsonPlace root)
    {
        if (Second is not null)
        {
            new SetValue(Path, Change, Second).Do(root);
        }
    }
}

/// <summary>A file kept with the book; its content stands under its SHA-256.</summary>
/// <param name="Name">Name of the file.</param>
/// <param name="Type">What it is by its content: "image/png".</param>
/// <param name="Size">Bytes.</param>
/// <param name="Sha256">Hexadecimal, lower case.</param>
/// <param name="About">Path of the field that it is about; empty for the whole book.</param>
public sealed record AttachFile(string Name, string Type, long Size, string Sha256, string About) : Edit
{
    public override string Kind => "attach";

    public override string Words => $"{Name} is attached{(About.Length > 0 ? $" to {About}" : "")}";

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() =>
        [("name", JsonPlace.Of(Name)), ("type", JsonPlace.Of(Type)), ("size", JsonPlace.Of(Size)), ("sha256", JsonPlace.Of(Sha256)), ("about", JsonPlace.Of(About))];
}

/// <summary>A statement that a person signs over the book as it stands.</summary>
/// <param name="Statement">What is stated.</param>
/// <param name="Over">The last entry before it.</param>
/// <param name="Seal">The seal of that entry, hexadecimal, lower case: with it goes all that was done until then.</param>
public sealed record Sign(string Statement, int Over, string Seal) : Edit
{
    public override string Kind => "sign";

    public override string Words => string.Create(CultureInfo.InvariantCulture, $"\"{Statement}\" is signed over revision {Over}");

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() => [("statement", JsonPlace.Of(Statement)), ("over", JsonPlace.Of(Over)), ("seal", JsonPlace.Of(Seal))];
}

/// <summary>The last edit that stands is taken back; both stay in the journal.</summary>
public sealed record UndoEdit(int Of) : Edit
{
    public override string Kind => "undo";

    public override string Words => string.Create(CultureInfo.InvariantCulture, $"{Of} is taken back");

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() => [("of", JsonPlace.Of(Of))];
}
