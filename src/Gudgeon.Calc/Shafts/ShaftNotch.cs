using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Shafts;

/// <summary>How a hub sits on a shaft.</summary>
public enum SeatKind
{
    /// <summary>Shrunk on, without a key.</summary>
    [TradeName("shrunk on")]
    ShrunkOn,

    /// <summary>With a key.</summary>
    [TradeName("keyed")]
    Keyed,
}

/// <summary>Stress concentration in bending and torsion.</summary>
/// <param name="Bending">In bending.</param>
/// <param name="Torsion">In torsion.</param>
public readonly record struct NotchFactors(
    [Quantity("factor in bending", Dimension.Number, Symbol = "Kb")] double Bending,
    [Quantity("factor in torsion", Dimension.Number, Symbol = "Kt")] double Torsion);

/// <summary>Notches of shafts: shoulders with a fillet, keyseats, edges of hubs.</summary>
public static class ShaftNotch
{
    private const double Inch = 0.0254, Ksi = 6.894757e6;

    /// <summary>Diameter ratio, factor and exponent of the fits for bending.</summary>
    private static readonly (double Step, double A, double B)[] InBending =
        [(1.01, 0.91938, -0.17032), (1.02, 0.96048, -0.17711), (1.03, 0.98061, -0.18381), (1.05, 0.98137, -0.19653), (1.07, 0.97527, -0.20958), (1.1, 0.95120, -0.23757), (1.2, 0.97098, -0.21796), (1.5, 0.93836, -0.25759), (2, 0.90879, -0.28598), (3, 0.89334, -0.30860), (6, 0.87868, -0.33243)];

    /// <summary>The same for torsion.</summary>
    private static readonly (double Step, double A, double B)[] InTorsion = [(1.09, 0.90337, -0.12692), (1.2, 0.83425, -0.21649), (1.33, 0.84897, -0.23161), (2, 0.86331, -0.23865)];

    /// <summary>Stress concentration of a shoulder with a fillet.</summary>
    /// <param name="diameter">Smaller diameter, m.</param>
    /// <param name="shoulder">Greater diameter, m.</param>
    /// <param name="fillet">Radius of the fillet, m.</param>
    [Formula(
        "shoulder fillet concentration",
        "K = A (r / d)^b, A and b by D / d, straight between the rows; Kb of bending, Kt of torsion",
        "Fits to Peterson's charts in Norton, Machine Design, app. E",
        Provenance = Provenance.FromMemory,
        Validity = "Fillets from 0.01 to 0.3 of the diameter; on the smaller diameter's nominal stress.")]
    public static NotchFactors Shoulder(
        [Quantity("smaller diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("greater diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double shoulder,
        [Quantity("fillet radius", Dimension.Length, "mm", Symbol = "r", Above = 0)] double fillet)
    {
        FormulaDomainException.Unless(shoulder > diameter, "greater diameter: must be greater than the smaller one");
        FormulaDomainException.Unless(fillet <= (shoulder - diameter) / 2 * (1 + 1e-9), "fillet radius: must not be greater than the step, half the difference of the diameters");
        var (step, sharp) = (shoulder / diameter, fillet / diameter);
        FormulaDomainException.Unless(sharp is >= 0.01 and <= 0.3, "fillet radius: the charts go from 0.01 to 0.3 of the smaller diameter");
        return new NotchFactors(Math.Max(1, Between(InBending, step, sharp)), Math.Max(1, Between(InTorsion, step, sharp)));
    }

    /// <summary>What fatigue feels of a stress concentration in steel.</summary>
    /// <param name="bending">Stress concentration in bending.</param>
    /// <param name="torsion">Stress concentration in torsion.</param>
    /// <param name="radius">Radius of the notch, m.</param>
    /// <param name="tensile">Tensile strength, Pa.</param>
    [Formula(
        "fatigue notch factor",
        "Kb = 1 + (Kb0 - 1) / (1 + a / sqrt(r)); Kt = 1 + (Kt0 - 1) / (1 + a / sqrt(r)); a a cubic in Sut, one for bending, one for torsion",
        "Neuber's constant as fitted in Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eqs 6-33 to 6-35",
        Provenance = Provenance.FromMemory,
        Validity = "Steel from 340 to 1550 MPa; the constant of the end holds beyond.")]
    public static NotchFactors Fatigue(
        [Quantity("stress concentration in bending", Dimension.Number, Symbol = "Kb0", Min = 1)] double bending,
        [Quantity("stress concentration in torsion", Dimension.Number, Symbol = "Kt0", Min = 1)] double torsion,
        [Quantity("notch radius", Dimension.Length, "mm", Symbol = "r", Above = 0)] double radius,
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Sut", Above = 0)] double tensile)
    {
        var (s, root) = (Math.Clamp(tensile / Ksi, 50, 225), Math.Sqrt(radius / Inch));
        var inBending = 0.246 + (s * (-3.08e-3 + (s * (1.51e-5 - (2.67e-8 * s)))));
        var inTorsion = 0.190 + (s * (-2.51e-3 + (s * (1.35e-5 - (2.67e-8 * s)))));
        return new NotchFactors(1 + ((bending - 1) / (1 + (Math.Max(0, inBending) / root))), 1 + ((torsion - 1) / (1 + (Math.Max(0, inTorsion) / root))));
    }

    /// <summary>What fatigue feels where a hub ends on a shaft.</summary>
    /// <param name="seat">How it sits there.</param>
    /// <param name="tensile">Tensile strength of the shaft, Pa.</param>
    [Formula(
        "hub seat notch factor",
        "shrunk on: Kb = 2.7 (Sut / 1000)^0.43, Kt = 0.65 Kb; keyed: Kb = 3 (Sut / 1000)^0.38, Kt = 0.56 Kb + 0.1 (Sut in MPa)",
        "DIN 743-2, hub seats, for shafts of 40 mm",
        Provenance = Provenance.FromMemory,
        Validity = "Nominal stress of the round section; thinner shafts feel a little less.")]
    public static NotchFactors Seat(
        [Quantity("seat", Dimension.Number)] SeatKind seat,
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Sut", Above = 0)] double tensile)
    {
        var strength = tensile / 1e9;
        var (bending, torsion) = seat == SeatKind.Keyed
            ? (3 * Math.Pow(strength, 0.38), (0.56 * 3 * Math.Pow(strength, 0.38)) + 0.1)
            : (2.7 * Math.Pow(strength, 0.43), 0.65 * 2.7 * Math.Pow(strength, 0.43));
        return new NotchFactors(Math.Max(1, bending), Math.Max(1, torsion));
    }

    private static double Between((double Step, double A, double B)[] rows, double step, double sharp)
    {
        var upper = Math.Clamp(Array.FindIndex(rows, r => r.Step >= step), 1, rows.Length - 1);
        upper = step > rows[^1].Step ? rows.Length - 1 : upper;
        var (low, high) = (rows[upper - 1], rows[upper]);
        var share = Math.Clamp((step - low.Step) / (high.Step - low.Step), 0, 1);
        return ((1 - share) * low.A * Math.Pow(sharp, low.B)) + (share * high.A * Math.Pow(sharp, high.B));
    }
}
