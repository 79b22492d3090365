using System.Text;

namespace Gudgeon.Book.Fields;

/// <summary>Names of enumerations as people write them.</summary>
public static class EnumWords
{
    /// <summary>"TorqueTested" becomes "torque tested".</summary>
    public static string Of(string name)
    {
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
