using Gudgeon.Book.Values;

namespace Gudgeon.Book.Checks;

/// <summary>Every check, found by reflection.</summary>
public static class CheckCatalogue
{
    private static readonly Lazy<IReadOnlyList<Check>> Checks = new(() =>
    [
        .. typeof(CheckCatalogue).Assembly.GetTypes()
            .Where(t => t.IsSubclassOf(typeof(Check)) && !t.IsAbstract)
            .Select(t => (Check)Activator.CreateInstance(t)!)
            .OrderBy(c => c.Family, StringComparer.Ordinal)
            .ThenBy(c => c.Id, StringComparer.Ordinal),
    ]);

    /// <summary>All checks by family and id.</summary>
    public static IReadOnlyList<Check> All => Checks.Value;

    /// <summary>Families in order.</summary>
    public static IEnumerable<string> Families => All.Select(c => c.Family).Distinct();

    /// <summary>The check with this id.</summary>
    /// <exception cref="BadInputException">There is none.</exception>
    public static Check Find(string id) => All.FirstOrDefault(c => c.Id == id)
        ?? throw new BadInputException($"there is no check '{id}'; the nearest is '{Nearest.To(id, All.Select(c => c.Id))}'");

    /// <summary>The checks of a family.</summary>
    /// <exception cref="BadInputException">There is no such family.</exception>
    public static IReadOnlyList<Check> OfFamily(string family)
    {
        var found = All.Where(c => string.Equals(c.Family, family, StringComparison.OrdinalIgnoreCase)).ToList();
        return found.Count > 0 ? found : throw new BadInputException($"there is no family of checks '{family}'; there are {string.Join(", ", Families)}");
    }
}
