using Gudgeon.Book.Bottom;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Tests.Checks;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Tests.Bottom;

/// <summary>Clearances, roundness, crush and shells of a small book, each against a value worked by hand.</summary>
public class BearingSheetTests
{
    private static readonly BuildBook Main = Books.Of(
        ("bearing[main.1].housing", "49.012 mm"),
        ("bearing[main.1].shellThickness", "1.99 mm"),
        ("bearing[main.1].clearanceMin", "0.03 mm"),
        ("bearing[main.1].clearanceMax", "0.06 mm"));

    // Mean of the six 44.9845; out of round 4 µm at the first station; taper 3 µm.
    private static readonly (string, string) Readings = ("bearing[main.1].journalTable", "2 mm at 44.983 mm at 44.987 mm; 10 mm at 44.984 mm at 44.986 mm; 18 mm at 44.983 mm at 44.984 mm");

    [Fact]
    public void The_mean_of_the_stations_is_the_journal_unless_it_is_known_by_itself()
    {
        var mean = ((44.983 * 2) + 44.987 + (44.984 * 2) + 44.986) / 6;
        var book = Main.Set(Readings);
        Appraisal.Of(book, "bearing-clearance", "main.1").Is((49.012 - (2 * 1.99) - mean) * 1e-3, 0.06 / (49.012 - 3.98 - mean), Verdict.Holds);
        Assert.Contains("0.045 mm to 0.049 mm over its stations", Appraisal.Of(book, "bearing-clearance", "main.1").Judgement!.Remark, StringComparison.Ordinal);
        Assert.Equal((49.012 - 3.98 - 44.98) * 1e-3, Appraisal.Of(book.Set(("bearing[main.1].journal", "44.98 mm")), "bearing-clearance", "main.1").Judgement!.Value, 1e-9);
    }

