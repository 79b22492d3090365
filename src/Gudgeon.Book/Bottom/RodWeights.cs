using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Crank;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Book.Bottom;

/// <summary>The two masses that stand for a rod: as weighed, else by its centre of mass.</summary>
internal static class RodWeights
{
    /// <summary>Share that goes with the piston, kg; NaN and noted as missing when it is neither weighed nor to be had from the centre of mass.</summary>
    public static double SmallEnd(View view, string index) => view.AmountIf(Rod.SmallEndMass, index)
        ?? (view.AmountIf(Rod.MassCentre, index) is { } centre ? view.Work(RodMasses.Split, view.Amount(Rod.Mass, index), view.Amount(Rod.Length, index), centre).SmallEnd : view.Amount(Rod.SmallEndMass, index));

    /// <summary>Share that goes with the crank pin, kg: weighed, else what the small end leaves.</summary>
    public static double BigEnd(View view, string index) => view.AmountIf(Rod.BigEndMass, index) ?? (view.Amount(Rod.Mass, index) - SmallEnd(view, index));

    /// <summary>What both readings come to less the mass of the rod, kg; NaN when one of them was not taken.</summary>
    public static double Left(View view, string index) => view.Amount(Rod.SmallEndMass, index) + view.Amount(Rod.BigEndMass, index) - view.Amount(Rod.Mass, index);

    /// <summary>Radius of gyration about the centre of mass by swinging, m; null when it was not swung.</summary>
    public static double? Gyration(View view, string index)
    {
        if (view.AmountIf(Rod.SwingPeriod, index) is not { } period || view.AmountIf(Rod.SwingPivot, index) is not { } pivot)
        {
            return null;
        }

        // The centre of mass lies as far from the big end as the small end's share says.
        var length = view.Amount(Rod.Length, index);
        var fromSmallEnd = length * (1 - (SmallEnd(view, index) / view.Amount(Rod.Mass, index)));
        return view.Work(RodMasses.GyrationBySwinging, period, pivot + fromSmallEnd, PhysicalConstants.StandardGravity);
    }
}
