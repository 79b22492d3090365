using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Clearance between a valve and the piston's pocket.</summary>
/// <param name="LiftAtTdc">Valve lift at top dead centre, m.</param>
/// <param name="ClearanceAtTdc">Clearance at top dead centre, m.</param>
/// <param name="Least">Least clearance, m; negative when they meet.</param>
/// <param name="Angle">Crank angle after top dead centre at which it is least, rad.</param>
public readonly record struct ValvePistonClearance(
    [Quantity("valve lift at TDC", Dimension.Length, "mm", Symbol = "s0")] double LiftAtTdc,
    [Quantity("clearance at TDC", Dimension.Length, "mm", Symbol = "c1")] double ClearanceAtTdc,
    [Quantity("least clearance", Dimension.Length, "mm", Symbol = "cmin")] double Least,
    [Quantity("crank angle of the least clearance", Dimension.Angle, "°", Symbol = "θ", Help = "after TDC")] double Angle);

/// <summary>Valve-to-piston clearance along the stem, pocket floor parallel to the valve.</summary>
public static class ValveToPiston
{
    /// <summary>Least clearance of a valve with the polynomial lobe around overlap TDC, exact piston travel.</summary>
    /// <param name="crankRadius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length, m.</param>
    /// <param name="stemAngle">Angle of the stem from the cylinder axis, rad.</param>
    /// <param name="tdcClearance">Clearance along the stem at TDC with the valve shut, m.</param>
    /// <param name="lift">Full lift, m.</param>
    /// <param name="duration">Duration, crank rad.</param>
    /// <param name="centre">Lobe centre after TDC, crank rad; negative for an exhaust lobe.</param>
    [Formula("valve-to-piston clearance", "cmin = min(c0 + x cos(α) - s)", "geometry along the stem; exact slider-crank travel x and lobe s = h (1 - 4 z^2)^3", Provenance = Provenance.Definition, Validity = "pocket floor parallel to the valve head; rigid train; within 90° of TDC", Caution = "A springy train, rod stretch and bearing clearance take some of it: check with clay or a dial gauge and keep the trade's margin, about 1 mm on the inlet and more on the exhaust.")]
    public static ValvePistonClearance Least(
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0)] double crankRadius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0)] double rod,
        [Quantity("stem angle from the cylinder axis", Dimension.Angle, "°", Symbol = "α", Min = -Math.PI / 3, Max = Math.PI / 3)] double stemAngle,
        [Quantity("clearance at TDC with the valve shut", Dimension.Length, "mm", Symbol = "c0", Min = 0)] double tdcClearance,
        [Quantity("full lift", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("duration", Dimension.Angle, "°", Symbol = "B", Above = 0, Max = 4 * Math.PI, Help = "crank degrees")] double duration,
        [Quantity("lobe centre after TDC", Dimension.Angle, "°", Symbol = "C", Min = -Math.PI, Max = Math.PI, Help = "negative for an exhaust lobe")] double centre)
    {
        FormulaDomainException.Unless(rod > crankRadius, "rod length: must be greater than the crank radius");
        var along = Math.Cos(stemAngle);
        double Lift(double angle) => lift * PolynomialLobe.At((angle - centre) / duration).Lift;
        double Clearance(double angle) => tdcClearance + (along * SliderCrank.Motion(crankRadius, rod, angle, 0).Travel) - Lift(angle);

        var worst = Extremum.Least(Clearance, -Math.PI / 2, Math.PI / 2);
        return new ValvePistonClearance(Lift(0), Clearance(0), Clearance(worst), worst);
    }
}
