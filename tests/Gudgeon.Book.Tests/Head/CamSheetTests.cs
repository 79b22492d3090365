using Gudgeon.Book.Build;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Tests.Head;

/// <summary>Cams from a law, from readings at the valve and on the lobe, and by degree wheel.</summary>
public class CamSheetTests
{
    private const double Degree = Math.PI / 180;

    /// <summary>The lobe of the reference case VT-12 as a law: 9.2 mm over 288 crank degrees, 102° after TDC.</summary>
    private static readonly BuildBook ByLaw = Books.Of(
        ("cam[inlet].law", "cubed"),
        ("cam[inlet].lift", "9.2 mm"),
        ("cam[inlet].duration", "288°"),
        ("cam[inlet].centre", "102°"),
        ("engine.revLimit", "12000 rpm"));

    private static CamFigures Inlet(BuildBook book, params double[] lifts) => CamSheet.Of(book.Now(), lifts).Cams.Single(c => c.Index == "inlet");

    /// <summary>Peaks of the lobe h (1 - 4 z²)³: 3.43460 h w / B, and -24 h w² / B² over the nose (VT-08).</summary>
    [Fact]
    public void ALawGivesTheMotionOfItsLobe()
    {
        var cam = Inlet(ByLaw);
        var (turning, duration) = (6000 * Math.PI / 30, 144 * Degree);
        Assert.Equal(3.43460 * 9.2e-3 * turning / duration, Value(cam, "greatest speed of the valve"), 1e-3);
        Assert.Equal(-24 * 9.2e-3 * turning * turning / duration / duration, Value(cam, "acceleration over the nose"), 0.1);
        Assert.Equal(19.2 * 9.2e-3 * turning * turning / duration / duration, Value(cam, "greatest acceleration, either flank"), 5.0);
        Assert.Equal(102 * Degree, Value(cam, "lobe centre after overlap TDC"), 1e-9);
    }

    /// <summary>Where (1 - 4 z²)³ passes a share of the lift, in closed form.</summary>
    [Fact]
    public void TimingIsGivenAtAnyLift()
    {
        var cam = Inlet(ByLaw, 1e-3, 3e-3);
        Assert.Equal([0, 1e-3, 3e-3], cam.Timings.Select(t => t.Lift));
        foreach (var timing in cam.Timings.Skip(1))
        {
            var half = 288 * Degree * Math.Sqrt(1 - Math.Cbrt(timing.Lift / 9.2e-3)) / 2;
            Assert.Equal(2 * half, timing.Crossings.Duration, 0.02 * Degree);
            Assert.Equal((360 + 102) * Degree, timing.Crossings.Middle, 1e-6);
        }

        Assert.Equal("at 1 mm: opens 2.117 ° before TDC, closes 26.12 ° after BDC; 208.2 ° long, centre 102 ° after TDC", CamWords.Timing(cam, cam.Timings[1], imperial: false));
    }

    /// <summary>A dial gauge's hundredths do not spoil the acceleration: the curve read at 4 crank degrees gives that of the lobe.</summary>
    [Fact]
    public void ACurveReadAtTheValveGivesTheSameMotion()
    {
        var cam = Inlet(Read(0));
        Assert.Equal("lift curve read at the valve", cam.Motion.From);
        var (turning, duration) = (6000 * Math.PI / 30, 144 * Degree);
        Assert.Equal(-24 * 9.2e-3 * turning * turning / duration / duration, Value(cam, "acceleration over the nose"), 0.02 * 24 * 9.2e-3 * turning * turning / duration / duration);
        Assert.Equal(3.43460 * 9.2e-3 * turning / duration, Value(cam, "greatest speed of the valve"), 0.05);
        Assert.Equal(102 * Degree, Value(cam, "lobe centre after overlap TDC"), 0.05 * Degree);
    }

    /// <summary>An advanced cam opens and closes earlier, and so the engine sees it.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void AdvanceMovesTheCurve(bool read)
    {
        var book = read ? Read(0) : ByLaw;
        var (before, after) = (Inlet(book).Timings[1], Inlet(book.Set(("cam[inlet].advance", "4°"))).Timings[1]);
        Assert.Equal(before.Crossings.Opens - (4 * Degree), after.Crossings.Opens, 1e-9);
        Assert.Equal(before.Crossings.Closes - (4 * Degree), after.Crossings.Closes, 1e-9);
    }

