using Gudgeon.Book.Checks.Joints;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Joints;

/// <summary>The bolts of one joint as they are ordered. SI; null where it is not known.</summary>
/// <param name="Key">The joint.</param>
/// <param name="Head">Head form, for people.</param>
/// <param name="Thread">"M10 × 1.25".</param>
/// <param name="Length">Length from under the head, m.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Strength">"10.9", "Rp 830 MPa".</param>
/// <param name="Mass">Mass of one, kg.</param>
/// <param name="MassSaved">Mass that all of them save over steel, kg.</param>
/// <param name="Price">Price of one, in the shop's money.</param>
/// <param name="Remark">What to see to; empty when nothing.</param>
public sealed record BoltLine(string Key, string Head, string Thread, double? Length, int Quantity, string Strength, double? Mass, double? MassSaved, double? Price, string Remark)
{
    /// <summary>Density of steel, kg/m³: from memory.</summary>
    private const double Steel = 7850;

    /// <summary>Mass of all, kg.</summary>
    public double? MassAll => Mass * Quantity;

    /// <summary>Price of all, in the shop's money.</summary>
    public double? Cost => Price * Quantity;

    /// <summary>The line of a joint.</summary>
    public static BoltLine Of(View view, string key)
    {
        var wanted = JointFigures.Known(view, v => Wanted(v, key));
        var length = view.AmountIf(Joint.BoltLength, key) ?? Known(view, v => v.Work(BoltBlank.StandardLength, Wanted(v, key)));
        var density = view.AmountOr(Joint.Density, Steel, key);
        var mass = Known(view, v => v.Work(BoltBlank.Mass, v.Amount(Joint.Thread, key), v.Amount(Joint.Pitch, key), length ?? double.NaN, Threaded(v, key, length ?? double.NaN), density, TightenedJoint.Head(v, key)));
        var quantity = view.CountOr(Joint.BoltCount, 0, key);
        return new BoltLine(key, HeadWords(TightenedJoint.Head(view, key)), JointFigures.ThreadWords(view, key), length, quantity, Strengths(view, key, density), mass, mass * ((Steel / density) - 1) * quantity, view.AmountIf(Joint.Price, key), Remarks(view, key, length, wanted));
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

    private static string Strengths(View view, string key, double density)
    {
        if (view.AmountIf(Joint.YieldStrength, key) is not { } yield)
        {
            return "";
        }

        var steel = Math.Abs(density - Steel) < 0.03 * Steel
            ? Enum.GetValues<PropertyClass>().Where(c => Math.Abs(PropertyClasses.Strength(c, view.AmountOr(Joint.Thread, 10e-3, key)).Yield - yield) < 1e5).ToList()
            : [];
        return steel.Count == 1 ? steel[0].ToString()["Class".Length..].Replace('_', '.') : $"Rp {Joint.YieldStrength.Print(yield)}";
    }

    private static string Remarks(View view, string key, double? length, double wanted)
    {
        var words = new List<string>();
        if (length is { } long1 && !double.IsNaN(wanted) && long1 < wanted - 1e-6)
        {
            words.Add($"shorter than grip and engagement by {Joint.Engagement.Print(wanted - long1)}");
        }

        if (length is { } fitted && TightenedJoint.Mating(view, key) == MatingThread.TappedHole && TightenedJoint.Head(view, key) != BoltHead.None && JointFigures.Known(view, v => TightenedJoint.Grip(v, key)) is var grip && !double.IsNaN(grip))
        {
            words.Add($"goes {Joint.Engagement.Print(fitted - grip)} into the part: the hole must be deeper");
        }

        if (view.AmountIf(Joint.Washer, key) is { } washer and > 0)
        {
            words.Add($"with washers of {Joint.Washer.Print(washer)} under the head");
        }

        return string.Join("; ", words);
    }

    private static string HeadWords(BoltHead head) => head switch { BoltHead.Hexagon => "hexagon", BoltHead.Socket => "socket", _ => "stud" };

    private static double? Known(View view, Func<View, double> work) => JointFigures.Known(view, work) is var number && double.IsNaN(number) ? null : number;
}
