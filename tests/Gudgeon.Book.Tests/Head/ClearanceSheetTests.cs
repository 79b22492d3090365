using Gudgeon.Book.Build;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tests.Checks;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Tests.Head;

/// <summary>Valve to piston against the reference case VT-12: r 27.5, l 104 mm, stem 12°, 3.0 mm at TDC, 9.2 mm over 288° about 102° after TDC.</summary>
public class ClearanceSheetTests
{
    private const double Degree = Math.PI / 180;

    private static readonly BuildBook Case = Books.Of(
        ("crank.stroke", "55 mm"),
        ("rod.length", "104 mm"),
        ("valve[inlet].stemAngle", "12°"),
        ("valve[inlet].pistonClearance", "3.0 mm"),
        ("cam[inlet].law", "cubed"),
        ("cam[inlet].lift", "9.2 mm"),
        ("cam[inlet].duration", "288°"),
        ("cam[inlet].centre", "102°"));

    [Theory]
    [InlineData("0°", 1.59187e-3, 7.994)]
    [InlineData("-4°", 1.90409e-3, 7.126)]
    [InlineData("4°", 1.24643e-3, 8.752)]
    public void TheLeastRoomIsThatOfTheReference(string advance, double least, double at)
    {
        var room = ValveRoom.Of(new View(Case.Set(("cam[inlet].advance", advance)).Now()), "inlet")!.Least();
        Assert.Equal(least, room.Room, 1e-6);
        Assert.Equal(at, room.Angle / Degree, 0.15);
    }

    /// <summary>Tolerance, lash and stretch each take from the room, together more than any, and cold plus lash is the case of more lift.</summary>
    [Fact]
    public void WhatTakesFromTheRoomAddsUp()
    {
        var room = ValveRoom.Of(new View(Case.Now()), "inlet")!;
        var tolerance = room.Least(new RoomTaken(Timing: 4 * Degree)).Room;
        Assert.Equal(1.24643e-3, tolerance, 2e-6);
        Assert.Equal(room.Least().Room - 0.2e-3, room.Least(new RoomTaken(Lash: 0.2e-3)).Room, 1e-9);
        Assert.Equal(room.Least().Room - (0.1e-3 * Math.Cos(12 * Degree)), room.Least(new RoomTaken(Piston: 0.1e-3)).Room, 1e-9);
        Assert.True(room.Least(new RoomTaken(4 * Degree, 0.2e-3, 0, 0.1e-3)).Room < tolerance - 0.29e-3);
    }

    /// <summary>Depths of the parts stand in for a room that was not read: (2.4 + 0.3 + 0.9 + 0.4) mm along the bore, seen along the stem.</summary>
    [Fact]
    public void TheRoomComesFromThePartsWhereItWasNotRead()
    {
        var parts = Case.Without("valve[inlet].pistonClearance").Set(("valve[inlet].pocketDepth", "2.4 mm"), ("valve[inlet].recess", "0.3 mm"), ("cylinder.gasketThickness", "0.9 mm"), ("cylinder.deckHeight", "0.4 mm"));
        var (known, worked) = (ValveRoom.Of(new View(Case.Now()), "inlet")!, ValveRoom.Of(new View(parts.Now()), "inlet")!);
        Assert.Equal(known.At(0) - 3e-3 + (4e-3 * Math.Cos(12 * Degree)), worked.At(0), 1e-12);
    }

    [Fact]
    public void TheSheetSaysWhatIsMissing()
    {
        var sheet = ClearanceSheet.Of(Case.Without("valve[inlet].pistonClearance").Now());
        Assert.Empty(sheet.Valves);
        Assert.Contains(sheet.Missing, m => m.StartsWith("inlet: not known yet", StringComparison.Ordinal) && m.Contains("valve[inlet].pistonClearance", StringComparison.Ordinal));
    }

    /// <summary>A stretch that cannot be worked is no stretch of nothing: the sheet says that it is not in the running room.</summary>
    [Fact]
    public void AStretchThatIsNotKnownIsSaid()
    {
        var sheet = ClearanceSheet.Of(Case.Now());
        Assert.Null(sheet.Valves.Single().Takes.Stretch);
        Assert.StartsWith("inlet: the stretch of the rod is not counted yet; wanted: ", sheet.Missing[0], StringComparison.Ordinal);
        var whole = ClearanceSheet.Of(Case.Set(("engine.revLimit", "9000 rpm"), ("piston.mass", "260 g"), ("rod.smallEndMass", "90 g"), ("rod.shankArea", "150 mm²")).Now());
        Assert.Equal(0.0366e-3 * Math.Cos(12 * Degree), whole.Valves.Single().Takes.Stretch!.Value, 1e-7);
        Assert.DoesNotContain(whole.Missing, m => m.StartsWith("inlet", StringComparison.Ordinal));
    }

    [Fact]
    public void ClayIsHeldAgainstTheComputedRoom()
    {
        var valve = ClearanceSheet.Of(Case.Set(("valve[inlet].clayClearance", "1.4 mm")).Now()).Valves.Single();
        Assert.Equal(1.59187e-3, valve.LeastCold.Room, 1e-6);
        Assert.Equal(1.4e-3, valve.Clay);
        Assert.Equal(0.19187e-3, Appraisal.Of(Case.Set(("valve[inlet].clayClearance", "1.4 mm")), "clay", "inlet").Judgement!.Value, 1e-6);
    }
}
