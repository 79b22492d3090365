namespace Gudgeon.Simulation.Pipes;

/// <summary>
/// Two pipes of different width end to end, quasi-steady, either way. Widening: the pressure at the end of the narrow pipe
/// stands on the step, and momentum gives what is lost (Borda and Carnot). Narrowing: without loss but for
/// 0.5 (1 − A2/A1) heads of the narrow pipe (Idelchik's Handbook, from memory).
/// </summary>
internal static class Joint
{
    /// <summary>Flow through the joint, as seen from both pipes.</summary>
    /// <param name="one">End of a pipe.</param>
    /// <param name="oneArea">Its area, m².</param>
    /// <param name="other">End of the other pipe.</param>
    /// <param name="otherArea">Its area, m².</param>
    /// <param name="last">Pressure at the end of the first pipe last time, Pa.</param>
    public static (MouthFlow One, MouthFlow Other) Flow(in PipeEnd one, double oneArea, in PipeEnd other, double otherArea, double last)
    {
        var (a, b) = (Resting(one), Resting(other));
        if (a >= b)
        {
            return Solve(one, oneArea, other, otherArea, b, a, last);
        }

        var (from, into) = Solve(other, otherArea, one, oneArea, a, b, last);
        return (into, from);
    }

    /// <summary>Pressure at an end through which nothing goes, Pa.</summary>
    private static double Resting(in PipeEnd end) => Wall.Pressure(end.Density, end.Outwards, end.Pressure, end.Gamma);

    private static (MouthFlow From, MouthFlow Into) Solve(in PipeEnd from, double fromArea, in PipeEnd into, double intoArea, double low, double high, double last)
    {
        var balance = new Balance(from, fromArea, into, intoArea);
        var pressure = Root.Find(ref balance, low, high, last);
        var up = new Stream(from, pressure, fromArea / intoArea);
        var (velocity, rt) = up.Downstream(fromArea < intoArea);
        var mass = up.Flux * intoArea;
        var enthalpy = from.Energy + (from.Degrees * (up.RT - (from.Pressure / from.Density))) + up.RT + (0.5 * up.Velocity * up.Velocity);
        var downPressure = velocity > 0 ? up.Flux * rt / velocity : pressure;
        return (
            new(mass, pressure, up.Velocity, pressure / up.RT, enthalpy),
            new(-mass, downPressure, -velocity, downPressure / rt, enthalpy));
    }

    /// <summary>Gas that leaves the upstream pipe, brought to a pressure by the wave that runs back into it.</summary>
    private readonly struct Stream
    {
        private readonly double _gamma;
        private readonly double _pressure;
        private readonly double _ratio;

        public Stream(in PipeEnd from, double pressure, double ratio)
        {
            (_gamma, _pressure, _ratio) = (from.Gamma, pressure, ratio);
            var (velocity, density) = Mouth.Behind(from, pressure);
            (Velocity, RT) = (Math.Max(0, velocity), pressure / density);
            Flux = pressure / RT * Velocity * ratio;
        }

        public double Velocity { get; }

        public double RT { get; }

        /// <summary>Mass flow over the downstream area, kg/(s·m²).</summary>
        public double Flux { get; }

        private double StagnationRT => RT + ((_gamma - 1) / _gamma * 0.5 * Velocity * Velocity);

        /// <summary>Velocity, m/s, and R·T, J/kg, behind the step.</summary>
        public (double Velocity, double RT) Downstream(bool widens)
        {
            if (Flux <= 0)
            {
                return (0, RT);
            }

            var velocity = widens ? Widened() : Narrowed();
            return (velocity, StagnationRT - ((_gamma - 1) / _gamma * 0.5 * velocity * velocity));
        }

        /// <summary>Momentum and energy behind a widening make a quadratic of the velocity; its smaller root is the subsonic one.</summary>
        private double Widened()
        {
            var a = (_gamma + 1) / (2 * _gamma);
            var push = (_pressure / Flux) + Velocity;
            return 2 * StagnationRT / (push + Math.Sqrt(Math.Max(0, (push * push) - (4 * a * StagnationRT))));
        }

        private double Narrowed()
        {
            var power = _gamma / (_gamma - 1);
            var total = _pressure * Power.Of(StagnationRT / RT, power);
            var contraction = new Contraction(Flux, StagnationRT, _gamma, 1 + (0.5 * (1 - (1 / _ratio))), total);
            return contraction.Velocity(Root.Find(ref contraction, 0.3 * total, total, _pressure));
        }
    }

    /// <summary>Pressure and heads in the narrow pipe less the total pressure before it.</summary>
    private readonly struct Contraction(double flux, double stagnationRT, double gamma, double heads, double total) : IBalance
    {
        public double Velocity(double pressure)
        {
            var (specific, kinetic) = (flux / pressure, (gamma - 1) / (2 * gamma));
            return 2 * specific * stagnationRT / (1 + Math.Sqrt(1 + (4 * kinetic * specific * specific * stagnationRT)));
        }

        public double At(double pressure)
        {
            var velocity = Velocity(pressure);
            var rt = stagnationRT - ((gamma - 1) / gamma * 0.5 * velocity * velocity);
            return (pressure * (1 + (heads * (Power.Of(stagnationRT / rt, gamma / (gamma - 1)) - 1)))) - total;
        }
    }

    /// <summary>Velocity that the downstream pipe takes less that which arrives.</summary>
    private readonly struct Balance(PipeEnd from, double fromArea, PipeEnd into, double intoArea) : IBalance
    {
        public double At(double pressure)
        {
            var up = new Stream(from, pressure, fromArea / intoArea);
            var (velocity, rt) = up.Downstream(fromArea < intoArea);
            var down = velocity > 0 ? up.Flux * rt / velocity : pressure;
            return -Mouth.Behind(into, down).Velocity - velocity;
        }
    }
}
