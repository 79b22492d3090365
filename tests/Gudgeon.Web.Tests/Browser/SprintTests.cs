using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The standing start.</summary>
public class SprintTests(Browsing browsing) : IClassFixture<Browsing>
{
    [Fact]
    public async Task GivesTheTimesOfTheCommandLine()
    {
        var times = await Times();
        var page = await browsing.Open(browsing.Served.Page("sprint", "wren"));
        await Expect(page.GetByTestId("quarter")).ToContainTextAsync($"{times["1/4 mile"]} s over the quarter mile", new() { Timeout = 60000 });
        var splits = page.GetByRole(AriaRole.Region, new() { Name = "Splits" });
        foreach (var (name, time) in times)
        {
            await Expect(splits.GetByRole(AriaRole.Row).Filter(new() { Has = page.GetByRole(AriaRole.Rowheader, new() { Name = name, Exact = true }) })).ToContainTextAsync(time);
        }

        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Road speed over engine speed, by gear" })).ToBeVisibleAsync();
        await Expect(page.GetByText("the strip's marshals and scrutineers have the last word")).ToBeVisibleAsync();
        await Browsing.Shot(page, "sprint");
    }

    [Fact]
    public async Task SaysWhatHoldsItBackAndForHowLong()
    {
        var said = await Served.Command("sprint", browsing.Served.PathOf("wren"));
        var page = await browsing.Open(browsing.Served.Page("sprint", "wren"));
        var rows = page.Locator("table.limits").GetByRole(AriaRole.Row);
        await rows.First.WaitForAsync(new() { Timeout = 60000 });
        foreach (var row in await rows.AllInnerTextsAsync())
        {
            var (limit, seconds) = (row.Split('\t')[0].Trim(), row.Split('\t')[1].Replace(" s", "", StringComparison.Ordinal).Trim());
            Assert.Contains($"held back by {limit} for {seconds} s of the quarter mile", said, StringComparison.Ordinal);
        }

        await Expect(page.GetByRole(AriaRole.Img, new() { Name = "What holds it back:" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task TheAirOfTheDayIsForThisRunOnly()
    {
        var hot = await Times("--weather", "temperature=38 °C;headWind=5 m/s");
        var page = await browsing.Open(browsing.Served.Page("sprint", "wren"));
        await page.GetByLabel("Air temperature").FillAsync("38 N");
        await page.GetByRole(AriaRole.Button, new() { Name = "Run in this air" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Air temperature: given '38 N', which is a force");
        await Expect(page.GetByLabel("Air temperature")).ToHaveValueAsync("38 N");
        await page.GetByLabel("Air temperature").FillAsync("38 °C");
        await page.GetByLabel("Head wind").FillAsync("5 m/s");
        await page.GetByRole(AriaRole.Button, new() { Name = "Run in this air" }).ClickAsync();
        await Expect(page.GetByTestId("quarter")).ToContainTextAsync(hot["1/4 mile"] + " s", new() { Timeout = 60000 });
        await Expect(page.GetByText("Run in other air than the book's: head wind 5 m/s, air temperature 38 °C.").Or(page.GetByText("Run in other air than the book's: air temperature 38 °C, head wind 5 m/s."))).ToBeVisibleAsync();

        var usual = await Times();
        Assert.NotEqual(hot["1/4 mile"], usual["1/4 mile"]);
        await page.GetByRole(AriaRole.Button, new() { Name = "Back to the book's air" }).ClickAsync();
        await Expect(page.GetByTestId("quarter")).ToContainTextAsync(usual["1/4 mile"] + " s", new() { Timeout = 60000 });
        await Expect(page.GetByLabel("Air temperature")).ToHaveValueAsync("");
        Assert.Empty(browsing.Faults);
    }

    /// <summary>A run is kept with its title, and is stale once a value that it read is another.</summary>
    [Fact]
    public async Task ARunIsKeptAndGoesStale()
    {
        var page = await browsing.Open(browsing.Served.Page("sprint", "wren"));
        var kept = page.GetByRole(AriaRole.Region, new() { Name = "Kept runs" }).First;
        await kept.GetByLabel("Keep this run in the book as").FillAsync("before the strip day");
        await kept.GetByRole(AriaRole.Button, new() { Name = "Keep the run" }).ClickAsync();
        await Expect(kept.GetByRole(AriaRole.Row, new() { Name = "before the strip day" })).ToContainTextAsync("every value that it read is as it was");
        Assert.Contains("before the strip day", await Served.Command("runs", browsing.Served.PathOf("wren")), StringComparison.Ordinal);
        await Served.Command("set", browsing.Served.PathOf("wren"), "vehicle.mass", "152 kg");
        await Expect(kept.GetByRole(AriaRole.Row, new() { Name = "before the strip day" })).ToContainTextAsync("stale");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task EverybodyCanUseIt(bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("sprint", "wren"), dark: dark);
        await page.GetByTestId("quarter").WaitForAsync(new() { Timeout = 60000 });
        await Accessible.Check(page);
    }

    [Fact]
    public async Task APhoneNeedsNoSidewaysScroll()
    {
        var page = await browsing.Open(browsing.Served.Page("sprint", "wren"), phone: true);
        await page.GetByTestId("quarter").WaitForAsync(new() { Timeout = 60000 });
        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        await Browsing.Shot(page, "sprint-phone");
    }

    /// <summary>Seconds at each split, with three decimals, by the command line.</summary>
    private async Task<Dictionary<string, string>> Times(params string[] options)
    {
        using var run = JsonDocument.Parse(await Served.Command(["sprint", browsing.Served.PathOf("wren"), .. options, "--json"]));
        var splits = run.RootElement.EnumerateObject().First(p => p.Name.Equals("splits", StringComparison.OrdinalIgnoreCase)).Value;
        return splits.EnumerateArray().ToDictionary(s => Of(s, "name").GetString()!, s => Of(s, "time").GetDouble().ToString("F3", CultureInfo.InvariantCulture), StringComparer.Ordinal);
    }

    private static JsonElement Of(JsonElement from, string name) => from.EnumerateObject().First(p => p.Name.Equals(name, StringComparison.OrdinalIgnoreCase)).Value;
}
