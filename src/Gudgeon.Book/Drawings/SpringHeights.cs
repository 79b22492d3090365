using Gudgeon.Book.Build;
using Gudgeon.Book.Checks.ValveTrain;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Drawings;

/// <summary>Heights of one valve spring as fitted. SI; null where it is not known.</summary>
/// <param name="Installed">Seat to retainer with the valve shut, spacer left out, m.</param>
/// <param name="Spacer">Spacer under the spring, m; null when the book names none.</param>
/// <param name="Lift">Full lift at the valve, m.</param>
/// <param name="Solid">Height at which the coils touch, m.</param>
/// <param name="Margin">What is left before they do at full lift, m; negative when they touch before.</param>
/// <param name="Wire">Wire diameter, m.</param>
/// <param name="Coils">Active coils.</param>
/// <param name="SeatLoad">Load with the valve shut, N.</param>
/// <param name="OpenLoad">Load at full lift, N.</param>
public sealed record SpringHeights(double? Installed, double? Spacer, double? Lift, double? Solid, double? Margin, double? Wire, double? Coils, double? SeatLoad, double? OpenLoad)
{
    /// <summary>Height of the spring with the valve shut, m.</summary>
    public double? Shut => Installed - (Spacer ?? 0);

    /// <summary>Height of the spring at full lift, m.</summary>
    public double? Open => Shut - Lift;

    /// <summary>Keys of the springs: one a side, or one for each valve where the book tells them apart.</summary>
    public static IReadOnlyList<string> Keys(Snapshot now) => Sketch.Keys(Checks.Instances.Valves(new View(now), Spring.InstalledHeight.Subject, InnerSpring.Wire.Subject, Valve.Lift.Subject));

    /// <summary>The numbers of one spring.</summary>
    public static SpringHeights Of(Snapshot now, string index)
    {
        var view = new View(now);
        var spring = new FittedSpring(view, index);
        return new SpringHeights(
            view.AmountIf(Spring.InstalledHeight, index),
            view.AmountIf(Spring.Spacer, index),
            view.AmountIf(Valve.Lift, index),
            view.AmountIf(Spring.SolidHeight, index),
            Sketch.Known(() => spring.CoilBindMargin()),
            view.AmountIf(Spring.Wire, index),
            view.AmountIf(Spring.ActiveCoils, index),
            Sketch.Known(() => spring.Loads().Seat),
            Sketch.Known(() => spring.Loads().Open));
    }
}
