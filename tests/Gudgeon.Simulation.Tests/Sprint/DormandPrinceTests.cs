using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Simulation.Tests.Sprint;

public class DormandPrinceTests
{
    /// <summary>A pendulum clock of known motion: halving the step must divide the error by 2⁵.</summary>
    [Fact]
    public void FifthOrder()
    {
        var order = Math.Log2(ErrorAfterOneSecond(20) / ErrorAfterOneSecond(40));
        Assert.InRange(order, 4.8, 5.3);
    }

    [Fact]
    public void ErrorEstimateIsOfTheSizeOfTheError()
    {
        var (state, next) = (new double[] { 1, 0 }, new double[2]);
        var integrator = Oscillator();
        integrator.Step(state, 0.2, next);
        var actual = Math.Abs(next[0] - Math.Cos(0.2));
        Assert.InRange(integrator.Error(0, 0.2), actual, 1e4 * actual);
    }

    private static double ErrorAfterOneSecond(int steps)
    {
        var state = new double[] { 1, 0 };
        var integrator = Oscillator();
        for (var i = 0; i < steps; i++)
        {
            integrator.Step(state, 1.0 / steps, state);
        }

        return Math.Abs(state[0] - Math.Cos(1)) + Math.Abs(state[1] + Math.Sin(1));
    }

    private static DormandPrince Oscillator() => new(2, static (state, rates) => (rates[0], rates[1]) = (state[1], -state[0]));
}
