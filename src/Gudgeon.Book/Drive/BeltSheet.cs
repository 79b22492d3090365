using Gudgeon.Book.Build;
using Gudgeon.Book.Checks.Drive;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Belts;
using Gudgeon.Calc.Boost;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Drive;

/// <summary>The belt at one engine speed. SI.</summary>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Rotor">Impeller or rotor speed.</param>
/// <param name="Power">Power taken from the crank, W.</param>
/// <param name="Torque">Torque at the crank, N·m.</param>
/// <param name="Pull">Pull of the belt, N.</param>
/// <param name="Carries">Pull that the belt carries at this speed, N; null when it is not known.</param>
/// <param name="HubLoad">Load on the crank pulley, N; null when it is not known.</param>
public sealed record BeltRow(double Speed, double Rotor, double Power, double Torque, double Pull, double? Carries, double? HubLoad);

/// <summary>A pulley to draw. SI.</summary>
/// <param name="X">Axis.</param>
/// <param name="Y">Axis.</param>
/// <param name="Radius">Of the pitch line; negative where the back of the belt runs on it.</param>
/// <param name="Wrap">Angle over which the belt lies on it, rad.</param>
public sealed record DrawnPulley(double X, double Y, double Radius, double Wrap);

/// <summary>A free span to draw. SI.</summary>
/// <param name="FromX">Where the belt leaves.</param>
/// <param name="FromY">Where the belt leaves.</param>
/// <param name="ToX">Where it arrives.</param>
/// <param name="ToY">Where it arrives.</param>
/// <param name="Length">Its length.</param>
public sealed record DrawnSpan(double FromX, double FromY, double ToX, double ToY, double Length);

