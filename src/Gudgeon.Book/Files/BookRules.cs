using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

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
    }

    private static void Verify(string path, KnownValue value)
    {
        if (value.Content is not Table table)
        {
            return;
        }

        NotNegative(path, table);
        if (value.Field == Valve.LiftTable || value.Field == Cam.LiftTable)
        {
            VerifyLift(path, table);
        }
        else if (value.Field == Blower.Map)
        {
            VerifyMap(path, table);
        }
        else if (value.Field.Columns == PipeShape.Columns)
        {
            PipeworkAssembly.Tapers(path, table);
        }
        else if (value.Field.Columns.Any(c => c.Name == "lift"))
        {
            Rising(path, "lift", table["lift"]);
        }
    }

    private static void VerifyLift(string path, Table table)
    {
        var (angles, lifts) = (table["angle"], table["lift"]);
        Rising(path, "angle", angles);
        if (lifts[0] > 1e-6 || lifts[^1] > 1e-6)
        {
            throw new BadInputException($"{path}: the lift curve does not close: it begins at {Valve.Lift.Print(lifts[0])} and ends at {Valve.Lift.Print(lifts[^1])}; wanted zero at both ends");
        }
    }

    private static void VerifyMap(string path, Table table)
    {
        try
        {
            // The reference conditions do not bear on whether the lines are in order.
            InductionAssembly.Map(table, 101325, 288.15);
        }
        catch (EngineSpecException e)
        {
            throw new BadInputException($"{path}: {e.Message}");
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

    private static void NotNegative(string path, Table table)
    {
        foreach (var column in table.Columns.Where(c => c.Dimension is not (Dimension.Angle or Dimension.Temperature)))
        {
            if (table[column.Name].FirstOrDefault(si => si < 0) is var negative and < 0)
            {
                throw new BadInputException($"{path}: the table holds the negative {column.Name} {Figures.Print(negative, column.Dimension, column.Unit)}; wanted zero or more");
            }
        }
    }

    private static void Rising(string path, string column, double[] values)
    {
        for (var i = 1; i < values.Length; i++)
        {
            if (values[i] <= values[i - 1])
            {
                throw new BadInputException($"{path}: the {column} does not rise from row {i} to row {i + 1}");
            }
        }
    }
}