    [Fact]
    public void Out_of_round_and_taper()
    {
        var book = Main.Set(Readings);
        Appraisal.Of(book, "bearing-out-of-round", "main.1").Is(4e-6, 5.0 / 4, Verdict.Holds);
        Appraisal.Of(book, "bearing-taper", "main.1").Is(3e-6, 5.0 / 3, Verdict.Holds);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(book.Limited("bearing-out-of-round.max", "0.003 mm"), "bearing-out-of-round", "main.1").Verdict);
        Assert.Empty(CheckCatalogue.Find("bearing-taper").Instances(new View(Main.Now())));
    }

    // 49.012 (1 + 21e-6 × 75) − 3.98 (1 + 12e-6 × 85) − 44.985 (1 + 12e-6 × 95) mm.
    [Fact]
    public void A_light_alloy_case_opens_the_clearance()
    {
        var hot = ((49.012 * (1 + (21e-6 * 75))) - (3.98 * (1 + (12e-6 * 85))) - (44.985 * (1 + (12e-6 * 95)))) * 1e-3;
        var book = Main.Set(("bearing[main.1].journal", "44.985 mm"), ("oil.temperature", "95 °C"));
        Appraisal.Of(book, "bearing-clearance-hot", "main.1").Is(hot, 0.002 * 44.985e-3 / hot, Verdict.Holds);
        Assert.True(hot > 0.06e-3);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(book.Set(("bearing[main.1].housingTemperature", "160 °C"), ("bearing[main.1].journalTemperature", "95 °C")), "bearing-clearance-hot", "main.1").Verdict);
    }

    // Rings of Lamé by hand: a steel shell of 45.032 mm bore in light alloy of 74 mm outside.
    [Fact]
    public void Crush_presses_the_shell_and_stretches_the_housing()
    {
        var book = Main.Set(("bearing[main.1].journal", "44.985 mm"), ("bearing[main.1].excess", "0.14 mm"), ("bearing[main.1].housingOuter", "74 mm"), ("bearing[main.1].housingStressLimit", "90 MPa"));
        double d = 49.012e-3, o = 74e-3, i = 45.032e-3;
        var hub = ((o * o) + (d * d)) / ((o * o) - (d * d));
        var shell = ((d * d) + (i * i)) / ((d * d) - (i * i));
        var pressure = 0.14e-3 / Math.PI / (d * (((hub + 0.3) / 72e9) + ((shell - 0.3) / 206e9)));
        Appraisal.Of(book, "shell-crush", "main.1").Is(pressure, pressure / 5e6, Verdict.Holds);
        Appraisal.Of(book, "bearing-housing-stress", "main.1").Is(pressure * hub, 90e6 / (pressure * hub), Verdict.Holds);

        // Warm, the case has grown away from the shells: π × 49.012 × (21e-6 × 120 − 12e-6 × 130) mm are gone.
        var warm = book.Set(("oil.temperature", "140 °C"));
        var left = 0.14e-3 - (Math.PI * d * ((21e-6 * 120) - (12e-6 * 130)));
        Assert.Equal(pressure * Math.Max(0, left) / 0.14e-3, Appraisal.Of(warm, "shell-crush", "main.1").Judgement!.Value, 1);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(warm, "shell-crush", "main.1").Verdict);
    }

    [Fact]
    public void Shells_are_planned_and_what_cannot_be_is_said()
    {
        var grades = ("stock.mainShells", "1 at 1.983 mm at 1.987 mm at 2; 2 at 1.987 mm at 1.991 mm at 1; 3 at 1.991 mm at 1.995 mm at 0");
        var book = Main.Set(("bearing[main.1].journal", "44.985 mm"), grades);
        var row = Assert.Single(ShellsSheet.Of(book.Now()).Rows);

        // Room for 4.027 mm: 2 and 3 would give the 0.045 mm wanted, but 3 is to be bought; 1 and 2 are at hand and give 0.053 mm.
        Assert.Equal((1.0, 2.0), (row.Upper!.Value, row.Lower!.Value));
        Assert.Equal(0.053e-3, row.Clearance!.Value, 1e-9);
        Assert.Empty(ShellsSheet.Of(book.Now()).Bought);

        var tight = ShellsSheet.Of(book.Set(("bearing[main.1].journal", "45.1 mm")).Now());
        Assert.Contains("grind the journal", Assert.Single(tight.Troubles), StringComparison.Ordinal);
        Assert.Equal(1, tight.Open);
        Assert.Contains("replace the part", Assert.Single(ShellsSheet.Of(book.Set(("bearing[main.1].journal", "44.9 mm")).Now()).Troubles), StringComparison.Ordinal);
        Assert.Contains("bearing[main.1].journal", Assert.Single(ShellsSheet.Of(Main.Set(grades).Now()).Troubles), StringComparison.Ordinal);
        Assert.Contains("stock.mainShells", Assert.Single(ShellsSheet.Of(Main.Set(("bearing[main.1].journal", "44.985 mm")).Now()).Troubles), StringComparison.Ordinal);
    }

    [Fact]
    public void Grades_that_make_no_sense_are_refused()
    {
        var twice = Assert.Throws<BadInputException>(() => ShellsSheet.Of(Main.Set(("stock.mainShells", "1 at 1.983 mm at 1.987 mm; 1 at 1.987 mm at 1.991 mm")).Now()));
        Assert.Contains("given twice", twice.Message, StringComparison.Ordinal);
        Assert.Throws<BadInputException>(() => ShellsSheet.Of(Main.Set(("stock.mainShells", "1 at 1.99 mm at 1.987 mm")).Now()));
    }

    // The crank turns from y to x of its loads; the course of an orbit wants it the other way round.
    [Fact]
    public void The_course_of_a_journal_turns_as_its_crank_does()
    {
        var line = new CrankLine
        {
            Radius = 0.03,
            Throws = [new CrankThrow { Pin = 0, Bore = 0.08, Rod = 0.12, Piston = 0.4, SmallEnd = 0.1, BigEnd = 0.3 }],
            Mains = [-0.03, 0.03],
            BobWeight = 0.5,
        };
        double[] angles = [.. Enumerable.Range(0, 720).Select(i => i * Math.PI / 180)];
        var loads = CrankLoads.Of(line, 100, angles, [new double[720]]);

        // The pin's own centrifugal load turns with the crank: in the course it must turn from x to y.
        var turning = CrankLoads.Of(line with { Throws = [line.Throws[0] with { Piston = 1e-9, SmallEnd = 1e-9 }] }, 100, angles, [new double[720]]);
        var course = BearingFilm.Course(turning, [], "bigEnd.1")!;
        Assert.True((course.X[10] * course.Y[20]) - (course.Y[10] * course.X[20]) > 0);

        // The pin's own centrifugal load, not there in the pin: the rod's big end flies outwards, so that the journal lies inwards of it.
        Assert.True(course.X[0] < 0 && Math.Abs(course.Y[0]) < 1e-6 * -course.X[0]);

        // A rod swings about its gudgeon pin: at top dead centre it turns against the crank, at bottom with it.
        var rod = BearingFilm.Course(loads, [], "bigEnd.1")!;
        Assert.Equal((1 - 0.25) / 2, rod.Entrainment[0], 1e-9);
        Assert.Equal((1 + 0.25) / 2, rod.Entrainment[180], 1e-9);
        Assert.Equal(0.5, BearingFilm.Course(loads, ["main.1", "main.2"], "main.2")!.Entrainment[7]);
        Assert.Null(BearingFilm.Course(loads, [], "bigEnd.2"));
        Assert.Null(BearingFilm.Course(loads, ["main.1"], "main.7"));
    }
}
