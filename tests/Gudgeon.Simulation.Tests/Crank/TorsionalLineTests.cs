using System.Numerics;
using Gudgeon.Calc.Crank;
using Gudgeon.Simulation.Crank;
using Matrix = MathNet.Numerics.LinearAlgebra.Matrix<System.Numerics.Complex>;
using Vector = MathNet.Numerics.LinearAlgebra.Vector<System.Numerics.Complex>;

namespace Gudgeon.Simulation.Tests.Crank;

/// <summary>Torsional lines against published and made-up lines (rows T02 to T11 of the driveline references), closed forms and energy.</summary>
public class TorsionalLineTests
{
    private static TorsionalLine Chain(double[] inertias, double[] stiffnesses, double loss = 0) => new([.. inertias.Select((j, i) => new TorsionalRotor { Name = $"{i}", Inertia = j, On = i - 1, Stiffness = i == 0 ? double.NaN : stiffnesses[i - 1], Loss = loss })]);

    // T02 after Bevan, exact; T09; T11 six-cylinder engine, nine masses; T05 geared.
    [Theory]
    [InlineData(new[] { 235.79, 707.38, 282.95 }, new[] { 5.9934e6, 2.2775e6 }, new[] { 960.7 / 60, 1787.5 / 60 }, 1e-3)]
    [InlineData(new[] { 0.0035, 0.0035, 0.0035, 0.0035, 0.045 }, new[] { 0.12e6, 0.12e6, 0.12e6, 0.18e6 }, new[] { 390.50, 1010.38, 1502.07, 1784.73 }, 1e-4)]
    [InlineData(new[] { 0.0170, 0.0090, 0.0467, 0.0327, 0.0467, 0.0467, 0.0327, 0.0487, 2.0750 }, new[] { 1.106e6, 1.631e6, 1.253e6, 1.253e6, 1.678e6, 1.253e6, 1.253e6, 1.976e6 }, new[] { 216.58, 592.74, 984.92, 1171.02 }, 5e-4)]
    [InlineData(new[] { 0.4386057, 0.1052654, 5.263268 }, new[] { 192704.11, 281989.3 }, new[] { 5004.7 / 60, 20763 / 60.0 }, 2e-3)]
    public void Natural_frequencies(double[] inertias, double[] stiffnesses, double[] hertz, double within)
    {
        var shapes = Chain(inertias, stiffnesses).Shapes();
        for (var i = 0; i < hertz.Length; i++)
        {
            Assert.Equal(hertz[i], shapes[i].Frequency, hertz[i] * within);
            Assert.Equal(Torsion.Mode(inertias, stiffnesses, i + 1).Frequency, shapes[i].Frequency, 1e-9 * shapes[i].Frequency);
        }
    }

    // Holzer's table has nothing left over at a natural frequency.
    [Fact]
    public void Shapes_close_holzers_table()
    {
        double[] inertias = [5, 11, 22], stiffnesses = [0.10e6, 0.20e6];
        foreach (var shape in Chain(inertias, stiffnesses).Shapes())
        {
            var holzer = Torsion.Holzer(inertias, stiffnesses, 2 * Math.PI * shape.Frequency);
            Assert.Equal(0, holzer.Torque / (inertias.Sum() * Math.Pow(2 * Math.PI * shape.Frequency, 2)), 1e-9);
            Assert.Equal(shape.Shape[2] / shape.Shape[0], holzer.Amplitude, 1e-9);
        }
    }

    private static readonly TorsionalLine Tree = new(
    [
        new() { Name = "throw1", Inertia = 0.0046, On = -1 },
        new() { Name = "throw2", Inertia = 0.0046, On = 0, Stiffness = 310e3, Loss = 0.03 },
        new() { Name = "primary", Inertia = 0.0014, On = 1, Stiffness = 460e3, Loss = 0.03 },
        new() { Name = "clutch", Inertia = 0.0028, On = 2, Stiffness = 12e3, Loss = 0.1 },
        new() { Name = "shaft", Inertia = 0.0004, On = 2, Stiffness = 95e3, Loss = 0.02 },
        new() { Name = "nose", Inertia = 0.002, On = 0, Stiffness = 100e3, Loss = 0.03 },
        new() { Name = "blower", Inertia = 0.006, On = 5, Stiffness = 500, Loss = 0.1 },
    ]);

    private static readonly Complex[] Torques = [200, new(-80, 150), 0, 0, 0, 0, 12];

    [Theory]
    [InlineData(40)]
    [InlineData(1500)]
    [InlineData(6200)]
    public void A_line_with_branches_answers_as_its_whole_matrix_does(double frequency)
    {
        var (swings, joints) = Responds(Tree, frequency);
        var n = Tree.Rotors.Count;
        var matrix = Matrix.Build.Dense(n, n);
        for (var i = 0; i < n; i++)
        {
            matrix[i, i] += -frequency * frequency * Tree.Rotors[i].Inertia;
            if (i > 0)
            {
                var (on, k) = (Tree.Rotors[i].On, Tree.Rotors[i].Stiffness * new Complex(1, Tree.Rotors[i].Loss));
                matrix[i, i] += k;
                matrix[on, on] += k;
                matrix[i, on] -= k;
                matrix[on, i] -= k;
            }
        }

        var direct = matrix.Solve(Vector.Build.Dense(Torques));
        for (var i = 0; i < n; i++)
        {
            Assert.Equal(0, (direct[i] - swings[i]).Magnitude / direct.AbsoluteMaximum().Magnitude, 1e-9);
            if (i > 0)
            {
                var twist = direct[i] - direct[Tree.Rotors[i].On];
                Assert.Equal(0, ((Tree.Rotors[i].Stiffness * new Complex(1, Tree.Rotors[i].Loss) * twist) - joints[i]).Magnitude, 1e-6 * joints.Max(j => j.Magnitude));
            }
        }
    }

