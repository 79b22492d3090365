using MathNet.Numerics.LinearAlgebra;
using Complex = System.Numerics.Complex;

namespace Gudgeon.Simulation.Crank;

/// <summary>A rotor of a torsional line, with the joint to the rotor that it hangs on. SI, all referred to the crank's speed.</summary>
public sealed record TorsionalRotor
{
    /// <summary>What it is called: "pulley".</summary>
    public required string Name { get; init; }

    /// <summary>Moment of inertia, kg·m².</summary>
    public required double Inertia { get; init; }

    /// <summary>Place in the line of the rotor that it hangs on; −1 for the first.</summary>
    public required int On { get; init; }

    /// <summary>Torsional stiffness of the joint, N·m/rad.</summary>
    public double Stiffness { get; init; } = double.NaN;

    /// <summary>Loss factor of the joint.</summary>
    public double Loss { get; init; }

    /// <summary>Cylinders that drive it, counted from 0.</summary>
    public IReadOnlyList<int> Cylinders { get; init; } = [];
}

/// <summary>A natural frequency with its shape.</summary>
/// <param name="Frequency">Hz.</param>
/// <param name="Shape">Swing of each rotor, the greatest 1.</param>
public sealed record TorsionalShape(double Frequency, IReadOnlyList<double> Shape);

/// <summary>
/// Rotors on massless shafts: a chain with branches, each rotor hanging on one before it. Joints are linear, with a loss
/// factor (the torque of a joint leads its twist by that angle): material and clamped joints lose so, whatever the frequency.
/// </summary>
public sealed class TorsionalLine
{
    private readonly Complex[] _stiffness;
    private readonly Complex[] _dynamic;
    private readonly Complex[] _load;

    /// <param name="rotors">The rotors, each after the one that it hangs on.</param>
    /// <exception cref="ArgumentException">A rotor hangs on none before it, or its numbers are not above zero.</exception>
    public TorsionalLine(IReadOnlyList<TorsionalRotor> rotors)
    {
        for (var i = 0; i < rotors.Count; i++)
        {
            var good = i == 0 ? rotors[i].On == -1 : rotors[i].On >= 0 && rotors[i].On < i && rotors[i].Stiffness > 0;
            if (!good || !(rotors[i].Inertia > 0))
            {
                throw new ArgumentException($"rotor {rotors[i].Name}: wanted an inertia above zero and a joint of some stiffness to a rotor before it", nameof(rotors));
            }
        }

        Rotors = rotors;
        _stiffness = [.. rotors.Select(r => r.On < 0 ? Complex.Zero : r.Stiffness * new Complex(1, r.Loss))];
        _dynamic = new Complex[rotors.Count];
        _load = new Complex[rotors.Count];
    }

    /// <summary>The rotors.</summary>
    public IReadOnlyList<TorsionalRotor> Rotors { get; }

    /// <summary>The same line with its joints as good as rigid.</summary>
    public TorsionalLine Stiffened() => new([.. Rotors.Select(r => r with { Stiffness = r.Stiffness * 1e6, Loss = 0 })]);

    /// <summary>Natural frequencies, rising, without the turning of the whole; the losses left out.</summary>
    public IReadOnlyList<TorsionalShape> Shapes()
    {
        var n = Rotors.Count;
        var scaled = Matrix<double>.Build.Dense(n, n);
        for (var i = 1; i < n; i++)
        {
            var (on, k) = (Rotors[i].On, Rotors[i].Stiffness);
            scaled[i, i] += k / Rotors[i].Inertia;
            scaled[on, on] += k / Rotors[on].Inertia;
            scaled[i, on] = scaled[on, i] = -k / Math.Sqrt(Rotors[i].Inertia * Rotors[on].Inertia);
        }

        var eigen = scaled.Evd(Symmetricity.Symmetric);
        return [.. Enumerable.Range(0, n).OrderBy(i => eigen.EigenValues[i].Real).Skip(1).Select(i => new TorsionalShape(Math.Sqrt(eigen.EigenValues[i].Real) / (2 * Math.PI), Shape(eigen.EigenVectors.Column(i))))];
    }

    /// <summary>
    /// Steady swing under torques of one frequency. From the ends of the branches inwards each rotor is seen as a dynamic
    /// stiffness, from the first one outwards the swings follow: Holzer's table for a tree, with complex stiffness.
    /// </summary>
    /// <param name="frequency">Circular frequency, rad/s.</param>
    /// <param name="torques">Torque on each rotor, N·m.</param>
    /// <param name="swings">Takes the swing of each rotor, rad.</param>
    /// <param name="joints">Takes the torque in each rotor's joint, N·m: that which the rotor gives to the one that it hangs on.</param>
    public void Respond(double frequency, ReadOnlySpan<Complex> torques, Span<Complex> swings, Span<Complex> joints)
    {
        var square = frequency * frequency;
        for (var i = 0; i < torques.Length; i++)
        {
            (_dynamic[i], _load[i]) = (-square * Rotors[i].Inertia, torques[i]);
        }

        for (var i = torques.Length - 1; i > 0; i--)
        {
            var (on, passed) = (Rotors[i].On, _stiffness[i] / (_stiffness[i] + _dynamic[i]));
            _dynamic[on] += passed * _dynamic[i];
            _load[on] += passed * _load[i];
        }

        swings[0] = _load[0] / _dynamic[0];
        joints[0] = Complex.Zero;
        for (var i = 1; i < torques.Length; i++)
        {
            swings[i] = (_load[i] + (_stiffness[i] * swings[Rotors[i].On])) / (_stiffness[i] + _dynamic[i]);
            joints[i] = _load[i] - (_dynamic[i] * swings[i]);
        }
    }

    private List<double> Shape(Vector<double> scaled)
    {
        var swings = Rotors.Select((r, i) => scaled[i] / Math.Sqrt(r.Inertia)).ToList();
        var greatest = swings.MaxBy(Math.Abs);
        return swings.ConvertAll(s => s / greatest);
    }
}
