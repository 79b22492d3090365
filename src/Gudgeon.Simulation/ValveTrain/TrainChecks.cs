namespace Gudgeon.Simulation.ValveTrain;

/// <summary>Refuses what cannot be marched.</summary>
internal static class TrainChecks
{
    public static void Check(TrainSpec spec)
    {
        Within("lash", spec.Lash, 0, 5e-3, "m");
        TrainSpecException.Unless(
            spec.Lash < spec.Profile.FullLift,
            $"lash: {spec.Lash * 1e3:0.###} mm is no less than the lift of the cam at the valve, {spec.Profile.FullLift * 1e3:0.###} mm, so the valve never opens");
        Within("valve mass", spec.ValveMass, 1e-3, 10, "kg");
        Within("follower mass", spec.FollowerMass, spec.TrainStiffness is null ? 0 : 1e-3, 10, "kg");
        Stiffness("stiffness of cam and follower", spec.CamStiffness);
        Stiffness("stiffness between follower and valve", spec.TrainStiffness ?? 1e6);
        Stiffness("stiffness of the seat", spec.SeatStiffness);
        Damping("damping of cam and follower", spec.CamDamping);
        Damping("damping between follower and valve", spec.TrainDamping);
        Damping("damping of the seat", spec.SeatDamping);
        Within("guide friction", spec.GuideFriction, 0, 500, "N");
        TrainSpecException.Unless(spec.Springs.Count is >= 1 and <= 4, $"springs: {spec.Springs.Count} given, wanted one to four");
        foreach (var spring in spec.Springs)
        {
            Check(spring);
        }

        TrainSpecException.Unless(spec.ShutLoad > 0, $"springs: their load with the valve shut is {spec.ShutLoad} N, wanted above 0");
        TrainSpecException.Unless(
            spec.GuideFriction < spec.ShutLoad,
            $"guide friction: {spec.GuideFriction} N holds the valve against its springs, which give {spec.ShutLoad:0.#} N with the valve shut");
    }

    public static void Check(TrainOptions options)
    {
        TrainSpecException.Unless(options.Tolerance is >= 1e-12 and <= 1e-3, $"tolerance of a step: {options.Tolerance} given, wanted 1e-12 to 1e-3");
        TrainSpecException.Unless(options.Repeat is > 0 and <= 0.1, $"change from turn to turn: {options.Repeat} given, wanted above 0 and at most 0.1");
        TrainSpecException.Unless(options.LongestStep is > 0 and <= 0.1, $"longest step: {options.LongestStep} cam rad given, wanted above 0 and at most 0.1");
        TrainSpecException.Unless(options.MaxRevolutions >= 2, $"turns of the cam: {options.MaxRevolutions} given, wanted at least 2");
        TrainSpecException.Unless(options.TracePoints is 0 or >= 36, $"points of a trace: {options.TracePoints} given, wanted none or at least 36");
    }

    public static void CheckSpeed(double speed) =>
        TrainSpecException.Unless(speed is >= 1 and <= 5000, $"cam speed: {speed * 30 / Math.PI:0.#} rpm given, wanted 10 rpm to 47 700 rpm");

    private static void Check(SpringColumn spring)
    {
        Within("spring rate", spring.Rate, 100, 1e7, "N/m");
        Within("spring load with the valve shut", spring.ShutLoad, 0, 1e5, "N");
        Within("active mass of a spring", spring.ActiveMass, 0, 5, "kg");
        TrainSpecException.Unless(spring.Elements is >= 1 and <= 64, $"elements of a spring: {spring.Elements} given, wanted 1 to 64");
        TrainSpecException.Unless(
            spring.ActiveMass > 0 || spring.Elements == 1,
            $"active mass of a spring: none given, so it cannot surge; wanted above 0 with {spring.Elements} elements, or one element");
        TrainSpecException.Unless(spring.BindTravel > 0, $"travel to coil bind: {spring.BindTravel * 1e3:0.###} mm given, wanted above 0");
        Damping("damping of spring surge", spring.Damping);
    }

    private static void Stiffness(string name, double value) => Within(name, value, 1e5, 1e10, "N/m");

    private static void Damping(string name, double value) => Within(name, value, 0, 1, "of critical");

    private static void Within(string name, double value, double low, double high, string unit) =>
        TrainSpecException.Unless(value >= low && value <= high, $"{name}: {value} {unit} given, wanted {low} to {high} {unit}");
}
