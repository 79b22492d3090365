using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>Speed letters on the sidewall that stand for one speed. Z alone stands only for "above 240 km/h".</summary>
public enum SpeedSymbol
{
    /// <summary>50 km/h</summary>
    B,

    /// <summary>60 km/h</summary>
    C,

    /// <summary>65 km/h</summary>
    D,

    /// <summary>70 km/h</summary>
    E,

    /// <summary>80 km/h</summary>
    F,

    /// <summary>90 km/h</summary>
    G,

    /// <summary>100 km/h</summary>
    J,

    /// <summary>110 km/h</summary>
    K,

    /// <summary>120 km/h</summary>
    L,

    /// <summary>130 km/h</summary>
    M,

    /// <summary>140 km/h</summary>
    N,

    /// <summary>150 km/h</summary>
    P,

    /// <summary>160 km/h</summary>
    Q,

    /// <summary>170 km/h</summary>
    R,

    /// <summary>180 km/h</summary>
    S,

    /// <summary>190 km/h</summary>
    T,

    /// <summary>200 km/h</summary>
    U,

    /// <summary>210 km/h</summary>
    H,

    /// <summary>240 km/h</summary>
    V,

    /// <summary>270 km/h</summary>
    W,

    /// <summary>300 km/h</summary>
    Y,
}

/// <summary>Speed letters whose load falls near the top of their range.</summary>
public enum HighSpeedSymbol
{
    /// <summary>Full load to 210 km/h.</summary>
    V,

    /// <summary>Full load to 240 km/h.</summary>
    W,
}

/// <summary>What the load index and the speed letter on a tyre's sidewall allow.</summary>
public static class TyreRating
{
    private static readonly double[] Kilograms =
    [
        45, 46.2, 47.5, 48.7, 50, 51.5, 53, 54.5, 56, 58,
        60, 61.5, 63, 65, 67, 69, 71, 73, 75, 77.5,
        80, 82.5, 85, 87.5, 90, 92.5, 95, 97.5, 100, 103,
        106, 109, 112, 115, 118, 121, 125, 128, 132, 136,
        140, 145, 150, 155, 160, 165, 170, 175, 180, 185,
        190, 195, 200, 206, 212, 218, 224, 230, 236, 243,
        250, 257, 265, 272, 280, 290, 300, 307, 315, 325,
        335, 345, 355, 365, 375, 387, 400, 412, 425, 437,
        450, 462, 475, 487, 500, 515, 530, 545, 560, 580,
        600, 615, 630, 650, 670, 690, 710, 730, 750, 775,
        800,
    ];

    /// <summary>Load that a load index stands for, kg.</summary>
    /// <param name="index">Load index on the sidewall.</param>
    /// <returns>Load, kg.</returns>
    [Formula("tyre load index", "m = table(LI)", "load index table, ISO 4000-1 and UN Regulation No. 75 annex; 43 to 90 checked against a published motorcycle table, the rest recalled", Validity = "The rule m = 45 10^(LI/80) comes within 1.5 % and is not the table.", Caution = "At the pressure and speed that the tyre's maker gives.")]
    [return: Quantity("load", Dimension.Mass, "kg", Symbol = "m")]
    public static double Load([Quantity("load index", Dimension.Number, Symbol = "LI", Min = 0, Max = 100)] int index) => Kilograms[index];

    /// <summary>Load by the series behind the load index table, kg: within 2 % of the table, for an index not at hand.</summary>
    /// <param name="index">Load index on the sidewall.</param>
    /// <returns>Load, kg.</returns>
    [Formula("tyre load index, series", "m = 45 10^(LI / 80)", "preferred-number series behind the load index table", Provenance = Provenance.CommonPractice, Caution = "The table decides.")]
    [return: Quantity("load", Dimension.Mass, "kg", Symbol = "m")]
    public static double LoadBySeries([Quantity("load index", Dimension.Number, Symbol = "LI", Min = 0, Max = 279)] int index) => 45 * Math.Pow(10, index / 80.0);

    /// <summary>Speed that a speed letter stands for, m/s.</summary>
    /// <param name="symbol">Letter on the sidewall.</param>
    /// <returns>Speed, m/s.</returns>
    [Formula("tyre speed symbol", "v = table(letter)", "speed category table, UN Regulations No. 30 and 75; R to Y checked against a published motorcycle table, the rest recalled", Caution = "Z means above 240 km/h and (W) in brackets above 270 km/h: ask the tyre's maker.")]
    [return: Quantity("speed", Dimension.Speed, "km/h", Symbol = "v")]
    public static double Speed([Quantity("speed letter", Dimension.Number)] SpeedSymbol symbol) => KilometresPerHour(symbol) / 3.6;

    /// <summary>Share of the load index that a V or W tyre carries near the top of its range (car-tyre rule).</summary>
    /// <param name="symbol">Speed letter, V or W.</param>
    /// <param name="speed">Road speed, m/s; up to 240 km/h for V, 270 km/h for W.</param>
    /// <returns>Share of the load, 0 to 1.</returns>
    [Formula(
        "tyre load at high speed",
        "V: k = 1 - 0.003 (v - 210); W: k = 1 - 0.005 (v - 240); 1 below",
        "UN Regulation No. 30 figures as given in a text after Reimpell, The Automotive Chassis (car tyres)",
        Caution = "Car-tyre figures. UN Regulation No. 75 has its own percentages for motorcycles: do not use these for approval.")]
    [return: Quantity("share of the load", Dimension.Number, "%", Symbol = "k")]
    public static double LoadAtSpeed(
        [Quantity("speed letter", Dimension.Number)] HighSpeedSymbol symbol,
        [Quantity("road speed", Dimension.Speed, "km/h", Symbol = "v", Min = 0, Max = 75.0001)] double speed)
    {
        var (full, perKilometrePerHour) = symbol == HighSpeedSymbol.V ? (210.0, 0.003) : (240.0, 0.005);
        var above = (speed * 3.6) - full;
        FormulaDomainException.Unless(above <= 30 + 1e-9, $"road speed: above what a {symbol} tyre is made for");
        return 1 - (perKilometrePerHour * Math.Max(above, 0));
    }

    private static double KilometresPerHour(SpeedSymbol symbol) => symbol switch
    {
        SpeedSymbol.B => 50,
        SpeedSymbol.C => 60,
        SpeedSymbol.D => 65,
        SpeedSymbol.E => 70,
        SpeedSymbol.F => 80,
        SpeedSymbol.G => 90,
        SpeedSymbol.J => 100,
        SpeedSymbol.K => 110,
        SpeedSymbol.L => 120,
        SpeedSymbol.M => 130,
        SpeedSymbol.N => 140,
        SpeedSymbol.P => 150,
        SpeedSymbol.Q => 160,
        SpeedSymbol.R => 170,
        SpeedSymbol.S => 180,
        SpeedSymbol.T => 190,
        SpeedSymbol.U => 200,
        SpeedSymbol.H => 210,
        SpeedSymbol.V => 240,
        SpeedSymbol.W => 270,
        SpeedSymbol.Y => 300,
        _ => throw new ArgumentOutOfRangeException(nameof(symbol), symbol, null),
    };
}
