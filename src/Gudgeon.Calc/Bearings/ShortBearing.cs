using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.RootFinding;

namespace Gudgeon.Calc.Bearings;

/// <summary>A short bearing at an eccentricity.</summary>
/// <param name="Load">Load number W c² / (μ ω R L³).</param>
/// <param name="Attitude">Attitude angle, rad.</param>
/// <param name="Sommerfeld">Sommerfeld number, for the length over diameter given.</param>
public readonly record struct ShortFilm(
    [Quantity("load number", Dimension.Number, Symbol = "Wn")] double Load,
    [Quantity("attitude angle", Dimension.Angle, "°", Symbol = "φ")] double Attitude,
    [Quantity("Sommerfeld number", Dimension.Number, Symbol = "S")] double Sommerfeld);

/// <summary>A loaded short bearing.</summary>
/// <param name="Eccentricity">Eccentricity ratio.</param>
/// <param name="Attitude">Attitude angle, rad.</param>
/// <param name="LeastFilm">Least film thickness, m.</param>
public readonly record struct ShortBearingState(
    [Quantity("eccentricity ratio", Dimension.Number, Symbol = "ε")] double Eccentricity,
    [Quantity("attitude angle", Dimension.Angle, "°", Symbol = "φ")] double Attitude,
    [Quantity("least film thickness", Dimension.Length, "µm", Symbol = "h0")] double LeastFilm);

/// <summary>Short journal bearings after Ocvirk: pressure falls off along the bearing only, half film.</summary>
public static class ShortBearing
{
    private const string Source = "DuBois & Ocvirk, NACA Report 1157 (1953)";
    private const string Short = "Length over diameter up to about 1/2. At 1/4 it gives 7 % less Sommerfeld number than the finite bearing at eccentricity 0.6 and 28 % less at 0.9.";

    /// <summary>Load number and attitude of a short bearing at an eccentricity.</summary>
    /// <param name="eccentricity">Eccentricity ratio.</param>
    /// <param name="slenderness">Length over diameter, for the Sommerfeld number.</param>
    [Formula(
        "short bearing load",
        "Wn = ε / (4 (1 - ε^2)^2) sqrt(16 ε^2 + π^2 (1 - ε^2)); tan(φ) = π sqrt(1 - ε^2) / (4 ε); S = 1 / (4 π Wn λ^2)",
        Source,
        Validity = Short)]
    public static ShortFilm Load(
        [Quantity("eccentricity ratio", Dimension.Number, Symbol = "ε", Above = 0, Below = 1)] double eccentricity,
        [Quantity("length over diameter", Dimension.Number, Symbol = "λ", Above = 0)] double slenderness = 0.5)
    {
        var load = LoadNumber(eccentricity);
        return new ShortFilm(load, Attitude(eccentricity), 1 / (4 * Math.PI * load * slenderness * slenderness));
    }

    /// <summary>Eccentricity and least film of a loaded short bearing.</summary>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    /// <param name="speed">Journal speed, rad/s.</param>
    /// <param name="load">Load, N.</param>
    /// <param name="diameter">Journal diameter, m.</param>
    /// <param name="length">Bearing length, m.</param>
    /// <param name="clearance">Radial clearance, m.</param>
    [Formula(
        "short bearing film",
        "W c^2 / (μ w (D / 2) L^3) = ε / (4 (1 - ε^2)^2) sqrt(16 ε^2 + π^2 (1 - ε^2)); h0 = c (1 - ε)",
        Source,
        Validity = Short)]
    public static ShortBearingState Film(
        [Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "μ", Above = 0)] double viscosity,
        [Quantity("journal speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double speed,
        [Quantity("load", Dimension.Force, "N", Symbol = "W", Above = 0)] double load,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("bearing length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("radial clearance", Dimension.Length, "µm", Symbol = "c", Above = 0)] double clearance)
    {
        var number = load * clearance * clearance / (viscosity * speed * diameter / 2 * length * length * length);
        const double Light = 1e-9;
        const double Heavy = 1 - 1e-6;
        FormulaDomainException.Unless(number > LoadNumber(Light) && number < LoadNumber(Heavy), "load: far outside what a film of this viscosity and clearance can carry");
        var eccentricity = Brent.FindRoot(e => Math.Log(LoadNumber(e) / number), Light, Heavy, 1e-13, 200);
        return new ShortBearingState(eccentricity, Attitude(eccentricity), clearance * (1 - eccentricity));
    }

    private static double LoadNumber(double e)
    {
        var rest = 1 - (e * e);
        return e / (4 * rest * rest) * Math.Sqrt((16 * e * e) + (Math.PI * Math.PI * rest));
    }

    private static double Attitude(double e) => Math.Atan2(Math.PI * Math.Sqrt(1 - (e * e)), 4 * e);
}
