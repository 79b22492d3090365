using System.Globalization;

namespace Gudgeon.Book.Values;

/// <summary>Money of the shop as it is written: two decimals, no currency.</summary>
public static class Money
{
    /// <summary>"148.00".</summary>
    public static string Written(double amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);
}
