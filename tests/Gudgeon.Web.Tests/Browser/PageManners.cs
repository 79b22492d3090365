using Microsoft.Playwright;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>What the pages of words and tables have in common.</summary>
internal static class PageManners
{
    /// <summary>Long enough for an engine run on a machine that is busy, ms.</summary>
    public const float Patience = 240000;

    /// <summary>Accessible to everybody, and one heading of the first order.</summary>
    public static async Task HasManners(this IPage page)
    {
        await Accessible.Check(page);
        Assert.Equal(1, await page.Locator("h1").CountAsync());
    }
}
