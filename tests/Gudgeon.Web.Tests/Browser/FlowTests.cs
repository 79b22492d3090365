using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The flow of the ports, and a bench's file coming in.</summary>
public class FlowTests(Browsing browsing) : IClassFixture<Browsing>
{
    private const string Bench = "valve[exhaust].benchTable";

    [Fact]
    public async Task Shows_what_the_command_line_says()
    {
        var said = (await Served.Command("head", "flow", browsing.Served.PathOf("heron"))).Split('\n');
        var page = await browsing.Open(browsing.Served.Page("head/flow"));
        var inlet = page.GetByRole(AriaRole.Region, new() { Name = "inlet, by lift" });
        await Expect(inlet).ToBeVisibleAsync();
        var shown = await inlet.Locator("tbody tr").Last.Locator("td").AllInnerTextsAsync();
        Assert.Contains(said, l => l.Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).SequenceEqual(shown.Select(s => s.Trim())));
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "inlet, what it comes to" })).ToContainTextAsync("+15.6 %");
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Port flow over lift" })).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Figure, new() { Name = "Port flow over lift" }).Locator(".main-svg").First).ToBeVisibleAsync();
        await Browsing.Shot(page, "flow");
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task Inch_units_go_through_the_whole_sheet()
    {
        var page = await browsing.Open(browsing.Served.Page("head/flow"));
        await page.GetByRole(AriaRole.Button, new() { Name = "mm", Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "inlet, by lift" })).ToContainTextAsync("flow cfm");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "inlet, what it comes to" })).ToContainTextAsync("in²");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Everybody_can_use_it(bool dark)
    {
        var page = await browsing.Open(browsing.Served.Page("head/flow"), dark: dark);
        await page.GetByRole(AriaRole.Region, new() { Name = "exhaust, by lift" }).WaitForAsync();
        await page.HasManners();
        await Browsing.Shot(page, dark ? "flow-dark" : "flow-light");
    }

    [Fact]
    public async Task A_phone_needs_no_sideways_scroll()
    {
        var page = await browsing.Open(browsing.Served.Page("head/flow"), phone: true);
        await page.GetByRole(AriaRole.Region, new() { Name = "exhaust, by lift" }).WaitForAsync();
        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        await Browsing.Shot(page, "flow-phone");
    }

    [Fact]
    public async Task A_file_of_the_bench_is_chosen_or_pasted_and_refused_in_one_sentence()
    {
        var page = await browsing.Open(browsing.Served.Page("engine?field=" + Uri.EscapeDataString(Bench)));
        var editor = page.GetByRole(AriaRole.Form, new() { Name = "Edit " + Bench, Exact = true });
        await editor.GetByRole(AriaRole.Textbox, new() { Name = "Value" }).FillAsync("lift mm,flow L/s\n3,39\n6,ten\n");
        await editor.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Expect(editor.GetByRole(AriaRole.Alert)).ToHaveTextAsync($"what was pasted, {Bench}, line 3: given 'ten' under 'flow L/s', wanted a finite number");

        await editor.GetByLabel("A CSV file").SetInputFilesAsync(new FilePayload { Name = "bench.csv", MimeType = "text/csv", Buffer = "# test pressure: 25 inH2O\nlift mm;flow L/s\n3;37,5\n6;70\n9;90,5\n"u8.ToArray() });
        await Expect(editor).ToContainTextAsync("3 mm at 37.5 L/s; 6 mm at 70 L/s; 9 mm at 90.5 L/s; Test pressure of the flow bench 25 inH2O");
        await Browsing.Shot(page, "flow-csv");
        await editor.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Expect(editor).ToContainTextAsync($"Saved: {Bench} is 3 mm at 37.5 L/s; 6 mm at 70 L/s; 9 mm at 90.5 L/s.");
        Assert.Contains("25 inH2O", await Served.Command("show", browsing.Served.PathOf("heron"), "valve[exhaust].benchPressure"), StringComparison.Ordinal);
        Assert.Empty(browsing.Faults);
    }
}
