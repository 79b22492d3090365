using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Simulation.Tests.Sprint;

/// <summary>Machines reduced until a closed form exists: one gear, an engine of constant power, no losses.</summary>
internal static class ClosedForms
{
    public const double Mass = 300;
    public const double Power = 100e3;
    public const double QuarterMile = 402.336;

    private const double Circumference = 2;

    // One metre of road per radian of the crank makes engine speed and road speed the same number.
    private const double OneToOne = Circumference / (2 * Math.PI);

    /// <summary>Constant power from (nearly) rest; the clutch locks at 10 mm/s, which costs less than a microsecond.</summary>
    public static SprintSpec ConstantPower(double dragArea = 0) => new()
    {
        Engine = new SprintEngine(Speeds(0.005, 200), [.. Speeds(0.005, 200).Select(v => Power / v)], 0.01, 200),
        Driveline = new SprintDriveline(1, [OneToOne], 1, 1, 0),
        Machine = new SprintBody(Mass, 0.7, 0),
        Wheels = new SprintWheels(1.5, Circumference),
        Air = new SprintAir(1.225, dragArea),
        Strip = new SprintStrip(double.PositiveInfinity, 0),
    };

    /// <summary>Acceleration held by the front wheel, then constant power.</summary>
    public static SprintSpec HeldThenConstantPower(double held = 9.0, double power = Power)
    {
        const double ahead = 0.7;
        return ConstantPower() with
        {
            Engine = new SprintEngine(Speeds(1, 200), [.. Speeds(1, 200).Select(v => power / v)], 2, 200),
            Machine = new SprintBody(Mass, ahead, 9.80665 * ahead / held),
        };
    }

    /// <summary>Two gears of all but the same ratio, so that a shift is nothing but a gap in the drive.</summary>
    public static SprintSpec WithGap(this SprintSpec spec, double atSpeed, double gap) => spec with
    {
        Driveline = spec.Driveline with { GearRatios = [OneToOne * (1 + 1e-9), OneToOne], ShiftTime = gap, ShiftSpeeds = [atSpeed * (1 + 1e-9)] },
    };

    // Chords of 1/v lie above it by at most an eighth of the squared ratio step: 3e-8.
    private static double[] Speeds(double from, double to)
    {
        var count = (int)(Math.Log(to / from) / 5e-4);
        return [.. Enumerable.Range(0, count + 1).Select(i => from * Math.Pow(to / from, (double)i / count))];
    }
}
