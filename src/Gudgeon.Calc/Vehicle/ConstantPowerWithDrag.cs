using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>A run with drag.</summary>
/// <param name="Time">Time since the clock started, s.</param>
/// <param name="Speed">Speed at the distance, m/s.</param>
/// <param name="Terminal">Speed that the power holds against drag, m/s.</param>
public readonly record struct DragRun(
    [Quantity("time", Dimension.Time, "s", Symbol = "t")] double Time,
    [Quantity("speed", Dimension.Speed, "km/h", Symbol = "v")] double Speed,
    [Quantity("terminal speed", Dimension.Speed, "km/h", Symbol = "vt")] double Terminal);

/// <summary>Standing start at constant power against drag that grows with the square of speed.</summary>
public static class ConstantPowerWithDrag
{
    private const string Source = "integral of m v² dv/ds = P - k v³ with k = rho CdA / 2; exact";

    /// <summary>Time and speed over a distance.</summary>
    /// <param name="mass">Accelerated mass, kg; count rotating parts in.</param>
    /// <param name="power">Power at the road, W.</param>
    /// <param name="dragArea">Drag coefficient times frontal area, m²; 0.30 to 0.50 m² is plausible for a motorcycle with rider.</param>
    /// <param name="distance">Distance from the start beam, m.</param>
    /// <param name="density">Air density, kg/m³.</param>
    /// <param name="rollout">Travel before the clock starts, m.</param>
    /// <returns>Time since the clock started, speed at the distance, terminal speed.</returns>
    [Formula(
        "constant-power run with drag",
        "k = rho A / 2; vt = (P / k)^(1/3); v = vt (1 - exp(-3 k (s + r) / m))^(1/3); z = v / vt; t = m vt^2 / P (ln((z^2 + z + 1) / (1 - z)^2) / 6 - (atan((2 z + 1) / 3^0.5) - pi / 6) / 3^0.5), less the same at r",
        Source,
        Provenance = Provenance.Definition)]
    public static DragRun Run(
        [Quantity("accelerated mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("power at the road", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("drag area", Dimension.Area, "m²", Symbol = "A", Above = 0)] double dragArea,
        [Quantity("distance", Dimension.Length, "m", Symbol = "s", Above = 0)] double distance,
        [Quantity("air density", Dimension.Density, "kg/m³", Symbol = "rho", Above = 0)] double density = 1.225,
        [Quantity("roll-out", Dimension.Length, "mm", Symbol = "r", Min = 0)] double rollout = 0)
    {
        var motion = new Motion(mass, power, dragArea, density);
        var travel = distance + rollout;
        return new DragRun(motion.Time(travel) - motion.Time(rollout), motion.Speed(travel), motion.Terminal);
    }

    /// <summary>Mean speed over the last 66 ft of a distance, m/s.</summary>
    /// <param name="mass">Accelerated mass, kg.</param>
    /// <param name="power">Power at the road, W.</param>
    /// <param name="dragArea">Drag coefficient times frontal area, m².</param>
    /// <param name="distance">Distance from the start beam, m; at least 66 ft.</param>
    /// <param name="density">Air density, kg/m³.</param>
    /// <returns>Trap speed, m/s.</returns>
    [Formula("trap speed at constant power with drag", "v = 20.1168 / (t(s) - t(s - 20.1168))", "constant-power run with drag, " + Source, Provenance = Provenance.Definition)]
    [return: Quantity("trap speed", Dimension.Speed, "km/h", Symbol = "v")]
    public static double TrapSpeed(
        [Quantity("accelerated mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("power at the road", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("drag area", Dimension.Area, "m²", Symbol = "A", Above = 0)] double dragArea,
        [Quantity("distance", Dimension.Length, "m", Symbol = "s", Min = Strip.TrapLength)] double distance,
        [Quantity("air density", Dimension.Density, "kg/m³", Symbol = "rho", Above = 0)] double density = 1.225)
    {
        var motion = new Motion(mass, power, dragArea, density);
        return Strip.TrapLength / (motion.Time(distance) - motion.Time(distance - Strip.TrapLength));
    }

    private readonly struct Motion(double mass, double power, double dragArea, double density)
    {
        private static readonly double Root3 = Math.Sqrt(3);

        public double Terminal { get; } = Math.Cbrt(2 * power / (density * dragArea));

        public double Speed(double travel) => Terminal * Math.Cbrt(1 - Remaining(travel));

        /// <summary>
        /// Time from rest. 1 - z is formed from 1 - z³ = exp(-3ks/m), so that nothing is lost close to the terminal speed;
        /// close to rest the closed form is a difference of equals and its series t = m v²/(2P) (1 + 2z³/5 + z⁶/4) takes over.
        /// </summary>
        public double Time(double travel)
        {
            var z = Speed(travel) / Terminal;
            var scale = mass * Terminal * Terminal / power;
            if (z < 0.02)
            {
                var cube = z * z * z;
                return scale * z * z * (0.5 + (cube / 5) + (cube * cube / 8));
            }

            var quadratic = (z * z) + z + 1;
            var logarithm = (3 * Math.Log(quadratic)) + (2 * LogInverseRemaining(travel));
            return scale * ((logarithm / 6) - ((Math.Atan(((2 * z) + 1) / Root3) - (Math.PI / 6)) / Root3));
        }

        private double LogInverseRemaining(double travel) => 1.5 * density * dragArea * travel / mass;

        private double Remaining(double travel) => Math.Exp(-LogInverseRemaining(travel));
    }
}
