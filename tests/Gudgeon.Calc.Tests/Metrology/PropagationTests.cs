using CsCheck;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Calc.Tests.Metrology;

/// <summary>Random draws: their seed, their distributions, and percentiles by selection.</summary>
public class PropagationTests
{
    private static readonly DrawnInput[] OneNormal = [new(DrawnShape.Normal, 0, 1)];

    [Fact]
    public void TheSameSeedGivesTheSameDrawsAndAnotherDoesNot()
    {
        double Mean(ulong seed) => Propagation.Run(OneNormal, x => x[0], 20_000, seed).Mean;
        Assert.Equal(Mean(7), Mean(7));
        Assert.NotEqual(Mean(7), Mean(8));
    }

    [Fact]
    public void StreamsOfOneSeedDiffer()
    {
        var firsts = Enumerable.Range(0, 1000).Select(i => new SeededDraws(1, (ulong)i).Uniform()).ToList();
        Assert.Equal(1000, firsts.Distinct().Count());
        Assert.Equal(0.5, firsts.Average(), 0.04);
    }

    // Moments and tail shares of the standard normal distribution: 0, 1, 0, 3; beyond 1, 2, 3 and 3.5 (past the last layer).
    [Fact]
    public void NormalDrawsHaveTheMomentsAndTailsOfTheNormalDistribution()
    {
        const int n = 2_000_000;
        var stream = new SeededDraws(42);
        var values = new double[n];
        for (var i = 0; i < n; i++)
        {
            values[i] = stream.Normal();
        }

        IsNormal(values);
    }

    // Four standard deviations of each.
    private static void IsNormal(double[] values)
    {
        var n = (double)values.Length;
        Assert.Equal(0, values.Average(), 4 / Math.Sqrt(n));
        Assert.Equal(1, values.Average(v => v * v), 4 * Math.Sqrt(2 / n));
        Assert.Equal(0, values.Average(v => v * v * v), 4 * Math.Sqrt(15 / n));
        Assert.Equal(3, values.Average(v => v * v * v * v), 4 * Math.Sqrt(96 / n));
        foreach (var (edge, share) in new[] { (1.0, 0.158655), (2.0, 0.0227501), (3.0, 0.00134990), (3.5, 0.000232629) })
        {
            var tolerance = 4 * Math.Sqrt(share / n);
            Assert.Equal(share, values.Count(v => v > edge) / n, tolerance);
            Assert.Equal(share, values.Count(v => v < -edge) / n, tolerance);
        }

        Assert.Equal(0, values.Zip(values.Skip(1), (a, b) => a * b).Average(), 4 / Math.Sqrt(n));
    }

    [Fact]
    public void SelectionFindsWhatSortingFinds() => Gen.Double[-5, 5].Array[1, 3000].Select(Gen.Double[0, 1]).Sample((values, share) =>
    {
        var sorted = values.Order().ToArray();
        var rank = Math.Min((int)(share * values.Length), values.Length - 1);
        var copy = (double[])values.Clone();
        return Selection.Of(copy, rank) == sorted[rank] && copy[..rank].All(v => v <= sorted[rank]) && copy[rank..].All(v => v >= sorted[rank]);
    });

    [Fact]
    public void SelectionCopesWithManyEqualValues()
    {
        var values = Enumerable.Range(0, 100_000).Select(i => (double)(i % 3)).ToArray();
        Assert.Equal((0, 1, 2), (Selection.Of(values, 0), Selection.Of(values, 50_000), Selection.Of(values, 99_999)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Selection.Of(values, 100_000));
    }

    [Fact]
    public void DrawsOfAStraightFormulaAgreeWithFirstOrder()
    {
        DrawnInput[] inputs = [new(DrawnShape.Normal, 10, 0.3), new(DrawnShape.Rectangular, 4, 0.6)];
        var drawn = Propagation.Run(inputs, x => (2 * x[0]) - x[1], 400_000);
        Assert.Equal(16, drawn.Mean, 0.005);
        Assert.Equal(Math.Sqrt(0.36 + 0.12), drawn.Deviation, 0.004);
        Assert.Equal(0.5, drawn.Share(v => v > 16), 0.004);
    }

    [Fact]
    public void PercentilesAreTheSameInAnyOrder()
    {
        double[] Of(params double[] shares)
        {
            var drawn = Propagation.Run(OneNormal, x => x[0], 50_000);
            return [.. shares.Select(drawn.At)];
        }

        var rising = Of(0, 0.025, 0.5, 0.975, 1);
        Assert.Equal(rising.Order(), rising);
        Assert.Equal(rising, Of(0.975, 0.5, 1, 0, 0.025).Order());
        Assert.Equal(-1.96, rising[1], 0.03);
        Assert.Equal(1.96, rising[3], 0.03);
    }

    [Fact]
    public void WhatTheFormulaThrowsIsThrown() =>
        Assert.Throws<OperationCanceledException>(() => Propagation.Run(OneNormal, _ => throw new OperationCanceledException(), 50_000));

    // The four generators in a vector are four generators: xoshiro256++ and the ziggurat, written out once more lane by lane.
    [Fact]
    public void AColumnHoldsWhatFourGeneratorsSideBySideGive()
    {
        const int Rows = 10_001;
        var columns = new NormalColumns(3, 5);
        var rows = new double[3 * Rows];
        columns.Fill(rows, 1, 3, 5, 2);
        var lanes = Enumerable.Range(0, 4).Select(lane => new SeededDraws(3, (1UL << 63) + 25 + (ulong)lane)).ToArray();
        var agree = 0;
        for (var i = 0; i < Rows; i++)
        {
            agree += Math.Abs(rows[(3 * i) + 1] - (5 + (2 * lanes[i % 4].Normal()))) < 1e-12 ? 1 : 0;
            if (Math.Abs(rows[(3 * i) + 1] - 5) > 2 * 2.5)
            {
                break;
            }
        }

        Assert.True(agree > 50, $"{agree} draws agree before the first at a rim");
        Assert.All(rows.Where((_, i) => i % 3 != 1), r => Assert.Equal(0, r));
    }

    [Fact]
    public void ColumnsAreNormalAndIndependentOfEachOther()
    {
        const int Rows = 1_000_000;
        var columns = new NormalColumns(11);
        var rows = new double[2 * Rows];
        columns.Fill(rows, 0, 2, 0, 1);
        columns.Fill(rows, 1, 2, 0, 1);
        var (x, y) = (rows.Where((_, i) => i % 2 == 0).ToArray(), rows.Where((_, i) => i % 2 == 1).ToArray());
        foreach (var values in new[] { x, y })
        {
            IsNormal(values);
        }

        Assert.Equal(0, x.Zip(y, (a, b) => a * b).Average(), 0.004);
        Assert.Equal(0, x.Zip(x.Skip(4), (a, b) => a * b).Average(), 0.004);
    }
}
