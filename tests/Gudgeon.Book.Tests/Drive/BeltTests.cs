using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Drive;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Drive;

/// <summary>The belt of the invented twin: 41 to 31 teeth of 8 mm on 190 mm centres, an idler on the back.</summary>
public class BeltTests
{
    [Fact]
    public void WithoutABlowerTheSheetSaysSo()
    {
        var sheet = BeltSheet.Of(DriveBooks.Wren.Now(), DriveBooks.Desk);
        Assert.Empty(sheet.Steps);
        Assert.Contains("no supercharger that the crank drives", sheet.Missing, StringComparison.Ordinal);
    }

    [Fact] // d = 41 · 8 mm / π; F = P / (ω d / 2).
    public void PullAndTorqueGoTogether()
    {
        var belt = new DrivenBelt(new View(DriveBooks.Heron.Now()));
        var pull = belt.At(1000, 20e3);
        Assert.Equal(20, pull.Torque, 1e-9);
        Assert.Equal(20 / (41 * 8e-3 / Math.PI / 2), pull.Pull, 1e-6);
        Assert.Equal(20e3, pull.Pull * pull.BeltSpeed, 1e-6);
    }

    [Fact] // 306 Hz on 189.573 mm of 0.165 kg/m.
    public void TheNoteThatWasMeasuredGoesBeforeTheDrawing()
    {
        Assert.Equal(4 * 0.165 * 0.189573 * 0.189573 * 306 * 306, new DrivenBelt(new View(DriveBooks.Heron.Now())).SetUp(), 0.1);
        Assert.Equal(1.1 * 1.1, DriveBooks.Of(DriveBooks.Heron.Changed("higher", ("belt.spanFrequency", "336.6 Hz")), "belt-slack").Judgement!.Value / DriveBooks.Of(DriveBooks.Heron, "belt-slack").Judgement!.Value, 1e-6);
    }

