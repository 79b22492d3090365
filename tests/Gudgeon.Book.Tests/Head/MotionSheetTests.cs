using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tests.Checks;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Head;

/// <summary>The march from a book: a train like that of the reference case VT-08, 60 g, 250 N, 45 N/mm, 8.5 mm over 300 crank degrees.</summary>
public class MotionSheetTests
{
    /// <summary>The mass of the reference counts a third of the spring, which here weighs so little that its surge is over at once.</summary>
    private static readonly BuildBook Case = Books.Of(
        ("engine.revLimit", "9000 rpm"),
        ("cam[inlet].law", "cubed"),
        ("cam[inlet].lift", "8.5 mm"),
        ("cam[inlet].duration", "300°"),
        ("cam[inlet].centre", "105°"),
        ("follower[inlet].kind", "bucket"),
        ("follower[inlet].stiffness", "200000 N/mm"),
        ("valve[inlet].lift", "8.5 mm"),
        ("valve[inlet].mass", "36 g"),
        ("valve[inlet].movingMass", "20 g"),
        ("follower[inlet].camMass", "14 g"),
        ("spring[inlet].wire", "2 mm"),
        ("spring[inlet].outsideDiameter", "17 mm"),
        ("spring[inlet].activeCoils", "4"),
        ("spring[inlet].loadTable", "250 N at 40 mm; 632.5 N at 31.5 mm"),
        ("spring[inlet].installedHeight", "40 mm"),
        ("spring[inlet].solidHeight", "20 mm"),
        ("spring[inlet].mass", "12 g"));

    private static View Of(BuildBook book) => new(book.Now(), new DutyDesk());

    [Fact]
    public void TheTrainIsPutTogetherFromTheBook()
    {
        var (spec, motion) = TrainAssembly.Build(Of(Case), "inlet")!.Value;
        Assert.Equal(42e-3, spec.ValveMass, 1e-12);
        Assert.Equal(14e-3, spec.FollowerMass, 1e-12);
        Assert.Equal(250, spec.ShutLoad, 1e-9);
        Assert.Equal(45e3, spec.Rate, 1e-6);
        Assert.Equal(11.5e-3 + 8.5e-3, spec.Springs[0].BindTravel, 1e-12);

        // Four coils of 2 mm wire at 15 mm: π² d² D n ρ / 4.
        Assert.Equal(Math.PI * Math.PI * 4e-6 * 15e-3 * 4 * 7850 / 4, spec.Springs[0].ActiveMass, 1e-9);
        Assert.Null(spec.TrainStiffness);
        Assert.Equal(2e8, spec.CamStiffness);
        Assert.Null(spec.Gas);
        Assert.Equal(8.5e-3, spec.Profile.At(0).Lift, 1e-9);
        Assert.Equal("lobe by the law cubed", motion.From);
    }

    /// <summary>The give of a finger train is shared between camshaft and beam, in series.</summary>
    [Fact]
    public void AFingersGiveIsShared()
    {
        var spec = TrainAssembly.Build(Of(Case.Set(("follower[inlet].kind", "finger"), ("follower[inlet].stiffness", "20000 N/mm"))), "inlet")!.Value.Spec;
        Assert.Equal(1 / 2e7, (1 / spec.CamStiffness) + (1 / spec.TrainStiffness!.Value), 1e-15);
    }

    /// <summary>A rigid train of 57.1 g leaves at the nose where F0 + k h = m 24 h (w / B)²; the march comes apart near it, by a twentieth of a millimetre a little later.</summary>
    [Fact]
    public void ItComesApartNearTheRigidEstimate()
    {
        var sheet = MotionSheet.Of(Of(Case), new MotionWish(8000 * Math.PI / 30, 14000 * Math.PI / 30, 7));
        var valve = Assert.Single(sheet.Valves);
        var mass = 56e-3 + (Math.PI * Math.PI * 4e-6 * 15e-3 * 4 * 7850 / 4 / 3);
        var rigid = 2 * Math.Sqrt(632.5 / (mass * 24 * 8.5e-3)) * (150 * Math.PI / 180);
        Assert.Equal(rigid, valve.Facts.Single(f => f.Name == "a rigid train would come apart at").Value!.Value, 0.001 * rigid);
        Assert.InRange(valve.Facts.Single(f => f.Name == "comes apart at").Value!.Value, 0.96 * rigid, 1.04 * rigid);
        Assert.False(sheet.WithGas);
    }

