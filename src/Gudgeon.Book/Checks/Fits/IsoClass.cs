using System.Globalization;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Fits;

namespace Gudgeon.Book.Checks.Fits;

/// <summary>Tolerance classes of ISO 286 as people write them: H7, js6.</summary>
public static class IsoClass
{
    /// <summary>What a class of a hole is, for sentences.</summary>
    internal const string HoleWords = "letter and grade of a hole, such as H7: A to ZC, grades 01, 0 and 1 to 18";

    /// <summary>What a class of a shaft is, for sentences.</summary>
    internal const string ShaftWords = "letter and grade of a shaft, such as p6: a to zc, grades 01, 0 and 1 to 18";

    /// <summary>Class of a hole; null for text that is none.</summary>
    public static (HoleDeviation Letter, int Grade)? Hole(string text) => Parse<HoleDeviation>(text);

    /// <summary>Class of a shaft; null for text that is none.</summary>
    public static (ShaftDeviation Letter, int Grade)? Shaft(string text) => Parse<ShaftDeviation>(text);

    /// <summary>Class of a hole.</summary>
    /// <exception cref="BadInputException">The text is none.</exception>
    public static (HoleDeviation Letter, int Grade) HoleOf(string name, string text) => Hole(text) ?? throw new BadInputException($"{name}: given '{text}', wanted {HoleWords}");

    /// <summary>Class of a shaft.</summary>
    /// <exception cref="BadInputException">The text is none.</exception>
    public static (ShaftDeviation Letter, int Grade) ShaftOf(string name, string text) => Shaft(text) ?? throw new BadInputException($"{name}: given '{text}', wanted {ShaftWords}");

    private static (TLetter, int)? Parse<TLetter>(string text)
        where TLetter : struct, Enum
    {
        var trimmed = text.Trim();
        var letters = trimmed.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        return Enum.GetNames<TLetter>().Contains(letters, StringComparer.Ordinal) && Grade(trimmed[letters.Length..]) is { } grade
            ? (Enum.Parse<TLetter>(letters), grade)
            : null;
    }

    private static int? Grade(string digits) => digits switch
    {
        "01" => IsoGrades.Finest,
        "0" => 0,
        _ when !digits.StartsWith('0') && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var grade) && grade <= IsoGrades.Coarsest => grade,
        _ => null,
    };
}
