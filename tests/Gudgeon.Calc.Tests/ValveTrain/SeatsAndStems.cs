using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Calc.Tests.ValveTrain;

public class SeatsAndStems
{
    [Fact]
    public void A_wider_seat_bears_less() => Gen.Select(Gen.Double[0.8e-3, 2e-3], Gen.Double[1e-5, 0.5e-3], Gen.Double[0, 100e5]).Sample((width, more, pressure) =>
        Assert.True(ValveSeat.Pressure(36e-3, width + more, Math.PI / 4, 300, pressure).Pressure < ValveSeat.Pressure(36e-3, width, Math.PI / 4, 300, pressure).Pressure));

    /// <summary>The pressure on the cone, summed along the stem, carries the load.</summary>
    [Fact]
    public void The_band_carries_the_load() => Gen.Select(Gen.Double[0.8e-3, 2e-3], Gen.Double[0.4, 1.0], Gen.Double[0, 100e5]).Sample((width, angle, pressure) =>
    {
        var seat = ValveSeat.Pressure(36e-3, width, angle, 300, pressure);
        Assert.Equal(seat.Load, seat.Pressure * ValveSeat.Contact(36e-3, width, angle).Area * Math.Cos(angle), seat.Load * 1e-12);
    });

    [Fact]
    public void A_seat_wider_than_the_head_is_refused() =>
        Assert.Contains("wider than the head", Assert.Throws<FormulaDomainException>(() => ValveSeat.Contact(3e-3, 3e-3, 0.5)).Message, StringComparison.Ordinal);

    [Fact]
    public void At_twenty_degrees_hot_is_cold() => Assert.Equal(StemGuide.Clearance(6.05e-3, 5.98e-3), StemGuide.ClearanceHot(6.05e-3, 5.98e-3, 293.15, 293.15, 18e-6, 12e-6), 1e-15);

    [Fact]
    public void A_hotter_stem_closes_and_a_hotter_guide_opens() => Gen.Select(Gen.Double[300, 800], Gen.Double[1, 100]).Sample((at, more) =>
    {
        var clearance = StemGuide.ClearanceHot(6.05e-3, 5.98e-3, at, at, 18e-6, 12e-6);
        Assert.True(StemGuide.ClearanceHot(6.05e-3, 5.98e-3, at, at + more, 18e-6, 12e-6) < clearance);
        Assert.True(StemGuide.ClearanceHot(6.05e-3, 5.98e-3, at + more, at, 18e-6, 12e-6) > clearance);
    });
}
