using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Fits;
using Gudgeon.Calc.Materials;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Book.Checks.Surfaces;

/// <summary>A part whose surface is treated, and the steps of its route in the customary order.</summary>
/// <param name="view">The values.</param>
/// <param name="name">Name of the treatment: the first part of the name of each of its steps.</param>
internal sealed class TreatedPart(View view, string name)
{
    /// <summary>Tensile strength above which steel takes harm from hydrogen, Pa: where the table of the bake begins.</summary>
    private const double Brittle = 1000e6;

    /// <summary>The same as hardness, HRC: 1000 MPa in the table of <see cref="RockwellHardness"/>.</summary>
    private const double BrittleHardness = 32;

    /// <summary>Tensile strength from which steel wants hard shot and less intensity, Pa: 200 ksi, AMS-S-13165, Table VI.</summary>
    public const double HighStrength = 1379e6;

    /// <summary>The treatments of a build, in the order of their names.</summary>
    public static IReadOnlyList<string> Names(View view) =>
    [
        .. new[] { Treatment.Part, Peening.ShotSize, Superfinish.Removal, Bake.Time, Coating.Thickness }
            .SelectMany(f => view.Indices(f.Subject)).Select(Of).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
    ];

    /// <summary>Name of the treatment that a step belongs to.</summary>
    public static string Of(string step) => step.Split('.')[0];

    /// <summary>What the treatment that names a bearing leaves as roughness Ra on its journal, m; null where none does.</summary>
    public static double? JournalRoughness(View view, string bearing) => Names(view)
        .Where(n => Meant(view.WordOr(Treatment.Bearing, "", n), bearing))
        .SelectMany(n => new TreatedPart(view, n).Superfinishes)
        .Select(s => view.AmountIf(Superfinish.RoughnessAfter, s))
        .FirstOrDefault(ra => ra is not null);

    /// <summary>What a coat that is still to come does to the shaft or hole of a fit; null where none names it.</summary>
    public static SizeChange? CoatToCome(View view, string fit, string where)
    {
        var coat = Checks.Instances.Named(view, Coating.Thickness.Subject).FirstOrDefault(c =>
            Meant(view.WordOr(Coating.Fit, "", c), fit)
            && view.WordOr(Coating.Where, Coating.Shaft, c) == where
            && view.WordOr(Coating.State, Coating.ToCome, c) == Coating.ToCome);
        return coat is null ? null : BuildUp(view, coat);
    }

    /// <summary>What a coat does to sizes.</summary>
    public static SizeChange BuildUp(View view, string coat) => view.Work(CoatingBuildUp.Change, view.Amount(Coating.Thickness, coat), view.AmountOr(Coating.Outward, 1, coat));

    /// <summary>Steps of peening, coarse first.</summary>
    public IReadOnlyList<string> Peenings => [.. Steps(Peening.ShotSize).Select((p, i) => (Step: p, At: view.CountOr(Peening.Step, i + 1, p))).OrderBy(p => p.At).Select(p => p.Step)];

    /// <summary>Steps of superfinishing.</summary>
    public IReadOnlyList<string> Superfinishes => Steps(Superfinish.Removal);

    /// <summary>Coats.</summary>
    public IReadOnlyList<string> Coatings => Steps(Coating.Thickness);

    /// <summary>Bakes that the book has.</summary>
    public IReadOnlyList<string> Bakes => Steps(Bake.Time);

    /// <summary>Metal of the part.</summary>
    public PeenedMetal Metal => view.ChoiceOr(Treatment.Metal, PeenedMetal.Steel, name);

    /// <summary>Tensile strength, Pa: as written, else from the hardness; NaN, and noted as missing, where neither is known.</summary>
    public double Strength => view.AmountIf(Treatment.TensileStrength, name)
        ?? (view.AmountIf(Treatment.Hardness, name) is { } hardness ? view.Work(RockwellHardness.Strength, hardness) : view.Amount(Treatment.TensileStrength, name));

    /// <summary>Whether a coat puts hydrogen into it.</summary>
    public bool Plated => Metal == PeenedMetal.Steel && Coatings.Any(c => view.WordOr(Coating.Process, Coating.Electrolytic, c) == Coating.Electrolytic);

    /// <summary>Whether superfinishing puts hydrogen into it.</summary>
    public bool Pickled => Metal == PeenedMetal.Steel && Superfinishes.Any(s => view.WordOr(Superfinish.Chemistry, Superfinish.Neutral, s) == Superfinish.Acid);

    /// <summary>Whether it must be baked: hydrogen goes into steel that is hard enough to take harm, or of which nobody knows how hard it is.</summary>
    public bool WantsBake => (Plated || Pickled) && TakesHarm;

    private bool TakesHarm => view.AmountIf(Treatment.TensileStrength, name) is { } strength ? strength > Brittle : view.AmountIf(Treatment.Hardness, name) is not { } hardness || hardness > BrittleHardness;

    /// <summary>Hottest that the part gets in the steps that come after peening and in service, K; null where nothing tells.</summary>
    public double? Hottest => Peenings.Select(p => view.AmountIf(Peening.HeatAfterwards, p))
        .Concat(Bakes.Select(b => view.AmountIf(Bake.Temperature, b)))
        .Concat(Coatings.Select(c => view.AmountIf(Coating.Temperature, c)))
        .Max();

    /// <summary>Whether a name in the book means an instance: itself, or its group.</summary>
    private static bool Meant(string given, string instance) => given.Length > 0 && (instance == given || instance.StartsWith(given + ".", StringComparison.Ordinal));

    private IReadOnlyList<string> Steps(Field field) => [.. Checks.Instances.Named(view, field.Subject).Where(i => Of(i) == name)];
}
