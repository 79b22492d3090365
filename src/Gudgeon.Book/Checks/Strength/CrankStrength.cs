using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Crank;
using Gudgeon.Calc.Surfaces;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Checks.Strength;

/// <summary>What swings in a throw over the cycle at one speed. SI.</summary>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Radial">Half the swing of the load on the pin along the throw, N.</param>
/// <param name="MeanRadial">Middle of that swing, outwards, N.</param>
/// <param name="Torque">Half the swing of the torque that passes, N·m.</param>
/// <param name="MeanTorque">Middle of that swing, N·m.</param>
internal readonly record struct ThrowSwing(double Speed, double Radial, double MeanRadial, double Torque, double MeanTorque);

/// <summary>Equivalent alternating stress in a fillet and what it bears. SI.</summary>
/// <param name="Speed">Crank speed at which it is greatest, rad/s.</param>
/// <param name="Stress">Equivalent alternating stress, Pa.</param>
/// <param name="Strength">Alternating stress that the fillet bears, Pa.</param>
internal readonly record struct FilletStress(double Speed, double Stress, double Strength);

/// <summary>One throw of the crank between its two main bearings, as a beam on two supports.</summary>
/// <param name="view">The values, with a desk: it takes an engine run.</param>
/// <param name="cylinder">Whose throw.</param>
internal sealed class CrankStrength(View view, string cylinder)
{
    /// <summary>Bending that misalignment adds in trunk-piston engines, Pa: IACS UR M53.4.</summary>
    private const double Added = 10e6;

    private IReadOnlyList<ThrowSwing>? _swings;

    /// <summary>Diameter of the crank pin, m.</summary>
    public double PinDiameter => view.Amount(Bearing.Journal, $"bigEnd.{cylinder}");

    /// <summary>Diameter of the slimmer main journal beside it, m.</summary>
    public double JournalDiameter => Beside is var (left, right) ? Math.Min(view.Amount(Bearing.Journal, left), view.Amount(Bearing.Journal, right)) : double.NaN;

    /// <summary>Overlap of pin and journal, m.</summary>
    public double Overlap => view.Work(CrankFillets.Overlap, PinDiameter, JournalDiameter, view.Amount(Crank.Stroke) / 2);

    /// <summary>What swings at the hardest speeds of the run.</summary>
    public IReadOnlyList<ThrowSwing> Swings => _swings ??= [.. CycleLoads.Hardest(view, cylinder).Select(h => Swing(h.Loads, h.Throw.Throw))];

    /// <summary>The pin's fillet at the speed that stresses it most; null where it is not known.</summary>
    public FilletStress? PinFillet()
    {
        var factors = view.Work(CrankFillets.Pin, PinDiameter, Overlap, view.Amount(Crank.WebThickness), view.Amount(Crank.WebWidth), view.Amount(Crank.PinFillet), Bore(Crank.PinBore), Bore(Crank.JournalBore), Bore(Crank.PinRecess), Bore(Crank.JournalRecess));
        var strength = Strength(PinDiameter, view.Amount(Crank.PinFillet));
        return double.IsNaN(factors.Bending) ? null : Worst(strength, swing => view.Work(
            CrankFatigue.Equivalent,
            factors.Bending * Web(swing).Bending,
            factors.Torsion * view.Work(CrankFillets.Torsion, swing.Torque, PinDiameter, Bore(Crank.PinBore)),
            Added));
    }

    /// <summary>The fillet of the slimmer journal at the speed that stresses it most; null where it is not known.</summary>
    public FilletStress? JournalFillet()
    {
        var factors = view.Work(CrankFillets.Journal, PinDiameter, Overlap, view.Amount(Crank.WebThickness), view.Amount(Crank.WebWidth), view.Amount(Crank.JournalFillet), Bore(Crank.PinBore), Bore(Crank.JournalBore), Bore(Crank.PinRecess), Bore(Crank.JournalRecess));
        var strength = Strength(JournalDiameter, view.Amount(Crank.JournalFillet));
        return double.IsNaN(factors.Bending) ? null : Worst(strength, swing => view.Work(
            CrankFatigue.Equivalent,
            (factors.Bending * Web(swing).Bending) + (factors.Radial * Web(swing).Radial),
            factors.Torsion * view.Work(CrankFillets.Torsion, swing.Torque, JournalDiameter, Bore(Crank.JournalBore)),
            Added));
    }

