using Gudgeon.Book.Rows;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Web.Layout;

/// <summary>Addresses of single things on the pages.</summary>
internal static class Places
{
    /// <summary>Digits that bring a worked formula's numbers into its form unspoilt.</summary>
    private const int Digits = 10;

    /// <summary>A field on the page of the engine.</summary>
    public static string Field(string key, string path) => $"{BookLinks.To(key, "engine")}?field={Uri.EscapeDataString(path)}";

    /// <summary>A field on the page where readings are taken.</summary>
    public static string Measure(string key, string path) => $"{BookLinks.To(key, "measure")}?field={Uri.EscapeDataString(path)}";

    /// <summary>A finding, opened.</summary>
    public static string Finding(string key, string id) => $"{BookLinks.To(key, "holds")}?open={Uri.EscapeDataString(id)}";

    /// <summary>The findings with one verdict.</summary>
    public static string Findings(string key, Book.Checks.Verdict only) => $"{BookLinks.To(key, "holds")}?only={only}";

    /// <summary>A change, opened.</summary>
    public static string Change(string key, string id) => $"{BookLinks.To(key, "changes")}?open={Uri.EscapeDataString(id)}";

    /// <summary>A job card.</summary>
    public static string Card(string key, string id) => $"{BookLinks.To(key, "jobs")}/card/{Uri.EscapeDataString(id)}";

    /// <summary>A formula of the handbook with inputs as they are written.</summary>
    public static string Formula(string name, string bookKey, IEnumerable<KeyValuePair<string, string>> inputs)
    {
        var path = "/handbook/" + string.Join('/', name.Split('/').Select(Uri.EscapeDataString));
        var book = bookKey.Length > 0 ? new[] { KeyValuePair.Create("book", bookKey) } : [];
        var query = string.Join('&', book.Concat(inputs).Select(i => $"{i.Key}={Uri.EscapeDataString(i.Value)}"));
        return query.Length > 0 ? $"{path}?{query}" : path;
    }

    /// <summary>A formula of the handbook with the numbers of a step that a check worked.</summary>
    public static string Formula(Step step, string bookKey) =>
        Formula(step.Formula.Name, bookKey, step.Formula.Inputs.Select((input, i) => KeyValuePair.Create(input.Key, input.Written(step.Arguments[i], Digits))));
}
