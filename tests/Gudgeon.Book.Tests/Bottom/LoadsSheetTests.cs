using Gudgeon.Book.Bottom;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Tests.Bottom;

/// <summary>Loads of the invented twin.</summary>
public class LoadsSheetTests
{
    private static readonly Lazy<LoadsSheet> Heron = new(() => LoadsSheet.Of(new View(DemoBooks.Heron.Now, new DutyDesk())));

    [Fact]
    public void EverySpeedOfTheRunIsThere()
    {
        var sheet = Heron.Value;
        Assert.Empty(sheet.Missing);
        Assert.Equal(DutyDesk.Speeds, sheet.Rows.Count);
        Assert.Equal(["main.1", "main.2", "main.3"], sheet.MainNames);
        Assert.Equal(sheet.Rows[^1].Speed, sheet.Shown!.Speed);
        Assert.All(sheet.Rows, r => Assert.Equal(3, r.Mains.Count));
        Assert.Equal(sheet.Rows.Select(r => r.RodTension).Order(), sheet.Rows.Select(r => r.RodTension));
    }

    [Fact]
    public void TheMeanTorqueIsThatOfTheRunBeforeFriction()
    {
        var desk = new DutyDesk();
        var duty = new View(DemoBooks.Heron.Now, desk).Duty()!;
        var swept = 2 * Math.PI / 4 * Math.Pow(DemoBooks.Heron.Now.Find(FieldCatalogue.Address("cylinder[1].bore"))!.Value.Si, 2) * DemoBooks.Heron.Now.Find(FieldCatalogue.Address("crank.stroke"))!.Value.Si;
        foreach (var (row, point) in Heron.Value.Rows.Zip(duty.Points))
        {
            var indicated = point.Figures!.NetImep * swept / (4 * Math.PI);
            Assert.InRange(row.Torque / indicated, 0.99, 1.01);
        }
    }

    [Fact]
    public void AtASpeedAskedForTheNearestIsShown()
    {
        var sheet = LoadsSheet.Of(new View(DemoBooks.Heron.Now, new DutyDesk()), 6000 * Math.PI / 30);
        Assert.Equal(6000, sheet.Shown!.Speed * 30 / Math.PI, 250.0);
    }

    [Fact]
    public void WhatIsWantedIsSaid()
    {
        var book = DemoBooks.Heron.Book.Without("crank.bobWeight");
        Assert.Equal("Loads of the main bearings are not known: they want crank.bobWeight.", LoadsSheet.Of(new View(book.Now(), new DutyDesk())).Missing);
        Assert.Contains("rod[1].length", LoadsSheet.Of(new View(DemoBooks.Heron.Book.Without("rod.length").Now(), new DutyDesk())).Missing, StringComparison.Ordinal);
    }
}
