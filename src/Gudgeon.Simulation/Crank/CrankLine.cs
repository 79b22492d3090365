namespace Gudgeon.Simulation.Crank;

/// <summary>One cylinder with what hangs on its crank pin. SI.</summary>
public sealed record CrankThrow
{
    /// <summary>Crank pin that the rod is on, counted from 0 along the crank; two rods of a V share one.</summary>
    public required int Pin { get; init; }

    /// <summary>Angle of the cylinder axis from that of the first bank, in the direction of rotation, rad.</summary>
    public double Bank { get; init; }

    /// <summary>Crank angle of its firing top dead centre, rad.</summary>
    public double Firing { get; init; }

    /// <summary>Place of the rod along the crank, m.</summary>
    public double Position { get; init; }

    /// <summary>Bore, m.</summary>
    public required double Bore { get; init; }

    /// <summary>Rod length between centres, m.</summary>
    public required double Rod { get; init; }

    /// <summary>Offset of cylinder or gudgeon pin to the side that the crank pin moves to after top dead centre, m.</summary>
    public double Offset { get; init; }

    /// <summary>Piston with pin and rings, kg.</summary>
    public required double Piston { get; init; }

    /// <summary>The rod's share at the small end, kg.</summary>
    public required double SmallEnd { get; init; }

    /// <summary>The rod's share at the big end, kg.</summary>
    public required double BigEnd { get; init; }

    /// <summary>All that goes to and fro, kg.</summary>
    public double Reciprocating => Piston + SmallEnd;
}

/// <summary>A crankshaft with everything that hangs on it. SI.</summary>
public sealed record CrankLine
{
    /// <summary>Crank radius, m.</summary>
    public required double Radius { get; init; }

    /// <summary>The cylinders in the order of their numbers.</summary>
    public required IReadOnlyList<CrankThrow> Throws { get; init; }

    /// <summary>Places of the main bearings along the crank, m, rising.</summary>
    public IReadOnlyList<double> Mains { get; init; } = [];

    /// <summary>Weight on each crank pin with which the bare crank is in balance, kg.</summary>
    public double BobWeight { get; init; }

    /// <summary>Pins in their order along the crank, each with its cylinders.</summary>
    public IEnumerable<IGrouping<int, CrankThrow>> Pins => Throws.GroupBy(t => t.Pin).OrderBy(g => g.Key);

    /// <summary>Whether every number is the same: loads that were worked for one line then hold for the other.</summary>
    public bool Equals(CrankLine? other) =>
        other is not null && Radius.Equals(other.Radius) && BobWeight.Equals(other.BobWeight) && Throws.SequenceEqual(other.Throws) && Mains.SequenceEqual(other.Mains);

    /// <inheritdoc/>
    public override int GetHashCode() => Throws.Aggregate(HashCode.Combine(Radius, BobWeight, Mains.Count), HashCode.Combine);
}
