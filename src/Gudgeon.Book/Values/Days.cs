using System.Globalization;

namespace Gudgeon.Book.Values;

/// <summary>Days as they are written in a book: year-month-day (ISO 8601), 2026-11-30.</summary>
public static class Days
{
    /// <summary>The form in which a day is written.</summary>
    internal const string Form = "yyyy-MM-dd";

    /// <summary>Reads a day.</summary>
    /// <param name="what">What it is, for the sentence.</param>
    /// <param name="text">The day as written.</param>
    /// <exception cref="BadInputException">It is none.</exception>
    public static DateOnly Read(string what, string text) => DateOnly.TryParseExact(text.Trim(), Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
        ? day
        : throw new BadInputException($"{what}: given '{text}', wanted a day as year-month-day, such as 2026-11-30");

    /// <summary>A time, s, in days; a day begun counts whole.</summary>
    public static int Whole(double seconds) => (int)Math.Ceiling((seconds / 86400) - 1e-9);

    /// <summary>Today, where the program runs.</summary>
    public static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    /// <summary>The day as it is written.</summary>
    public static string Written(DateOnly day) => day.ToString(Form, CultureInfo.InvariantCulture);
}
