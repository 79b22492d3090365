using System.Numerics;

namespace Gudgeon.Simulation.Crank;

/// <summary>
/// A weight that the crank drives: a balance shaft, or one of the weights on it. SI; axes as in <see cref="LoadCourse"/>,
/// angles from y towards x, the way the crank turns.
/// </summary>
public sealed record Spinner
{
    /// <summary>What it is called: "front".</summary>
    public required string Name { get; init; }

    /// <summary>Mass times radius, kg·m.</summary>
    public required double Unbalance { get; init; }

    /// <summary>Its speed over the crank's, negative when it turns against the crank.</summary>
    public double Ratio { get; init; } = 1;

    /// <summary>Angle of its weight with cylinder 1 at top dead centre, rad.</summary>
    public double Phase { get; init; }

    /// <summary>Place of its axis beside the crank's, m.</summary>
    public double X { get; init; }

    /// <summary>Place of its axis along the cylinders, m.</summary>
    public double Y { get; init; }

    /// <summary>Place of the weight along the crank, m.</summary>
    public double Position { get; init; }

    /// <summary>Force on the engine over the square of the crank's speed, kg·m: y is real, x imaginary.</summary>
    /// <param name="angle">Crank angle after top dead centre of cylinder 1, rad.</param>
    public Complex At(double angle) => Complex.FromPolarCoordinates(Unbalance * Ratio * Ratio, Phase + (Ratio * angle));

    /// <summary>The same weight advanced in its own direction by an angle of its shaft, rad; late when negative.</summary>
    public Spinner Advanced(double angle) => this with { Phase = Phase + (Math.Sign(Ratio) * angle) };
}
