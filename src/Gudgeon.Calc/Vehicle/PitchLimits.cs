using Gudgeon.Calc.Gas;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>What the front wheel allows at speed.</summary>
/// <param name="Acceleration">m/s².</param>
/// <param name="Thrust">Force at the rear contact, N.</param>
/// <param name="Power">Power at the rear contact, W.</param>
public readonly record struct LimitAtSpeed(
    [Quantity("acceleration", Dimension.Acceleration, "m/s²", Symbol = "a")] double Acceleration,
    [Quantity("thrust", Dimension.Force, "N", Symbol = "F")] double Thrust,
    [Quantity("power at the road", Dimension.Power, "kW", Symbol = "P")] double Power);

/// <summary>Loads on the tyres.</summary>
/// <param name="Rear">N.</param>
/// <param name="Front">N; below zero the front wheel has lifted and the figure has no meaning.</param>
/// <param name="Transfer">Load moved from front to rear, N.</param>
public readonly record struct TyreLoads(
    [Quantity("rear load", Dimension.Force, "N", Symbol = "Nr")] double Rear,
    [Quantity("front load", Dimension.Force, "N", Symbol = "Nf")] double Front,
    [Quantity("load transfer", Dimension.Force, "N", Symbol = "dN")] double Transfer);

/// <summary>How hard a motorcycle can accelerate before the front wheel lifts or the rear tyre slips.</summary>
public static class PitchLimits
{
    private const string Source = "moments about the rear contact; Cossalter, Motorcycle Dynamics, and Foale, Motorcycle Handling and Chassis Design (load transfer)";

    /// <summary>Acceleration at which the front wheel lifts, without drag, m/s².</summary>
    /// <param name="ahead">Centre of gravity ahead of the rear contact, m.</param>
    /// <param name="height">Height of the centre of gravity, m.</param>
    /// <param name="gravity">Acceleration of free fall, m/s².</param>
    /// <returns>Acceleration, m/s². A popular form with (wheelbase - b) or a height difference on top is wrong.</returns>
    [Formula("wheelie limit", "a = g b / h", Source, Provenance = Provenance.FromMemory)]
    [return: Quantity("acceleration at the wheelie limit", Dimension.Acceleration, "m/s²", Symbol = "a")]
    public static double Wheelie(
        [Quantity("centre of gravity ahead of the rear contact", Dimension.Length, "mm", Symbol = "b", Above = 0)] double ahead,
        [Quantity("height of the centre of gravity", Dimension.Length, "mm", Symbol = "h", Above = 0)] double height,
        [Quantity("acceleration of free fall", Dimension.Acceleration, "m/s²", Symbol = "g", Above = 0)] double gravity = PhysicalConstants.StandardGravity) =>
        gravity * ahead / height;

    /// <summary>Least tyre friction with which the front wheel can be lifted: where grip limit and wheelie limit meet.</summary>
    /// <param name="ahead">Centre of gravity ahead of the rear contact, m.</param>
    /// <param name="height">Height of the centre of gravity, m.</param>
    /// <returns>Friction coefficient.</returns>
    [Formula("least friction for a wheelie", "mu = b / h", Source, Provenance = Provenance.FromMemory)]
    [return: Quantity("friction", Dimension.Number, Symbol = "mu")]
    public static double WheelieFriction(
        [Quantity("centre of gravity ahead of the rear contact", Dimension.Length, "mm", Symbol = "b", Above = 0)] double ahead,
        [Quantity("height of the centre of gravity", Dimension.Length, "mm", Symbol = "h", Above = 0)] double height) => ahead / height;

