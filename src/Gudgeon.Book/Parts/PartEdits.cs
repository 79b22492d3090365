using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Parts;

/// <summary>What is done to the parts of a book by one press.</summary>
public static class PartEdits
{
    /// <summary>The state that comes after another; null after the last, and for what is scrapped.</summary>
    public static string? After(string state) => state switch
    {
        "" => Part.Needed,
        Part.Needed => Part.Ordered,
        Part.Ordered => Part.Here,
        Part.Here => Part.Fitted,
        _ => null,
    };

    /// <summary>A part has come further. It is written where the state was written, so that it holds; an order is dated with the day.</summary>
    /// <param name="file">The book.</param>
    /// <param name="key">The part.</param>
    /// <param name="state">How far it has come.</param>
    /// <param name="by">Who says so.</param>
    /// <param name="today">The day.</param>
    /// <exception cref="BadInputException">Refused; the book is as it was.</exception>
    public static BookFile Move(BookFile file, string key, string state, string by, DateOnly today)
    {
        var found = file.Book.Now().Find(new FieldAddress(Part.State, key));
        if (found is { Origin: Origin.Measurement })
        {
            return file.Measure(Part.State.At(key), state, "", by, Days.Written(today), "");
        }

        List<(string, string)> values = [(Part.State.At(key), state)];
        if (state == Part.Ordered)
        {
            values.Add((Part.OrderedOn.At(key), Days.Written(today)));
        }

        return file.Set(values, Story(by, today), found is { Under.Length: > 0 } ? found.Under : null);
    }

    /// <summary>A new part.</summary>
    /// <param name="file">The book.</param>
    /// <param name="key">Its name in the book.</param>
    /// <param name="name">What it is.</param>
    /// <param name="state">How far it has come.</param>
    /// <param name="by">Who says so.</param>
    /// <param name="today">The day.</param>
    /// <exception cref="BadInputException">Refused; the book is as it was.</exception>
    public static BookFile Add(BookFile file, string key, string name, string state, string by, DateOnly today)
    {
        FieldCatalogue.Index(Part.State.Subject, key);
        return file.Book.Now().Uses($"{Part.State.Subject.Path}[{key}]")
            ? throw new BadInputException($"part[{key}] is in the book already; wanted another short name for the new part")
            : file.Set([(Part.Name.At(key), name), (Part.State.At(key), state)], Story(by, today));
    }

    private static Dictionary<string, string> Story(string by, DateOnly today) => new(StringComparer.Ordinal)
    {
        ["how"] = nameof(How.Measured).ToLowerInvariant(),
        ["by"] = by,
        ["on"] = Days.Written(today),
    };
}
