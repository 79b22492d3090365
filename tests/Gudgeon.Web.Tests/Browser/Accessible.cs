using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>What every page owes to everybody.</summary>
public static class Accessible
{
    /// <summary>Every rule, but only what breaks one: the list of all that is well takes long on a full page.</summary>
    private static readonly AxeRunOptions Faults = new() { ResultTypes = [ResultType.Violations] };

    /// <summary>No serious fault by the rules of axe, and no sideways scrolling.</summary>
    public static async Task Check(IPage page)
    {
        var found = await page.RunAxe(Faults);
        var faults = found.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{v.Id}: {v.Help}: {string.Join("; ", v.Nodes.Select(n => n.Html))}").ToList();
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= document.documentElement.clientWidth"), "the page scrolls sideways");
    }
}
