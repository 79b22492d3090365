using Gudgeon.Book.Files;

namespace Gudgeon.Web.Doors;

/// <summary>Who looks at a page, from which device, and how they like it shown.</summary>
/// <param name="Who">Name of the person.</param>
/// <param name="Device">Name of the device.</param>
/// <param name="DeviceId">Its id in the list of paired devices; empty for this machine.</param>
/// <param name="Imperial">Whether in inch units.</param>
/// <param name="Dark">Whether light on dark.</param>
public sealed record Visitor(string Who, string Device, string DeviceId, bool Imperial, bool Dark)
{
    /// <summary>Cookie with the secret of a paired device.</summary>
    public const string TokenCookie = "gudgeon-device";

    /// <summary>Cookies with how a person likes the pages.</summary>
    public const string UnitsCookie = "gudgeon-units", LookCookie = "gudgeon-look", WhoCookie = "gudgeon-who";

    /// <summary>Whether the pages are looked at on the machine that serves them.</summary>
    public bool IsHost => DeviceId.Length == 0;

    /// <summary>Who edits, for the journal.</summary>
    public Hand Hand => new(Who, Device);

    /// <summary>The visitor of a request that was let in.</summary>
    /// <param name="context">The request.</param>
    /// <param name="device">The paired device; null on this machine.</param>
    internal static Visitor Of(HttpContext context, Device? device)
    {
        var cookies = context.Request.Cookies;
        var named = Uri.UnescapeDataString(cookies[WhoCookie] ?? "").Trim();
        return new Visitor(
            named.Length is > 0 and <= 60 ? named : device?.Who ?? Environment.UserName,
            device?.Name ?? Environment.MachineName,
            device?.Id ?? "",
            cookies[UnitsCookie] == "imperial",
            cookies[LookCookie] == "dark");
    }

    /// <summary>The visitor of this request.</summary>
    internal static Visitor Of(HttpContext context) => (Visitor)context.Items[typeof(Visitor)]!;
}
