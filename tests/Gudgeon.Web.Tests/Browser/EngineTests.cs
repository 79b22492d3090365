using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The page of every field: looked at, edited, edited by two at once.</summary>
public class EngineTests(Browsing browsing) : IClassFixture<Browsing>
{
    private static readonly byte[] Pixel = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    [Fact]
    public async Task A_wrong_unit_gets_a_sentence_and_keeps_what_was_typed()
    {
        var page = await Field("cylinder.bore");
        var value = Value(page, "cylinder.bore");
        await value.FillAsync("94 N·m");
        await Save(page, "cylinder.bore");
        await Expect(Editor(page, "cylinder.bore").GetByRole(AriaRole.Alert)).ToHaveTextAsync("Bore: given '94 N·m', which is a torque; wanted a length such as '12.3 mm'");
        await Expect(value).ToHaveValueAsync("94 N·m");
        await Expect(value).ToHaveAttributeAsync("aria-invalid", "true");
        await Browsing.Shot(page, "engine-refused");

        await value.FillAsync("89.52 mm ± 0.01 mm");
        await Expect(Editor(page, "cylinder.bore")).ToContainTextAsync("89.52 mm ± 0.01 mm = 3.5244 in ± 0.00039 in");
        await Save(page, "cylinder.bore");
        await Expect(Editor(page, "cylinder.bore")).ToContainTextAsync("Saved: cylinder.bore is 89.52 mm ± 0.01 mm.");
        await Expect(Row(page, "cylinder.bore")).ToContainTextAsync("89.52 mm ± 0.01 mm");
        await Expect(page.Locator("ol.history li").First).ToContainTextAsync("cylinder.bore is 89.52 mm ± 0.01 mm in the change forged-pistons");
        Assert.Contains("89.52 mm", await Served.Command("show", browsing.Served.PathOf("heron"), "cylinder.bore"), StringComparison.Ordinal);
        await Browsing.Shot(page, "engine-saved");
        Assert.Empty(browsing.Faults);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Inch_units_show_the_same_values()
    {
        var page = await browsing.Open(browsing.Served.Page("engine"));
        await Expect(Row(page, "cylinder[1].bore")).ToContainTextAsync("89.513 mm ± 0.006 mm");
        await page.GetByRole(AriaRole.Button, new() { Name = "mm", Exact = true }).ClickAsync();
        await Expect(Row(page, "cylinder[1].bore")).ToContainTextAsync("3.52413 in ± 0.00024 in");
        await Expect(Row(page, "weather.temperature")).ToContainTextAsync("62.6 °F");
        await Expect(Row(page, "cylinder[1].bore").Locator(".value")).ToHaveAttributeAsync("title", "as written: 89.513 mm ± 0.006 mm");
        await Expect(page.Locator("svg[aria-label^='Piston at TDC: bore 3.5241 in']")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Of_two_values_set_at_once_one_is_chosen()
    {
        var (ada, ben) = (await Field("rod.length", "Ada"), await Field("rod.length", "Ben"));
        await Value(ada, "rod.length").FillAsync("128.1 mm");
        await Save(ada, "rod.length");
        await Expect(Editor(ada, "rod.length")).ToContainTextAsync("Saved");
        await Expect(Editor(ben, "rod.length")).ToContainTextAsync("Since you opened this it was set to 128.1 mm");
        await Value(ben, "rod.length").FillAsync("128.2 mm");
        await Save(ben, "rod.length");
        await Expect(Editor(ben, "rod.length")).ToContainTextAsync("Both are kept");
        await Expect(ben.GetByRole(AriaRole.Button, new() { Name = "take 128.2 mm by Ben" })).ToBeVisibleAsync();

        // Ada's page was not loaded again.
        await Expect(ada.GetByRole(AriaRole.Button, new() { Name = "keep 128.1 mm by Ada" })).ToBeVisibleAsync();
        await Browsing.Shot(ada, "engine-conflict");
        var open = await Served.Command("conflicts", browsing.Served.PathOf("heron"));
        Assert.Contains("first:  128.1 mm (Ada", open, StringComparison.Ordinal);
        Assert.Contains("second: 128.2 mm (Ben", open, StringComparison.Ordinal);

        await ada.GetByRole(AriaRole.Button, new() { Name = "take 128.2 mm by Ben" }).ClickAsync();
        await Expect(ben.Locator(".conflicts")).ToHaveCountAsync(0);
        await Expect(Row(ben, "rod.length")).ToContainTextAsync("128.2 mm");
        Assert.Contains("no conflicts", await Served.Command("conflicts", browsing.Served.PathOf("heron")), StringComparison.Ordinal);
        Assert.Contains("128.2 mm", await Served.Command("show", browsing.Served.PathOf("heron"), "rod.length"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unusual_value_is_asked_about_and_can_be_taken_back()
    {
        var page = await Field("cylinder.ratioMin", "Ada");
        await Value(page, "cylinder.ratioMin").FillAsync("4.5");
        await Save(page, "cylinder.ratioMin");
        await Expect(Editor(page, "cylinder.ratioMin").GetByRole(AriaRole.Alert)).ToContainTextAsync("Least compression ratio wanted of 4.5 is outside what is usual (6 to 16): is it right?");
        await Browsing.Shot(page, "engine-asked");
        await Expect(Row(page, "cylinder.ratioMin")).ToContainTextAsync("9.4");
        Assert.DoesNotContain("4.5", await Served.Command("show", browsing.Served.PathOf("heron"), "cylinder.ratioMin"), StringComparison.Ordinal);

        await page.GetByRole(AriaRole.Button, new() { Name = "Yes, it is right: save" }).ClickAsync();
        await Expect(Row(page, "cylinder.ratioMin")).ToContainTextAsync("4.5");
        await Expect(page.Locator(".takeback")).ToContainTextAsync("cylinder.ratioMin is 4.5 in the change forged-pistons (Ada");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take back the last edit" }).ClickAsync();
        await Expect(page.Locator("p[role=status]").Filter(new() { HasText = "Taken back: cylinder.ratioMin is 4.5" })).ToBeVisibleAsync();
        await Expect(Row(page, "cylinder.ratioMin")).ToContainTextAsync("9.4");
        await Expect(page.Locator("ol.history li.gone")).ToContainTextAsync("(taken back)");
    }

    [Fact]
    public async Task What_is_not_known_is_listed_when_it_is_wanted()
    {
        var page = await browsing.Open(browsing.Served.Page("engine"));
        await page.GetByRole(AriaRole.Searchbox, new() { Name = "Search" }).FillAsync("housing");
        await Expect(Row(page, "bearing[main.1].housing")).ToBeVisibleAsync();
        await Expect(Row(page, "bearing[bigEnd.2].housing")).ToHaveCountAsync(0);
        await Expect(Row(page, "cylinder.bore")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "also what is not known" }).ClickAsync();
        await Expect(Row(page, "bearing[bigEnd.2].housing")).ToContainTextAsync("not known");
    }

    [Fact]
    public async Task The_layers_say_which_of_them_holds()
    {
        var page = await Field("cylinder[1].bore");
        var layers = page.GetByRole(AriaRole.Region, new() { Name = "cylinder[1].bore, layers" });
        await Expect(layers.GetByRole(AriaRole.Row).Filter(new() { HasText = "89.5 mm" }).First).ToContainTextAsync("a reading goes before it");
        await Expect(layers.GetByRole(AriaRole.Row).Filter(new() { HasText = "89.502 mm" })).ToContainTextAsync("taken of another part");
        await Expect(layers.GetByRole(AriaRole.Row).Filter(new() { HasText = "89.513 mm" })).ToContainTextAsync("✓ holds");
    }

    [Fact]
    public async Task A_table_is_edited_row_by_row()
    {
        var page = await Field("driveline.gears");
        var value = Value(page, "driveline.gears");
        await Expect(value).ToHaveValueAsync("2.72;\n1.94;\n1.53;\n1.27;\n1.1;\n0.98");
        await value.FillAsync("2.72\n1.94\n1.53\n1.27\n1.12\n0.98");
        await Save(page, "driveline.gears");
        await Expect(Editor(page, "driveline.gears")).ToContainTextAsync("Saved");
        Assert.Contains("1.12", await Served.Command("show", browsing.Served.PathOf("heron"), "driveline.gears", "--json"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_photo_is_kept_with_its_field()
    {
        var page = await Field("crank.stroke");
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "journal.png", MimeType = "image/png", Buffer = Pixel });
        await Expect(page.GetByRole(AriaRole.Img, new() { Name = "journal.png, small" })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Show journal.png" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Img, new() { Name = "journal.png", Exact = true })).ToHaveJSPropertyAsync("naturalWidth", 1);
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "tool.exe", MimeType = "image/png", Buffer = [77, 90, 1, 2, 3] });
        await Expect(page.GetByText("'tool.exe' is of no type that a book takes")).ToBeVisibleAsync();
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Everybody_can_read_it(bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("engine"), dark: dark);
        await page.GetByLabel("Subject").SelectOptionAsync("Valve spring");
        await Row(page, "spring[inlet].loadTable").ClickAsync();
        await Expect(Value(page, "spring[inlet].loadTable")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "also what is not known" }).ClickAsync();
        await Expect(Row(page, "spring[inlet].openLoadMax")).ToBeVisibleAsync();
        await Accessible.Check(page);
        await Browsing.Shot(page, dark ? "engine-dark" : "engine-light");
    }

    [Fact]
    public async Task A_phone_scrolls_one_way_only()
    {
        var page = await browsing.Open(browsing.Served.Page("engine?field=valve%5Binlet%5D.liftTable"), phone: true);
        await Expect(Value(page, "valve[inlet].liftTable")).ToBeVisibleAsync();
        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        var small = await page.EvaluateAsync<string[]>("[...document.querySelectorAll('main button, main select, main input')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML.slice(0, 120))");
        Assert.Empty(small);
        await Browsing.Shot(page, "engine-phone");
    }

    [Fact]
    public async Task It_can_be_done_without_a_mouse()
    {
        var page = await browsing.Open(browsing.Served.Page("engine"));
        await TabTo(page, "input[type=search]");
        await page.Keyboard.TypeAsync("wheelbase");
        await Expect(page.Locator("button.field")).ToHaveCountAsync(1);
        await TabTo(page, "button.field");
        await page.Keyboard.PressAsync("Enter");
        await Expect(Editor(page, "vehicle.wheelbase")).ToBeVisibleAsync();
        await TabTo(page, "form.editor input");
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync("1456 mm");
        await page.Keyboard.PressAsync("Enter");
        await Expect(Editor(page, "vehicle.wheelbase")).ToContainTextAsync("Saved: vehicle.wheelbase is 1456 mm.");
    }

    /// <summary>Presses Tab until an element of this kind has the focus.</summary>
    private static async Task TabTo(IPage page, string selector)
    {
        for (var i = 0; i < 60; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>("s => document.activeElement.matches(s)", selector))
            {
                return;
            }
        }

        Assert.Fail($"Tab does not come to {selector}");
    }

    private static ILocator Editor(IPage page, string path) => page.GetByRole(AriaRole.Form, new() { Name = "Edit " + path, Exact = true });

    private static ILocator Value(IPage page, string path) => Editor(page, path).GetByRole(AriaRole.Textbox, new() { Name = "Value" });

    private static Task Save(IPage page, string path) => Editor(page, path).GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();

    private static ILocator Row(IPage page, string path) => page.Locator("button.field").Filter(new() { Has = page.Locator($"code:text-is(\"{path}\")") });

    /// <summary>The page opened at a field by somebody.</summary>
    private async Task<IPage> Field(string path, string who = "")
    {
        var page = await browsing.NewPage();
        if (who.Length > 0)
        {
            await page.Context.AddCookiesAsync([new Cookie { Name = "gudgeon-who", Value = who, Url = browsing.Served.Url }]);
        }

        await Browsing.Go(page, browsing.Served.Page("engine?field=" + Uri.EscapeDataString(path)));
        await Expect(Editor(page, path)).ToBeVisibleAsync();
        return page;
    }
}
