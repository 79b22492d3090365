using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Measuring;

/// <summary>One line of the list of instruments.</summary>
/// <param name="Instrument">The instrument.</param>
/// <param name="Uncertainty">Expanded uncertainty (k = 2) of a reading at the end of its range, SI; null when nothing says it.</param>
/// <param name="Overdue">Whether its calibration has run out.</param>
/// <param name="ZeroChecks">How often its zero was checked.</param>
public sealed record InstrumentLine(ShopInstrument Instrument, double? Uncertainty, bool Overdue, int ZeroChecks = 0)
{
    /// <summary>The line of an instrument.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="today">The day.</param>
    public static InstrumentLine Of(ShopInstrument instrument, DateOnly today) => new(instrument, instrument.At(instrument.To ?? 0)?.Expanded, instrument.Overdue(today));

    /// <summary>The instruments of a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="today">The day.</param>
    public static IReadOnlyList<InstrumentLine> All(BuildBook book, DateOnly today) =>
        [.. ShopInstrument.All(book.Now()).Select(i => Of(i, today) with { ZeroChecks = book.Measurements.Count(m => m.Address == new FieldAddress(Fields.Instrument.Zero, i.Name)) })];

    /// <summary>"micrometer, 25 mm to 50 mm", as far as it is known.</summary>
    public string What(bool imperial) => Kind + ((Instrument.From, Instrument.To) switch
    {
        ({ } from, { } to) => $", {Instrument.Print(from, imperial)} to {Instrument.Print(to, imperial)}",
        (null, { } to) => $", to {Instrument.Print(to, imperial)}",
        ({ } from, null) => $", from {Instrument.Print(from, imperial)}",
        _ => "",
    });

    /// <summary>"± 0.0049 mm (k = 2) at the end of its range".</summary>
    public string Spread(bool imperial) => Uncertainty is { } u ? $"± {Instrument.PrintError(u, imperial, 2)} (k = 2){(Instrument.To is null ? "" : " at the end of its range")}" : "± not known: neither permissible error nor calibration";

    /// <summary>Its kind: "bore gauge".</summary>
    public string Kind => EnumWords.Of(Instrument.Kind.ToString());

    /// <summary>The standard that it is made to; empty when none is said.</summary>
    public string Standard => Instrument.Standard is { } standard ? EnumWords.Of(standard.ToString()) : "";

    /// <summary>How it is said that a calibration has run out.</summary>
    internal const string OverdueSince = "overdue since";

    /// <summary>"due 2027-03-01", "overdue since 2026-03-01"; empty when no day is said.</summary>
    public string DueWords => Instrument.Due is { } due ? $"{(Overdue ? OverdueSince : "due")} {Days.Written(due)}" : "";

    /// <summary>All of it in one sentence.</summary>
    public string Words(bool imperial) => string.Join("; ", new[] { What(imperial), Spread(imperial), DueWords }.Where(w => w.Length > 0));
}
