using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The parts of the build, at the desk and on a phone.</summary>
public class PartsTests(Browsing browsing) : IClassFixture<Browsing>
{
    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task PagesHaveManners(bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("parts"), phone, dark);
        await Expect(Row(page, "pistons")).ToContainTextAsync("fitted", new() { Timeout = PageManners.Patience });
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Totals" })).ToContainTextAsync("under the budget of 1900.00");
        await Expect(page.GetByText("Copper head gasket (ordered): here on 2026-12-12")).ToBeVisibleAsync();
        await Browsing.Shot(page, $"parts{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= window.innerWidth"), "the page is wider than the screen");
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task APartIsMovedOnByOnePressOnAPhone()
    {
        var page = await browsing.Open(browsing.Served.Page("parts"), phone: true);
        var belt = Row(page, "belt");
        await belt.GetByRole(AriaRole.Button, new() { Name = "Mark ordered" }).ClickAsync(new() { Timeout = PageManners.Patience });
        await Expect(belt.Locator(".state")).ToHaveTextAsync("◔ ordered");
        await Expect(page.GetByText("Toothed belt of the blower: ordered.")).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Totals" })).ToContainTextAsync("1616.00 spent, 114.00 still to spend");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "a belt stockist" })).ToHaveCountAsync(0);
        await belt.GetByLabel("State of").SelectOptionAsync("needed");
        await Expect(belt.Locator(".state")).ToHaveTextAsync("○ needed");
        var journal = await Served.Command("journal", browsing.Served.PathOf("heron"));
        Assert.Contains("part[belt].state", journal, StringComparison.Ordinal);
        Assert.Contains("part[belt].orderedOn", journal, StringComparison.Ordinal);
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task APartIsAddedAndFoundByItsState()
    {
        var page = await browsing.Open(browsing.Served.Page("parts", "wren"));
        await page.GetByText("Add a part").ClickAsync(new() { Timeout = PageManners.Patience });
        var form = page.GetByRole(AriaRole.Form, new() { Name = "Add a part" });
        await form.GetByLabel("What it is").FillAsync("Base gasket");
        await form.GetByLabel("Short name in the book").FillAsync("base gasket");
        await form.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Expect(form.GetByRole(AriaRole.Alert)).ToContainTextAsync("wanted a name of letters and digits");
        await form.GetByLabel("Short name in the book").FillAsync("base-gasket");
        await form.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Expect(Row(page, "base-gasket")).ToContainTextAsync("Base gasket");
        await page.GetByRole(AriaRole.Button, new() { Name = "needed 1" }).ClickAsync();
        await Expect(Row(page, "base-gasket")).ToBeVisibleAsync();
        Assert.Contains("Base%20gasket", await page.GetByRole(AriaRole.Link, new() { Name = "Save as CSV" }).GetAttributeAsync("href"), StringComparison.Ordinal);
        Assert.Empty(browsing.Faults);
    }

    private static ILocator Row(IPage page, string key) => page.Locator($"tr[data-part=\"{key}\"]");
}
