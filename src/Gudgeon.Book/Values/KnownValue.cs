using System.Globalization;
using Gudgeon.Book.Fields;

namespace Gudgeon.Book.Values;

/// <summary>How a value came to be known.</summary>
public enum How
{
    /// <summary>From the factory manual or a maker's sheet.</summary>
    Manual,

    /// <summary>From a drawing or an order: what it is meant to be.</summary>
    Drawing,

    /// <summary>Read off the part by a person with an instrument.</summary>
    Measured,

    /// <summary>Assumed until somebody knows better.</summary>
    Assumed,
}

/// <summary>A field's value with how it is known, by whom, when and with which instrument.</summary>
public sealed record KnownValue
{
    /// <summary>The field.</summary>
    public required Field Field { get; init; }

    /// <summary>An <see cref="Amount"/>, an int, a word or text, a day as year-month-day, or a <see cref="Table"/>, by the field's kind.</summary>
    public required object Content { get; init; }

    /// <summary>How it is known.</summary>
    public How How { get; init; } = How.Assumed;

    /// <summary>By whom; empty when not said.</summary>
    public string By { get; init; } = "";

    /// <summary>When, as written; empty when not said.</summary>
    public string On { get; init; } = "";

    /// <summary>With which instrument; empty when not said.</summary>
    public string With { get; init; } = "";

    /// <summary>Anything else worth knowing.</summary>
    public string Note { get; init; } = "";

    /// <summary>SI value of an amount or a count; NaN for words and tables.</summary>
    public double Si => Content switch
    {
        Amount amount => amount.Si,
        int count => count,
        _ => double.NaN,
    };

    /// <summary>Standard uncertainty, SI; zero when none is known.</summary>
    public double StandardUncertainty => Content is Amount amount ? amount.StandardUncertainty : 0;

    /// <summary>A question to the user when the value, or one of the readings at stations, is outside the plausible range; empty when it is inside.</summary>
    public string Question => (Content, Field.Mean) switch
    {
        (Table table, { } mean) when table.Readings.FirstOrDefault(r => Unusual(mean, r.Si)) is { Row: > 0 } far =>
            string.Create(CultureInfo.InvariantCulture, $"{Field.Label}, row {far.Row}, {far.Column.Name}: {far.Text} is {Outside(mean)}"),
        _ when Unusual(Field, Si) => $"{Field.Label} of {Content} is {Outside(Field)}",
        _ => "",
    };

    private static bool Unusual(Field field, double si) => si < field.Plausible.Low || si > field.Plausible.High;

    private static string Outside(Field field) => $"outside what is usual ({field.Print(field.Plausible.Low)} to {field.Print(field.Plausible.High)}): is it right?";

    /// <summary>Reads the text of a value for a field.</summary>
    /// <exception cref="BadInputException">Wrong unit, wrong form, or physically impossible.</exception>
    public static KnownValue Read(Field field, string text, How how = How.Assumed) => Of(field, Parse(field, text), how);

    /// <summary>Takes a value that has been read, refusing what is physically impossible.</summary>
    /// <exception cref="BadInputException">Physically impossible.</exception>
    public static KnownValue Of(Field field, object content, How how = How.Assumed)
    {
        var value = new KnownValue { Field = field, Content = content, How = how };
        if (!double.IsNaN(value.Si) && (value.Si < field.Possible.Low || value.Si > field.Possible.High))
        {
            throw new BadInputException($"{field.Label}: given '{content}', which cannot be; wanted {(value.Si > field.Possible.High ? $"at most {field.Print(field.Possible.High)}" : field.Possible.Low > 1 ? $"at least {field.Print(field.Possible.Low)}" : field.Possible.Low > 0 ? "more than zero" : "zero or more")}");
        }

        return value;
    }

    /// <summary>
    /// The value for a reader of one system of units: as it was written where its unit belongs there, else converted, its
    /// ± with it.
    /// </summary>
    /// <param name="imperial">Whether in inch units.</param>
    public string Shown(bool imperial) => Content switch
    {
        Amount amount => amount.Print(Figures.UnitFor(amount.Unit, Field.Unit, imperial)),
        Table table => table.In(imperial).ToString(),
        _ => Content.ToString()!,
    };

    /// <summary>What was understood, in both systems of units where they differ: "94.01 mm = 3.7012 in".</summary>
    public string InBoth
    {
        get
        {
            var (written, metric, inch) = (Content.ToString()!, Shown(imperial: false), Shown(imperial: true));
            var other = written == metric ? inch : metric;
            return other == written ? written : $"{written} = {other}";
        }
    }

    /// <summary>The value as <see cref="Read"/> takes it; a table with all its rows, one to a line.</summary>
    public string Written => Content is Table table ? table.Written : Content.ToString()!;

    /// <summary>"manual", "measured with bore gauge by Ada on 2026-10-02".</summary>
    public string Story => string.Concat(
        How.ToString().ToLowerInvariant(),
        With.Length > 0 ? $" with {With}" : "",
        By.Length > 0 ? $" by {By}" : "",
        On.Length > 0 ? $" on {On}" : "");

    private static object Parse(Field field, string text) => field.Kind switch
    {
        FieldKind.Amount => Amount.Parse(field.Label, text, field.Dimension, field.Unit),
        FieldKind.Count => int.TryParse(text.Trim().Replace('−', '-'), NumberStyles.Integer, CultureInfo.InvariantCulture, out var count)
            ? count
            : throw new BadInputException($"{field.Label}: given '{text}', wanted a whole number"),
        FieldKind.Choice => field.Choices.FirstOrDefault(c => string.Equals(c, text.Trim(), StringComparison.OrdinalIgnoreCase))
            ?? throw new BadInputException($"{field.Label}: given '{text}', wanted one of {string.Join(", ", field.Choices.Select(c => $"'{c}'"))}"),
        FieldKind.Table => Table.Parse(field, text),
        FieldKind.Date => Days.Written(Days.Read(field.Label, text)),
        _ => text.Trim().Length > 0 ? text.Trim() : throw new BadInputException($"{field.Label}: given nothing, wanted {field.Help}"),
    };
}
