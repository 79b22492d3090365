using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>A taper pulled together by a nut.</summary>
/// <param name="HalfAngle">Half angle of the taper, rad.</param>
/// <param name="NormalForce">Sum of the forces normal to the taper, N.</param>
/// <param name="Pressure">Pressure on the taper, Pa.</param>
/// <param name="Torque">Slip torque, N·m.</param>
/// <param name="PullOff">Force to pull the taper apart with the nut slack, N; negative when it springs off by itself.</param>
public readonly record struct TaperGrip(
    [Quantity("half angle", Dimension.Angle, "°", Symbol = "β")] double HalfAngle,
    [Quantity("normal force", Dimension.Force, "kN", Symbol = "N")] double NormalForce,
    [Quantity("pressure", Dimension.Pressure, "MPa", Symbol = "p")] double Pressure,
    [Quantity("slip torque", Dimension.Torque, "N·m", Symbol = "T")] double Torque,
    [Quantity("pull-off force", Dimension.Force, "kN", Symbol = "Fo")] double PullOff);

/// <summary>Taper fits: crank ends, flywheels, pulleys. The taper is given as diameter change over length: 1:10 is 0.1.</summary>
public static class TaperFit
{
    /// <summary>Pressure, slip torque and pull-off force of a taper under nut force.</summary>
    /// <param name="taper">Diameter change over length.</param>
    /// <param name="meanDiameter">Mean diameter of the contact, m.</param>
    /// <param name="length">Axial length of the contact, m.</param>
    /// <param name="force">Axial force of the nut, N.</param>
    /// <param name="friction">Friction on the taper.</param>
    [Formula("taper fit", "β = atan(C / 2); N = F / (sin(β) + µ cos(β)); p = N cos(β) / (π D L); T = µ N D / 2; Fo = N (µ cos(β) - sin(β))", "equilibrium on the cone; Decker, Maschinenelemente, taper joints", Provenance = Provenance.FromMemory, Validity = "full contact, friction fully used while seating; self-locking while the pull-off force is positive", Caution = "A taper that is pulled off jumps: leave the nut on by a few threads.")]
    public static TaperGrip Grip(
        [Quantity("taper", Dimension.Number, Symbol = "C", Above = 0, Below = 2, Help = "diameter change over length: 0.1 for 1:10")] double taper,
        [Quantity("mean diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("contact length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("nut force", Dimension.Force, "kN", Symbol = "F", Min = 0)] double force,
        [Quantity("friction", Dimension.Number, Symbol = "µ", Min = 0, Max = 1)] double friction = 0.12)
    {
        var half = Math.Atan(taper / 2);
        var (sine, cosine) = Math.SinCos(half);
        var normal = force / (sine + (friction * cosine));
        return new TaperGrip(
            half,
            normal,
            normal * cosine / (Math.PI * meanDiameter * length),
            friction * normal * meanDiameter / 2,
            normal * ((friction * cosine) - sine));
    }

    /// <summary>Axial draw-up that gives a diametral interference, m.</summary>
    /// <param name="interference">Diametral interference wanted, m.</param>
    /// <param name="taper">Diameter change over length.</param>
    [Formula("taper draw-up", "s = U / C", "geometry of the taper", Provenance = Provenance.Definition)]
    [return: Quantity("draw-up", Dimension.Length, "mm", Symbol = "s")]
    public static double DrawUp(
        [Quantity("interference", Dimension.Length, "mm", Symbol = "U", Min = 0)] double interference,
        [Quantity("taper", Dimension.Number, Symbol = "C", Above = 0, Below = 2, Help = "diameter change over length: 0.1 for 1:10")] double taper) =>
        interference / taper;

    /// <summary>Diametral interference from a measured draw-up, m.</summary>
    /// <param name="drawUp">Axial draw-up from first contact, m.</param>
    /// <param name="taper">Diameter change over length.</param>
    [Formula("interference from draw-up", "U = s C", "geometry of the taper", Provenance = Provenance.Definition)]
    [return: Quantity("interference", Dimension.Length, "mm", Symbol = "U")]
    public static double Interference(
        [Quantity("draw-up", Dimension.Length, "mm", Symbol = "s", Min = 0)] double drawUp,
        [Quantity("taper", Dimension.Number, Symbol = "C", Above = 0, Below = 2, Help = "diameter change over length: 0.1 for 1:10")] double taper) =>
        drawUp * taper;
}
