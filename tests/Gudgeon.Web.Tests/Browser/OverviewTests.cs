using System.Globalization;
using System.Text.Json;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The first page of a book.</summary>
public class OverviewTests(Browsing browsing) : IClassFixture<Browsing>
{
    [Fact]
    public async Task ShowsTheBookAndWhatGivesFirst()
    {
        var page = await browsing.Open(browsing.Served.Page());
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Heron 900 sprint");
        var first = page.GetByRole(AriaRole.List, new() { Name = "What gives first" }).GetByRole(AriaRole.Listitem).First;
        await first.WaitForAsync(new() { Timeout = PageManners.Patience });

        using var ladder = JsonDocument.Parse(await Served.Command("gives", browsing.Served.PathOf("heron"), "--json"));
        var rung = ladder.RootElement.GetProperty("rungs")[0];
        Assert.Equal("clutch", rung.GetProperty("id").GetString());
        await Expect(first).ToContainTextAsync("Clutch torque capacity");
        await Expect(first).ToContainTextAsync("gives at " + Figures.Print(rung.GetProperty("power").GetDouble(), Dimension.Power, "kW", 4));
        await Expect(page.GetByRole(AriaRole.Paragraph).Filter(new() { HasText = "Next:" })).ToContainTextAsync("clutch falls short");
        await Browsing.Shot(page, "overview");

        await first.GetByRole(AriaRole.Link).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Will it hold");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Clutch torque capacity" })).ToHaveAttributeAsync("aria-expanded", "true");
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task HoldsThePredictionAgainstTheTarget()
    {
        using var findings = JsonDocument.Parse(await Served.Command("check", browsing.Served.PathOf("heron"), "--family", "goal", "--json"));
        var goals = findings.RootElement.EnumerateArray().ToDictionary(f => f.GetProperty("id").GetString()!, f => f.GetProperty("value").GetDouble(), StringComparer.Ordinal);
        var page = await browsing.Open(browsing.Served.Page());
        var power = page.GetByRole(AriaRole.Region, new() { Name = "Power", Exact = true });
        await Expect(power).ToContainTextAsync(Figures.Number(goals["target-power"], 4) + " kW", new() { Timeout = PageManners.Patience });
        await Expect(power).ToContainTextAsync("165 kW wanted: met");
        var quarter = page.GetByRole(AriaRole.Region, new() { Name = "Quarter mile" });
        await Expect(quarter).ToContainTextAsync(Figures.Number(goals["target-quarter"], 4) + " s", new() { Timeout = PageManners.Patience });
        await Expect(quarter).ToContainTextAsync("10.2 s wanted: met");
    }

    [Fact]
    public async Task CountsVerdictsAndNamesWhatIsMissing()
    {
        var page = await browsing.Open(browsing.Served.Page());
        var wanted = page.GetByRole(AriaRole.Link, new() { Name = "Housing bore, cap tightened [bigEnd.2]" });
        await wanted.WaitForAsync(new() { Timeout = PageManners.Patience });
        Assert.EndsWith("/engine?field=" + Uri.EscapeDataString("bearing[bigEnd.2].housing"), await wanted.GetAttributeAsync("href"), StringComparison.Ordinal);
        await page.GetByRole(AriaRole.Link, new() { Name = "7 falls short" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "falls short 7" })).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(page.Locator(".finding")).ToHaveCountAsync(7);
    }

    /// <summary>An edit by another program shows without loading again, with whose it is.</summary>
    [Fact]
    public async Task SaysWhatChangedLately()
    {
        var page = await browsing.Open(browsing.Served.Page(book: "wren"));
        var lately = page.GetByRole(AriaRole.Region, new() { Name = "Lately" });
        await Expect(lately).ToContainTextAsync("begins");
        await Served.Command("set", browsing.Served.PathOf("wren"), "target.power", "71 kW", "--by", "Ada");
        await Expect(lately).ToContainTextAsync("target.power is 71 kW", new() { Timeout = 30000 });
        await Expect(lately).ToContainTextAsync("Ada at");
    }

    /// <summary>A signature stands over the book as it was, and says when that is no longer so.</summary>
    [Fact]
    public async Task IsSignedByName()
    {
        var page = await browsing.Open(browsing.Served.Page(book: "wren"));
        var signed = page.GetByRole(AriaRole.Region, new() { Name = "Signed" });
        await signed.GetByRole(AriaRole.Button, new() { Name = "Sign as" }).ClickAsync();
        await Expect(signed.GetByRole(AriaRole.Status)).ToContainTextAsync("statement");
        await signed.GetByLabel("Sign the book as it stands").FillAsync("bottom end checked, ready to close");
        await signed.GetByRole(AriaRole.Button, new() { Name = "Sign as" }).ClickAsync();
        await Expect(signed.GetByRole(AriaRole.Listitem)).ToContainTextAsync("the book is as it was signed");
        Assert.Contains("bottom end checked, ready to close", await Served.Command("signatures", browsing.Served.PathOf("wren")), StringComparison.Ordinal);
        await Served.Command("set", browsing.Served.PathOf("wren"), "vehicle.mass", "151 kg");
        await Expect(signed.GetByRole(AriaRole.Listitem)).ToContainTextAsync("edited since: 1 edit stands");
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task HasManners(bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page(), phone, dark);
        await page.Locator(".ladder li").First.WaitForAsync(new() { Timeout = PageManners.Patience });
        await page.HasManners();
        await Browsing.Shot(page, string.Create(CultureInfo.InvariantCulture, $"overview-{phone}-{dark}"));
    }
}
