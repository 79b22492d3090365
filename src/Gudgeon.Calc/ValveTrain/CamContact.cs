using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gears;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>A cam pressed on its follower.</summary>
/// <param name="Radius">Reduced radius of the two surfaces, m.</param>
/// <param name="HalfWidth">Half width of the contact, m.</param>
/// <param name="Peak">Greatest pressure, Pa.</param>
public readonly record struct CamPressure(
    [Quantity("reduced radius", Dimension.Length, "mm", Symbol = "R")] double Radius,
    [Quantity("half width of the contact", Dimension.Length, "µm", Symbol = "b")] double HalfWidth,
    [Quantity("greatest contact pressure", Dimension.Pressure, "MPa", Symbol = "pmax")] double Peak);

/// <summary>How a cam runs over a flat follower.</summary>
/// <param name="Sliding">Sliding speed, m/s.</param>
/// <param name="Entraining">Mean speed at which oil is drawn in, m/s; negative: from the other side.</param>
public readonly record struct CamRunning(
    [Quantity("sliding speed", Dimension.Speed, "m/s", Symbol = "vs")] double Sliding,
    [Quantity("entraining speed", Dimension.Speed, "m/s", Symbol = "u")] double Entraining);

/// <summary>Where a cam touches its follower, how sharp it is there and how hard it presses.</summary>
public static class CamContact
{
    private const string Hertz = "Hertz, contact of two parallel cylinders; Stachowiak & Batchelor, Engineering Tribology, 2nd ed., ch. 7";
    private const string Flat = "kinematics of the flat-faced follower";
    private const string PerRadian = "derivatives of the lift by cam angle, in mm per radian of cam and per radian squared";
    private const string Edges = "An even line load: a lobe that is not parallel to its follower presses far harder at one edge. Makers keep their own limits for each pair of materials.";

    /// <summary>Radius of curvature of a cam that lifts a flat follower, m; nought or negative: no such cam can be ground.</summary>
    /// <param name="baseRadius">Base circle radius, m.</param>
    /// <param name="lift">Lift of the follower, m.</param>
    /// <param name="curvature">Second derivative of the lift by cam angle, m/rad².</param>
    [Formula("cam radius on a flat follower", "ρ = Rb + s + s2", Flat + "; Norton, Cam Design and Manufacturing Handbook, radius of curvature, flat-faced follower", Provenance = Provenance.FromMemory, Validity = PerRadian, Caution = "Nought or negative means the lobe is undercut: a flat follower cannot be given this lift.")]
    [return: Quantity("radius of curvature of the cam", Dimension.Length, "mm", Symbol = "ρ")]
    public static double RadiusOnFlat(
        [Quantity("base circle radius", Dimension.Length, "mm", Symbol = "Rb", Above = 0)] double baseRadius,
        [Quantity("lift of the follower", Dimension.Length, "mm", Symbol = "s", Min = 0)] double lift,
        [Quantity("second derivative of the lift", Dimension.Length, "mm", Symbol = "s2", Help = "per cam radian squared, negative over the nose")] double curvature) =>
        baseRadius + lift + curvature;

    /// <summary>Radius of curvature of a cam that lifts a roller, or a round-faced follower in line with the cam's centre, m; negative: hollow; infinite: flat.</summary>
    /// <param name="baseRadius">Base circle radius, m.</param>
    /// <param name="followerRadius">Radius of the roller or the follower's face, m.</param>
    /// <param name="lift">Lift of the follower, m.</param>
    /// <param name="slope">First derivative of the lift by cam angle, m/rad.</param>
    /// <param name="curvature">Second derivative of the lift by cam angle, m/rad².</param>
    [Formula("cam radius on a round follower", "r = Rb + Rf + s; ρ = (r^2 + s1^2)^1.5 / (r^2 + 2 s1^2 - r s2) - Rf", "radius of curvature of a curve in polar coordinates, less that of the follower; Norton, Cam Design and Manufacturing Handbook, radius of curvature, roller follower", Provenance = Provenance.FromMemory, Validity = PerRadian + "; the follower moves straight through the cam's centre: for a finger an approximation", Caution = "A hollow flank (negative) needs a grinding wheel smaller than the hollow.")]
    [return: Quantity("radius of curvature of the cam", Dimension.Length, "mm", Symbol = "ρ")]
    public static double RadiusOnRound(
        [Quantity("base circle radius", Dimension.Length, "mm", Symbol = "Rb", Above = 0)] double baseRadius,
        [Quantity("radius of the follower", Dimension.Length, "mm", Symbol = "Rf", Above = 0)] double followerRadius,
        [Quantity("lift of the follower", Dimension.Length, "mm", Symbol = "s", Min = 0)] double lift,
        [Quantity("first derivative of the lift", Dimension.Length, "mm", Symbol = "s1", Help = "per cam radian")] double slope,
        [Quantity("second derivative of the lift", Dimension.Length, "mm", Symbol = "s2", Help = "per cam radian squared, negative over the nose")] double curvature)
    {
        var r = baseRadius + followerRadius + lift;
        var (length, turn) = ((r * r) + (slope * slope), (r * r) + (2 * slope * slope) - (r * curvature));
        return (Math.Sqrt(length) * length / turn) - followerRadius;
    }

