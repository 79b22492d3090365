using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The page of fits.</summary>
public class FitsTests(Browsing browsing) : IClassFixture<Browsing>
{
    private const int Patience = 60_000;

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task PairsAreForEverybody(bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("fits", "heron"), phone, dark);
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Hole and shaft, spigot" })).ToBeVisibleAsync();
        var coated = page.GetByRole(AriaRole.Figure, new() { Name = "Hole and shaft, coverSeat" });
        await Expect(coated).ToContainTextAsync("hole, bare");
        await Expect(coated).ToContainTextAsync("coating -10 µm");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Several of a kind" })).ToContainTextAsync("dowel");
        await Expect(page.Locator(".finding").First).ToBeVisibleAsync(new() { Timeout = Patience });
        await Browsing.Shot(page, $"fits{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task LimitsFollowWhatIsTyped()
    {
        var page = await browsing.Open(browsing.Served.Page("fits", "heron") + "/limits");
        var fit = page.GetByRole(AriaRole.Region, new() { Name = "Fit", Exact = true });
        await Expect(fit).ToContainTextAsync("25 mm H7/p6: an interference fit");
        await page.GetByLabel("Shaft").FillAsync("g6");
        await page.GetByLabel("Shaft").PressAsync("Tab");
        await Expect(fit).ToContainTextAsync("a clearance fit");
        await page.GetByLabel("Hole").FillAsync("W7");
        await page.GetByLabel("Hole").PressAsync("Tab");
        await Expect(fit.GetByRole(AriaRole.Alert)).ToHaveTextAsync("hole: given 'W7', wanted letter and grade of a hole, such as H7: A to ZC, grades 01, 0 and 1 to 18");
        await page.GetByLabel("Hole").FillAsync("H7");
        await page.GetByLabel("Hole").PressAsync("Tab");
        await Expect(fit).ToContainTextAsync("25 mm H7/g6");
        await Browsing.Shot(page, "fits-limits");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }
}
