using Gudgeon.Calc.Gas;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>
/// Steady flow of air through a straight pipe with friction and heat, by its ordinary differential equations: mass ρu = G,
/// momentum dp + G du = −f G u dx / 2D, energy cp dT + u du = 4 h (Tw − Tr) dx / (G D). Heat capacity by the NASA
/// polynomials, wall laws by the formulas of the catalogue. Runge and Kutta's method of fourth order.
/// </summary>
internal sealed record GeneralFlow
{
    public required double Diameter { get; init; }

    public double Roughness { get; init; }

    public double HeatScale { get; init; }

    public double WallTemperature { get; init; } = 300;

    private static double GasConstant => PipeRig.AirMixture.GasConstant;

    /// <summary>State at the end of a length that begins with a velocity and a temperature.</summary>
    public (double Velocity, double Temperature) Follow(double flux, double velocity, double temperature, double length, int steps = 400)
    {
        var (u, t, dx) = (velocity, temperature, length / steps);
        for (var k = 0; k < steps; k++)
        {
            var (u1, t1) = Slope(flux, u, t);
            var (u2, t2) = Slope(flux, u + (0.5 * dx * u1), t + (0.5 * dx * t1));
            var (u3, t3) = Slope(flux, u + (0.5 * dx * u2), t + (0.5 * dx * t2));
            var (u4, t4) = Slope(flux, u + (dx * u3), t + (dx * t3));
            u += dx / 6 * (u1 + (2 * u2) + (2 * u3) + u4);
            t += dx / 6 * (t1 + (2 * t2) + (2 * t3) + t4);
        }

        return (u, t);
    }

    /// <summary>Velocity and temperature of air from rest that has a Mach number, and its mass flux at a pressure at rest.</summary>
    public static (double Velocity, double Temperature, double Flux) FromRest(double pressure, double temperature, double mach)
    {
        var gamma = PipeRig.AirMixture.HeatCapacityRatio(temperature * (1 - (0.1 * mach * mach)));
        var ratios = IsentropicFlow.Ratios(mach, gamma);
        var t = temperature * ratios.TemperatureRatio;
        var u = mach * Math.Sqrt(gamma * GasConstant * t);
        return (u, t, pressure * ratios.PressureRatio / (GasConstant * t) * u);
    }

    public static double Pressure(double flux, double velocity, double temperature) => flux * GasConstant * temperature / velocity;

    private (double Velocity, double Temperature) Slope(double flux, double u, double t)
    {
        var cp = PipeRig.AirMixture.HeatCapacity(t);
        var viscosity = AirTransport.Viscosity(t);
        var friction = PipeFriction.Haaland(flux * Diameter / viscosity, Roughness / Diameter);
        var coefficient = HeatScale * PipeFriction.ChiltonColburn(friction, flux, cp);
        var heat = 4 * coefficient * (WallTemperature - t - (0.89 * u * u / (2 * cp))) / (flux * Diameter);
        var du = ((GasConstant / (u * cp) * heat) + (friction * u / (2 * Diameter))) / ((GasConstant * t / (u * u)) + (GasConstant / cp) - 1);
        return (du, (heat - (u * du)) / cp);
    }
}
