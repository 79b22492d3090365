using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Measuring;

/// <summary>A reading as it is kept: with the ± that its instrument had at that moment, where it brought none of its own.</summary>
/// <param name="Value">The reading.</param>
/// <param name="Warnings">What whoever read it should know, one sentence each.</param>
public sealed record TakenWith(KnownValue Value, IReadOnlyList<string> Warnings)
{
    /// <summary>The reading as it was written, with a ± that came to it.</summary>
    /// <param name="text">As written.</param>
    public string Words(string text) => Value.Content is Amount { Uncertainty: > 0 } amount && !text.Contains('±', StringComparison.Ordinal)
        ? $"{text.Trim()} ± {Figures.Number(amount.Uncertainty / amount.Unit.Factor)} {amount.Unit.Symbol}".TrimEnd()
        : text;

    /// <summary>Takes a reading with an instrument.</summary>
    /// <param name="now">The values that hold.</param>
    /// <param name="address">What was read.</param>
    /// <param name="value">The reading as written.</param>
    /// <param name="with">The instrument as named; one that is none of the book's gives no ±.</param>
    /// <param name="on">When, as written.</param>
    /// <param name="at">At which temperatures; null when not said.</param>
    /// <exception cref="BadInputException">The instrument cannot show such a reading, or it cannot be brought to 20 °C.</exception>
    public static TakenWith Of(Snapshot now, FieldAddress address, KnownValue value, string with, string on, ReadAt? at = null)
    {
        var taken = By(now, address, value, with, on);
        return at is null ? taken : taken with { Value = at.Corrected(now, address, taken.Value) };
    }

    private static TakenWith By(Snapshot now, FieldAddress address, KnownValue value, string with, string on)
    {
        // What is read of an instrument itself, its zero, is not a reading with it.
        if (address.Field.Subject == Instrument.Kind.Subject)
        {
            return new TakenWith(value, []);
        }

        if (ShopInstrument.Find(now, with) is not { } instrument)
        {
            return new TakenWith(value, value.Content is Table or Amount { Uncertainty: 0 } ? Unknown(now, with, value.Content is Table) : []);
        }

        var warnings = new List<string>();
        if (Day(on) is { } day && instrument.Overdue(day))
        {
            warnings.Add($"{instrument.Path} is overdue: its calibration ran until {Days.Written(instrument.Due!.Value)}");
        }

        if (value.Content is Table table)
        {
            Reached(instrument, address, table, warnings);
        }

        return new TakenWith(value.Content is Amount amount ? value with { Content = Spread(instrument, address, amount, warnings) } : value, warnings);
    }

    /// <summary>What there is to say of an instrument that a book does not list though it lists others; of one for tables, which may be a bench that no list has, only that its name is nearly another's.</summary>
    private static IReadOnlyList<string> Unknown(Snapshot now, string with, bool bench)
    {
        var (name, known) = (with.Trim(), ShopInstrument.All(now).Select(i => i.Name).ToList());
        if (name.Length == 0 || known.Count == 0)
        {
            return [];
        }

        var near = Nearest.Near(name.Replace(' ', '-'), known);
        return bench && near.Length == 0 ? [] : [$"{name} is none of the book's instruments, so no ± is known{(near.Length > 0 ? $"; the nearest is {near}" : "")}"];
    }

    /// <summary>The day of "2026-10-02 14:05"; null when the words begin with none.</summary>
    internal static DateOnly? Day(string on) =>
        on.Length >= 10 && DateOnly.TryParseExact(on[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    private static Amount Spread(ShopInstrument instrument, FieldAddress address, Amount amount, List<string> warnings)
    {
        if (address.Field.Dimension != instrument.Dimension)
        {
            warnings.Add($"{instrument.Path} measures {instrument.Dimension.Noun()} and {address.Path} is {address.Field.Dimension.Noun()}: its ± says nothing of it");
            return amount;
        }

        if (!instrument.Reaches(amount.Si))
        {
            throw TooFar(instrument, address.Path, amount.ToString());
        }

        if (amount.Si < instrument.LeastOfRange)
        {
            warnings.Add($"{instrument.Path} is used at {instrument.Print(amount.Si)}, below a fifth of its range, where it is not held to its limit (ISO 6789)");
        }

        if (amount.Uncertainty > 0)
        {
            return amount;
        }

        if (instrument.At(amount.Si) is not { } own)
        {
            warnings.Add($"{instrument.Path} has neither permissible error nor calibration in the book: the reading is kept without ±");
            return amount;
        }

        return amount.Within(own.Expanded);
    }

    /// <summary>Refuses a table of which a reading is out of the instrument's range; the places at which was read are not its.</summary>
    private static void Reached(ShopInstrument instrument, FieldAddress address, Table table, List<string> warnings)
    {
        var read = table.Readings.Where(r => r.Column.Dimension == instrument.Dimension).ToList();
        if (read.Find(r => !instrument.Reaches(r.Si)) is { Row: > 0 } far)
        {
            throw TooFar(instrument, string.Create(CultureInfo.InvariantCulture, $"{address.Path}, row {far.Row}, {far.Column.Name}"), far.Text);
        }

        if (read.Count == 0)
        {
            warnings.Add($"{instrument.Path} measures {instrument.Dimension.Noun()} and {address.Path} holds none: its ± says nothing of it");
        }
    }

    /// <summary>An instrument does not reach as far as what was given.</summary>
    internal static BadInputException TooFar(ShopInstrument instrument, string where, string given) =>
        new($"{where}: given '{given}' with {instrument.Path}, which reads {Range(instrument)}; wanted an instrument that reaches so far");

    private static string Range(ShopInstrument instrument) => (instrument.From, instrument.To) switch
    {
        ({ } from, { } to) => $"{instrument.Print(from)} to {instrument.Print(to)}",
        ({ } from, null) => $"from {instrument.Print(from)}",
        (_, { } to) => $"to {instrument.Print(to)}",
        _ => "any size",
    };
}
