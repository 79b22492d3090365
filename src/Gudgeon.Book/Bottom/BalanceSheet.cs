using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>A rod and its piston as weighed. kg, SI; null where it is not known.</summary>
/// <param name="Cylinder">Its number.</param>
/// <param name="Rod">Mass of the rod.</param>
/// <param name="SmallEnd">Share at the small end.</param>
/// <param name="BigEnd">Share at the big end.</param>
/// <param name="Left">Both readings less the mass of the rod; null when the big end was not weighed.</param>
/// <param name="Piston">Piston with pin and rings.</param>
/// <param name="Gyration">Radius of gyration by swinging, m.</param>
public sealed record RodRow(string Cylinder, double? Rod, double? SmallEnd, double? BigEnd, double? Left, double? Piston, double? Gyration);

/// <summary>The balance of one crank pin. kg, SI; null where it is not known.</summary>
/// <param name="Mass">What is on the pin.</param>
/// <param name="Factor">Balance factor now.</param>
/// <param name="Before">Balance factor before the changes.</param>
/// <param name="Wanted">Balance factor wanted, else that before the changes.</param>
/// <param name="BobWeight">Bob weight for the factor wanted.</param>
/// <param name="Change">Mass to add to the counterweights of the pin for it; negative to drill out.</param>
/// <param name="HoleDepth">Depth of the holes together, m: drilled out of steel, or filled with heavy metal.</param>
public sealed record PinRow(PinMass Mass, double? Factor, double? Before, double? Wanted, double? BobWeight, double? Change, double? HoleDepth);

/// <summary>What shakes at one order.</summary>
/// <param name="Force">Force.</param>
/// <param name="Couple">Rocking couple.</param>
/// <param name="Roll">Amplitude of the roll about the crank axis, N·m.</param>
public sealed record OrderRow(Turning Force, Turning Couple, double Roll);

/// <summary>A balance shaft in time and a tooth out.</summary>
/// <param name="Timing">How it stands.</param>
/// <param name="Tooth">Angle of its shaft for one tooth, rad; null when its teeth are not known.</param>
/// <param name="AsMarked">What shakes at its order as marked.</param>
/// <param name="Early">The same with it a tooth early; null when its teeth are not known.</param>
/// <param name="Late">The same a tooth late.</param>
public sealed record ShaftRow(ShaftTiming Timing, double? Tooth, OrderRow AsMarked, OrderRow? Early, OrderRow? Late);

