using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tests.Checks;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Head;

/// <summary>Springs as fitted: nested and progressive ones, spacers and sets off the bench. By hand throughout.</summary>
public class SpringSheetTests
{
    // A tested spring of 30 N/mm, 270 N at 38.5 mm: free at 47.5 mm.
    private static readonly BuildBook Single = Books.Of(
        ("engine.cylinders", "1"),
        ("engine.revLimit", "9000 rpm"),
        ("valve[inlet].count", "2"),
        ("valve[exhaust].count", "1"),
        ("valve[inlet].lift", "10 mm"),
        ("spring[inlet].loadTable", "270 N at 38.5 mm; 570 N at 28.5 mm"),
        ("spring[inlet].freeLength", "47.5 mm"),
        ("spring[inlet].solidHeight", "24 mm"),
        ("spring[inlet].installedHeight", "38 mm"),
        ("spring[inlet].wire", "3.7 mm"),
        ("spring[inlet].outsideDiameter", "27 mm"),
        ("spring[inlet].activeCoils", "5"),
        ("spring[inlet].tensileStrength", "1950 MPa"),
        ("spring[inlet].mass", "36 g"),
        ("spring[inlet].seatLoadMin", "250 N"),
        ("spring[inlet].openLoadMax", "700 N"));

    // 12 N/mm, 100 N at 33 mm; its seat stands 4 mm higher: at 38 − 4 = 34 mm it gives 88 N, at 24 mm 208 N; solid at 21 mm it has 3 mm left, the outer one 4 mm.
    private static readonly BuildBook Nested = Single.Set(
        ("innerSpring[inlet].loadTable", "100 N at 33 mm; 220 N at 23 mm"),
        ("innerSpring[inlet].solidHeight", "21 mm"),
        ("innerSpring[inlet].seatStep", "4 mm"),
        ("innerSpring[inlet].wire", "2.5 mm"),
        ("innerSpring[inlet].outsideDiameter", "18 mm"),
        ("innerSpring[inlet].activeCoils", "6"),
        ("innerSpring[inlet].tensileStrength", "1000 MPa"),
        ("innerSpring[inlet].mass", "12 g"));

    [Fact]
    public void Nested_springs_add_their_loads_and_the_first_to_bind_counts()
    {
        Appraisal.Of(Single, "seat-load", "inlet").Is(285, 285.0 / 250, Verdict.Holds);
        Appraisal.Of(Nested, "seat-load", "inlet").Is(285 + 88, (285.0 + 88) / 250, Verdict.Holds);
        Appraisal.Of(Nested, "open-load", "inlet").Is(585 + 208, 700.0 / 793, Verdict.FallsShort);
        Appraisal.Of(Nested, "coil-bind", "inlet").Is(3e-3, 2, Verdict.Holds);
    }

    [Fact]
    public void The_coil_that_is_worst_off_is_judged_and_named()
    {
        // Wahl at C = 15.5 / 2.5 = 6.2: (4 C − 1) / (4 C − 4) + 0.615 / C; 8 F D / (π d³) at 208 N.
        var stress = ((23.8 / 20.8) + (0.615 / 6.2)) * 8 * 208 * 15.5e-3 / (Math.PI * Math.Pow(2.5e-3, 3));
        var finding = Appraisal.Of(Nested, "spring-stress", "inlet");
        finding.Is(stress, 560e6 / stress, Verdict.FallsShort);
        Assert.Equal("the inner spring", finding.Judgement!.Remark);
        Assert.Equal("", Appraisal.Of(Single, "spring-stress", "inlet").Judgement!.Remark);
        Assert.Contains("innerSpring[inlet].solidHeight", Appraisal.Of(Nested.Without("innerSpring[inlet].solidHeight"), "coil-bind", "inlet").Missing);
    }

    // Both springs move with the valve: m = 30 + 20 + (36 + 12) / 3 g.
    [Fact]
    public void Float_counts_both_springs()
    {
        var book = Nested.Set(("valve[inlet].mass", "30 g"), ("valve[inlet].movingMass", "20 g"), ("valve[inlet].liftTable", string.Join("; ", Enumerable.Range(-8, 17).Select(i => FormattableString.Invariant($"{450 + (5 * i)}° at {10 - (9 * Math.Pow(2.5 * i * Math.PI / 180, 2)):F9} mm")))));
        Assert.Equal(2 * Math.Sqrt(793 / (66e-3 * 18e-3)), Appraisal.Of(book, "valve-float", "inlet").Judgement!.Value, 1e-3);
    }