    /// <summary>With lash the valve opens later and lifts less; the ratio of a rocker multiplies the lobe first.</summary>
    [Fact]
    public void LashAndRatioMakeTheLiftAtTheValve()
    {
        var plain = ValveLift.Of(new View(ByLaw.Now()), "inlet")!;
        var rocked = ValveLift.Of(new View(ByLaw.Set(("follower[inlet].ratio", "1.5"), ("valve[inlet].lash", "0.2 mm")).Now()), "inlet")!;
        Assert.Equal(9.2e-3, plain.At(462), 1e-9);
        Assert.Equal((1.5 * 9.2e-3) - 0.2e-3, rocked.At(462), 1e-9);
        Assert.True(rocked.Opens > plain.Opens && rocked.Closes < plain.Closes);
        Assert.Equal((1.5 * plain.At(400)) - 0.2e-3, rocked.At(400), 1e-6);
    }

    /// <summary>Arms that make a ratio of one and a half at the base circle lift about as much, and their flanks differ.</summary>
    [Fact]
    public void ArmsOfAFingerSayTheRatioBetter()
    {
        var book = ByLaw.Set(("cam[inlet].lift", "6 mm"), ("cam[inlet].baseRadius", "15 mm"), ("follower[inlet].pivotToCam", "36 mm"), ("follower[inlet].camArm", "26 mm"), ("follower[inlet].padRadius", "18 mm"), ("follower[inlet].valveArm", "42 mm"));
        var lift = ValveLift.Of(new View(book.Now()), "inlet")!;
        Assert.InRange(lift.Lifts.Max() / 6e-3, 1.67, 1.81);
        Assert.True(Math.Abs(lift.At(462 + 80) - lift.At(462 - 80)) > 5e-5);
        var towards = ValveLift.Of(new View(book.Set(("follower[inlet].wipes", "towards the pivot")).Now()), "inlet")!;
        Assert.Equal(lift.At(462 + 80), towards.At(462 - 80), 1e-6);
    }

    [Fact]
    public void ALobeThatWasReadIsTakenInCamDegrees()
    {
        var rows = string.Join("; ", Enumerable.Range(-36, 73).Select(i => $"{9.2 * PolynomialLobe.At(i / 72.0).Lift:F3} mm".Insert(0, $"{i * 2}° at ")));
        var book = Books.Of(("cam[inlet].liftTable", rows), ("cam[inlet].centre", "102°"), ("engine.revLimit", "12000 rpm"));
        Assert.Equal(9.2e-3, ValveLift.Of(new View(book.Now()), "inlet")!.At(462), 5e-6);
        Assert.Equal(208.2 * Degree, Inlet(book, 1e-3).Timings[1].Crossings.Duration, 0.3 * Degree);
    }

    /// <summary>Where the zero of the wheel stood on the lobe makes no other cam: the middle of half lift is what cam.centre places.</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(180)]
    public void TheZeroOfALobeThatWasReadDoesNotMatter(int zero)
    {
        BuildBook Lobed(int off) => Books.Of(("cam[inlet].liftTable", string.Join("; ", Enumerable.Range(-36, 73).Select(i => FormattableString.Invariant($"{off + (i * 2)}° at {9.2 * PolynomialLobe.At(i / 72.0).Lift:F3} mm")))), ("cam[inlet].centre", "102°"));
        var (nose, other) = (Inlet(Lobed(0)).Timings[1].Crossings, Inlet(Lobed(zero)).Timings[1].Crossings);
        Assert.Equal(nose.Opens, other.Opens, 1e-9);
        Assert.Equal(nose.Closes, other.Closes, 1e-9);
    }

    /// <summary>Two halves of the lobe of VT-12, 270 and 306 crank degrees long: opening and closing in closed form, and the room and the engine see the same.</summary>
    [Fact]
    public void TheFlanksOfAnUnsymmetricLobeAreTwo()
    {
        double At(double crank) => 9.2 * PolynomialLobe.At(crank < 462 ? (crank - 462) / 270 : (crank - 462) / 306).Lift;
        var book = Books.Of(("valve[inlet].liftTable", string.Join("; ", Enumerable.Range(0, 97).Select(i => FormattableString.Invariant($"{327 + (3 * i)}° at {At(327 + (3 * i)):F3} mm")))));
        double Half(double duration, double lift) => duration / 2 * Math.Sqrt(1 - Math.Cbrt(lift / 9.2e-3)) * Degree;
        var crossings = Inlet(book, 3e-3).Timings[1].Crossings;
        Assert.Equal((462 * Degree) - Half(270, 3e-3), crossings.Opens, 0.05 * Degree);
        Assert.Equal((462 * Degree) + Half(306, 3e-3), crossings.Closes, 0.05 * Degree);
        Assert.Equal(((Half(306, 4.6e-3) - Half(270, 4.6e-3)) / 2) + (102 * Degree), Value(Inlet(book), "lobe centre after overlap TDC"), 0.05 * Degree);
    }

