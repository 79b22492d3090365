using System.Globalization;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>Changes: what each does to every other part.</summary>
public class ChangesTests(Browsing browsing) : IClassFixture<Browsing>
{
    private static ILocator Card(IPage page, string title) => page.GetByRole(AriaRole.Article, new() { Name = title });

    private static ILocator Switch(ILocator card) => card.GetByRole(AriaRole.Switch);

    [Fact]
    public async Task SwitchesAChangeAndSaysWhatItDoes()
    {
        var page = await browsing.Open(browsing.Served.Page("changes"));
        var ported = Card(page, "Ported head");
        await Expect(Switch(ported)).ToHaveAttributeAsync("aria-checked", "true");
        await ported.GetByRole(AriaRole.Button, new() { Name = "Ported head" }).ClickAsync();
        var power = ported.GetByRole(AriaRole.Row, new() { Name = "Predicted power against the target" });
        await power.WaitForAsync(new() { Timeout = PageManners.Patience });
        await Expect(power).ToContainTextAsync("turned");
        await Expect(power.GetByRole(AriaRole.Cell).Nth(0)).ToContainTextAsync("falls short");
        await Expect(power.GetByRole(AriaRole.Cell).Nth(1)).ToContainTextAsync("holds");
        await Expect(power.GetByRole(AriaRole.Cell).Nth(2)).ToContainTextAsync("better");
        await Expect(ported.GetByRole(AriaRole.Link, new() { Name = "intake.portVolume" })).ToHaveAttributeAsync("href", "/book/heron.gudgeon/measure?field=intake.portVolume");

        await Switch(ported).ClickAsync();
        await Expect(Switch(ported)).ToHaveAttributeAsync("aria-checked", "false", new() { Timeout = 30000 });
        await Expect(Switch(ported)).ToHaveTextAsync("off");
        Assert.Contains("the change ported-head is off", await Served.Command("journal", browsing.Served.PathOf("heron")), StringComparison.Ordinal);

        await Switch(ported).ClickAsync();
        await Expect(Switch(ported)).ToHaveAttributeAsync("aria-checked", "true", new() { Timeout = 30000 });
        Assert.Contains("the change ported-head is on", await Served.Command("journal", browsing.Served.PathOf("heron")), StringComparison.Ordinal);
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task AddsAChangeAndGivesItAValue()
    {
        var page = await browsing.Open(browsing.Served.Page("changes", "wren"));
        var form = page.GetByRole(AriaRole.Region, new() { Name = "Add a change" });
        await form.GetByLabel("Short name").FillAsync("not a short name");
        await form.GetByLabel("What was done").FillAsync("Taller final drive");
        await form.GetByLabel("Why").FillAsync("The last gear ran out.");
        await form.GetByRole(AriaRole.Button, new() { Name = "Add the change" }).ClickAsync();
        await Expect(form.GetByRole(AriaRole.Alert)).ToContainTextAsync("not a short name");
        await Expect(form.GetByLabel("What was done")).ToHaveValueAsync("Taller final drive");
        await form.GetByLabel("Short name").FillAsync("tall-drive");
        await form.GetByRole(AriaRole.Button, new() { Name = "Add the change" }).ClickAsync();

        var card = Card(page, "Taller final drive");
        await card.GetByText("Give it a value").ClickAsync(new() { Timeout = 30000 });
        await card.GetByLabel("Field").FillAsync("vehicle.mass");
        await card.GetByLabel("Value, with its unit").FillAsync("180 N·m");
        await card.GetByRole(AriaRole.Button, new() { Name = "Set the value" }).ClickAsync();
        await Expect(card.GetByRole(AriaRole.Alert)).ToContainTextAsync("which is a torque");
        await Expect(card.GetByLabel("Value, with its unit")).ToHaveValueAsync("180 N·m");

        // Out of the usual asks first; a second press takes it.
        await card.GetByLabel("Value, with its unit").FillAsync("20 kg");
        await card.GetByRole(AriaRole.Button, new() { Name = "Set the value" }).ClickAsync();
        await Expect(card.GetByRole(AriaRole.Alert)).ToContainTextAsync("is outside what is usual");
        await card.GetByLabel("Value, with its unit").FillAsync("180 kg");
        await card.GetByRole(AriaRole.Button, new() { Name = "Set the value" }).ClickAsync();
        await Expect(card.GetByText("1 value")).ToBeVisibleAsync(new() { Timeout = 30000 });
        Assert.Contains("vehicle.mass is 180 kg in the change tall-drive", await Served.Command("journal", browsing.Served.PathOf("wren")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    public async Task HasManners(bool phone, bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("changes") + "?open=clutch-springs", phone, dark);
        await page.Locator(".moves").WaitForAsync(new() { Timeout = PageManners.Patience });
        await page.HasManners();
        await Browsing.Shot(page, string.Create(CultureInfo.InvariantCulture, $"changes-{phone}-{dark}"));
    }
}
