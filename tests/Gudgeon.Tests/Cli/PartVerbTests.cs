namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon parts on the invented twin.</summary>
public sealed class PartVerbTests : IDisposable
{
    private readonly Workshop _workshop = new();

    public PartVerbTests() => _workshop.Unpack("heron");

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void PartsAreListedWithWhatTheyComeTo()
    {
        var parts = _workshop.Good("parts");
        Assert.Contains("Money: 1492.00 spent, 238.00 still to spend, 62.00 on scrapped parts: 1792.00 in all, 108.00 under the budget of 1900.00.", parts, StringComparison.Ordinal);
        Assert.Contains("Mass: 8.4876 kg together, no target is set (target.mass); ", parts, StringComparison.Ordinal);
        Assert.Contains("Copper head gasket (ordered): here on 2026-12-12", parts, StringComparison.Ordinal);
        Assert.Contains("To order from a ring maker: 76.00", parts, StringComparison.Ordinal);
        Assert.Contains("gudgeon joints list", parts, StringComparison.Ordinal);
        Assert.Contains("Mass: 18.712 lb together", _workshop.Good("parts", "--imperial"), StringComparison.Ordinal);
        var json = _workshop.Run("parts", "heron.json", "--json").Json;
        Assert.Equal(1792, json.GetProperty("total").GetDouble(), 6);
        Assert.Equal(12, json.GetProperty("lines").GetArrayLength());
    }

    [Fact]
    public void OrdersAreSavedAsAFile()
    {
        Assert.DoesNotContain("Money:", _workshop.Good("parts", "--orders", "--save", "orders.csv"), StringComparison.Ordinal);
        var lines = _workshop.Read("orders.csv").Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(4, lines.Length);
        Assert.Contains(lines, l => l.StartsWith("a belt stockist,Toothed belt of the blower,\"8M, 30 wide\",2,62,124,10,", StringComparison.Ordinal));
        _workshop.Good("parts", "--save", "orders.xlsx");
        Assert.True(File.Exists(_workshop.At("orders.xlsx")));
        var refused = _workshop.Run("parts", "--save", "orders.txt");
        Assert.Equal((2, "gudgeon: order list: given the file 'orders.txt', wanted a name that ends in .csv or .xlsx\n"), (refused.Code, refused.Error));
    }

    [Fact]
    public void ABookWithoutPartsSaysHowToBegin()
    {
        _workshop.Good("new", "empty.json", "--name", "Empty");
        Assert.StartsWith("no parts yet; ", _workshop.Good("parts", "empty.json"), StringComparison.Ordinal);
    }
}
