using Gudgeon.Book.Fields;

namespace Gudgeon.Book.Build;

/// <summary>One line of the sheet of all fields.</summary>
/// <param name="Address">The field.</param>
/// <param name="Found">What holds; null when nothing is known.</param>
public sealed record FieldLine(FieldAddress Address, Found? Found)
{
    /// <summary>Whether the value that holds is written for a group of the address.</summary>
    public bool OfGroup => Found is not null && Found.Source != Address.Path;
}

/// <summary>Every field of a build: those for which something is written, and where wanted those not known yet.</summary>
public static class FieldSheet
{
    /// <summary>Lines by subject in the order of the catalogue, groups before their instances.</summary>
    /// <param name="book">The build.</param>
    /// <param name="now">The values that hold.</param>
    /// <param name="unknown">Whether what is not known is wanted too.</param>
    public static IReadOnlyList<FieldLine> Of(BuildBook book, Snapshot now, bool unknown)
    {
        var written = Written(book);
        return
        [
            .. from subject in FieldCatalogue.Subjects
               let indices = Indices(subject, written)
               from index in indices
               from field in FieldCatalogue.All.Where(f => f.Subject == subject)
               let address = new FieldAddress(field, index)
               where written.Contains(address.Path) || (unknown && IsUnknown(address, now, indices, written))
               select new FieldLine(address, now.Find(address)),
        ];
    }

    /// <summary>Paths for which any layer says something, whether it holds or not.</summary>
    private static HashSet<string> Written(BuildBook book) =>
        [.. book.Baseline.Keys, .. book.Changes.SelectMany(c => c.Values.Keys), .. book.Measurements.Select(m => m.Address.Path)];

    /// <summary>The group of all, where the subject has one, and what the book tells apart.</summary>
    private static List<string> Indices(Subject subject, HashSet<string> written)
    {
        var open = subject.Path + "[";
        var used = written.Where(p => p.StartsWith(open, StringComparison.Ordinal)).Select(p => p[open.Length..p.IndexOf(']', StringComparison.Ordinal)]);
        string[] always = subject.Indexing == Indexing.Valve ? ["", .. Valve.Sides] : [""];
        return [.. always.Concat(used).Distinct(StringComparer.Ordinal).Order(IndexOrder.Instance)];
    }

    /// <summary>Nothing holds here nor for any instance below, and no group above is listed as not known already.</summary>
    private static bool IsUnknown(FieldAddress address, Snapshot now, List<string> indices, HashSet<string> written)
    {
        var below = indices.Where(i => IsBelow(i, address.Index)).Select(i => address with { Index = i });
        return now.Find(address) is null
            && !below.Any(b => written.Contains(b.Path))
            && !address.WithGroups().Skip(1).Any(g => indices.Contains(g.Index, StringComparer.Ordinal) && IsUnknown(g, now, indices, written));
    }

    private static bool IsBelow(string index, string group) => index.Length > group.Length && (group.Length == 0 || index.StartsWith(group + ".", StringComparison.Ordinal));
}
