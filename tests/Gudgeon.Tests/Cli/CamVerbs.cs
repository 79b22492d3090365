using System.Globalization;
using System.Xml.Linq;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Tests.Cli;

/// <summary>What the cams do and the room they leave: gudgeon head cams, gudgeon head clearance.</summary>
public sealed class CamVerbs : IDisposable
{
    private const double Degree = Math.PI / 180;

    private readonly Workshop _workshop = new();

    public CamVerbs() => _workshop.Unpack("heron");

    public void Dispose() => _workshop.Dispose();

    // Degree wheel of the Heron's inlet: (-22.5 + 228) / 2 = 102.75°, wanted 102°; 0.75° of the crank on a radius of 23 mm is 23 · 0.375° = 0.1505 mm.
    [Fact]
    public void CamsSaysTimingMotionAndHowFarToMove()
    {
        var said = _workshop.Good("head", "cams", "heron.json");
        Assert.StartsWith("inlet: lift curve read at the valve\n  at the seat: opens 54 ° before TDC, closes 78 ° after BDC; 312 ° long, centre 102 ° after TDC\n  at 1 mm: ", said, StringComparison.Ordinal);
        Assert.Matches(@"lobe centre by degree wheel +102\.8 °  ± 0\.45 ° \(k = 2\)", said);
        Assert.Matches(@"advance the cam by +0\.75 °", said);
        Assert.Matches(@"move along the slots +0\.1505 mm  the cam forwards in its sprocket", said);
        Assert.Contains("Turn the crank one way only", said, StringComparison.Ordinal);
        Assert.Matches(@"lobe separation, cam degrees +108 °", said);
        Assert.Matches(@"overlap at the seat +95 °", said);
        Assert.Matches(@"at 0\.03937 in: opens 23\.24 ° before TDC.*\n.*at 0\.05 in: ", _workshop.Good("head", "cams", "heron.json", "--imperial"));
    }

