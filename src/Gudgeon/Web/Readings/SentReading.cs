using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Gudgeon.Web.Host;

namespace Gudgeon.Web.Readings;

/// <summary>A reading as a device sends it.</summary>
/// <param name="Id">A GUID made when it was taken; the same one when it is sent again.</param>
/// <param name="Path">"cylinder[1].bore".</param>
/// <param name="Text">"94.012 mm ± 0.006 mm".</param>
/// <param name="With">The instrument.</param>
/// <param name="By">Who read it.</param>
/// <param name="On">When, local time of the device: "2026-10-02T14:05:33".</param>
/// <param name="Note">Anything else worth knowing.</param>
/// <param name="PartAt">Temperature of the part, "26 °C"; empty when not said.</param>
/// <param name="ToolAt">Temperature of the instrument; empty when not said.</param>
internal sealed record SentReading(string? Id, string? Path, string? Text, string? With, string? By, string? On, string? Note, string? PartAt = null, string? ToolAt = null)
{
    private const int LongestName = 60;
    private const int LongestText = 500;

    /// <summary>Reads what was sent, and holds it against the rules of the book before anything is written.</summary>
    /// <exception cref="BadInputException">It can never be taken, however often it is sent.</exception>
    public TakenReading Read(BuildBook book)
    {
        var address = FieldCatalogue.Address(Wanted(Path, "the reading", "the path of a field", LongestText));
        var text = Wanted(Text, address.Path, "a value with its unit", LongestText);
        var value = KnownValue.Read(address.Field, text, How.Measured);
        BookRules.Verify(book with { Measurements = [.. book.Measurements, new Measurement(address, value, null)] });
        var with = Wanted(With, address.Path, "the instrument", LongestName);
        var at = ReadAt.Said(address.Path, PartAt ?? "", ToolAt ?? "", "");
        TakenWith.Of(book.Now(), address, value, with, On ?? "", at);
        return new TakenReading(
            Measurement.ReadId(Wanted(Id, address.Path, "an id", LongestText)),
            address,
            text,
            with,
            Wanted(By, address.Path, "the person", LongestName),
            Time(address.Path),
            string.IsNullOrWhiteSpace(Note) ? "" : Wanted(Note, address.Path, "a note", LongestText),
            at);
    }

    private static string Wanted(string? given, string about, string what, int most)
    {
        var text = (given ?? "").Trim();
        return text.Length > 0 && text.Length <= most && !text.Any(char.IsControl)
            ? text
            : throw new BadInputException(string.Create(CultureInfo.InvariantCulture, $"{about}: given {(text.Length == 0 ? "nothing" : $"{text.Length} letters")}, wanted {what} of 1 to {most} letters on one line"));
    }

    private string Time(string about) => DateTime.TryParseExact(On ?? "", Days.Times, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
        ? time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)
        : throw new BadInputException($"{about}: given '{On}' as the time, wanted one such as 2026-10-02T14:05:33");
}

/// <summary>A reading that the book can take.</summary>
internal sealed record TakenReading(string Id, FieldAddress Address, string Text, string With, string By, string On, string Note, ReadAt? At)
{
    /// <summary>Adds it to a book; one that was added before is not added again.</summary>
    public BookFile AddTo(BookFile file) => file.Measure(Address.Path, Text, With, By, On, Note, Id, At);

    /// <summary>Whether the book has, or had until it was taken back, a reading with this id.</summary>
    public bool IsKnownTo(OpenBook open) => open.Book.Measurements.Any(m => m.Id == Id)
        || (open.File is StoredBook stored && stored.History.Any(h => h.Entry.Edit is AddReading added && added.Reading["id"]?.Text == Id));
}