    // Readings of a spring that stiffens; at 38 and 28 mm they were read themselves.
    [Fact]
    public void A_progressive_spring_is_followed_and_not_past_its_readings()
    {
        var book = Single.Set(("spring[inlet].loadTable", "260 N at 39 mm; 285 N at 38 mm; 420 N at 33 mm; 640 N at 28 mm"));
        Appraisal.Of(book, "seat-load", "inlet").Is(285, 285.0 / 250, Verdict.Holds);
        Appraisal.Of(book, "open-load", "inlet").Is(640, 700.0 / 640, Verdict.Holds);
        Assert.DoesNotContain("inlet", CheckCatalogue.Find("spring-rate").Instances(new(book.Now())));
        Assert.Contains("inlet", CheckCatalogue.Find("spring-rate").Instances(new(Single.Now())));
        var far = Appraisal.Of(book.Set(("valve[inlet].lift", "12 mm")), "open-load", "inlet");
        Assert.Equal(Verdict.NotKnownYet, far.Verdict);
        Assert.Contains("tested between 28 and 39 mm", Assert.Single(far.Missing), StringComparison.Ordinal);
    }

    // EN's factor at C = 6.297: k = (C + 0.5) / (C − 0.75); 700 MPa from nothing closes at 0.56 × 1950 MPa.
    [Fact]
    public void Stress_range_relaxation_and_surge()
    {
        const double C = 23.3 / 3.7;
        var perNewton = 8 * 23.3e-3 / (Math.PI * Math.Pow(3.7e-3, 3));
        var lower = (C + 0.5) / (C - 0.75) * perNewton * 285;
        var (range, allowed) = ((C + 0.5) / (C - 0.75) * perNewton * 300, 700e6 * (1 - (lower / (0.56 * 1950e6))));
        Appraisal.Of(Single.Set(("spring[inlet].stressRange", "700 MPa")), "spring-range", "inlet").Is(range, allowed / range, Verdict.Holds);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(Single.Set(("spring[inlet].stressRange", "450 MPa")), "spring-range", "inlet").Verdict);
        Assert.Empty(CheckCatalogue.Find("spring-range").Instances(new(Single.Now())));

