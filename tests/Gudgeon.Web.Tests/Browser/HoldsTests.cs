using System.Globalization;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>Will it hold: every finding, and what it rests on.</summary>
public class HoldsTests(Browsing browsing) : IClassFixture<Browsing>
{
    private async Task<IPage> Findings(string query = "", bool phone = false, bool dark = false)
    {
        var page = await browsing.Open(browsing.Served.Page("holds") + query, phone, dark);
        await page.Locator(".finding").First.WaitForAsync(new() { Timeout = PageManners.Patience });
        return page;
    }

    private static ILocator Row(IPage page, string title) => page.GetByRole(AriaRole.Button, new() { Name = title });

    [Fact]
    public async Task FiltersAndSearches()
    {
        var page = await Findings();
        var all = await page.Locator(".finding").CountAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "falls short 7" }).ClickAsync();
        await Expect(page.Locator(".finding")).ToHaveCountAsync(7);
        await Expect(page.Locator(".finding").First).ToContainTextAsync("Balance factor of the crank [1]");
        await Expect(page.Locator(".finding").Nth(2)).ToContainTextAsync("Clutch torque capacity");
        await Expect(page.Locator(".finding").Nth(4)).ToContainTextAsync("Top ring end gap [2]");
        await Expect(page.Locator(".finding").Last).ToContainTextAsync("Valve lash, cold [exhaust.2.1]");
        await page.GetByRole(AriaRole.Searchbox).FillAsync("ring");
        await Expect(page.Locator(".finding")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new() { Name = "falls short 7" }).ClickAsync();
        await page.GetByRole(AriaRole.Searchbox).FillAsync("");
        await Expect(page.Locator(".finding")).ToHaveCountAsync(all);
    }

    [Fact]
    public async Task ShowsEveryInstanceWhenAsked()
    {
        var page = await Findings();
        await page.GetByRole(AriaRole.Searchbox).FillAsync("open-load");
        await Expect(page.Locator(".finding")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new() { Name = "and 7 more that hold alike" }).ClickAsync();
        await Expect(page.Locator(".finding")).ToHaveCountAsync(8);
    }

    /// <summary>Opened by the keyboard alone, it shows formula, numbers, inputs with how each is known, and the source.</summary>
    [Fact]
    public async Task OpensToWhatItRestsOn()
    {
        var page = await Findings();
        // Another test may have set a limit by which both cylinders hold alike.
        await page.GetByRole(AriaRole.Button, new() { Name = "Every instance" }).ClickAsync();
        await Row(page, "Squish clearance, cold [1]").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(Row(page, "Squish clearance, cold [1]")).ToHaveAttributeAsync("aria-expanded", "true");
        var body = page.Locator(".finding-body");
        await Expect(body).ToContainTextAsync("c = tg + h + hr");
        await Expect(body).ToContainTextAsync("(1.12 mm) = (0.91 mm) + (0.21 mm) + (0 mm)");
        await Expect(body.GetByRole(AriaRole.Row, new() { Name = "cylinder[1].deckHeight" })).ToContainTextAsync("measured with dial gauge on a bridge by Ada");
        await Expect(body).ToContainTextAsync("A piston that touches the head breaks the rod");
        await body.GetByRole(AriaRole.Link, new() { Name = "squish clearance", Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("squish clearance");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Results" })).ToContainTextAsync("1.12 mm");
    }

    [Fact]
    public async Task IsOpenedByAnAddress()
    {
        var page = await Findings("?open=" + Uri.EscapeDataString("spring-rate[exhaust.1.1]"));
        await Expect(Row(page, "Valve spring rate, tested against the wire [exhaust.1.1]")).ToHaveAttributeAsync("aria-expanded", "true");
        await Expect(page.Locator(".finding-body")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task TakesALimitOfOnesOwnWithAReason()
    {
        var page = await Findings("?open=" + Uri.EscapeDataString("squish[2]"));
        var body = page.Locator(".finding-body");
        await body.GetByText("Set a limit of your own").ClickAsync();
        await body.GetByLabel("Limit, with its unit").FillAsync("0.9 N·m");
        await body.GetByRole(AriaRole.Button, new() { Name = "Set the limit" }).ClickAsync();
        await Expect(body.GetByRole(AriaRole.Alert)).ToHaveTextAsync("limit squish.min: a limit of one's own needs a reason");
        await body.GetByLabel("Reason").FillAsync("short rods of titanium");
        await body.GetByRole(AriaRole.Button, new() { Name = "Set the limit" }).ClickAsync();
        await Expect(body.GetByRole(AriaRole.Alert)).ToContainTextAsync("which is a torque");
        await Expect(body.GetByLabel("Limit, with its unit")).ToHaveValueAsync("0.9 N·m");
        await body.GetByLabel("Limit, with its unit").FillAsync("0.9 mm");
        await body.GetByRole(AriaRole.Button, new() { Name = "Set the limit" }).ClickAsync();
        await Expect(body).ToContainTextAsync("squish.min is 0.9 mm, because short rods of titanium", new() { Timeout = 30000 });
        await Expect(Row(page, "Squish clearance, cold [2]")).ToContainTextAsync("wanted at least 0.9 mm", new() { Timeout = PageManners.Patience });
        Assert.Contains("limit squish.min is 0.9 mm, because short rods of titanium", await Served.Command("journal", browsing.Served.PathOf("heron")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    public async Task HasManners(bool phone, bool dark)
    {
        var page = await Findings("?open=clutch", phone, dark);
        await page.HasManners();
        await Browsing.Shot(page, string.Create(CultureInfo.InvariantCulture, $"holds-{phone}-{dark}"));
    }
}
