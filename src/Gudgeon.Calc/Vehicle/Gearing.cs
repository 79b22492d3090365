using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>Thrust in a gear.</summary>
/// <param name="Force">At the rear contact, N.</param>
/// <param name="Speed">Road speed at this engine speed, m/s.</param>
public readonly record struct GearThrust(
    [Quantity("thrust", Dimension.Force, "N", Symbol = "F")] double Force,
    [Quantity("road speed", Dimension.Speed, "km/h", Symbol = "v")] double Speed);

/// <summary>From crank to road: primary, gear and final ratio, and the rear tyre.</summary>
public static class Gearing
{
    private const string Source = "one revolution of the wheel is one circumference of road";

    /// <summary>Road speed at an engine speed, m/s; no slip, no growth.</summary>
    /// <param name="engineSpeed">Engine speed, rad/s.</param>
    /// <param name="primary">Crank turns per clutch turn.</param>
    /// <param name="gear">Clutch turns per output-shaft turn.</param>
    /// <param name="final">Output-shaft turns per wheel turn: rear teeth over front teeth.</param>
    /// <param name="circumference">Rolling circumference of the rear tyre, m.</param>
    /// <returns>Road speed, m/s.</returns>
    [Formula("road speed in gear", "v = n C / (ip ig if)", Source, Provenance = Provenance.Definition)]
    [return: Quantity("road speed", Dimension.Speed, "km/h", Symbol = "v")]
    public static double RoadSpeed(
        [Quantity("engine speed", Dimension.RotationalSpeed, "rpm", Symbol = "n", Min = 0)] double engineSpeed,
        [Quantity("primary ratio", Dimension.Number, Symbol = "ip", Above = 0)] double primary,
        [Quantity("gear ratio", Dimension.Number, Symbol = "ig", Above = 0)] double gear,
        [Quantity("final ratio", Dimension.Number, Symbol = "if", Above = 0)] double final,
        [Quantity("rolling circumference", Dimension.Length, "mm", Symbol = "C", Above = 0)] double circumference) =>
        engineSpeed * circumference / (2 * Math.PI * primary * gear * final);

    /// <summary>Engine speed at a road speed, rad/s; no slip, no growth.</summary>
    /// <param name="roadSpeed">Road speed, m/s.</param>
    /// <param name="primary">Crank turns per clutch turn.</param>
    /// <param name="gear">Clutch turns per output-shaft turn.</param>
    /// <param name="final">Output-shaft turns per wheel turn.</param>
    /// <param name="circumference">Rolling circumference of the rear tyre, m.</param>
    /// <returns>Engine speed, rad/s.</returns>
    [Formula("engine speed at road speed", "n = v ip ig if / C", Source, Provenance = Provenance.Definition)]
    [return: Quantity("engine speed", Dimension.RotationalSpeed, "rpm", Symbol = "n")]
    public static double EngineSpeed(
        [Quantity("road speed", Dimension.Speed, "km/h", Symbol = "v", Min = 0)] double roadSpeed,
        [Quantity("primary ratio", Dimension.Number, Symbol = "ip", Above = 0)] double primary,
        [Quantity("gear ratio", Dimension.Number, Symbol = "ig", Above = 0)] double gear,
        [Quantity("final ratio", Dimension.Number, Symbol = "if", Above = 0)] double final,
        [Quantity("rolling circumference", Dimension.Length, "mm", Symbol = "C", Above = 0)] double circumference) =>
        roadSpeed * 2 * Math.PI * primary * gear * final / circumference;

    /// <summary>Final ratio that puts the engine at a speed when the machine is at a road speed.</summary>
    /// <param name="engineSpeed">Engine speed wanted, rad/s.</param>
    /// <param name="roadSpeed">Road speed at which it is wanted, m/s.</param>
    /// <param name="primary">Crank turns per clutch turn.</param>
    /// <param name="gear">Clutch turns per output-shaft turn.</param>
    /// <param name="circumference">Rolling circumference of the rear tyre, m.</param>
    /// <returns>Final ratio: rear teeth over front teeth.</returns>
    [Formula("final ratio for a road speed", "if = n C / (v ip ig)", Source, Provenance = Provenance.Definition)]
    [return: Quantity("final ratio", Dimension.Number, Symbol = "if")]
    public static double FinalRatio(
        [Quantity("engine speed", Dimension.RotationalSpeed, "rpm", Symbol = "n", Above = 0)] double engineSpeed,
        [Quantity("road speed", Dimension.Speed, "km/h", Symbol = "v", Above = 0)] double roadSpeed,
        [Quantity("primary ratio", Dimension.Number, Symbol = "ip", Above = 0)] double primary,
        [Quantity("gear ratio", Dimension.Number, Symbol = "ig", Above = 0)] double gear,
        [Quantity("rolling circumference", Dimension.Length, "mm", Symbol = "C", Above = 0)] double circumference) =>
        engineSpeed * circumference / (2 * Math.PI * roadSpeed * primary * gear);

