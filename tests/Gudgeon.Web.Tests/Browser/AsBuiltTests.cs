using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The as-built book in the browser, and saved as one file.</summary>
public class AsBuiltTests(Browsing browsing) : IClassFixture<Browsing>
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task TheBookIsShown(bool phone)
    {
        var page = await browsing.Open(browsing.Served.Page("as-built", "wren"), phone);
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "In short, for scrutineers" })).ToBeVisibleAsync(new() { Timeout = PageManners.Patience });
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Tightening record" })).ToBeVisibleAsync();
        await Browsing.Shot(page, $"as-built{(phone ? "-phone" : "")}");
        await page.HasManners();
        await page.GetByRole(AriaRole.Button, new() { Name = "Only the page for scrutineers" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Tightening record" })).ToHaveCountAsync(0);
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task TheBookIsSavedAsOneFile()
    {
        var page = await browsing.Open(browsing.Served.Page("as-built", "wren"));
        var saved = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Save it as one file" }).ClickAsync(new() { Timeout = PageManners.Patience }), new() { Timeout = PageManners.Patience });
        Assert.Equal("wren.html", saved.SuggestedFilename);
        var html = await File.ReadAllTextAsync(await saved.PathAsync());
        Assert.StartsWith("<!DOCTYPE html>", html, StringComparison.Ordinal);
        Assert.Contains("Seal of the journal", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("heron")]
    [InlineData("wren")]
    public async Task WhatAScrutineerIsHandedIsOnePage(string book)
    {
        var folder = Directory.CreateTempSubdirectory("gudgeon-print-");
        try
        {
            await Served.Command("book", browsing.Served.PathOf(book), "--summary", "--pdf", "--out", Path.Combine(folder.FullName, "short.html"));
            var pdf = await File.ReadAllTextAsync(Path.Combine(folder.FullName, "short.pdf"), System.Text.Encoding.Latin1);
            Assert.Contains("/Count 1\n", pdf, StringComparison.Ordinal);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
