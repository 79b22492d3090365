using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>Loads on the two ends of a connecting rod where they are greatest.</summary>
/// <param name="SmallEndOverlap">Tension at the small end, top dead centre without gas pressure, N.</param>
/// <param name="BigEndOverlap">Tension at the big end, top dead centre without gas pressure, N.</param>
/// <param name="SmallEndFiring">Compression at the small end, top dead centre with gas pressure, N.</param>
/// <param name="BigEndFiring">Compression at the big end, top dead centre with gas pressure, N.</param>
/// <param name="SmallEndBottom">Load at the small end at bottom dead centre, N.</param>
/// <param name="BigEndBottom">Load at the big end at bottom dead centre, N.</param>
public readonly record struct RodEndLoads(
    [Quantity("small end tension at overlap", Dimension.Force, "N", Symbol = "Ss")] double SmallEndOverlap,
    [Quantity("big end tension at overlap", Dimension.Force, "N", Symbol = "Sb")] double BigEndOverlap,
    [Quantity("small end compression at firing", Dimension.Force, "N", Symbol = "Cs")] double SmallEndFiring,
    [Quantity("big end compression at firing", Dimension.Force, "N", Symbol = "Cb")] double BigEndFiring,
    [Quantity("small end load at bottom dead centre", Dimension.Force, "N", Symbol = "Us")] double SmallEndBottom,
    [Quantity("big end load at bottom dead centre", Dimension.Force, "N", Symbol = "Ub")] double BigEndBottom);

/// <summary>Pull on a rod at top dead centre and how far it stretches.</summary>
/// <param name="Force">Tension, N.</param>
/// <param name="Stretch">Stretch, m.</param>
public readonly record struct RodPull(
    [Quantity("rod tension", Dimension.Force, "kN", Symbol = "F")] double Force,
    [Quantity("rod stretch", Dimension.Length, "mm", Symbol = "x")] double Stretch);

/// <summary>Loads and stretch of the connecting rod.</summary>
public static class RodLoads
{
    /// <summary>Loads on both rod ends at the dead centres.</summary>
    /// <param name="pistonSet">Piston, rings, pin and clips, kg.</param>
    /// <param name="smallEnd">Small-end share of the rod, kg.</param>
    /// <param name="bigEnd">Big-end share of the rod, kg.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="pressure">Gas pressure above crankcase pressure at firing top dead centre, Pa.</param>
    [Formula(
        "rod end loads",
        "Ss = mp r w^2 (1 + r / l); Sb = (mp + ms) r w^2 (1 + r / l) + mb r w^2; Cs = p π B^2 / 4 - Ss; Cb = p π B^2 / 4 - Sb; Us = mp r w^2 (1 - r / l); Ub = (mp + ms) r w^2 (1 - r / l) + mb r w^2",
        "Exact slider-crank at the dead centres, rod as two masses",
        Provenance = Provenance.Definition)]
    public static RodEndLoads AtDeadCentres(
        [Quantity("mass of the piston set", Dimension.Mass, "kg", Symbol = "mp", Min = 0)] double pistonSet,
        [Quantity("small-end mass of the rod", Dimension.Mass, "kg", Symbol = "ms", Min = 0)] double smallEnd,
        [Quantity("big-end mass of the rod", Dimension.Mass, "kg", Symbol = "mb", Min = 0)] double bigEnd,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 2)] double bore,
        [Quantity("firing pressure", Dimension.Pressure, "bar", Symbol = "p", Min = 0)] double pressure)
    {
        var acceleration = DeadCentres.Accelerations(radius, rod, speed);
        var rotating = bigEnd * radius * speed * speed;
        var gas = pressure * Math.PI * bore * bore / 4;
        var smallTop = pistonSet * acceleration.Top;
        var bigTop = ((pistonSet + smallEnd) * acceleration.Top) + rotating;
        return new RodEndLoads(
            smallTop,
            bigTop,
            gas - smallTop,
            gas - bigTop,
            pistonSet * acceleration.Bottom,
            ((pistonSet + smallEnd) * acceleration.Bottom) + rotating);
    }

    /// <summary>Tension and stretch of the rod at overlap top dead centre.</summary>
    /// <param name="mass">Reciprocating mass pulling on the rod, kg.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="section">Mean section of the shank, m².</param>
    /// <param name="modulus">Young's modulus of the rod, Pa; 205 GPa for steel, 110 GPa for titanium, 71 GPa for aluminium.</param>
    [Formula(
        "rod stretch",
        "F = m r w^2 (1 + r / l); x = F l / (E A)",
        "Exact slider-crank at top dead centre; Hooke's law on a uniform bar",
        Provenance = Provenance.Definition,
        Validity = "Shank only; the eyes, the pin and the crank add to it.")]
    public static RodPull Stretch(
        [Quantity("reciprocating mass", Dimension.Mass, "kg", Symbol = "m", Min = 0)] double mass,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("section of the shank", Dimension.Area, "mm²", Symbol = "A", Above = 0)] double section,
        [Quantity("Young's modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 205e9)
    {
        var force = mass * DeadCentres.Accelerations(radius, rod, speed).Top;
        return new RodPull(force, force * rod / (modulus * section));
    }
}
