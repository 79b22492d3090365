using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The bottom end's sheets of rods and pistons.</summary>
public class BottomRodsTests(Browsing browsing) : IClassFixture<Browsing>
{
    [Theory]
    [InlineData("rods", "Crank throw", false, false)]
    [InlineData("rods", "Crank throw", true, true)]
    [InlineData("pistons", "Squish clearance, cold and at the rev limit", false, true)]
    [InlineData("pistons", "Squish clearance, cold and at the rev limit", true, false)]
    public async Task TheSheetsAreForEverybody(string part, string drawing, bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("bottom", "heron") + "/" + part, phone, dark);
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = drawing })).ToBeVisibleAsync(new() { Timeout = PageManners.Patience });
        await Expect(page.Locator(".finding").First).ToBeVisibleAsync(new() { Timeout = PageManners.Patience });
        await Browsing.Shot(page, $"bottom-{part}{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }
}
