using System.Reflection;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Fields;

/// <summary>Every field, found by reflection in the declarations of this folder.</summary>
public static class FieldCatalogue
{
    private static readonly Lazy<Dictionary<string, Field>> ByPath = new(() => Declared().ToDictionary(f => f.Path, StringComparer.Ordinal));

    /// <summary>All fields in the order of their paths.</summary>
    public static IEnumerable<Field> All => ByPath.Value.Values.OrderBy(f => f.Path, StringComparer.Ordinal);

    /// <summary>All subjects in the order of their paths.</summary>
    public static IEnumerable<Subject> Subjects => All.Select(f => f.Subject).Distinct();

    /// <summary>The field with this path without index, or null.</summary>
    public static Field? Find(string path) => ByPath.Value.GetValueOrDefault(path);

    /// <summary>Reads "cylinder[1].bore" or "cylinder.bore".</summary>
    /// <exception cref="BadInputException">No such field, or an index that the subject does not take.</exception>
    public static FieldAddress Address(string path)
    {
        var open = path.IndexOf('[', StringComparison.Ordinal);
        var close = path.IndexOf(']', StringComparison.Ordinal);
        if (open < 0 && close < 0)
        {
            return new FieldAddress(Known(path), "");
        }

        if (open <= 0 || close < open || close == path.Length - 1)
        {
            throw new BadInputException($"given the path '{path}', wanted one such as cylinder[1].bore");
        }

        var field = Known(path[..open] + path[(close + 1)..]);
        return new FieldAddress(field, Index(field.Subject, path[(open + 1)..close]));
    }

    /// <summary>Checks an index against the subject.</summary>
    /// <exception cref="BadInputException">The subject does not take such an index.</exception>
    public static string Index(Subject subject, string index)
    {
        var parts = index.Split('.');
        var good = subject.Indexing switch
        {
            Indexing.Cylinder => parts.Length == 1 && IsNumber(parts[0]),
            Indexing.Valve => parts.Length <= 3 && parts[0] is "inlet" or "exhaust" && parts.Skip(1).All(IsNumber),
            Indexing.Name => parts.All(p => p.Length > 0 && p.All(c => char.IsLetterOrDigit(c) || c is '-' or '_')),
            _ => false,
        };
        return good ? index : throw new BadInputException($"{subject.Path}[{index}]: {Wanted(subject)}");
    }

    private static string Wanted(Subject subject) => subject.Indexing switch
    {
        Indexing.Cylinder => $"wanted a cylinder number, such as {subject.Path}[1]",
        Indexing.Valve => $"wanted side, cylinder and place, such as {subject.Path}[inlet] or {subject.Path}[exhaust.1.2]",
        Indexing.Name => $"wanted a name of letters and digits, such as {subject.Path}[head]",
        _ => $"there is only one {subject.Path}; leave out the brackets",
    };

    private static bool IsNumber(string part) => !part.StartsWith('0') && int.TryParse(part, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var n) && n > 0;

    private static Field Known(string path) => Find(path)
        ?? throw new BadInputException($"there is no field '{path}'; the nearest is '{Nearest.To(path, ByPath.Value.Keys)}'");

    private static IEnumerable<Field> Declared() =>
        from type in typeof(FieldCatalogue).Assembly.GetTypes()
        where type.Namespace == typeof(FieldCatalogue).Namespace && type.IsAbstract && type.IsSealed
        from member in type.GetFields(BindingFlags.Public | BindingFlags.Static)
        where member.FieldType == typeof(Field)
        select (Field)member.GetValue(null)!;
}
