using System.Net;
using System.Net.Http.Headers;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The pages shared on the network.</summary>
public sealed class SharedBrowsing : Browsing
{
    protected override bool Share => true;
}

/// <summary>Who is let in: this machine, and paired devices; nobody else, and no other site in their name.</summary>
public sealed partial class DoorTests(SharedBrowsing browsing) : IClassFixture<SharedBrowsing>, IDisposable
{
    private readonly HttpClient _stranger = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false });

    /// <summary>An address of this machine that is not its loopback, so that the program sees a stranger.</summary>
    private string Outside
    {
        get
        {
            Assert.SkipWhen(Server.Addresses.Count == 0, "this machine has no network address");
            return $"http://{Server.Addresses[0]}:{browsing.Served.Port}";
        }
    }

    [Fact]
    public async Task AStrangerSeesThePageThatAsksForTheCodeAndNothingElse()
    {
        var page = await browsing.NewPage(phone: true);
        await page.GotoAsync(Outside + "/book/heron.gudgeon");
        await Expect(page).ToHaveURLAsync(Outside + "/pair");
        Assert.DoesNotContain("Heron", await page.ContentAsync(), StringComparison.Ordinal);
        foreach (var path in new[] { "/book/heron.gudgeon/measure", "/_blazor/negotiate", "/book/heron.gudgeon/readings", "/handbook", "/measure.js" })
        {
            Assert.Equal(HttpStatusCode.Unauthorized, (await _stranger.GetAsync(new Uri(Outside + path))).StatusCode);
        }
    }

    [Fact]
    public async Task ADeviceIsPairedWithTheCodeOfTheHostsScreenAndShutOutAgain()
    {
        var host = await browsing.Open(browsing.Served.Url + "/devices");
        var code = await host.GetByTestId("pairing-code").InnerTextAsync();
        Assert.Contains(code, browsing.Served.Said, StringComparison.Ordinal);

        var phone = await browsing.NewPage(phone: true);
        await phone.GotoAsync($"{Outside}/pair?code={code}");
        await Expect(phone.GetByLabel("Code")).ToHaveValueAsync(code);
        await phone.GetByLabel("Name of this device").FillAsync("bench phone");
        await phone.GetByLabel("Your name").FillAsync("Ada");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Pair" }).TapAsync();
        await Expect(phone.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Books in");
        await Browsing.Go(phone, Outside + "/book/heron.gudgeon");
        await Expect(phone.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Heron 900 sprint");

        // The code has served: the host's screen shows another one at once, and the first lets nobody in.
        await Expect(host.GetByTestId("pairing-code")).Not.ToHaveTextAsync(code);
        await Expect(host.GetByText("bench phone, Ada")).ToBeVisibleAsync();
        var second = await browsing.NewPage();
        await second.GotoAsync($"{Outside}/pair?code={code}");
        await second.GetByLabel("Name of this device").FillAsync("another");
        await second.GetByLabel("Your name").FillAsync("Eve");
        await second.GetByRole(AriaRole.Button, new() { Name = "Pair" }).ClickAsync();
        await Expect(second.GetByRole(AriaRole.Alert)).ToContainTextAsync("not the code");

        await host.GetByRole(AriaRole.Button, new() { Name = "Shut out bench phone" }).ClickAsync();
        await Expect(host.GetByText("bench phone, Ada")).ToHaveCountAsync(0);
        await phone.GetByRole(AriaRole.Button, new() { Name = "mm" }).TapAsync();
        await phone.GotoAsync(Outside + "/book/heron.gudgeon");
        await Expect(phone).ToHaveURLAsync(Outside + "/pair");
    }

    [Fact]
    public async Task AFormWithoutItsTokenIsRefused()
    {
        using var post = Post(browsing.Served.Url + "/pair", new() { ["_handler"] = "pair", ["Given.Code"] = "00000", ["Given.Device"] = "x", ["Given.Who"] = "y" });
        post.Headers.Add("Origin", browsing.Served.Url);
        Assert.Equal(HttpStatusCode.BadRequest, (await _stranger.SendAsync(post)).StatusCode);
    }

    [Theory]
    [InlineData("Host", "evil.example")]
    [InlineData("Origin", "http://evil.example")]
    [InlineData("Origin", "null")]
    public async Task WhatComesByWayOfAnotherSiteIsRefused(string header, string value)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, browsing.Served.Page());
        request.Headers.TryAddWithoutValidation(header, value);
        Assert.Equal(HttpStatusCode.Forbidden, (await _stranger.SendAsync(request)).StatusCode);
    }

    [Fact]
    public async Task EveryAnswerForbidsWhatComesFromOutside()
    {
        var answer = await _stranger.GetAsync(new Uri(browsing.Served.Page()));
        var policy = answer.Headers.GetValues("Content-Security-Policy").Single();
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.False(answer.Headers.Contains("Server"));
        Assert.DoesNotMatch(OutsideAddress(), await answer.Content.ReadAsStringAsync());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task ThePagesOfTheDoorsAreOpenToEverybody(bool dark)
    {
        var pair = await browsing.NewPage(phone: true, dark);
        await pair.GotoAsync(Outside + "/pair");
        await Accessible.Check(pair);
        var devices = await browsing.Open(browsing.Served.Url + "/devices", phone: false, dark);
        await Accessible.Check(devices);
        await Browsing.Shot(devices, dark ? "devices-dark" : "devices");
    }

    public void Dispose() => _stranger.Dispose();

    private static HttpRequestMessage Post(string url, Dictionary<string, string> form) => new(HttpMethod.Post, url)
    {
        Content = new FormUrlEncodedContent(form) { Headers = { ContentType = new MediaTypeHeaderValue("application/x-www-form-urlencoded") } },
    };

    [GeneratedRegex("(src|href)=\"(https?:)?//(?!127\\.0\\.0\\.1)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex OutsideAddress();
}
