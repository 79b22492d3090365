using System.Globalization;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>The crank with its rods and pistons, from the values of a book.</summary>
internal static class CrankAssembly
{
    /// <summary>Index keys of the main bearings in their order along the crank: those whose place is known.</summary>
    public static IReadOnlyList<string> Mains(View view) =>
    [
        .. Instances.Named(view, Bearing.Journal.Subject)
            .Where(i => i.StartsWith("main.", StringComparison.Ordinal) && view.Knows(Bearing.Position, i))
            .OrderBy(i => view.Amount(Bearing.Position, i)),
    ];

    /// <summary>The crank; null, and what it lacks noted as missing, when it is not known whole.</summary>
    /// <param name="view">The values.</param>
    public static CrankLine? Of(View view)
    {
        var count = view.Count(Engine.Cylinders);
        if (count == 0)
        {
            return null;
        }

        var firing = FiringOrder.Angles(count, view.WordOr(Engine.FiringOrder, ""), view.WordOr(Engine.FiringIntervals, ""));
        var throws = Enumerable.Range(0, count).Select(i => Throw(view, i, firing[i], count)).ToList();
        var line = new CrankLine
        {
            Radius = view.Amount(Crank.Stroke) / 2,
            Throws = throws,
            Mains = [.. Mains(view).Select(i => view.Amount(Bearing.Position, i))],
            BobWeight = view.AmountIf(Crank.BobWeight) ?? double.NaN,
        };
        return double.IsNaN(line.Radius) || throws.Exists(t => double.IsNaN(t.Bore + t.Rod + t.Reciprocating + t.BigEnd + t.Position)) ? null : line;
    }

    private static CrankThrow Throw(View view, int place, double firing, int count)
    {
        var index = (place + 1).ToString(CultureInfo.InvariantCulture);
        return new CrankThrow
        {
            Pin = view.CountOr(Cylinder.Pin, place + 1, index) - 1,
            Bank = view.AmountOr(Cylinder.Bank, 0, index),
            Firing = firing * Math.PI / 180,
            Position = count == 1 ? view.AmountOr(Cylinder.Position, 0, index) : view.Amount(Cylinder.Position, index),
            Bore = view.Amount(Cylinder.Bore, index),
            Rod = view.Amount(Rod.Length, index),
            Offset = view.AmountOr(Cylinder.Offset, 0, index),
            Piston = view.Amount(Piston.Mass, index),
            SmallEnd = RodWeights.SmallEnd(view, index),
            BigEnd = RodWeights.BigEnd(view, index),
        };
    }
}
