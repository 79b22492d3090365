using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gears;

/// <summary>Elastohydrodynamic film and its dimensionless groups.</summary>
/// <param name="LeastFilm">Least film thickness, m.</param>
/// <param name="CentralFilm">Film in the middle of the contact, m; 0 where the formula gives none.</param>
/// <param name="Speed">Speed parameter U.</param>
/// <param name="Material">Material parameter G.</param>
/// <param name="Load">Load parameter W.</param>
public readonly record struct FilmThickness(
    [Quantity("least film thickness", Dimension.Length, "µm", Symbol = "hmin")] double LeastFilm,
    [Quantity("central film thickness", Dimension.Length, "µm", Symbol = "hc")] double CentralFilm,
    [Quantity("speed parameter", Dimension.Number, Symbol = "U")] double Speed,
    [Quantity("material parameter", Dimension.Number, Symbol = "G")] double Material,
    [Quantity("load parameter", Dimension.Number, Symbol = "W")] double Load);

/// <summary>Most loaded ball on the inner race of a ball bearing.</summary>
/// <param name="Radius">Reduced radius along rolling, m.</param>
/// <param name="Ellipticity">Ellipticity of the contact.</param>
/// <param name="Entrainment">Mean surface speed, m/s.</param>
/// <param name="BallLoad">Load of the most loaded ball, N.</param>
/// <param name="Peak">Greatest contact pressure, Pa.</param>
/// <param name="LeastFilm">Least film thickness, m.</param>
public readonly record struct RaceContact(
    [Quantity("reduced radius along rolling", Dimension.Length, "mm", Symbol = "Rx")] double Radius,
    [Quantity("ellipticity", Dimension.Number, Symbol = "k")] double Ellipticity,
    [Quantity("mean surface speed", Dimension.Speed, "m/s", Symbol = "u")] double Entrainment,
    [Quantity("load of the most loaded ball", Dimension.Force, "N", Symbol = "F")] double BallLoad,
    [Quantity("greatest contact pressure", Dimension.Pressure, "MPa", Symbol = "pmax")] double Peak,
    [Quantity("least film thickness", Dimension.Length, "µm", Symbol = "hmin")] double LeastFilm);

/// <summary>Published fits of the ellipticity of a contact.</summary>
public enum EllipticityFit
{
    /// <summary>Power 2/π of the ratio of radii: exact for equal radii.</summary>
    PowerTwoOverPi,

    /// <summary>1.0339 times the power 0.636 of the ratio of radii, the earlier fit.</summary>
    Fit1977,
}

/// <summary>Elastohydrodynamic oil films of gears, cams and rolling bearings.</summary>
public static class OilFilm
{
    private const string Hamrock = "Hamrock & Dowson, J. Lubr. Technol. 99 (1977) 264";
    private const string Conventions = "Speed is the mean of the two surface speeds; radius is the reduced radius; Er is twice the contact modulus. Other definitions change the film by factors.";

    /// <summary>Ellipticity of a contact from its two reduced radii.</summary>
    /// <param name="along">Reduced radius along rolling, m.</param>
    /// <param name="across">Reduced radius across rolling, m.</param>
    /// <param name="fit">Which published fit.</param>
    [Formula(
        "ellipticity of a contact",
        "k = (Ry / Rx)^(2 / π), or k = 1.0339 (Ry / Rx)^0.636",
        "Hamrock & Brewe, J. Lubr. Technol. 105 (1983); " + Hamrock,
        Provenance = Provenance.FromMemory,
        Caution = "For a ball on a flat the earlier fit gives 1.034 instead of 1 and a film 2 % thicker.")]
    [return: Quantity("ellipticity", Dimension.Number, Symbol = "k")]
    public static double Ellipticity(
        [Quantity("reduced radius along rolling", Dimension.Length, "mm", Symbol = "Rx", Above = 0)] double along,
        [Quantity("reduced radius across rolling", Dimension.Length, "mm", Symbol = "Ry", Above = 0)] double across,
        [Quantity("fit", Dimension.Number)] EllipticityFit fit = EllipticityFit.PowerTwoOverPi) => fit == EllipticityFit.PowerTwoOverPi
        ? Math.Pow(across / along, 2 / Math.PI)
        : 1.0339 * Math.Pow(across / along, 0.636);