    /// <summary>Least diameter of a bucket on whose face the whole contact line stays, m.</summary>
    /// <param name="slope">Greatest first derivative of the lift by cam angle, m/rad: how far the contact runs off the cam's centre line.</param>
    /// <param name="width">Width of the lobe, m; 0 for the middle of the contact alone.</param>
    /// <param name="offset">Offset of the lobe along the camshaft from the bucket's axis, m.</param>
    [Formula("bucket face for a cam", "D = 2 sqrt(s1^2 + (b / 2 + c)^2)", Flat + ": the contact stands ds/dφ off the axis", Provenance = Provenance.Definition, Validity = "bucket axis through the cam's centre line; its chamfer comes on top", Caution = "A contact that runs over the edge of the bucket digs in and breaks it.")]
    [return: Quantity("least diameter of the bucket's face", Dimension.Length, "mm", Symbol = "D")]
    public static double BucketFace(
        [Quantity("greatest first derivative of the lift", Dimension.Length, "mm", Symbol = "s1", Min = 0, Help = "per cam radian")] double slope,
        [Quantity("width of the lobe", Dimension.Length, "mm", Symbol = "b", Min = 0, Help = "0 for the middle of the contact alone")] double width,
        [Quantity("offset of the lobe", Dimension.Length, "mm", Symbol = "c", Min = 0)] double offset = 0)
    {
        var along = (width / 2) + offset;
        return 2 * Math.Sqrt((slope * slope) + (along * along));
    }

    /// <summary>Contact pressure of a cam on a flat follower.</summary>
    /// <param name="load">Force between cam and follower, N.</param>
    /// <param name="width">Width of the contact, m.</param>
    /// <param name="camRadius">Radius of curvature of the cam there, m.</param>
    /// <param name="reduced">Reduced modulus E', Pa.</param>
    [Formula("cam contact pressure on a flat follower", "R = ρ; pmax = sqrt(F Er / (2 π L R))", Hertz, Caution = Edges)]
    public static CamPressure PressureOnFlat(
        [Quantity("contact force", Dimension.Force, "N", Symbol = "F", Above = 0)] double load,
        [Quantity("width of the contact", Dimension.Length, "mm", Symbol = "L", Above = 0)] double width,
        [Quantity("radius of curvature of the cam", Dimension.Length, "mm", Symbol = "ρ", Above = 0)] double camRadius,
        [Quantity("reduced modulus", Dimension.Pressure, "GPa", Symbol = "Er", Above = 0)] double reduced = 230.77e9) =>
        Pressure(load / width, camRadius, reduced);

    /// <summary>Contact pressure of a cam on a roller, a round follower or a finger's pad. Refuses a hollow cam that the follower does not fit.</summary>
    /// <param name="load">Force between cam and follower, N.</param>
    /// <param name="width">Width of the contact, m.</param>
    /// <param name="camRadius">Radius of curvature of the cam there, m; negative where it is hollow.</param>
    /// <param name="followerRadius">Radius of the follower, m.</param>
    /// <param name="reduced">Reduced modulus E', Pa.</param>
    [Formula("cam contact pressure on a round follower", "1 / R = 1 / ρ + 1 / Rf; pmax = sqrt(F Er / (2 π L R))", Hertz, Caution = Edges)]
    public static CamPressure PressureOnRound(
        [Quantity("contact force", Dimension.Force, "N", Symbol = "F", Above = 0)] double load,
        [Quantity("width of the contact", Dimension.Length, "mm", Symbol = "L", Above = 0)] double width,
        [Quantity("radius of curvature of the cam", Dimension.Length, "mm", Symbol = "ρ")] double camRadius,
        [Quantity("radius of the follower", Dimension.Length, "mm", Symbol = "Rf", Above = 0)] double followerRadius,
        [Quantity("reduced modulus", Dimension.Pressure, "GPa", Symbol = "Er", Above = 0)] double reduced = 230.77e9)
    {
        FormulaDomainException.Unless(camRadius > 0 || camRadius < -followerRadius, "radius of curvature of the cam: must be positive, or a hollow wider than the follower");
        return Pressure(load / width, 1 / ((1 / camRadius) + (1 / followerRadius)), reduced);
    }

    /// <summary>Sliding and entraining speed of a cam on a flat follower that does not turn.</summary>
    /// <param name="baseRadius">Base circle radius, m.</param>
    /// <param name="lift">Lift of the follower, m.</param>
    /// <param name="curvature">Second derivative of the lift by cam angle, m/rad².</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    [Formula("cam entraining speed", "vs = w (Rb + s); u = w (Rb + s + 2 s2) / 2", "kinematics of the flat-faced follower: the contact runs at w ρ over the cam and at w s2 over the follower; Taylor (ed.), Engine Tribology (1993), cams and tappets", Provenance = Provenance.FromMemory, Validity = PerRadian, Caution = "Where it passes through nought no oil is drawn in: a cam radius of half the height (Rb + s) does that at the nose.")]
    public static CamRunning Running(
        [Quantity("base circle radius", Dimension.Length, "mm", Symbol = "Rb", Above = 0)] double baseRadius,
        [Quantity("lift of the follower", Dimension.Length, "mm", Symbol = "s", Min = 0)] double lift,
        [Quantity("second derivative of the lift", Dimension.Length, "mm", Symbol = "s2", Help = "per cam radian squared, negative over the nose")] double curvature,
        [Quantity("cam speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed) =>
        new(speed * (baseRadius + lift), speed * (baseRadius + lift + (2 * curvature)) / 2);

    private static CamPressure Pressure(double lineLoad, double radius, double reduced)
    {
        var contact = HertzContact.Line(lineLoad, radius, reduced);
        return new CamPressure(radius, contact.HalfWidth, contact.Peak);
    }
}
