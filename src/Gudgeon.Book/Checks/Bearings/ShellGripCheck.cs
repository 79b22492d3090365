using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Fits;

namespace Gudgeon.Book.Checks.Bearings;

/// <summary>What the checks of shells in their housing share.</summary>
public abstract class ShellGripCheck : Check
{
    public override string Family => "bearings";

    /// <summary>Moduli of rods and shell backs, and of cases, Pa: from memory.</summary>
    private const double Steel = 206e9, Aluminium = 72e9;

    /// <summary>Where the excess of the shells was measured.</summary>
    public override IEnumerable<string> Instances(View view) => BearingFit.Keys(view).Where(i => view.Knows(Bearing.Excess, i));

    /// <summary>Pressure and stresses with an excess of the shells over the bore, m; none once it is gone.</summary>
    private protected static PressFitStress Press(View view, string index, double excess)
    {
        var (bore, wall) = (BearingFit.Housing(view, index), view.Amount(Bearing.ShellThickness, index));
        var outer = view.Amount(Bearing.HousingOuter, index);
        var modulus = view.AmountOr(Bearing.HousingModulus, BearingFit.IsBigEnd(index) ? Steel : Aluminium, index);
        return view.Work(PressFit.Stress, Math.Max(0, excess) / Math.PI, bore, outer, modulus, Steel, bore - (2 * wall), 0.3, 0.3);
    }
}
