using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Checks;

/// <summary>What is missing, in few words: one entry for a field that several instances lack.</summary>
public static class Wanted
{
    private const int Most = 8;

    /// <summary>"cylinder.deckHeight, valve[inlet].lift and 12 more".</summary>
    public static string Words(IEnumerable<string> missing)
    {
        var grouped = missing.GroupBy(Group).Select(g => g.Count() == 1 ? g.First() : Together([.. g])).ToList();
        return grouped.Count <= Most ? string.Join(", ", grouped) : $"{string.Join(", ", grouped.Take(Most))} and {grouped.Count - Most} more";
    }

    /// <summary>Why something cannot be worked: "the engine cannot be run yet; wanted: engine.revLimit".</summary>
    /// <param name="what">What cannot be worked.</param>
    /// <param name="trace">What it read.</param>
    public static BadInputException Refusal(string what, Trace trace) => new($"{what} yet; wanted: {Words(trace.Missing)}");

    private static string Group(string path) => Try(path) is { } address ? address.Field.Path + "|" + Side(address.Index) : path;

    private static string Together(List<string> paths) => Try(paths[0]) is { } address ? (address with { Index = Side(address.Index) }).Path : paths[0];

    /// <summary>inlet of inlet.1.2; nothing of a cylinder number or a name.</summary>
    private static string Side(string index) => index.Split('.')[0] is "inlet" or "exhaust" ? index.Split('.')[0] : "";

    /// <summary>The field that a missing entry names; null when it is a limit or a reason.</summary>
    public static FieldAddress? Field(string missing) => Try(missing);

    private static FieldAddress? Try(string path)
    {
        try
        {
            return FieldCatalogue.Address(path);
        }
        catch (BadInputException)
        {
            // Not a field but a limit or a reason; it stands for itself.
            return null;
        }
    }
}
