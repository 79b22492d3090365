using Gudgeon.Book.Build;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks;

/// <summary>Limits that a user may set: those that the checks ask for, found by letting them ask.</summary>
public static class LimitRules
{
    /// <summary>Refuses a limit that the check it is named after does not ask for, and a value that the check cannot take.</summary>
    /// <param name="book">The build, the limit set in it.</param>
    /// <param name="name">Name of the limit, "squish.min".</param>
    /// <exception cref="BadInputException">No such limit, or an amount of another dimension.</exception>
    public static void Verify(BuildBook book, string name)
    {
        var dot = name.IndexOf('.', StringComparison.Ordinal);
        var check = CheckCatalogue.Find(dot < 0 ? name : name[..dot]);
        var asked = Asked(check, book.Now()).Distinct(StringComparer.Ordinal).ToList();
        if (!asked.Contains(name, StringComparer.Ordinal))
        {
            throw new BadInputException(asked.Count == 0
                ? $"limit {name}: the check '{check.Id}' takes no limit of one's own in this build; its source: {check.Source}"
                : $"there is no limit '{name}'; the check '{check.Id}' asks for {string.Join(", ", asked)}");
        }
    }

    private static IEnumerable<string> Asked(Check check, Snapshot snapshot) =>
        check.Instances(new View(snapshot)).ToList().SelectMany(index => Asked(check, index, snapshot));

    private static IReadOnlyCollection<string> Asked(Check check, string index, Snapshot snapshot)
    {
        var view = new View(snapshot);
        try
        {
            check.Examine(view, index);
        }
        catch (Exception e) when (e is FormulaDomainException or OutOfRangeException)
        {
            // What the check asked for before the formula gave up counts all the same.
        }

        return view.Trace.Limits;
    }
}
