using Gudgeon.Simulation.Engine;

namespace Gudgeon.Simulation.Tests.Engine;

public class FlowFunctionTests
{
    /// <summary>Heywood 1988, eq. C.8, recomputed: 30 mm bore, Cd 0.70, 100 kPa and 300 K to 90 kPa, γ 1.4, R 287.</summary>
    [Fact]
    public void SubcriticalFlowIsThePublishedOne() =>
        Assert.Equal(0.071259, FlowFunction.MassFlow(0.70 * Math.PI / 4 * 0.03 * 0.03, 1e5, 287 * 300, 1.4, 0.9e5), 1e-6);

    /// <summary>Choked mass flux, closed form: air at 101 325 Pa and 288.15 K; burned gas at 400 kPa and 1200 K.</summary>
    [Theory]
    [InlineData(1.4, 287.05287, 101_325, 288.15, 241.2385)]
    [InlineData(1.3, 287.0, 400_000, 1200, 454.8048)]
    public void ChokedFluxIsThePublishedOne(double gamma, double r, double pressure, double temperature, double flux)
    {
        Assert.Equal(flux, FlowFunction.MassFlow(1, pressure, r * temperature, gamma, 0.5 * pressure), 1e-4);
        Assert.Equal(flux, FlowFunction.MassFlow(1, pressure, r * temperature, gamma, 0.1 * pressure), 1e-4);
    }

    [Fact]
    public void NoPressureDifferenceNoFlow() => Assert.Equal(0, FlowFunction.MassFlow(1e-3, 1e5, 287 * 300, 1.4, 1e5));

    /// <summary>The softening near zero costs what its documentation says, and its slope is finite.</summary>
    [Fact]
    public void SofteningIsSmallAndFinite()
    {
        double Flow(double difference) => FlowFunction.MassFlow(1, 1e5, 287 * 300, 1.4, 1e5 * (1 - difference));
        double Sharp(double difference) => 1e5 / Math.Sqrt(287 * 300) * Math.Sqrt(2 * difference);
        Assert.InRange(Flow(2 * FlowFunction.Softening) / Sharp(2 * FlowFunction.Softening), 0.985, 0.995);
        Assert.InRange(Flow(4 * FlowFunction.Softening) / Sharp(4 * FlowFunction.Softening), 0.985, 1);
        Assert.Equal(Flow(1e-6) * 2, Flow(2e-6), 1e-5 * Flow(1e-6));
    }

    /// <summary>The join to the unsoftened flow leaves no step.</summary>
    [Fact]
    public void TheJoinIsSmooth()
    {
        var join = 30 * FlowFunction.Softening;
        var below = FlowFunction.MassFlow(1, 1e5, 287 * 300, 1.4, 1e5 * (1 - join + 1e-9));
        var above = FlowFunction.MassFlow(1, 1e5, 287 * 300, 1.4, 1e5 * (1 - join - 1e-9));
        Assert.Equal(1, below / above, 2e-7);
    }
}