    [Fact]
    public void AnyLiftMayBeAskedFor()
    {
        var said = _workshop.Good("head", "cams", "heron.json", "--at", "3mm", "--at", "10mm");
        Assert.Contains("  at 3 mm: opens ", said, StringComparison.Ordinal);
        Assert.DoesNotContain("at 1 mm:", said, StringComparison.Ordinal);
        Assert.Contains("at 10 mm: the valve does not lift so far", said[said.IndexOf("exhaust:", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.DoesNotContain("does not lift so far", said[..said.IndexOf("exhaust:", StringComparison.Ordinal)], StringComparison.Ordinal);
        Assert.Contains("  at 0.05 in: ", _workshop.Good("head", "cams", "heron.json", "--at", "0.050in", "--imperial"), StringComparison.Ordinal);
    }

    [Fact]
    public void TheJsonIsInSi()
    {
        var sheet = _workshop.Run("head", "cams", "heron.json", "--json").Json;
        var inlet = sheet.GetProperty("cams")[0];
        Assert.Equal("inlet", inlet.GetProperty("index").GetString());
        Assert.Equal((360 + 102) * Degree, inlet.GetProperty("centre").GetDouble(), 1e-6);
        Assert.Equal(102.75 * Degree, inlet.GetProperty("wheel").GetProperty("centre").GetDouble(), 1e-9);
        Assert.Equal([0, 1e-3, 1.27e-3], inlet.GetProperty("timings").EnumerateArray().Select(t => t.GetProperty("lift").GetDouble()));
        Assert.Equal(inlet.GetProperty("motion").GetProperty("angles").GetArrayLength(), inlet.GetProperty("motion").GetProperty("jerk").GetArrayLength());
        Assert.Equal(9700 * Math.PI / 30, sheet.GetProperty("speed").GetDouble(), 1e-6);
    }

    [Fact]
    public void BothPicturesAreDrawn()
    {
        _workshop.Good("head", "cams", "heron.json", "--svg", "cams.svg", "--timing-svg", "timing.svg", "--cylinder", "2");
        Assert.Contains("acceleration at the rev limit, m/s²", Words("cams.svg"), StringComparison.Ordinal);
        Assert.Contains("overlap TDC", Words("cams.svg"), StringComparison.Ordinal);
        Assert.Contains("Valve timing, cylinder 2", Words("timing.svg"), StringComparison.Ordinal);
        _workshop.Good("head", "cams", "heron.json", "--svg", "inch.svg", "--imperial");
        Assert.Contains("lift at the valve, in", Words("inch.svg"), StringComparison.Ordinal);
    }

    [Fact]
    public void ClearanceSaysWhatTakesFromTheRoom()
    {
        var said = _workshop.Good("head", "clearance", "heron.json", "--svg", "room.svg");
        Assert.Matches(@"inlet\.1\.2 +2\.27 mm +7\.25 ° +0\.2 mm +0\.19 mm +0 mm +0\.09 mm +1\.8 mm +7\.5 ° +2\.2 mm +1\.8 mm\n", said);
        Assert.Matches(@"exhaust\.1\.2 +2\.81 mm +-6 ° ", said);
        Assert.Contains("Caution: A valve that meets a piston wrecks the engine", said, StringComparison.Ordinal);
        Assert.Contains("inlet.1.2: 2.27 mm cold, 1.8 mm running", Words("room.svg"), StringComparison.Ordinal);
        Assert.Matches(@"inlet\.1\.2 +0\.08\d+ in ", _workshop.Good("head", "clearance", "heron.json", "--imperial"));
        var valve = _workshop.Run("head", "clearance", "heron.json", "--json").Json.GetProperty("valves")[1];
        Assert.Equal(2.27e-3, valve.GetProperty("leastCold").GetProperty("room").GetDouble(), 5e-6);
        Assert.Equal(39.6e-3 - 36e-3, 2 * valve.GetProperty("beside").GetDouble(), 1e-9);
        Assert.Equal(valve.GetProperty("cold").GetArrayLength(), valve.GetProperty("running").GetArrayLength());
    }

    /// <summary>The lobe of the reference case VT-12 read on the cam and at the crank: 1 mm is passed 104.1° of the crank from its centre, in closed form.</summary>
    [Theory]
    [InlineData("cam °", 159, 2)]
    [InlineData("crank °", 318, 4)]
    public void ATableByCamOrCrankDegreesGivesTheSameTiming(string heading, int first, int step)
    {
        var rows = Enumerable.Range(0, 73).Select(i => string.Create(CultureInfo.InvariantCulture, $"{first + (step * i)},{9.2 * PolynomialLobe.At((i - 36) / 72.0).Lift:F3}"));
        _workshop.Write("lift.csv", $"{heading},lift mm\n{string.Join('\n', rows)}\n");
        _workshop.Good("set", "heron.json", "valve[inlet].liftTable", "--from", "lift.csv", "--change", "sprint-cams", "--how", "measured");
        var timing = _workshop.Run("head", "cams", "heron.json", "--json", "--at", "1mm").Json.GetProperty("cams")[0].GetProperty("timings")[1];
        var half = 144 * Degree * Math.Sqrt(1 - Math.Cbrt(1 / 9.2));
        Assert.Equal((462 * Degree) - half, timing.GetProperty("opens").GetDouble(), 0.1 * Degree);
        Assert.Equal((462 * Degree) + half, timing.GetProperty("closes").GetDouble(), 0.1 * Degree);
    }

    /// <summary>The same lobe read on the cam alone, from its own zero.</summary>
    [Fact]
    public void ALobeFromAFileIsPlacedByItsCentre()
    {
        var rows = Enumerable.Range(0, 73).Select(i => string.Create(CultureInfo.InvariantCulture, $"{2 * i},{9.2 * PolynomialLobe.At((i - 36) / 72.0).Lift:F3}"));
        _workshop.Write("lobe.csv", $"cam °;lift mm\n{string.Join('\n', rows)}\n".Replace(",", ";", StringComparison.Ordinal));
        _workshop.Write("bare.json", Books.With("\"cam\": { \"[inlet]\": { \"centre\": \"102°\" } }"));
        _workshop.Good("set", "bare.json", "cam[inlet].liftTable", "--from", "lobe.csv", "--how", "measured");
        Assert.Contains("  at 1 mm: opens 2.11", _workshop.Good("head", "cams", "bare.json"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("head|cams|heron.json|--at|-1mm", "--at: given")]
    [InlineData("head|cams|heron.json|--at|3 N", "--at: given '3 N', which is a force")]
    [InlineData("head|cams|heron.json|--timing-svg|t.svg|--cylinder|3", "--cylinder: given '3', wanted one of 1, 2")]
    [InlineData("head|cams|heron.json|--svg|nosuch/cams.svg", "the picture 'nosuch/cams.svg' cannot be written")]
    [InlineData("set|heron.json|valve[inlet].liftTable|--from|open.csv", "open.csv, valve[inlet].liftTable, line 2: the lift curve does not close: it begins at 0.4 mm and ends at 0 mm; wanted zero at both ends")]
    [InlineData("set|heron.json|valve[inlet].liftTable|--from|flat.csv", "the lift curve has no lift; wanted readings between its ends")]
    public void RefusesInOneSentence(string words, string sentence)
    {
        _workshop.Write("open.csv", "crank °,lift mm\n310,0.4\n450,9\n600,0\n");
        _workshop.Write("flat.csv", "crank °,lift mm\n310,0\n600,0\n");
        Refusal.Holds(_workshop.Run(words.Split('|')), sentence);
    }

    private const string Law = "\"cam\": { \"[inlet]\": { \"law\": \"cubed\", \"lift\": \"4 mm\", \"duration\": \"288°\", \"centre\": \"102°\", \"baseRadius\": \"15 mm\", \"rampAngle\": \"40°\"";

    [Theory]
    [InlineData("\"engine\": { \"cylinders\": 2 }", "inlet: no lift curve, lobe or law of this side is known yet; read one with a degree wheel and a dial gauge, or give cam.law, cam.duration and cam.lift; exhaust: no lift curve")]
    [InlineData(Law + "} }, \"valve\": { \"[inlet]\": { \"lash\": \"4.5 mm\" } }", "valve[inlet].lash: given 4.5 mm, wanted less than the lift of the cam")]
    [InlineData(Law + ", \"rampHeight\": \"4.2 mm\" } }", "cam[inlet].rampHeight: given 4.2 mm, wanted less than the lift of the lobe, 4 mm")]
    [InlineData(Law + "} }, \"follower\": { \"[inlet]\": { \"camArm\": \"10 mm\", \"pivotToCam\": \"80 mm\", \"padRadius\": \"18 mm\", \"valveArm\": \"42 mm\" } }", "follower[inlet].camArm: given 10 mm; arm to the pad: with this pivot, pad and base circle the pad cannot rest on the cam")]
    [InlineData(Law + "} }, \"follower\": { \"[inlet]\": { \"camArm\": \"26 mm\" } }", "inlet: not known yet; wanted: follower[inlet].pivotToCam, follower[inlet].padRadius, follower[inlet].valveArm")]
    [InlineData("\"valve\": { \"[inlet]\": { \"liftTable\": \"-20° at 0 mm; 102° at 9 mm; 240° at 0 mm\" } }", "valve[inlet].liftTable: its middle stands at")]
    public void ACamThatCannotBeIsRefused(string baseline, string sentence)
    {
        _workshop.Write("bad.json", Books.With(baseline));
        Refusal.Holds(_workshop.Run("head", "cams", "bad.json"), sentence);
    }

    [Fact]
    public void ClearanceNamesWhatItLacks()
    {
        _workshop.Unpack("wren");
        Refusal.Holds(_workshop.Run("head", "clearance", "wren.json"), "inlet: not known yet: valve[inlet].pistonClearance");
    }

    private string Words(string picture) => string.Concat(XDocument.Parse(_workshop.Read(picture)).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value + "\n"));
}
