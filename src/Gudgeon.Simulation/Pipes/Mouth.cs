namespace Gudgeon.Simulation.Pipes;

/// <summary>The gas at the end of a pipe half a step on, before the boundary acts.</summary>
/// <param name="Density">kg/m³.</param>
/// <param name="Outwards">Velocity out of the pipe, m/s.</param>
/// <param name="Pressure">Pa.</param>
/// <param name="Energy">Specific internal energy, J/kg.</param>
/// <param name="Degrees">1/(γ − 1).</param>
internal readonly record struct PipeEnd(double Density, double Outwards, double Pressure, double Energy, double Degrees)
{
    public double Gamma => 1 + (1 / Degrees);

    public double Sound => Math.Sqrt(Gamma * Pressure / Density);
}

/// <summary>Gas at rest beyond a mouth.</summary>
/// <param name="Pressure">Pa.</param>
/// <param name="RT">Gas constant times temperature, J/kg.</param>
/// <param name="Gamma">Ratio of specific heats.</param>
/// <param name="Enthalpy">Specific enthalpy, J/kg.</param>
internal readonly record struct Beyond(double Pressure, double RT, double Gamma, double Enthalpy);

/// <summary>What goes through a mouth.</summary>
/// <param name="Outwards">Mass flow out of the pipe, kg/s.</param>
/// <param name="Pressure">Pressure in the pipe at the mouth, Pa.</param>
/// <param name="Velocity">Velocity out of the pipe there, m/s.</param>
/// <param name="Density">Density there, kg/m³.</param>
/// <param name="Enthalpy">Total specific enthalpy of what flows, J/kg.</param>
internal readonly record struct MouthFlow(double Outwards, double Pressure, double Velocity, double Density, double Enthalpy);

/// <summary>
/// The end of a pipe at a volume, quasi-steady, subsonic and choked, both ways. The pressure in the pipe at the mouth is
/// found at which the wave that runs back into the pipe (a shock or a rarefaction: Toro 2009, eqs 4.6–4.7, from memory) and the
/// flow through the mouth agree. Mass and energy given are those received.
/// </summary>
internal static class Mouth
{
    /// <summary>
    /// A throat: valve, throttle, orifice. Out of the pipe the flow is isentropic from the stagnation state in the pipe to
    /// the pressure beyond; into the pipe from the rest beyond to the pressure in the pipe, and the jet's head is lost.
    /// </summary>
    /// <param name="end">The pipe's end.</param>
    /// <param name="beyond">The gas beyond.</param>
    /// <param name="area">Area of the pipe, m².</param>
    /// <param name="outThroat">Effective area for flow out of the pipe, m².</param>
    /// <param name="inThroat">Effective area for flow into the pipe, m².</param>
    /// <param name="last">Pressure at the mouth last time, Pa; a start for the search.</param>
    public static MouthFlow Throat(in PipeEnd end, in Beyond beyond, double area, double outThroat, double inThroat, double last)
    {
        var wall = Wall.Pressure(end.Density, end.Outwards, end.Pressure, end.Gamma);
        var throat = Math.Min(wall > beyond.Pressure ? outThroat : inThroat, area);
        if (throat <= 0)
        {
            return new(0, wall, 0, end.Density, 0);
        }

        if (wall > beyond.Pressure)
        {
            var leaving = new ThroatLeaving(end, beyond.Pressure, throat / area);

            // Below the pressure at which the pipe's own end runs at the speed of sound there is a second, false balance.
            return Leaving(end, area, Root.Find(ref leaving, Math.Max(beyond.Pressure, Sonic(end).Pressure), wall, last));
        }

        var entering = new ThroatEntering(end, beyond, throat / area);
        return Entering(end, beyond, area, Root.Find(ref entering, wall, beyond.Pressure, last), throat / area, 1);
    }

    /// <summary>
    /// A pipe that opens with its whole area: into a plenum, a junction or the open air. Leaving, the pressure in the pipe is
    /// that beyond; entering, the pressure beyond is that in the pipe and <paramref name="heads"/> dynamic heads.
    /// </summary>
    /// <param name="end">The pipe's end.</param>
    /// <param name="beyond">The gas beyond.</param>
    /// <param name="area">Area of the pipe, m².</param>
    /// <param name="heads">1 and the loss coefficient of the entry; less where the stream beyond keeps some of its head.</param>
    /// <param name="last">Pressure at the mouth last time, Pa; a start for the search.</param>
    public static MouthFlow Open(in PipeEnd end, in Beyond beyond, double area, double heads, double last)
    {
        var wall = Wall.Pressure(end.Density, end.Outwards, end.Pressure, end.Gamma);
        if (wall > beyond.Pressure)
        {
            return Leaving(end, area, beyond.Pressure);
        }

        var entering = new OpenEntering(end, beyond, heads);
        return Entering(end, beyond, area, Root.Find(ref entering, wall, beyond.Pressure, last), 1, heads);
    }

    /// <summary>Velocity out of the pipe, m/s, and density, kg/m³, behind the wave that brings its end to a pressure.</summary>
    public static (double Velocity, double Density) Behind(in PipeEnd end, double pressure)
    {
        var (gamma, ratio) = (end.Gamma, pressure / end.Pressure);
        var q = (gamma - 1) / (gamma + 1);
        if (ratio > 1)
        {
            var push = (pressure - end.Pressure) * Math.Sqrt(2 / ((gamma + 1) * end.Density) / (pressure + (q * end.Pressure)));
            return (end.Outwards - push, end.Density * (ratio + q) / ((q * ratio) + 1));
        }

        var sound = Power.Of(ratio, 0.5 * (gamma - 1) / gamma);
        return (end.Outwards + (2 * end.Sound * end.Degrees * (1 - sound)), end.Density * ratio / (sound * sound));
    }

