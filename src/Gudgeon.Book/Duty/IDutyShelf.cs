namespace Gudgeon.Book.Duty;

/// <summary>
/// Where engine runs that take long are kept from one opening of a book to the next. What it cannot keep or find is made
/// again, so that it never refuses.
/// </summary>
public interface IDutyShelf
{
    /// <summary>The run under a key; null when there is none.</summary>
    string? Find(string key);

    /// <summary>The run without nudged values that was kept last; null when there is none.</summary>
    string? Latest();

    /// <summary>Keeps a run.</summary>
    /// <param name="key">SHA-256, hexadecimal.</param>
    /// <param name="nudged">Whether it was made with nudged values.</param>
    /// <param name="content">JSON.</param>
    void Keep(string key, bool nudged, string content);
}
