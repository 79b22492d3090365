using System.Globalization;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using QRCoder;

namespace Gudgeon.Web.Doors;

/// <summary>The address under which a device asks to be let in, in words and as a code to scan.</summary>
internal static class Invitation
{
    /// <summary>The address on the local network; with a code, one that has it filled in.</summary>
    public static string Address(int port, string code = "")
    {
        var host = Server.Addresses is [var first, ..] ? first.ToString() : Environment.MachineName;
        return string.Create(CultureInfo.InvariantCulture, $"http://{host}:{port}{Doorkeeper.PairPath}{(code.Length > 0 ? "?code=" + code : "")}");
    }

    /// <summary>The address of a page as another device reaches it: on the host's own screen that of the local network, when the pages are shared there.</summary>
    /// <param name="page">The page, as the looker sees it.</param>
    /// <param name="server">The server.</param>
    public static string ForOthers(string page, IServer server)
    {
        var seen = new Uri(page);
        var shared = server.Features.Get<IServerAddressesFeature>()?.Addresses.Any(a => !a.Contains("127.0.0.1", StringComparison.Ordinal)) == true;
        return seen.IsLoopback && shared && Server.Addresses is [var first, ..] ? new UriBuilder(seen) { Host = first.ToString() }.Uri.AbsoluteUri : page;
    }

    /// <summary>The code to scan, for a terminal.</summary>
    public static string InText(string address)
    {
        using var data = QRCodeGenerator.GenerateQrCode(address, QRCodeGenerator.ECCLevel.L);
        using var code = new AsciiQRCode(data);
        return code.GetGraphicSmall();
    }

    /// <summary>The code to scan, as SVG.</summary>
    public static string InSvg(string address)
    {
        using var data = QRCodeGenerator.GenerateQrCode(address, QRCodeGenerator.ECCLevel.M);
        using var code = new SvgQRCode(data);
        return code.GetGraphic(new System.Drawing.Size(240, 240), "#000", "#fff", true, SvgQRCode.SizingMode.ViewBoxAttribute);
    }
}
