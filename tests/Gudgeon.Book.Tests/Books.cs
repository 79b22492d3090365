using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests;

/// <summary>Small builds made in the test, without a file.</summary>
internal static class Books
{
    public static BuildBook Of(params (string Path, string Text)[] baseline) => new()
    {
        Name = "test",
        Baseline = Values(baseline),
        Changes = [],
        Measurements = [],
        Limits = new Dictionary<string, LimitSetting>(StringComparer.Ordinal),
    };

    /// <summary>The book with other values in its baseline.</summary>
    public static BuildBook Set(this BuildBook book, params (string Path, string Text)[] values)
    {
        var baseline = book.Baseline.ToDictionary(StringComparer.Ordinal);
        foreach (var (path, value) in Values(values))
        {
            baseline[path] = value;
        }

        return book with { Baseline = baseline };
    }

    /// <summary>The book without a value of its baseline.</summary>
    public static BuildBook Without(this BuildBook book, string path) => book with { Baseline = book.Baseline.Where(v => v.Key != path).ToDictionary(StringComparer.Ordinal) };

    /// <summary>The book with one more change, on.</summary>
    public static BuildBook Changed(this BuildBook book, string id, params (string Path, string Text)[] values) =>
        book with { Changes = [.. book.Changes, new Change(id, id, "to see", true, Values(values))] };

    /// <summary>The book with a change switched.</summary>
    public static BuildBook Switched(this BuildBook book, string id, bool on) =>
        book with { Changes = [.. book.Changes.Select(c => c.Id == id ? c with { On = on } : c)] };

    /// <summary>The book with one more reading; it always holds when <paramref name="under"/> is null.</summary>
    public static BuildBook Read(this BuildBook book, string path, string text, params string[]? under)
    {
        var address = FieldCatalogue.Address(path);
        return book with { Measurements = [.. book.Measurements, new Measurement(address, KnownValue.Read(address.Field, text, How.Measured), under?.ToHashSet(StringComparer.Ordinal))] };
    }

    /// <summary>The book with a limit of the user's own.</summary>
    public static BuildBook Limited(this BuildBook book, string name, string text) =>
        book with { Limits = new Dictionary<string, LimitSetting>(book.Limits, StringComparer.Ordinal) { [name] = new(text, "to see") } };

    /// <summary>The value that holds for a path, as written; empty when none does.</summary>
    public static string Holding(this Snapshot snapshot, string path) => snapshot.Find(FieldCatalogue.Address(path))?.Value.Content.ToString() ?? "";

    private static Dictionary<string, KnownValue> Values(IEnumerable<(string Path, string Text)> values) => values
        .Select(v => (Address: FieldCatalogue.Address(v.Path), v.Text))
        .ToDictionary(v => v.Address.Path, v => KnownValue.Read(v.Address.Field, v.Text), StringComparer.Ordinal);
}
