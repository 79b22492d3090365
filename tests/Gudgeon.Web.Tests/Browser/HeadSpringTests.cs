using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The head's sheets of springs, lash and seats.</summary>
public class HeadSpringTests(Browsing browsing) : IClassFixture<Browsing>
{
    [Theory]
    [InlineData("springs", false, false)]
    [InlineData("springs", true, true)]
    [InlineData("lash", false, true)]
    [InlineData("lash", true, false)]
    [InlineData("seats", false, false)]
    [InlineData("seats", true, true)]
    public async Task TheSheetsAreForEverybody(string part, bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("head") + "/" + part, phone, dark);
        await Expect(page.Locator(".finding").First).ToBeVisibleAsync(new() { Timeout = PageManners.Patience });
        await page.HasManners();
        await Browsing.Shot(page, $"head-{part}{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task SaysTheSameAsTheCommandLine()
    {
        var said = await Served.Command("head", "lash", browsing.Served.PathOf("heron"));
        var page = await browsing.Open(browsing.Served.Page("head") + "/lash");
        var table = page.GetByRole(AriaRole.Region, new() { Name = "Shims to fit" });
        foreach (var row in (await table.GetByRole(AriaRole.Row).AllInnerTextsAsync()).Skip(1))
        {
            var cells = row.Split('\t').Select(c => c.Trim()).Where(c => c.Length > 0);
            Assert.Contains(string.Concat(cells).Replace(" ", "", StringComparison.Ordinal), said.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task AnotherValveIsDrawn()
    {
        var page = await browsing.Open(browsing.Served.Page("head") + "/springs");
        await page.GetByRole(AriaRole.Combobox).SelectOptionAsync("exhaust.2.2");
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Valve spring exhaust.2.2: load over height" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task TheButtonPrints()
    {
        var page = await browsing.Open(browsing.Served.Page("head") + "/lash");
        await page.EvaluateAsync("window.print = () => document.body.dataset.printed = 'yes'");
        await page.GetByRole(AriaRole.Button, new() { Name = "Print this sheet" }).ClickAsync();
        await Expect(page.Locator("body")).ToHaveAttributeAsync("data-printed", "yes");
    }

    [Fact]
    public async Task OnPaperThereIsOnlyWhatIsWorkedFrom()
    {
        var page = await browsing.Open(browsing.Served.Page("head") + "/lash");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Expect(page.GetByRole(AriaRole.Columnheader, new() { Name = "measured again" })).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Print this sheet" })).ToBeHiddenAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Springs" })).ToBeHiddenAsync();
        await Browsing.Shot(page, "head-lash-print");
    }
}
