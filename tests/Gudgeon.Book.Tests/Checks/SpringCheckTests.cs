using CsCheck;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>Checks of the valve springs, each against a value worked by hand.</summary>
public class SpringCheckTests
{
    // R = G d⁴ / (8 D³ n) with D = 29 − 4 = 25 mm: 27.068 N/mm.
    private const double Rate = 79.3e9 * 256e-12 / (8 * 15625e-9 * 6);
    private const double Seat = Rate * 11e-3;
    private const double Open = Rate * 21e-3;

    private static readonly BuildBook Valve = Books.Of(
        ("engine.revLimit", "8000 rpm"),
        ("valve[inlet].lift", "10 mm"),
        ("valve[inlet].opens", "52°"),
        ("valve[inlet].closes", "68°"),
        ("valve[inlet].mass", "44 g"),
        ("valve[inlet].movingMass", "24 g"),
        ("spring[inlet].wire", "4 mm"),
        ("spring[inlet].outsideDiameter", "29 mm"),
        ("spring[inlet].activeCoils", "6"),
        ("spring[inlet].freeLength", "50 mm"),
        ("spring[inlet].installedHeight", "39 mm"),
        ("spring[inlet].solidHeight", "24.6 mm"),
        ("spring[inlet].tensileStrength", "1900 MPa"),
        ("spring[inlet].mass", "48 g"),
        ("spring[inlet].seatLoadMin", "250 N"),
        ("spring[inlet].openLoadMax", "600 N"));

    // F1 = R (50 − 39), F2 = F1 + R · 10.
    [Fact]
    public void Seat_and_open_load()
    {
        Assert.Equal(27068, Rate, 1.0);
        Appraisal.Of(Valve, "seat-load", "inlet").Is(Seat, Seat / 250, Verdict.Holds);
        Appraisal.Of(Valve, "open-load", "inlet").Is(Open, 600 / Open, Verdict.Holds);
        Appraisal.Of(Valve.Set(("spring[inlet].seatLoadMin", "300 N")), "seat-load", "inlet").Is(Seat, Seat / 300, Verdict.FallsShort);
        Appraisal.Of(Valve.Set(("spring[inlet].openLoadMax", "500 N")), "open-load", "inlet").Is(Open, 500 / Open, Verdict.FallsShort);
    }

    // The tester wins over the wire: R = (604 − 286) / 10 = 31.8 N/mm, and 286 N at 39 mm is the seat load.
    [Fact]
    public void A_tested_spring_is_taken_as_tested()
    {
        var tested = Valve.Set(("spring[inlet].loadTable", "286 N at 39 mm; 604 N at 29 mm"));
        Appraisal.Of(tested, "seat-load", "inlet").Is(286, 286.0 / 250, Verdict.Holds);
        Appraisal.Of(tested.Set(("spring[inlet].openLoadMax", "604.1 N")), "open-load", "inlet").Is(604, 604.1 / 604, Verdict.Holds);
    }

    // 39 − 10 − 24.6 = 4.4 mm.
    [Fact]
    public void Coil_bind()
    {
        Appraisal.Of(Valve, "coil-bind", "inlet").Is(4.4e-3, 4.4 / 1.5, Verdict.Holds);
        Appraisal.Of(Valve.Limited("coil-bind.min", "5 mm"), "coil-bind", "inlet").Is(4.4e-3, 0.88, Verdict.FallsShort);
        Appraisal.Of(Valve.Set(("valve[inlet].lift", "15 mm")), "coil-bind", "inlet").Is(-0.6e-3, -0.4, Verdict.FallsShort);
    }

    // Common practice, no source: a 2 mm spacer raises the load by R · 2 mm at every lift and takes 2 mm off the margin.
    [Fact]
    public void A_spacer_adds_load_at_every_lift_and_takes_coil_bind_margin()
    {
        Gen.Select(Gen.Int[30, 99], Gen.OneOf("inlet", "inlet.1.2")).Sample((tenths, index) =>
        {
            var bare = Valve.Set(("valve[inlet].lift", $"{tenths / 10.0} mm"));
            var spaced = bare.Set(("spring[inlet].spacer", "2 mm"));
            double Gain(string check) => Appraisal.Of(spaced, check, index).Judgement!.Value - Appraisal.Of(bare, check, index).Judgement!.Value;
            Assert.Equal(Rate * 2e-3, Gain("seat-load"), 1e-9);
            Assert.Equal(Rate * 2e-3, Gain("open-load"), 1e-9);
            Assert.Equal(-2e-3, Gain("coil-bind"), 1e-12);
        });
    }

