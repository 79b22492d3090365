using Gudgeon.Book.Checks.Joints;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Joints;

/// <summary>The bolts of one joint as they are ordered. SI; null where it is not known.</summary>
/// <param name="Key">The joint.</param>
/// <param name="Head">Head form, for people.</param>
/// <param name="Thread">"M10 × 1.25".</param>
/// <param name="Length">Length from under the head, m.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Class">Property class: "10.9"; empty where it is none.</param>
/// <param name="Yield">Yield strength, Pa; null when it is not known.</param>
/// <param name="Mass">Mass of one, kg.</param>
/// <param name="MassSaved">Mass that all of them save over steel, kg.</param>
/// <param name="Price">Price of one, in the shop's money.</param>
/// <param name="Notes">What to see to.</param>
public sealed record BoltLine(string Key, string Head, string Thread, double? Length, int Quantity, string Class, double? Yield, double? Mass, double? MassSaved, double? Price, IReadOnlyList<NumberInWords> Notes)
{
    /// <summary>Density of steel, kg/m³: from memory.</summary>
    private const double Steel = 7850;

    /// <summary>"10.9", "Rp 830 MPa".</summary>
    public string Strength => StrengthIn(imperial: false);

    /// <summary>What to see to; empty when nothing.</summary>
    public string Remark => RemarkIn(imperial: false);

    /// <summary>Mass of all, kg.</summary>
    public double? MassAll => Mass * Quantity;

    /// <summary>Price of all, in the shop's money.</summary>
    public double? Cost => Price * Quantity;

    /// <summary>The strength in the reader's units.</summary>
    public string StrengthIn(bool imperial) => Class.Length > 0 || Yield is not { } yield ? Class : $"Rp {Joint.YieldStrength.Print(yield, imperial)}";

    /// <summary>The remark in the reader's units.</summary>
    public string RemarkIn(bool imperial) => string.Join("; ", Notes.Select(n => n.Print(imperial)));

    /// <summary>The line of a joint.</summary>
    public static BoltLine Of(View view, string key)
    {
        var wanted = JointFigures.Known(view, v => Wanted(v, key));
        var length = view.AmountIf(Joint.BoltLength, key) ?? Known(view, v => v.Work(BoltBlank.StandardLength, Wanted(v, key)));
        var density = view.AmountOr(Joint.Density, Steel, key);
        var mass = Known(view, v => v.Work(BoltBlank.Mass, v.Amount(Joint.Thread, key), v.Amount(Joint.Pitch, key), length ?? double.NaN, Threaded(v, key, length ?? double.NaN), density, TightenedJoint.Head(v, key)));
        var quantity = view.CountOr(Joint.BoltCount, 0, key);
        return new BoltLine(key, HeadWords(TightenedJoint.Head(view, key)), JointFigures.ThreadWords(view, key), length, quantity, ClassOf(view, key, density), view.AmountIf(Joint.YieldStrength, key), mass, mass * ((Steel / density) - 1) * quantity, view.AmountIf(Joint.Price, key), [.. NotesOf(view, key, length, wanted)]);
    }

    /// <summary>Grip and engagement; for a nut its height and two threads beyond it, for a stud both ends.</summary>
    private static double Wanted(View view, string key)
    {
        var (grip, thread, pitch) = (TightenedJoint.Grip(view, key), view.Amount(Joint.Thread, key), view.Amount(Joint.Pitch, key));
        var nut = (0.8 * thread) + (2 * pitch);
        var stud = TightenedJoint.Head(view, key) == BoltHead.None;
        return TightenedJoint.Mating(view, key) == MatingThread.Nut && !stud ? grip + nut : grip + view.Amount(Joint.Engagement, key) + (stud ? nut : 0);
    }

    private static double Threaded(View view, string key, double length)
    {
        var grip = TightenedJoint.Grip(view, key);
        return Math.Clamp(length - Math.Min(view.AmountOr(Joint.ShankLength, grip, key), grip), 0, length);
    }

    private static string ClassOf(View view, string key, double density)
    {
        if (view.AmountIf(Joint.YieldStrength, key) is not { } yield)
        {
            return "";
        }

        var steel = Math.Abs(density - Steel) < 0.03 * Steel
            ? Enum.GetValues<PropertyClass>().Where(c => Math.Abs(PropertyClasses.Strength(c, view.AmountOr(Joint.Thread, 10e-3, key)).Yield - yield) < 1e5).ToList()
            : [];
        return steel.Count == 1 ? steel[0].ToString()["Class".Length..].Replace('_', '.') : "";
    }

    private static IEnumerable<NumberInWords> NotesOf(View view, string key, double? length, double wanted)
    {
        static NumberInWords Words(string before, double metres, string after = "") => new(before, metres, Dimension.Length, "mm", after);
        if (length is { } long1 && !double.IsNaN(wanted) && long1 < wanted - 1e-6)
        {
            yield return Words("shorter than grip and engagement by ", wanted - long1);
        }

        if (length is { } fitted && TightenedJoint.Mating(view, key) == MatingThread.TappedHole && TightenedJoint.Head(view, key) != BoltHead.None && JointFigures.Known(view, v => TightenedJoint.Grip(v, key)) is var grip && !double.IsNaN(grip))
        {
            yield return Words("goes ", fitted - grip, " into the part: the hole must be deeper");
        }

        if (view.AmountIf(Joint.Washer, key) is { } washer and > 0)
        {
            yield return Words("with washers of ", washer, " under the head");
        }
    }

    private static string HeadWords(BoltHead head) => head switch { BoltHead.Hexagon => "hexagon", BoltHead.Socket => "socket", _ => "stud" };

    private static double? Known(View view, Func<View, double> work) => JointFigures.Known(view, work) is var number && double.IsNaN(number) ? null : number;
}
