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
    [InlineData("air", "Compressor map with the run on it", false, true)]
    [InlineData("air", "Compressor map with the run on it", true, false)]
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

    [Fact]
    public async Task TheAirIsFollowedOverTheWholeRun()
    {
        var page = await browsing.Open(browsing.Served.Page("drive", "heron") + "/air");
        var table = page.GetByRole(AriaRole.Region, new() { Name = "Air path over the speeds" });
        await Expect(table.GetByRole(AriaRole.Row)).ToHaveCountAsync(15, new() { Timeout = Patience });
        await Expect(table.GetByRole(AriaRole.Row).Last).ToContainTextAsync("98.2 %");
        foreach (var picture in (string[])["Compressor map with the run on it", "Margins over the speeds"])
        {
            await Expect(page.GetByRole(AriaRole.Figure, new() { Name = picture }).Locator(".scatterlayer .trace").First).ToBeVisibleAsync(new() { Timeout = Patience });
        }

        await Browsing.Shot(page, "drive-air");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Match on the compressor map" })).ToContainTextAsync("98000 rpm allowed");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Ducts at the greatest flow" })).ToContainTextAsync("A hose that comes off under boost whips");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Choke margin of the compressor" })).ToBeVisibleAsync(new() { Timeout = Patience });
        Assert.Empty(browsing.Faults);
    }
}
