using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>Job cards on a phone with gloves on, and on the desk.</summary>
public class JobTests(Browsing browsing) : IClassFixture<Browsing>
{
    private static string Url(Browsing browsing, string rest, string book = "heron") => browsing.Served.Page("jobs", book) + "/" + rest;

    [Theory]
    [InlineData("board", false, true)]
    [InlineData("board", true, false)]
    [InlineData("path", false, false)]
    [InlineData("path", true, true)]
    [InlineData("card/head", false, true)]
    public async Task PagesHaveManners(string part, bool phone, bool dark)
    {
        var page = await browsing.Open(Url(browsing, part), phone, dark);
        await Expect(page.Locator(".job-card, table.path, ol.steps").First).ToBeVisibleAsync(new() { Timeout = PageManners.Patience });
        await Browsing.Shot(page, $"jobs-{part.Replace('/', '-')}{(phone ? "-phone" : "")}{(dark ? "-dark" : "")}");
        await page.HasManners();
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task AWholeCardIsWorkedOnAPhoneOverriddenSignedAndOpenedAgain()
    {
        var page = await browsing.Open(Url(browsing, "board", "wren"), phone: true);
        await page.GetByRole(AriaRole.Link, new() { Name = "Barrels on top end" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Barrels on", Exact = true })).ToBeVisibleAsync(new() { Timeout = PageManners.Patience });

        // Used once: without the number of the new one it is refused, and what was typed elsewhere stays.
        await page.GetByRole(AriaRole.Button, new() { Name = "Done base" }).ClickAsync();
        await Expect(Step(page, "base").GetByRole(AriaRole.Alert)).ToContainTextAsync("wanted the batch, number or bag of the new one");
        await Step(page, "base").GetByLabel("Batch, number or bag").FillAsync("bag 31");
        await page.GetByRole(AriaRole.Button, new() { Name = "Done base" }).ClickAsync();
        await Expect(Step(page, "base")).ToContainTextAsync(": bag 31");
        var signature = page.GetByRole(AriaRole.Region, new() { Name = "Signature" });
        await Expect(signature).ToContainTextAsync("3 of 4 steps are not done", new() { Timeout = PageManners.Patience });
        await Expect(signature.GetByRole(AriaRole.Button, new() { Name = "Sign as" })).ToHaveCountAsync(0);

        // The deck was read with the old piston: it does not count by itself.
        await Expect(Step(page, "deck@1")).ToContainTextAsync("before this card came to it");
        await page.GetByRole(AriaRole.Button, new() { Name = "It is still so deck@1" }).ClickAsync();
        await Expect(Step(page, "deck@1").Locator(".box")).ToHaveTextAsync("✓");
        foreach (var step in new[] { "over@1", "squish@1" })
        {
            await page.GetByRole(AriaRole.Button, new() { Name = $"Done {step}" }).ClickAsync();
            await Expect(Step(page, step).Locator(".box")).ToHaveTextAsync("✓");
        }

        // It comes after cards that are not signed: it takes a reason, and the reason stands in the book.
        await signature.GetByRole(AriaRole.Button, new() { Name = "Sign as" }).ClickAsync(new() { Timeout = PageManners.Patience });
        await Expect(signature.GetByRole(AriaRole.Alert)).ToContainTextAsync("To sign all the same takes a reason");
        await signature.GetByLabel("Why it is signed all the same").FillAsync("trial assembly");
        await signature.GetByRole(AriaRole.Button, new() { Name = "Sign as" }).ClickAsync();
        await Expect(signature).ToContainTextAsync("because: trial assembly", new() { Timeout = PageManners.Patience });
        await Expect(signature).ToContainTextAsync("comes after: Pistons and rings");
        await Browsing.Shot(page, "jobs-signed-phone");

        // A value that it stood on moves: the card says so, and why.
        await Served.Command("measure", browsing.Served.PathOf("wren"), "cylinder[1].deckHeight", "0.36 mm", "--with", "depth gauge", "--by", "Tom");
        var again = page.GetByRole(AriaRole.Region, new() { Name = "Why it must be looked at again" });
        await Expect(again).ToContainTextAsync("cylinder[1].deckHeight was ", new() { Timeout = PageManners.Patience });
        await Browsing.Shot(page, "jobs-look-again-phone");
        Assert.Contains("job card barrels: sign", await Served.Command("journal", browsing.Served.PathOf("wren")), StringComparison.Ordinal);
        Assert.Empty(browsing.Faults);
    }

    [Fact]
    public async Task TwoPeopleSignDifferentCardsAtOnce()
    {
        await Ticked("heron", "clean", "wash", "blast", "threads");
        await Ticked("heron", "fluids", "filter", "coolant", "looked");
        var (ada, tom) = (await browsing.Open(Url(browsing, "card/clean")), await browsing.Open(Url(browsing, "card/fluids"), phone: true));
        await Task.WhenAll(
            ada.GetByRole(AriaRole.Button, new() { Name = "Done plugs" }).ClickAsync(new() { Timeout = PageManners.Patience }),
            tom.GetByRole(AriaRole.Button, new() { Name = "Done oil" }).ClickAsync(new() { Timeout = PageManners.Patience }));
        await Expect(Step(ada, "plugs").Locator(".box")).ToHaveTextAsync("✓", new() { Timeout = PageManners.Patience });
        await Expect(Step(tom, "oil").Locator(".box")).ToHaveTextAsync("✓", new() { Timeout = PageManners.Patience });
        await Task.WhenAll(Explained(ada, "came stripped"), Explained(tom, "trial"));
        await Task.WhenAll(Sign(ada).ClickAsync(), Sign(tom).ClickAsync());
        await Expect(Signature(ada)).ToContainTextAsync("because: came stripped", new() { Timeout = PageManners.Patience });
        await Expect(Signature(tom)).ToContainTextAsync("because: trial", new() { Timeout = PageManners.Patience });
        var journal = await Served.Command("journal", browsing.Served.PathOf("heron"));
        Assert.Contains("job card clean: tick plugs", journal, StringComparison.Ordinal);
        Assert.Contains("job card fluids: tick oil", journal, StringComparison.Ordinal);
        Assert.Contains("job card clean: sign", journal, StringComparison.Ordinal);
        Assert.Contains("job card fluids: sign", journal, StringComparison.Ordinal);
        Assert.Empty(browsing.Faults);
    }

    // What the page acknowledged is in the book after a power cut, and a press that the cut swallowed is not half there.
    [Fact]
    public async Task ACardWorkedWhileTheServerFallsHoldsWhatWasAcknowledged()
    {
        var served = browsing.Served;
        var page = await browsing.Open(served.Page("jobs", "wren") + "/card/strip", phone: true);
        await page.GetByRole(AriaRole.Button, new() { Name = "Done drain" }).ClickAsync(new() { Timeout = PageManners.Patience });
        await Expect(Step(page, "drain").Locator(".box")).ToHaveTextAsync("✓", new() { Timeout = PageManners.Patience });
        await page.GetByRole(AriaRole.Button, new() { Name = "Done caps" }).ClickAsync();
        await served.Kill();
        await served.Launch();
        await Browsing.Go(page, served.Page("jobs", "wren") + "/card/strip");
        await Expect(Step(page, "drain").Locator(".box")).ToHaveTextAsync("✓", new() { Timeout = PageManners.Patience });
        var journal = await Served.Command("journal", served.PathOf("wren"));
        Assert.Contains("job card strip: tick drain", journal, StringComparison.Ordinal);
        Assert.Equal(journal.Contains("job card strip: tick caps", StringComparison.Ordinal) ? "✓" : "", (await Step(page, "caps").Locator(".box").TextContentAsync())!.Trim());
        Assert.DoesNotContain("bad ", await Served.Command("verify", served.PathOf("wren")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task ACardSignedWhileTheServerFallsIsSignedOrNot()
    {
        var served = browsing.Served;
        await Ticked("wren", "clean", "plugs", "wash", "blast", "threads");
        var page = await browsing.Open(Url(browsing, "card/clean", "wren"), phone: true);
        await Explained(page, "came stripped");
        await Sign(page).ClickAsync();
        await served.Kill();
        await served.Launch();
        await Browsing.Go(page, Url(browsing, "card/clean", "wren"));
        var signed = (await Served.Command("journal", served.PathOf("wren"))).Contains("job card clean: sign", StringComparison.Ordinal);
        await Expect(page.Locator(".card-head .standing")).ToContainTextAsync(signed ? "signed" : "begun", new() { Timeout = PageManners.Patience });
        Assert.DoesNotContain("bad ", await Served.Command("verify", served.PathOf("wren")), StringComparison.Ordinal);
        if (!signed)
        {
            await Explained(page, "came stripped");
            await Sign(page).ClickAsync();
            await Expect(Signature(page)).ToContainTextAsync("because: came stripped", new() { Timeout = PageManners.Patience });
        }

        await served.Kill();
        await served.Launch();
        await Browsing.Go(page, Url(browsing, "card/clean", "wren"));
        await Expect(page.Locator(".card-head .standing")).ToContainTextAsync("signed", new() { Timeout = PageManners.Patience });
    }

    [Fact]
    public async Task BoltsArePressedInTheirOrder()
    {
        var page = await browsing.Open(Url(browsing, "card/head"), phone: true);
        await page.GetByLabel("Tool in the hand").FillAsync("wrench-60");
        await page.GetByRole(AriaRole.Button, new() { Name = "Done faces" }).ClickAsync(new() { Timeout = PageManners.Patience });
        await Step(page, "gasket").GetByLabel("Batch, number or bag").FillAsync("bag 12");
        await page.GetByRole(AriaRole.Button, new() { Name = "Done gasket" }).ClickAsync();
        var bolts = Step(page, "tighten").Locator("fieldset.stage").First.GetByRole(AriaRole.Button);
        await Expect(bolts).ToHaveCountAsync(8);
        await Expect(bolts.Nth(1)).ToBeDisabledAsync();
        await bolts.Nth(0).ClickAsync(new() { Timeout = PageManners.Patience });
        await Expect(bolts.Nth(0)).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(bolts.Nth(1)).ToBeEnabledAsync();
        await Browsing.Shot(page, "jobs-bolts-phone");
        Assert.Empty(browsing.Faults);
    }

    private static ILocator Signature(IPage page) => page.GetByRole(AriaRole.Region, new() { Name = "Signature" });

    private static ILocator Sign(IPage page) => Signature(page).GetByRole(AriaRole.Button, new() { Name = "Sign as" });

    private static Task Explained(IPage page, string why) => Signature(page).GetByLabel("Why it is signed all the same").FillAsync(why, new() { Timeout = PageManners.Patience });

    /// <summary>Ticks steps of a card from a terminal, each with a batch for what is renewed.</summary>
    private async Task Ticked(string book, string card, params string[] steps)
    {
        foreach (var step in steps)
        {
            await Served.Command("jobs", "tick", browsing.Served.PathOf(book), card, step, "--value", "bag 1", "--by", "Ada");
        }
    }

    private static ILocator Step(IPage page, string key) => page.Locator($"[data-step=\"{key}\"]");
}
