using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>How the balance shafts are laid out and which of them is out of time.</summary>
public enum BalanceShaftFault
{
    /// <summary>One shaft against a counterweighted crank, the shaft out of time.</summary>
    SingleShaft,

    /// <summary>Two half shafts, both late (or both early).</summary>
    BothLate,

    /// <summary>Two half shafts, one of them out of time.</summary>
    OneOfTwo,

    /// <summary>Two half shafts, one late and the other early.</summary>
    Opposed,
}

/// <summary>One contra-rotating shaft beside a counterweighted crank.</summary>
/// <param name="Unbalance">Mass times radius of the shaft, kg·m.</param>
/// <param name="Residual">Primary force left, N.</param>
/// <param name="Couple">Couple left about the crank axis, amplitude, N·m.</param>
public readonly record struct ContraShaft(
    [Quantity("unbalance of the shaft", Dimension.Unbalance, "kg·mm", Symbol = "U")] double Unbalance,
    [Quantity("primary force left", Dimension.Force, "N", Symbol = "Fr")] double Residual,
    [Quantity("couple left about the crank axis", Dimension.Torque, "N·m", Symbol = "M")] double Couple);

/// <summary>Force left by a balance shaft that is out of time.</summary>
/// <param name="Error">Timing error in shaft angle, rad.</param>
/// <param name="Greatest">Greatest force over a turn, N.</param>
/// <param name="Along">Amplitude along the cylinder, N.</param>
/// <param name="Across">Amplitude across the cylinder, N.</param>
public readonly record struct MistimedShaft(
    [Quantity("timing error of the shaft", Dimension.Angle, "°", Symbol = "d")] double Error,
    [Quantity("greatest force left", Dimension.Force, "N", Symbol = "Fr")] double Greatest,
    [Quantity("force left along the cylinder", Dimension.Force, "N", Symbol = "Fx")] double Along,
    [Quantity("force left across the cylinder", Dimension.Force, "N", Symbol = "Fy")] double Across);

/// <summary>Balance shafts in time and a tooth out.</summary>
public static class BalanceShaft
{
    private const string Source = "Vector sum of the cylinder's and the shafts' turning forces";

    /// <summary>One shaft turning at crank speed against the crank, which carries a counterweight.</summary>
    /// <param name="mass">Reciprocating mass, kg.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="distance">Distance of the shaft from the crank axis across the cylinder, m.</param>
    /// <param name="factor">Balance factor of the crank; a half leaves nothing.</param>
    [Formula(
        "contra-rotating balance shaft",
        "U = m r / 2; Fr = |1/2 - c| m r w^2; M = m r w^2 d / 2",
        Source,
        Provenance = Provenance.Definition)]
    public static ContraShaft Contra(
        [Quantity("reciprocating mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("distance of the shaft from the crank", Dimension.Length, "mm", Symbol = "d", Min = 0)] double distance,
        [Quantity("balance factor", Dimension.Number, "%", Symbol = "c", Min = 0, Max = 1)] double factor = 0.5)
    {
        var primary = mass * radius * speed * speed;
        return new ContraShaft(mass * radius / 2, Math.Abs(0.5 - factor) * primary, primary * distance / 2);
    }

    /// <summary>Force left when a balance shaft is geared a tooth out.</summary>
    /// <param name="force">Amplitude of the shaking force that the shafts are there to cancel, N.</param>
    /// <param name="teeth">Teeth of the shaft's gear.</param>
    /// <param name="fault">Layout and which shaft is out.</param>
    /// <param name="teethOut">How many teeth out.</param>
    [Formula(
        "balance shaft out of time",
        "d = 2 π k / z; single shaft or one of two: Fr = F sin(d / 2), turning; both late: Fr = 2 F sin(d / 2) along the cylinder; opposed: Fx = F (1 - cos(d)), Fy = F sin(d)",
        Source,
        Provenance = Provenance.Definition,
        Validity = "Error counted in shaft angle; on a shaft at twice crank speed that is half as much crank angle.")]
    public static MistimedShaft OutOfTime(
        [Quantity("force to be cancelled", Dimension.Force, "N", Symbol = "F", Min = 0)] double force,
        [Quantity("teeth of the shaft gear", Dimension.Number, Symbol = "z", Min = 4)] int teeth,
        [Quantity("balance shaft fault", Dimension.Number)] BalanceShaftFault fault,
        [Quantity("teeth out", Dimension.Number, Symbol = "k", Min = 0)] int teethOut = 1)
    {
        var error = Math.Tau * teethOut / teeth;
        var turning = force * Math.Abs(Math.Sin(error / 2));
        return fault switch
        {
            BalanceShaftFault.BothLate => new MistimedShaft(error, 2 * turning, 2 * turning, 0),
            BalanceShaftFault.Opposed => new MistimedShaft(error, 2 * turning, force * (1 - Math.Cos(error)), force * Math.Abs(Math.Sin(error))),
            _ => new MistimedShaft(error, turning, turning, turning),
        };
    }
}
