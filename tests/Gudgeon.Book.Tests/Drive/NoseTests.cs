using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Drive;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Tests.Drive;

/// <summary>The nose of the invented twin: overhang 74 mm, span 90 mm, outboard bearing 104 mm out.</summary>
public class NoseTests
{
    private static LoadedNose Heron(params (string Path, string Text)[] other) => new(new View(DriveBooks.Heron.Changed("other", other).Now(), DriveBooks.Desk));

    [Fact] // Forces and moments about the near main bearing.
    public void SupportsCarryThePull()
    {
        var s = Heron().Supports(1000, 20e-6);
        Assert.Equal(1000, s.Outboard + s.Near + s.Far, 1e-9);
        Assert.Equal(1000 * 0.074, (s.Outboard * 0.104) - (s.Far * 0.09), 1e-9);
    }

    [Fact] // A cover that gives way leaves the nose overhung: M = F a.
    public void ASoftCoverTakesNothing()
    {
        var soft = Heron(("outboard.stiffness", "1 N/mm"), ("outboard.offset", "0 mm"));
        Assert.InRange(soft.Supports(1000, 0).Outboard, 0, 1);
        Assert.Equal(1000 * (0.074 - 0.042), soft.Moment(0.042, 1000), 0.05);
    }

    [Fact]
    public void AnOffsetLoadsTheBearingWithoutAnyPull()
    {
        Assert.Equal(0, Heron(("outboard.offset", "0 mm")).OutboardLoad(0), 1e-9);
        Assert.Equal(2, Heron(("outboard.offset", "0.04 mm")).OutboardLoad(0) / Heron(("outboard.offset", "0.02 mm")).OutboardLoad(0), 1e-9);
    }

    [Fact]
    public void ACoverOutOfLineFallsShort()
    {
        Assert.Equal(Verdict.Holds, DriveBooks.Of(DriveBooks.Heron, "outboard-tilt").Verdict);
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(DriveBooks.Heron.Changed("bent", ("outboard.tilt", "0.1°")), "outboard-tilt").Verdict);
    }

    [Fact] // Basic rating life goes with the cube of the rating.
    public void LifeGoesWithTheCubeOfTheRating() =>
        Assert.Equal(8, Heron(("outboard.rating", "20 kN")).Life() / Heron(("outboard.rating", "10 kN")).Life(), 1e-9);

    [Fact] // The key is a notch: 3 · 1.1^0.38 of steel of 1100 MPa against 2.7 · 1.1^0.43.
    public void AKeyWeakensTheMouthOfTheFit()
    {
        Assert.Equal(3 * Math.Pow(1.1, 0.38), Heron().Notch(LoadedNose.Mouth, 1.1e9).Bending, 1e-9);
        Assert.Equal(Verdict.Holds, DriveBooks.Of(DriveBooks.Heron, "nose-fatigue[mouth]").Verdict);
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(DriveBooks.Heron.Limited("nose-fatigue.min", "40"), "nose-fatigue[mouth]").Verdict);
    }

    [Fact] // The belt's turning takes its tension off the pulley: 2221 N at rest, 464 N less at 53 m/s, and 21 % with it.
    public void TheBeltPressesLessAtSpeed()
    {
        var belt = new DrivenBelt(new View(DriveBooks.Heron.Now(), DriveBooks.Desk));
        Assert.InRange(belt.HubLoad(belt.Worst()), 0.78 * belt.HubLoad(BeltPull.AtRest), 0.80 * belt.HubLoad(BeltPull.AtRest));
    }

    [Fact]
    public void TheSheetDrawsWhatItSays()
    {
        var sheet = NoseSheet.Of(DriveBooks.Heron.Now(), DriveBooks.Desk);
        Assert.Equal(0, sheet.Loads.Sum(l => l.Load), 1e-6);
        Assert.Equal(0, sheet.Moments[^1].Moment, 1e-6);
        Assert.Equal(["mouth", "shoulder"], sheet.Sections.Select(s => s.Name));
        Assert.NotEmpty(NoseSheet.Of(DriveBooks.Wren.Now(), DriveBooks.Desk).Missing);
    }

    [Theory] // The charts go from 0.01 to 0.3 of the diameter, and a fillet is no greater than its step of 4 mm.
    [InlineData("4.1 mm", "not be greater than the step")]
    [InlineData("0.2 mm", "from 0.01 to 0.3")]
    public void AFilletBeyondTheChartsIsRefused(string fillet, string sentence)
    {
        var sheet = NoseSheet.Of(DriveBooks.Heron.Changed("other", ("nose.fillet", fillet)).Now(), DriveBooks.Desk);
        Assert.Contains(sheet.Refused, r => r.Contains(sentence, StringComparison.Ordinal) && r.Contains($"given {fillet}", StringComparison.Ordinal));
    }
}
