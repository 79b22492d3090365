using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Values;

public class DaysTests
{
    [Fact]
    public void A_day_is_kept_as_it_is_written() => Assert.Equal("2026-11-30", KnownValue.Read(Shop.Begin, " 2026-11-30 ").Content);

    [Theory]
    [InlineData("30.11.2026")]
    [InlineData("2026-02-30")]
    [InlineData("")]
    public void What_is_no_day_is_refused(string text)
    {
        var refused = Assert.Throws<BadInputException>(() => KnownValue.Read(Shop.Begin, text));
        Assert.Equal($"Day on which the work begins: given '{text}', wanted a day as year-month-day, such as 2026-11-30", refused.Message);
    }
}