    [Fact]
    public void StifferSpringsAndLessMassHoldLonger()
    {
        double LiftOff(BuildBook book) => MotionSheet.Of(Of(book), new MotionWish(8000 * Math.PI / 30, 16000 * Math.PI / 30, 9)).Valves[0].Facts.Single(f => f.Name == "comes apart at").Value!.Value;
        var plain = LiftOff(Case);
        Assert.True(LiftOff(Case.Set(("spring[inlet].loadTable", "300 N at 40 mm; 759 N at 31.5 mm"))) > plain);
        Assert.True(LiftOff(Case.Set(("valve[inlet].mass", "30 g"))) > plain);
    }

    [Fact]
    public void TheChecksSayWhatTheSheetSays()
    {
        Assert.Equal(Verdict.Holds, Appraisal.Of(Case, "valve-lift-off", "inlet").Verdict);
        var beyond = Appraisal.Of(Case.Set(("engine.revLimit", "11500 rpm")), "valve-lift-off", "inlet");
        Assert.Equal(Verdict.FallsShort, beyond.Verdict);
        Assert.InRange(beyond.Judgement!.Value, 0.05e-3, 3e-3);
        Assert.Equal(Verdict.Holds, Appraisal.Of(Case, "valve-bounce", "inlet").Verdict);
    }

    /// <summary>Line contact: pmax = sqrt(F Er / (2 π L R)), R = Rb + h - 24 h / B² over the nose, Er = 2 / ((1 - ν²) 2 / E).</summary>
    [Fact]
    public void TheContactIsThatOfHertz()
    {
        var book = Case.Set(("cam[inlet].baseRadius", "36 mm"), ("cam[inlet].width", "12 mm"), ("cam[inlet].contactLimit", "900 MPa"), ("engine.revLimit", "1500 rpm"));
        var finding = Appraisal.Of(book, "cam-contact", "inlet");
        Assert.Equal([], finding.Missing);
        var valve = MotionSheet.Of(Of(book)).Valves[0];
        var motion = valve.AtLimit.Motion!;
        var point = valve.Motion.Lobe!.At(motion.GreatestCamForceAngle);
        var expected = Math.Sqrt(motion.GreatestCamForce * (206e9 / 0.91) / (2 * Math.PI * 12e-3 * (36e-3 + point.Lift + point.Curvature)));
        Assert.Equal(expected, finding.Judgement!.Value, 1e-3 * expected);
    }

    [Fact]
    public void WhatIsMissingIsNamed()
    {
        var sheet = MotionSheet.Of(Of(Case.Without("valve[inlet].mass")));
        Assert.Empty(sheet.Valves);
        Assert.Contains(sheet.Missing, m => m.StartsWith("inlet: not known yet", StringComparison.Ordinal) && m.Contains("valve[inlet].mass", StringComparison.Ordinal));
        Assert.Throws<BadInputException>(() => MotionSheet.Of(Of(Case), new MotionWish(9000, 8000)));
        Assert.Throws<BadInputException>(() => MotionSheet.Of(Of(Case), new MotionWish(Valve: "inlet.7.7")));
    }

    /// <summary>Two checks at the same speed march once.</summary>
    [Fact]
    public void AMotionIsMarchedOnce()
    {
        var desk = new DutyDesk();
        var (spec, _) = TrainAssembly.Build(new View(Case.Now(), desk), "inlet")!.Value;
        var (first, again) = (desk.Motions.At(spec, 400), desk.Motions.At(spec, 400));
        Assert.Same(first, again);
        Assert.Equal(1, desk.Motions.Marched);
        desk.Motions.At(spec with { GuideFriction = 5 }, 400);
        Assert.Equal(2, desk.Motions.Marched);
    }

    /// <summary>A valve thrown over its curve takes that from the room at the rev limit.</summary>
    [Fact]
    public void WhatTheValveIsThrownTakesFromTheRoom()
    {
        var book = Case.Set(("crank.stroke", "55 mm"), ("rod.length", "104 mm"), ("piston.mass", "300 g"), ("rod.smallEndMass", "100 g"), ("rod.shankArea", "150 mm²"), ("valve[inlet].pistonClearance", "4 mm"), ("engine.revLimit", "12100 rpm"), ("cam[inlet].centre", "75°"));
        var valve = Assert.Single(ClearanceSheet.Of(book.Now(), new DutyDesk()).Valves);
        Assert.InRange(valve.Takes.Thrown, 0.02e-3, 2e-3);
        Assert.Equal(0, Assert.Single(ClearanceSheet.Of(book.Set(("engine.revLimit", "6000 rpm")).Now(), new DutyDesk()).Valves).Takes.Thrown, 1e-6);
    }
}
