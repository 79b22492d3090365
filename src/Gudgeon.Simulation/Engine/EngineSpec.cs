using Gudgeon.Calc.Gas;

namespace Gudgeon.Simulation.Engine;

/// <summary>
/// A four-stroke spark-ignition engine described for the cycle simulation. SI units throughout, except that crank
/// angles are in degrees, as the trade writes them.
/// </summary>
public sealed record EngineSpec
{
    /// <summary>The cylinders, in the engine's numbering.</summary>
    public required IReadOnlyList<CylinderSpec> Cylinders { get; init; }

    /// <summary>Whether cylinders fire at the same crank angle on purpose; otherwise two equal firing angles are taken for a slip.</summary>
    public bool FireTogether { get; init; }

    /// <summary>What is burned.</summary>
    public required Fuel Fuel { get; init; }

    /// <summary>Air-fuel ratio over the stoichiometric one; 0.5 to 1.6.</summary>
    public double Lambda { get; init; } = 0.9;

    /// <summary>How the fuel reaches the charge.</summary>
    public FuelDelivery Delivery { get; init; } = new();

    /// <summary>The burn; null motors the engine on air without fuel.</summary>
    public CombustionSpec? Combustion { get; init; } = new();

    /// <summary>Wall temperatures and heat transfer.</summary>
    public WallSpec Walls { get; init; } = new();

    /// <summary>Rubbing friction and auxiliaries.</summary>
    public FrictionSpec Friction { get; init; } = new();

    /// <summary>From the air filter to the ports.</summary>
    public IntakeSpec Intake { get; init; } = new();

    /// <summary>From the exhaust valves to the open air.</summary>
    public ExhaustSpec Exhaust { get; init; } = new();

    /// <summary>The pipes; with them the engine is run by the wave depth, null by the lumped one.</summary>
    public PipeworkSpec? Pipework { get; init; }

    /// <summary>The air the engine stands in.</summary>
    public AmbientSpec Ambient { get; init; } = new();

    /// <summary>
    /// Measured port pressures in place of intake and exhaust; null for a whole engine. Every cylinder sees the same
    /// trace at its own crank angle.
    /// </summary>
    public ImposedPorts? ImposedPorts { get; init; }
}

/// <summary>One cylinder with its valves. Cylinders of one engine may differ.</summary>
public sealed record CylinderSpec
{
    /// <summary>Bore, m.</summary>
    public required double Bore { get; init; }

    /// <summary>Stroke, m: twice the crank radius.</summary>
    public required double Stroke { get; init; }

    /// <summary>Connecting rod length between centres, m.</summary>
    public required double Rod { get; init; }

    /// <summary>
    /// Offset of the cylinder axis (or gudgeon pin) from the crank axis, m; positive towards the side the crankpin moves
    /// to after top dead centre.
    /// </summary>
    public double PinOffset { get; init; }

    /// <summary>Geometric compression ratio; give either this or <see cref="ClearanceVolume"/>.</summary>
    public double? CompressionRatio { get; init; }

    /// <summary>Volume above the piston at its highest point, m³; give either this or <see cref="CompressionRatio"/>.</summary>
    public double? ClearanceVolume { get; init; }

    /// <summary>
    /// Crank angle of this cylinder's firing top dead centre, degrees in 0 ≤ angle &lt; 720. Firing order and crank layout
    /// together are these angles: 0 and 360 is a parallel twin, 0 and 405 a 45° V-twin on one pin.
    /// </summary>
    public required double FiringAngle { get; init; }

    /// <summary>Inlet valves.</summary>
    public required ValveSpec Inlet { get; init; }

    /// <summary>Exhaust valves.</summary>
    public required ValveSpec Exhaust { get; init; }

    /// <summary>Effective area of the leak past the rings to the crankcase, m²; 0.1 to 1 mm² is usual.</summary>
    public double BlowByArea { get; init; } = 0.3e-6;
}
