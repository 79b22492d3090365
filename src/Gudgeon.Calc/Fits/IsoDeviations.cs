using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>
/// Fundamental deviations of shafts, ISO 286-1:2010, tables 4 and 5, up to 500 mm, in µm; read in public transcriptions of
/// the tables that agree. Those of cd, ef and fg over 10 mm are in one of them only and hold to the standard's rule, the
/// geometric mean of their neighbours.
/// </summary>
internal static class IsoDeviations
{
    private const double None = double.NaN;

    /// <summary>Distance of the nearer limit from the basic size; NaN where the standard has none.</summary>
    private static readonly Dictionary<ShaftDeviation, double[]> Distances = new()
    {
        [ShaftDeviation.a] = [270, 270, 280, 290, 290, 300, 300, 310, 320, 340, 360, 380, 410, 460, 520, 580, 660, 740, 820, 920, 1050, 1200, 1350, 1500, 1650],
        [ShaftDeviation.b] = [140, 140, 150, 150, 150, 160, 160, 170, 180, 190, 200, 220, 240, 260, 280, 310, 340, 380, 420, 480, 540, 600, 680, 760, 840],
        [ShaftDeviation.c] = [60, 70, 80, 95, 95, 110, 110, 120, 130, 140, 150, 170, 180, 200, 210, 230, 240, 260, 280, 300, 330, 360, 400, 440, 480],
        [ShaftDeviation.cd] = [34, 46, 56, 70, 85, 100, None, None, None, None, None, None, None],
        [ShaftDeviation.d] = [20, 30, 40, 50, 65, 80, 100, 120, 145, 170, 190, 210, 230],
        [ShaftDeviation.e] = [14, 20, 25, 32, 40, 50, 60, 72, 85, 100, 110, 125, 135],
        [ShaftDeviation.ef] = [10, 14, 18, 23, 28, 35, None, None, None, None, None, None, None],
        [ShaftDeviation.f] = [6, 10, 13, 16, 20, 25, 30, 36, 43, 50, 56, 62, 68],
        [ShaftDeviation.fg] = [4, 6, 8, 10, 12, 15, None, None, None, None, None, None, None],
        [ShaftDeviation.g] = [2, 4, 5, 6, 7, 9, 10, 12, 14, 15, 17, 18, 20],
        [ShaftDeviation.h] = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
        [ShaftDeviation.k] = [0, 1, 1, 1, 2, 2, 2, 3, 3, 4, 4, 4, 5],
        [ShaftDeviation.m] = [2, 4, 6, 7, 8, 9, 11, 13, 15, 17, 20, 21, 23],
        [ShaftDeviation.n] = [4, 8, 10, 12, 15, 17, 20, 23, 27, 31, 34, 37, 40],
        [ShaftDeviation.p] = [6, 12, 15, 18, 22, 26, 32, 37, 43, 50, 56, 62, 68],
        [ShaftDeviation.r] = [10, 15, 19, 23, 23, 28, 28, 34, 34, 41, 43, 51, 54, 63, 65, 68, 77, 80, 84, 94, 98, 108, 114, 126, 132],
        [ShaftDeviation.s] = [14, 19, 23, 28, 28, 35, 35, 43, 43, 53, 59, 71, 79, 92, 100, 108, 122, 130, 140, 158, 170, 190, 208, 232, 252],
        [ShaftDeviation.t] = [None, None, None, None, None, None, 41, 48, 54, 66, 75, 91, 104, 122, 134, 146, 166, 180, 196, 218, 240, 268, 294, 330, 360],
        [ShaftDeviation.u] = [18, 23, 28, 33, 33, 41, 48, 60, 70, 87, 102, 124, 144, 170, 190, 210, 236, 258, 284, 315, 350, 390, 435, 490, 540],
        [ShaftDeviation.v] = [None, None, None, None, 39, 47, 55, 68, 81, 102, 120, 146, 172, 202, 228, 252, 284, 310, 340, 385, 425, 475, 530, 595, 660],
        [ShaftDeviation.x] = [20, 28, 34, 40, 45, 54, 64, 80, 97, 122, 146, 178, 210, 248, 280, 310, 350, 385, 425, 475, 525, 590, 660, 740, 820],
        [ShaftDeviation.y] = [None, None, None, None, None, 63, 75, 94, 114, 144, 174, 214, 254, 300, 340, 380, 425, 470, 520, 580, 650, 730, 820, 920, 1000],
        [ShaftDeviation.z] = [26, 35, 42, 50, 60, 73, 88, 112, 136, 172, 210, 258, 310, 365, 415, 465, 520, 575, 640, 710, 790, 900, 1000, 1100, 1250],
        [ShaftDeviation.za] = [32, 42, 52, 64, 77, 98, 118, 148, 180, 226, 274, 335, 400, 470, 535, 600, 670, 740, 820, 920, 1000, 1150, 1300, 1450, 1600],
        [ShaftDeviation.zb] = [40, 50, 67, 90, 108, 136, 160, 200, 242, 300, 360, 445, 525, 620, 700, 780, 880, 960, 1050, 1200, 1300, 1500, 1650, 1850, 2100],
        [ShaftDeviation.zc] = [60, 80, 97, 130, 150, 188, 218, 274, 325, 405, 480, 585, 690, 800, 900, 1000, 1150, 1250, 1350, 1550, 1700, 1900, 2100, 2400, 2600],
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

    /// <summary>Distance of the nearer limit from the basic size, µm.</summary>
    internal static double Of(double size, ShaftDeviation letter)
    {
        FormulaDomainException.Unless(letter > ShaftDeviation.b || size > 1e-3, "fundamental deviation: the standard has a and b over 1 mm only");
        var distance = IsoRanges.Of(Distances[letter], size);
        FormulaDomainException.Unless(!double.IsNaN(distance), letter switch
        {
            ShaftDeviation.t => "fundamental deviation: the standard has no t up to 24 mm, it uses u",
            ShaftDeviation.v => "fundamental deviation: the standard has no v up to 14 mm, it uses x",
            ShaftDeviation.y => "fundamental deviation: the standard has no y up to 18 mm, it uses z",
            _ => $"fundamental deviation: the standard has {letter} up to 50 mm only",
        });
        return distance;
    }

    /// <summary>Lower deviation of a j shaft, µm.</summary>
    internal static double LowerOfJ(double size, int grade)
    {
        if (grade == 8 && size <= 3e-3)
        {
            return -6;
        }

        FormulaDomainException.Unless(grade is >= 5 and <= 7, "tolerance grade: j shafts are defined in grades 5 to 7, up to 3 mm in 8 too");
        return IsoRanges.Of(grade == 7 ? ShaftJ7 : ShaftJ5, size);
    }

    /// <summary>Upper deviation of a J hole, µm.</summary>
    internal static double UpperOfJ(double size, int grade)
    {
        FormulaDomainException.Unless(grade is >= 6 and <= 8, "tolerance grade: J holes are defined in grades 6 to 8");
        return IsoRanges.Of(HoleJ[grade - 6], size);
    }
}