    /// <summary>Film of an elliptical or point contact.</summary>
    /// <param name="load">Load, N.</param>
    /// <param name="speed">Mean of the two surface speeds, m/s.</param>
    /// <param name="radius">Reduced radius along rolling, m.</param>
    /// <param name="viscosity">Dynamic viscosity at the inlet, Pa·s.</param>
    /// <param name="pressureCoefficient">Pressure coefficient of viscosity, m²/N; about 2e-8 for mineral oil.</param>
    /// <param name="ellipticity">Ellipticity; 1 for a ball on a flat.</param>
    /// <param name="reduced">Reduced modulus, Pa.</param>
    [Formula(
        "oil film of an elliptical contact",
        "U = η u / (Er Rx); G = α Er; W = F / (Er Rx^2); hmin = 3.63 Rx U^0.68 G^0.49 W^-0.073 (1 - exp(-0.68 k)); hc = 2.69 Rx U^0.67 G^0.53 W^-0.067 (1 - 0.61 exp(-0.73 k))",
        Hamrock,
        Validity = "Fully flooded, isothermal, smooth, hard bodies.",
        Caution = Conventions)]
    public static FilmThickness Elliptical(
        [Quantity("load", Dimension.Force, "N", Symbol = "F", Above = 0)] double load,
        [Quantity("mean surface speed", Dimension.Speed, "m/s", Symbol = "u", Above = 0)] double speed,
        [Quantity("reduced radius along rolling", Dimension.Length, "mm", Symbol = "Rx", Above = 0)] double radius,
        [Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "η", Above = 0)] double viscosity,
        [Quantity("pressure coefficient of viscosity, m²/N", Dimension.Number, Symbol = "α", Above = 0, Below = 1e-6)] double pressureCoefficient = 2.2e-8,
        [Quantity("ellipticity", Dimension.Number, Symbol = "k", Min = 1)] double ellipticity = 1,
        [Quantity("reduced modulus", Dimension.Pressure, "GPa", Symbol = "Er", Above = 0)] double reduced = 230.77e9)
    {
        var u = viscosity * speed / (reduced * radius);
        var g = pressureCoefficient * reduced;
        var w = load / (reduced * radius * radius);
        var least = 3.63 * Math.Pow(u, 0.68) * Math.Pow(g, 0.49) * Math.Pow(w, -0.073) * (1 - Math.Exp(-0.68 * ellipticity));
        var central = 2.69 * Math.Pow(u, 0.67) * Math.Pow(g, 0.53) * Math.Pow(w, -0.067) * (1 - (0.61 * Math.Exp(-0.73 * ellipticity)));
        return new FilmThickness(least * radius, central * radius, u, g, w);
    }

    /// <summary>Film of a line contact: gear teeth, rollers, flat tappets.</summary>
    /// <param name="lineLoad">Load for its length, N/m.</param>
    /// <param name="speed">Mean of the two surface speeds, m/s.</param>
    /// <param name="radius">Reduced radius, m.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    /// <param name="pressureCoefficient">Pressure coefficient of viscosity, m²/N.</param>
    /// <param name="reduced">Reduced modulus, Pa.</param>
    [Formula(
        "oil film of a line contact",
        "U = η u / (Er R); G = α Er; W = w / (Er R); hmin = 2.65 R U^0.7 G^0.54 W^-0.13",
        "Dowson & Higginson",
        Provenance = Provenance.FromMemory,
        Validity = "Fully flooded, isothermal, smooth.",
        Caution = Conventions)]
    public static FilmThickness Line(
        [Quantity("line load", Dimension.ForcePerLength, "N/mm", Symbol = "w", Above = 0)] double lineLoad,
        [Quantity("mean surface speed", Dimension.Speed, "m/s", Symbol = "u", Above = 0)] double speed,
        [Quantity("reduced radius", Dimension.Length, "mm", Symbol = "R", Above = 0)] double radius,
        [Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "η", Above = 0)] double viscosity,
        [Quantity("pressure coefficient of viscosity, m²/N", Dimension.Number, Symbol = "α", Above = 0, Below = 1e-6)] double pressureCoefficient = 2.2e-8,
        [Quantity("reduced modulus", Dimension.Pressure, "GPa", Symbol = "Er", Above = 0)] double reduced = 230.77e9)
    {
        var u = viscosity * speed / (reduced * radius);
        var g = pressureCoefficient * reduced;
        var w = lineLoad / (reduced * radius);
        return new FilmThickness(2.65 * radius * Math.Pow(u, 0.7) * Math.Pow(g, 0.54) * Math.Pow(w, -0.13), 0, u, g, w);
    }

    /// <summary>Contact and film of the most loaded ball on the inner race.</summary>
    /// <param name="load">Radial load of the bearing, N.</param>
    /// <param name="inner">Inner race diameter at the bottom of the groove, m.</param>
    /// <param name="outer">Outer race diameter at the bottom of the groove, m.</param>
    /// <param name="ball">Ball diameter, m.</param>
    /// <param name="balls">Number of balls.</param>
    /// <param name="conformity">Groove radius over ball diameter.</param>
    /// <param name="speed">Speed of the turning ring, rad/s.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    /// <param name="pressureCoefficient">Pressure coefficient of viscosity, m²/N.</param>
    /// <param name="reduced">Reduced modulus, Pa.</param>
    [Formula(
        "ball bearing inner race film",
        "1 / Rx = 2 / d + 2 / di; 1 / Ry = 2 / d - 1 / (f d); k = (Ry / Rx)^(2 / π); u = w (de^2 - d^2) / (4 de); F = 5 Wr / z; pmax = 6 F / (π Dx Dy)",
        Hamrock + "; Hamrock, Fundamentals of Fluid Film Lubrication (1994); load of the worst ball by Stribeck")]
    public static RaceContact InnerRace(
        [Quantity("radial load", Dimension.Force, "N", Symbol = "Wr", Above = 0)] double load,
        [Quantity("inner race diameter", Dimension.Length, "mm", Symbol = "di", Above = 0)] double inner,
        [Quantity("outer race diameter", Dimension.Length, "mm", Symbol = "do", Above = 0)] double outer,
        [Quantity("ball diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double ball,
        [Quantity("balls", Dimension.Number, Symbol = "z", Min = 3)] int balls,
        [Quantity("groove radius over ball diameter", Dimension.Number, Symbol = "f", Above = 0.5, Max = 1)] double conformity,
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double speed,
        [Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "η", Above = 0)] double viscosity,
        [Quantity("pressure coefficient of viscosity, m²/N", Dimension.Number, Symbol = "α", Above = 0, Below = 1e-6)] double pressureCoefficient = 2.2e-8,
        [Quantity("reduced modulus", Dimension.Pressure, "GPa", Symbol = "Er", Above = 0)] double reduced = 230.77e9)
    {
        FormulaDomainException.Unless(outer > inner, "outer race diameter: must be greater than the inner race diameter");
        var rx = 1 / ((2 / ball) + (2 / inner));
        var ry = 1 / ((2 / ball) - (1 / (conformity * ball)));
        var pitch = (inner + outer) / 2;
        FormulaDomainException.Unless(ball < pitch, "ball diameter: must be less than the pitch diameter of the races");
        var entrainment = speed * ((pitch * pitch) - (ball * ball)) / (4 * pitch);
        var ballLoad = 5 * load / balls;
        var ellipticity = Ellipticity(rx, ry);
        var film = Elliptical(ballLoad, entrainment, rx, viscosity, pressureCoefficient, ellipticity, reduced);
        return new RaceContact(rx, ellipticity, entrainment, ballLoad, EllipsePressure(ballLoad, rx, ry, ellipticity, reduced), film.LeastFilm);
    }

    /// <summary>Film thickness over roughness.</summary>
    /// <param name="film">Least film thickness, m.</param>
    /// <param name="firstRq">Root-mean-square roughness of one surface, m.</param>
    /// <param name="secondRq">Root-mean-square roughness of the other, m.</param>
    [Formula(
        "lambda ratio",
        "Λ = hmin / sqrt(Rq1^2 + Rq2^2)",
        "Definition; Tallian",
        Provenance = Provenance.Definition,
        Caution = "Below about 1 the peaks carry, above about 3 the film does; superfinishing raises it without touching the oil.")]
    [return: Quantity("lambda ratio", Dimension.Number, Symbol = "Λ")]
    public static double Lambda(
        [Quantity("least film thickness", Dimension.Length, "µm", Symbol = "hmin", Above = 0)] double film,
        [Quantity("Rq of one surface", Dimension.Length, "µm", Symbol = "Rq1", Min = 0)] double firstRq,
        [Quantity("Rq of the other surface", Dimension.Length, "µm", Symbol = "Rq2", Min = 0)] double secondRq)
    {
        FormulaDomainException.Unless(firstRq + secondRq > 0, "Rq of one surface: at least one surface has a roughness");
        return film / Math.Sqrt((firstRq * firstRq) + (secondRq * secondRq));
    }

    /// <summary>Greatest pressure of an elliptical contact by the simplified ellipse of Hamrock and Brewe, Pa.</summary>
    private static double EllipsePressure(double load, double rx, double ry, double ellipticity, double reduced)
    {
        var integral = 1 + (((Math.PI / 2) - 1) * rx / ry);
        var radius = 1 / ((1 / rx) + (1 / ry));
        var across = 2 * Math.Cbrt(6 * ellipticity * ellipticity * integral * load * radius / (Math.PI * reduced));
        return 6 * load / (Math.PI * across * across / ellipticity);
    }
}
