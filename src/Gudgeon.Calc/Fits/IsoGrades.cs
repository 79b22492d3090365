using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>Standard tolerances of ISO 286-1:2010, table 1, up to 500 mm, in µm; read in public transcriptions of the table that agree.</summary>
public static class IsoGrades
{
    /// <summary>Number that stands for grade 01, which is finer than 0.</summary>
    public const int Finest = -1;

    /// <summary>Coarsest grade.</summary>
    public const int Coarsest = 18;

    /// <summary>Grades 01, 0, 1 to 18, each by range of size.</summary>
    private static readonly double[][] Grades =
    [
        [0.3, 0.4, 0.4, 0.5, 0.6, 0.6, 0.8, 1, 1.2, 2, 2.5, 3, 4],
        [0.5, 0.6, 0.6, 0.8, 1, 1, 1.2, 1.5, 2, 3, 4, 5, 6],
        [0.8, 1, 1, 1.2, 1.5, 1.5, 2, 2.5, 3.5, 4.5, 6, 7, 8],
        [1.2, 1.5, 1.5, 2, 2.5, 2.5, 3, 4, 5, 7, 8, 9, 10],
        [2, 2.5, 2.5, 3, 4, 4, 5, 6, 8, 10, 12, 13, 15],
        [3, 4, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20],
        [4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23, 25, 27],
        [6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32, 36, 40],
        [10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52, 57, 63],
        [14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81, 89, 97],
        [25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130, 140, 155],
        [40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210, 230, 250],
        [60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320, 360, 400],
        [100, 120, 150, 180, 210, 250, 300, 350, 400, 460, 520, 570, 630],
        [140, 180, 220, 270, 330, 390, 460, 540, 630, 720, 810, 890, 970],
        [250, 300, 360, 430, 520, 620, 740, 870, 1000, 1150, 1300, 1400, 1550],
        [400, 480, 580, 700, 840, 1000, 1200, 1400, 1600, 1850, 2100, 2300, 2500],
        [600, 750, 900, 1100, 1300, 1600, 1900, 2200, 2500, 2900, 3200, 3600, 4000],
        [1000, 1200, 1500, 1800, 2100, 2500, 3000, 3500, 4000, 4600, 5200, 5700, 6300],
        [1400, 1800, 2200, 2700, 3300, 3900, 4600, 5400, 6300, 7200, 8100, 8900, 9700],
    ];

    /// <summary>Standard tolerance of a grade, µm.</summary>
    internal static double Of(double size, int grade)
    {
        FormulaDomainException.Unless(grade is >= Finest and <= Coarsest, "tolerance grade: wanted 01, 0 or 1 to 18");
        FormulaDomainException.Unless(grade < 14 || size > 1e-3, "tolerance grade: the standard has 14 to 18 over 1 mm only");
        return IsoRanges.Of(Grades[grade - Finest], size);
    }

    /// <summary>What a fine grade is wider than the next finer one, µm: by it a tight hole is shifted, so that H7/p6 and P7/h6 are the same fit; nought up to 3 mm.</summary>
    internal static double Step(double size, int grade) => size > 3e-3 ? Of(size, grade) - Of(size, grade - 1) : 0;
}
