using CsCheck;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Calc.Tests.Crank;

/// <summary>Torsional modes against Holzer's table and the two-rotor form.</summary>
public class TorsionTests
{
    private static readonly Gen<(double[] Inertias, double[] Stiffnesses)> Chains =
        Gen.Int[2, 7].SelectMany(n => Gen.Select(Gen.Double[0.001, 0.1].Array[n], Gen.Double[1e4, 1e6].Array[n - 1]));

    [Fact]
    public void HolzerLeavesNothingAtEveryNaturalFrequency() => Chains.Sample(c =>
    {
        for (var mode = 1; mode < c.Inertias.Length; mode++)
        {
            var shape = Torsion.Mode(c.Inertias, c.Stiffnesses, mode);

            // The table runs forward and carries round-off along a long chain, so the residual is not small there; it is
            // the place where it crosses nothing, which is what a natural frequency is.
            double Residual(double share) => Torsion.Holzer(c.Inertias, c.Stiffnesses, Math.Tau * shape.Frequency * share).Torque;
            Assert.True(Residual(1 - 1e-6) * Residual(1 + 1e-6) < 0);
        }
    });

    [Fact]
    public void AChainOfTwoIsTheTwoRotorForm() => Gen.Select(Gen.Double[0.001, 1], Gen.Double[0.001, 1], Gen.Double[1e3, 1e6]).Sample((a, b, k) =>
        Assert.Equal(Torsion.TwoRotors(a, b, k), Torsion.Mode([a, b], [k]).Frequency, 1e-9 * Torsion.TwoRotors(a, b, k)));

    [Fact]
    public void AModeHasNoNetAngularMomentum() => Chains.Sample(c =>
    {
        double net = 0, size = 0;
        for (var k = 1; k <= c.Inertias.Length; k++)
        {
            var moment = c.Inertias[k - 1] * Torsion.Mode(c.Inertias, c.Stiffnesses, 1, k).Amplitude;
            (net, size) = (net + moment, size + Math.Abs(moment));
        }

        Assert.Equal(0, net, 1e-8 * size);
    });

    [Fact]
    public void StepsInSeriesAreSofterThanTheirSoftest() => Gen.Select(Gen.Double[0.02, 0.06], Gen.Double[0.02, 0.06]).Sample((a, b) =>
    {
        var both = TorsionalStiffness.Stepped([a, b], [0.1, 0.1]);
        Assert.True(both < Math.Min(TorsionalStiffness.Shaft(a, 0.1), TorsionalStiffness.Shaft(b, 0.1)));
        var reference = TorsionalStiffness.EquivalentLength([a, b], [0.1, 0.1], 0.04);
        Assert.Equal(both, TorsionalStiffness.Shaft(0.04, reference), 1e-9 * both);
    });
}
