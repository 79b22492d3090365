using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Changes;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Web.Doors;
using Gudgeon.Web.Host;

namespace Gudgeon.Web.Readings;

/// <summary>What the page at the bench must know to go on without the program: what can be measured, and what is known of it.</summary>
internal static class Bench
{
    /// <summary>All that the page is handed.</summary>
    /// <param name="open">The book.</param>
    /// <param name="visitor">Who measures.</param>
    /// <param name="asked">A field that was asked for by its path; null for none.</param>
    public static object Of(OpenBook open, Visitor visitor, FieldAddress? asked)
    {
        var (book, now) = (open.Book, open.Now);
        var wanted = book.Changes.Where(c => c.On).SelectMany(c => Consequences.Brought(c, now, book)).DistinctBy(w => w.Path).ToDictionary(w => w.Path, w => w.Reason, StringComparer.Ordinal);
        var places = Places(now).Concat(wanted.Keys.Select(FieldCatalogue.Address).Where(a => a.Field.Kind == FieldKind.Amount));
        var plans = MeasuringPlan.All(now);
        var all = (asked is { Field.Kind: FieldKind.Amount } one ? places.Append(one) : places).Distinct().ToList();
        var fields = all.Select(a => a.Field).Concat(plans.Select(p => p.Mean.Field)).Distinct().ToList();
        return new
        {
            book = open.Key,
            visitor.Who,
            visitor.Imperial,
            asked = asked?.Path ?? "",
            units = fields.Select(f => f.Dimension).Distinct().ToDictionary(d => d.ToString(), Units),
            fields = fields.ToDictionary(f => f.Path, Described),
            plans = plans.Select(p => new
            {
                p.Table.Path,
                field = p.Mean.Field.Path,
                part = Part(p.Table),
                label = p.Table.Field.Label + " at stations",
                wanted = "",
                holds = Holds(now, p.Table),
                readings = Read(book, p.Table),
                steps = p.Readings(1).Select(r => new { r.Station.At, r.Station.Name, r.Axis }),
            }),
            places = all.Select(a => new
            {
                a.Path,
                field = a.Field.Path,
                part = Part(a),
                wanted = wanted.GetValueOrDefault(a.Path, ""),
                holds = Holds(now, a),
                readings = Read(book, a),
            }),
            instruments = Instruments(book),
            own = ShopInstrument.All(now).Select(i => InstrumentLine.Of(i, Days.Today)).Select(l => new { l.Instrument.Name, dimension = l.Instrument.Dimension.ToString(), spread = l.Uncertainty, said = l.Words(visitor.Imperial) }),
            factors = RepeatedUncertainty.LargerFactors,
            people = book.Measurements.Select(m => m.Value.By).Where(b => b.Length > 0).Distinct(StringComparer.Ordinal),
        };
    }

    private static object Read(BuildBook book, FieldAddress address) =>
        book.Measurements.Where(m => m.Address == address).Select(m => new { text = m.Value.Content.ToString(), m.Value.Story, m.Value.Note });

    /// <summary>The value that holds for a field, in words; null when none is known.</summary>
    public static object? Holds(Snapshot now, FieldAddress address) => now.Find(address) is { } found
        ? new { text = found.Value.Content.ToString(), found.Value.Story, found.Repeats, source = found.Source == address.Path ? "" : found.Source }
        : null;

    /// <summary>The measurable amounts of the parts that the book has, each part before the group that it belongs to.</summary>
    public static IEnumerable<FieldAddress> Places(Snapshot now)
    {
        var used = now.All().Select(f => f.Value.Field.Subject).ToHashSet();
        return from subject in FieldCatalogue.Subjects
               where used.Contains(subject)
               from index in Parts(now, subject).Concat(now.Indices(subject)).Distinct(StringComparer.Ordinal).OrderBy(i => i + "~", StringComparer.Ordinal)
               from field in FieldCatalogue.All
               where field.Subject == subject && field.Kind == FieldKind.Amount && field.Measured.Length > 0
               select new FieldAddress(field, index);
    }

    private static IEnumerable<string> Parts(Snapshot now, Subject subject)
    {
        var cylinders = Enumerable.Range(1, Count(now, new FieldAddress(Engine.Cylinders, ""))).Select(n => n.ToString(CultureInfo.InvariantCulture)).ToList();
        return subject.Indexing switch
        {
            Indexing.Cylinder => [.. cylinders, ""],
            Indexing.Valve => Valve.Sides.SelectMany(side => cylinders.SelectMany(c => EachValve(now, side, c)).Append(side)),
            Indexing.Name => now.Indices(subject).Count == 0 ? [""] : [],
            _ => [""],
        };
    }

    private static IEnumerable<string> EachValve(Snapshot now, string side, string cylinder) => Enumerable.Range(1, Count(now, new FieldAddress(Valve.Count, side)))
        .Select(place => string.Create(CultureInfo.InvariantCulture, $"{side}.{cylinder}.{place}"));

    private static int Count(Snapshot now, FieldAddress address) => now.Find(address)?.Value.Content is int count ? count : 0;

    /// <summary>"Cylinder 1", "Valve, inlet, cylinder 1, place 2".</summary>
    private static string Part(FieldAddress address) => (address.Field.Subject, address.Index.Split('.')) switch
    {
        ({ Indexing: Indexing.None } s, _) => s.Label,
        ({ } s, [""]) => $"{s.Label}, all",
        ({ Indexing: Indexing.Valve } s, [var side]) => $"{s.Label}, {side}, all",
        ({ Indexing: Indexing.Valve } s, [var side, var cylinder]) => $"{s.Label}, {side}, cylinder {cylinder}",
        ({ Indexing: Indexing.Valve } s, [var side, var cylinder, var place]) => $"{s.Label}, {side}, cylinder {cylinder}, place {place}",
        ({ } s, _) => $"{s.Label} {address.Index}",
    };

    private static object Described(Field field) => new
    {
        field.Label,
        dimension = field.Dimension.ToString(),
        metric = field.Unit,
        imperial = Figures.Shown(field.Dimension, field.Unit, imperial: true).Symbol,
        low = Finite(field.Plausible.Low),
        high = Finite(field.Plausible.High),
        how = field.Measured,
        field.Help,
    };

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    /// <summary>The units in which the fields of a dimension are shown, and their inch counterparts.</summary>
    private static object Units(Dimension dimension) => FieldCatalogue.All
        .Where(f => f.Kind == FieldKind.Amount && f.Dimension == dimension)
        .SelectMany(f => new[] { f.Unit, Figures.Shown(dimension, f.Unit, imperial: true).Symbol })
        .Distinct(StringComparer.Ordinal)
        .Select(symbol => Book.Values.Units.Declared(dimension, symbol))
        .Select(u => new { u.Symbol, u.Factor, u.Offset });

    /// <summary>The instruments used in the book, the latest first, with the ± that each was last used with.</summary>
    private static object Instruments(BuildBook book) => book.Measurements.Reverse().Where(m => m.Value.With.Length > 0).GroupBy(m => m.Value.With, StringComparer.Ordinal).Select(g => new
    {
        name = g.Key,
        spreads = g.Where(m => m.Value.Content is Amount { Uncertainty: > 0 }).GroupBy(m => m.Address.Field.Dimension.ToString()).ToDictionary(d => d.Key, d => Spread((Amount)d.First().Value.Content)),
    });

    private static object Spread(Amount amount) => new { text = Figures.Number(amount.Uncertainty / amount.Unit.Factor), unit = amount.Unit.Symbol };
}
