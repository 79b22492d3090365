using Gudgeon.Book.Duty;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Tests.Duty;

/// <summary>What the pages draw of a run beside its own figures.</summary>
public class RunPictureTests
{
    /// <summary>Flow at the conditions of the map by the definition of corrected flow: m √(T/Tr) / (p/pr).</summary>
    [Fact]
    public void The_operating_line_stands_at_the_conditions_of_the_map()
    {
        var duty = DemoBooks.Heron.Run;
        var map = ((CentrifugalInduction)duty.Spec.Intake.Induction!).Map;
        var line = BlowerDuty.Line(duty);
        Assert.Equal(duty.Points.Count, line.Count);
        Assert.All(duty.Figures.Zip(line), p =>
        {
            var blower = p.First.Figures.Blower!;
            var corrected = blower.Flow * Math.Sqrt(duty.Ambient.Temperature / map.ReferenceTemperature) * map.ReferencePressure / blower.MeanInletPressure;
            Assert.Equal(1, p.Second.Flow / corrected, 1e-12);
            Assert.Equal((p.First.Speed, blower.PressureRatio), (p.Second.EngineSpeed, p.Second.Ratio));
        });
        Assert.Empty(BlowerDuty.Line(DemoBooks.Wren.Run));
    }

    /// <summary>The standing start, which marches wheel and engine, shifts on the lines of the gears.</summary>
    [Theory]
    [InlineData("heron")]
    [InlineData("wren")]
    public void The_run_shifts_on_the_lines_of_the_gears(string book)
    {
        var opened = DemoBooks.Named(book);
        var lines = GearChart.Of(opened.Now).ToDictionary(l => l.Gear);
        var shifts = Demand.Sprint(opened.View).Shifts;
        Assert.NotEmpty(shifts);
        Assert.All(shifts.Where(s => s.From > 1), s => Assert.Equal(1, lines[s.From].RoadSpeed * s.EngineSpeedBefore / lines[s.From].EngineSpeed / s.Speed, 1e-6));
    }
}