    // C = 25 / 4 = 6.25; K = (4 C − 1) / (4 C − 4) + 0.615 / C = 24 / 21 + 0.0984; τ = K 8 F D / (π d³).
    [Fact]
    public void Stress_at_full_lift()
    {
        var stress = Stress(Open);
        Appraisal.Of(Valve, "spring-stress", "inlet").Is(stress, 0.56 * 1900e6 / stress, Verdict.Holds);
        Appraisal.Of(Valve.Set(("spring[inlet].tensileStrength", "1200 MPa")), "spring-stress", "inlet").Is(stress, 0.56 * 1200e6 / stress, Verdict.FallsShort);
    }

    // Goodman: n = 1 / (τa / Sse + τm / Ssu), Sse = Ssa / (1 − Ssm / Ssu), Ssu = 0.67 Rm, Ssa and Ssm 57.5 and 77.5 kpsi.
    [Fact]
    public void Fatigue()
    {
        const double Kpsi = 6.894757293168e6;
        var (amplitude, mean) = ((Stress(Open) - Stress(Seat)) / 2, (Stress(Open) + Stress(Seat)) / 2);
        var ultimate = 0.67 * 1900e6;
        var endurance = 57.5 * Kpsi / (1 - (77.5 * Kpsi / ultimate));
        var safety = 1 / ((amplitude / endurance) + (mean / ultimate));
        Appraisal.Of(Valve, "spring-fatigue", "inlet").Is(safety, safety / 1.1, Verdict.Holds);
        Appraisal.Of(Valve.Limited("spring-fatigue.min", "2.5"), "spring-fatigue", "inlet").Is(safety, safety / 2.5, Verdict.FallsShort);
    }

    // m = 44 + 24 + 48 / 3 = 84 g; cam duration (180 + 52 + 68) / 2 = 150°; s = h (1 − 4 z²)³ searched over the lobe.
    [Fact]
    public void Float_speed()
    {
        var least = double.PositiveInfinity;
        for (var z = 0.0; z < Math.Sqrt(0.05); z += 1e-5)
        {
            var q = 1 - (4 * z * z);
            var curvature = (-24 * q * q) + (384 * z * z * q);
            least = Math.Min(least, curvature < 0 ? (Seat + (Rate * 10e-3 * q * q * q)) / (-84e-3 * 10e-3 * curvature) : double.PositiveInfinity);
        }

        var crank = 2 * (150 * Math.PI / 180) * Math.Sqrt(least);
        var finding = Appraisal.Of(Valve, "valve-float", "inlet");
        Assert.Equal(crank, finding.Judgement!.Value, crank * 1e-6);
        Assert.Equal(crank / (1.1 * 8000 * Math.PI / 30), finding.Reserve, 1e-5);
        Assert.Equal(Verdict.FallsShort, finding.Verdict);
        Assert.Equal(Verdict.Holds, Appraisal.Of(Valve.Limited("valve-float.factor", "1"), "valve-float", "inlet").Verdict);
    }

    // A measured curve is taken at its nose: s = 10 − 9 a² mm over the cam angle a in rad, so s'' = 18 mm/rad² and ω = 2 √(F2 / (m s'')).
    [Fact]
    public void Float_speed_of_a_measured_curve()
    {
        double Lift(int crank) => 10 - (9 * Math.Pow(crank / 2.0 * Math.PI / 180, 2));
        var rows = string.Join("; ", Enumerable.Range(-8, 17).Select(i => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{450 + (5 * i)}° at {Lift(5 * i):F9} mm")));
        var finding = Appraisal.Of(Valve.Set(("valve[inlet].liftTable", rows)), "valve-float", "inlet");
        Assert.Equal(2 * Math.Sqrt(Open / (84e-3 * 18e-3)), finding.Judgement!.Value, 1e-3);
    }

    [Fact]
    public void Each_valve_is_told_apart_when_the_book_does()
    {
        var twin = Valve.Set(("engine.cylinders", "2"), ("valve[inlet].count", "2"), ("spring[inlet.2.1].installedHeight", "38.5 mm"));
        Assert.Equal(["inlet.1.1", "inlet.1.2", "inlet.2.1", "inlet.2.2", "exhaust"], CheckCatalogue.Find("seat-load").Instances(new(twin.Now())));
        Assert.Equal(["inlet", "exhaust"], CheckCatalogue.Find("seat-load").Instances(new(Valve.Now())));
        Appraisal.Of(twin, "seat-load", "inlet.2.1").Is(Rate * 11.5e-3, Rate * 11.5e-3 / 250, Verdict.Holds);
    }

    private static double Stress(double load) => ((24.0 / 21) + (0.615 / 6.25)) * 8 * load * 25e-3 / (Math.PI * 64e-9);
}
