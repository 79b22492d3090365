using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Torques of a screw under load.</summary>
/// <param name="RaiseThread">Thread torque to raise (or tighten), N·m.</param>
/// <param name="Collar">Collar torque, N·m.</param>
/// <param name="Raise">Sum to raise, N·m.</param>
/// <param name="LowerThread">Thread torque to lower (or loosen), N·m; negative when the thread overhauls.</param>
/// <param name="Lower">Sum to lower, N·m.</param>
/// <param name="Efficiency">Work lifted over work put in.</param>
public readonly record struct ScrewTorque(
    [Quantity("thread torque to raise", Dimension.Torque, "N·m", Symbol = "TR")] double RaiseThread,
    [Quantity("collar torque", Dimension.Torque, "N·m", Symbol = "TC")] double Collar,
    [Quantity("torque to raise", Dimension.Torque, "N·m", Symbol = "T")] double Raise,
    [Quantity("thread torque to lower", Dimension.Torque, "N·m", Symbol = "TL")] double LowerThread,
    [Quantity("torque to lower", Dimension.Torque, "N·m", Symbol = "TS")] double Lower,
    [Quantity("efficiency", Dimension.Number, "%", Symbol = "e")] double Efficiency);

/// <summary>Screws that move or clamp a load: any flank angle, collar friction, exact lead.</summary>
public static class PowerScrew
{
    /// <summary>Torque to raise and to lower a load with a screw.</summary>
    /// <param name="load">Axial load, N.</param>
    /// <param name="meanDiameter">Mean thread diameter, m.</param>
    /// <param name="lead">Lead, m.</param>
    /// <param name="friction">Friction in the thread.</param>
    /// <param name="flankAngle">Flank half angle, rad: 0 square, 14.5° Acme, 15° trapezoidal, 30° ISO and UN threads.</param>
    /// <param name="collarFriction">Friction at the collar or under the head.</param>
    /// <param name="collarDiameter">Mean diameter of the collar, m.</param>
    [Formula("power screw torque", "TR = F dm / 2 (l + π f dm / cos(α)) / (π dm - f l / cos(α)); TC = F fc dc / 2; T = TR + TC; TL = F dm / 2 (π f dm / cos(α) - l) / (π dm + f l / cos(α)); TS = TL + TC; e = F l / (2 π T)", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 8-1 to 8-6 and 8-26", Validity = "lead angle small against the flank angle")]
    public static ScrewTorque Torque(
        [Quantity("load", Dimension.Force, "kN", Symbol = "F", Above = 0)] double load,
        [Quantity("mean thread diameter", Dimension.Length, "mm", Symbol = "dm", Above = 0)] double meanDiameter,
        [Quantity("lead", Dimension.Length, "mm", Symbol = "l", Above = 0)] double lead,
        [Quantity("thread friction", Dimension.Number, Symbol = "f", Min = 0, Max = 1)] double friction,
        [Quantity("flank half angle", Dimension.Angle, "°", Symbol = "α", Min = 0, Max = Math.PI / 4)] double flankAngle = Math.PI / 6,
        [Quantity("collar friction", Dimension.Number, Symbol = "fc", Min = 0, Max = 1)] double collarFriction = 0,
        [Quantity("collar diameter", Dimension.Length, "mm", Symbol = "dc", Min = 0)] double collarDiameter = 0)
    {
        var around = Math.PI * meanDiameter;
        var drag = friction / Math.Cos(flankAngle);
        FormulaDomainException.Unless(around > drag * lead, "thread friction: too great for this lead, the screw locks");
        var half = load * meanDiameter / 2;
        var raise = half * (lead + (drag * around)) / (around - (drag * lead));
        var lower = half * ((drag * around) - lead) / (around + (drag * lead));
        var collar = load * collarFriction * collarDiameter / 2;
        return new ScrewTorque(raise, collar, raise + collar, lower, lower + collar, load * lead / (2 * Math.PI * (raise + collar)));
    }
}
