using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Limits;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Tests;

/// <summary>
/// An invented 500 cc single that the engine model can run, bare and blown, with one desk for each so that no run is made twice.
/// </summary>
internal static class Engines
{
    private static readonly (int Speed, double Flow, double Ratio, double Efficiency)[] Map =
    [
        (30000, 0.012, 1.11, 0.66), (30000, 0.040, 1.10, 0.75), (30000, 0.075, 1.06, 0.55),
        (48000, 0.022, 1.30, 0.70), (48000, 0.070, 1.28, 0.78), (48000, 0.125, 1.14, 0.55),
        (66000, 0.034, 1.62, 0.70), (66000, 0.100, 1.56, 0.78), (66000, 0.170, 1.26, 0.55),
    ];

    private const double Rpm = Math.PI / 30;
    private static readonly Lazy<Ladder> BlownLadder = new(ClimbBlown);
    private static readonly Lazy<Ladder> BareLadder = new(ClimbBare);

    public static BuildBook Bare { get; } = Books.Of(
        ("engine.cylinders", "1"),
        ("engine.revLimit", "8000 rpm"),
        ("engine.runFrom", "5000 rpm"),
        ("engine.pistonAccelerationLimit", "52000 m/s²"),
        ("crank.stroke", "75.2 mm"),
        ("rod.length", "145 mm"),
        ("rod.smallEndMass", "132 g"),
        ("rod.shankArea", "185 mm²"),
        ("piston.mass", "405 g"),
        ("piston.peakPressureLimit", "75 bar"),
        ("cylinder.bore", "92 mm"),
        ("cylinder.chamberVolume", "54 cm³"),
        ("cylinder.domeVolume", "-1 cm³"),
        ("cylinder.deckHeight", "0.3 mm"),
        ("cylinder.gasketThickness", "0.8 mm"),
        ("cylinder.gasketBore", "93.5 mm"),
        ("cylinder.ratioMin", "8.5"),
        ("cylinder.ratioMax", "9.5"),
        ("valve[inlet].count", "2"),
        ("valve[inlet].headDiameter", "38 mm"),
        ("valve[inlet].lift", "9 mm"),
        ("valve[inlet].opens", "52°"),
        ("valve[inlet].closes", "68°"),
        ("valve[inlet].flowTable", "1 mm at 0.62; 4 mm at 0.6; 9 mm at 0.5"),
        ("valve[exhaust].count", "2"),
        ("valve[exhaust].headDiameter", "32.5 mm"),
        ("valve[exhaust].lift", "8.5 mm"),
        ("valve[exhaust].opens", "84°"),
        ("valve[exhaust].closes", "36°"),
        ("valve[exhaust].flowTable", "1 mm at 0.62; 4 mm at 0.6; 9 mm at 0.5"),
        ("spring[inlet].loadTable", "286 N at 39 mm; 604 N at 29 mm"),
        ("spring[inlet].installedHeight", "39 mm"),
        ("spring[inlet].solidHeight", "24.6 mm"),
        ("spring[inlet].seatLoadMin", "250 N"),
        ("spring[exhaust].loadTable", "286 N at 39 mm; 604 N at 29 mm"),
        ("spring[exhaust].installedHeight", "39 mm"),
        ("spring[exhaust].solidHeight", "24.6 mm"),
        ("intake.filterArea", "3200 mm²"),
        ("intake.throttleArea", "1550 mm²"),
        ("intake.plenumVolume", "0.25 L"),
        ("intake.portVolume", "230 cm³"),
        ("intake.runnerArea", "1500 mm²"),
        ("exhaust.collectorVolume", "3 L"),
        ("exhaust.outletArea", "1400 mm²"),
        ("blower.kind", "none"),
        ("fuel.kind", "petrol 98"),
        ("fuel.lambda", "0.88"),
        ("fuel.injectors", "1"),
        ("fuel.injectorFlow", "5.5 g/s"),
        ("joint[head].bolts", "4"),
        ("joint[head].cylinders", "1"),
        ("joint[head].thread", "10 mm"),
        ("joint[head].pitch", "1.5 mm"),
        ("joint[head].yieldStrength", "940 MPa"),
        ("joint[head].modulus", "205 GPa"),
        ("joint[head].grip", "128 mm"),
        ("joint[head].bearingDiameter", "17 mm"),
        ("joint[head].holeDiameter", "10.6 mm"),
        ("joint[head].outerDiameter", "26 mm"),
        ("joint[head].clampedModulus", "72 GPa"),
        ("joint[head].torque", "44 N·m"),
        ("joint[head].method", "torque estimated b"),
        ("joint[head].threadFriction", "0.12"),
        ("joint[head].headFriction", "0.12"),
        ("joint[head].embedding", "13 µm"),
        ("joint[head].sealDiameter", "94 mm"),
        ("clutch.faces", "14"),
        ("clutch.outerDiameter", "124 mm"),
        ("clutch.innerDiameter", "96 mm"),
        ("clutch.springLoad", "1750 N"),
        ("clutch.friction", "0.13"),
        ("driveline.primary", "2.35"));

