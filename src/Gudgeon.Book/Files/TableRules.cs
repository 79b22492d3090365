using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Files;

/// <summary>What a table must satisfy beyond its numbers, in a book or in a file that is about to come into one.</summary>
internal static class TableRules
{
    /// <summary>Refuses a lift curve that does not close, a map whose lines cross, a column that does not rise.</summary>
    /// <param name="field">The field that it is for.</param>
    /// <param name="table">The table.</param>
    /// <param name="at">Words for the place of a row, from 0, or of the whole table: they begin the sentence.</param>
    /// <exception cref="BadInputException">The sentence names the place.</exception>
    public static void Verify(Field field, Table table, Func<int?, string> at)
    {
        NotNegative(table, at);
        if (field == Valve.LiftTable || field == Cam.LiftTable)
        {
            Rising(table, "angle", at);
            Closing(table, at);
        }
        else if (field == Blower.Map)
        {
            VerifyMap(table, at(null));
        }
        else if (field.Columns == PipeShape.Columns)
        {
            PipeworkAssembly.Tapers(at(null), table);
        }
        else if (field == Port.AreaTable)
        {
            Rising(table, "distance", at);
        }
        else if (field.Columns.Any(c => c.Name == "lift"))
        {
            Rising(table, "lift", at);
        }
    }

    private static void Closing(Table table, Func<int?, string> at)
    {
        var lifts = table["lift"];
        if (lifts[0] > 1e-6 || lifts[^1] > 1e-6)
        {
            throw new BadInputException($"{at(lifts[0] > 1e-6 ? 0 : lifts.Length - 1)}: the lift curve does not close: it begins at {Valve.Lift.Print(lifts[0])} and ends at {Valve.Lift.Print(lifts[^1])}; wanted zero at both ends");
        }

        if (lifts.Max() <= 1e-6)
        {
            throw new BadInputException($"{at(null)}: the lift curve has no lift; wanted readings between its ends");
        }
    }

    private static void VerifyMap(Table table, string place)
    {
        try
        {
            // The reference conditions do not bear on whether the lines are in order.
            InductionAssembly.Map(table, 101325, 288.15);
        }
        catch (EngineSpecException e)
        {
            throw new BadInputException($"{place}: {e.Message}");
        }
    }

    private static void NotNegative(Table table, Func<int?, string> at)
    {
        foreach (var column in table.Columns.Where(c => !c.Signed && c.Dimension is not (Dimension.Angle or Dimension.Temperature)))
        {
            var values = table[column.Name];
            if (Array.FindIndex(values, si => si < 0) is var row and >= 0)
            {
                throw new BadInputException($"{at(row)}: the table holds the negative {column.Name} {Figures.Print(values[row], column.Dimension, column.Unit)}; wanted zero or more");
            }
        }
    }

    private static void Rising(Table table, string name, Func<int?, string> at)
    {
        var values = table[name];
        var column = table.Columns.First(c => c.Name == name);
        string Print(int row) => Figures.Print(values[row], column.Dimension, column.Unit);
        for (var i = 1; i < values.Length; i++)
        {
            if (values[i] <= values[i - 1])
            {
                throw new BadInputException($"{at(i)}: the {name} does not rise from row {i} to row {i + 1}: {Print(i)} after {Print(i - 1)}");
            }
        }
    }
}
