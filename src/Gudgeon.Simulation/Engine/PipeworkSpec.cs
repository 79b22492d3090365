using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Engine;

/// <summary>
/// The pipes of the wave depth: what the lumped depth stands in for with port volume and runner area (inlet) and with one
/// collector (exhaust).
/// </summary>
public sealed record PipeworkSpec
{
    /// <summary>From the plenum to the inlet valves; each tree starts at the plenum and every cylinder is in one of them once.</summary>
    public required IReadOnlyList<PipeTree> Inlets { get; init; }

    /// <summary>From the exhaust valves to the open air; each tree starts at its open end and every cylinder is in one of them once.</summary>
    public required IReadOnlyList<PipeTree> Exhausts { get; init; }

    /// <summary>Effective area of all open ends of the exhaust together, m², where something stands in them; null when nothing does.</summary>
    public double? OutletArea { get; init; }

    /// <summary>Loss coefficient where gas comes back in through an open end of the exhaust, in dynamic heads: 0.5 cut off square.</summary>
    public double OutletLoss { get; init; } = 0.5;

    /// <summary>Wished length of a cell, m; 5 to 60 mm.</summary>
    public double CellLength { get; init; } = 15e-3;

    /// <summary>Multiplies the heat that pipe walls take; pulsating flow takes more than a steady one of the same mean. 0 is adiabatic.</summary>
    public double HeatScale { get; init; } = 1;
}

/// <summary>
/// A pipe and what stands at its far end: a cylinder's valves, or a junction from which more pipes go. Two runners out of
/// one siamese port, 2-into-1 and 4-into-2-into-1 exhausts are such trees; a silencer box is a junction with one branch.
/// </summary>
public sealed record PipeTree
{
    /// <summary>The pipe.</summary>
    public required PipeSpec Pipe { get; init; }

    /// <summary>Place in <see cref="EngineSpec.Cylinders"/> of the cylinder at its far end; −1 where it branches.</summary>
    public int Cylinder { get; init; } = -1;

    /// <summary>What goes on from its far end; empty at a cylinder.</summary>
    public IReadOnlyList<PipeTree> Branches { get; init; } = [];

    /// <summary>Volume of the junction at its far end, m³; made at least three cells of its widest pipe.</summary>
    public double JunctionVolume { get; init; }

    /// <summary>
    /// Share of its dynamic head that a stream keeps on the straight way through the junction, between trunk and branches: 0.7 of a slim
    /// merge, 0 of a box. From branch to branch all is lost.
    /// </summary>
    public double JunctionRecovery { get; init; } = 0.7;
}

/// <summary>A pipe, described in the direction in which the engine breathes: from the air to the valve, or from the valve to the air.</summary>
public sealed record PipeSpec
{
    /// <summary>Its shape, stretch by stretch; a stretch may begin with another diameter than the one before ended.</summary>
    public required IReadOnlyList<Taper> Tapers { get; init; }

    /// <summary>Height of the wall's roughness, m; drawn tube 1.5 µm, cast port 0.1 to 0.3 mm.</summary>
    public double Roughness { get; init; } = 10e-6;

    /// <summary>Sum of the loss coefficients of its bends, in dynamic heads, spread over the length.</summary>
    public double BendLoss { get; init; }

    /// <summary>Loss coefficient where gas enters it out of a volume or the open air, in dynamic heads: 0.03 with a bellmouth, 0.5 cut off square.</summary>
    public double EntryLoss { get; init; } = 0.1;

    /// <summary>Its wall.</summary>
    public PipeWall Wall { get; init; } = new();
}

/// <summary>Where the heat of a pipe's wall goes.</summary>
public sealed record PipeWall
{
    /// <summary>Temperature of the wall, K, where it is known or held (a port in the head); null by its own heat balance.</summary>
    public double? Temperature { get; init; }

    /// <summary>Heat transfer coefficient from the outside of the wall to the air, W/(m²·K); 10 standing still, 100 in the wind of the run.</summary>
    public double OutsideCoefficient { get; init; } = 40;

    /// <summary>Emissivity of the outside; 0.3 polished, 0.9 oxidised or coated.</summary>
    public double Emissivity { get; init; } = 0.7;
}
