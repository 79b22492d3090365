using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Bearings;

/// <summary>
/// The tables of Raimondi and Boyd for full journal bearings (ASLE Trans. 1, 1958, Part III; recalled, each row solved
/// again with <see cref="FiniteBearing"/> within 2 %), read as textbooks do: linearly in the Sommerfeld number.
/// </summary>
internal static class ChartNumbers
{
    private readonly record struct Row(double Eccentricity, double Sommerfeld, double AttitudeDegrees, double Friction, double Flow, double SideFlow, double Pressure);

    private static readonly Row[] Square =
    [
        new(0.1, 1.33, 79.5, 26.4, 3.37, 0.150, 0.540),
        new(0.2, 0.631, 74.02, 12.8, 3.59, 0.280, 0.529),
        new(0.4, 0.264, 63.10, 5.79, 3.99, 0.497, 0.484),
        new(0.6, 0.121, 50.58, 3.22, 4.33, 0.680, 0.415),
        new(0.8, 0.0446, 36.24, 1.70, 4.62, 0.842, 0.313),
        new(0.9, 0.0188, 26.45, 1.05, 4.74, 0.919, 0.247),
        new(0.97, 0.00474, 15.47, 0.514, 4.82, 0.973, 0.152),
    ];

    private static readonly Row[] Half =
    [
        new(0.1, 4.31, 81.62, 85.6, 3.43, 0.173, 0.523),
        new(0.2, 2.03, 74.94, 40.9, 3.72, 0.318, 0.506),
        new(0.4, 0.779, 61.45, 17.0, 4.29, 0.552, 0.441),
        new(0.6, 0.319, 48.14, 8.10, 4.85, 0.730, 0.365),
        new(0.8, 0.0923, 33.31, 3.26, 5.41, 0.874, 0.267),
        new(0.9, 0.0313, 23.66, 1.60, 5.69, 0.939, 0.206),
        new(0.97, 0.00609, 13.75, 0.610, 5.88, 0.980, 0.126),
    ];

    private static readonly Row[] Quarter =
    [
        new(0.1, 16.2, 82.31, 322, 3.45, 0.180, 0.515),
        new(0.2, 7.57, 75.18, 153, 3.76, 0.330, 0.489),
        new(0.4, 2.83, 60.86, 61.1, 4.37, 0.567, 0.415),
        new(0.6, 1.07, 46.72, 26.7, 4.99, 0.746, 0.334),
        new(0.8, 0.261, 31.04, 8.80, 5.60, 0.884, 0.240),
        new(0.9, 0.0736, 21.85, 3.50, 5.91, 0.945, 0.180),
        new(0.97, 0.0101, 12.22, 0.922, 6.12, 0.984, 0.108),
    ];

    /// <summary>Eccentricity and film numbers at a Sommerfeld number, for length over diameter 1, 1/2 or 1/4.</summary>
    public static (double Eccentricity, FilmNumbers Film) At(double sommerfeld, double slenderness)
    {
        var rows = slenderness switch
        {
            > 0.99 and < 1.01 => Square,
            > 0.495 and < 0.505 => Half,
            > 0.2475 and < 0.2525 => Quarter,
            _ => throw new FormulaDomainException("length over diameter: the tables hold 1, 1/2 and 1/4 only; use the Reynolds solution"),
        };
        FormulaDomainException.Unless(sommerfeld <= rows[0].Sommerfeld && sommerfeld >= rows[^1].Sommerfeld, "Sommerfeld number: outside the tables (eccentricity 0.1 to 0.97)");
        var i = Array.FindIndex(rows, r => r.Sommerfeld <= sommerfeld);
        var (high, low) = (rows[Math.Max(0, i - 1)], rows[i]);
        var share = i == 0 ? 0 : (high.Sommerfeld - sommerfeld) / (high.Sommerfeld - low.Sommerfeld);
        return (Between(high.Eccentricity, low.Eccentricity, share), Film(sommerfeld, high, low, share));
    }

    private static FilmNumbers Film(double sommerfeld, Row high, Row low, double share) => new(
        sommerfeld,
        Between(high.AttitudeDegrees, low.AttitudeDegrees, share) * Math.PI / 180,
        Between(high.Friction, low.Friction, share),
        Between(high.Flow, low.Flow, share),
        Between(high.SideFlow, low.SideFlow, share),
        Between(high.Pressure, low.Pressure, share),
        0,
        0);

    private static double Between(double from, double to, double share) => from + (share * (to - from));
}
