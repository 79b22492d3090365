using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Bearings;

/// <summary>Rolling elements: the exponent of the load-life law.</summary>
public enum RollingElement
{
    /// <summary>Balls, exponent 3.</summary>
    Ball,

    /// <summary>Rollers and needles, exponent 10/3.</summary>
    Roller,
}

/// <summary>Reliability at which a life is stated.</summary>
public enum LifeReliability
{
    /// <summary>90 %.</summary>
    R90,

    /// <summary>95 %.</summary>
    R95,

    /// <summary>96 %.</summary>
    R96,

    /// <summary>97 %.</summary>
    R97,

    /// <summary>98 %.</summary>
    R98,

    /// <summary>99 %.</summary>
    R99,
}

/// <summary>Edition of the reliability table.</summary>
public enum LifeTable
{
    /// <summary>Table of ISO 281:1990, still in bearing makers' catalogues.</summary>
    Catalogue,

    /// <summary>Table of ISO 281:2007 (recalled).</summary>
    Iso2007,
}

/// <summary>Life of a rolling bearing.</summary>
/// <param name="Revolutions">Life in millions of revolutions.</param>
/// <param name="Time">Life at the given speed, s.</param>
public readonly record struct BearingLife(
    [Quantity("life in millions of revolutions", Dimension.Number, Symbol = "L10")] double Revolutions,
    [Quantity("life at speed", Dimension.Time, "h", Symbol = "Lh")] double Time);

/// <summary>Life of rolling bearings.</summary>
public static class RollingLife
{
    private const string Iso = "ISO 281:2007";

    /// <summary>Basic rating life.</summary>
    /// <param name="rating">Basic dynamic load rating, N.</param>
    /// <param name="load">Equivalent load, N.</param>
    /// <param name="speed">Speed, rad/s.</param>
    /// <param name="element">Balls or rollers.</param>
    /// <param name="factor">Product of the life factors a1 and aISO.</param>
    [Formula("rolling bearing life", "L10 = a (C / P)^p; Lh = L10 10^6 2 π / w", Iso + ", basic and modified rating life")]
    public static BearingLife Life(
        [Quantity("basic dynamic load rating", Dimension.Force, "kN", Symbol = "C", Above = 0)] double rating,
        [Quantity("equivalent load", Dimension.Force, "kN", Symbol = "P", Above = 0)] double load,
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double speed,
        [Quantity("rolling element", Dimension.Number, Symbol = "p")] RollingElement element = RollingElement.Ball,
        [Quantity("life factor", Dimension.Number, Symbol = "a", Above = 0)] double factor = 1)
    {
        var millions = factor * Math.Pow(rating / load, Exponent(element));
        return new BearingLife(millions, millions * 1e6 * Math.Tau / speed);
    }

    /// <summary>Equivalent dynamic load, N.</summary>
    /// <param name="radial">Radial load, N.</param>
    /// <param name="axial">Axial load, N.</param>
    /// <param name="x">Radial factor X.</param>
    /// <param name="y">Axial factor Y.</param>
    /// <param name="ring">Ring rotation factor V: 1, or 1.2 in old books when the outer ring turns.</param>
    [Formula("equivalent bearing load", "P = X V Fr + Y Fa", Iso + "; rotation factor of older editions")]
    [return: Quantity("equivalent load", Dimension.Force, "N", Symbol = "P")]
    public static double EquivalentLoad(
        [Quantity("radial load", Dimension.Force, "N", Symbol = "Fr", Min = 0)] double radial,
        [Quantity("axial load", Dimension.Force, "N", Symbol = "Fa", Min = 0)] double axial,
        [Quantity("radial factor", Dimension.Number, Symbol = "X", Min = 0)] double x,
        [Quantity("axial factor", Dimension.Number, Symbol = "Y", Min = 0)] double y,
        [Quantity("rotation factor", Dimension.Number, Symbol = "V", Min = 1)] double ring = 1) =>
        (x * ring * radial) + (y * axial);