        var wahl = (((4 * C) - 1) / ((4 * C) - 4)) + (0.615 / C);
        Appraisal.Of(Single, "spring-relaxation", "inlet").Is(wahl * perNewton * 585, 975e6 / (wahl * perNewton * 585), Verdict.Holds);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(Single.Limited("spring-relaxation.share", "40 %"), "spring-relaxation", "inlet").Verdict);

        // f = ½ √(R / m), m = π² d² D n ρ / 4; the cam turns at 75 Hz.
        var order = 0.5 * Math.Sqrt(30e3 / (Math.PI * Math.PI / 4 * 3.7e-3 * 3.7e-3 * 23.3e-3 * 5 * 7850)) / 75;
        Appraisal.Of(Single, "spring-surge", "inlet").Is(order, order / 6, Verdict.Holds);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(Single.Set(("engine.revLimit", "11000 rpm")), "spring-surge", "inlet").Verdict);
    }

    [Fact]
    public void Room_to_the_seal_and_readings_that_agree()
    {
        Appraisal.Of(Single.Set(("spring.retainerToSeal", "11.5 mm")), "retainer-seal", "inlet").Is(1.5e-3, 1.5, Verdict.Holds);
        Appraisal.Of(Single.Set(("spring.retainerToSeal", "10.8 mm")), "retainer-seal", "inlet").Is(0.8e-3, 0.8, Verdict.FallsShort);
        Appraisal.Of(Single.Set(("spring[inlet].coilBindMeasured", "3.8 mm")), "coil-bind-agreement", "inlet").Is(0.2e-3, 2, Verdict.Holds);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(Single.Set(("spring[inlet].coilBindMeasured", "4.5 mm")), "coil-bind-agreement", "inlet").Verdict);
    }

    // 38 and 37.4 mm: 285 and 303 N, 18 N apart over a mean of 294 N.
    [Fact]
    public void Spread_of_a_side()
    {
        var book = Single.Set(("spring[inlet.1.2].installedHeight", "37.4 mm"));
        Appraisal.Of(book, "spring-spread", "inlet").Is(18.0 / 294, 0.05 / (18.0 / 294), Verdict.FallsShort);
        Assert.Equal(["inlet"], CheckCatalogue.Find("spring-spread").Instances(new(book.Now())));
        Assert.Empty(CheckCatalogue.Find("spring-spread").Instances(new(Single.Now())));
    }

    // 285 N without; every 0.5 mm adds 15 N. Two valves, and the 1 mm spacer is there once: one valve gets two of 0.5 mm.
    [Fact]
    public void Spacers_bring_the_seat_load_and_are_given_out_once()
    {
        var book = Single.Set(("spring[inlet.1.1].seatLoadWanted", "315 N"), ("spring[inlet.1.2].seatLoadWanted", "315 N"), ("spring[inlet.1.1].installedHeight", "38 mm"), ("stock.spacers", "0.5 mm at 2; 1 mm at 1"));
        var spacers = SpringSheet.Of(book.Now()).Spacers;
        Assert.Equal(["inlet.1.1", "inlet.1.2"], spacers.Select(s => s.Valve));
        Assert.All(spacers, s => Assert.Equal(1e-3, s.Chosen!.Thickness, 1e-12));
        Assert.All(spacers, s => Assert.Equal(315, s.Chosen!.State.SeatLoad!.Value, 1e-9));
        Assert.Equal([1, 2], spacers.Select(s => s.Chosen!.Stack.Count).Order());
        Assert.Equal(6, spacers[0].Options.Count);
    }

    // 4 mm are left before coil bind, so 2.5 mm and no more may go in with 1.5 mm kept; the cam bears 600 N, which 0.5 mm reaches.
    [Fact]
    public void A_spacer_that_takes_too_much_is_refused_by_name()
    {
        var book = Single.Set(("spring[inlet].seatLoadWanted", "400 N"), ("stock.spacers", "2 mm; 3 mm"));
        var row = Assert.Single(SpringSheet.Of(book.Now()).Spacers);
        Assert.Equal(2e-3, row.Chosen!.Thickness, 1e-12);
        Assert.Equal("leaves 1 mm before coil bind, wanted 1.5 mm", row.Options.Single(o => o.Stack is [0.003]).Refused);
        var careful = Assert.Single(SpringSheet.Of(book.Set(("spring[inlet].openLoadMax", "600 N")).Now()).Spacers);
        Assert.Equal("645 N at full lift, allowed 600 N", careful.Options.Single(o => o.Stack is [0.002]).Refused);
        Assert.Empty(careful.Chosen!.Stack);
        Assert.Null(Assert.Single(SpringSheet.Of(book.Set(("spring[inlet].openLoadMax", "500 N")).Now()).Spacers).Chosen);
    }

    [Fact]
    public void Too_few_springs_serve_the_side_that_they_can()
    {
        var book = Single.Set(("stock.springs", "1 at 270 N; 2 at 275 N"), ("stock.springTestHeight", "38.5 mm"), ("spring[inlet.1.2].installedHeight", "38.5 mm"));
        var sorting = SpringSheet.Of(book.Now()).Sorting!;
        Assert.Contains("both sides need 3: sorted for the inlet side alone", sorting.Sentence, StringComparison.Ordinal);
        Assert.Equal([("inlet.1.1", 1, 285.0), ("inlet.1.2", 2, 275.0)], sorting.Places.Select(p => (p.Valve, p.Spring.Number, Math.Round(p.SeatLoad!.Value, 6))));
        Assert.Contains("given the number 1 twice", Assert.Throws<BadInputException>(() => SpringSheet.Of(book.Set(("stock.springs", "1 at 270 N; 1 at 275 N")).Now())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_diagram_marks_shut_open_and_bind_with_and_without_the_spacer()
    {
        var diagram = SpringDiagram.Of(Single.Set(("spring[inlet].spacer", "1 mm")).Now(), "inlet");
        Assert.Equal(
            [("valve shut on the spacer", 37.0, 315.0), ("full lift on the spacer", 27.0, 615.0), ("valve shut, no spacer", 38.0, 285.0), ("full lift, no spacer", 28.0, 585.0), ("coil bind", 24.0, 705.0)],
            diagram.Marks.Select(m => (m.Name, Math.Round(m.Height * 1e3, 6), Math.Round(m.Load, 6))));
        Assert.Equal(2, diagram.Tested.Count);
        Assert.Equal(24e-3, diagram.Line[^1].Height, 1e-12);
        Assert.Empty(SpringDiagram.Of(Books.Of(("spring[inlet].installedHeight", "38 mm")).Now(), "inlet").Line);
    }
}
