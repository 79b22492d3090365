namespace Gudgeon.Simulation.Engine;

/// <summary>Condition of every node, one array per property.</summary>
internal sealed class NodeGas(int nodes)
{
    public readonly double[] Pressure = new double[nodes];
    public readonly double[] Temperature = new double[nodes];

    /// <summary>Specific gas constant times temperature, J/kg.</summary>
    public readonly double[] RT = new double[nodes];

    public readonly double[] Gamma = new double[nodes];

    /// <summary>Heat capacity at constant pressure, J/(kg·K).</summary>
    public readonly double[] HeatCapacity = new double[nodes];

    /// <summary>Enthalpy carried by what leaves, J/kg.</summary>
    public readonly double[] Enthalpy = new double[nodes];

    public readonly double[] Air = new double[nodes];
    public readonly double[] Vapour = new double[nodes];
    public readonly double[] Burned = new double[nodes];
    public readonly double[] Liquid = new double[nodes];

    /// <summary>Grid node of the gas table where each temperature was last found.</summary>
    public readonly int[] Hint = new int[nodes];

    /// <summary>Sets a node from its content and the state it was found in.</summary>
    public void Set(int n, in Mixture m, double energy, double volume, in GasState s)
    {
        var perMass = 1 / m.Mass;
        Temperature[n] = s.Temperature;
        Pressure[n] = s.GasConstant * s.Temperature / volume;
        RT[n] = s.GasConstant * s.Temperature * perMass;
        Gamma[n] = 1 + (s.GasConstant / s.HeatCapacity);
        HeatCapacity[n] = (s.GasConstant + s.HeatCapacity) * perMass;
        Enthalpy[n] = (energy + (Pressure[n] * volume)) * perMass;
        SetFractions(n, m, perMass);
    }

    /// <summary>Sets the composition alone.</summary>
    public void SetFractions(int n, in Mixture m, double perMass)
    {
        (Air[n], Vapour[n], Burned[n], Liquid[n]) = (m.Air * perMass, m.Vapour * perMass, m.Burned * perMass, m.Liquid * perMass);
    }

    public TrappedCharge Condition(int n, double mass) => new(mass, Burned[n], Pressure[n], Temperature[n]);
}

/// <summary>Charge at the closing of the inlet valve.</summary>
internal readonly record struct TrappedCharge(double Mass, double Residual, double Pressure, double Temperature);
