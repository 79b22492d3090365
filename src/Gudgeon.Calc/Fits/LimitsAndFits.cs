using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>Fundamental deviation of a shaft, ISO 286 letter.</summary>
public enum ShaftDeviation
{
    a, b, c, cd, d, e, ef, f, fg, g, h, js, j, k, m, n, p, r, s, t, u, v, x, y, z, za, zb, zc,
}

/// <summary>Fundamental deviation of a hole, ISO 286 letter.</summary>
public enum HoleDeviation
{
    A, B, C, CD, D, E, EF, F, FG, G, H, JS, J, K, M, N, P, R, S, T, U, V, X, Y, Z, ZA, ZB, ZC,
}

/// <summary>Limits of size from an ISO tolerance class.</summary>
/// <param name="Upper">Upper limit deviation, m.</param>
/// <param name="Lower">Lower limit deviation, m.</param>
/// <param name="Greatest">Upper limit of size, m.</param>
/// <param name="Least">Lower limit of size, m.</param>
public readonly record struct SizeLimits(
    [Quantity("upper deviation", Dimension.Length, "µm", Symbol = "es")] double Upper,
    [Quantity("lower deviation", Dimension.Length, "µm", Symbol = "ei")] double Lower,
    [Quantity("upper limit of size", Dimension.Length, "mm", Symbol = "Gmax", Digits = 6)] double Greatest,
    [Quantity("lower limit of size", Dimension.Length, "mm", Symbol = "Gmin", Digits = 6)] double Least);

/// <summary>Interference of a fit at its limits; negative is clearance.</summary>
/// <param name="Least">Least interference, m.</param>
/// <param name="Greatest">Greatest interference, m.</param>
public readonly record struct FitLimits(
    [Quantity("least interference", Dimension.Length, "µm", Symbol = "Umin", Help = "negative is clearance")] double Least,
    [Quantity("greatest interference", Dimension.Length, "µm", Symbol = "Umax", Help = "negative is clearance")] double Greatest);

/// <summary>ISO 286 limits and fits up to 500 mm.</summary>
public static class LimitsAndFits
{
    private const string Source = "ISO 286-1:2010, tables 1 to 5, as given in public transcriptions that agree; ISO 286-2:2010";
    private const string Sizes = "upper limit es = ei + IT; greatest size Gmax = D + es; least size Gmin = D + ei";
    private const string Grade = "-1 stands for grade 01";
    private const double Micrometre = 1e-6;

    /// <summary>Limits of a shaft of an ISO tolerance class (40 s6).</summary>
    /// <param name="size">Basic size, m.</param>
    /// <param name="deviation">Letter.</param>
    /// <param name="grade">Tolerance grade, 0 to 18; -1 stands for 01.</param>
    [Formula("ISO shaft limits", Sizes, Source, Validity = "sizes up to and including 500 mm, all letters from a to zc; j in grades 5 to 7, cd, ef and fg up to 50 mm, t, v and y over 24, 14 and 18 mm; the letter sets es (a to h) or ei (j to zc)")]
    public static SizeLimits Shaft(
        [Quantity("basic size", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 0.5)] double size,
        [Quantity("fundamental deviation", Dimension.Number)] ShaftDeviation deviation,
        [Quantity("tolerance grade", Dimension.Number, Min = IsoGrades.Finest, Max = IsoGrades.Coarsest, Help = Grade)] int grade)
    {
        var tolerance = IsoGrades.Of(size, grade);
        var upper = deviation switch
        {
            ShaftDeviation.js => tolerance / 2,
            ShaftDeviation.j => IsoDeviations.LowerOfJ(size, grade) + tolerance,
            <= ShaftDeviation.h => -IsoDeviations.Of(size, deviation),
            ShaftDeviation.k when grade is < 4 or > 7 => tolerance,
            _ => IsoDeviations.Of(size, deviation) + tolerance,
        };
        return Limits(size, upper, upper - tolerance);
    }

