using Gudgeon.Book.Rows;

namespace Gudgeon.Book.Tests.Rows;

/// <summary>A formula over a range of one input.</summary>
public class FormulaSweepTests
{
    private static readonly FormulaCall Rate = Call("helical spring rate", "wire=4 mm;meanDiameter=24 mm;activeCoils=6");

    [Fact]
    public void A_spring_rate_rises_with_the_fourth_power_of_its_wire()
    {
        var sweep = FormulaSweep.Of(Rate, 0);
        Assert.Equal(0.004, sweep.Given, 12);
        Assert.Equal(60, sweep.Points.Count);
        Assert.False(sweep.Broken);
        Assert.Equal(0.002, sweep.Points[0].X, 12);
        Assert.Equal(0.006, sweep.Points[^1].X, 12);
        Assert.All(sweep.Points, p => Assert.Equal(Math.Pow(p.X / 0.004, 4), p.Results[0] / Rate.Results[0], 9));
    }

    [Fact]
    public void The_declared_bounds_are_kept()
    {
        // A wire of at most 50 mm.
        var sweep = FormulaSweep.Of(Call("helical spring rate", "wire=40 mm;meanDiameter=300 mm;activeCoils=6"), 0);
        Assert.Equal(0.05, sweep.Points[^1].X, 12);
    }

    [Fact]
    public void A_point_without_meaning_is_left_out()
    {
        // A coil whose mean diameter is smaller than its wire is none.
        var call = Call("helical spring rate", "wire=4 mm;meanDiameter=5 mm;activeCoils=6");
        var sweep = FormulaSweep.Of(call, 1);
        Assert.InRange(sweep.Points.Count, 2, 59);
        Assert.True(sweep.Points[0].X >= 0.004);
        Assert.False(sweep.Broken);
    }

    private static FormulaCall Call(string name, string inputs) => FormulaCall.Run(name, RowSheet.Inputs(inputs));
}
