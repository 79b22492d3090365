using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>Fundamental deviation of a shaft, ISO 286 letter.</summary>
public enum ShaftDeviation
{
    c, d, e, f, g, h, js, j, k, m, n, p, r, s, t, u, x,
}

/// <summary>Fundamental deviation of a hole, ISO 286 letter.</summary>
public enum HoleDeviation
{
    C, D, E, F, G, H, JS, J, K, M, N, P, R, S, T, U, X,
}

/// <summary>Limits of size from an ISO tolerance class.</summary>
/// <param name="Upper">Upper limit deviation, m.</param>
/// <param name="Lower">Lower limit deviation, m.</param>
/// <param name="Greatest">Upper limit of size, m.</param>
/// <param name="Least">Lower limit of size, m.</param>
public readonly record struct SizeLimits(
    [Quantity("upper deviation", Dimension.Length, "µm", Symbol = "es")] double Upper,
    [Quantity("lower deviation", Dimension.Length, "µm", Symbol = "ei")] double Lower,
    [Quantity("upper limit of size", Dimension.Length, "mm", Symbol = "Gmax")] double Greatest,
    [Quantity("lower limit of size", Dimension.Length, "mm", Symbol = "Gmin")] double Least);

/// <summary>Interference of a fit at its limits; negative is clearance.</summary>
/// <param name="Least">Least interference, m.</param>
/// <param name="Greatest">Greatest interference, m.</param>
public readonly record struct FitLimits(
    [Quantity("least interference", Dimension.Length, "µm", Symbol = "Umin", Help = "negative is clearance")] double Least,
    [Quantity("greatest interference", Dimension.Length, "µm", Symbol = "Umax", Help = "negative is clearance")] double Greatest);

/// <summary>ISO 286 limits and fits up to 500 mm.</summary>
public static class LimitsAndFits
{
    private const string Source = "ISO 286-1:2010, tables 1 to 3; ISO 286-2:2010";
    private const double Micrometre = 1e-6;

    /// <summary>Limits of a shaft of an ISO tolerance class (40 s6).</summary>
    /// <param name="size">Basic size, m.</param>
    /// <param name="deviation">Letter.</param>
    /// <param name="grade">Tolerance grade, 3 to 13.</param>
    [Formula("ISO shaft limits", "es - ei = IT; Gmax = D + es; Gmin = D + ei", Source, Provenance = Provenance.FromMemory, Validity = "sizes up to and including 500 mm, grades 3 to 13, j in grades 5 to 7; the letter sets es (a to h) or ei (j to x)")]
    public static SizeLimits Shaft(
        [Quantity("basic size", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 0.5)] double size,
        [Quantity("fundamental deviation", Dimension.Number)] ShaftDeviation deviation,
        [Quantity("tolerance grade", Dimension.Number, Min = 3, Max = 13)] int grade)
    {
        var tolerance = IsoTolerances.Grade(size, grade);
        var upper = deviation switch
        {
            ShaftDeviation.js => tolerance / 2,
            ShaftDeviation.j => IsoTolerances.LowerOfJ(size, grade) + tolerance,
            <= ShaftDeviation.h => -IsoTolerances.Deviation(size, deviation),
            ShaftDeviation.k when grade is < 4 or > 7 => tolerance,
            _ => IsoTolerances.Deviation(size, deviation) + tolerance,
        };
        return Limits(size, upper, upper - tolerance);
    }

    /// <summary>Limits of a hole of an ISO tolerance class (40 H7).</summary>
    /// <param name="size">Basic size, m.</param>
    /// <param name="deviation">Letter.</param>
    /// <param name="grade">Tolerance grade, 3 to 13.</param>
    [Formula("ISO hole limits", "es - ei = IT; Gmax = D + es; Gmin = D + ei", Source, Provenance = Provenance.FromMemory, Validity = "sizes up to and including 500 mm, grades 3 to 13; the letter sets the lower deviation (A to H) or the upper (K to X, shifted by IT(n) - IT(n-1) in the fine grades)")]
    public static SizeLimits Hole(
        [Quantity("basic size", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 0.5)] double size,
        [Quantity("fundamental deviation", Dimension.Number)] HoleDeviation deviation,
        [Quantity("tolerance grade", Dimension.Number, Min = 3, Max = 13)] int grade)
    {
        var tolerance = IsoTolerances.Grade(size, grade);
        var upper = deviation switch
        {
            HoleDeviation.JS => tolerance / 2,
            HoleDeviation.J => IsoTolerances.UpperOfJ(size, grade),
            <= HoleDeviation.H => IsoTolerances.Deviation(size, (ShaftDeviation)deviation) + tolerance,
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
    [Formula("ISO fit", "Umin = ei - ES; Umax = es - EI", Source, Provenance = Provenance.FromMemory, Validity = "es, ei of the shaft, ES, EI of the hole; sizes up to and including 500 mm")]
    public static FitLimits Fit(
        [Quantity("basic size", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 0.5)] double size,
        [Quantity("hole deviation", Dimension.Number)] HoleDeviation hole,
        [Quantity("hole grade", Dimension.Number, Min = 3, Max = 13)] int holeGrade,
        [Quantity("shaft deviation", Dimension.Number)] ShaftDeviation shaft,
        [Quantity("shaft grade", Dimension.Number, Min = 3, Max = 13)] int shaftGrade)
    {
        var outer = Hole(size, hole, holeGrade);
        var inner = Shaft(size, shaft, shaftGrade);
        return new FitLimits(inner.Lower - outer.Upper, inner.Upper - outer.Lower);
    }

    private static double UpperOfTightHole(double size, HoleDeviation deviation, int grade)
    {
        FormulaDomainException.Unless(deviation != HoleDeviation.K || grade <= 8, "tolerance grade: K holes are defined up to grade 8");
        if (deviation == HoleDeviation.N && grade > 8 && size > 3e-3)
        {
            return 0;
        }

        // The standard's one exception to its rule.
        if (deviation == HoleDeviation.M && grade == 6 && size > 0.25 && size <= 0.315)
        {
            return -9;
        }

        var finest = deviation <= HoleDeviation.N ? 8 : 7;
        var shift = grade <= finest && grade > 3 && size > 3e-3
            ? IsoTolerances.Grade(size, grade) - IsoTolerances.Grade(size, grade - 1)
            : 0;
        return shift - IsoTolerances.Deviation(size, (ShaftDeviation)deviation);
    }

    private static SizeLimits Limits(double size, double upper, double lower) =>
        new(upper * Micrometre, lower * Micrometre, size + (upper * Micrometre), size + (lower * Micrometre));
}