    private static MouthFlow Leaving(in PipeEnd end, double area, double pressure)
    {
        var (velocity, density) = Behind(end, pressure);
        if (velocity * velocity > end.Gamma * pressure / density)
        {
            (velocity, pressure, density) = Sonic(end);
        }

        var energy = end.Energy + (end.Degrees * ((pressure / density) - (end.Pressure / end.Density)));
        return new(density * velocity * area, pressure, velocity, density, energy + (pressure / density) + (0.5 * velocity * velocity));
    }

    /// <summary>The end of a pipe that runs out as fast as it can: sound speed at the mouth, or faster than that already.</summary>
    private static (double Velocity, double Pressure, double Density) Sonic(in PipeEnd end)
    {
        var (gamma, c) = (end.Gamma, end.Sound);
        if (end.Outwards >= c)
        {
            return (end.Outwards, end.Pressure, end.Density);
        }

        var velocity = ((gamma - 1) / (gamma + 1) * end.Outwards) + (2 / (gamma + 1) * c);
        var ratio = Math.Pow(velocity / c, 2 * end.Degrees);
        return (velocity, end.Pressure * Math.Pow(ratio, gamma), end.Density * ratio);
    }

    private static MouthFlow Entering(in PipeEnd end, in Beyond beyond, double area, double pressure, double opening, double heads)
    {
        var inwards = Math.Max(0, -Behind(end, pressure).Velocity);
        var rt = Flowing(beyond, inwards);
        if (inwards * inwards > beyond.Gamma * rt)
        {
            // No faster than sound at the mouth: the flow there no longer hears the pipe.
            var critical = 2 / (beyond.Gamma + 1);
            rt = beyond.RT * critical;
            inwards = Math.Sqrt(beyond.Gamma * rt);
            pressure = opening * beyond.Pressure / (1 + (heads * (Math.Pow(critical, -beyond.Gamma / (beyond.Gamma - 1)) - 1)));
        }

        var density = pressure / rt;
        return new(-density * inwards * area, pressure, -inwards, density, beyond.Enthalpy);
    }

    /// <summary>R·T of gas that came out of rest to a velocity, J/kg; no colder than at the speed of sound, where the mouth chokes.</summary>
    private static double Flowing(in Beyond beyond, double velocity) =>
        Math.Max(beyond.RT - ((beyond.Gamma - 1) / beyond.Gamma * 0.5 * velocity * velocity), 2 / (beyond.Gamma + 1) * beyond.RT);

    /// <summary>Mass flow through one square metre of throat, kg/(s·m²).</summary>
    /// <param name="pressure">A pressure on the isentrope that leads to the throat, Pa.</param>
    /// <param name="rt">R·T there, J/kg.</param>
    /// <param name="stagnation">R·T at rest, J/kg.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    /// <param name="downstream">Pressure behind the throat, Pa.</param>
    private static double PerArea(double pressure, double rt, double stagnation, double gamma, double downstream)
    {
        var exponent = (gamma - 1) / gamma;
        var temperature = Power.Of(Math.Min(1, downstream / pressure), exponent) * rt / stagnation;
        var critical = 2 / (gamma + 1);
        if (temperature < critical)
        {
            var total = pressure * Math.Pow(stagnation / rt, 1 / exponent);
            return total * Math.Sqrt(gamma / stagnation * Math.Pow(critical, (gamma + 1) / (gamma - 1)));
        }

        return Math.Min(downstream, pressure) / temperature * Math.Sqrt(2 / exponent * Math.Max(0, 1 - temperature) / stagnation);
    }

    /// <summary>Flow through the throat less flow in the pipe, leaving; over the pipe's area.</summary>
    private readonly struct ThroatLeaving(PipeEnd end, double beyond, double opening) : IBalance
    {
        public double At(double pressure)
        {
            var (velocity, density) = Behind(end, pressure);
            var (gamma, rt) = (end.Gamma, pressure / density);
            var stagnation = rt + ((gamma - 1) / gamma * 0.5 * velocity * velocity);
            return (opening * PerArea(pressure, rt, stagnation, gamma, beyond)) - (density * velocity);
        }
    }

    /// <summary>Flow in the pipe less flow through the throat, entering; over the pipe's area.</summary>
    private readonly struct ThroatEntering(PipeEnd end, Beyond beyond, double opening) : IBalance
    {
        public double At(double pressure)
        {
            var inwards = -Behind(end, pressure).Velocity;
            return (pressure / Flowing(beyond, inwards) * inwards) - (opening * PerArea(beyond.Pressure, beyond.RT, beyond.RT, beyond.Gamma, pressure));
        }
    }

    /// <summary>Pressure in the pipe and its heads less the pressure beyond.</summary>
    private readonly struct OpenEntering(PipeEnd end, Beyond beyond, double heads) : IBalance
    {
        public double At(double pressure)
        {
            var inwards = -Behind(end, pressure).Velocity;
            var total = Power.Of(beyond.RT / Flowing(beyond, inwards), beyond.Gamma / (beyond.Gamma - 1));
            return (pressure * (1 + (heads * (total - 1)))) - beyond.Pressure;
        }
    }
}
