using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Simulation.Tests.Sprint;

/// <summary>Invented machines for the tests.</summary>
internal static class Machines
{
    public const double Rpm = Math.PI / 30;
    public const double Horsepower = 745.699872;

    /// <summary>
    /// An invented forced-induction litre-class machine stretched for the strip: 300 hp at the crank at 10 500 rpm,
    /// 230 kg with fluids, 80 kg of rider, 1.60 m wheelbase.
    /// </summary>
    public static SprintSpec ThreeHundredHorsepower(double friction = 1.3) => new()
    {
        Engine = new SprintEngine(
            [.. new double[] { 3000, 4000, 5000, 6000, 7000, 8000, 9000, 10000, 10500, 11000, 11500 }.Select(n => n * Rpm)],
            [100, 125, 150, 175, 196, 207, 210, 207, 300 * Horsepower / (10500 * Rpm), 192, 175],
            LaunchSpeed: 7500 * Rpm,
            RevLimit: 11300 * Rpm,
            Inertia: 0.018),
        Driveline = new SprintDriveline(1.60, [2.50, 1.95, 1.62, 1.40, 1.25, 1.13], 40.0 / 17, Efficiency: 0.90, ShiftTime: 0.05, ClutchCapacity: 260),
        Machine = new SprintBody(230, 0.78, 0.50),
        Rider = new SprintBody(80, 0.55, 0.85),
        Wheels = new SprintWheels(1.60, 1.98, RearGrowth: 3e-6, RearInertia: 0.75, FrontInertia: 0.50, FrontRadius: 0.30, RollingResistance: 0.015),
        Air = new SprintAir(1.20, DragArea: 0.33, DragHeight: 0.65),
        Strip = new SprintStrip(friction),
    };

    /// <summary>280 kg on a 1.45 m wheelbase, centre of gravity 0.70 m ahead and 0.60 m high, with power to spare in one gear.</summary>
    public static SprintSpec Wheelstander(double friction, double dragArea = 0) => new()
    {
        Engine = new SprintEngine([1, 1000], [1e6, 1e6], 1, 1000),
        Driveline = new SprintDriveline(1, [1], 1, 1, 0),
        Machine = new SprintBody(280, 0.70, 0.60),
        Wheels = new SprintWheels(1.45, 2),
        Air = new SprintAir(1.225, dragArea, 0.70),
        Strip = new SprintStrip(friction, 0),
    };
}
