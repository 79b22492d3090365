using System.Numerics;
using System.Runtime.CompilerServices;
using static Gudgeon.Simulation.Pipes.Lanes;

namespace Gudgeon.Simulation.Pipes;

/// <summary>One gas of constant heat capacity: the law against which the scheme is held to exact solutions.</summary>
internal static class PerfectGas
{
    /// <summary>Sets density, velocity and pressure of a cell, and all that follows from them.</summary>
    public static void Set(GasColumn gas, int cell, double gamma, double density, double velocity, double pressure)
    {
        var i = cell + 1;
        (gas.Density[i], gas.Momentum[i]) = (density, density * velocity);
        gas.Total[i] = (pressure / (gamma - 1)) + (0.5 * density * velocity * velocity);
        (gas.Velocity[i], gas.Pressure[i], gas.Energy[i]) = (velocity, pressure, pressure / (gamma - 1) / density);
        (gas.Sound[i], gas.Degrees[i]) = (Math.Sqrt(gamma * pressure / density), 1 / (gamma - 1));
    }

    /// <summary>Velocity, pressure and what follows from them, of all cells.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Solve(GasColumn gas, double gamma)
    {
        var (perDegree, half, c2, degrees) = (new Vector<double>(gamma - 1), new Vector<double>(0.5), new Vector<double>(gamma), new Vector<double>(1 / (gamma - 1)));
        for (var i = 1; i <= gas.Cells; i += Vector<double>.Count)
        {
            var rho = At(gas.Density, i);
            var perRho = Vector<double>.One / rho;
            var u = At(gas.Momentum, i) * perRho;
            var e = (At(gas.Total, i) * perRho) - (half * u * u);
            var rt = perDegree * e;
            Put(gas.Velocity, i, u);
            Put(gas.Energy, i, e);
            Put(gas.Pressure, i, rho * rt);
            Put(gas.Sound, i, Vector.SquareRoot(c2 * rt));
            Put(gas.Degrees, i, degrees);
        }
    }
}
