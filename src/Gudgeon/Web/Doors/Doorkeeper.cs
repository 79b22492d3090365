using System.Net;

namespace Gudgeon.Web.Doors;

/// <summary>
/// Lets in who sits at this machine, and devices that were paired; everybody else sees the page that asks for the code and
/// nothing more. What another site sends in a visitor's name is refused.
/// </summary>
/// <param name="devices">Devices that were let in.</param>
/// <param name="names">Host names and addresses under which this machine is asked for.</param>
internal sealed class Doorkeeper(Devices devices, IReadOnlySet<string> names)
{
    /// <summary>Where a device asks to be let in.</summary>
    public const string PairPath = "/pair";

    public async Task Invoke(HttpContext context, RequestDelegate next)
    {
        if (!names.Contains(context.Request.Host.Host) || !OwnOrigin(context.Request))
        {
            // A name that is not ours is how a strange page would reach this machine through a visitor's browser.
            await Refuse(context, StatusCodes.Status403Forbidden, "This request came by way of another site and is refused.");
            return;
        }

        var device = IsHere(context.Connection) ? null : devices.Find(context.Request.Cookies[Visitor.TokenCookie]);
        if (device is null && !IsHere(context.Connection) && !IsOpen(context.Request.Path))
        {
            if (HttpMethods.IsGet(context.Request.Method) && context.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.Ordinal))
            {
                context.Response.Redirect(PairPath);
                return;
            }

            await Refuse(context, StatusCodes.Status401Unauthorized, "This device is not paired. Open this address in its browser and type the code from the host's screen.");
            return;
        }

        context.Items[typeof(Visitor)] = Visitor.Of(context, device);
        await next(context);
    }

    /// <summary>Whether both ends of a connection are this machine.</summary>
    private static bool IsHere(ConnectionInfo connection) => IsLoopback(connection.RemoteIpAddress) && IsLoopback(connection.LocalIpAddress);

    private static bool IsLoopback(IPAddress? address) => address is not null && IPAddress.IsLoopback(address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address);

    /// <summary>What an unpaired device may have: the page that asks for the code, and what it is drawn with.</summary>
    private static bool IsOpen(PathString path) =>
        path == PairPath || path == "/app.css" || path == "/icon.svg" || path == "/look.js";

    /// <summary>Whether a request that may change something, or opens a connection, comes from a page of our own.</summary>
    private static bool OwnOrigin(HttpRequest request)
    {
        var origin = request.Headers.Origin.ToString();
        return origin.Length > 0
            ? origin == $"{request.Scheme}://{request.Host}"
            : HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method) || request.Headers["Sec-Fetch-Site"].ToString() is "same-origin" or "none";
    }

    private static Task Refuse(HttpContext context, int status, string sentence)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(sentence);
    }
}
