namespace Gudgeon.Simulation.Pipes;

/// <summary>A closed end.</summary>
internal static class Wall
{
    /// <summary>
    /// Pressure on a wall that stops a gas: behind a shock when it comes, behind a rarefaction when it goes (Toro 2009,
    /// section 6.3.3 and eqs 4.6–4.7 with the star velocity at rest; from memory). Zero when it goes faster than it can follow.
    /// </summary>
    /// <param name="rho">Density, kg/m³.</param>
    /// <param name="u">Velocity towards the wall, m/s.</param>
    /// <param name="p">Pressure, Pa.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    public static double Pressure(double rho, double u, double p, double gamma)
    {
        if (u <= 0)
        {
            var left = 1 + ((gamma - 1) / 2 * u / Math.Sqrt(gamma * p / rho));
            return left > 0 ? p * Math.Pow(left, 2 * gamma / (gamma - 1)) : 0;
        }

        // u = (p* − p) √(A / (p* + B)) solved for p*.
        var (a, b) = (2 / ((gamma + 1) * rho), (gamma - 1) / (gamma + 1) * p);
        var q = u * u / a;
        return p + (0.5 * (q + Math.Sqrt(q * (q + (4 * (p + b))))));
    }
}
