using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The bottom end's sheets of balance and torsion.</summary>
public class BottomBalanceTests(Browsing browsing) : IClassFixture<Browsing>
{
    private const int Patience = 90_000;

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task BalanceIsForEverybody(bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("bottom", "heron") + "/balance", phone, dark);
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Shaft front: in time and a tooth out" }).Locator("path.course").First).ToBeVisibleAsync(new() { Timeout = Patience });
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Left at the shafts' order, as marked and a tooth out" }).GetByRole(AriaRole.Row)).ToHaveCountAsync(7);
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Loads on the mounts" }).GetByRole(AriaRole.Row)).ToHaveCountAsync(5);
        await Expect(page.Locator(".finding").First).ToBeVisibleAsync(new() { Timeout = Patience });
        await Browsing.Shot(page, $"bottom-balance{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task TorsionIsForEverybody(bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("bottom", "heron") + "/torsion", phone, dark);
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Greatest vibratory torque, all orders together" }).Locator("path.js-line").First).ToBeVisibleAsync(new() { Timeout = Patience });
        var shape = page.GetByRole(AriaRole.Figure, new() { Name = "Mode shape" });
        await Expect(shape.Locator("circle")).ToHaveCountAsync(10);
        await shape.GetByRole(AriaRole.Combobox).SelectOptionAsync(new SelectOptionValue { Index = 2 });
        await Expect(shape.Locator("dl")).ToContainTextAsync("1155.7 Hz");
        await Expect(page.Locator(".finding").First).ToBeVisibleAsync(new() { Timeout = Patience });
        await Browsing.Shot(page, $"bottom-torsion{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }
}
