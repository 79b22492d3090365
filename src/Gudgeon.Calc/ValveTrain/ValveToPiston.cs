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

    /// <summary>Room between a shut valve and the piston at TDC along the stem, from the depths of the parts.</summary>
    /// <param name="pocket">Depth of the piston's pocket below the crown's edge, m.</param>
    /// <param name="recess">Valve head above the head face, m; negative when it stands proud.</param>
    /// <param name="gasket">Crushed head gasket, m.</param>
    /// <param name="deck">Piston below the deck at TDC, m; negative when it stands proud.</param>
    /// <param name="stemAngle">Angle of the stem from the cylinder axis, rad.</param>
    [Formula("valve room at TDC by parts", "c0 = (p + e + g + d) cos(α)", "sum of depths along the bore, seen along the stem", Provenance = Provenance.Definition, Validity = "pocket floor parallel to the valve head; depths at the middle of the pocket")]
    [return: Quantity("room at TDC with the valve shut", Dimension.Length, "mm", Symbol = "c0")]
    public static double RoomByParts(
        [Quantity("pocket depth", Dimension.Length, "mm", Symbol = "p", Min = 0)] double pocket,
        [Quantity("valve above the head face", Dimension.Length, "mm", Symbol = "e")] double recess,
        [Quantity("crushed gasket", Dimension.Length, "mm", Symbol = "g", Min = 0)] double gasket,
        [Quantity("piston below the deck", Dimension.Length, "mm", Symbol = "d")] double deck,
        [Quantity("stem angle from the cylinder axis", Dimension.Angle, "°", Symbol = "α", Min = -Math.PI / 3, Max = Math.PI / 3)] double stemAngle) =>
        (pocket + recess + gasket + deck) * Math.Cos(stemAngle);

    /// <summary>Room between an open valve and the piston at one crank angle, along the stem.</summary>
    /// <param name="tdcRoom">Room at TDC with the valve shut, m.</param>
    /// <param name="crankRadius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length, m.</param>
    /// <param name="stemAngle">Angle of the stem from the cylinder axis, rad.</param>
    /// <param name="lift">Lift of the valve at that angle, m.</param>
    /// <param name="angle">Crank angle after overlap TDC, rad.</param>
    [Formula("valve room at a crank angle", "c = c0 + x cos(α) - s; x = l + r - r cos(θ) - sqrt(l^2 - (r sin(θ))^2)", "geometry along the stem; exact slider-crank travel x", Provenance = Provenance.Definition, Validity = "pocket floor parallel to the valve head")]
    [return: Quantity("room between valve and piston", Dimension.Length, "mm", Symbol = "c")]
    public static double RoomAt(
        [Quantity("room at TDC with the valve shut", Dimension.Length, "mm", Symbol = "c0")] double tdcRoom,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0)] double crankRadius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0)] double rod,
        [Quantity("stem angle from the cylinder axis", Dimension.Angle, "°", Symbol = "α", Min = -Math.PI / 3, Max = Math.PI / 3)] double stemAngle,
        [Quantity("lift", Dimension.Length, "mm", Symbol = "s", Min = 0)] double lift,
        [Quantity("crank angle after overlap TDC", Dimension.Angle, "°", Symbol = "θ")] double angle)
    {
        FormulaDomainException.Unless(rod > crankRadius, "rod length: must be greater than the crank radius");
        return tdcRoom + (Math.Cos(stemAngle) * SliderCrank.Motion(crankRadius, rod, angle, 0).Travel) - lift;
    }
}
