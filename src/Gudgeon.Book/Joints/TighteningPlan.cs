using System.Globalization;
using Gudgeon.Book.Checks.Joints;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Joints;

/// <summary>What is done to every bolt in a stage.</summary>
public enum StageKind
{
    /// <summary>Tightened to a torque.</summary>
    Torque,

    /// <summary>Turned by an angle.</summary>
    Angle,

    /// <summary>Turned until the stretch is there.</summary>
    Stretch,

    /// <summary>Loosened until it turns by hand.</summary>
    BackOff,
}

/// <summary>One round over all bolts.</summary>
/// <param name="Kind">What is done.</param>
/// <param name="Value">Torque, N·m, angle, rad, or stretch, m; null for backing off.</param>
/// <param name="Order">Bolt numbers in order.</param>
/// <param name="Note">What to see to; empty when nothing.</param>
public sealed record TighteningStage(StageKind Kind, double? Value, IReadOnlyList<int> Order, string Note)
{
    /// <summary>The field in whose dimension and unit it is said; null for backing off.</summary>
    public Field? Field => Kind switch
    {
        StageKind.Torque => Joint.Torque,
        StageKind.Angle => Joint.Angle,
        StageKind.Stretch => Joint.Stretch,
        _ => null,
    };

    /// <summary>What is done, for people.</summary>
    public string Words(bool imperial) => Kind switch
    {
        StageKind.Torque => $"to {Joint.Torque.Print(Value!.Value, imperial)}",
        StageKind.Angle => $"{Joint.Angle.Print(Value!.Value)} further",
        StageKind.Stretch => $"until stretched by {Joint.Stretch.Print(Value!.Value, imperial)}",
        _ => "back off",
    };
}

/// <summary>How one joint is tightened, as data: stages, and the order of the bolts in each.</summary>
/// <param name="Key">The joint.</param>
/// <param name="Places">Its bolts; none when their places are not known.</param>
/// <param name="OrderName">The order in words.</param>
/// <param name="Order">Bolt numbers in the order of tightening.</param>
/// <param name="Stages">Rounds.</param>
/// <param name="Troubles">What is wrong or wanted, in sentences.</param>
public sealed record TighteningPlan(string Key, IReadOnlyList<BoltPlace> Places, string OrderName, IReadOnlyList<int> Order, IReadOnlyList<TighteningStage> Stages, IReadOnlyList<string> Troubles)
{
    /// <summary>The largest turn in one go, rad: a hand's reach on a long bar.</summary>
    private const double OneTurn = Math.PI / 2;

    /// <summary>What can hurt.</summary>
    public const string Caution = "Pull the wrench towards you, feet apart, the engine fast on its stand: a slip throws the hand into the fins. Bolts turned past yield are used once. Dry titanium galls: paste on thread and head, every time. Loosen in the reverse order, cold.";

    /// <summary>How the bolts are numbered: stages and the small numbers of the drawing are bolt numbers.</summary>
    public string Numbering => Places.Count > 0
        ? $"Bolt 1 is the first place of {Joint.Layout.At(Key)}, and so on down it: the order of each stage gives these bolt numbers. In the drawing the large number is the turn at which a bolt comes, the small one which bolt it is. Chalk the bolt numbers on the part before the first stage."
        : "The places of the bolts are not known: the order of each stage counts them as you number them; chalk the numbers on the part before the first stage.";

    /// <summary>What is seen to before the first stage.</summary>
    public static readonly IReadOnlyList<string> Before =
    [
        "Threads chased and blown out: oil at the bottom of a blind hole bursts the case.",
        "Each bolt run in by hand to the head; one that binds comes out again.",
        "Lubricant as the torque was given for, on thread and under the head, and nowhere else.",
        "Washers the right way round, dowels home, faces clean and dry.",
    ];

    /// <summary>The plan of the values that hold.</summary>
    public static TighteningPlan Of(View view, string key)
    {
        var troubles = new List<string>();
        var places = Laid(view, key, troubles);
        var name = view.WordOr(Joint.Order, Joint.CentreOut, key);
        var order = Sequence(view, key, places, name);
        var stages = Rounds(view, key, order, troubles);
        if (places.Count > 0)
        {
            troubles.AddRange(BoltOrder.Troubles(places, order));
        }

        return new TighteningPlan(key, places, name, order, stages, troubles);
    }

