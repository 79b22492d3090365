using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>Stroke and dead centres of a crank, offset or not.</summary>
/// <param name="Stroke">Piston stroke, m.</param>
/// <param name="Top">Crank angle at top dead centre, rad.</param>
/// <param name="Bottom">Crank angle at bottom dead centre, rad.</param>
/// <param name="Downstroke">Crank angle of the downstroke, rad.</param>
public readonly record struct DeadCentreAngles(
    [Quantity("stroke", Dimension.Length, "mm", Symbol = "s")] double Stroke,
    [Quantity("crank angle at top dead centre", Dimension.Angle, "°", Symbol = "θt")] double Top,
    [Quantity("crank angle at bottom dead centre", Dimension.Angle, "°", Symbol = "θb")] double Bottom,
    [Quantity("crank angle of the downstroke", Dimension.Angle, "°", Symbol = "θd")] double Downstroke);

/// <summary>Piston accelerations at the dead centres.</summary>
/// <param name="Top">At top dead centre towards the crank, m/s².</param>
/// <param name="Bottom">At bottom dead centre away from the crank, m/s².</param>
public readonly record struct DeadCentreAccelerations(
    [Quantity("piston acceleration at top dead centre", Dimension.Acceleration, "m/s²", Symbol = "at")] double Top,
    [Quantity("piston acceleration at bottom dead centre", Dimension.Acceleration, "m/s²", Symbol = "ab")] double Bottom);

/// <summary>What happens where the piston turns round.</summary>
public static class DeadCentres
{
    /// <summary>Stroke and dead centres of a crank with offset cylinder or gudgeon pin.</summary>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="offset">Offset of the cylinder axis from the crank axis, m, positive to the side the crank pin moves to after top dead centre.</param>
    [Formula(
        "dead centres of an offset crank",
        "s = sqrt((l + r)^2 - e^2) - sqrt((l - r)^2 - e^2); θt = asin(e / (l + r)); θb = π + asin(e / (l - r)); θd = θb - θt",
        "Closed geometry of the slider-crank: rod and throw in one line",
        Provenance = Provenance.Definition)]
    public static DeadCentreAngles Find(
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("pin offset", Dimension.Length, "mm", Symbol = "e")] double offset = 0)
    {
        SliderCrank.RequireRunning(radius, rod, offset);
        var folded = Math.Sqrt(((rod - radius) * (rod - radius)) - (offset * offset));
        var top = Math.Asin(offset / (rod + radius));
        var bottom = Math.PI + Math.Asin(offset / (rod - radius));
        return new DeadCentreAngles(SliderCrank.TopHeight(radius, rod, offset) - folded, top, bottom, bottom - top);
    }

    /// <summary>Piston accelerations at top and bottom dead centre, exact without offset.</summary>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    [Formula(
        "piston acceleration at the dead centres",
        "at = r w^2 (1 + r / l); ab = r w^2 (1 - r / l)",
        "Exact slider-crank at 0° and 180°",
        Provenance = Provenance.Definition,
        Validity = "No offset. With r/l above 0.264 the greatest acceleration towards the head is not at bottom dead centre but either side of it.")]
    public static DeadCentreAccelerations Accelerations(
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed)
    {
        SliderCrank.RequireRunning(radius, rod, 0);
        var centripetal = radius * speed * speed;
        return new DeadCentreAccelerations(centripetal * (1 + (radius / rod)), centripetal * (1 - (radius / rod)));
    }
}