    /// <summary>Steady load that wears a bearing as a list of loads does, N.</summary>
    /// <param name="loads">Equivalent loads, N.</param>
    /// <param name="shares">Share of the revolutions run at each; any unit, they are made to add up to one.</param>
    /// <param name="element">Balls or rollers.</param>
    [Formula("mean bearing load", "Pm = (Σ Pi^p qi / Σ qi)^(1 / p)", "Linear damage over revolutions; makers' catalogues, after " + Iso, Provenance = Provenance.FromMemory)]
    [return: Quantity("mean equivalent load", Dimension.Force, "kN", Symbol = "Pm")]
    public static double MeanLoad(
        [Quantity("equivalent loads", Dimension.Force, "kN", Symbol = "Pi", Min = 0)] double[] loads,
        [Quantity("shares of the revolutions", Dimension.Number, Symbol = "qi", Above = 0)] double[] shares,
        [Quantity("rolling element", Dimension.Number, Symbol = "p")] RollingElement element = RollingElement.Ball)
    {
        FormulaDomainException.Unless(loads.Length == shares.Length, "shares of the revolutions: one for each load is wanted");
        var exponent = Exponent(element);
        double damage = 0, total = 0;
        for (var i = 0; i < loads.Length; i++)
        {
            damage += shares[i] * Math.Pow(loads[i], exponent);
            total += shares[i];
        }

        return Math.Pow(damage / total, 1 / exponent);
    }

    /// <summary>Load rating needed for a life, N.</summary>
    /// <param name="load">Equivalent load, N.</param>
    /// <param name="life">Wanted life, s.</param>
    /// <param name="speed">Speed, rad/s.</param>
    /// <param name="element">Balls or rollers.</param>
    [Formula("rolling bearing rating for a life", "C = P (Lh w / (2 π 10^6))^(1 / p)", Iso + ", basic rating life")]
    [return: Quantity("basic dynamic load rating", Dimension.Force, "kN", Symbol = "C")]
    public static double RatingFor(
        [Quantity("equivalent load", Dimension.Force, "kN", Symbol = "P", Above = 0)] double load,
        [Quantity("wanted life", Dimension.Time, "h", Symbol = "Lh", Above = 0)] double life,
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double speed,
        [Quantity("rolling element", Dimension.Number, Symbol = "p")] RollingElement element = RollingElement.Ball) =>
        load * Math.Pow(life * speed / (Math.Tau * 1e6), 1 / Exponent(element));

    /// <summary>Life factor for reliability.</summary>
    /// <param name="reliability">Reliability.</param>
    /// <param name="table">Edition of the table.</param>
    [Formula("bearing reliability factor", "a1 from table", "ISO 281:1990 as in makers' catalogues; ISO 281:2007 recalled")]
    [return: Quantity("life factor for reliability", Dimension.Number, Symbol = "a1")]
    public static double ReliabilityFactor(
        [Quantity("reliability", Dimension.Number)] LifeReliability reliability,
        [Quantity("table", Dimension.Number)] LifeTable table = LifeTable.Catalogue) => (reliability, table) switch
        {
            (LifeReliability.R90, _) => 1,
            (LifeReliability.R95, LifeTable.Catalogue) => 0.62,
            (LifeReliability.R96, LifeTable.Catalogue) => 0.53,
            (LifeReliability.R97, LifeTable.Catalogue) => 0.44,
            (LifeReliability.R98, LifeTable.Catalogue) => 0.33,
            (LifeReliability.R99, LifeTable.Catalogue) => 0.21,
            (LifeReliability.R95, _) => 0.64,
            (LifeReliability.R96, _) => 0.55,
            (LifeReliability.R97, _) => 0.47,
            (LifeReliability.R98, _) => 0.37,
            _ => 0.25,
        };

