using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>A press fit that spins: the hub grows more than the shaft and the pressure falls.</summary>
public static class SpinningFit
{
    private const string Source = "Lamé press fit superposed on rotating rings; DIN 7190-1";

    /// <summary>Joint pressure of a press fit at speed, Pa; zero once it has lifted off.</summary>
    /// <param name="interference">Diametral interference at rest, m.</param>
    /// <param name="diameter">Joint diameter, m.</param>
    /// <param name="hubDiameter">Outer diameter of the hub, m.</param>
    /// <param name="speed">Rotational speed, rad/s.</param>
    /// <param name="hubModulus">Young's modulus of the hub, Pa.</param>
    /// <param name="shaftModulus">Young's modulus of the shaft, Pa.</param>
    /// <param name="shaftBore">Bore of a hollow shaft, m; 0 when solid.</param>
    /// <param name="hubPoisson">Poisson's ratio of the hub.</param>
    /// <param name="shaftPoisson">Poisson's ratio of the shaft.</param>
    /// <param name="hubDensity">Density of the hub, kg/m³.</param>
    /// <param name="shaftDensity">Density of the shaft, kg/m³.</param>
    [Formula("press fit pressure at speed", "p = p0 (U - d w^2 / 4 (ρo / Eo ((3 + νo) do^2 + (1 - νo) d^2) - ρi / Ei ((3 + νi) di^2 + (1 - νi) d^2)) / 4) / U", Source, Provenance = Provenance.FromMemory, Validity = "p0 is the pressure at rest; hub and shaft as rings of constant thickness, elastic")]
    [return: Quantity("joint pressure", Dimension.Pressure, "MPa", Symbol = "p")]
    public static double Pressure(
        [Quantity("interference", Dimension.Length, "mm", Symbol = "U", Min = 0)] double interference,
        [Quantity("joint diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("hub outer diameter", Dimension.Length, "mm", Symbol = "do", Above = 0)] double hubDiameter,
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("elastic modulus of the hub", Dimension.Pressure, "GPa", Symbol = "Eo", Above = 0)] double hubModulus = 205e9,
        [Quantity("elastic modulus of the shaft", Dimension.Pressure, "GPa", Symbol = "Ei", Above = 0)] double shaftModulus = 205e9,
        [Quantity("shaft bore", Dimension.Length, "mm", Symbol = "di", Min = 0)] double shaftBore = 0,
        [Quantity("Poisson's ratio of the hub", Dimension.Number, Symbol = "νo", Min = 0, Max = 0.5)] double hubPoisson = 0.3,
        [Quantity("Poisson's ratio of the shaft", Dimension.Number, Symbol = "νi", Min = 0, Max = 0.5)] double shaftPoisson = 0.3,
        [Quantity("density of the hub", Dimension.Density, "kg/m³", Symbol = "ρo", Above = 0)] double hubDensity = 7850,
        [Quantity("density of the shaft", Dimension.Density, "kg/m³", Symbol = "ρi", Above = 0)] double shaftDensity = 7850)
    {
        var lost = speed * speed * LossPerSpeedSquared(diameter, hubDiameter, hubModulus, shaftModulus, shaftBore, hubPoisson, shaftPoisson, hubDensity, shaftDensity);
        var left = Math.Max(0, interference - lost);
        return PressFit.Stress(left, diameter, hubDiameter, hubModulus, shaftModulus, shaftBore, hubPoisson, shaftPoisson).Pressure;
    }

    /// <summary>Speed at which a press fit lifts off, rad/s.</summary>
    /// <param name="interference">Diametral interference at rest, m.</param>
    /// <param name="diameter">Joint diameter, m.</param>
    /// <param name="hubDiameter">Outer diameter of the hub, m.</param>
    /// <param name="hubModulus">Young's modulus of the hub, Pa.</param>
    /// <param name="shaftModulus">Young's modulus of the shaft, Pa.</param>
    /// <param name="shaftBore">Bore of a hollow shaft, m; 0 when solid.</param>
    /// <param name="hubPoisson">Poisson's ratio of the hub.</param>
    /// <param name="shaftPoisson">Poisson's ratio of the shaft.</param>
    /// <param name="hubDensity">Density of the hub, kg/m³.</param>
    /// <param name="shaftDensity">Density of the shaft, kg/m³.</param>
    [Formula("press fit lift-off speed", "w = sqrt(4 U / (d (ρo / Eo ((3 + νo) do^2 + (1 - νo) d^2) - ρi / Ei ((3 + νi) di^2 + (1 - νi) d^2)) / 4))", Source, Provenance = Provenance.FromMemory, Validity = "the hub must grow more than the shaft")]
    [return: Quantity("lift-off speed", Dimension.RotationalSpeed, "rpm", Symbol = "w")]
    public static double LiftOffSpeed(
        [Quantity("interference", Dimension.Length, "mm", Symbol = "U", Min = 0)] double interference,
        [Quantity("joint diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("hub outer diameter", Dimension.Length, "mm", Symbol = "do", Above = 0)] double hubDiameter,
        [Quantity("elastic modulus of the hub", Dimension.Pressure, "GPa", Symbol = "Eo", Above = 0)] double hubModulus = 205e9,
        [Quantity("elastic modulus of the shaft", Dimension.Pressure, "GPa", Symbol = "Ei", Above = 0)] double shaftModulus = 205e9,
        [Quantity("shaft bore", Dimension.Length, "mm", Symbol = "di", Min = 0)] double shaftBore = 0,
        [Quantity("Poisson's ratio of the hub", Dimension.Number, Symbol = "νo", Min = 0, Max = 0.5)] double hubPoisson = 0.3,
        [Quantity("Poisson's ratio of the shaft", Dimension.Number, Symbol = "νi", Min = 0, Max = 0.5)] double shaftPoisson = 0.3,
        [Quantity("density of the hub", Dimension.Density, "kg/m³", Symbol = "ρo", Above = 0)] double hubDensity = 7850,
        [Quantity("density of the shaft", Dimension.Density, "kg/m³", Symbol = "ρi", Above = 0)] double shaftDensity = 7850)
    {
        FormulaDomainException.Unless(hubDiameter > diameter, "hub outer diameter: must be greater than the joint diameter");
        var loss = LossPerSpeedSquared(diameter, hubDiameter, hubModulus, shaftModulus, shaftBore, hubPoisson, shaftPoisson, hubDensity, shaftDensity);
        FormulaDomainException.Unless(loss > 0, "density of the shaft: the shaft grows more than the hub, this fit tightens with speed");
        return Math.Sqrt(interference / loss);
    }

    /// <summary>Diametral interference lost per rotational speed squared: growth of the hub's bore less growth of the shaft.</summary>
    private static double LossPerSpeedSquared(double diameter, double hubDiameter, double hubModulus, double shaftModulus, double shaftBore, double hubPoisson, double shaftPoisson, double hubDensity, double shaftDensity) =>
        Growth(diameter, hubDiameter, hubModulus, hubPoisson, hubDensity) - Growth(diameter, shaftBore, shaftModulus, shaftPoisson, shaftDensity);

    /// <summary>Diametral growth, per speed squared, of a ring at one of its faces; the other face has diameter <paramref name="other"/>.</summary>
    private static double Growth(double diameter, double other, double modulus, double poisson, double density) =>
        diameter * density / (16 * modulus) * (((3 + poisson) * other * other) + ((1 - poisson) * diameter * diameter));
}
