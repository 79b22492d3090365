using System.Net;
using System.Text;
using System.Text.Json;
using Gudgeon.Web.Tests.Browser;

namespace Gudgeon.Web.Tests.Readings;

/// <summary>The program serving, without a browser.</summary>
public sealed class Serving : IAsyncLifetime
{
    /// <summary>The program.</summary>
    public Served Served { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Served = await Served.Start(false, "wren");

    public ValueTask DisposeAsync() => Served.DisposeAsync();
}

/// <summary>What the program answers to a device that sends a reading.</summary>
public sealed class ReadingsTests(Serving serving) : IClassFixture<Serving>, IDisposable
{
    private readonly HttpClient _device = new();

    public void Dispose() => _device.Dispose();

    [Fact]
    public async Task AReadingSentAgainIsTakenOnce()
    {
        var reading = Reading("crank.stroke", "60.01 mm ± 0.02 mm");
        var (status, first) = await Send(reading);
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.False(first.GetProperty("repeated").GetBoolean());
        Assert.True(first.GetProperty("revision").GetInt64() > 1);
        Assert.Equal("60.01 mm ± 0.02 mm", first.GetProperty("holds").GetProperty("text").GetString());

        var (again, second) = await Send(reading);
        Assert.Equal(HttpStatusCode.OK, again);
        Assert.True(second.GetProperty("repeated").GetBoolean());
        Assert.Equal(first.GetProperty("revision").GetInt64(), second.GetProperty("revision").GetInt64());
    }

    [Fact]
    public async Task ManyRetriesAtOnceAreTakenOnce()
    {
        var reading = Reading("crank.mass", "9.91 kg");
        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Send(reading)));
        Assert.All(answers, a => Assert.Equal(HttpStatusCode.OK, a.Status));
        Assert.Single(answers, a => !a.Body.GetProperty("repeated").GetBoolean());
        var journal = await Served.Command("journal", serving.Served.PathOf("wren"));
        Assert.Single(journal.Split('\n'), l => l.Contains("crank.mass reads 9.91 kg", StringComparison.Ordinal));
    }

    [Fact]
    public async Task TheSameIdWithAnotherContentIsRefused()
    {
        var id = Guid.NewGuid().ToString();
        Assert.Equal(HttpStatusCode.OK, (await Send(Reading("rod.length", "110.02 mm", id))).Status);
        var (status, body) = await Send(Reading("rod.length", "110.03 mm", id));
        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Contains("bears the id of another", body.GetProperty("sentence").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("crank.stroke", "60 N·m", "Stroke: given '60 N·m', which is a torque; wanted a length")]
    [InlineData("crank.stroke", "-60 mm", "Stroke: given '-60 mm', which cannot be; wanted more than zero")]
    [InlineData("crank.strok", "60 mm", "there is no field 'crank.strok'; the nearest is 'crank.stroke'")]
    [InlineData("cylinder[7].bore", "60 mm", "cylinder[7].bore: the engine has")]
    [InlineData("crank.stroke", "", "crank.stroke: given nothing, wanted a value with its unit")]
    public async Task WhatCanNeverBeTakenIsRefusedInOneSentence(string path, string text, string sentence)
    {
        var (status, body) = await Send(Reading(path, text));
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.StartsWith(sentence, body.GetProperty("sentence").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("id", "17", "given '17' as the id of a reading, wanted a GUID")]
    [InlineData("on", "yesterday", "crank.stroke: given 'yesterday' as the time, wanted one such as 2026-10-02T14:05:33")]
    [InlineData("by", " ", "crank.stroke: given nothing, wanted the person of 1 to 60 letters on one line")]
    [InlineData("with", "a\nb", "crank.stroke: given 3 letters, wanted the instrument of 1 to 60 letters on one line")]
    public async Task AStoryThatIsNoneIsRefusedInOneSentence(string name, string value, string sentence)
    {
        var (status, body) = await Send(new Dictionary<string, string>(Reading("crank.stroke", "60 mm"), StringComparer.Ordinal) { [name] = value });
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.StartsWith(sentence, body.GetProperty("sentence").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{", "application/json", HttpStatusCode.BadRequest)]
    [InlineData("null", "application/json", HttpStatusCode.BadRequest)]
    [InlineData("{}", "application/json", HttpStatusCode.BadRequest)]
    [InlineData("{}", "text/plain", HttpStatusCode.UnsupportedMediaType)]
    public async Task WhatIsNoReadingIsRefusedInOneSentence(string body, string type, HttpStatusCode wanted)
    {
        var (status, answer) = await Post("wren.gudgeon", new StringContent(body, Encoding.UTF8, type));
        Assert.Equal(wanted, status);
        Assert.NotEmpty(answer.GetProperty("sentence").GetString()!);
    }

    [Fact]
    public async Task TooMuchIsRefused()
    {
        var (status, answer) = await Send(new Dictionary<string, string>(Reading("crank.stroke", "60 mm"), StringComparer.Ordinal) { ["note"] = new string('n', 17 * 1024) });
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, status);
        Assert.Contains("at most 16 KiB", answer.GetProperty("sentence").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task ABookThatIsNotHereIsNotFound() => Assert.Equal(HttpStatusCode.NotFound, (await Post("heron.gudgeon", Json(Reading("crank.stroke", "60 mm")))).Status);

    [Fact]
    public async Task AnotherSiteCannotSend()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, Address("wren.gudgeon")) { Content = Json(Reading("crank.stroke", "60 mm")) };
        request.Headers.Add("Origin", "http://elsewhere.example");
        using var answer = await _device.SendAsync(request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task VerdictsThatNeedNoEngineRunComeAtOnce()
    {
        using var answer = JsonDocument.Parse(await _device.GetStringAsync(new Uri(serving.Served.Page("verdicts", "wren") + "?path=crank.stroke")));
        var speed = Assert.Single(answer.RootElement.GetProperty("verdicts").EnumerateArray(), v => v.GetProperty("id").GetString() == "piston-speed");
        Assert.StartsWith("mean piston speed", speed.GetProperty("value").GetString(), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("m/s", speed.GetProperty("limit").GetString(), StringComparison.Ordinal);
        Assert.Contains(speed.GetProperty("verdict").GetString(), Enum.GetNames<Gudgeon.Book.Checks.Verdict>());
    }

    private static Dictionary<string, string> Reading(string path, string text, string? id = null) => new(StringComparer.Ordinal)
    {
        ["id"] = id ?? Guid.NewGuid().ToString(),
        ["path"] = path,
        ["text"] = text,
        ["with"] = "gauge",
        ["by"] = "Ada",
        ["on"] = "2026-10-02T14:05:33",
    };

    private static StringContent Json(Dictionary<string, string> reading) => new(JsonSerializer.Serialize(reading), Encoding.UTF8, "application/json");

    private Uri Address(string key) => new($"{serving.Served.Url}/book/{key}/readings");

    private Task<(HttpStatusCode Status, JsonElement Body)> Send(Dictionary<string, string> reading) => Post("wren.gudgeon", Json(reading));

    private async Task<(HttpStatusCode Status, JsonElement Body)> Post(string key, HttpContent content)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, Address(key)) { Content = content };
        request.Headers.Add("Origin", serving.Served.Url);
        using var answer = await _device.SendAsync(request);
        return (answer.StatusCode, JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement);
    }
}
