using System.Net;
using System.Text.RegularExpressions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>Guesses of the code, on a program of their own: they use up what an address may try.</summary>
public sealed partial class GuessingTests : IAsyncLifetime
{
    private readonly HttpClient _stranger = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false });
    private Served _served = null!;

    private string Url => _served.Url;

    public async ValueTask InitializeAsync() => _served = await Served.Start(books: "wren");

    [Fact]
    public async Task GuessingIsLimited()
    {
        var form = await _stranger.GetAsync(new Uri(Url + "/pair"));
        var token = Token().Match(await form.Content.ReadAsStringAsync()).Groups["token"].Value;
        var cookie = form.Headers.GetValues("Set-Cookie").First().Split(';')[0];
        var answers = new List<HttpStatusCode>();
        for (var i = 0; i < 20; i++)
        {
            using var guess = new HttpRequestMessage(HttpMethod.Post, Url + "/pair");
            guess.Content = new FormUrlEncodedContent(new Dictionary<string, string>(StringComparer.Ordinal) { ["_handler"] = "pair", ["__RequestVerificationToken"] = token, ["Given.Code"] = "00000", ["Given.Device"] = "x", ["Given.Who"] = "y" });
            guess.Headers.Add("Cookie", cookie);
            guess.Headers.Add("Origin", Url);
            answers.Add((await _stranger.SendAsync(guess)).StatusCode);
        }

        Assert.Equal(HttpStatusCode.OK, answers[0]);
        Assert.Equal(HttpStatusCode.TooManyRequests, answers[^1]);
        Assert.Equal(HttpStatusCode.OK, (await _stranger.GetAsync(new Uri(Url + "/pair"))).StatusCode);
    }

    public async ValueTask DisposeAsync()
    {
        _stranger.Dispose();
        await _served.DisposeAsync();
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"(?<token>[^\"]+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Token();
}