    /// <summary>A curve with uneven steps, and one with only every twelfth degree, give the motion of the lobe.</summary>
    [Theory]
    [InlineData("uneven", 0.02)]
    [InlineData("coarse", 0.03)]
    public void StepsMayBeUnevenOrCoarse(string steps, double share)
    {
        var angles = Enumerable.Range(0, 289).Where(i => steps == "coarse" ? i % 12 == 0 : i % (i is < 32 or > 256 ? 2 : 8) == 0);
        var cam = Inlet(Books.Of(("engine.revLimit", "12000 rpm"), ("valve[inlet].liftTable", string.Join("; ", angles.Select(i => FormattableString.Invariant($"{318 + i}° at {9.2 * PolynomialLobe.At((i - 144) / 288.0).Lift:F3} mm"))))));
        var nose = -24 * 9.2e-3 * Math.Pow(6000 * Math.PI / 30 / (144 * Degree), 2);
        Assert.Equal(nose, Value(cam, "acceleration over the nose"), share * -nose);
        Assert.Equal(102 * Degree, Value(cam, "lobe centre after overlap TDC"), 0.05 * Degree);
        Assert.DoesNotContain("scatter", cam.Facts.Single(f => f.Name.StartsWith("greatest acceleration", StringComparison.Ordinal)).Remark, StringComparison.Ordinal);
    }

    /// <summary>Readings off by 0.02 mm either way spoil the acceleration when only 0.01 mm may be smoothed away: it is said, and with 0.02 mm it is the lobe's again.</summary>
    [Fact]
    public void ReadingsThatScatterAreNotBelieved()
    {
        var chance = new Random(1);
        var book = Books.Of(("engine.revLimit", "12000 rpm"), ("valve[inlet].liftTable", string.Join("; ", Enumerable.Range(-36, 73).Select(i => FormattableString.Invariant($"{462 + (4 * i)}° at {Math.Max(0, (9.2 * PolynomialLobe.At(i / 72.0).Lift) + (Math.Abs(i) < 36 ? 0.04 * (chance.NextDouble() - 0.5) : 0)):F3} mm")))));
        var (rough, smooth) = (Inlet(book), Inlet(book.Set(("cam[inlet].smoothingBound", "0.02 mm"))));
        Fact Greatest(CamFigures cam) => cam.Facts.Single(f => f.Name == "greatest acceleration, either flank");
        Assert.Contains("the readings scatter by more than cam.smoothingBound", Greatest(rough).Remark, StringComparison.Ordinal);
        Assert.Equal("at the rev limit", Greatest(smooth).Remark);
        Assert.InRange(Value(smooth, "acceleration over the nose") / -13800, 0.75, 1.25);
        Assert.True(Value(rough, "acceleration over the nose") / -13800 > 1.5);
    }

    /// <summary>Angles a whole cycle on are the same angles; angles from overlap TDC are refused, not taken for a valve that opens on the firing stroke.</summary>
    [Fact]
    public void AnglesCountFromFiringTdc()
    {
        var crossings = Inlet(Read(720)).Timings[1].Crossings;
        Assert.Equal(Inlet(Read(0)).Timings[1].Crossings.Opens, crossings.Opens, 1e-9);
        Assert.Equal(9.2e-3, ValveLift.Of(new View(Read(720).Now()), "inlet")!.At(462), 1e-5);
        var refused = Assert.Throws<BadInputException>(() => CamSheet.Of(Read(-360).Now()));
        Assert.Equal("valve[inlet].liftTable: its middle stands at 102 °; wanted crank angles after firing TDC, where the middle of an inlet valve's curve is between 360° and 540°", refused.Message);
    }

