namespace Gudgeon.Web.Layout;

/// <summary>The sheets of the head's page, in the order of the work; the command line has them under the same words.</summary>
internal static class HeadLinks
{
    /// <summary>Last part of the address and the words for it.</summary>
    public static readonly (string Part, string Words)[] All =
    [
        ("flow", "Flow"),
        ("cams", "Cams"),
        ("clearance", "Valve to piston"),
        ("springs", "Springs"),
        ("motion", "Motion"),
        ("lash", "Lash and shims"),
        ("seats", "Seats and guides"),
    ];

    /// <summary>Address of a sheet.</summary>
    public static string To(string key, string part) => $"{BookLinks.To(key, "head")}/{part}";
}
