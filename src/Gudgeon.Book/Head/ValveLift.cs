using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Head;

/// <summary>Lift of a valve, lash taken off, against the crank: the one notion of it that the engine, the checks and the sheets have.</summary>
internal static class ValveLift
{
    private const double Degrees = 180 / Math.PI;

    /// <summary>
    /// The lift curve read at the valve, else what its cam gives, else a smooth one from opening, closing and lift; null,
    /// and what is missing noted, when none of them is known.
    /// </summary>
    public static LiftCurve? Of(View view, string index) => IsDrawn(view, index) ? Drawn(view, index) : Smooth(view, index);

    /// <summary>The curve that was read at the valve, else what its cam gives; null when neither is known.</summary>
    public static LiftCurve? Drawn(View view, string index)
    {
        if (view.TableIf(Valve.LiftTable, index) is { } table)
        {
            var advance = view.AmountOr(Cam.Advance, 0, index);
            return new LiftCurve([.. AtSide(table["angle"], table["lift"], index).Select(a => (a - advance) * Degrees)], table["lift"]);
        }

        return IsDrawn(view, index) ? OfCam(view, index) : null;
    }

    /// <summary>Angles of a curve as they count in the cycle that begins at firing TDC, rad: whole cycles taken off.</summary>
    /// <exception cref="BadInputException">The curve stands where this side's valve cannot be open.</exception>
    internal static double[] AtSide(double[] angles, double[] lifts, string index)
    {
        var sense = index.StartsWith("inlet", StringComparison.Ordinal) ? 1 : -1;
        var centre = LiftCrossings.Centre(angles, lifts);
        if (double.IsNaN(centre))
        {
            return angles;
        }

        var turns = Math.Round((centre - (CamMotion.OverlapTdc + (sense * Math.PI / 2))) / Cycle) * Cycle;
        var off = sense * (centre - turns - CamMotion.OverlapTdc);
        return off is < 0 or > Math.PI
            ? throw new BadInputException($"{Valve.LiftTable.At(index)}: its middle stands at {Valve.Opens.Print(centre)}; wanted crank angles after firing TDC, where the middle of an {(sense > 0 ? "inlet valve's curve is between 360° and 540°" : "exhaust valve's curve is between 180° and 360°")}")
            : [.. angles.Select(a => a - turns)];
    }

    private const double Cycle = 4 * Math.PI;

    /// <summary>Whether a lift curve was read or a cam is known; else the lift is a smooth curve that nobody ground.</summary>
    public static bool IsDrawn(View view, string index) => view.Knows(Valve.LiftTable, index) || view.Knows(Cam.LiftTable, index) || view.Knows(Cam.Law, index);

    /// <summary>Crank angles after firing TDC, rad, and lifts, m, of a curve.</summary>
    public static (double[] Angles, double[] Lifts) InRadians(LiftCurve curve) => ([.. curve.Angles.Select(a => a / Degrees)], [.. curve.Lifts]);

    private static LiftCurve? OfCam(View view, string index)
    {
        if (CamMotion.Of(view, index) is not { } motion || double.IsNaN(motion.Centre))
        {
            return null;
        }

        var lifts = motion.Points.Lift.Select(l => l - motion.Lash is var lift && lift > motion.Blur ? lift : 0).ToArray();
        var (first, last) = (Array.FindIndex(lifts, l => l > 0), Array.FindLastIndex(lifts, l => l > 0));
        if (first <= 0 || last == lifts.Length - 1)
        {
            throw new BadInputException($"{Valve.Lash.At(index)}: given {Valve.Lash.Print(motion.Lash)}, wanted less than the lift of the cam");
        }

        var open = Enumerable.Range(first - 1, last - first + 3).ToList();
        return new LiftCurve([.. open.Select(i => (motion.Centre + (2 * (motion.Points.First + (i * motion.Points.Step)))) * Degrees)], [.. open.Select(i => lifts[i])]);
    }

    private static LiftCurve? Smooth(View view, string index)
    {
        var (opens, closes, lift) = (view.Amount(Valve.Opens, index), view.Amount(Valve.Closes, index), view.Amount(Valve.Lift, index));
        if (double.IsNaN(opens + closes + lift))
        {
            return null;
        }

        var (from, to) = index.StartsWith("inlet", StringComparison.Ordinal) ? (360.0, 540.0) : (180.0, 360.0);
        var advance = view.AmountOr(Cam.Advance, 0, index) * Degrees;
        return LiftCurve.Smooth(from - (opens * Degrees) - advance, to + (closes * Degrees) - advance, lift);
    }
}
