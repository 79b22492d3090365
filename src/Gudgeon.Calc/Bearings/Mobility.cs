using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.RootFinding;

namespace Gudgeon.Calc.Bearings;

/// <summary>Mobility of a journal: dimensionless velocity under a unit load, along the load and across it.</summary>
/// <param name="Along">Component along the load.</param>
/// <param name="Across">Component a quarter turn on from the load.</param>
public readonly record struct MobilityVector(
    [Quantity("mobility along the load", Dimension.Number, Symbol = "Mz")] double Along,
    [Quantity("mobility across the load", Dimension.Number, Symbol = "Mk")] double Across);

/// <summary>Mobility method for journal bearings under moving loads, short film.</summary>
public static class Mobility
{
    private const string Short = "Short film, half film pressure: length over diameter up to about 1/2.";
    private const int Panels = 32;

    /// <summary>Mobility by Booker's closed form.</summary>
    /// <param name="along">Eccentricity ratio along the load.</param>
    /// <param name="across">Eccentricity ratio across the load.</param>
    /// <param name="slenderness">Length over diameter.</param>
    [Formula(
        "journal mobility, closed form",
        "Mz = (1 - ζ)^2.5 / (π λ^2); Mk = -4 κ (1 - ζ)^1.5 / (π^2 λ^2)",
        "Booker, ASME J. Basic Eng. 87 (1965) 537",
        Provenance = Provenance.FromMemory,
        Validity = Short + " Within 6 % of the exact short film.")]
    public static MobilityVector ClosedForm(
        [Quantity("eccentricity along the load", Dimension.Number, Symbol = "ζ", Above = -1, Below = 1)] double along,
        [Quantity("eccentricity across the load", Dimension.Number, Symbol = "κ", Above = -1, Below = 1)] double across,
        [Quantity("length over diameter", Dimension.Number, Symbol = "λ", Above = 0)] double slenderness)
    {
        RequireInside(along, across);
        var room = 1 - along;
        var root = Math.Sqrt(room);
        var square = slenderness * slenderness;
        return new MobilityVector(room * room * root / (Math.PI * square), -4 * across * room * root / (Math.PI * Math.PI * square));
    }

    /// <summary>Mobility of the exact short film, by inverting the squeeze-film force.</summary>
    /// <param name="along">Eccentricity ratio along the load.</param>
    /// <param name="across">Eccentricity ratio across the load.</param>
    /// <param name="slenderness">Length over diameter.</param>
    [Formula(
        "journal mobility, exact short film",
        "F = μ R L^3 / c^2 Σ (v n) n / h^3 over v n > 0; h = 1 - e n; M = v / (2 λ^2 |Σ|)",
        "Short-film Reynolds equation; Booker, J. Lubr. Technol. 93 (1971) 168 (method)",
        Provenance = Provenance.FromMemory,
        Validity = Short)]
    public static MobilityVector Exact(
        [Quantity("eccentricity along the load", Dimension.Number, Symbol = "ζ", Above = -1, Below = 1)] double along,
        [Quantity("eccentricity across the load", Dimension.Number, Symbol = "κ", Above = -1, Below = 1)] double across,
        [Quantity("length over diameter", Dimension.Number, Symbol = "λ", Above = 0)] double slenderness)
    {
        RequireInside(along, across);

        // The film's force has a positive part along the velocity, so the velocity lies within a quarter turn of the load.
        var direction = across == 0
            ? 0
            : Brent.FindRoot(a => SqueezeForce(along, across, a).Across, (-Math.PI / 2) + 1e-9, (Math.PI / 2) - 1e-9, 1e-10, 200);
        var size = 1 / (2 * slenderness * slenderness * SqueezeForce(along, across, direction).Along);
        var (sin, cos) = Math.SinCos(direction);
        return new MobilityVector(size * cos, size * sin);
    }

