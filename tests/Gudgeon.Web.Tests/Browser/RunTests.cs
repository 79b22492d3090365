using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The engine run and its what-if.</summary>
public partial class RunTests(Browsing browsing) : IClassFixture<Browsing>
{
    [Fact]
    public async Task ShowsThePeakThatTheCommandLineGives()
    {
        using var points = JsonDocument.Parse(await Served.Command("run", browsing.Served.PathOf("wren"), "--json"));
        var settled = points.RootElement.EnumerateArray().Select(p => (Rpm: p.GetProperty("rpm").GetDouble(), Power: p.GetProperty("figures").GetProperty("power").GetDouble())).ToList();
        var (rpm, power) = settled.MaxBy(p => p.Power);
        var page = await browsing.Open(browsing.Served.Page("run", "wren"));
        var shown = Number(await page.GetByTestId("greatest-power").InnerTextAsync());
        Assert.Equal(power / 1000, shown[0], power / 1000 * 1e-3);
        Assert.Equal(rpm, shown[1], 1);
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Every speed of the run" }).GetByRole(AriaRole.Row)).ToHaveCountAsync(settled.Count + 1);
        await Expect(page.Locator("figure .js-plotly-plot .scatterlayer .trace").First).ToBeAttachedAsync();

        // A single on methanol without a blower: no boost to slide, no map.
        await Expect(page.GetByLabel("Greatest boost")).ToHaveCountAsync(0);
        await Expect(page.GetByText("Compressor map")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Show amounts in the other system" }).Or(page.GetByText("mm", new() { Exact = true })).First.ClickAsync();
        await Expect(page.GetByTestId("greatest-power")).ToContainTextAsync("hp");
    }

    [Fact]
    public async Task ACycleIsShownAtTheSpeedChosen()
    {
        var page = await browsing.Open(browsing.Served.Page("run", "wren"));
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Pressure over volume" })).ToBeVisibleAsync();
        await page.GetByLabel("Speed", new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Index = 0 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Logarithmic pressure and volume" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Logarithmic pressure and volume" })).ToHaveAttributeAsync("aria-pressed", "true");
        var sheet = page.GetByRole(AriaRole.Figure, new() { Name = "Pressure over crank angle" });
        await sheet.GetByText("Numbers").ClickAsync();
        var cells = await sheet.GetByRole(AriaRole.Cell).AllInnerTextsAsync();
        var numbers = cells.Select(c => double.Parse(c, CultureInfo.InvariantCulture)).ToList();
        var half = numbers.Count / 2;
        Assert.InRange(numbers.Take(half).Min(), -360, -340);
        Assert.InRange(numbers.Take(half).Max(), 340, 360);

