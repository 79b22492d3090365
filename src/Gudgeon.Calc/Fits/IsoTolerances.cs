using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>Standard tolerances and fundamental deviations of ISO 286 up to 500 mm, in µm. Ranges are over … up to and including.</summary>
internal static class IsoTolerances
{
    private static readonly double[] MainRanges = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];

    private static readonly double[] SubRanges =
        [3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500];

    /// <summary>Grades IT3 to IT13 by main range.</summary>
    private static readonly double[][] Grades =
    [
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
    ];

    /// <summary>Distance of the nearer limit from the basic size; by main range, or by sub-range when 25 long.</summary>
    private static readonly Dictionary<ShaftDeviation, double[]> Deviations = new()
    {
        [ShaftDeviation.c] = [60, 70, 80, 95, 95, 110, 110, 120, 130, 140, 150, 170, 180, 200, 210, 230, 240, 260, 280, 300, 330, 360, 400, 440, 480],
        [ShaftDeviation.d] = [20, 30, 40, 50, 65, 80, 100, 120, 145, 170, 190, 210, 230],
        [ShaftDeviation.e] = [14, 20, 25, 32, 40, 50, 60, 72, 85, 100, 110, 125, 135],
        [ShaftDeviation.f] = [6, 10, 13, 16, 20, 25, 30, 36, 43, 50, 56, 62, 68],
        [ShaftDeviation.g] = [2, 4, 5, 6, 7, 9, 10, 12, 14, 15, 17, 18, 20],
        [ShaftDeviation.h] = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
        [ShaftDeviation.k] = [0, 1, 1, 1, 2, 2, 2, 3, 3, 4, 4, 4, 5],
        [ShaftDeviation.m] = [2, 4, 6, 7, 8, 9, 11, 13, 15, 17, 20, 21, 23],
        [ShaftDeviation.n] = [4, 8, 10, 12, 15, 17, 20, 23, 27, 31, 34, 37, 40],
        [ShaftDeviation.p] = [6, 12, 15, 18, 22, 26, 32, 37, 43, 50, 56, 62, 68],
        [ShaftDeviation.r] = [10, 15, 19, 23, 23, 28, 28, 34, 34, 41, 43, 51, 54, 63, 65, 68, 77, 80, 84, 94, 98, 108, 114, 126, 132],
        [ShaftDeviation.s] = [14, 19, 23, 28, 28, 35, 35, 43, 43, 53, 59, 71, 79, 92, 100, 108, 122, 130, 140, 158, 170, 190, 208, 232, 252],
        [ShaftDeviation.t] = [double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, 41, 48, 54, 66, 75, 91, 104, 122, 134, 146, 166, 180, 196, 218, 240, 268, 294, 330, 360],
        [ShaftDeviation.u] = [18, 23, 28, 33, 33, 41, 48, 60, 70, 87, 102, 124, 144, 170, 190, 210, 236, 258, 284, 315, 350, 390, 435, 490, 540],
        [ShaftDeviation.x] = [20, 28, 34, 40, 45, 54, 64, 80, 97, 122, 146, 178, 210, 248, 280, 310, 350, 385, 425, 475, 525, 590, 660, 740, 820],
    };

    /// <summary>j shafts: lower deviation of grades 5 and 6, and of grade 7. J holes: upper deviation of grades 6, 7 and 8. The standard gives them no rule.</summary>
    private static readonly double[] ShaftJ5 = [-2, -2, -2, -3, -4, -5, -7, -9, -11, -13, -16, -18, -20];
    private static readonly double[] ShaftJ7 = [-4, -4, -5, -6, -8, -10, -12, -15, -18, -21, -26, -28, -32];
    private static readonly double[][] HoleJ =
    [
        [2, 5, 5, 6, 8, 10, 13, 16, 18, 22, 25, 29, 33],
        [4, 6, 8, 10, 12, 14, 18, 22, 26, 30, 36, 39, 43],
        [6, 10, 12, 15, 20, 24, 28, 34, 41, 47, 55, 60, 66],
    ];

    /// <summary>Standard tolerance of a grade, µm.</summary>
    internal static double Grade(double size, int grade)
    {
        FormulaDomainException.Unless(grade is >= 3 and <= 13, "tolerance grade: wanted 3 to 13");
        return Grades[grade - 3][Range(MainRanges, size)];
    }

    /// <summary>Distance of the nearer limit from the basic size, µm.</summary>
    internal static double Deviation(double size, ShaftDeviation letter)
    {
        var table = Deviations[letter];
        var distance = table[Range(table.Length == MainRanges.Length ? MainRanges : SubRanges, size)];
        FormulaDomainException.Unless(!double.IsNaN(distance), "fundamental deviation: the standard has no t up to 24 mm, it uses u");
        return distance;
    }

    /// <summary>Lower deviation of a j shaft, µm.</summary>
    internal static double LowerOfJ(double size, int grade)
    {
        FormulaDomainException.Unless(grade is >= 5 and <= 7, "tolerance grade: j shafts are defined in grades 5 to 7");
        return (grade == 7 ? ShaftJ7 : ShaftJ5)[Range(MainRanges, size)];
    }

    /// <summary>Upper deviation of a J hole, µm.</summary>
    internal static double UpperOfJ(double size, int grade)
    {
        FormulaDomainException.Unless(grade is >= 6 and <= 8, "tolerance grade: J holes are defined in grades 6 to 8");
        return HoleJ[grade - 6][Range(MainRanges, size)];
    }

    private static int Range(double[] ends, double size)
    {
        var range = Array.FindIndex(ends, end => size * 1e3 <= end + 1e-9);
        FormulaDomainException.Unless(range >= 0, "basic size: greater than 500 mm");
        return range;
    }
}
