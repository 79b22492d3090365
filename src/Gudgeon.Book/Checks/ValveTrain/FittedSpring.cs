using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Springs;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>A valve spring as fitted: its rate from the tester when it was tested, else from the wire.</summary>
internal static class FittedSpring
{
    /// <summary>Rate, N/m, and free length, m.</summary>
    public static TestedSpring Tested(View view, string index)
    {
        if (view.TableIf(Spring.LoadTable, index) is { Rows.Count: >= 2 } table)
        {
            var (loads, heights) = (table["load"], table["height"]);
            return view.Work(SpringLoad.FromTwoHeights, heights[0], loads[0], heights[^1], loads[^1]);
        }

        return new TestedSpring(RateOfWire(view, index), view.Amount(Spring.FreeLength, index));
    }

    /// <summary>Rate that wire, coil diameter and active coils give, N/m.</summary>
    public static double RateOfWire(View view, string index)
    {
        var wire = view.Amount(Spring.Wire, index);
        return view.Work(HelicalSpring.Rate, wire, view.Amount(Spring.OutsideDiameter, index) - wire, view.Amount(Spring.ActiveCoils, index), view.AmountOr(Spring.ShearModulus, 79.3e9, index));
    }

    /// <summary>Seat load, load at full lift and coil-bind margin, spacer counted.</summary>
    public static ValveSpringLoads Loads(View view, string index)
    {
        var spring = Tested(view, index);
        return view.Work(
            ValveSpring.Loads,
            spring.Rate,
            spring.FreeLength,
            view.Amount(Spring.InstalledHeight, index),
            view.Amount(Valve.Lift, index),
            view.Amount(Spring.SolidHeight, index),
            view.AmountOr(Spring.Spacer, 0, index));
    }

    /// <summary>Margin before the coils touch at full lift, m; may be negative.</summary>
    public static double CoilBindMargin(View view, string index) => view.Work(
        ValveSpring.CoilBindMargin,
        view.Amount(Spring.InstalledHeight, index),
        view.Amount(Valve.Lift, index),
        view.Amount(Spring.SolidHeight, index),
        view.AmountOr(Spring.Spacer, 0, index));
}
