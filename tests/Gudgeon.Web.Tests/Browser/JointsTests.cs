using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The sheets of bolted joints.</summary>
public class JointsTests(Browsing browsing) : IClassFixture<Browsing>
{
    private const int Patience = 60_000;

    [Theory]
    [InlineData("bolts", "Joint diagram, cover", false, false)]
    [InlineData("bolts", "Joint diagram, cover", true, true)]
    [InlineData("plan", "Order of tightening, joint cover", false, true)]
    [InlineData("plan", "Order of tightening, joint cover", true, false)]
    [InlineData("swap", "same preload, titanium", true, false)]
    [InlineData("head", "Clamp left and gas load over peak pressure", true, true)]
    public async Task ASheetIsForEverybody(string sheet, string figure, bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page($"joints/{sheet}", "heron"), phone, dark);
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = figure })).ToBeVisibleAsync(new() { Timeout = Patience });
        await Browsing.Shot(page, $"joints-{sheet}{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task TorqueAndListAreTables()
    {
        var page = await browsing.Open(browsing.Served.Page("joints/torque", "heron"), false, false);
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Lubricants" }).GetByRole(AriaRole.Row)).ToHaveCountAsync(10, new() { Timeout = Patience });
        await Browsing.Shot(page, "joints-torque");
        await page.HasManners();
        await page.GotoAsync(browsing.Served.Page("joints/list", "heron").ToString());
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Bolts to order" }).GetByRole(AriaRole.Row)).ToHaveCountAsync(5, new() { Timeout = Patience });
        await Browsing.Shot(page, "joints-list");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task AnotherJointIsChosen()
    {
        var page = await browsing.Open(browsing.Served.Page("joints/plan", "heron"), false, false);
        await page.GetByRole(AriaRole.Combobox, new() { Name = "Joint" }).SelectOptionAsync("head");
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Order of tightening, joint head" })).ToBeVisibleAsync(new() { Timeout = Patience });
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Stages" }).GetByRole(AriaRole.Row)).ToHaveCountAsync(5);
    }
}
