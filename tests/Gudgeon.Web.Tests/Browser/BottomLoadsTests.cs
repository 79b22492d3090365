using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The bottom end's sheet of loads.</summary>
public class BottomLoadsTests(Browsing browsing) : IClassFixture<Browsing>
{
    private const int Patience = 60_000;

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task TheSheetIsForEverybody(bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("bottom", "heron"), phone, dark);
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Load on big end 1" }).Locator("path.course").First).ToBeVisibleAsync(new() { Timeout = Patience });
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Loads on the main bearings" })).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Loads over the speeds" }).GetByRole(AriaRole.Row)).ToHaveCountAsync(15);
        await Browsing.Shot(page, $"bottom-loads{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }
}