    [Fact]
    public void ALooserBeltFallsShort()
    {
        Assert.Equal(Verdict.Holds, DriveBooks.Of(DriveBooks.Heron, "belt-slack").Verdict);
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(DriveBooks.Heron.Changed("loose", ("belt.spanFrequency", "140 Hz")), "belt-slack").Verdict);
    }

    // Two spans of the set-up tension less 0.165 v², parted 8 to 1; the worst hit is a shift that takes 2782 rpm off 9700.
    [Fact]
    public void ABeltJumpsUnderAHitBeforeItSlacksUnderSteadyPull()
    {
        var jump = DriveBooks.Of(DriveBooks.Heron, "belt-jump");
        var speed = (9700 - (2782.0 / 2)) * Math.PI / 30 * 41 * 8e-3 / Math.Tau;
        Assert.Equal(2 * ((4 * 0.165 * 0.189573 * 0.189573 * 306 * 306) - (0.165 * speed * speed)) * 7 / 9, jump.Judgement!.Value, 0.2);
        Assert.Equal(new DriveHits(new View(DriveBooks.Heron.Now(), DriveBooks.Desk)).Worst().Torque / (41 * 8e-3 / Math.Tau), jump.Judgement.Lower!.Value, 1e-6);
        Assert.Equal((Verdict.Holds, "shift from gear 1 to 2"), (jump.Verdict, jump.Judgement.Remark));
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(DriveBooks.Heron.Changed("looser", ("belt.spanFrequency", "285 Hz")), "belt-jump").Verdict);
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(DriveBooks.Heron.Limited("belt-jump.ratio", "5"), "belt-jump").Verdict);
    }

    [Fact]
    public void WithoutInertiasTheSteadyPullCounts()
    {
        var still = DriveBooks.Heron with { Changes = [.. DriveBooks.Heron.Changes.Select(c => c with { Values = c.Values.Where(v => !v.Key.StartsWith("rotor[blower].inertia", StringComparison.Ordinal)).ToDictionary(StringComparer.Ordinal) })] };
        var jump = DriveBooks.Of(still, "belt-jump").Judgement!;
        Assert.Equal(DriveBooks.Of(still, "belt-pull").Judgement!.Lower!.Value / 1.5, jump.Lower!.Value, 1e-6);
        Assert.StartsWith("steady at 9700 rpm", jump.Remark, StringComparison.Ordinal);
    }

    // The tension that the sheet asks for is the one at which the check is on its edge.
    [Fact]
    public void TheSheetTellsTheTensionThatWouldHold()
    {
        var step = BeltSheet.Of(DriveBooks.Heron.Now(), DriveBooks.Desk).Steps.Single(s => s.Title == "Jumping a tooth");
        var wanted = step.Facts.Single(f => f.Name == "tension at rest that would hold it").Value!.Value;
        var slack = step.Facts.Single(f => f.Name.StartsWith("slack span", StringComparison.Ordinal)).Value!.Value;
        Assert.True(slack > 0);
        Assert.Equal(step.Facts[1].Value!.Value - slack, step.Facts[0].Value!.Value, 1e-6);
        var note = 306 * Math.Sqrt(wanted / new DrivenBelt(new View(DriveBooks.Heron.Now())).SetUp());
        Assert.Equal(1, DriveBooks.Of(DriveBooks.Heron.Changed("edge", ("belt.spanFrequency", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{note:F9} Hz"))), "belt-jump").Reserve, 1e-6);
    }

    [Fact]
    public void ABeltWithoutTeethCannotJump() =>
        Assert.Empty(CheckCatalogue.Find("belt-jump").Instances(new View(DriveBooks.Heron.Changed("ribbed", ("belt.kind", "V-ribbed")).Now())));

    [Theory]
    [InlineData("41", Verdict.Holds)]
    [InlineData("42", Verdict.FallsShort)]
    public void PulleysMustGiveTheRatioOfTheRun(string teeth, Verdict verdict) =>
        Assert.Equal(verdict, DriveBooks.Of(DriveBooks.Heron.Changed("other", ("belt.crankTeeth", teeth)), "belt-ratio").Verdict);

    [Fact] // Below six teeth in mesh the belt is derated: an idler that takes the wrap away is not forgiven.
    public void FewTeethInMeshFallShort() =>
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(DriveBooks.Heron.Limited("belt-mesh.min", "16"), "belt-mesh").Verdict);

    private static BuildBook Ribbed(params (string Path, string Text)[] other) => DriveBooks.Heron.Changed(
        "ribbed",
        [("belt.kind", "V-ribbed"), ("belt.crankDiameter", "104.4 mm"), ("belt.blowerDiameter", "78.9 mm"), ("belt.mass", "0.08 kg/m"), ("belt.spanFrequency", "260 Hz"), .. other]);

    [Theory] // From the set-up tension: 4 over half a turn, 4^(θ/π) over its wrap; with a friction of one's own exp(μ θ / sin 20°), C10's wedge.
    [InlineData("")]
    [InlineData("0.3")]
    public void RibbedBeltsSlip(string friction)
    {
        var ribbed = friction.Length > 0 ? Ribbed(("belt.friction", friction)) : Ribbed();
        var belt = new DrivenBelt(new View(ribbed.Now()));
        var wrap = Math.Min(belt.Course().DriverWrap, belt.Course().DrivenWrap);
        var q = friction.Length > 0 ? Math.Exp(0.3 * wrap / Math.Sin(20 * Math.PI / 180)) : Math.Pow(4, wrap / Math.PI);
        Assert.Equal(2 * (belt.SetUp() - (0.08 * 50 * 50)) * (q - 1) / (q + 1), belt.Capacity(50), 1e-6);
        var facts = Pull(ribbed);
        Assert.Equal("pull at which it slips", facts[3].Name);
        Assert.Equal(q, facts.Single(f => f.Name == "tight over slack span where it slips").Value!.Value, 1e-9);
    }

    [Fact]
    public void AFlatBeltKeepsItsFriction()
    {
        var belt = new DrivenBelt(new View(Ribbed().Changed("flat", ("belt.kind", "flat")).Now()));
        var wrap = Math.Min(belt.Course().DriverWrap, belt.Course().DrivenWrap);
        Assert.Equal(Math.Exp(0.3 * wrap), belt.AtSlip(50).Ratio, 1e-9);
    }

    // 396 N of pull: six ribs take 66 N each, three 132 N.
    [Fact]
    public void EachRibIsHeldToItsMakersPull()
    {
        Assert.Equal(Verdict.NotKnownYet, DriveBooks.Of(Ribbed(("belt.ribs", "6")), "belt-rib").Verdict);
        var holds = DriveBooks.Of(Ribbed(("belt.ribs", "6"), ("belt.ribPull", "120 N")), "belt-rib");
        Assert.Equal((Verdict.Holds, DriveBooks.Of(Ribbed(), "belt-pull").Judgement!.Lower!.Value / 1.5 / 6), (holds.Verdict, holds.Judgement!.Value));
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(Ribbed(("belt.ribs", "3"), ("belt.ribPull", "120 N")), "belt-rib").Verdict);
        Assert.Empty(CheckCatalogue.Find("belt-rib").Instances(new View(DriveBooks.Heron.Now())));
        Assert.Contains("not known yet", Pull(Ribbed(("belt.ribs", "6"))).Single(f => f.Name == "pull of a rib").Words(imperial: false), StringComparison.Ordinal);
    }

    [Fact] // 0.165 kg/m at 53 m/s: 464 N; a slack span with less leaves its pulleys.
    public void ASlackSpanBelowTheCentrifugalTensionIsSaid()
    {
        Assert.Equal("", Slack(DriveBooks.Heron));
        Assert.Matches("below the centrifugal tension of 46[3-5] N: the belt loses contact", Slack(DriveBooks.Heron.Changed("loose", ("belt.spanFrequency", "160 Hz"))));

        static string Slack(BuildBook book) => Pull(book).Single(f => f.Name == "slack span").Words(imperial: false);
    }

    [Theory]
    [InlineData("belt.centres", "80 mm", "belt with an idler: centre distance: given 80 mm, two pulleys of the belt overlap")]
    [InlineData("belt.idlerAcross", "110 mm", "belt with an idler: idler across the line of centres: given 110 mm, the idler does not touch the slack span there")]
    public void WhatCannotBeIsSaid(string path, string text, string sentence)
    {
        var sheet = BeltSheet.Of(DriveBooks.Heron.Changed("other", (path, text)).Now(), DriveBooks.Desk);
        Assert.Equal([sentence], sheet.Refused);
        Assert.Empty(sheet.Pulleys);
        Assert.Empty(BeltSheet.Of(DriveBooks.Heron.Now(), DriveBooks.Desk).Refused);
    }

    private static IReadOnlyList<Fact> Pull(BuildBook book) => BeltSheet.Of(book.Now(), DriveBooks.Desk).Steps.Single(s => s.Title == "Greatest steady pull").Facts;

    [Fact]
    public void WhatIsNotKnownIsWanted()
    {
        var finding = DriveBooks.Of(DriveBooks.Heron with { Changes = [.. DriveBooks.Heron.Changes.Select(c => c with { Values = c.Values.Where(v => v.Key is not "belt.centres").ToDictionary(StringComparer.Ordinal) })] }, "belt-slack");
        Assert.Equal(Verdict.NotKnownYet, finding.Verdict);
        Assert.Contains("belt.centres", finding.Trace.Missing);
    }

    [Fact] // The spans and arcs of the drawing are those of the formula.
    public void TheDrawingIsTheCourse()
    {
        var sheet = BeltSheet.Of(DriveBooks.Heron.Now(), DriveBooks.Desk);
        var arcs = sheet.Pulleys.Select(p => Math.Abs(p.Radius) * p.Wrap).Sum();
        Assert.Equal(sheet.Steps[1].Facts[0].Value!.Value, sheet.Spans.Sum(s => s.Length) + arcs, 1e-9);
    }
}