    /// <summary>Limits of a hole of an ISO tolerance class (40 H7).</summary>
    /// <param name="size">Basic size, m.</param>
    /// <param name="deviation">Letter.</param>
    /// <param name="grade">Tolerance grade, 0 to 18; -1 stands for 01.</param>
    [Formula("ISO hole limits", Sizes, Source, Validity = "sizes up to and including 500 mm, all letters from A to ZC; J in grades 6 to 8, K to ZC from grade 3 on; the letter sets ei (A to H) or es (J to ZC, shifted by IT(n) - IT(n-1) in the fine grades)")]
    public static SizeLimits Hole(
        [Quantity("basic size", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 0.5)] double size,
        [Quantity("fundamental deviation", Dimension.Number)] HoleDeviation deviation,
        [Quantity("tolerance grade", Dimension.Number, Min = IsoGrades.Finest, Max = IsoGrades.Coarsest, Help = Grade)] int grade)
    {
        var tolerance = IsoGrades.Of(size, grade);
        var upper = deviation switch
        {
            HoleDeviation.JS => tolerance / 2,
            HoleDeviation.J => IsoDeviations.UpperOfJ(size, grade),
            <= HoleDeviation.H => IsoDeviations.Of(size, (ShaftDeviation)deviation) + tolerance,
            _ => UpperOfTightHole(size, deviation, grade),
        };
        return Limits(size, upper, upper - tolerance);
    }

    /// <summary>Least and greatest interference of a fit (40 H7/s6).</summary>
    /// <param name="size">Basic size, m.</param>
    /// <param name="hole">Letter of the hole.</param>
    /// <param name="holeGrade">Grade of the hole.</param>
    /// <param name="shaft">Letter of the shaft.</param>
    /// <param name="shaftGrade">Grade of the shaft.</param>
    [Formula("ISO fit", "least interference Umin = ei - ES; greatest Umax = es - EI", Source, Validity = "es, ei upper and lower deviation of the shaft, ES, EI of the hole; sizes up to and including 500 mm")]
    public static FitLimits Fit(
        [Quantity("basic size", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 0.5)] double size,
        [Quantity("hole deviation", Dimension.Number)] HoleDeviation hole,
        [Quantity("hole grade", Dimension.Number, Min = IsoGrades.Finest, Max = IsoGrades.Coarsest, Help = Grade)] int holeGrade,
        [Quantity("shaft deviation", Dimension.Number)] ShaftDeviation shaft,
        [Quantity("shaft grade", Dimension.Number, Min = IsoGrades.Finest, Max = IsoGrades.Coarsest, Help = Grade)] int shaftGrade)
    {
        var outer = Hole(size, hole, holeGrade);
        var inner = Shaft(size, shaft, shaftGrade);
        return new FitLimits(inner.Lower - outer.Upper, inner.Upper - outer.Lower);
    }

    private static double UpperOfTightHole(double size, HoleDeviation deviation, int grade)
    {
        FormulaDomainException.Unless(grade >= 3, "tolerance grade: holes from K to ZC are defined from grade 3 on");
        if (deviation <= HoleDeviation.N && grade > 8)
        {
            return UpperOfCoarseTransition(size, deviation);
        }

        // The standard's one exception to its rule.
        if (deviation == HoleDeviation.M && grade == 6 && size > 0.25 && size <= 0.315)
        {
            return -9;
        }

        var finest = deviation <= HoleDeviation.N ? 8 : 7;
        var shift = grade <= finest ? IsoGrades.Step(size, grade) : 0;
        return shift - IsoDeviations.Of(size, (ShaftDeviation)deviation);
    }

    /// <summary>Upper deviation of K, M and N from grade 9 on, µm.</summary>
    private static double UpperOfCoarseTransition(double size, HoleDeviation deviation)
    {
        FormulaDomainException.Unless(deviation != HoleDeviation.K || size <= 3e-3, "tolerance grade: K holes over 3 mm are defined up to grade 8");
        FormulaDomainException.Unless(deviation != HoleDeviation.N || size > 1e-3, "tolerance grade: N holes up to 1 mm are defined up to grade 8");
        return deviation == HoleDeviation.N && size > 3e-3 ? 0 : -IsoDeviations.Of(size, (ShaftDeviation)deviation);
    }

    private static SizeLimits Limits(double size, double upper, double lower) =>
        new(upper * Micrometre, lower * Micrometre, size + (upper * Micrometre), size + (lower * Micrometre));
}