    private static List<BoltPlace> Laid(View view, string key, List<string> troubles)
    {
        var count = view.CountOr(Joint.BoltCount, 0, key);
        if (view.TableIf(Joint.Layout, key) is not { } table)
        {
            if (count == 0)
            {
                troubles.Add($"How many bolts it has is not known: wants {Joint.BoltCount.At(key)}.");
            }

            troubles.Add($"Where the bolts stand is not known: wants {Joint.Layout.At(key)}; until then they are taken by number.");
            return [];
        }

        if (count > 0 && count != table.Rows.Count)
        {
            troubles.Add(FormattableString.Invariant($"{Joint.Layout.At(key)} has {table.Rows.Count} places, {Joint.BoltCount.At(key)} says {count} bolts: put one of them right."));
        }

        return [.. table["x"].Zip(table["y"]).Select((p, i) => new BoltPlace(i + 1, p.First, p.Second))];
    }

    private static IReadOnlyList<int> Sequence(View view, string key, List<BoltPlace> places, string name)
    {
        if (places.Count == 0)
        {
            return [.. Enumerable.Range(1, view.CountOr(Joint.BoltCount, 0, key))];
        }

        if (name != Joint.ByMaker)
        {
            return BoltOrder.Of(name, places);
        }

        var turns = view.TableIf(Joint.Layout, key)!["turn"];
        return turns.Length > 0
            ? [.. places.OrderBy(p => turns[p.Number - 1]).Select(p => p.Number)]
            : throw new BadInputException($"{Joint.Layout.At(key)}: given the order by the maker without a column 'turn', wanted 'turn' with a number for every bolt");
    }

    private static List<TighteningStage> Rounds(View view, string key, IReadOnlyList<int> order, List<string> troubles)
    {
        var turned = JointFigures.Known(view, v => TightenedJoint.Turned(v, key) ? 1 : 0) == 1;
        var stretched = view.Knows(Joint.Stretch, key);
        var last = JointFigures.Known(view, v => v.Amount(turned ? Joint.SnugTorque : Joint.Torque, key));
        if (double.IsNaN(last))
        {
            troubles.Add($"Not known yet: wants {(turned ? Joint.SnugTorque : Joint.Torque).At(key)}.");
            return [];
        }

        var before = view.TableIf(Joint.Stages, key) is { } own ? own["torque"] : turned ? [] : [0.3 * last, 0.6 * last];
        if (before.Append(last).Zip(before.Append(last).Skip(1), (a, b) => a >= b).Any(falls => falls))
        {
            troubles.Add($"{Joint.Stages.At(key)}: the torques do not rise to {Joint.Torque.Print(last)}.");
        }

        List<TighteningStage> up = [.. before.Append(last).Select((t, i) => new TighteningStage(StageKind.Torque, t, order, i == before.Length && turned ? "snug: the angle counts from here; mark every head" : ""))];
        var off = new TighteningStage(StageKind.BackOff, null, [.. order.Reverse()], "until it turns by hand, in the reverse order");
        List<TighteningStage> stages = view.WordOr(Joint.BackOff, turned ? "yes" : "no", key) == "yes" ? [.. up, off, .. up] : up;
        return [.. stages, .. Last(view, key, order, turned, stretched, last)];
    }

    private static IEnumerable<TighteningStage> Last(View view, string key, IReadOnlyList<int> order, bool turned, bool stretched, double last)
    {
        if (turned)
        {
            var angle = view.Amount(Joint.Angle, key);
            var steps = (int)Math.Ceiling((angle / OneTurn) - 1e-9);
            return Enumerable.Range(1, steps).Select(i => new TighteningStage(StageKind.Angle, angle / steps, order, string.Create(CultureInfo.InvariantCulture, $"angle gauge or paint mark, in one pull; {i} of {steps}")));
        }

        if (stretched && view.AmountIf(Joint.Stretch, key) is { } stretch)
        {
            return [new TighteningStage(StageKind.Stretch, stretch, order, "dial gauge over both ends; write down each, and stop when the torque runs away")];
        }

        return order.Count > 2 ? [new TighteningStage(StageKind.Torque, last, order, "once more round: the first have eased as the others came down")] : [];
    }
}
