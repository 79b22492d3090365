using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>What the pages of words and tables have in common.</summary>
internal static class PageManners
{
    /// <summary>Long enough for an engine run on a machine that is busy, ms.</summary>
    public const float Patience = 240000;

    /// <summary>Accessible to everybody, and one heading of the first order.</summary>
    public static async Task HasManners(this IPage page)
    {
        // Between two pages there is none for a moment.
        await Expect(page).ToHaveTitleAsync(new Regex(".", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await Accessible.Check(page);
        Assert.Equal(1, await page.Locator("h1").CountAsync());
    }
}
