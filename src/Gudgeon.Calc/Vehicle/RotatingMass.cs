using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>What rotating parts add to the mass that must be accelerated.</summary>
/// <param name="Wheels">Both wheels, kg.</param>
/// <param name="Engine">Engine, in the gear given, kg.</param>
/// <param name="Total">Both, kg.</param>
/// <param name="Factor">Accelerated mass over mass.</param>
public readonly record struct EquivalentMass(
    [Quantity("wheels", Dimension.Mass, "kg", Symbol = "mw")] double Wheels,
    [Quantity("engine", Dimension.Mass, "kg", Symbol = "me")] double Engine,
    [Quantity("total", Dimension.Mass, "kg", Symbol = "mt")] double Total,
    [Quantity("mass factor", Dimension.Number, Symbol = "k")] double Factor);

/// <summary>Rotating parts seen as mass at the road.</summary>
public static class RotatingMass
{
    /// <summary>Equivalent mass of wheels and engine.</summary>
    /// <param name="mass">Machine and rider, kg.</param>
    /// <param name="frontInertia">Moment of inertia of the front wheel, kg·m².</param>
    /// <param name="frontRadius">Rolling radius of the front tyre, m.</param>
    /// <param name="rearInertia">Moment of inertia of the rear wheel, kg·m².</param>
    /// <param name="rearRadius">Rolling radius of the rear tyre, m.</param>
    /// <param name="engineInertia">Moment of inertia at crank speed, kg·m².</param>
    /// <param name="ratio">Crank turns per rear-wheel turn in the gear.</param>
    /// <param name="efficiency">Driveline efficiency, 0 to 1.</param>
    /// <returns>Equivalent masses and the mass factor.</returns>
    [Formula("equivalent mass of rotating parts", "mw = If / rf^2 + Ir / rr^2; me = eta Ie (i / rr)^2; mt = mw + me; k = 1 + mt / m", "kinetic energy of the rotating parts over v²/2; efficiency as in Gillespie, Fundamentals of Vehicle Dynamics, ch. 2", Provenance = Provenance.FromMemory)]
    public static EquivalentMass Of(
        [Quantity("mass of machine and rider", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("inertia of the front wheel", Dimension.MomentOfInertia, "kg·m²", Symbol = "If", Min = 0)] double frontInertia,
        [Quantity("radius of the front tyre", Dimension.Length, "mm", Symbol = "rf", Above = 0)] double frontRadius,
        [Quantity("inertia of the rear wheel", Dimension.MomentOfInertia, "kg·m²", Symbol = "Ir", Min = 0)] double rearInertia,
        [Quantity("radius of the rear tyre", Dimension.Length, "mm", Symbol = "rr", Above = 0)] double rearRadius,
        [Quantity("inertia at crank speed", Dimension.MomentOfInertia, "kg·m²", Symbol = "Ie", Min = 0)] double engineInertia,
        [Quantity("overall ratio", Dimension.Number, Symbol = "i", Above = 0)] double ratio,
        [Quantity("driveline efficiency", Dimension.Number, "%", Symbol = "eta", Above = 0, Max = 1)] double efficiency = 1)
    {
        var wheels = (frontInertia / (frontRadius * frontRadius)) + (rearInertia / (rearRadius * rearRadius));
        var turns = ratio / rearRadius;
        var engine = efficiency * engineInertia * turns * turns;
        return new EquivalentMass(wheels, engine, wheels + engine, 1 + ((wheels + engine) / mass));
    }
}
