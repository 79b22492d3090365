using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Parts;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>What a book must satisfy beyond the form of its single values.</summary>
public static class BookRules
{
    /// <summary>Refuses a lift curve that does not close, a map whose lines cross, a firing order that does not exist.</summary>
    /// <exception cref="BadInputException">The sentence names the path.</exception>
    public static void Verify(BuildBook book)
    {
        var layers = book.Changes.Select(c => (Where: $"changes.{c.Id}.", c.Values)).Prepend((Where: "", Values: book.Baseline));
        foreach (var (path, value) in layers.SelectMany(l => l.Values.Select(v => (l.Where + v.Key, v.Value))))
        {
            Verify(path, value);
        }

        foreach (var reading in book.Measurements)
        {
            Verify(reading.Address.Path, reading.Value);
        }

        VerifyFiring(book.Now());
        VerifyCylinders(book);
        VerifyInstruments(book.Now());
        VerifyCards(book);
    }

    /// <summary>A part that names a job card holds that card up; one that does not exist would hold up nothing.</summary>
    private static void VerifyCards(BuildBook book)
    {
        var ids = CardCatalogue.Of(book).Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        var view = new View(book.Now());
        foreach (var part in NeededPart.Keys(view))
        {
            if (view.WordOr(Part.Card, "", part) is { Length: > 0 } card && !ids.Contains(card))
            {
                throw new BadInputException($"{Part.Card.At(part)}: given '{card}', wanted the id of a job card; the nearest is '{Nearest.To(card, ids)}'");
            }
        }
    }

    /// <summary>What is written of an instrument is of what its kind measures.</summary>
    private static void VerifyInstruments(Snapshot snapshot)
    {
        var known = ShopInstrument.All(snapshot);
        foreach (var instrument in known)
        {
            instrument.Verify();
        }

        if (snapshot.Indices(Instrument.Kind.Subject).FirstOrDefault(i => known.All(k => k.Name != i)) is { } without)
        {
            throw new BadInputException($"{Instrument.Kind.At(without)}: what it is is not said, and so neither what it measures; wanted one of {string.Join(", ", Instrument.Kind.Choices.Select(c => $"'{c}'"))}");
        }
    }

    private static void Verify(string path, KnownValue value)
    {
        if (value.Content is Table table)
        {
            TableRules.Verify(value.Field, table, _ => path);
        }
    }

    private static void VerifyFiring(Snapshot snapshot)
    {
        string Word(Field field) => snapshot.Find(new FieldAddress(field, ""))?.Value.Content as string ?? "";
        if (snapshot.Find(new FieldAddress(Engine.Cylinders, ""))?.Value.Content is int cylinders)
        {
            FiringOrder.Angles(cylinders, Word(Engine.FiringOrder), Word(Engine.FiringIntervals));
            VerifyGroups(cylinders, Word(SharedRunner.Shared), Word(Exhaust.Pairs));
        }
    }

    private static void VerifyGroups(int cylinders, string shared, string pairs)
    {
        if (shared.Length > 0)
        {
            CylinderGroups.Shared(shared, cylinders);
        }

        if (pairs.Length > 0)
        {
            CylinderGroups.Pairs(pairs, cylinders);
        }
    }

    /// <summary>A value of a cylinder that the engine has not would never be read.</summary>
    private static void VerifyCylinders(BuildBook book)
    {
        if (book.Now().Find(new FieldAddress(Engine.Cylinders, ""))?.Value.Content is not int cylinders)
        {
            return;
        }

        var addresses = book.Baseline.Keys.Concat(book.Changes.SelectMany(c => c.Values.Keys)).Select(FieldCatalogue.Address).Concat(book.Measurements.Select(m => m.Address));
        foreach (var address in addresses)
        {
            if (Numbered(address) > cylinders)
            {
                throw new BadInputException($"{address.Path}: the engine has {cylinders} {(cylinders == 1 ? "cylinder" : "cylinders")} (engine.cylinders)");
            }
        }
    }

    /// <summary>The cylinder that an address is about; 0 for a group.</summary>
    private static int Numbered(FieldAddress address)
    {
        var parts = address.Index.Split('.');
        var number = address.Field.Subject.Indexing switch
        {
            Indexing.Cylinder => parts[0],
            Indexing.Valve when parts.Length > 1 => parts[1],
            _ => "",
        };
        return number.Length == 0 ? 0 : int.Parse(number, CultureInfo.InvariantCulture);
    }
}
