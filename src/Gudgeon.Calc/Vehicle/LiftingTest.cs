using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>Centre of gravity found on scales.</summary>
/// <param name="Ahead">Ahead of the rear contact, m.</param>
/// <param name="Height">Above the ground, m.</param>
/// <param name="Tilt">Angle by which the machine was tilted, rad.</param>
public readonly record struct LiftedCentre(
    [Quantity("centre of gravity ahead of the rear contact", Dimension.Length, "mm", Symbol = "b")] double Ahead,
    [Quantity("height of the centre of gravity", Dimension.Length, "mm", Symbol = "h")] double Height,
    [Quantity("tilt", Dimension.Angle, "°", Symbol = "th")] double Tilt);

/// <summary>Height of the centre of gravity by weighing level and with one end raised.</summary>
public static class LiftingTest
{
    /// <summary>Centre of gravity from the front load, level and with the front raised.</summary>
    /// <param name="wheelbase">Wheelbase, m.</param>
    /// <param name="mass">Total mass, kg.</param>
    /// <param name="frontLevel">Scale reading under the front wheel, level, kg.</param>
    /// <param name="frontRaised">Scale reading under the front wheel, raised, kg.</param>
    /// <param name="rise">How far the front wheel was raised, m.</param>
    /// <param name="rearRadius">Loaded radius of the rear tyre, m.</param>
    /// <param name="frontRadius">Loaded radius of the front tyre, m.</param>
    /// <returns>Position of the centre of gravity and the tilt.</returns>
    [Formula(
        "centre of gravity by lifting the front",
        "b = Wf p / W; th = asin((H + rf - rr) / (p^2 + (rf - rr)^2)^0.5) - atan((rf - rr) / p); h = rr + (Wf - Wr) p / (W tan(th)) + Wr (rf - rr) / W",
        "moments about the rear axle, level and tilted; for equal wheels the usual h = R + dW p / (W tan(th)), sin(th) = H / p",
        Provenance = Provenance.Definition,
        Validity = "Suspension locked, wheels free to turn, fluids in place.",
        Caution = "Tie the machine down before it is raised. Half a kilogram of scale error moves the height by about 10 mm: raise it far.")]
    public static LiftedCentre FrontRaised(
        [Quantity("wheelbase", Dimension.Length, "mm", Symbol = "p", Above = 0)] double wheelbase,
        [Quantity("total mass", Dimension.Mass, "kg", Symbol = "W", Above = 0)] double mass,
        [Quantity("front reading, level", Dimension.Mass, "kg", Symbol = "Wf", Above = 0)] double frontLevel,
        [Quantity("front reading, raised", Dimension.Mass, "kg", Symbol = "Wr", Min = 0)] double frontRaised,
        [Quantity("rise of the front wheel", Dimension.Length, "mm", Symbol = "H", Above = 0)] double rise,
        [Quantity("radius of the rear tyre", Dimension.Length, "mm", Symbol = "rr", Above = 0)] double rearRadius,
        [Quantity("radius of the front tyre", Dimension.Length, "mm", Symbol = "rf", Above = 0)] double frontRadius)
    {
        var step = frontRadius - rearRadius;
        var axles = Math.Sqrt((wheelbase * wheelbase) + (step * step));
        FormulaDomainException.Unless(rise + step < axles, "rise of the front wheel: must be less than the wheelbase");
        FormulaDomainException.Unless(frontLevel < mass, "front reading, level: must be less than the total mass");
        var tilt = Math.Asin((rise + step) / axles) - Math.Atan2(step, wheelbase);
        var moved = (frontLevel - frontRaised) * wheelbase / (mass * Math.Tan(tilt));
        return new LiftedCentre(frontLevel * wheelbase / mass, rearRadius + moved + (frontRaised * step / mass), tilt);
    }
    /// <summary>Centre of gravity from the front load, level and with the rear raised.</summary>
    /// <param name="wheelbase">Wheelbase, m.</param>
    /// <param name="mass">Total mass, kg.</param>
    /// <param name="frontLevel">Scale reading under the front wheel, level, kg.</param>
    /// <param name="frontTilted">Scale reading under the front wheel with the rear raised, kg.</param>
    /// <param name="rise">How far the rear wheel was raised, m.</param>
    /// <param name="rearRadius">Loaded radius of the rear tyre, m.</param>
    /// <param name="frontRadius">Loaded radius of the front tyre, m.</param>
    /// <returns>Position of the centre of gravity and the tilt.</returns>
    [Formula(
        "centre of gravity by lifting the rear",
        "b = Wf p / W; th = asin((H + rr - rf) / (p^2 + (rf - rr)^2)^0.5) - atan((rr - rf) / p); h = rf + (Wt - Wf) p / (W tan(th)) + (W - Wt) (rr - rf) / W",
        "moments about the front axle, level and tilted",
        Provenance = Provenance.Definition,
        Validity = "Suspension locked, wheels free to turn, fluids in place.",
        Caution = "Tie the machine down before it is raised. Half a kilogram of scale error moves the height by about 10 mm: raise it far.")]
    public static LiftedCentre RearRaised(
        [Quantity("wheelbase", Dimension.Length, "mm", Symbol = "p", Above = 0)] double wheelbase,
        [Quantity("total mass", Dimension.Mass, "kg", Symbol = "W", Above = 0)] double mass,
        [Quantity("front reading, level", Dimension.Mass, "kg", Symbol = "Wf", Above = 0)] double frontLevel,
        [Quantity("front reading, rear raised", Dimension.Mass, "kg", Symbol = "Wt", Above = 0)] double frontTilted,
        [Quantity("rise of the rear wheel", Dimension.Length, "mm", Symbol = "H", Above = 0)] double rise,
        [Quantity("radius of the rear tyre", Dimension.Length, "mm", Symbol = "rr", Above = 0)] double rearRadius,
        [Quantity("radius of the front tyre", Dimension.Length, "mm", Symbol = "rf", Above = 0)] double frontRadius)
    {
        FormulaDomainException.Unless(frontLevel < mass && frontTilted <= mass, "front readings: must be less than the total mass");

        // The mirror image of the other test, seen from the front axle.
        var mirrored = FrontRaised(wheelbase, mass, mass - frontLevel, mass - frontTilted, rise, frontRadius, rearRadius);
        return mirrored with { Ahead = wheelbase - mirrored.Ahead };
    }
}
