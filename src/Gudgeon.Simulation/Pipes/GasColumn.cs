using System.Numerics;

namespace Gudgeon.Simulation.Pipes;

/// <summary>
/// The gas in a pipe, one array per quantity. Cell i of the pipe stands at index i + 1; the cells at 0 and n + 1 are what
/// lies beyond the ends. Arrays are padded so that vectors may be loaded past the last cell.
/// </summary>
public sealed class GasColumn
{
    /// <param name="cells">Cells of the pipe.</param>
    /// <param name="carried">Shares of the gas that are carried along, besides the one that is the rest.</param>
    public GasColumn(int cells, int carried)
    {
        Cells = cells;
        Carried = carried;
        double[] Fresh() => new double[cells + 2 + Vector<double>.Count];
        (Density, Velocity, Pressure, Energy) = (Fresh(), Fresh(), Fresh(), Fresh());
        (Temperature, Sound, Degrees) = (Fresh(), Fresh(), Fresh());
        (Momentum, Total) = (Fresh(), Fresh());
        (LeftDensity, LeftVelocity, LeftPressure, LeftEnergy) = (Fresh(), Fresh(), Fresh(), Fresh());
        (RightDensity, RightVelocity, RightPressure, RightEnergy) = (Fresh(), Fresh(), Fresh(), Fresh());
        (MassFlux, MomentumFlux, EnergyFlux) = (Fresh(), Fresh(), Fresh());
        Share = [.. Enumerable.Range(0, carried).Select(_ => Fresh())];
        ShareDensity = [.. Enumerable.Range(0, carried).Select(_ => Fresh())];
        ShareEnergy = [.. Enumerable.Range(0, carried).Select(_ => Fresh())];
        LeftShare = [.. Enumerable.Range(0, carried).Select(_ => Fresh())];
        RightShare = [.. Enumerable.Range(0, carried).Select(_ => Fresh())];
        ShareFlux = [.. Enumerable.Range(0, carried).Select(_ => Fresh())];
    }

    /// <summary>Cells of the pipe.</summary>
    public int Cells { get; }

    /// <summary>Shares carried along.</summary>
    public int Carried { get; }

    /// <summary>kg/m³.</summary>
    public double[] Density { get; }

    /// <summary>m/s, positive away from the first end.</summary>
    public double[] Velocity { get; }

    /// <summary>Pa.</summary>
    public double[] Pressure { get; }

    /// <summary>Specific internal energy, J/kg.</summary>
    public double[] Energy { get; }

    /// <summary>K.</summary>
    public double[] Temperature { get; }

    /// <summary>Speed of sound, m/s.</summary>
    public double[] Sound { get; }

    /// <summary>Heat capacity at constant volume over the gas constant, 1/(γ − 1).</summary>
    public double[] Degrees { get; }

    /// <summary>ρu, kg/(m²·s).</summary>
    public double[] Momentum { get; }

    /// <summary>ρ(e + u²/2), J/m³.</summary>
    public double[] Total { get; }

    /// <summary>Mass shares.</summary>
    public double[][] Share { get; }

    /// <summary>Mass shares times density, kg/m³.</summary>
    public double[][] ShareDensity { get; }

    /// <summary>What a share adds to the internal energy at constant pressure over density, against the rest: J/kg.</summary>
    public double[][] ShareEnergy { get; }

    // States half a step on at the left and right face of each cell; energies are internal ones of a volume, J/m³.
    internal double[] LeftDensity { get; }

    internal double[] LeftVelocity { get; }

    internal double[] LeftPressure { get; }

    internal double[] LeftEnergy { get; }

    internal double[] RightDensity { get; }

    internal double[] RightVelocity { get; }

    internal double[] RightPressure { get; }

    internal double[] RightEnergy { get; }

    internal double[][] LeftShare { get; }

    internal double[][] RightShare { get; }

    // Fluxes through the face before each cell: face i lies between cells i − 1 and i of the pipe, at index i.
    internal double[] MassFlux { get; }

    internal double[] MomentumFlux { get; }

    internal double[] EnergyFlux { get; }

    internal double[][] ShareFlux { get; }
}
