using System.Globalization;
using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>A sudden rise or fall of pressure that runs along a pipe, and what its end sends back.</summary>
public class ReflectionTests
{
    private const double Warm = 300, Still = 1e5, Length = 2;

    private static double Gamma => PipeRig.AirMixture.HeatCapacityRatio(Warm);

    private static double Sound => Acoustics.SoundSpeed(Warm, Gamma, PipeRig.AirMixture.GasConstant);

    private static double Density => Still / (PipeRig.AirMixture.GasConstant * Warm);

    /// <summary>Rest beyond an open end takes all of it: the wave comes back with the other sign.</summary>
    [Theory]
    [InlineData(200)]
    [InlineData(-200)]
    public void AnOpenEndSendsBackTheOpposite(double rise)
    {
        var back = Reflected(rise, new Reservoir(PipeRig.AirLaw, Still, Warm));
        Report($"rise {rise}: {back:F2} came back");
        Assert.Equal(-1, back / rise, 0.005);
    }

    /// <summary>A wall doubles it, and sends it back as it came.</summary>
    [Theory]
    [InlineData(200)]
    [InlineData(-200)]
    public void AClosedEndDoublesTheWave(double rise)
    {
        var rig = Wave(rise, new ClosedStop());
        rig.Until(0.6 * Length / Sound);
        Assert.Equal(2, (rig.Pipe.Last.Flow.Pressure - Still) / rise, 0.005);
        Assert.Equal(1, Reflected(rise, new ClosedStop()) / rise, 0.005);
    }

    /// <summary>
    /// Through a throat, quasi-steady: with the rise p and what comes back r the end has p + r, and the flow (p − r)/ρc out of
    /// the pipe. Out of it the flow in the pipe has its head already: p + r = ρu²/2 (1/σ² − 1). Into it the head of the jet is
    /// lost: −(p + r) = ρu²/2 / σ². Beyond stands the still pressure.
    /// </summary>
    [Theory]
    [InlineData(500, 0.02)]
    [InlineData(500, 0.05)]
    [InlineData(500, 0.2)]
    [InlineData(-500, 0.02)]
    [InlineData(-500, 0.05)]
    [InlineData(-500, 0.2)]
    public void AThroatSendsBackItsShare(double rise, double opening)
    {
        var back = Reflected(rise, new Reservoir(PipeRig.AirLaw, Still, Warm) { Throat = opening * Math.PI / 4 * PipeRig.Frictionless * PipeRig.Frictionless });
        var size = Math.Abs(rise);
        var perSquare = Density / 2 * ((1 / (opening * opening)) - (rise > 0 ? 1 : 0)) / Math.Pow(Density * Sound, 2);

        // 2p − w = k w² with w = p − r.
        var w = (-1 + Math.Sqrt(1 + (8 * perSquare * size))) / (2 * perSquare);
        var expected = (size - w) / size;
        Report($"rise {rise}, opening {opening}: {back / rise:F4} came back, quasi-steady {expected:F4}");
        Assert.Equal(expected, back / rise, 0.005);
    }

    private static double Reflected(double rise, IPipeStop end)
    {
        var rig = Wave(rise, end);
        rig.Until(0.8 * Length / Sound);
        return rig.Pressure((int)(0.85 * rig.Cells)) - Still - rise;
    }

    /// <summary>The first half of the pipe moves on behind a simple wave of a rise of pressure; the second is at rest.</summary>
    private static PipeRig Wave(double rise, IPipeStop end)
    {
        var rig = new PipeRig(new Duct([Taper.Straight(Length, PipeRig.Frictionless)], 0.005)) { Last = end };
        var ratio = Math.Pow((Still + rise) / Still, (Gamma - 1) / (2 * Gamma));
        rig.Fill(x => x < Length / 2 ? (Warm * ratio * ratio, 2 * Sound / (Gamma - 1) * (ratio - 1), Still + rise) : (Warm, 0, Still));
        return rig;
    }

    private static void Report(FormattableString line) => TestContext.Current.TestOutputHelper?.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
