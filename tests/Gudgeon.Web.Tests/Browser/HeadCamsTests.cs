using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The head's sheets of cams and of the room between valves and pistons.</summary>
public class HeadCamsTests(Browsing browsing) : IClassFixture<Browsing>
{
    [Theory]
    [InlineData("cams", false, false)]
    [InlineData("cams", true, true)]
    [InlineData("clearance", false, true)]
    [InlineData("clearance", true, false)]
    public async Task TheSheetsAreForEverybody(string part, bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("head") + "/" + part, phone, dark);
        await Expect(page.Locator(".finding").First).ToBeVisibleAsync(new() { Timeout = PageManners.Patience });
        foreach (var figure in await page.Locator("figure.sheet:has(summary)").AllAsync())
        {
            await Expect(figure.Locator("path.js-line").First).ToBeVisibleAsync();
        }

        await Browsing.Shot(page, $"head-{part}{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task CamsSaysTheSameAsTheCommandLine(bool inches)
    {
        var said = Squeezed(await Served.Command(["head", "cams", browsing.Served.PathOf("heron"), .. inches ? new[] { "--imperial" } : []]));
        var page = await browsing.Open(browsing.Served.Page("head") + "/cams");
        await Units(page, inches);
        foreach (var side in new[] { "inlet", "exhaust" })
        {
            var card = page.GetByRole(AriaRole.Region, new() { Name = side, Exact = true });
            await Expect(card).ToContainTextAsync(inches ? "at 0.05 in" : "at 1 mm");
            var events = await card.GetByRole(AriaRole.Listitem).AllInnerTextsAsync();
            Assert.Equal(3, events.Count);
            Assert.All(events, e => Assert.Contains(Squeezed(e), said, StringComparison.Ordinal));
            var facts = await card.Locator("dl").AllInnerTextsAsync();
            Assert.Equal(2, facts.Count);
            Assert.All(facts.SelectMany(f => f.Split('\n')).Where(l => l.Trim().Length > 0), l => Assert.Contains(Squeezed(l), said, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task ClearanceSaysTheSameAsTheCommandLine(bool inches)
    {
        var said = Squeezed(await Served.Command(["head", "clearance", browsing.Served.PathOf("heron"), .. inches ? new[] { "--imperial" } : []]));
        var page = await browsing.Open(browsing.Served.Page("head") + "/clearance");
        await Units(page, inches);
        var table = page.GetByRole(AriaRole.Region, new() { Name = "Room of each valve" });
        // A number in the unit: the words alone stand there in either.
        await Expect(table).ToContainTextAsync(new Regex(inches ? "[0-9] in" : "[0-9] mm", RegexOptions.None, TimeSpan.FromSeconds(1)));
        var rows = (await table.GetByRole(AriaRole.Row).AllInnerTextsAsync()).Skip(1).ToList();
        Assert.Equal(8, rows.Count);
        Assert.All(rows, row => Assert.Contains(Squeezed(row), said, StringComparison.Ordinal));
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Room between valve and piston, inlet.1.2" })).ToBeVisibleAsync();
    }

    /// <summary>Cams advanced by 4° open and close 4° earlier on the open page, and the inlet valve comes nearer to its piston.</summary>
    private static async Task Units(IPage page, bool inches)
    {
        if (inches)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "mm", Exact = true }).ClickAsync();
        }
    }

    /// <summary>Without spaces, which paper and page set differently.</summary>
    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
