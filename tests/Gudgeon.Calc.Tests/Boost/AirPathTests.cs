using CsCheck;
using Gudgeon.Calc.Boost;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Calc.Tests.Boost;

/// <summary>Filters and ducts against the laws that they are made of.</summary>
public class AirPathTests
{
    private static readonly Gen<double> Velocities = Gen.Double[0.01, 10];
    private static readonly Gen<double> Drops = Gen.Double[10, 5000];
    private static readonly Gen<double> Shares = Gen.Double[0, 1];
    private static readonly Gen<double> Ratios = Gen.Double[0.7, 1.3];

    [Fact]
    public void AFilterGivesItsTestedPointBack() =>
        Gen.Select(Velocities, Drops, Shares).Sample((velocity, drop, linear) => Assert.Equal(1, FilterFlow.Drop(velocity, velocity, drop, linear) / drop, 1e-12));

    [Fact]
    public void VelocityIsDropTurnedRound() => Gen.Select(Velocities, Velocities, Drops, Shares, Ratios, Ratios).Sample((velocity, test, drop, linear, viscosity, density) =>
        Assert.Equal(1, FilterFlow.Velocity(FilterFlow.Drop(velocity, test, drop, linear, viscosity, density), test, drop, linear, viscosity, density) / velocity, 1e-9));

    [Theory] // Twice the flow: twice the drop of paper, four times that of a hole, in between for what is both.
    [InlineData(1, 2)]
    [InlineData(0, 4)]
    [InlineData(0.5, 3)]
    public void TheDropRisesBetweenOnceAndTwice(double linear, double times) =>
        Assert.Equal(times, FilterFlow.Drop(2, 1, 300, linear) / FilterFlow.Drop(1, 1, 300, linear), 1e-12);

    [Fact] // Syrupy air troubles the linear part, dense air the other.
    public void AirOfAnotherKindBearsOnItsOwnPart()
    {
        Assert.Equal(360, FilterFlow.Drop(1, 1, 300, linear: 1, viscosityRatio: 1.2, densityRatio: 5), 1e-9);
        Assert.Equal(240, FilterFlow.Drop(1, 1, 300, linear: 0, viscosityRatio: 5, densityRatio: 0.8), 1e-9);
    }

    [Fact]
    public void AnAreaForAVelocityHasThatVelocity() => Gen.Select(Gen.Double[0.001, 2], Gen.Double[0.5, 5], Gen.Double[0.1, 200]).Sample((flow, density, velocity) =>
        Assert.Equal(1, DuctFlow.Velocity(flow, density, DuctFlow.Area(flow, density, velocity)) / velocity, 1e-12));

    [Theory] // What is said of taking the density at rest: NACA 1135 for the moving air.
    [InlineData(0.14, 0.01)]
    [InlineData(0.3, 0.05)]
    public void DensityAtRestIsNearEnough(double mach, double off) =>
        Assert.InRange((1 / IsentropicFlow.Ratios(mach).DensityRatio) - 1, 0.9 * off, 1.001 * off);

    [Fact] // Bernoulli: at rest again, slow air has its dynamic pressure above the moving air's.
    public void TheLossOfOneIsTheDynamicPressure()
    {
        var (temperature, density, velocity) = (300.0, 1.2, 30.0);
        var pressure = density * PhysicalConstants.DryAirGasConstant * temperature;
        var rest = pressure / IsentropicFlow.Ratios(DuctFlow.Mach(velocity, temperature)).PressureRatio;
        Assert.Equal(1, (rest - pressure) / DuctFlow.Loss(density, velocity), 0.005);
    }

    [Fact]
    public void AtChokeNothingIsLeft()
    {
        Assert.Equal(0, Compressor.ChokeMargin(0.2, 0.2), 1e-12);
        Assert.Equal(0.25, Compressor.ChokeMargin(0.15, 0.2), 1e-12);
        Assert.True(Compressor.ChokeMargin(0.21, 0.2) < 0);
    }
}
