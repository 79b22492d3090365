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
        ("head", "Head"),
        ("bottom", "Bottom end"),
        ("joints", "Joints"),
        ("fits", "Fits"),
        ("drive", "Boost drive"),
        ("surfaces", "Surfaces"),
        ("sprint", "Sprint"),
        ("measure", "Measure"),
        ("jobs", "Job cards"),
        ("parts", "Parts"),
        ("as-built", "As built"),
    ];

    /// <summary>Address of a page of a book.</summary>
    public static string To(string key, string part = "") => $"/book/{Uri.EscapeDataString(key)}{(part.Length > 0 ? "/" + part : "")}";

    /// <summary>
    /// File name of the book that an address is about, or from which it was come to: the handbook is about no book, and
    /// yet keeps the way back. Empty when there is none.
    /// </summary>
    public static string KeyOf(string uri)
    {
        var address = new Uri(uri);
        return address.AbsolutePath.Split('/', StringSplitOptions.RemoveEmptyEntries) is ["book", var key, ..]
            ? Uri.UnescapeDataString(key)
            : System.Web.HttpUtility.ParseQueryString(address.Query)["book"] ?? "";
    }
}