/// <summary>Ratio, course, tension and pull of the belt.</summary>
/// <param name="Steps">Its numbers.</param>
/// <param name="Pulleys">As the belt meets them, the slack span after the first; empty when they are not known.</param>
/// <param name="Spans">From each pulley to the next; empty when the pulleys are not known.</param>
/// <param name="Rows">Over the engine run.</param>
/// <param name="Missing">What is wanted.</param>
public sealed record BeltSheet(IReadOnlyList<DriveStep> Steps, IReadOnlyList<DrawnPulley> Pulleys, IReadOnlyList<DrawnSpan> Spans, IReadOnlyList<BeltRow> Rows, string Missing) : IDriveSheet
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Refused { get; init; } = [];

    /// <summary>What it leaves out.</summary>
    public const string Remark = "Fixed centres: the mean of both spans stays at the set-up tension; a sprung idler holds the slack span instead. Steady pulls of the engine run, without shocks, for which there is a sheet of its own. The crank pulley is the driver, and the slack span leaves it.";

    private const string Running = "A running belt takes fingers, hair and rags: guard on before the engine turns, nobody in the plane of the belt.";
    private const string Setting = "Set the tension with the engine off and the key out. Belts grow tighter hot on an aluminium case: look at the note again warm. The maker's tension goes first.";

    /// <summary>The sheet of the values that hold.</summary>
    public static BeltSheet Of(Snapshot now, DutyDesk? desk)
    {
        if (DriveWords.Without(now) is { Length: > 0 } none)
        {
            return new BeltSheet([], [], [], [], none);
        }

        var view = new View(now, desk);
        var belt = new DrivenBelt(view);
        var course = Sketch.Known(() => belt.Course().Length) is null ? null : (IdlerCourse?)belt.Course();
        var worst = belt.Worst();
        var pulleys = course is null ? [] : belt.Pulleys();
        List<BeltSpan> spans = [.. pulleys.Select((p, i) => BeltSpan.Between(p, pulleys[(i + 1) % pulleys.Count]))];
        return new BeltSheet(
            [.. Ratio(view, belt), .. Course(view, belt, course), .. Tension(view, belt, course), .. Pull(view, belt, worst), .. Jump(view, belt)],
            [.. pulleys.Select((p, i) => new DrawnPulley(p.X, p.Y, p.Radius, BeltSpan.Wrap(p, spans[(i + spans.Count - 1) % spans.Count], spans[i])))],
            [.. spans.Select(s => new DrawnSpan(s.FromX, s.FromY, s.ToX, s.ToY, s.Length))],
            [.. Over(view, belt)],
            DriveWords.Missing(view))
        {
            Refused = view.Trace.Refused,
        };
    }

    private static IEnumerable<DriveStep> Ratio(View view, DrivenBelt belt)
    {
        var (crank, blower, limit) = (Sketch.Known(belt.Crank), Sketch.Known(belt.Blower), view.Amount(Engine.RevLimit));
        var rotor = Sketch.Known(() => view.Work(RotorSpeed.FromRatio, limit, belt.Ratio(), view.AmountOr(Blower.StepUp, 1), view.AmountOr(Blower.BeltSlip, 0)));
        return DriveWords.Step(
            "Ratio",
            "",
            new Fact("pulley on the crank", crank, Dimension.Length, "mm"),
            new Fact("pulley on the blower", blower, Dimension.Length, "mm"),
            new Fact("ratio of the pulleys", Sketch.Known(belt.Ratio), Dimension.Number, "") { Digits = 5, Remark = $"the run is made with {Blower.DriveRatio.Print(view.AmountOr(Blower.DriveRatio, double.NaN))}" },
            new Fact("rotor speed at the rev limit", rotor, Dimension.RotationalSpeed, "rpm") { Digits = 5, RemarkIn = imperial => view.AmountIf(Blower.MaxSpeed) is { } most ? $"{Blower.MaxSpeed.Print(most, imperial)} allowed" : "" },
            new Fact("belt speed at the rev limit", crank is { } d ? BeltGeometry.Speed(d, limit) : null, Dimension.Speed, "m/s"));
    }

    private static IEnumerable<DriveStep> Course(View view, DrivenBelt belt, IdlerCourse? course) => DriveWords.Step(
        "Course",
        Running,
        new Fact("length that the course takes", course?.Length, Dimension.Length, "mm") { Digits = 5 },
        new Fact("belt longer than its course by", course is { } c && view.AmountIf(Belt.Length) is { } length ? Math.Round(length - c.Length, 7) : null, Dimension.Length, "mm") { Digits = 3, Remark = "negative: it does not go on; take it up at the idler or the centres" },
        new Fact("wrap on the crank pulley", course?.DriverWrap, Dimension.Angle, "°"),
        new Fact("wrap on the blower pulley", course?.DrivenWrap, Dimension.Angle, "°"),
        new Fact("wrap on the idler", belt.HasIdler ? course?.IdlerWrap : null, Dimension.Angle, "°"),
        new Fact("teeth in mesh where fewest", belt.Toothed ? Sketch.Known(belt.InMesh) : null, Dimension.Number, "") { Digits = 3 },
        new Fact("free tight span", course?.TightSpan, Dimension.Length, "mm"));

    private static IEnumerable<DriveStep> Tension(View view, DrivenBelt belt, IdlerCourse? course)
    {
        var setUp = Sketch.Known(belt.SetUp);
        var (mass, drawn) = (view.AmountIf(Belt.Mass), view.AmountIf(Belt.SetUpTension));
        double? Note(double? tension) => tension is { } t && mass is { } m && course is { } c ? BeltSetting.Frequency(t, m, c.TightSpan) : null;
        return DriveWords.Step(
            "Setting the tension by ear or telephone",
            Setting,
            new Fact("tension of a span at rest", setUp, Dimension.Force, "N") { Remark = view.Knows(Belt.SpanFrequency) ? "from the note that was measured" : "as drawn" },
            new Fact("note of the tight span as drawn", Note(drawn), Dimension.Frequency, "Hz") { Remark = "pluck it half-way, engine cold" },
            new Fact("note that was measured", view.AmountIf(Belt.SpanFrequency), Dimension.Frequency, "Hz"),
            new Fact("note of a span a tenth tighter", Note(1.1 * setUp), Dimension.Frequency, "Hz"),
            new Fact("load on the crank pulley at rest", Sketch.Known(() => belt.HubLoad(BeltPull.AtRest)), Dimension.Force, "N"));
    }

    private static IEnumerable<DriveStep> Pull(View view, DrivenBelt belt, BeltPull worst)
    {
        var (slack, turning) = (Sketch.Known(() => belt.SetUp() - (worst.Pull / 2)), belt.Centrifugal(worst.BeltSpeed));
        return DriveWords.Step(
            "Greatest steady pull",
            Running,
            [
                new Fact("at a crank speed of", worst.Speed, Dimension.RotationalSpeed, "rpm"),
                new Fact("torque at the crank", worst.Torque, Dimension.Torque, "N·m"),
                new Fact("pull of the belt", worst.Pull, Dimension.Force, "N"),
                new Fact(belt.Toothed ? "pull that its teeth carry" : "pull at which it slips", Sketch.Known(() => belt.Capacity(worst.BeltSpeed)), Dimension.Force, "N"),
                .. belt.Toothed ? [] : Slip(view, belt, worst),
                new Fact("slack span", slack, Dimension.Force, "N") { RemarkIn = imperial => slack < turning ? $"below the centrifugal tension of {Figures.Print(turning, Dimension.Force, "N", 3, imperial)}: the belt loses contact with its pulleys" : "" },
                new Fact("load on the crank pulley", Sketch.Known(() => belt.HubLoad(worst)), Dimension.Force, "N"),
            ]);
    }

    /// <summary>How the spans of a belt without teeth share its pull, and what each rib takes of it.</summary>
    private static IEnumerable<Fact> Slip(View view, DrivenBelt belt, BeltPull worst)
    {
        var pressing = Sketch.Known(() => belt.Pressing(worst.BeltSpeed));
        var (tight, slack) = (pressing + (worst.Pull / 2), pressing - (worst.Pull / 2));
        return
        [
            new Fact("tight over slack span where it slips", Sketch.Known(() => belt.AtSlip(worst.BeltSpeed).Ratio), Dimension.Number, "") { Digits = 3, Remark = belt.SlipWords },
            new Fact("tight over slack span now, as they press on the pulleys", slack > 0 ? tight / slack : null, Dimension.Number, "") { Digits = 3 },
            new Fact("pull of a rib", belt.Ribbed ? Sketch.Known(() => belt.PullOfARib(worst.Pull)) : null, Dimension.Force, "N") { RemarkIn = imperial => view.AmountIf(Belt.RibPull) is { } most ? $"{Belt.RibPull.Print(most, imperial)} allowed by its maker" : "belt.ribPull: what its maker allows is not known yet" },
        ];
    }

    /// <summary>How near a toothed belt comes to jumping; nothing for one without teeth.</summary>
    private static IEnumerable<DriveStep> Jump(View view, DrivenBelt belt)
    {
        if (!belt.Toothed)
        {
            return [];
        }

        var (hardest, cause) = new DriveHits(view).Hardest();
        var ratio = view.Limit("belt-jump.ratio", Dimension.Number, "", 8);
        var pressing = Sketch.Known(() => belt.Pressing(hardest.BeltSpeed));
        var (tight, slack) = (pressing + (hardest.Pull / 2), pressing - (hardest.Pull / 2));
        return DriveWords.Step(
            "Jumping a tooth",
            Running,
            new Fact("greatest pull, hits counted in", hardest.Pull, Dimension.Force, "N") { Remark = cause },
            new Fact("tight span then, as it presses on the pulleys", tight, Dimension.Force, "N"),
            new Fact("slack span then, as it presses on the pulleys", slack, Dimension.Force, "N") { Remark = slack < 0 ? "negative: it hangs, and only the teeth still in mesh hold the belt" : "" },
            new Fact("tight over slack", slack > 0 ? tight / slack : null, Dimension.Number, "") { Digits = 3, Remark = $"{Figures.Number(ratio, 3)} at the most: belt makers' custom, from memory" },
            new Fact("pull at which it may jump", Sketch.Known(() => belt.JumpPull(hardest.BeltSpeed, ratio)), Dimension.Force, "N"),
            new Fact("tension at rest that would hold it", Sketch.Known(() => belt.JumpTension(hardest, ratio)), Dimension.Force, "N") { Remark = "the nose and the maker's greatest tension must bear it too" });
    }

    private static IEnumerable<BeltRow> Over(View view, DrivenBelt belt)
    {
        foreach (var (speed, figures) in BlowerDuty.Points(view.Duty()))
        {
            var blower = figures.Blower!;
            var pull = belt.At(speed, blower.DrivePower);
            yield return new BeltRow(speed, blower.Speed, blower.DrivePower, pull.Torque, pull.Pull, Sketch.Known(() => belt.Capacity(pull.BeltSpeed)), Sketch.Known(() => belt.HubLoad(pull)));
        }
    }
}