/// <summary>Balance of the bottom end: rods weighed, balance factor, shaking, balance shafts.</summary>
/// <param name="Rods">One for each cylinder.</param>
/// <param name="Pins">One for each crank pin.</param>
/// <param name="Shaking">Shaking at the speed asked for; null when it is not known.</param>
/// <param name="Orders">Its orders.</param>
/// <param name="Bare">Its orders without the balance shafts.</param>
/// <param name="Shafts">Balance shafts.</param>
/// <param name="Mounts">Loads on the mounts, at each of <see cref="Told"/>.</param>
/// <param name="Missing">What is wanted, one sentence each.</param>
public sealed record BalanceSheet(
    IReadOnlyList<RodRow> Rods,
    IReadOnlyList<PinRow> Pins,
    Shaking? Shaking,
    IReadOnlyList<OrderRow> Orders,
    IReadOnlyList<OrderRow> Bare,
    IReadOnlyList<ShaftRow> Shafts,
    IReadOnlyList<MountLoad> Mounts,
    IReadOnlyList<string> Missing)
{
    /// <summary>Densities of tungsten heavy metal and of steel, kg/m³: from memory.</summary>
    private const double HeavyMetal = 17000, Steel = 7850;

    /// <summary>Orders that are told one by one.</summary>
    public static readonly IReadOnlyList<double> Told = [1, 2, 4];

    /// <summary>What it leaves out.</summary>
    public const string Remark = "Exact slider-crank, each rod as two masses, everything rigid and turning evenly; each pin's counterweights stand opposite it and in its plane. The roll has the inertia of pistons and shafts but not the gas. Mounts: a rigid engine on equally stiff mounts, whose own mass takes nothing off them; on rubber they carry less above their resonance.";

    /// <summary>How it is done.</summary>
    public static readonly IReadOnlyList<string> Steps =
    [
        "Rods: both ends on knife edges with the centres level, one end on the scale; then the other; both come to the mass of the rod within a gram, or a scale or an edge stands wrong (common practice, no source).",
        "Balance factor: bob weights on every pin, crank on rollers or knife edges. Heavier pistons lower the factor; heavy metal goes in opposite the pin, steel comes out at the pin's side or less of it opposite.",
        "Holes in counterweights: never into a fillet or an oilway, edges broken, slugs pressed along the crank so that they cannot fly out, and staked.",
        "Balance shafts: crank locked with cylinder 1 at top dead centre, the weights looked at before the case is closed: opposite to cylinder 1 for shafts against the crank. A tooth out is not felt by hand; it is felt at speed.",
    ];

    /// <summary>What can hurt.</summary>
    public const string Caution = "A slug that leaves a counterweight goes through the case. Balancing machines throw what is not clamped: guards shut, bob weights pinned.";

    /// <summary>The sheet of a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="at">Crank speed, rad/s; the rev limit when left out.</param>
    /// <param name="about">Place along the crank that couples are about, m; the middle of the cylinders when left out.</param>
    public static BalanceSheet Of(BuildBook book, double? at = null, double? about = null)
    {
        var (view, before) = (new View(book.Now()), new View(new Snapshot(book, new HashSet<string>(StringComparer.Ordinal))));
        var rods = Instances.Cylinders(view).Where(c => c.Length > 0).Select(c => Weighed(view, c)).ToList();
        var missing = new List<string>();
        var line = CrankAssembly.Of(view);
        if (line is null)
        {
            missing.Add($"Not known yet: wants {Wanted.Words(view.Trace.Missing)}.");
            return new BalanceSheet(rods, [], null, [], [], [], [], missing);
        }

        var pins = BalanceAssembly.Pins(line).Select(p => Pin(view, before, line, p)).ToList();
        var speed = at ?? view.Amount(Engine.RevLimit);
        var shafts = BalanceAssembly.Shafts(view, line);
        if (double.IsNaN(line.BobWeight + speed) || shafts is null)
        {
            view.Amount(Crank.BobWeight);
            missing.Add($"Shaking is not known: wants {Wanted.Words(view.Trace.Missing)}.");
            return new BalanceSheet(rods, pins, null, [], [], [], [], missing);
        }

        return Shaken(view, line, shafts, (speed, about), new BalanceSheet(rods, pins, null, [], [], [], [], missing));
    }

    private static BalanceSheet Shaken(View view, CrankLine line, IReadOnlyList<Spinner> shafts, (double Speed, double? About) wish, BalanceSheet sheet)
    {
        var shaking = Simulation.Crank.Shaking.Of(line, shafts, wish.Speed, wish.About);
        var mounts = BalanceAssembly.Mounts(view);
        var shares = MountShares.Of(mounts, shaking.About);
        return sheet with
        {
            Shaking = shaking,
            Orders = [.. Told.Select(o => Order(shaking, o))],
            Bare = shafts.Count == 0 ? [] : Simulation.Crank.Shaking.Of(line, [], wish.Speed, wish.About) is var bare ? [.. Told.Select(o => Order(bare, o))] : [],
            Shafts = [.. Enumerable.Range(0, shafts.Count).Select(i => Shaft(view, line, shafts, i, shaking))],
            Mounts = shares?.Loads(shaking, Told) ?? [],
            Missing = mounts.Count > 0 && shares is null ? [.. sheet.Missing, $"The loads on the mounts are not known: {mounts.Count} given, wanted three or more that are not in a line."] : sheet.Missing,
        };
    }

    private static OrderRow Order(Shaking shaking, double order) => new(shaking.ForceAt(order), shaking.CoupleAt(order), shaking.RollAt(order).Magnitude);

    private static ShaftRow Shaft(View view, CrankLine line, IReadOnlyList<Spinner> shafts, int place, Shaking now)
    {
        var shaft = shafts[place];
        double? tooth = view.Knows(Balancer.Teeth, shaft.Name) ? 2 * Math.PI / view.Count(Balancer.Teeth, shaft.Name) : null;
        OrderRow Own(Shaking of) => Order(of, Math.Abs(shaft.Ratio));
        OrderRow With(double early) => Own(Simulation.Crank.Shaking.Of(line, [.. shafts.Select((s, i) => i == place ? s.Advanced(early) : s)], now.Speed, now.About));
        return new ShaftRow(ShaftTiming.Of(line, shafts, place, BalanceAssembly.Length(line)), tooth, Own(now), tooth is { } e ? With(e) : null, tooth is { } l ? With(-l) : null);
    }

    private static RodRow Weighed(View view, string cylinder) => new(
        cylinder,
        view.AmountIf(Fields.Rod.Mass, cylinder),
        view.Try(v => Sketch.Known(() => RodWeights.SmallEnd(v, cylinder))),
        view.Try(v => Sketch.Known(() => RodWeights.BigEnd(v, cylinder))),
        view.Try(v => Sketch.Known(() => RodWeights.Left(v, cylinder))),
        view.AmountIf(Fields.Piston.Mass, cylinder),
        view.Try(v => Sketch.Known(() => RodWeights.Gyration(v, cylinder) ?? double.NaN)));

    private static PinRow Pin(View view, View before, CrankLine line, PinMass pin)
    {
        if (double.IsNaN(line.BobWeight))
        {
            return new PinRow(pin, null, null, view.AmountIf(Crank.BalanceFactor), null, null, null);
        }

        var was = before.Try(CrankAssembly.Of) is { } old && !double.IsNaN(old.BobWeight) && BalanceAssembly.Pins(old) is var pins && pins.Any(p => p.Pin == pin.Pin)
            ? Factor(old.BobWeight, pins.First(p => p.Pin == pin.Pin))
            : (double?)null;
        var wanted = view.AmountIf(Crank.BalanceFactor) ?? was;
        var bob = wanted is { } factor ? CrankBalance.BobWeight(pin.Rotating, pin.Reciprocating, factor) : (double?)null;
        var change = bob is { } weight && view.AmountIf(Crank.CounterweightRadius) is { } radius ? CounterweightChange.Mass(weight, line.BobWeight, line.Radius, radius) : (double?)null;
        return new PinRow(pin, Factor(line.BobWeight, pin), was, wanted, bob, change, change is { } mass ? Depth(view, mass) : null);
    }

    private static double Factor(double bobWeight, PinMass pin) => CrankBalance.Factor(bobWeight, pin.Rotating, pin.Reciprocating);

    /// <summary>Steel drilled out, or heavy metal put in its place.</summary>
    private static double? Depth(View view, double change) => view.AmountIf(Crank.BalanceHole) is { } hole
        ? CounterweightChange.HoleDepth(Math.Abs(change), hole, change < 0 ? Steel : view.AmountOr(Crank.SlugDensity, HeavyMetal) - Steel)
        : null;
}
