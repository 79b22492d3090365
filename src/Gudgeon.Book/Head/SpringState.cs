using Gudgeon.Book.Checks.ValveTrain;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Head;

/// <summary>The springs of one valve on a spacer. SI; null where it is not known or cannot be.</summary>
/// <param name="Spacer">Spacer under the springs, m.</param>
/// <param name="Shut">Height with the valve shut, m.</param>
/// <param name="SeatLoad">Load with the valve shut, N.</param>
/// <param name="OpenLoad">Load at full lift, N.</param>
/// <param name="CoilBindMargin">Room before the first coil binds at full lift, m; may be negative.</param>
/// <param name="RetainerSeal">Room from retainer to stem seal at full lift, m.</param>
/// <param name="Stress">Shear stress at full lift in the coil that bears most, Pa.</param>
/// <param name="Fatigue">Safety against fatigue of the coil that has least.</param>
public sealed record SpringState(double? Spacer, double? Shut, double? SeatLoad, double? OpenLoad, double? CoilBindMargin, double? RetainerSeal, double? Stress, double? Fatigue)
{
    /// <summary>The state as the book has it, or on another spacer, m.</summary>
    internal static SpringState Of(View view, string index, double? spacer = null)
    {
        var spring = new FittedSpring(view, index, spacer);
        var under = spacer ?? view.AmountOr(Spring.Spacer, 0, index);
        return new SpringState(
            under,
            view.AmountIf(Spring.InstalledHeight, index) - under,
            Sketch.Known(() => spring.Loads().Seat),
            Sketch.Known(() => spring.Loads().Open),
            Sketch.Known(spring.CoilBindMargin),
            view.AmountIf(Spring.RetainerToSeal, index) - view.AmountIf(Valve.Lift, index),
            Sketch.Known(() => spring.Coils.Max(c => c.OpenStress())),
            Sketch.Known(() => spring.Coils.Min(c => c.FatigueSafety())));
    }
}