        // Highest near firing TDC, about atmospheric in the gas exchange.
        Assert.InRange(numbers[numbers.IndexOf(numbers.Skip(half).Max(), half) - half], -10, 60);
        Assert.InRange(numbers.Skip(half).Min(), 0.3, 1.2);
    }

    [Fact]
    public async Task MoreDriveRatioGivesMoreBoostAndTheBookGetsItOnlyWhenAsked()
    {
        var page = await browsing.Open(browsing.Served.Page("run"));
        var slider = page.GetByLabel("Blower pulley speed over crank speed");
        await slider.WaitForAsync(new() { Timeout = 60000 });
        var (ratio, boost) = (Number(await page.GetByTestId("drive-ratio").InnerTextAsync())[0], Number(await page.GetByTestId("boost").InnerTextAsync())[0]);
        await slider.FocusAsync();
        for (var i = 0; i < 8; i++)
        {
            await page.Keyboard.PressAsync("ArrowRight");
        }

        var row = page.GetByRole(AriaRole.Row).Filter(new() { HasText = "greatest boost" });
        await Expect(row).ToContainTextAsync("more");
        await Expect(page.GetByText("A what-if: nothing in the book has changed.")).ToBeVisibleAsync();
        await Expect(page.GetByText("Run at all 14 speeds.")).ToBeVisibleAsync();
        var (more, tried) = (Number(await page.GetByTestId("drive-ratio").InnerTextAsync())[0], Number(await page.GetByTestId("boost").InnerTextAsync())[0]);
        Assert.True(more > ratio && tried > boost, $"{ratio} to {more}, {boost} to {tried}");
        await Browsing.Shot(page, "run-what-if");
        Assert.DoesNotContain("what-if", await Served.Command("change", "list", browsing.Served.PathOf("heron")), StringComparison.Ordinal);

        await page.GetByRole(AriaRole.Button, new() { Name = "Put into the book" }).ClickAsync();
        await page.GetByLabel("What is done").FillAsync("Smaller blower pulley");
        await page.GetByLabel("Why").FillAsync("More boost at the top");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put it into the book" }).ClickAsync();
        await Expect(page.GetByText("The change what-if is in the book and on")).ToBeVisibleAsync();
        Assert.Contains("Smaller blower pulley", await Served.Command("change", "list", browsing.Served.PathOf("heron")), StringComparison.Ordinal);

        // The run is made again with it, and the slider stands where it was put.
        await Expect(page.GetByTestId("boost")).ToHaveTextAsync(new Regex("^" + Regex.Escape(tried.ToString(CultureInfo.InvariantCulture)), RegexOptions.None, TimeSpan.FromSeconds(1)), new() { Timeout = 60000 });
        Assert.Equal(more, Number(await page.GetByTestId("drive-ratio").InnerTextAsync())[0], 1e-3);
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task TheDepthIsChosenForTheWholeBookAndSaid()
    {
        var page = await browsing.Open(browsing.Served.Page("run", "wren"));
        await Expect(page.GetByTestId("depth")).ToHaveTextAsync("Full load, from the lumped model");
        var lumped = Number(await page.GetByTestId("greatest-power").InnerTextAsync())[0];
        await page.GetByLabel("Engine model").SelectOptionAsync("wave");
        await Expect(page.GetByTestId("depth")).ToHaveTextAsync("Full load, from the wave model", new() { Timeout = 60000 });
        Assert.NotEqual(lumped, Number(await page.GetByTestId("greatest-power").InnerTextAsync())[0]);
        Assert.Contains("from the wave model", await Served.Command("run", browsing.Served.PathOf("wren"), "--from", "6000rpm", "--to", "6000rpm"), StringComparison.Ordinal);
        await PipesAreShown(page);
        await Accessible.Check(page);
        await Browsing.Shot(page, "run-wave");
        await page.GetByLabel("Engine model").SelectOptionAsync("lumped");
        await Expect(page.GetByTestId("depth")).ToHaveTextAsync("Full load, from the lumped model", new() { Timeout = 60000 });
        Assert.Empty(browsing.Faults);
    }

    private static async Task PipesAreShown(IPage page)
    {
        var waves = page.GetByLabel("Waves in");
        await waves.WaitForAsync(new() { Timeout = 60000 });
        foreach (var panel in new[] { "Port pressure over crank angle", "Valve flow over crank angle" })
        {
            await Expect(page.GetByRole(AriaRole.Figure, new() { Name = panel })).ToBeVisibleAsync();
        }

        Assert.Equal(["runner 1", "primary 1", "cylinder 1"], await waves.Locator("option").AllInnerTextsAsync());
        await Expect(page.Locator(".wave-picture .wave-valve")).ToHaveCountAsync(2);
        await waves.SelectOptionAsync("primary 1");
        var picture = page.GetByRole(AriaRole.Figure, new() { NameRegex = new Regex("^Pressure in primary 1 at .* from the wave model$", RegexOptions.None, TimeSpan.FromSeconds(1)) });
        await Expect(picture.Locator(".wave-valve")).ToHaveCountAsync(1);
        await Expect(picture.GetByRole(AriaRole.Img)).ToHaveAttributeAsync("aria-label", new Regex("^Pressure in primary 1 .* hatched: the gas runs back", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await Expect(picture.GetByRole(AriaRole.Row, new() { Name = "length" })).ToContainTextAsync("1380 mm");
        var back = page.GetByRole(AriaRole.Region, new() { Name = "Sums of the cycle" }).GetByRole(AriaRole.Row, new() { Name = "reverse flow through the inlet valves" });
        Assert.InRange(Number(await back.InnerTextAsync())[0], 0.01, 30);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task EverybodyCanUseIt(bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("run", "wren"), dark: dark);
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Pressure over volume" })).ToBeVisibleAsync();
        await page.GetByLabel("Mixture (lambda)").PressAsync("ArrowLeft");
        await Expect(page.GetByText("A what-if: nothing in the book has changed.")).ToBeVisibleAsync();
        await Accessible.Check(page);
    }

    [Fact]
    public async Task APhoneNeedsNoSidewaysScroll()
    {
        var page = await browsing.Open(browsing.Served.Page("run", "wren"), phone: true);
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Pressure over volume" })).ToBeVisibleAsync();
        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        await Browsing.Shot(page, "run-phone");
    }

    private static double[] Number(string text) => [.. Numbers().Matches(text).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"-?\d+(\.\d+)?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Numbers();
}
