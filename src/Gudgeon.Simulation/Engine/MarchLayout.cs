namespace Gudgeon.Simulation.Engine;

/// <summary>Where each number of the marched state stands: five per node, four per cylinder, then what is summed over the cycle.</summary>
internal readonly struct MarchLayout(int nodes, int cylinders)
{
    public const int PerNode = 5;
    public const int Vapour = 1;
    public const int Burned = 2;
    public const int Liquid = 3;
    public const int Energy = 4;

    private const int PerCylinder = 4;

    /// <summary>Offset of the entropy-like coordinate of the unburned zone, J/(kg·K).</summary>
    public int Entropy(int cylinder) => (PerNode * nodes) + (PerCylinder * cylinder);

    /// <summary>Livengood–Wu integral.</summary>
    public int Knock(int cylinder) => Entropy(cylinder) + 1;

    /// <summary>Work given to the piston, J.</summary>
    public int Work(int cylinder) => Entropy(cylinder) + 2;

    /// <summary>Heat given to the walls, J.</summary>
    public int Heat(int cylinder) => Entropy(cylinder) + 3;

    /// <summary>Speed of an exhaust-driven shaft, rad/s; stands still within a cycle.</summary>
    public int Shaft => (PerNode * nodes) + (PerCylinder * cylinders);

    private int Sums => Shaft + 1;

    /// <summary>Heat given to the charge cooler, J.</summary>
    public int CoolerHeat => Sums;

    /// <summary>Heat given to the exhaust pipe, J.</summary>
    public int ExhaustHeat => Sums + 1;

    /// <summary>Work given to the air by the blower, J.</summary>
    public int BlowerWork => Sums + 2;

    /// <summary>∫ T dm out of the collector, K·kg.</summary>
    public int OutletTemperature => Sums + 3;

    /// <summary>∫ dm out of the collector, kg.</summary>
    public int OutletMass => Sums + 4;

    /// <summary>∫ dm through the blower, kg.</summary>
    public int BlowerMass => Sums + 5;

    /// <summary>∫ p dt of the plenum, Pa·s.</summary>
    public int PlenumPressure => Sums + 6;

    /// <summary>∫ T dt of the plenum, K·s.</summary>
    public int PlenumTemperature => Sums + 7;

    /// <summary>∫ p dt of the collector, Pa·s.</summary>
    public int CollectorPressure => Sums + 8;

    /// <summary>∫ p dt of the delivery volume, Pa·s.</summary>
    public int DeliveryPressure => Sums + 9;

    /// <summary>∫ p dt of the airbox, Pa·s.</summary>
    public int AirboxPressure => Sums + 10;

    /// <summary>∫ T dm into the blower, K·kg.</summary>
    public int BlowerInletTemperature => Sums + 11;

    /// <summary>∫ ΔT dm of the blower, K·kg.</summary>
    public int BlowerRise => Sums + 12;

    /// <summary>Time the flow lies beyond the surge end of the speed line, s.</summary>
    public int BeyondSurge => Sums + 13;

    /// <summary>Work that the turbine took from the exhaust, J.</summary>
    public int TurbineWork => Sums + 14;

    /// <summary>∫ dm through the wastegate, kg.</summary>
    public int WastegateMass => Sums + 15;

    /// <summary>Length of the state, filled up to whole vectors.</summary>
    public int Length => (Sums + 16 + 7) & ~7;
}
