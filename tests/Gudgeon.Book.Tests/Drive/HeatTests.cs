using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Drive;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Tests.Drive;

/// <summary>Oil tank and charge cooler of the invented twin.</summary>
public class HeatTests
{
    private static View Heron(params (string Path, string Text)[] other) => new(DriveBooks.Heron.Changed("other", other).Now(), DriveBooks.Desk);

    [Theory] // What goes in comes out: h A (T - air).
    [InlineData(120, 0)]
    [InlineData(120, 3)]
    [InlineData(900, 25)]
    public void TheTankIsInBalance(double heat, double wind)
    {
        var tank = new TankHeat(Heron());
        var air = Heron().Amount(Gudgeon.Book.Fields.Weather.Temperature);
        var rise = tank.Temperature(heat, wind) - air;
        Assert.Equal(heat, tank.Conductance(air, rise, wind) * rise, heat * 1e-6);
    }

    [Fact] // Finned or not, the wind helps; fins help more than their root takes.
    public void WindAndFinsCool()
    {
        var (bare, finned) = (new TankHeat(Heron(("oilTank.finHeight", "1 mm"))), new TankHeat(Heron()));
        Assert.True(finned.Temperature(300, 3) < bare.Temperature(300, 3));
        Assert.True(finned.Temperature(300, 20) < finned.Temperature(300, 3));
    }

    [Fact]
    public void RunsCloseTogetherAreTooHot()
    {
        Assert.Equal(Verdict.Holds, DriveBooks.Of(DriveBooks.Heron, "oil-tank").Verdict);
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(DriveBooks.Heron.Changed("haste", ("oilTank.rest", "2 min")), "oil-tank").Verdict);
    }

    [Fact]
    public void ASmallCoolerFallsShortOfWhatTheRunIsMadeWith()
    {
        Assert.Equal(Verdict.Holds, DriveBooks.Of(DriveBooks.Heron, "cooler-size").Verdict);
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(DriveBooks.Heron.Changed("smaller", ("cooler.area", "2.6 m²")), "cooler-size").Verdict);
    }

    [Fact] // 2 kg of ice take 668 kJ before the water warms.
    public void IceMeltsFirst()
    {
        var cooler = new SizedCooler(Heron());
        Assert.Equal(0, cooler.TankRise(13e3, 12), 1e-9);
        Assert.Equal(((13e3 * 60) - 668e3) / (8 * 4186), cooler.TankRise(13e3, 60), 1e-9);
    }

    [Fact]
    public void TheSheetHasBoth() => Assert.Equal(["Oil tank in place of a cooler", "Charge cooler"], HeatSheet.Of(DriveBooks.Heron.Now(), DriveBooks.Desk).Steps.Select(s => s.Title));
}
