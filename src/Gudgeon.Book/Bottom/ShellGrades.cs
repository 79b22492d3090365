using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Bottom;

/// <summary>What a book says of shells to choose from, and of the bearings that want them.</summary>
internal static class ShellGrades
{
    /// <summary>The grades of a table, thinnest first; none when the book has none.</summary>
    /// <exception cref="BadInputException">A grade thicker at its least than at its greatest, given twice, or a count that is not a whole number.</exception>
    public static IReadOnlyList<ShellGrade> Of(View view, Field field)
    {
        if (view.TableIf(field) is not { } table)
        {
            return [];
        }

        var (number, least, greatest, count) = (table["grade"], table["least"], table["greatest"], table["count"]);
        if (number.Distinct().Count() < number.Length)
        {
            throw new BadInputException($"{field.Path}: a grade is given twice; wanted one row for each");
        }

        return [.. number.Select((n, i) => Grade(field, n, least[i], greatest[i], count.Length == 0 ? null : count[i])).OrderBy(g => g.Middle)];
    }

    /// <summary>What a bearing leaves for its shells; null, and a sentence, when something is not known.</summary>
    /// <exception cref="BadInputException">The least clearance is not below the greatest.</exception>
    public static BearingRoom? Room(View view, string key, List<string> troubles)
    {
        var probe = new View(view.Snapshot);
        var (housing, journal) = (BearingFit.Housing(probe, key), BearingFit.Journal(probe, key));
        var (least, greatest) = (probe.Amount(Bearing.ClearanceMin, key), probe.Amount(Bearing.ClearanceMax, key));
        if (double.IsNaN(housing + journal + least + greatest))
        {
            troubles.Add($"{key}: not planned; wanted {Checks.Wanted.Words([.. probe.Trace.Missing])}.");
            return null;
        }

        return least < greatest
            ? new BearingRoom(key, housing - journal, least, greatest, probe.AmountOr(Bearing.ClearanceWanted, (least + greatest) / 2, key))
            : throw new BadInputException($"{Bearing.ClearanceMin.At(key)}: given {Bearing.ClearanceMin.Print(least)}, wanted less than the greatest clearance, {Bearing.ClearanceMax.Print(greatest)}");
    }

    /// <summary>Why no pair does, and what is left to do.</summary>
    public static string Unmet(View view, BearingRoom room, IReadOnlyList<ShellGrade> grades)
    {
        var loosest = room.Room - (2 * grades[0].Middle);
        var tightest = room.Room - (2 * grades[^1].Middle);
        var journal = BearingFit.Journal(view, room.Bearing);
        return $"{room.Bearing}: " + (loosest < room.Least
            ? $"too tight even with the thinnest shells, {Bearing.ClearanceMin.Print(loosest)}: grind the journal to {Bearing.Journal.Print(journal - (room.Wanted - loosest))}, or have the housing measured again."
            : tightest > room.Greatest
                ? $"too loose even with the thickest shells, {Bearing.ClearanceMin.Print(tightest)}: replace the part that is worn, or grind the journal for undersize shells."
                : $"no pair of the grades gives {Bearing.ClearanceMin.Print(room.Least)} to {Bearing.ClearanceMax.Print(room.Greatest)}: the step between the grades is too wide for it.");
    }

    private static ShellGrade Grade(Field field, double number, double least, double greatest, double? count)
    {
        if (least > greatest)
        {
            throw new BadInputException($"{field.Path}: grade {Figures.Number(number)} is given from {Bearing.ShellThickness.Print(least)} to {Bearing.ShellThickness.Print(greatest)}; wanted the least thickness first");
        }

        return count is null or (>= 0 and < 1e6) && (count is null || count == Math.Floor(count.Value))
            ? new ShellGrade(number, least, greatest, (int?)count)
            : throw new BadInputException($"{field.Path}: given a count of {Figures.Number(count.Value)}, wanted a whole number");
    }
}