    /// <summary>Viscosity a rolling bearing wants at its running temperature, m²/s.</summary>
    /// <param name="speed">Speed, rad/s.</param>
    /// <param name="meanDiameter">Mean of bore and outer diameter, m.</param>
    [Formula(
        "rolling bearing reference viscosity",
        "below 1000 rpm ν1 = 45000 n^-0.83 dm^-0.5; from 1000 rpm ν1 = 4500 n^-0.5 dm^-0.5 (n in rpm, dm in mm, ν1 in mm²/s)",
        Iso + ", viscosity ratio",
        Provenance = Provenance.FromMemory,
        Caution = "Makers' diagrams read up to 18 % lower: do not mix the two.")]
    [return: Quantity("reference viscosity", Dimension.KinematicViscosity, "mm²/s", Symbol = "ν1")]
    public static double ReferenceViscosity(
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "n", Above = 0)] double speed,
        [Quantity("mean bearing diameter", Dimension.Length, "mm", Symbol = "dm", Above = 0)] double meanDiameter)
    {
        var rpm = speed * 30 / Math.PI;
        var law = rpm < 1000 ? 45_000 * Math.Pow(rpm, -0.83) : 4500 / Math.Sqrt(rpm);
        return law / Math.Sqrt(meanDiameter * 1000) * 1e-6;
    }

    /// <summary>Viscosity ratio of a rolling bearing.</summary>
    /// <param name="viscosity">Kinematic viscosity at the running temperature, m²/s.</param>
    /// <param name="speed">Speed, rad/s.</param>
    /// <param name="meanDiameter">Mean of bore and outer diameter, m.</param>
    [Formula("rolling bearing viscosity ratio", "κ = ν / ν1", Iso, Provenance = Provenance.FromMemory)]
    [return: Quantity("viscosity ratio", Dimension.Number, Symbol = "κ")]
    public static double ViscosityRatio(
        [Quantity("kinematic viscosity", Dimension.KinematicViscosity, "mm²/s", Symbol = "ν", Above = 0)] double viscosity,
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "n", Above = 0)] double speed,
        [Quantity("mean bearing diameter", Dimension.Length, "mm", Symbol = "dm", Above = 0)] double meanDiameter) =>
        viscosity / ReferenceViscosity(speed, meanDiameter);

    /// <summary>Life modification factor aISO of radial bearings.</summary>
    /// <param name="ratio">Viscosity ratio; counted as 4 above 4.</param>
    /// <param name="contamination">Contamination factor times fatigue load limit over equivalent load.</param>
    /// <param name="element">Balls or rollers.</param>
    [Formula(
        "bearing life modification factor",
        "ball, 1 ≤ κ: a = 0.1 (1 - (2.5671 - 1.9987 / κ^0.071739)^0.83 x^(1/3))^-9.3; roller, 1 ≤ κ: a = 0.1 (1 - (1.5859 - 1.2348 / κ^0.071739) x^0.4)^-9.185",
        Iso + ", radial bearings; a never above 50",
        Provenance = Provenance.FromMemory,
        Validity = "Viscosity ratio from 0.1; below 1 the two other branches of the standard are used.")]
    [return: Quantity("life modification factor", Dimension.Number, Symbol = "a")]
    public static double LifeFactor(
        [Quantity("viscosity ratio", Dimension.Number, Symbol = "κ", Min = 0.1)] double ratio,
        [Quantity("contamination times fatigue limit over load", Dimension.Number, Symbol = "x", Min = 0)] double contamination,
        [Quantity("rolling element", Dimension.Number)] RollingElement element = RollingElement.Ball)
    {
        const double Ceiling = 50;
        var ball = element == RollingElement.Ball;
        var film = Film(Math.Min(ratio, 4), ball);
        var left = ball
            ? 1 - (Math.Pow(film, 0.83) * Math.Cbrt(contamination))
            : 1 - (film * Math.Pow(contamination, 0.4));
        return left <= 0 ? Ceiling : Math.Min(Ceiling, 0.1 * Math.Pow(left, ball ? -9.3 : -9.185));
    }

    /// <summary>Speed factor: speed times mean diameter, m/s as rad/s times m.</summary>
    /// <param name="speed">Speed, rad/s.</param>
    /// <param name="diameter">Mean (or bore) diameter, m.</param>
    [Formula(
        "rolling bearing speed factor",
        "n dm, rpm times mm",
        "Makers' guidance: below 150 000 on the bore plain grease, to 400 000 fast grease or oil, above it jet oil and precision bearings",
        Provenance = Provenance.CommonPractice)]
    [return: Quantity("speed factor, rpm times mm", Dimension.Number)]
    public static double SpeedFactor(
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "n", Min = 0)] double speed,
        [Quantity("diameter", Dimension.Length, "mm", Symbol = "dm", Above = 0)] double diameter) =>
        speed * 30 / Math.PI * diameter * 1000;

    private static double Exponent(RollingElement element) => element == RollingElement.Ball ? 3 : 10.0 / 3;

    private static double Film(double ratio, bool ball)
    {
        var (constant, starved, wet) = ball ? (2.5671, 2.2649, 1.9987) : (1.5859, 1.3993, 1.2348);
        return ratio switch
        {
            < 0.4 => constant - (starved / Math.Pow(ratio, 0.054381)),
            < 1 => constant - (wet / Math.Pow(ratio, 0.19087)),
            _ => constant - (wet / Math.Pow(ratio, 0.071739)),
        };
    }
}
