using System.Globalization;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Checks;

/// <summary>Index keys of the parts that a build has.</summary>
internal static class Instances
{
    /// <summary>"1", "2", … for the cylinders; one empty key when their number is not known.</summary>
    public static IEnumerable<string> Cylinders(View view)
    {
        var count = view.Count(Engine.Cylinders);
        return count == 0 ? [""] : Enumerable.Range(1, count).Select(n => n.ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>
    /// One key for each valve, "inlet.1.2", where the book tells the valves of that side apart in any of the subjects;
    /// else one for the side.
    /// </summary>
    public static IEnumerable<string> Valves(View view, params Subject[] subjects) =>
        Valve.Sides.SelectMany(side => subjects.Any(s => view.Indices(s).Any(i => i.StartsWith(side + ".", StringComparison.Ordinal))) ? EachValve(view, side) : [side]);

    /// <summary>One key for each valve of the engine, inlet valves first.</summary>
    public static IEnumerable<string> AllValves(View view) => Valve.Sides.SelectMany(side => EachValve(view, side));

    /// <summary>How many valves a key stands for: one, or all of its side.</summary>
    public static int ValvesOf(View view, string key) => key.Contains('.', StringComparison.Ordinal) ? 1 : EachValve(view, key).Count();

    /// <summary>Keys that the book uses for a subject, without those that are groups of others; one empty key, not known yet, when it uses none.</summary>
    public static IEnumerable<string> Named(View view, Subject subject)
    {
        var indices = view.Indices(subject);
        return indices.Count == 0 ? [""] : indices.Where(i => !indices.Any(other => other.StartsWith(i + ".", StringComparison.Ordinal)));
    }

    /// <summary>Every instance of a subject that the book knows; one empty key for what there is once.</summary>
    public static IEnumerable<string> Of(View view, Subject subject) => subject.Indexing switch
    {
        Indexing.Cylinder => Cylinders(view),
        Indexing.Valve => AllValves(view),
        Indexing.Name => Named(view, subject),
        _ => [""],
    };

    private static IEnumerable<string> EachValve(View view, string side) =>
        from cylinder in Cylinders(view)
        from place in Enumerable.Range(1, Math.Max(1, view.Count(Valve.Count, side)))
        select string.Create(CultureInfo.InvariantCulture, $"{side}.{cylinder}.{place}");
}
