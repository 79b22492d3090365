using System.Net;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>A folder with a book that cannot be read, and addresses that lead nowhere.</summary>
public sealed class DamagedTests : IAsyncLifetime
{
    private readonly HttpClient _client = new();
    private Served _served = null!;

    public async ValueTask InitializeAsync()
    {
        _served = await Served.Start(books: "wren");
        await _served.Kill();
        await File.WriteAllTextAsync(_served.PathOf("wren"), "SQLite format 3, but not quite");
        await _served.Launch();
    }

    [Fact]
    public async Task ABookThatCannotBeReadIsToldOfInASentence()
    {
        var page = await _client.GetStringAsync(new Uri(_served.Page(book: "wren")));
        Assert.Contains("This book cannot be shown", page, StringComparison.Ordinal);
        Assert.Contains("is damaged", page, StringComparison.Ordinal);
        Assert.DoesNotContain(" at Gudgeon.", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnAddressNeverBecomesAPath()
    {
        var page = await _client.GetStringAsync(new Uri(_served.Url + "/book/..%2Foutside.json"));
        Assert.Contains("There is no book", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnAddressThatLeadsNowhereIsNotFound() =>
        Assert.Equal(HttpStatusCode.NotFound, (await _client.GetAsync(new Uri(_served.Url + "/nothing"))).StatusCode);

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _served.DisposeAsync();
    }
}
