using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>Counterweight of a single-throw crank and what is left.</summary>
/// <param name="Mass">Counterweight mass at its radius, kg.</param>
/// <param name="ResidualAlong">Primary force left along the cylinder, N.</param>
/// <param name="ResidualAcross">Primary force left across the cylinder, N.</param>
public readonly record struct Counterweight(
    [Quantity("counterweight mass", Dimension.Mass, "kg", Symbol = "B")] double Mass,
    [Quantity("primary force left along the cylinder", Dimension.Force, "N", Symbol = "Fx")] double ResidualAlong,
    [Quantity("primary force left across the cylinder", Dimension.Force, "N", Symbol = "Fy")] double ResidualAcross);

/// <summary>Shaking force of a single at a balance factor.</summary>
/// <param name="Primary">Primary force of the reciprocating mass before counterweight, N.</param>
/// <param name="Along">Primary force left along the cylinder, N.</param>
/// <param name="Across">Primary force left across the cylinder, N.</param>
/// <param name="Secondary">Secondary force along the cylinder, which no counterweight touches, N.</param>
public readonly record struct SingleShaking(
    [Quantity("primary force", Dimension.Force, "N", Symbol = "F")] double Primary,
    [Quantity("primary force left along the cylinder", Dimension.Force, "N", Symbol = "Fx")] double Along,
    [Quantity("primary force left across the cylinder", Dimension.Force, "N", Symbol = "Fy")] double Across,
    [Quantity("secondary force", Dimension.Force, "N", Symbol = "F2")] double Secondary);

/// <summary>Counterweights, balance factor and bob weight.</summary>
public static class CrankBalance
{
    /// <summary>Counterweight for the rotating mass and a share of the reciprocating mass.</summary>
    /// <param name="rotating">Rotating mass at the crank pin, kg.</param>
    /// <param name="reciprocating">Reciprocating mass, kg.</param>
    /// <param name="factor">Share of the reciprocating mass that is balanced.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="weightRadius">Radius of the counterweight's centre of mass, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    [Formula(
        "crank counterweight",
        "B = (M + c R) r / b; Fx = (1 - c) R r w^2; Fy = c R r w^2",
        "Bevan, The Theory of Machines, 3rd ed., ch. 14")]
    public static Counterweight CounterweightFor(
        [Quantity("rotating mass", Dimension.Mass, "kg", Symbol = "M", Min = 0)] double rotating,
        [Quantity("reciprocating mass", Dimension.Mass, "kg", Symbol = "R", Min = 0)] double reciprocating,
        [Quantity("balance factor", Dimension.Number, "%", Symbol = "c", Min = 0, Max = 1)] double factor,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("radius of the counterweight", Dimension.Length, "mm", Symbol = "b", Above = 0, Max = 4)] double weightRadius,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed)
    {
        var primary = reciprocating * radius * speed * speed;
        return new Counterweight((rotating + (factor * reciprocating)) * radius / weightRadius, (1 - factor) * primary, factor * primary);
    }

    /// <summary>Shaking force of one cylinder at a balance factor.</summary>
    /// <param name="mass">Reciprocating mass, kg.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="factor">Share of the reciprocating mass that is balanced.</param>
    [Formula(
        "shaking of a single",
        "F = m r w^2; Fx = (1 - c) F; Fy = c F; F2 = F r / l",
        "Two-term law; Bevan, The Theory of Machines, 3rd ed., ch. 14",
        Validity = "Rotating mass fully balanced. At 50 % the rest is the same in every direction and turns against the crank.")]
    public static SingleShaking Single(
        [Quantity("reciprocating mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("balance factor", Dimension.Number, "%", Symbol = "c", Min = 0, Max = 1)] double factor = 0.5)
    {
        SliderCrank.RequireRunning(radius, rod, 0);
        var primary = mass * radius * speed * speed;
        return new SingleShaking(primary, (1 - factor) * primary, factor * primary, primary * radius / rod);
    }

    /// <summary>Bob weight to hang on a crank pin for balancing, kg.</summary>
    /// <param name="rotating">Rotating mass of all rods on that pin, kg.</param>
    /// <param name="reciprocating">Reciprocating mass of all cylinders on that pin, kg.</param>
    /// <param name="factor">Balance factor.</param>
    [Formula(
        "bob weight",
        "W = M + c R",
        "Trade definition: all of the rotating mass and the balance factor's share of the reciprocating mass",
        Provenance = Provenance.CommonPractice,
        Validity = "The crank pin itself stays in place and is not counted.")]
    [return: Quantity("bob weight", Dimension.Mass, "g", Symbol = "W")]
    public static double BobWeight(
        [Quantity("rotating mass on the pin", Dimension.Mass, "g", Symbol = "M", Min = 0)] double rotating,
        [Quantity("reciprocating mass on the pin", Dimension.Mass, "g", Symbol = "R", Min = 0)] double reciprocating,
        [Quantity("balance factor", Dimension.Number, "%", Symbol = "c", Min = 0, Max = 1)] double factor) =>
        rotating + (factor * reciprocating);

    /// <summary>Balance factor of a crank from the bob weight that it balances with.</summary>
    /// <param name="bobWeight">Weight on the crank pin with which the crank rests in any position, kg.</param>
    /// <param name="rotating">Rotating mass of all rods on that pin, kg.</param>
    /// <param name="reciprocating">Reciprocating mass of all cylinders on that pin, kg.</param>
    [Formula("balance factor from bob weight", "c = (W - M) / R", "Trade definition of the balance factor", Provenance = Provenance.CommonPractice)]
    [return: Quantity("balance factor", Dimension.Number, "%", Symbol = "c")]
    public static double Factor(
        [Quantity("balancing bob weight", Dimension.Mass, "g", Symbol = "W", Min = 0)] double bobWeight,
        [Quantity("rotating mass on the pin", Dimension.Mass, "g", Symbol = "M", Min = 0)] double rotating,
        [Quantity("reciprocating mass on the pin", Dimension.Mass, "g", Symbol = "R", Above = 0)] double reciprocating) =>
        (bobWeight - rotating) / reciprocating;

    /// <summary>Permissible residual unbalance of a rotor by balance quality grade, kg·m.</summary>
    /// <param name="grade">Balance quality grade, the product of eccentricity and speed, m/s: G 6.3 is 6.3 mm/s.</param>
    /// <param name="mass">Mass of the rotor, kg.</param>
    /// <param name="speed">Highest service speed, rad/s.</param>
    [Formula("permissible residual unbalance", "U = G m / w", "ISO 21940-11:2016", Provenance = Provenance.FromMemory)]
    [return: Quantity("permissible residual unbalance", Dimension.Unbalance, "g·mm", Symbol = "U")]
    public static double Permissible(
        [Quantity("balance quality grade", Dimension.Speed, "mm/s", Symbol = "G", Above = 0)] double grade,
        [Quantity("rotor mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("service speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double speed) =>
        grade * mass / speed;
}
