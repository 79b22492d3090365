using Gudgeon.Book.Build;
using Gudgeon.Book.Checks.Fits;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Fits;

/// <summary>Every fit of a build: limits, what was measured, cold and hot, and how it goes together.</summary>
/// <param name="Rows">One for each fit.</param>
/// <param name="Spreads">One for each kind of which several were measured.</param>
public sealed record FitsSheet(IReadOnlyList<FitRow> Rows, IReadOnlyList<FitSpread> Spreads)
{
    /// <summary>What the numbers rest on.</summary>
    public const string Remark = "Interference is on the diameter, a clearance counts negative. Hub and shaft stay elastic, as rings of constant thickness; a case is a hub as large as the boss around the hole.";

    /// <summary>What can hurt.</summary>
    public const string Caution = "Hot hubs burn, dry ice and liquid nitrogen freeze and displace air: gloves, visor, an aired room. Try the parts cold first, have a stop ready, and mind the temper of the part. The makers' data go first.";

    /// <summary>The sheet of the values that hold.</summary>
    public static FitsSheet Of(Snapshot now)
    {
        var indices = new View(now).Indices(Fit.Size.Subject);
        var keys = indices.Where(i => !indices.Any(other => other.StartsWith(i + ".", StringComparison.Ordinal))).ToList();
        var rows = keys.ConvertAll(k => Row(now, k));
        return new FitsSheet(rows, [.. rows.GroupBy(r => r.Index.Split('.')[0]).Where(g => g.Count(r => r.Interference is not null) > 1).Select(g => Spread(g.Key, [.. g.Where(r => r.Interference is not null)]))]);
    }

    private static FitRow Row(Snapshot now, string index)
    {
        var view = new View(now);
        var pair = new FittedPair(view, index);
        var wanted = Sketch.Known<(double Least, double Greatest)>(() => pair.Wanted()) ?? (double.NaN, double.NaN);
        string[] classes = [view.WordOr(Fit.HoleClass, "", index), view.WordOr(Fit.ShaftClass, "", index)];
        return new FitRow(
            index,
            view.AmountIf(Fit.Size, index),
            string.Join('/', classes.Where(c => c.Length > 0)),
            Sketch.Known(pair.HoleLimits),
            Sketch.Known(pair.ShaftLimits),
            Sketch.Known(pair.Hole),
            Band(now, Fit.Hole, index),
            Sketch.Known(pair.Shaft),
            Band(now, Fit.Shaft, index),
            Sketch.Known(pair.Interference),
            Sketch.Known(() => wanted.Least),
            Sketch.Known(() => wanted.Greatest),
            Sketch.Known(() => pair.RunsHot ? pair.Hot() : double.NaN),
            Sketch.Known(pair.SlipTorque),
            Sketch.Known(() => pair.Interference() + pair.Clearance() > 0 && wanted.Greatest > 0 ? pair.HubTemperature() : double.NaN),
            FitFacts.Window(view, index, pair),
            [.. FitFacts.Of(view, index, pair)])
        {
            Refused = view.Trace.Refused,
            HoleBuildUp = pair.HoleBuildUp(),
            ShaftBuildUp = pair.ShaftBuildUp(),
        };
    }

    private static double? Band(Snapshot now, Field field, string index) => now.Find(new FieldAddress(field, index))?.Value.StandardUncertainty is > 0 and var u ? 2 * u : null;

    private static FitSpread Spread(string name, IReadOnlyList<FitRow> rows)
    {
        var found = rows.Select(r => r.Interference!.Value).ToList();
        var mean = found.Average();
        var deviation = Math.Sqrt(found.Sum(f => (f - mean) * (f - mean)) / (found.Count - 1));
        var (least, greatest) = (rows[0].Least, rows[0].Greatest);
        double? outside = least is { } low && greatest is { } high && deviation > 0 ? 1 - Conformity.TwoLimits(mean, deviation, low, high) : null;
        return new FitSpread(name, found.Count, mean, deviation, found.Min(), found.Max(), outside);
    }
}