    // What the torques put in, the joints turn into heat: ½ Re(T* iωθ) = Σ ½ ω η k |twist|².
    [Theory]
    [InlineData(100)]
    [InlineData(2400)]
    [InlineData(5100)]
    public void Work_put_in_is_lost_in_the_joints(double frequency)
    {
        var (swings, _) = Responds(Tree, frequency);
        var put = Torques.Zip(swings, (t, s) => 0.5 * (Complex.Conjugate(t) * Complex.ImaginaryOne * frequency * s).Real).Sum();
        var lost = Enumerable.Range(1, Tree.Rotors.Count - 1).Sum(i => 0.5 * frequency * Tree.Rotors[i].Loss * Tree.Rotors[i].Stiffness * Math.Pow((swings[i] - swings[Tree.Rotors[i].On]).Magnitude, 2));
        Assert.Equal(lost, put, 1e-9 * lost);
    }

    // Far below its natural frequencies a line turns as one, and each joint carries what its side of it needs.
    [Fact]
    public void Slow_torques_are_shared_by_inertia()
    {
        var (_, joints) = Responds(Tree, 1);
        var (_, stiff) = Responds(Tree.Stiffened(), 3000);
        var turning = Torques.Aggregate(Complex.Zero, (a, b) => a + b) / Tree.Rotors.Sum(r => r.Inertia);
        Complex Branch(params int[] rotors) => rotors.Aggregate(Complex.Zero, (sum, r) => sum + Torques[r] - (Tree.Rotors[r].Inertia * turning));
        (int Joint, Complex Torque)[] shares = [(1, Branch(1, 2, 3, 4)), (2, Branch(2, 3, 4)), (3, Branch(3)), (5, Branch(5, 6)), (6, Branch(6))];
        foreach (var (joint, torque) in shares)
        {
            Assert.Equal(0, (torque - joints[joint]).Magnitude, 0.01);
            Assert.Equal(0, (torque - stiff[joint]).Magnitude, 0.1);
        }
    }

    // Two rotors at resonance: the joint's torque is the torque that twists it over the loss factor.
    [Fact]
    public void At_resonance_the_loss_factor_alone_holds_it()
    {
        var line = Chain([0.02, 0.05], [30000], 0.04);
        var frequency = 2 * Math.PI * Torsion.TwoRotors(0.02, 0.05, 30000);
        var (swings, joints) = (new Complex[2], new Complex[2]);
        line.Respond(frequency, [100, 0], swings, joints);
        Assert.Equal(100 * 0.05 / 0.07 / 0.04, joints[1].Magnitude, 100 * 0.05 / 0.07 / 0.04 * 1e-3);
    }

    // Inertia torque of one cylinder in textbook terms: m r² ω² (λ/4 sin θ − ½ sin 2θ − 3λ/4 sin 3θ − λ²/4 sin 4θ), two-term law.
    [Fact]
    public void Inertia_torque_by_orders()
    {
        var line = Cranks.Inline(0.5, 0.03, 0.15, 0, 0);
        var torque = TorqueOrders.Of(line, []);
        var scale = 0.5 * 0.03 * 0.03 * 900 * 900;
        double[] expected = [0.2 / 4, -0.5, -3 * 0.2 / 4, -0.04 / 4];
        for (var order = 1; order <= 4; order++)
        {
            // A sine is the real part of −i exp(iθ).
            var at = torque.At(0, (2 * order) - 1, 900) / scale;
            Assert.Equal(0, at.Real, 1e-9);
            Assert.Equal(-expected[order - 1], at.Imaginary, 0.02 * 0.5);
        }

        Assert.Equal(0, torque.At(0, 0, 900).Magnitude / scale, 1e-9);
    }

    [Fact]
    public void A_sweep_finds_the_critical_speeds()
    {
        var line = new TorsionalLine(
        [
            new() { Name = "throw", Inertia = 0.01, On = -1, Cylinders = [0] },
            new() { Name = "rotor", Inertia = 0.01, On = 0, Stiffness = 5000, Loss = 0.05 },
        ]);
        var hertz = Torsion.TwoRotors(0.01, 0.01, 5000);
        var torque = TorqueOrders.Of(Cranks.Inline(0.5, 0.03, 0.15, 0, 0), []);
        var second = 2 * Math.PI * hertz / 2;
        var sweep = TorsionalSweep.Of(line, torque, [.. Enumerable.Range(0, 81).Select(i => second * (0.8 + (0.005 * i)))]);
        Assert.Contains(sweep.Criticals, c => c.Order == 2 && Math.Abs(c.Speed - second) < 1e-6 * second);
        Assert.Equal(second, sweep.Points.MaxBy(p => p.Joints[1])!.Speed, 0.01 * second);
        var peak = sweep.Criticals.Single(c => c.Order == 2).Joints[1];
        Assert.Equal(torque.At(0, 3, second).Magnitude * 0.5 / 0.05, peak, 0.01 * peak);
    }

    private static (Complex[] Swings, Complex[] Joints) Responds(TorsionalLine line, double frequency)
    {
        var (swings, joints) = (new Complex[line.Rotors.Count], new Complex[line.Rotors.Count]);
        line.Respond(frequency, Torques, swings, joints);
        return (swings, joints);
    }
}
