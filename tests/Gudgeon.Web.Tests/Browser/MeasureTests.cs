using System.Text.Json;
using System.Text.RegularExpressions;
using Gudgeon.Book.Build;
using Gudgeon.Book.Files;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>Readings taken at the bench, by thumb and by keyboard, with the program there and away.</summary>
public partial class MeasureTests(Browsing browsing) : IClassFixture<Browsing>
{
    private static readonly string[] Known = ["holds", "falls short", "too close to tell"];

    static MeasureTests() => SetDefaultExpectTimeout(30000);

    [Fact]
    public async Task ThreeReadingsTakenByThumbAreOneMeasurement()
    {
        var page = await browsing.Open(browsing.Served.Page("measure"), phone: true);
        await page.GetByLabel("Search").FillAsync("cylinder 1 bore");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = BoreOfTheFirst() }).First.TapAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Cylinder 1: Bore" })).ToBeVisibleAsync();
        await Expect(page.GetByText("bore gauge, three heights and two axes; usually 30 mm to 130 mm")).ToBeVisibleAsync();
        await With(page, "bore gauge", "Ada");
        // The book's last reading of a length with this gauge says so; here it is held to be worse.
        await Expect(page.GetByLabel("Its ±")).ToHaveValueAsync("0.004");
        await page.GetByLabel("Its ±").FillAsync("0.006");
        await page.GetByLabel("Its ±").BlurAsync();
        foreach (var number in new[] { "89.512", "89.514", "89.513" })
        {
            await Tap(page, number);
            await Expect(page.GetByLabel("Reading", new() { Exact = true })).ToHaveTextAsync(number + " mm");
            await page.GetByRole(AriaRole.Button, new() { Name = "Take the reading" }).TapAsync();
        }

        // u = 0.003, s = 0.001: U = 2 √(0.003² + 0.001²/3) = 0.0061.
        await Expect(page.GetByText("3 readings, mean 89.5130 mm ± 0.0061 mm (k = 2), scatter s 0.001 mm")).ToBeVisibleAsync();
        await Expect(InTheBook(page)).ToHaveCountAsync(3);
        await Expect(page.Locator("#queue")).ToHaveTextAsync("All in the book.");
        await Expect(page.GetByText("Now 89.5130 mm ± 0.0061 mm, the mean of 3 readings")).ToBeVisibleAsync();

        var clearance = page.Locator(".finding", new() { HasText = "Piston-to-bore clearance, 1" });
        await Expect(clearance).ToContainTextAsync("wanted 0.");
        await Expect(clearance).ToContainTextAsync("reserve");
        await Expect(clearance.Locator(".verdict svg")).ToHaveCountAsync(1);
        Assert.Contains((await clearance.Locator(".verdict").InnerTextAsync()).Trim(), Known);
        await Browsing.Shot(page, "measure-phone");

        Assert.Contains("mean of 3 readings, measured with bore gauge by Ada", await Served.Command("show", browsing.Served.PathOf("heron"), "cylinder[1].bore"), StringComparison.Ordinal);
        foreach (var number in new[] { "89.512", "89.514", "89.513" })
        {
            Assert.Equal(1, await Times($"cylinder[1].bore reads {number} mm ± 0.006 mm"));
        }
    }

    [Fact]
    public async Task ANumberOutsideTheUsualAsksAndAnImpossibleOneIsRefusedAndStays()
    {
        var page = await browsing.Open(Field("cylinder[1].gasketBore"));
        await With(page, "calliper", "Tom");
        await page.GetByLabel("Unit").SelectOptionAsync("in");
        await page.GetByLabel("Reading", new() { Exact = true }).FocusAsync();
        await page.Keyboard.TypeAsync("94");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByText("Gasket bore of 94 in is outside what is usual (1.1811 in to 5.315 in): take it all the same?")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Go back" }).ClickAsync();
        await Expect(page.Locator("#readings li")).ToHaveCountAsync(0);
        await Expect(page.GetByLabel("Reading", new() { Exact = true })).ToHaveTextAsync("94 in");

        await page.GetByRole(AriaRole.Button, new() { Name = "Sign" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take the reading" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it all the same" }).ClickAsync();
        await Expect(page.Locator("#readings li[data-state=refused]")).ToContainTextAsync("which cannot be; wanted more than zero");

        // The refused reading outlasts the page, until somebody corrects it.
        await Browsing.Go(page, Field("cylinder[1].gasketBore"));
        await Browsing.Shot(page, "measure-refused");
        await page.GetByRole(AriaRole.Button, new() { Name = "Correct -94 in" }).ClickAsync();
        await Expect(page.GetByLabel("Reading", new() { Exact = true })).ToHaveTextAsync("−94 in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Clear" }).ClickAsync();
        await page.Keyboard.TypeAsync("3.6");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take the reading" }).ClickAsync();
        await Expect(InTheBook(page)).ToHaveCountAsync(1);
        await Expect(page.Locator("#readings li")).ToHaveCountAsync(1);
        Assert.Equal(1, await Times("cylinder[1].gasketBore reads 3.6 in"));
        Assert.Equal(1, await Times("cylinder[1].gasketBore reads"));
    }

    [Fact]
    public async Task ReadingsTakenWhileTheProgramIsAwayAreStoredOnceWhenItIsBack()
    {
        var page = await browsing.Open(Field("piston[2].mass"), phone: true);
        await With(page, "bench scale", "Tom");
        await browsing.Served.Kill();
        try
        {
            await Take(page, "391.7");
            await Take(page, "391.8");
            await Expect(page.GetByText("2 readings kept in this device, trying again: the program cannot be reached")).ToBeVisibleAsync();
            await Expect(page.Locator("#readings li", new() { HasText = "kept in this device" })).ToHaveCountAsync(2);
            await Browsing.Shot(page, "measure-away");
            await page.GetByRole(AriaRole.Button, new() { Name = "Copy what is kept" }).TapAsync();
            await Expect(page.GetByLabel("Readings kept in this device")).ToHaveValueAsync(TwoCommands());
            await page.GetByRole(AriaRole.Button, new() { Name = "Go back" }).TapAsync();
        }
        finally
        {
            await browsing.Served.Launch();
        }

        // Nobody touches the page: it tries again by itself.
        await Expect(InTheBook(page)).ToHaveCountAsync(2);
        await Expect(page.Locator("#queue")).ToHaveTextAsync("All in the book.");
        Assert.Equal(1, await Times("piston[2].mass reads 391.7 g ± 0.2 g"));
        Assert.Equal(1, await Times("piston[2].mass reads 391.8 g ± 0.2 g"));
    }

    [Fact]
    public async Task AReadingKeptWhenThePageIsLostIsSentByTheNextPage()
    {
        var page = await browsing.Open(Field("rod[2].mass"), phone: true);
        await With(page, "bench scale", "Tom");
        await browsing.Served.Kill();
        try
        {
            await Take(page, "411.9");
            await Expect(page.GetByText("1 reading kept in this device")).ToBeVisibleAsync();
            await Assert.ThrowsAsync<PlaywrightException>(() => page.ReloadAsync());
        }
        finally
        {
            await browsing.Served.Launch();
        }

        await Browsing.Go(page, browsing.Served.Page("measure"));
        await Expect(page.Locator("#queue")).ToHaveTextAsync("All in the book.");
        Assert.Equal(1, await Times("rod[2].mass reads 411.9 g ± 0.2 g"));
    }

    [Fact]
    public async Task AReadingWhoseAcknowledgementIsLostIsStoredOnce()
    {
        var page = await browsing.Open(Field("crank.mass"), phone: true);
        // A scale of its own: the page offers the ± of the last reading with an instrument, here in kilograms.
        await With(page, "floor scale", "Tom");
        var lost = 0;
        await page.RouteAsync("**/readings", async route =>
        {
            if (lost++ > 0)
            {
                await route.ContinueAsync();
                return;
            }

            var answer = await route.FetchAsync();
            Assert.Equal(200, answer.Status);
            Assert.Equal(1, await Times("crank.mass reads 11.86 kg"));
            await route.AbortAsync();
        });
        await Take(page, "11.86");
        await Expect(InTheBook(page)).ToHaveCountAsync(1);
        Assert.True(lost >= 2, "it was not sent again");
        Assert.Equal(1, await Times("crank.mass reads 11.86 kg"));
    }

    [Fact]
    public async Task AReadingIsTakenByKeyboardAlone()
    {
        var page = await browsing.Open(browsing.Served.Page("measure"));
        await TabTo(page, "document.activeElement.id === 'search'");
        await page.Keyboard.TypeAsync("stroke");
        await TabTo(page, "document.activeElement.tagName === 'BUTTON' && document.activeElement.textContent.startsWith('Stroke')");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Crankshaft: Stroke" })).ToBeVisibleAsync();
        await page.Keyboard.TypeAsync("71,493");
        await Expect(page.GetByLabel("Reading", new() { Exact = true })).ToHaveTextAsync("71.493 mm");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByText("With which instrument was it read?")).ToBeVisibleAsync();
        await Expect(page.GetByLabel("Instrument")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("depth gauge");
        await TabTo(page, "document.activeElement.id === 'take-it'");
        await page.Keyboard.PressAsync("Enter");
        await Expect(InTheBook(page)).ToHaveCountAsync(1);
        Assert.Equal(1, await Times("crank.stroke reads 71.493 mm ± 0.02 mm"));
    }

    [Fact]
    public async Task ABookKeptAsJsonTakesReadingsToo()
    {
        var file = Path.Combine(browsing.Served.Folder, "plain.json");
        File.Copy(Path.Combine(AppContext.BaseDirectory, "demo", "wren.json"), file, overwrite: true);
        var page = await browsing.Open($"{browsing.Served.Url}/book/plain.json/measure?field=crank.stroke", phone: true);
        await With(page, "depth gauge", "Ada");
        await Expect(page.GetByText("Attach a photo")).ToHaveCountAsync(0);
        var before = BookFile.Open(file).Book.Now().Find(Gudgeon.Book.Fields.FieldCatalogue.Address("crank.stroke"))!.Value.Si * 1000;
        var number = before.ToString("F2", System.Globalization.CultureInfo.InvariantCulture);
        await Take(page, number);
        await Expect(InTheBook(page)).ToHaveCountAsync(1);
        var reading = BookFile.Open(file).Book.Measurements[^1];
        Assert.Equal(("crank.stroke", "Ada", "depth gauge"), (reading.Address.Path, reading.Value.By, reading.Value.With));
        Assert.Equal(Measurement.ReadId(reading.Id), reading.Id);
    }

    [Fact]
    public async Task APhotoIsKeptWithTheField()
    {
        var page = await browsing.Open(Field("crank.stroke"));
        var pixel = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==");
        await page.GetByLabel("Attach a photo").SetInputFilesAsync(new FilePayload { Name = "stroke.png", MimeType = "image/png", Buffer = pixel });
        await Expect(page.GetByText("'stroke.png' is attached to crank.stroke")).ToBeVisibleAsync();
        Assert.Contains("stroke.png", await Served.Command("attachments", browsing.Served.PathOf("heron")), StringComparison.Ordinal);
    }

    // A gauge on a keyboard wedge types what it shows and Enter, wherever the focus is.
    [Fact]
    public async Task AGaugeThatTypesGoesThroughAPlanPlaceByPlace()
    {
        var page = await browsing.Open(Field("cylinder[2].boreTable"));
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Cylinder 2: Bore readings at stations" })).ToBeVisibleAsync();
        await With(page, "bore-75-100", "Ada");
        await Expect(page.Locator("#next")).ToHaveTextAsync("Reading 1 of 6: top, 10 mm in, along the crank");
        string[] shown = ["89.512", "89.514", "89.511", "89.513", "89.510", "89.512"];
        foreach (var (number, at) in shown.Select((n, i) => (n, i)))
        {
            await page.Keyboard.TypeAsync(number + "\n");
            if (at == 0)
            {
                await Expect(page.Locator("#next")).ToHaveTextAsync("Reading 2 of 6: top, 10 mm in, across it");
                await Expect(page.GetByLabel("Reading", new() { Exact = true })).ToBeFocusedAsync();
            }
        }

        await Expect(InTheBook(page)).ToHaveCountAsync(1);
        await Expect(page.Locator("#next")).ToHaveTextAsync("Reading 1 of 6: top, 10 mm in, along the crank");
        await Expect(page.Locator("#verdicts")).ToContainTextAsync("Bore round");
        await Browsing.Shot(page, "measure-plan");
        var said = await Served.Command("measuring-plan", browsing.Served.PathOf("heron"), "--part", "cylinder[2]");
        Assert.Contains("mean of 6 readings 89.512 mm, as read", said, StringComparison.Ordinal);
        Assert.Contains("out of round 2 µm, taper 2 µm", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AReadingOfAPlanIsTakenBackAndWhatWasReadOutlastsThePage()
    {
        var page = await browsing.Open(Field("bearing[main.1].journalTable"), phone: true);
        await With(page, "mic-25-50", "Ada");
        await page.Keyboard.TypeAsync("44.985\n44.958\n");
        await Expect(page.Locator("#next")).ToContainTextAsync("Reading 3 of 4");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take the last one back" }).TapAsync();
        await Expect(page.Locator("#next")).ToContainTextAsync("Reading 2 of 4");
        await Browsing.Go(page, Field("bearing[main.1].journalTable"));
        await Expect(page.Locator("#steps li")).ToHaveCountAsync(1);
        await Expect(page.Locator("#steps li")).ToContainTextAsync("44.985 mm");
        await Accessible.Check(page);
    }

    [Fact]
    public async Task PastedReadingsAreTakenAllOrNone()
    {
        var page = await browsing.Open(Field("valve[inlet.1.2].lash"));
        await With(page, "feelers", "Ada");
        await page.GetByText("Paste readings from a sheet").ClickAsync();
        await page.GetByLabel("Readings", new() { Exact = true }).FillAsync("field,value\nvalve[inlet.1.1].lash,0.16 mm\nvalve[inlet.1.1].lash,0.16\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take them all" }).ClickAsync();
        await Expect(page.Locator("#paste-said")).ToContainTextAsync("the pasted readings, line 3: Lash: given");
        Assert.Equal(0, await Times("valve[inlet.1.1].lash reads 0.16 mm"));
        await page.GetByLabel("Readings", new() { Exact = true }).FillAsync("field,value\nvalve[inlet.1.1].lash,0.16 mm\nvalve[inlet.1.1].lash,0.17 mm\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take them all" }).ClickAsync();
        await Expect(page.Locator("#paste-said")).ToHaveTextAsync("2 of 2 readings are in the book.");
        Assert.Equal(1, await Times("valve[inlet.1.1].lash reads 0.16 mm ± 0.0069 mm"));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task EverybodyCanUseItOnAPhone(bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("measure"), phone: true, dark: dark);
        await Accessible.Check(page);
        await Browsing.Shot(page, dark ? "measure-pick-dark" : "measure-pick");
        await Browsing.Go(page, Field("valve[inlet.1.2].lash"));
        await With(page, "feeler gauge", "Ada");
        await Tap(page, "0.15");
        await Accessible.Check(page);
        await Browsing.Shot(page, dark ? "measure-take-dark" : "measure-take");
        foreach (var key in await page.Locator(".keypad button").AllAsync())
        {
            var box = (await key.BoundingBoxAsync())!;
            Assert.True(box.Width >= 56 && box.Height >= 56, $"the key '{await key.InnerTextAsync()}' is {box.Width} × {box.Height}");
        }

        Assert.Empty(browsing.Faults);
    }

    private string Field(string path) => browsing.Served.Page("measure") + "?field=" + Uri.EscapeDataString(path);

    private static ILocator InTheBook(IPage page) => page.Locator("#readings li", new() { HasText = "in the book" });

    private static async Task With(IPage page, string instrument, string by)
    {
        await page.GetByLabel("Instrument").FillAsync(instrument);
        await page.GetByLabel("Read by").FillAsync(by);
        await page.GetByLabel("Read by").BlurAsync();
    }

    private static async Task Tap(IPage page, string number)
    {
        foreach (var figure in number)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = figure == '.' ? "Point" : figure.ToString(), Exact = true }).TapAsync();
        }
    }

    private static async Task Take(IPage page, string number)
    {
        await Tap(page, number);
        await page.GetByRole(AriaRole.Button, new() { Name = "Take the reading" }).TapAsync();
    }

    /// <summary>Goes on by Tab until the focus is where it is wanted, and sees that it can be seen there.</summary>
    private static async Task TabTo(IPage page, string there)
    {
        for (var i = 0; i < 60; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>(there))
            {
                Assert.NotEqual("none", await page.EvaluateAsync<string>("getComputedStyle(document.activeElement).outlineStyle"));
                return;
            }
        }

        Assert.Fail("the focus does not come by Tab where " + there);
    }

    /// <summary>How many entries of the journal that still stand say this.</summary>
    private async Task<int> Times(string words)
    {
        using var journal = JsonDocument.Parse(await Served.Command("journal", browsing.Served.PathOf("heron"), "--json"));
        return journal.RootElement.EnumerateArray().Count(e => e.GetProperty("what").GetString()!.Contains(words, StringComparison.Ordinal));
    }

    [GeneratedRegex("^Bore ?89", RegexOptions.None, 1000)]
    private static partial Regex BoreOfTheFirst();

    [GeneratedRegex("^gudgeon measure 'heron.gudgeon' 'piston\\[2\\].mass' '391.7 g ± 0.2 g' --with 'bench scale' --by 'Tom' --on '.*' --id [0-9a-f-]{36}\ngudgeon measure .*391.8", RegexOptions.None, 1000)]
    private static partial Regex TwoCommands();
}
