using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>What every page owes to everybody.</summary>
internal static class PageManners
{
    /// <summary>Long enough for an engine run on a machine that is busy, ms.</summary>
    public const float Patience = 240000;

    /// <summary>No serious fault of accessibility, one heading of the first order, nothing to scroll sideways.</summary>
    public static async Task HasManners(this IPage page)
    {
        var axe = await page.RunAxe();
        Assert.Empty(axe.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => v.Id + ": " + v.Help + " " + string.Join("; ", v.Nodes.Select(n => n.Html))));
        Assert.Equal(1, await page.Locator("h1").CountAsync());
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= document.documentElement.clientWidth"), "the page scrolls sideways");
    }
}
