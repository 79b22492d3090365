using CsCheck;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Calc.Tests.ValveTrain;

public class LiftSmoothingTests
{
    private static readonly Gen<double[]> Noisy = Gen.Double[-0.01e-3, 0.01e-3].Array[121].Select(noise => noise.Select((e, i) => Math.Max(0, (9e-3 * PolynomialLobe.At((i - 60) / 121.0).Lift) + e)).ToArray());

    [Fact]
    public void NoLiftMovesFurtherThanTheBound() => Gen.Select(Noisy, Gen.Double[0.001e-3, 0.05e-3]).Sample((lifts, bound) =>
    {
        var smooth = LiftSmoothing.Within(lifts, bound);
        Assert.All(lifts.Zip(smooth), p => Assert.InRange(Math.Abs(p.First - p.Second), 0, bound * (1 + 1e-9)));
    }, iter: 100);

    [Fact]
    public void TheCurveBecomesSmoother() => Gen.Select(Noisy, Gen.Double[0.002e-3, 0.02e-3]).Sample((lifts, bound) =>
    {
        var (before, after, wider) = (Roughness(lifts), Roughness(LiftSmoothing.Within(lifts, bound)), Roughness(LiftSmoothing.Within(lifts, 2 * bound)));
        Assert.True(after < before, $"{after} of {before}");
        Assert.True(wider <= after * (1 + 1e-9), $"{wider} of {after}");
    }, iter: 100);

    /// <summary>A bound as wide as the noise brings the accelerations near those of the lobe that was read.</summary>
    [Fact]
    public void TheAccelerationsComeOutOfTheNoise() => Noisy.Sample(lifts =>
    {
        static double Worst(double[] curve) => Enumerable.Range(5, 111).Max(i => Math.Abs(curve[i - 1] - (2 * curve[i]) + curve[i + 1] - Exact(i)));
        static double Exact(int i) => 9e-3 * (PolynomialLobe.At((i - 61) / 121.0).Lift - (2 * PolynomialLobe.At((i - 60) / 121.0).Lift) + PolynomialLobe.At((i - 59) / 121.0).Lift);
        Assert.True(Worst(LiftSmoothing.Within(lifts, 0.01e-3)) < 0.45 * Worst(lifts));
    }, iter: 50);

    /// <summary>A parabola has no third differences and stays.</summary>
    [Fact]
    public void AParabolaStays()
    {
        var parabola = Enumerable.Range(0, 41).Select(i => 1e-3 * (400 - ((i - 20.0) * (i - 20))) / 100).ToArray();
        Assert.All(parabola.Zip(LiftSmoothing.Within(parabola, 0.1e-3)), p => Assert.Equal(p.First, p.Second, 1e-9));
    }

    [Fact]
    public void WithoutABoundNothingMoves() => Assert.Equal([1e-3, 2e-3, 5e-3, 3e-3, 9e-3, 1e-3, 2e-3, 0], LiftSmoothing.Within([1e-3, 2e-3, 5e-3, 3e-3, 9e-3, 1e-3, 2e-3, 0], 0));

    private static double Roughness(double[] y) => Enumerable.Range(0, y.Length - 3).Sum(i => Math.Pow(y[i + 3] - (3 * y[i + 2]) + (3 * y[i + 1]) - y[i], 2));
}