    /// <summary>Integral of (v·n) n / h³ over the half circle that the journal moves towards, v a unit vector.</summary>
    private static (double Along, double Across) SqueezeForce(double along, double across, double direction)
    {
        const double Width = Math.PI / Panels;
        double forceAlong = 0, forceAcross = 0;
        for (var i = 0; i < Panels; i++)
        {
            var middle = direction - (Math.PI / 2) + ((i + 0.5) * Width);
            Add(along, across, direction, middle - (GaussPoint * Width / 2), Width / 2, ref forceAlong, ref forceAcross);
            Add(along, across, direction, middle + (GaussPoint * Width / 2), Width / 2, ref forceAlong, ref forceAcross);
        }

        return (forceAlong, forceAcross);
    }

    private const double GaussPoint = 0.5773502691896257;

    private static void Add(double along, double across, double direction, double angle, double weight, ref double forceAlong, ref double forceAcross)
    {
        var (sin, cos) = Math.SinCos(angle);
        var film = 1 - (along * cos) - (across * sin);
        var pressure = weight * Math.Cos(angle - direction) / (film * film * film);
        forceAlong += pressure * cos;
        forceAcross += pressure * sin;
    }

    /// <summary>Time for a steady load to squeeze the film from one eccentricity to another without rotation, s.</summary>
    /// <param name="from">Eccentricity ratio at the start.</param>
    /// <param name="to">Eccentricity ratio at the end.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    /// <param name="load">Load, N.</param>
    /// <param name="diameter">Journal diameter, m.</param>
    /// <param name="length">Bearing length, m.</param>
    /// <param name="clearance">Radial clearance, m.</param>
    [Formula(
        "squeeze time of a journal",
        "t = μ L D (D / (2 c))^2 / W 2 π / 3 (L / D)^2 ((1 - ε2)^-1.5 - (1 - ε1)^-1.5)",
        "Booker, ASME J. Basic Eng. 87 (1965) 537: integral of the closed-form mobility",
        Provenance = Provenance.FromMemory,
        Validity = Short)]
    [return: Quantity("squeeze time", Dimension.Time, "s", Symbol = "t")]
    public static double SqueezeTime(
        [Quantity("eccentricity ratio at the start", Dimension.Number, Symbol = "ε1", Min = 0, Below = 1)] double from,
        [Quantity("eccentricity ratio at the end", Dimension.Number, Symbol = "ε2", Min = 0, Below = 1)] double to,
        [Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "μ", Above = 0)] double viscosity,
        [Quantity("load", Dimension.Force, "N", Symbol = "W", Above = 0)] double load,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("bearing length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("radial clearance", Dimension.Length, "µm", Symbol = "c", Above = 0)] double clearance)
    {
        FormulaDomainException.Unless(to >= from, "eccentricity ratio at the end: must not be below the start");
        var ratio = diameter / (2 * clearance);
        var slenderness = length / diameter;
        return viscosity * length * diameter * ratio * ratio / load * SqueezeNumber(from, to, slenderness);
    }

    /// <summary>Dimensionless squeeze time W (c/R)² t / (μ L D).</summary>
    /// <param name="from">Eccentricity ratio at the start.</param>
    /// <param name="to">Eccentricity ratio at the end.</param>
    /// <param name="slenderness">Length over diameter.</param>
    [Formula(
        "squeeze number of a journal",
        "W (c / R)^2 t / (μ L D) = 2 π / 3 λ^2 ((1 - ε2)^-1.5 - (1 - ε1)^-1.5)",
        "Booker, ASME J. Basic Eng. 87 (1965) 537: integral of the closed-form mobility",
        Provenance = Provenance.FromMemory,
        Validity = Short)]
    [return: Quantity("squeeze number", Dimension.Number)]
    public static double SqueezeNumber(
        [Quantity("eccentricity ratio at the start", Dimension.Number, Symbol = "ε1", Min = 0, Below = 1)] double from,
        [Quantity("eccentricity ratio at the end", Dimension.Number, Symbol = "ε2", Min = 0, Below = 1)] double to,
        [Quantity("length over diameter", Dimension.Number, Symbol = "λ", Above = 0)] double slenderness) =>
        Math.Tau / 3 * slenderness * slenderness * (Math.Pow(1 - to, -1.5) - Math.Pow(1 - from, -1.5));

    private static void RequireInside(double along, double across) =>
        FormulaDomainException.Unless((along * along) + (across * across) < 1, "eccentricity: along and across together must stay inside the clearance");
}
