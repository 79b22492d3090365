using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>
/// A jump of width against the loss of its textbook: widening (1 − A1/A2)² of the narrow pipe's head (Borda and Carnot), narrowing
/// 0.5 (1 − A2/A1) of it (Idelchik, from memory); at low Mach numbers.
/// </summary>
public class JointTests
{
    private const double Gamma = 1.4;

    [Theory]
    [InlineData(1e-3, 1.5e-3)]
    [InlineData(1e-3, 3e-3)]
    [InlineData(2e-3, 1e-3)]
    [InlineData(1.2e-3, 1e-3)]
    public void LosesTheHeadOfItsTextbook(double from, double into)
    {
        var (one, other) = Flow(from, into);
        var head = Total(from < into ? one : other) - (from < into ? one : other).Pressure;
        var loss = from < into ? (1 - (from / into)) * (1 - (from / into)) : 0.5 * (1 - (into / from));
        Assert.InRange(Math.Abs(one.Velocity / 340), 0.02, 0.2);
        Assert.Equal(loss, (Total(one) - Total(other)) / head, 0.02);
    }

    [Theory]
    [InlineData(1e-3, 3e-3)]
    [InlineData(3e-3, 1e-3)]
    public void GivesWhatItReceivesEitherWay(double from, double into)
    {
        var (one, other) = Flow(from, into);
        Assert.Equal(0, (one.Outwards + other.Outwards) / one.Outwards, 1e-12);
        Assert.Equal(one.Enthalpy, other.Enthalpy, 1e-6 * one.Enthalpy);
        Assert.Equal(one.Outwards, one.Density * one.Velocity * from, 1e-9);
        Assert.Equal(other.Outwards, other.Density * other.Velocity * into, 1e-9);

        var (back, forth) = Joint.Flow(End(0), into, End(30), from, 1e5);
        Assert.True(back.Outwards < 0);
        Assert.Equal(one.Outwards, forth.Outwards, 1e-9);
    }

    private static (MouthFlow One, MouthFlow Other) Flow(double from, double into) => Joint.Flow(End(30), from, End(0), into, 1e5);

    private static PipeEnd End(double outwards) => new(1.2, outwards, 1e5, 1e5 / 1.2 / (Gamma - 1), 1 / (Gamma - 1));

    private static double Total(in MouthFlow flow) => flow.Pressure * Math.Pow(1 + (0.5 * (Gamma - 1) * flow.Velocity * flow.Velocity * flow.Density / (Gamma * flow.Pressure)), Gamma / (Gamma - 1));
}
