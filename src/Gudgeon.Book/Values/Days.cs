using System.Globalization;

namespace Gudgeon.Book.Values;

/// <summary>Days as they are written in a book: year-month-day (ISO 8601), 2026-11-30.</summary>
public static class Days
{
    private const string Form = "yyyy-MM-dd";
    private static readonly string[] UniversalTimes = ["yyyy-MM-dd'T'HH:mm:ss'Z'", "yyyy-MM-dd'T'HH:mm'Z'"];

    /// <summary>Forms of a time of a day, local, as devices and people write it.</summary>
    public static readonly string[] Times = ["yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm"];

    /// <summary>Reads a day.</summary>
    /// <param name="what">What it is, for the sentence.</param>
    /// <param name="text">The day as written.</param>
    /// <exception cref="BadInputException">It is none.</exception>
    public static DateOnly Read(string what, string text) => DateOnly.TryParseExact(text.Trim(), Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
        ? day
        : throw new BadInputException($"{what}: given '{text}', wanted a day as year-month-day, such as 2026-11-30");

    /// <summary>Refuses what is neither a day nor a time of a day.</summary>
    /// <param name="what">What it is, for the sentence.</param>
    /// <param name="text">When something was read, as written.</param>
    /// <returns>The same words without blanks about them.</returns>
    /// <exception cref="BadInputException">It is neither.</exception>
    public static string Said(string what, string text) => DateTime.TryParseExact(text.Trim(), [Form, .. Times, .. UniversalTimes], CultureInfo.InvariantCulture, DateTimeStyles.None, out _)
        ? text.Trim()
        : throw new BadInputException($"{what}: given '{text}', wanted a day such as 2026-11-29 or a time such as 2026-11-29 08:30");

    /// <summary>The last moment, UTC, of what is written: a time to the second or the minute, or a day, local where it does not say Z; null when it is neither.</summary>
    internal static DateTime? Until(string text)
    {
        foreach (var form in (string[])[Form, .. Times, .. UniversalTimes])
        {
            var zone = form.EndsWith("'Z'", StringComparison.Ordinal) ? DateTimeStyles.AssumeUniversal : DateTimeStyles.AssumeLocal;
            if (DateTime.TryParseExact(text.Trim(), form, CultureInfo.InvariantCulture, zone | DateTimeStyles.AdjustToUniversal, out var time))
            {
                return form == Form ? time.AddDays(1) : form.Contains("ss", StringComparison.Ordinal) ? time : time.AddMinutes(1);
            }
        }

        return null;
    }

    /// <summary>A time, s, in days; a day begun counts whole.</summary>
    public static int Whole(double seconds) => (int)Math.Ceiling((seconds / 86400) - 1e-9);

    /// <summary>Today, where the program runs.</summary>
    public static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    /// <summary>The day as it is written.</summary>
    public static string Written(DateOnly day) => day.ToString(Form, CultureInfo.InvariantCulture);
}
