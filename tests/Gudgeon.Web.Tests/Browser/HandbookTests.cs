using System.Globalization;
using Gudgeon.Book.Rows;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The handbook: every formula, worked by hand.</summary>
public class HandbookTests(Browsing browsing) : IClassFixture<Browsing>
{
    private string Handbook => browsing.Served.Url + "/handbook";

    private static ILocator Results(IPage page) => page.GetByRole(AriaRole.Region, new() { Name = "Results" });

    [Fact]
    public async Task FindsAFormula()
    {
        var page = await browsing.Open(Handbook);
        await Expect(page.GetByText($"{Formulas.All.Count()} of {Formulas.All.Count()} formulas")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Searchbox).FillAsync("helical spring");
        await page.GetByRole(AriaRole.Link, new() { Name = "helical spring rate" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("helical spring rate");
        await Expect(Results(page)).ToContainTextAsync("Wanted: wire diameter, mean coil diameter, active coils");
        await Expect(page.GetByLabel("shear modulus")).ToHaveValueAsync("79.3 GPa");
    }

    /// <summary>A published value, typed as a person would, comes out; the address then holds it for somebody else.</summary>
    [Fact]
    public async Task WorksAPublishedValue()
    {
        using var file = new StreamReader(Path.Combine(AppContext.BaseDirectory, "reference", "joints.csv"));
        var row = RowSheet.Read(file, "joints.csv").Single(r => r.Id == "S01-rate");
        var page = await browsing.Open(Handbook + "/helical%20spring%20rate");
        foreach (var (key, text) in RowSheet.Inputs(row.Inputs))
        {
            await page.Locator("#in-" + key).FillAsync(text);
            await page.Keyboard.PressAsync("Tab");
        }

        await Expect(Results(page)).ToContainTextAsync("(81 GPa)");
        var result = Results(page).GetByRole(AriaRole.Definition);
        await Expect(result).ToContainTextAsync("N/mm");
        var shown = Amount.Parse("spring rate", await result.InnerTextAsync(), Dimension.ForcePerLength, "N/mm").Si;
        var known = Amount.Parse("spring rate", row.Expected, Dimension.ForcePerLength, "N/mm").Si;
        Assert.Equal("0.2 %", row.Tolerance);
        Assert.InRange(shown, known * 0.998, known * 1.002);
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "spring rate over wire diameter" })).ToBeVisibleAsync();
        await Browsing.Shot(page, "formula");

        var other = await browsing.Open(page.Url);
        await Expect(Results(other).GetByRole(AriaRole.Definition)).ToHaveTextAsync(await result.InnerTextAsync());
        await other.GetByRole(AriaRole.Button, new() { Name = "mm" }).First.ClickAsync();
        await Expect(Results(other).GetByRole(AriaRole.Definition)).ToContainTextAsync("lbf/in");
    }

    /// <summary>A load given as a torque is refused beside its box, what was typed stays, and the box keeps its place.</summary>
    [Fact]
    public async Task RefusesAWrongUnit()
    {
        var page = await browsing.Open(Handbook + "/helical%20spring%20rate");
        var diameter = page.GetByLabel("mean coil diameter");
        await diameter.FillAsync("28.5 N·m");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator("#in-meanDiameter-hint")).ToHaveTextAsync("mean coil diameter: given '28.5 N·m', which is a torque; wanted a length such as '12.3 mm'");
        await Expect(diameter).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(diameter).ToHaveValueAsync("28.5 N·m");
        await Expect(page.GetByLabel("active coils")).ToBeFocusedAsync();
        await page.GetByLabel("wire diameter").FillAsync("90 mm");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator("#in-wire-hint")).ToHaveTextAsync("wire diameter: given 90 mm, wanted more than 0 mm and at most 50 mm");
    }

    /// <summary>Every formula of the catalogue has a page that can be shown.</summary>
    [Fact]
    public async Task ShowsEveryFormula()
    {
        using var client = new HttpClient();
        foreach (var formula in Formulas.All)
        {
            var address = $"{Handbook}/{string.Join('/', formula.Name.Split('/').Select(Uri.EscapeDataString))}";
            var html = System.Net.WebUtility.HtmlDecode(await client.GetStringAsync(new Uri(address), TestContext.Current.CancellationToken));
            Assert.Contains($">{formula.Name}</h1>", html, StringComparison.Ordinal);
            Assert.All(formula.Inputs, i => Assert.Contains($"id=\"in-{i.Key}\"", html, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("", false, false)]
    [InlineData("", true, true)]
    [InlineData("/helical%20spring%20rate?wire=4%20mm&meanDiameter=24%20mm&activeCoils=6", false, true)]
    [InlineData("/helical%20spring%20rate?wire=4%20mm&meanDiameter=24%20mm&activeCoils=6%20N", true, false)]
    public async Task HasManners(string part, bool phone, bool dark)
    {
        var page = await browsing.Open(Handbook + part, phone, dark);
        await page.HasManners();
        await Browsing.Shot(page, string.Create(CultureInfo.InvariantCulture, $"handbook-{part.Length}-{phone}-{dark}"));
    }
}
