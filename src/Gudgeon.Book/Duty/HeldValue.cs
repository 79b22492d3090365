using System.Globalization;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Duty;

/// <summary>A value that a kept run read: its SI amount, its word, or its table.</summary>
/// <param name="Text">"0.24 m", "petrol 98"; null for a table.</param>
/// <param name="Columns">Headings of a table.</param>
/// <param name="Rows">Its rows, in the units of the headings.</param>
internal sealed record HeldValue(string? Text, IReadOnlyList<string>? Columns, IReadOnlyList<IReadOnlyList<double>>? Rows)
{
    /// <summary>What was found for a field.</summary>
    /// <param name="value">What was found.</param>
    /// <param name="nudged">The SI amount that was put in its place; null for none.</param>
    public static HeldValue Of(KnownValue value, double? nudged) => value.Content switch
    {
        Amount amount => new HeldValue(string.Create(CultureInfo.InvariantCulture, $"{nudged ?? amount.Si:R} {value.Field.Dimension.SiUnit()}").Trim(), null, null),
        Table table => new HeldValue(null, [.. table.Headings], [.. table.Shown.Select(r => (IReadOnlyList<double>)[.. r])]),
        var word => new HeldValue(Convert.ToString(word, CultureInfo.InvariantCulture), null, null),
    };

    /// <summary>As a value of the field again.</summary>
    /// <exception cref="BadInputException">The field no longer takes it.</exception>
    public KnownValue As(Field field) => Text is null ? KnownValue.Of(field, Table.Read(field, Columns ?? [], Rows ?? []), How.Assumed) : KnownValue.Read(field, Text);
}
