using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The first page of a book.</summary>
public class OverviewTests(Browsing browsing) : IClassFixture<Browsing>
{
    [Fact]
    public async Task ShowsTheBook()
    {
        var page = await browsing.Open(browsing.Served.Page());
        await Expect(page.GetByRole(Microsoft.Playwright.AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Heron 900 sprint");
        Assert.Empty(browsing.Faults);
    }
}