    /// <summary>Nominal stresses of the web that is bent more.</summary>
    private WebStress Web(ThrowSwing swing)
    {
        var (arm, share) = Arm();
        return view.Work(CrankFillets.Web, swing.Radial * arm, swing.Radial * share, view.Amount(Crank.WebWidth), view.Amount(Crank.WebThickness));
    }

    /// <summary>Bending moment in the middle of the web over the load on the pin, m, and the share of the load that passes through it.</summary>
    private (double Arm, double Share) Arm()
    {
        if (Beside is not var (left, right))
        {
            return (double.NaN, double.NaN);
        }

        var (from, to, at) = (view.Amount(Bearing.Position, left), view.Amount(Bearing.Position, right), Position);
        var middle = (view.Amount(Crank.PinLength) + view.Amount(Crank.WebThickness)) / 2;
        var (onLeft, onRight) = ((to - at) / (to - from), (at - from) / (to - from));
        var (armLeft, armRight) = (onLeft * (at - middle - from), onRight * (to - at - middle));
        return armLeft >= armRight ? (armLeft, onLeft) : (armRight, onRight);
    }

    /// <summary>Keys of the main bearings on both sides; null, and noted as missing, when their places are not known.</summary>
    private (string Left, string Right)? Beside
    {
        get
        {
            var (mains, at) = (CrankAssembly.Mains(view), Position);
            var left = mains.LastOrDefault(m => view.Amount(Bearing.Position, m) <= at);
            var right = mains.FirstOrDefault(m => view.Amount(Bearing.Position, m) > at);
            if (left is not null && right is not null)
            {
                return (left, right);
            }

            view.Unknown("bearing.position of the main bearings on both sides of the crank pin");
            return null;
        }
    }

    private double Position => view.AmountOr(Cylinder.Position, 0, cylinder);

    private double Bore(Field field) => view.AmountOr(field, 0);

    private double Strength(double diameter, double fillet)
    {
        var tensile = view.Amount(Crank.TensileStrength);
        var smooth = view.AmountIf(Crank.FilletRoughness) is { } rz ? view.Work(Roughness.FatigueFactor, rz, tensile) : 1;
        return view.Work(CrankFatigue.Strength, diameter, fillet, tensile, view.AmountOr(Crank.ForgingFactor, 1)) * smooth * view.AmountOr(Crank.FilletTreatment, 1);
    }

    private FilletStress? Worst(double strength, Func<ThrowSwing, double> stress) =>
        Swings.Count == 0 ? null : Swings.Select(s => new FilletStress(s.Speed, stress(s), strength)).MaxBy(f => f.Stress);

    /// <summary>Rods that share the pin load it together; torque passes from all throws on the far side of the drive, this one counted.</summary>
    private ThrowSwing Swing(CrankLoads loads, CrankThrow own)
    {
        var drive = view.AmountOr(Crank.DrivePosition, double.MaxValue);
        var pin = loads.Throws.Where(t => t.Throw.Pin == own.Pin).Select(t => t.Radial).ToList();
        var passing = loads.Throws.Where(t => drive >= own.Position ? t.Throw.Position <= own.Position : t.Throw.Position >= own.Position).Select(t => t.Torque).ToList();
        var (radial, meanRadial) = Halves(pin);
        var (torque, meanTorque) = Halves(passing);
        return new ThrowSwing(loads.Speed, radial, meanRadial, torque, meanTorque);
    }

    /// <summary>Half the swing of a sum of courses and the middle of it.</summary>
    private static (double Half, double Middle) Halves(List<double[]> courses)
    {
        var (least, most) = (double.MaxValue, double.MinValue);
        for (var i = 0; i < courses[0].Length; i++)
        {
            var sum = 0.0;
            foreach (var course in courses)
            {
                sum += course[i];
            }

            (least, most) = (Math.Min(least, sum), Math.Max(most, sum));
        }

        return ((most - least) / 2, (most + least) / 2);
    }
}
