namespace Gudgeon.Web.Layout;

/// <summary>The pages of a book, in the order of the work.</summary>
internal static class BookLinks
{
    /// <summary>Last part of the address and the words for it.</summary>
    public static readonly (string Part, string Words)[] All =
    [
        ("", "Overview"),
        ("engine", "Engine"),
        ("changes", "Changes"),
        ("holds", "Will it hold"),
        ("run", "Run"),
        ("sprint", "Sprint"),
        ("measure", "Measure"),
    ];

    /// <summary>Address of a page of a book.</summary>
    public static string To(string key, string part = "") => $"/book/{Uri.EscapeDataString(key)}{(part.Length > 0 ? "/" + part : "")}";

    /// <summary>File name of the book that an address is about; empty when it is about none.</summary>
    public static string KeyOf(string uri)
    {
        var parts = new Uri(uri).AbsolutePath.Split('/', StringSplitOptions.RemoveEmptyEntries);
        return parts is ["book", var key, ..] ? Uri.UnescapeDataString(key) : "";
    }
}
