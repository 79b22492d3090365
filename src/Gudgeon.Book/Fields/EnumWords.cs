using System.Reflection;
using System.Text;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Names of enumerations as people write them.</summary>
public static class EnumWords
{
    private static readonly Dictionary<string, string> TradeNames = typeof(TradeNameAttribute).Assembly.GetTypes()
        .Where(t => t.IsEnum)
        .SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Static))
        .Select(f => (f.Name, Trade: f.GetCustomAttribute<TradeNameAttribute>()?.Name))
        .Where(f => f.Trade is not null)
        .ToDictionary(f => f.Name, f => f.Trade!, StringComparer.Ordinal);

    /// <summary>"TorqueTested" becomes "torque tested"; a name that the trade writes otherwise becomes that.</summary>
    public static string Of(string name)
    {
        if (TradeNames.TryGetValue(name, out var trade))
        {
            return trade;
        }

        var words = new StringBuilder(name.Length + 4);
        for (var i = 0; i < name.Length; i++)
        {
            var c = name[i];
            var nextIsLower = i + 1 < name.Length && char.IsLower(name[i + 1]);
            var starts = i > 0 && char.IsUpper(c) && (nextIsLower || char.IsLower(name[i - 1]));
            words.Append(starts ? " " : "").Append(nextIsLower || starts || i == 0 ? char.ToLowerInvariant(c) : c);
        }

        return words.ToString();
    }
}
