using Microsoft.Playwright;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>A real browser and the program serving the invented builds, shared by the tests of one class.</summary>
public class Browsing : IAsyncLifetime
{
    private static readonly string[] Flags = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private readonly List<string> _faults = [];
    private readonly List<(string Test, IBrowserContext Context)> _open = [];
    private IPlaywright _playwright = null!;
    private IBrowser _browser = null!;

    /// <summary>The program.</summary>
    public Served Served { get; private set; } = null!;

    /// <summary>What the browser's console called an error, and faults of scripts.</summary>
    public IReadOnlyList<string> Faults => _faults;

    /// <summary>Whether the pages are shared on the network.</summary>
    protected virtual bool Share => false;

    public async ValueTask InitializeAsync()
    {
        // The browser first: without one no server is left behind.
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = Chromium, Args = Flags });
        Served = await Served.Start(Share, "heron", "wren");
        // As patient as the actions: the machine may be busy with an engine run.
        Assertions.SetDefaultExpectTimeout(20000);
    }

    /// <summary>A page in a browser profile of its own: another person's, another tablet's.</summary>
    /// <param name="phone">Whether 390 px wide with touch; else 1280 × 800.</param>
    /// <param name="dark">Whether the machine prefers dark.</param>
    public async Task<IPage> NewPage(bool phone = false, bool dark = false)
    {
        await CloseOthers();
        var context = await _browser.NewContextAsync(new()
        {
            ViewportSize = phone ? new() { Width = 390, Height = 844 } : new() { Width = 1280, Height = 800 },
            HasTouch = phone,
            IsMobile = phone,
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
        });
        _open.Add((ThisTest, context));
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(20000);
        page.SetDefaultNavigationTimeout(60000);
        page.PageError += (_, e) => _faults.Add(e);
        page.Request += (_, request) => Outside(request.Url);
        return page;
    }

    /// <summary>A page that is open and answers: its connection to the program stands.</summary>
    public async Task<IPage> Open(string url, bool phone = false, bool dark = false)
    {
        var page = await NewPage(phone, dark);
        await Go(page, url);
        return page;
    }

    /// <summary>Goes to a page and waits until it answers.</summary>
    public static async Task Go(IPage page, string url)
    {
        await page.GotoAsync(url);
        await page.Locator("html[data-live]").WaitForAsync();
    }

    /// <summary>Keeps a picture of a page in the folder that GUDGEON_SHOTS names, to be looked at; nothing without it.</summary>
    public static async Task Shot(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("GUDGEON_SHOTS") is { Length: > 0 } folder)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, name + ".png"), FullPage = true });
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright.Dispose();
        await Served.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    private static string ThisTest => TestContext.Current.Test?.UniqueID ?? "";

    /// <summary>Pages of tests that are over would go on drawing and slow the others down.</summary>
    private async Task CloseOthers()
    {
        foreach (var (_, context) in _open.Where(o => o.Test != ThisTest))
        {
            await context.CloseAsync();
        }

        _open.RemoveAll(o => o.Test != ThisTest);
    }

    /// <summary>Whatever a page asks of another machine is a fault.</summary>
    private void Outside(string url)
    {
        if (new Uri(url) is { Scheme: "http" or "https" or "ws" or "wss" } address && address.Port != Served.Port)
        {
            _faults.Add("asked another machine: " + url);
        }
    }

    private static string Chromium => new[] { "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome" }.FirstOrDefault(File.Exists)
        ?? throw new InvalidOperationException("no Chromium was found; ./test installs Debian's");
}
