using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The page of surface treatments.</summary>
public class SurfacesTests(Browsing browsing) : IClassFixture<Browsing>
{
    private const int Patience = 120_000;

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task ACardIsForEverybody(bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("surfaces", "heron"), phone, dark);
        var coarse = page.GetByRole(AriaRole.Region, new() { Name = "Shot peening, gears.coarse", Exact = true });
        await Expect(coarse).ToContainTextAsync("Closed cabinet");
        await Expect(coarse).ToContainTextAsync("selector groove");
        await Expect(coarse.GetByRole(AriaRole.Figure, new() { Name = "Saturation curve, gears.coarse" })).ToContainTextAsync("T, saturation time");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Superfinishing, gears", Exact = true })).ToContainTextAsync("lambda ratio after");
        await Expect(page.Locator(".finding").First).ToBeVisibleAsync(new() { Timeout = Patience });
        await Browsing.Shot(page, $"surfaces{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task AnotherTreatmentIsChosenAndNamedByTheAddress()
    {
        var page = await browsing.Open(browsing.Served.Page("surfaces", "heron"));
        await page.GetByLabel("Treatment").SelectOptionAsync("spindle");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Bake for hydrogen, spindle", Exact = true })).ToContainTextAsync("no bake guarantees freedom");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Handed to the checks", Exact = true })).ToContainTextAsync("counted there, as the coat is still to come");
        await page.GotoAsync(browsing.Served.Page("surfaces", "heron") + "/spindle");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Route card spindle" })).ToBeVisibleAsync();
        await Browsing.Shot(page, "surfaces-spindle");
        Assert.Empty(browsing.Faults);
    }
}
