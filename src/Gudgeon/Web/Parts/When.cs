namespace Gudgeon.Web.Parts;

/// <summary>Times of the journal, for people.</summary>
internal static class When
{
    /// <summary>"2026-09-19 14:02 UTC" of an entry's time.</summary>
    public static string Of(string at) => at.Length >= 16 ? $"{at[..10]} {at[11..16]} UTC" : at;
}