    /// <summary>The same with a Roots blower of 400 cm³ a turn and race petrol.</summary>
    public static BuildBook Blown { get; } = Bare.Set(
        ("fuel.kind", "race petrol 102"),
        ("blower.kind", "positive displacement"),
        ("blower.driveRatio", "0.9"),
        ("blower.displacement", "400 cm³"),
        ("blower.maxSpeed", "14000 rpm"));

    /// <summary>The same with a centrifugal blower of three speed lines.</summary>
    public static BuildBook Centrifugal { get; } = Blown.Set(
        ("blower.kind", "centrifugal"),
        ("blower.driveRatio", "1"),
        ("blower.stepUp", "7.5"),
        ("blower.mapTemperature", "15 °C"),
        ("blower.mapPressure", "101.325 kPa"),
        ("blower.map", string.Join("; ", Map.Select(p => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{p.Speed} rpm at {p.Flow} kg/s at {p.Ratio} at {p.Efficiency}")))));

    /// <summary>A twin of two such cylinders with a turbocharger whose rotor suits the slow compressor, and with pipes.</summary>
    public static BuildBook Turbo { get; } = Centrifugal.Without("blower.driveRatio").Without("blower.stepUp").Without("blower.maxSpeed").Without("exhaust.outletArea").Set(
        ("engine.cylinders", "2"),
        ("engine.firingIntervals", "360-360"),
        ("fuel.injectors", "2"),
        ("intake.filterArea", "6400 mm²"),
        ("intake.throttleArea", "3100 mm²"),
        ("intake.plenumVolume", "2 L"),
        ("intake.runner.length", "240 mm"),
        ("intake.runner.diameter", "46 mm"),
        ("exhaust.primary.length", "350 mm"),
        ("exhaust.primary.diameter", "42 mm"),
        ("exhaust.tail.length", "150 mm"),
        ("exhaust.tail.diameter", "46 mm"),
        ("blower.kind", "exhaust-driven"),
        ("turbine.throatArea", "550 mm²"),
        ("turbine.rotorDiameter", "85 mm"),
        ("turbine.wastegate.area", "900 mm²"),
        ("turbine.wastegate.openingPressure", "0.3 bar"),
        ("turbine.wastegate.band", "0.1 bar"));

    public static DutyDesk TurboDesk { get; } = new();

    public static EngineDuty TurboDuty => Duty(Turbo, TurboDesk);

    public static DutyDesk BareDesk { get; } = new();

    public static DutyDesk BlownDesk { get; } = new();

    public static Ladder Ladder => BlownLadder.Value;

    public static Ladder LadderOfSpeeds => BareLadder.Value;

    public static EngineDuty BareDuty => Duty(Bare, BareDesk);

    public static EngineDuty BlownDuty => Duty(Blown, BlownDesk);

    /// <summary>Speed in rad/s.</summary>
    public static double Speed(double rpm) => rpm * Rpm;

    /// <summary>The finding of a check on the bare engine, without its uncertainty.</summary>
    public static Finding OnBare(string check, string index = "") => new Appraiser(BareDesk) { WithUncertainty = false }.Appraise(CheckCatalogue.Find(check), index, Bare.Now());

    /// <summary>The finding of a check on the blown engine, without its uncertainty.</summary>
    public static Finding OnBlown(string check, string index = "") => new Appraiser(BlownDesk) { WithUncertainty = false }.Appraise(CheckCatalogue.Find(check), index, Blown.Now());

    private static Ladder ClimbBlown() => GivesFirst.Climb(Blown.Now(), BlownDesk);

    private static Ladder ClimbBare() => GivesFirst.Climb(Bare.Now(), BareDesk);

    private static EngineDuty Duty(BuildBook book, DutyDesk desk)
    {
        var view = new View(book.Now(), desk);
        return view.Duty() ?? throw new InvalidOperationException("the engine does not run; wanted: " + Wanted.Words(view.Trace.Missing));
    }
}
