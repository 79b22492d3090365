using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The head's sheet of how the valves move.</summary>
public class HeadMotionTests(Browsing browsing) : IClassFixture<Browsing>
{
    private const int Patience = 60_000;

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task TheSheetIsForEverybody(bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("head", "wren") + "/motion", phone, dark);
        await Expect(page.Locator(".finding").First).ToBeVisibleAsync(new() { Timeout = Patience });
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Greatest gap in the train and bounce on the seat" })).ToBeVisibleAsync(new() { Timeout = Patience });
        foreach (var figure in await page.Locator("figure.sheet:has(summary)").AllAsync())
        {
            await Expect(figure.Locator("path.js-line").First).ToBeVisibleAsync();
        }

        await Browsing.Shot(page, $"head-motion{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task ItSaysTheSameAsTheCommandLine()
    {
        var said = Squeezed(await Served.Command("head", "motion", browsing.Served.PathOf("wren")));
        var page = await browsing.Open(browsing.Served.Page("head", "wren") + "/motion");
        foreach (var side in new[] { "inlet", "exhaust" })
        {
            var card = page.GetByRole(AriaRole.Region, new() { Name = side, Exact = true });
            await Expect(card).ToContainTextAsync("comes apart at", new() { Timeout = Patience });
            var facts = (await card.Locator("dl").InnerTextAsync()).Split('\n').Select(Squeezed).Where(l => l.Length > 0).ToList();
            Assert.True(facts.Count > 8, string.Join('|', facts));
            Assert.All(facts, l => Assert.Contains(l, said, StringComparison.Ordinal));
        }
    }

    private static string Squeezed(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
