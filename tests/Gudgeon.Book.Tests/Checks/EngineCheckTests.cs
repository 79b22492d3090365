using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>Checks of chamber, moving parts, bearings and blower speed, each against a value worked by hand.</summary>
public class EngineCheckTests
{
    private static readonly double Speed = 8400 * Math.PI / 30;

    private static readonly BuildBook Twin = Books.Of(
        ("engine.cylinders", "2"),
        ("engine.revLimit", "8400 rpm"),
        ("crank.stroke", "71.5 mm"),
        ("rod.length", "128 mm"),
        ("rod.smallEndMass", "118 g"),
        ("rod.shankArea", "168 mm²"),
        ("piston.mass", "372 g"),
        ("piston.topRingGap", "0.38 mm"),
        ("piston.secondRingGap", "0.48 mm"),
        ("piston.ringService", "street"),
        ("piston.diameter", "89.455 mm"),
        ("piston.clearanceMin", "0.03 mm"),
        ("piston.clearanceMax", "0.06 mm"),
        ("cylinder.bore", "89.5 mm"),
        ("cylinder.chamberVolume", "37.2 cm³"),
        ("cylinder.domeVolume", "0 cm³"),
        ("cylinder.deckHeight", "0.35 mm"),
        ("cylinder.gasketThickness", "0.7 mm"),
        ("cylinder.gasketBore", "91 mm"),
        ("cylinder.ratioMin", "10.9"),
        ("cylinder.ratioMax", "11.5"));

    private static double Circle(double d) => Math.PI / 4 * d * d;

    // Vs = π/4 · 89.5² · 71.5; Vc = 37.2 cm³ + π/4 · 91² · 0.7 + π/4 · 89.5² · 0.35; ratio = 1 + Vs / Vc.
    [Fact]
    public void Compression_ratio()
    {
        var clearance = 37.2e-6 + (Circle(91e-3) * 0.7e-3) + (Circle(89.5e-3) * 0.35e-3);
        var ratio = 1 + (Circle(89.5e-3) * 71.5e-3 / clearance);
        Assert.InRange(ratio, 11.2, 11.3);
        Appraisal.Of(Twin, "compression-ratio", "1").Is(ratio, Math.Min(ratio / 10.9, 11.5 / ratio), Verdict.Holds);
        Appraisal.Of(Twin.Set(("cylinder.ratioMax", "11")), "compression-ratio", "1").Is(ratio, 11 / ratio, Verdict.FallsShort);
        Appraisal.Of(Twin.Set(("cylinder[1].ratioMin", "11.4")), "compression-ratio", "1").Is(ratio, ratio / 11.4, Verdict.FallsShort);
    }

    [Fact]
    public void Compression_spread()
    {
        var rest = (Circle(91e-3) * 0.7e-3) + (Circle(89.5e-3) * 0.35e-3);
        var swept = Circle(89.5e-3) * 71.5e-3;
        var spread = (swept / (36.3e-6 + rest)) - (swept / (37.2e-6 + rest));
        Assert.InRange(spread, 0.2, 0.25);
        var book = Twin.Set(("cylinder[2].chamberVolume", "36.3 cm³"));
        Appraisal.Of(book, "compression-spread").Is(spread, 0.2 / spread, Verdict.FallsShort);
        Appraisal.Of(book.Limited("compression-spread.max", "0.3"), "compression-spread").Is(spread, 0.3 / spread, Verdict.Holds);
        Assert.Empty(CheckCatalogue.Find("compression-spread").Instances(new(Twin.Set(("engine.cylinders", "1")).Now())));
    }

    // 0.7 + 0.35 = 1.05 mm.
    [Fact]
    public void Squish()
    {
        Appraisal.Of(Twin, "squish", "2").Is(1.05e-3, 1.05, Verdict.Holds);
        Appraisal.Of(Twin.Limited("squish.min", "1.4 mm"), "squish", "2").Is(1.05e-3, 0.75, Verdict.FallsShort);
        Appraisal.Of(Twin.Set(("cylinder[2].deckHeight", "-0.1 mm")), "squish", "2").Is(0.6e-3, 0.6, Verdict.FallsShort);
    }

    // F = (0.372 + 0.118) · 0.03575 ω² (1 + 35.75 / 128); x = F · 0.128 / (205 GPa · 168 mm²).
    [Fact]
    public void Running_squish()
    {
        var pull = 0.490 * 0.03575 * Speed * Speed * (1 + (35.75 / 128));
        var left = 1.05e-3 - (pull * 0.128 / (205e9 * 168e-6));
        Assert.InRange(left, 0.97e-3, 1.0e-3);
        Appraisal.Of(Twin, "squish-running", "1").Is(left, left / 0.5e-3, Verdict.Holds);
        Appraisal.Of(Twin.Limited("squish-running.min", "1 mm"), "squish-running", "1").Is(left, left / 1e-3, Verdict.FallsShort);
        var soft = 1.05e-3 - (pull * 0.128 / (72e9 * 168e-6));
        Appraisal.Of(Twin.Set(("rod.modulus", "72 GPa")), "squish-running", "1").Is(soft, soft / 0.5e-3, Verdict.Holds);
    }

