using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Bearings;

/// <summary>Performance of a journal bearing in the dimensionless numbers of the Raimondi and Boyd charts.</summary>
/// <param name="Sommerfeld">Sommerfeld number (R/c)² μ N / P, N in turns a second.</param>
/// <param name="Attitude">Angle between the load and the line of centres, rad.</param>
/// <param name="FrictionVariable">(R/c) f, shear counted round the full 360°.</param>
/// <param name="FlowVariable">Q / (R c N L), total flow.</param>
/// <param name="SideFlowRatio">Side flow over total flow.</param>
/// <param name="PressureRatio">Mean over greatest film pressure.</param>
/// <param name="FrictionFilmOnly">(R/c) f, shear counted in the unbroken film only.</param>
/// <param name="FrictionStreamers">(R/c) f, shear counted in the unbroken film and in the streamers of the broken one.</param>
public readonly record struct FilmNumbers(
    [Quantity("Sommerfeld number", Dimension.Number, Symbol = "S")] double Sommerfeld,
    [Quantity("attitude angle", Dimension.Angle, "°", Symbol = "φ")] double Attitude,
    [Quantity("friction variable, full circle", Dimension.Number, Symbol = "fv")] double FrictionVariable,
    [Quantity("flow variable", Dimension.Number, Symbol = "Qv")] double FlowVariable,
    [Quantity("side flow over total flow", Dimension.Number, Symbol = "qs")] double SideFlowRatio,
    [Quantity("mean over greatest pressure", Dimension.Number, Symbol = "pr")] double PressureRatio,
    [Quantity("friction variable, unbroken film only", Dimension.Number)] double FrictionFilmOnly,
    [Quantity("friction variable, with streamers", Dimension.Number)] double FrictionStreamers);

/// <summary>Plain journal bearing of finite length by solving the Reynolds equation.</summary>
public static class FiniteBearing
{
    /// <summary>Dimensionless performance at an eccentricity.</summary>
    /// <param name="eccentricity">Eccentricity ratio.</param>
    /// <param name="slenderness">Length over diameter.</param>
    [Formula(
        "finite journal bearing",
        "d/dθ(h^3 dp/dθ) + (D / (2 L))^2 d/dζ(h^3 dp/dζ) = 6 dh/dθ; h = 1 + ε cos(θ); S = 1 / (π W); fv = 2 π^2 S / sqrt(1 - ε^2) + ε sin(φ) / 2",
        "Reynolds equation with Swift-Stieber rupture; compared with Raimondi & Boyd, ASLE Trans. 1 (1958) 159-209, Part III",
        Validity = "Isoviscous, steady load, 360° bearing fed at the line of greatest film, laminar; tables agree within 2 %.",
        Caution = "Published friction counts shear round the full circle. A broken film drags less: the other two friction variables say how much less.")]
    public static FilmNumbers At(
        [Quantity("eccentricity ratio", Dimension.Number, Symbol = "ε", Min = 0.01, Max = 0.97)] double eccentricity,
        [Quantity("length over diameter", Dimension.Number, Symbol = "λ", Min = 0.1, Max = 4)] double slenderness)
    {
        var film = ReynoldsFilm.Solve(eccentricity, slenderness);
        var load = Math.Sqrt((film.Along * film.Along) + (film.Across90 * film.Across90));
        var attitude = Math.Atan2(film.Across90, -film.Along);
        var pressureDrag = eccentricity / 2 * Math.Sin(attitude);
        var fullShear = Math.Tau / Math.Sqrt(1 - (eccentricity * eccentricity));
        return new FilmNumbers(
            1 / (Math.PI * load),
            attitude,
            (fullShear / load) + pressureDrag,
            film.InFlow,
            film.SideFlow / film.InFlow,
            load / (2 * film.Peak),
            (film.FilmShear / load) + pressureDrag,
            ((film.FilmShear + film.StreamerShear) / load) + pressureDrag);
    }
}
