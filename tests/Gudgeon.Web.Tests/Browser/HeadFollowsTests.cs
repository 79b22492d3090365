using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The head's sheets follow an edit of the book.</summary>
public class HeadFollowsTests(Browsing browsing) : IClassFixture<Browsing>
{
    [Fact]
    public async Task TheSheetsFollowTheBook()
    {
        var page = await browsing.Open(browsing.Served.Page("head") + "/cams");
        var inlet = page.GetByRole(AriaRole.Region, new() { Name = "inlet", Exact = true });
        await Expect(inlet).ToContainTextAsync("at the seat: opens 54 ° before TDC, closes 78 ° after BDC");
        await Served.Command("set", browsing.Served.PathOf("heron"), "cam[inlet].advance", "4°");
        await Expect(inlet).ToContainTextAsync("at the seat: opens 58 ° before TDC, closes 74 ° after BDC");
        await page.GetByRole(AriaRole.Link, new() { Name = "Valve to piston" }).ClickAsync();
        var row = page.GetByRole(AriaRole.Region, new() { Name = "Room of each valve" }).GetByRole(AriaRole.Row).Filter(new() { HasText = "inlet.1.2" });
        await Expect(row).ToContainTextAsync("1.87 mm", new() { Timeout = PageManners.Patience });
    }
}