    // Street: 0.0040 · 89.5 = 0.358 mm and 0.0050 · 89.5 = 0.4475 mm; blower racing: 0.0070 · 89.5 = 0.6265 mm.
    [Fact]
    public void Ring_gaps()
    {
        Appraisal.Of(Twin, "ring-gap-top", "1").Is(0.38e-3, 0.38 / 0.358, Verdict.Holds);
        Appraisal.Of(Twin, "ring-gap-second", "1").Is(0.48e-3, 0.48 / 0.4475, Verdict.Holds);
        Appraisal.Of(Twin.Set(("piston.ringService", "blower racing")), "ring-gap-top", "1").Is(0.38e-3, 0.38 / 0.6265, Verdict.FallsShort);
        Appraisal.Of(Twin.Limited("ring-gap-top.min", "0.4 mm"), "ring-gap-top", "1").Is(0.38e-3, 0.95, Verdict.FallsShort);
        Appraisal.Of(Twin.Limited("ring-gap-second.min", "0.5 mm"), "ring-gap-second", "1").Is(0.48e-3, 0.96, Verdict.FallsShort);
    }

    // 2 · 0.0715 m · 140 /s = 20.02 m/s.
    [Fact]
    public void Piston_speed()
    {
        Appraisal.Of(Twin, "piston-speed").Is(20.02, 25 / 20.02, Verdict.Holds);
        Appraisal.Of(Twin.Set(("engine.pistonSpeedLimit", "20 m/s")), "piston-speed").Is(20.02, 20 / 20.02, Verdict.FallsShort);
    }

    // a = r ω² (1 + r / l) at TDC.
    [Fact]
    public void Piston_acceleration()
    {
        var peak = 0.03575 * Speed * Speed * (1 + (35.75 / 128));
        Assert.Equal(["engine.pistonAccelerationLimit"], Appraisal.Of(Twin, "piston-acceleration").Missing);
        Appraisal.Of(Twin.Set(("engine.pistonAccelerationLimit", "43000 m/s²")), "piston-acceleration").Is(peak, 43000 / peak, Verdict.Holds);
        Appraisal.Of(Twin.Set(("engine.pistonAccelerationLimit", "30000 m/s²")), "piston-acceleration").Is(peak, 30000 / peak, Verdict.FallsShort);
    }

    // 89.5 − 89.455 = 0.045 mm.
    [Fact]
    public void Piston_clearance()
    {
        var finding = Appraisal.Of(Twin, "piston-clearance", "1");
        Assert.Equal(0.045e-3, finding.Judgement!.Value, 1e-12);
        Assert.Equal(0.06 / 0.045, finding.Reserve, 1e-6);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(Twin.Set(("piston[1].diameter", "89.48 mm")), "piston-clearance", "1").Verdict);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(Twin.Set(("piston.clearanceMax", "0.04 mm")), "piston-clearance", "1").Verdict);
    }

    // 42.008 − 2 · 1.991 − 37.985 = 0.041 mm.
    [Fact]
    public void Bearing_clearance()
    {
        var book = Books.Of(
            ("bearing[main.1].housing", "42.008 mm"), ("bearing.shellThickness", "1.991 mm"), ("bearing[main.1].journal", "37.985 mm"), ("bearing[main].clearanceMin", "0.025 mm"), ("bearing[main].clearanceMax", "0.055 mm"));
        var finding = Appraisal.Of(book, "bearing-clearance", "main.1");
        Assert.Equal(0.041e-3, finding.Judgement!.Value, 1e-12);
        Assert.Equal(55 / 41.0, finding.Reserve, 1e-6);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(book.Set(("bearing[main].clearanceMin", "0.042 mm")), "bearing-clearance", "main.1").Verdict);

        // A group of bearings is no bearing.
        Assert.Equal(["main.1"], CheckCatalogue.Find("bearing-clearance").Instances(new(book.Now())));
    }

    // 8400 · 1.3226 · 7.5 · (1 − 0.01) rpm.
    [Fact]
    public void Blower_speed()
    {
        var book = Twin.Set(("blower.kind", "centrifugal"), ("blower.driveRatio", "1.3226"), ("blower.stepUp", "7.5"), ("blower.beltSlip", "1 %"), ("blower.maxSpeed", "98000 rpm"));
        var rotor = Speed * 1.3226 * 7.5 * 0.99;
        Appraisal.Of(book, "blower-speed").Is(rotor, 98000 * Math.PI / 30 / rotor, Verdict.Holds);
        Appraisal.Of(book.Set(("blower.maxSpeed", "80000 rpm")), "blower-speed").Is(rotor, 80000 * Math.PI / 30 / rotor, Verdict.FallsShort);
        Assert.Empty(CheckCatalogue.Find("blower-speed").Instances(new(Twin.Now())));
        Assert.Empty(CheckCatalogue.Find("surge-margin").Instances(new(book.Set(("blower.kind", "positive displacement")).Now())));
    }
}
