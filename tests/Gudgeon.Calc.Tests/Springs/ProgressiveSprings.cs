using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Springs;

namespace Gudgeon.Calc.Tests.Springs;

public class ProgressiveSprings
{
    private static readonly double[] Heights = [0.0385, 0.035, 0.032, 0.028];
    private static readonly double[] Loads = [280, 370, 470, 640];

    /// <summary>Readings of a spring that stiffens, of three to eight heights.</summary>
    private static readonly Gen<(double[] Heights, double[] Loads)> Readings = Gen.Select(Gen.Double[1e-3, 4e-3], Gen.Double[10, 200]).Array[3, 8].Select(steps =>
    {
        var (height, load) = (0.06, 50.0);
        return (steps.Select(s => height -= s.Item1).ToArray(), steps.Select(s => load += s.Item2).ToArray());
    });

    [Fact]
    public void The_load_rises_all_the_way_as_the_spring_is_pressed_shorter() => Gen.Select(Readings, Gen.Double.Unit, Gen.Double.Unit).Sample((read, a, b) =>
    {
        var (low, high) = (read.Heights.Min(), read.Heights.Max());
        var (shorter, taller) = (low + (Math.Min(a, b) * (high - low)), low + (Math.Max(a, b) * (high - low)));
        Assert.True(SpringTable.Load(read.Heights, read.Loads, shorter) >= SpringTable.Load(read.Heights, read.Loads, taller) - 1e-9);
        Assert.InRange(SpringTable.Load(read.Heights, read.Loads, shorter), read.Loads.Min() - 1e-9, read.Loads.Max() + 1e-9);
        Assert.True(SpringTable.Rate(read.Heights, read.Loads, shorter) >= 0);
    });

    [Fact]
    public void A_straight_spring_is_followed_straight() => Gen.Select(Gen.Double[10e3, 60e3], Gen.Double.Unit).Sample((rate, at) =>
    {
        double[] heights = [0.040, 0.036, 0.033, 0.028];
        var loads = Array.ConvertAll(heights, h => rate * (0.05 - h));
        var height = 0.028 + (at * 0.012);
        Assert.Equal(rate * (0.05 - height), SpringTable.Load(heights, loads, height), rate * 1e-12);
        Assert.Equal(rate, SpringTable.Rate(heights, loads, height), rate * 1e-9);
    });

    [Fact]
    public void The_rate_is_the_slope_of_the_load() => Gen.Double[0.0285, 0.0380].Sample(height =>
    {
        const double Step = 1e-7;
        var slope = (SpringTable.Load(Heights, Loads, height - Step) - SpringTable.Load(Heights, Loads, height + Step)) / (2 * Step);
        Assert.Equal(slope, SpringTable.Rate(Heights, Loads, height), 20.0);
    });

    [Fact]
    public void Far_past_the_readings_nothing_is_known()
    {
        Assert.Equal(640 + (1.0 * 47.738095), SpringTable.Load(Heights, Loads, 0.027), 1e-4);
        Assert.Contains("tested between 28 and 38.5 mm, and 26.9 mm is too far outside", Assert.Throws<FormulaDomainException>(() => SpringTable.Load(Heights, Loads, 0.0269)).Message, StringComparison.Ordinal);
        Assert.Throws<FormulaDomainException>(() => SpringTable.Rate(Heights, Loads, 0.0397));
    }

    [Fact]
    public void Readings_that_cannot_be_are_refused()
    {
        Assert.Contains("two are alike", Assert.Throws<FormulaDomainException>(() => SpringTable.Load([0.03, 0.03, 0.04], [500, 400, 300], 0.035)).Message, StringComparison.Ordinal);
        Assert.Contains("must rise", Assert.Throws<FormulaDomainException>(() => SpringTable.Load([0.03, 0.035, 0.04], [500, 300, 300], 0.035)).Message, StringComparison.Ordinal);
        Assert.Contains("three or more", Assert.Throws<FormulaDomainException>(() => SpringTable.Load([0.03, 0.04], [500, 300], 0.035)).Message, StringComparison.Ordinal);
        Assert.Contains("as many", Assert.Throws<FormulaDomainException>(() => SpringTable.Load([0.03, 0.035, 0.04], [500, 300], 0.035)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_fatigue_diagram_closes_at_the_static_limit()
    {
        var stress = HelicalSpring.ShearStress(1, 4e-3, 25e-3, CurvatureFactor.Bergstrasser);
        var limit = 0.56 * 1850e6 / stress;
        Assert.Equal(0, FatigueDiagram.Safety(limit, limit + 10, 4e-3, 25e-3, 700e6, 1850e6).Allowed, 1.0);
        Assert.Equal(0, FatigueDiagram.Safety(limit * 1.1, limit * 1.2, 4e-3, 25e-3, 700e6, 1850e6).Allowed);
        Assert.Equal(700e6, FatigueDiagram.Safety(0, 100, 4e-3, 25e-3, 700e6, 1850e6).Allowed, 1e-3);
    }
}
