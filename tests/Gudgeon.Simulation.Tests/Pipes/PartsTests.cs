using CsCheck;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>The small parts the pipes are made of.</summary>
public class PartsTests
{
    /// <summary>For the exponents that pressures and temperatures are raised to.</summary>
    [Fact]
    public void PowersNearOneAreGoodTo12Figures() => Gen.Select(Gen.Double[0.9, 1.1], Gen.Double[-1, 8]).Sample((number, exponent) =>
        Assert.Equal(1, Power.Of(number, exponent) / Math.Pow(number, exponent), 1e-12));

    /// <summary>Volumes are those of the cones, wherever the cells end; faces those of their places, a sudden step among them.</summary>
    [Fact]
    public void ADuctHasTheVolumeOfItsCones() => Gen.Select(Stretch, Stretch, Stretch, Gen.Double[0.003, 0.08]).Sample((a, b, c, cell) =>
    {
        var duct = new Duct([a, b, c], cell);
        Assert.Equal(1, duct.Volume.Sum() / (Cone(a) + Cone(b) + Cone(c)), 1e-12);
        Assert.Equal(a.From, Math.Sqrt(duct.FaceArea[0] * 4 / Math.PI), 1e-12);
        Assert.Equal(c.To, Math.Sqrt(duct.FaceArea[duct.Cells] * 4 / Math.PI), 1e-9);
        Assert.Equal(duct.Cells, Math.Max(3, (int)Math.Round(duct.Length / cell)));
        var widest = new[] { a, b, c }.Max(t => Math.Max(t.From, t.To));
        var slimmest = new[] { a, b, c }.Min(t => Math.Min(t.From, t.To));
        Assert.All(duct.Diameter, d => Assert.InRange(d, slimmest * (1 - 1e-9), widest * (1 + 1e-9)));
    });

    [Fact]
    public void ADuctWithoutWidthIsRefused()
    {
        Assert.Throws<ArgumentException>(() => new Duct([], 0.01));
        Assert.Throws<ArgumentException>(() => new Duct([new(0.1, 0, 0.03)], 0.01));
        Assert.Throws<ArgumentException>(() => new Duct([new(double.NaN, 0.02, 0.03)], 0.01));
        Assert.Throws<ArgumentException>(() => new Duct([new(0.1, 0.02, 0.03)], 0));
    }

    /// <summary>The pressure is found from any start, near or far, inside the bracket or out of it.</summary>
    [Fact]
    public void ARootIsFoundFromAnyStart() => Gen.Select(Gen.Double[0.01, 0.999], Gen.Double[0, 3], Gen.Double[0.2, 5]).Sample((root, start, power) =>
    {
        var balance = new Growing(root * 1e5, power);
        Assert.Equal(1, Root.Find(ref balance, 0, 1e5, start * 1e5) / (root * 1e5), 1e-6);
    });

    /// <summary>Secants that creep along a sharp bend do not run out of turns.</summary>
    [Fact]
    public void ARootBehindASharpBendIsFound()
    {
        var balance = new Growing(4e5 / 83, 5);
        Assert.Equal(1, Root.Find(ref balance, 0, 1e5, 2e5 / 97) / (4e5 / 83), 1e-6);
    }

    /// <summary>A pipe filled from what another of the same cells held is in the same state; one of other cells has its shape.</summary>
    [Theory]
    [InlineData(40)]
    [InlineData(20)]
    [InlineData(63)]
    public void AStateFillsAnotherPipe(int cells)
    {
        var from = new PipeRig(new Duct([Taper.Straight(0.4, 0.04)], 0.01), carried: 2);
        from.Fill(x => (300 + (400 * x), 20 - (30 * x), 1e5 + (5e4 * x)));
        Array.Fill(from.Pipe.Walls.Temperature, 480);
        var to = new PipeRig(new Duct([Taper.Straight(0.4, 0.04)], 0.4 / cells), carried: 2);
        PipeState.Of(from.Pipe).Restore(to.Pipe);
        for (var cell = 0; cell < cells; cell++)
        {
            var place = cells == 40 ? from.Place(cell) : to.Place(cell);
            var near = cells == 40 ? 1e-9 : from.Pipe.Duct.CellLength / 0.4;
            Assert.Equal(300 + (400 * place), to.Pipe.Gas.Temperature[cell + 1], (160 * near) + 1e-6);
            Assert.Equal(20 - (30 * place), to.Velocity(cell), (12 * near) + 1e-9);
            Assert.Equal(1e5 + (5e4 * place), to.Pressure(cell), (2e4 * near) + 1e-3);
        }

        Assert.All(Enumerable.Range(1, cells), i => Assert.Equal(480, to.Pipe.Walls.Temperature[i]));
    }

    private static Gen<Taper> Stretch => Gen.Select(Gen.Double[0.01, 0.5], Gen.Double[0.01, 0.08], Gen.Double[0.01, 0.08], (length, from, to) => new Taper(length, from, to));

    private static double Cone(Taper t) => Math.PI / 12 * t.Length * ((t.From * t.From) + (t.From * t.To) + (t.To * t.To));

    private readonly struct Growing(double root, double power) : IBalance
    {
        public double At(double pressure) => Math.Pow(pressure, power) - Math.Pow(root, power);
    }
}