    /// <summary>A cam begun but not ended names what it lacks; arms half known are not taken for none.</summary>
    [Theory]
    [InlineData("cam[inlet].centre", "inlet: not known yet; wanted: cam[inlet].centre")]
    [InlineData("cam[inlet].lift", "inlet: not known yet; wanted: cam[inlet].lift")]
    [InlineData("cam[inlet].law", "inlet: no lift curve, lobe or law of this side is known yet")]
    public void ACamThatIsHalfKnownSaysWhatItLacks(string without, string said)
    {
        var sheet = CamSheet.Of(ByLaw.Without(without).Now());
        Assert.Empty(sheet.Cams);
        Assert.StartsWith(said, sheet.Missing[0], StringComparison.Ordinal);
        var armed = CamSheet.Of(ByLaw.Set(("follower[inlet].camArm", "26 mm"), ("cam[inlet].baseRadius", "15 mm")).Now());
        Assert.Equal("inlet: not known yet; wanted: follower[inlet].pivotToCam, follower[inlet].padRadius, follower[inlet].valveArm", armed.Missing[0]);
    }

    /// <summary>More than 360 crank degrees fit on a lobe; each valve of a cylinder with its own curve has its own cam.</summary>
    [Fact]
    public void LongLobesAndCylindersOfTheirOwn()
    {
        var half = 420 * Degree * Math.Sqrt(1 - Math.Cbrt(1 / 9.2)) / 2;
        Assert.Equal(2 * half, Inlet(ByLaw.Set(("cam[inlet].duration", "420°")), 1e-3).Timings[1].Crossings.Duration, 0.02 * Degree);
        Assert.Equal([12e-3], Inlet(ByLaw, 1e-3, 12e-3).NotReached);
        var twin = CamSheet.Of(ByLaw.Set(("engine.cylinders", "2"), ("cam[inlet.2].centre", "106°")).Now()).Cams;
        Assert.Equal(["inlet.1.1", "inlet.2.1"], twin.Select(c => c.Index));
        Assert.Equal([102 * Degree, 106 * Degree], twin.Select(c => Math.Round(c.Facts[0].Value!.Value, 9)), (a, b) => Math.Abs(a - b) < 1e-8);
    }

    [Fact]
    public void MoreLashThanLiftIsRefused() =>
        Assert.Contains("wanted less than the lift of the cam", Assert.Throws<BadInputException>(() => CamSheet.Of(ByLaw.Set(("cam[inlet].lift", "0.1 mm"), ("valve[inlet].lash", "0.3 mm")).Now())).Message, StringComparison.Ordinal);

    /// <summary>Readings of VT-16: 60° and 145.5° make 102.75°; an exhaust counts before TDC.</summary>
    [Theory]
    [InlineData("inlet", "60° at 145.5°", 102.75, "retard the cam by", 3.25)]
    [InlineData("exhaust", "-145.5° at -60°", 102.75, "advance the cam by", 3.25)]
    [InlineData("inlet", "66° at 152.5°", 109.25, "advance the cam by", 3.25)]
    public void TheDegreeWheelSaysWhichWayToMove(string side, string angles, double centre, string what, double by)
    {
        var wheel = WheelFigures.Of(new View(Books.Of(($"cam[{side}].wheelTable", $"1 mm at {angles}"), ($"cam[{side}].centreWanted", "106°")).Now()), side)!;
        Assert.Equal(centre * Degree, wheel.Centre, 1e-9);
        Assert.Equal(by * Degree, wheel.Facts.Single(f => f.Name == what).Value!.Value, 1e-9);
        Assert.Equal(0.5 * Degree / Math.Sqrt(2), wheel.Expanded, 1e-9);
    }

    /// <summary>How well TDC was found moves the centre as a whole, so its ± goes in undivided.</summary>
    [Fact]
    public void TheZeroOfTheWheelGoesIntoTheCentre()
    {
        var wheel = WheelFigures.Of(new View(Books.Of(("cam[inlet].wheelTable", "1 mm at 20° at 190°; 2 mm at 35° at 175°"), ("cam[inlet].wheelZero", "1° ± 0.8°")).Now()), "inlet")!;
        Assert.Equal(104 * Degree, wheel.Centre, 1e-9);
        Assert.Equal(Math.Sqrt((0.8 * 0.8) + (0.5 * 0.5 / 4)) * Degree, wheel.Expanded, 1e-9);
    }

    private static double Value(CamFigures cam, string name) => cam.Facts.Single(f => f.Name == name).Value!.Value;

    /// <summary>The lobe of VT-12 as somebody reads it at the valve, to a hundredth of a millimetre.</summary>
    internal static BuildBook Read(double centreOff) => Books.Of(
        ("valve[inlet].liftTable", string.Join("; ", Enumerable.Range(-36, 73).Select(i => FormattableString.Invariant($"{462 + centreOff + (i * 4)}° at {9.2 * PolynomialLobe.At(i / 72.0).Lift:F2} mm")))),
        ("engine.revLimit", "12000 rpm"));
}