    /// <summary>Engine speed just after an upshift, rad/s; road speed kept.</summary>
    /// <param name="engineSpeed">Engine speed before the shift, rad/s.</param>
    /// <param name="from">Ratio of the gear left.</param>
    /// <param name="to">Ratio of the gear engaged.</param>
    /// <returns>Engine speed, rad/s.</returns>
    [Formula("engine speed after a shift", "n2 = n1 i2 / i1", Source, Provenance = Provenance.Definition)]
    [return: Quantity("engine speed after the shift", Dimension.RotationalSpeed, "rpm", Symbol = "n2")]
    public static double AfterShift(
        [Quantity("engine speed before the shift", Dimension.RotationalSpeed, "rpm", Symbol = "n1", Min = 0)] double engineSpeed,
        [Quantity("ratio of the gear left", Dimension.Number, Symbol = "i1", Above = 0)] double from,
        [Quantity("ratio of the gear engaged", Dimension.Number, Symbol = "i2", Above = 0)] double to) => engineSpeed * to / from;

    /// <summary>Ratio of a pair of sprockets, pulleys or gears.</summary>
    /// <param name="driving">Teeth on the driving part.</param>
    /// <param name="driven">Teeth on the driven part.</param>
    /// <returns>Turns of the driving part per turn of the driven part.</returns>
    [Formula("ratio from teeth", "i = z2 / z1", "definition of the ratio", Provenance = Provenance.Definition)]
    [return: Quantity("ratio", Dimension.Number, Symbol = "i")]
    public static double Ratio(
        [Quantity("driving teeth", Dimension.Number, Symbol = "z1", Min = 1)] int driving,
        [Quantity("driven teeth", Dimension.Number, Symbol = "z2", Min = 1)] int driven) => (double)driven / driving;

    /// <summary>Thrust at the rear contact in a gear at steady engine speed.</summary>
    /// <param name="torque">Torque at the crank, N·m.</param>
    /// <param name="engineSpeed">Engine speed, rad/s.</param>
    /// <param name="ratio">Overall ratio: crank turns per wheel turn.</param>
    /// <param name="circumference">Rolling circumference of the rear tyre, m.</param>
    /// <param name="efficiency">Driveline efficiency, 0 to 1.</param>
    /// <returns>Thrust and the road speed it is given at.</returns>
    [Formula("thrust in gear", "F = eta T i 2 pi / C; v = n C / i", "power balance from crank to road", Provenance = Provenance.Definition)]
    public static GearThrust Thrust(
        [Quantity("torque at the crank", Dimension.Torque, "N·m", Symbol = "T")] double torque,
        [Quantity("engine speed", Dimension.RotationalSpeed, "rpm", Symbol = "n", Min = 0)] double engineSpeed,
        [Quantity("overall ratio", Dimension.Number, Symbol = "i", Above = 0)] double ratio,
        [Quantity("rolling circumference", Dimension.Length, "mm", Symbol = "C", Above = 0)] double circumference,
        [Quantity("driveline efficiency", Dimension.Number, "%", Symbol = "eta", Above = 0, Max = 1)] double efficiency = 0.9)
    {
        var radius = circumference / (2 * Math.PI);
        return new GearThrust(efficiency * torque * ratio / radius, engineSpeed * radius / ratio);
    }

    /// <summary>Overall ratio that puts the engine at a wanted speed in the speed trap, tyre slip counted in.</summary>
    /// <param name="engineSpeed">Engine speed wanted in the trap, rad/s.</param>
    /// <param name="roadSpeed">Road speed expected in the trap, m/s.</param>
    /// <param name="circumference">Rolling circumference at that speed, m.</param>
    /// <param name="slip">Tyre slip at that speed, 0 to 1.</param>
    /// <returns>Overall ratio.</returns>
    [Formula("overall ratio for the trap", "i = n C / (v (1 + s))", Source, Provenance = Provenance.Definition)]
    [return: Quantity("overall ratio", Dimension.Number, Symbol = "i")]
    public static double TrapRatio(
        [Quantity("engine speed in the trap", Dimension.RotationalSpeed, "rpm", Symbol = "n", Above = 0)] double engineSpeed,
        [Quantity("road speed in the trap", Dimension.Speed, "km/h", Symbol = "v", Above = 0)] double roadSpeed,
        [Quantity("rolling circumference", Dimension.Length, "mm", Symbol = "C", Above = 0)] double circumference,
        [Quantity("tyre slip", Dimension.Number, "%", Symbol = "s", Min = 0, Max = 1)] double slip = 0) =>
        engineSpeed * circumference / (2 * Math.PI * roadSpeed * (1 + slip));
}