    /// <summary>Acceleration, thrust and power at which the front wheel lifts at a speed, with drag.</summary>
    /// <param name="mass">Machine and rider, kg.</param>
    /// <param name="ahead">Centre of gravity ahead of the rear contact, m.</param>
    /// <param name="height">Height of the centre of gravity, m.</param>
    /// <param name="speed">Road speed, m/s.</param>
    /// <param name="dragArea">Drag coefficient times frontal area, m².</param>
    /// <param name="dragHeight">Height of the centre of drag, m.</param>
    /// <param name="density">Air density, kg/m³.</param>
    /// <param name="gravity">Acceleration of free fall, m/s².</param>
    /// <returns>The limit; negative acceleration means that drag alone lifts the wheel.</returns>
    [Formula("wheelie limit with drag", "D = rho A v^2 / 2; a = (m g b - D hd) / (m h); F = m a + D; P = F v", Source, Provenance = Provenance.FromMemory, Validity = "Still air; no lift; wheels' own inertia not counted.")]
    public static LimitAtSpeed WheelieWithDrag(
        [Quantity("mass of machine and rider", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("centre of gravity ahead of the rear contact", Dimension.Length, "mm", Symbol = "b", Above = 0)] double ahead,
        [Quantity("height of the centre of gravity", Dimension.Length, "mm", Symbol = "h", Above = 0)] double height,
        [Quantity("road speed", Dimension.Speed, "km/h", Symbol = "v", Min = 0)] double speed,
        [Quantity("drag area", Dimension.Area, "m²", Symbol = "A", Min = 0)] double dragArea,
        [Quantity("height of the centre of drag", Dimension.Length, "mm", Symbol = "hd", Min = 0)] double dragHeight,
        [Quantity("air density", Dimension.Density, "kg/m³", Symbol = "rho", Min = 0)] double density = 1.225,
        [Quantity("acceleration of free fall", Dimension.Acceleration, "m/s²", Symbol = "g", Above = 0)] double gravity = PhysicalConstants.StandardGravity)
    {
        var drag = AirDrag.Force(dragArea, speed, density);
        var acceleration = ((mass * gravity * ahead) - (drag * dragHeight)) / (mass * height);
        return AtSpeed(mass, acceleration, drag, speed);
    }

    /// <summary>Acceleration at which the rear tyre slips, without drag, load transfer counted in, m/s².</summary>
    /// <param name="wheelbase">Wheelbase, m.</param>
    /// <param name="ahead">Centre of gravity ahead of the rear contact, m.</param>
    /// <param name="height">Height of the centre of gravity, m.</param>
    /// <param name="friction">Friction coefficient of tyre on strip.</param>
    /// <param name="gravity">Acceleration of free fall, m/s².</param>
    /// <returns>Acceleration, m/s²; beyond the wheelie limit the front wheel lifts first.</returns>
    [Formula("traction limit", "a = mu g (p - b) / (p - mu h)", Source, Provenance = Provenance.FromMemory, Validity = "Up to the friction where the front wheel lifts, mu = b / h.")]
    [return: Quantity("acceleration at the traction limit", Dimension.Acceleration, "m/s²", Symbol = "a")]
    public static double Traction(
        [Quantity("wheelbase", Dimension.Length, "mm", Symbol = "p", Above = 0)] double wheelbase,
        [Quantity("centre of gravity ahead of the rear contact", Dimension.Length, "mm", Symbol = "b", Above = 0)] double ahead,
        [Quantity("height of the centre of gravity", Dimension.Length, "mm", Symbol = "h", Above = 0)] double height,
        [Quantity("friction of tyre on strip", Dimension.Number, Symbol = "mu", Above = 0)] double friction,
        [Quantity("acceleration of free fall", Dimension.Acceleration, "m/s²", Symbol = "g", Above = 0)] double gravity = PhysicalConstants.StandardGravity)
    {
        BetweenTheWheels(ahead, wheelbase);
        FormulaDomainException.Unless(friction * height < wheelbase, "friction of tyre on strip: so much that load transfer outruns the drive force; the tyre does not slip, the front wheel lifts");
        return friction * gravity * (wheelbase - ahead) / (wheelbase - (friction * height));
    }

    /// <summary>Acceleration, thrust and power at which the rear tyre slips at a speed, with drag.</summary>
    /// <param name="mass">Machine and rider, kg.</param>
    /// <param name="wheelbase">Wheelbase, m.</param>
    /// <param name="ahead">Centre of gravity ahead of the rear contact, m.</param>
    /// <param name="height">Height of the centre of gravity, m.</param>
    /// <param name="friction">Friction coefficient of tyre on strip.</param>
    /// <param name="speed">Road speed, m/s.</param>
    /// <param name="dragArea">Drag coefficient times frontal area, m².</param>
    /// <param name="dragHeight">Height of the centre of drag, m.</param>
    /// <param name="density">Air density, kg/m³.</param>
    /// <param name="gravity">Acceleration of free fall, m/s².</param>
    /// <returns>The limit.</returns>
    [Formula("traction limit with drag", "D = rho A v^2 / 2; a = (mu (m g (p - b) + D hd) - D p) / (m (p - mu h)); F = m a + D; P = F v", Source, Provenance = Provenance.FromMemory, Validity = "Up to the friction where the front wheel lifts; still air; no lift.")]
    public static LimitAtSpeed TractionWithDrag(
        [Quantity("mass of machine and rider", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("wheelbase", Dimension.Length, "mm", Symbol = "p", Above = 0)] double wheelbase,
        [Quantity("centre of gravity ahead of the rear contact", Dimension.Length, "mm", Symbol = "b", Above = 0)] double ahead,
        [Quantity("height of the centre of gravity", Dimension.Length, "mm", Symbol = "h", Above = 0)] double height,
        [Quantity("friction of tyre on strip", Dimension.Number, Symbol = "mu", Above = 0)] double friction,
        [Quantity("road speed", Dimension.Speed, "km/h", Symbol = "v", Min = 0)] double speed,
        [Quantity("drag area", Dimension.Area, "m²", Symbol = "A", Min = 0)] double dragArea,
        [Quantity("height of the centre of drag", Dimension.Length, "mm", Symbol = "hd", Min = 0)] double dragHeight,
        [Quantity("air density", Dimension.Density, "kg/m³", Symbol = "rho", Min = 0)] double density = 1.225,
        [Quantity("acceleration of free fall", Dimension.Acceleration, "m/s²", Symbol = "g", Above = 0)] double gravity = PhysicalConstants.StandardGravity)
    {
        BetweenTheWheels(ahead, wheelbase);
        FormulaDomainException.Unless(friction * height < wheelbase, "friction of tyre on strip: so much that load transfer outruns the drive force; the tyre does not slip, the front wheel lifts");
        var drag = AirDrag.Force(dragArea, speed, density);
        var grip = friction * ((mass * gravity * (wheelbase - ahead)) + (drag * dragHeight));
        return AtSpeed(mass, (grip - (drag * wheelbase)) / (mass * (wheelbase - (friction * height))), drag, speed);
    }

    /// <summary>Loads on the tyres while accelerating.</summary>
    /// <param name="mass">Machine and rider, kg.</param>
    /// <param name="wheelbase">Wheelbase, m.</param>
    /// <param name="ahead">Centre of gravity ahead of the rear contact, m.</param>
    /// <param name="height">Height of the centre of gravity, m.</param>
    /// <param name="acceleration">Acceleration, m/s²; negative under braking.</param>
    /// <param name="drag">Drag force, N.</param>
    /// <param name="dragHeight">Height of the centre of drag, m.</param>
    /// <param name="gravity">Acceleration of free fall, m/s².</param>
    /// <returns>Rear and front load and the transfer.</returns>
    [Formula("tyre loads under acceleration", "dN = (m a h + D hd) / p; Nr = m g (p - b) / p + dN; Nf = m g b / p - dN", Source, Provenance = Provenance.FromMemory)]
    public static TyreLoads Loads(
        [Quantity("mass of machine and rider", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("wheelbase", Dimension.Length, "mm", Symbol = "p", Above = 0)] double wheelbase,
        [Quantity("centre of gravity ahead of the rear contact", Dimension.Length, "mm", Symbol = "b", Above = 0)] double ahead,
        [Quantity("height of the centre of gravity", Dimension.Length, "mm", Symbol = "h", Above = 0)] double height,
        [Quantity("acceleration", Dimension.Acceleration, "m/s²", Symbol = "a")] double acceleration,
        [Quantity("drag force", Dimension.Force, "N", Symbol = "D", Min = 0)] double drag = 0,
        [Quantity("height of the centre of drag", Dimension.Length, "mm", Symbol = "hd", Min = 0)] double dragHeight = 0,
        [Quantity("acceleration of free fall", Dimension.Acceleration, "m/s²", Symbol = "g", Above = 0)] double gravity = PhysicalConstants.StandardGravity)
    {
        BetweenTheWheels(ahead, wheelbase);
        var transfer = ((mass * acceleration * height) + (drag * dragHeight)) / wheelbase;
        var weight = mass * gravity;
        return new TyreLoads((weight * (wheelbase - ahead) / wheelbase) + transfer, (weight * ahead / wheelbase) - transfer, transfer);
    }

    private static LimitAtSpeed AtSpeed(double mass, double acceleration, double drag, double speed)
    {
        var thrust = (mass * acceleration) + drag;
        return new LimitAtSpeed(acceleration, thrust, thrust * speed);
    }

    private static void BetweenTheWheels(double ahead, double wheelbase) =>
        FormulaDomainException.Unless(ahead < wheelbase, "centre of gravity ahead of the rear contact: must be less than the wheelbase");
}
