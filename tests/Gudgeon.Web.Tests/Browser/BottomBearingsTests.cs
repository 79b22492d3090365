using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The bottom end's sheets of bearings and shells.</summary>
public class BottomBearingsTests(Browsing browsing) : IClassFixture<Browsing>
{
    private const int Patience = 60_000;

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task BearingsAreForEverybody(bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("bottom/bearings", "heron"), phone, dark);
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Load on bigEnd.1" })).ToBeVisibleAsync(new() { Timeout = Patience });
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Clearance of each bearing" })).ToBeVisibleAsync();
        await page.GetByLabel("Bearing to draw").SelectOptionAsync("main.2");
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Journal of main.2 in its clearance" })).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Films and oil over the speeds" }).GetByRole(AriaRole.Row)).ToHaveCountAsync(15);
        await Browsing.Shot(page, $"bottom-bearings{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task ShellsAreForEverybody(bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("bottom/shells", "heron"), phone, dark);
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Shells to fit" }).GetByRole(AriaRole.Row)).ToHaveCountAsync(6, new() { Timeout = Patience });
        await Browsing.Shot(page, $"bottom-shells{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }
}
