using Gudgeon.Book.Build;
using Gudgeon.Book.Checks.Surfaces;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Surfaces;

/// <summary>The route card of one surface treatment.</summary>
/// <param name="Name">Its name in the book.</param>
/// <param name="Part">Part and faces, in the words of the book; empty when it has none.</param>
/// <param name="Steps">In the order of the work.</param>
/// <param name="Handed">What is handed to other checks.</param>
/// <param name="Notes">What is not, and why.</param>
/// <param name="Troubles">What is wrong or wanted, in sentences.</param>
public sealed record RouteSheet(string Name, string Part, IReadOnlyList<RouteStep> Steps, IReadOnlyList<Fact> Handed, IReadOnlyList<string> Notes, IReadOnlyList<string> Troubles)
{
    /// <summary>Why the steps stand in this order.</summary>
    public const string Remark = "After heat treatment, grinding and a crack test: peened coarse, then fine, superfinished, coated last, baked right after what put the hydrogen in (common practice, no source). The drawing, the maker and the agreed specification go first.";

    /// <summary>What a book without any wants.</summary>
    public const string None = "The book has no surface treatment yet: set treatment[name].part, and under the same name peening[name].shotSize, superfinish[name].removal, coating[name].thickness or bake[name].time.";

    private const string NoCredit = "Peening: no gain in bending or contact strength is counted. AGMA 938-A05 (reaffirmed 2017) gives gears none; a gain is agreed and proved by test, and one such test gave 1.6 times the surface life (carburised AISI 9310, NASA TP-2047, 1982). Fillets of a crank take one only from crank.filletTreatment, by tests of who treated them; valve springs are held to peened wire already.";
    private const string NoRz = "Ra is not turned into Rz: fits and crank fillets count Rz, which is read by itself, as no fixed factor exists.";

    /// <summary>The treatments of a build.</summary>
    public static IReadOnlyList<RouteSheet> All(Snapshot now)
    {
        var view = new View(now);
        return [.. TreatedPart.Names(view).Select(n => Of(view, n))];
    }

    /// <summary>The treatments of this name, or all when none is named.</summary>
    /// <exception cref="BadInputException">There is none of this name.</exception>
    public static IReadOnlyList<RouteSheet> Named(Snapshot now, string? name)
    {
        var all = All(now);
        return name is null ? all
            : all.Where(s => s.Name == name).ToList() is { Count: > 0 } found ? found
            : throw new BadInputException(all.Count == 0 ? None : $"there is no treatment '{name}'; wanted one of {string.Join(", ", all.Select(s => s.Name))}");
    }

    /// <summary>Words of a list in one text, separated by semicolons.</summary>
    internal static IReadOnlyList<string> List(string text) => text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private static RouteSheet Of(View view, string name)
    {
        var part = new TreatedPart(view, name);
        return new RouteSheet(name, view.WordOr(Treatment.Part, "", name), [.. InOrder(view, part, name)], [.. Effects(view, part, name)], [.. Uncounted(part)], [.. Wrong(view, part, name)]);
    }

    /// <summary>The bake comes right after what put the hydrogen in: after the coats where one of them did, else before them.</summary>
    private static IEnumerable<RouteStep> InOrder(View view, TreatedPart part, string name)
    {
        IEnumerable<RouteStep> bakes = [.. (part.Bakes.Count == 0 && part.WantsBake ? [name] : part.Bakes).Select(b => BakeRoute.Of(view, b))];
        IEnumerable<RouteStep> coats = [.. part.Coatings.Select(c => CoatRoute.Of(view, c))];
        return
        [
            .. part.Peenings.Select(p => PeeningRoute.Of(view, p)),
            .. part.Superfinishes.Select(s => FinishRoute.Of(view, s)),
            .. part.Pickled && !part.Plated ? bakes.Concat(coats) : coats.Concat(bakes),
        ];
    }

    private static IEnumerable<Fact> Effects(View view, TreatedPart part, string name)
    {
        var after = part.Superfinishes.Select(s => view.AmountIf(Superfinish.RoughnessAfter, s)).FirstOrDefault(ra => ra is not null);
        var bearing = view.WordOr(Treatment.Bearing, "", name);
        return
        [
            .. bearing.Length > 0 && after is not null
                ? new[] { new Fact($"Ra of the journal of bearing[{bearing}]", after, Dimension.Length, "µm") { Remark = view.Knows(Bearing.JournalRoughness, bearing) ? "not counted there: a roughness is written there, which goes first" : "counted there, for its oil film" } }
                : [],
            .. part.Coatings.SelectMany(c => CoatRoute.Handed(view, c)).Where(f => f.Known),
        ];
    }

    private static IEnumerable<string> Uncounted(TreatedPart part) => [.. part.Peenings.Count > 0 ? new[] { NoCredit } : [], .. part.Superfinishes.Count > 0 ? new[] { NoRz } : []];

    private static IEnumerable<string> Wrong(View view, TreatedPart part, string name) =>
    [
        .. part.Peenings.SelectMany(p => PeeningRoute.Troubles(view, p)),
        .. part.Peenings.Select(p => (Step: p, StripCurve.Of(view, p)?.Trouble)).Where(p => p.Trouble is { Length: > 0 }).Select(p => $"{p.Step}: {p.Trouble}"),
        .. part.WantsBake && part.Bakes.Count == 0 ? new[] { $"Hydrogen goes into hard steel and the book has no bake: {Bake.Time.At(name)} is wanted." } : [],
    ];
}
