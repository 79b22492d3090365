using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The page of the boost drive.</summary>
public class DriveTests(Browsing browsing) : IClassFixture<Browsing>
{
    private const int Patience = 120_000;

    [Theory]
    [InlineData("belt", "Belt to scale", false, false)]
    [InlineData("belt", "Belt to scale", true, true)]
    [InlineData("nose", "Loads and bending moment of the nose", false, true)]
    [InlineData("nose", "Loads and bending moment of the nose", true, false)]
    [InlineData("hits", "Hits over steady torque", false, false)]
    [InlineData("hits", "Hits over steady torque", true, false)]
    public async Task SheetsAreForEverybody(string part, string figure, bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("drive", "heron") + "/" + part, phone, dark);
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = figure, Exact = true })).ToBeVisibleAsync(new() { Timeout = Patience });
        await Expect(page.Locator(".finding").First).ToBeVisibleAsync(new() { Timeout = Patience });
        await Browsing.Shot(page, $"drive-{part}{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task TankAndCoolerHaveTheirCautions()
    {
        var page = await browsing.Open(browsing.Served.Page("drive", "heron") + "/heat", phone: true);
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Oil tank in place of a cooler", Exact = true })).ToContainTextAsync("Hot oil burns", new() { Timeout = Patience });
        await Browsing.Shot(page, "drive-heat-phone");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }
}
