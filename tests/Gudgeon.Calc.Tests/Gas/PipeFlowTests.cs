using CsCheck;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Calc.Tests.Gas;

/// <summary>What no table row can say of flow through pipes: balances, slopes and round trips.</summary>
public class PipeFlowTests
{
    private static readonly Gen<double> Gammas = Gen.Double[1.05, 1.66];

    /// <summary>Below and above Mach 1, not at it: there the inverse of a squared difference keeps half the figures.</summary>
    private static readonly Gen<double> Machs = Gen.Double[0.02, 5].Where(m => Math.Abs(m - 1) > 0.01);

    [Fact]
    public void FannoFlowKeepsMassAndStagnationTemperature() => Gen.Select(Machs, Gammas).Sample((mach, gamma) =>
    {
        var r = FannoFlow.Ratios(mach, gamma);
        Near(1, r.DensityRatio * mach * Math.Sqrt(r.TemperatureRatio), 1e-12);
        Near(r.PressureRatio, r.DensityRatio * r.TemperatureRatio, 1e-12);
        Near(IsentropicFlow.Ratios(1, gamma).TemperatureRatio, IsentropicFlow.Ratios(mach, gamma).TemperatureRatio / r.TemperatureRatio, 1e-12);
        Near(r.StagnationPressureRatio, r.PressureRatio * IsentropicFlow.Ratios(1, gamma).PressureRatio / IsentropicFlow.Ratios(mach, gamma).PressureRatio, 1e-11);
        Assert.True(r.FrictionLength > 0 && r.StagnationPressureRatio > 1);
    });

    /// <summary>Over a short stretch the fall of pressure and the rise of momentum make the wall's drag: f dx/D ρu²/2, Darcy's f.</summary>
    [Fact]
    public void FannoFlowLosesMomentumToDarcysFriction() => Gen.Select(Machs, Gammas).Sample((mach, gamma) =>
    {
        var (here, there) = (mach * (1 - 1e-5), mach * (1 + 1e-5));
        double Push(double m) => FannoFlow.Ratios(m, gamma).PressureRatio * (1 + (gamma * m * m));
        var friction = FannoFlow.Ratios(here, gamma).FrictionLength - FannoFlow.Ratios(there, gamma).FrictionLength;
        Near(0.5 * gamma * mach * mach * FannoFlow.Ratios(mach, gamma).PressureRatio, (Push(here) - Push(there)) / friction, 1e-5);
    });

    [Fact]
    public void FannoFlowComesBack() => Gen.Select(Machs, Gammas).Sample((mach, gamma) =>
    {
        var r = FannoFlow.Ratios(mach, gamma);
        Near(mach, FannoFlow.MachFromFrictionLength(r.FrictionLength, Branch(mach), gamma), 1e-9);
        Near(mach, FannoFlow.MachFromPressureRatio(r.PressureRatio, gamma), 1e-12);
    });

    [Fact]
    public void RayleighFlowKeepsMassAndMomentum() => Gen.Select(Machs, Gammas).Sample((mach, gamma) =>
    {
        var r = RayleighFlow.Ratios(mach, gamma);
        Near(1 + gamma, r.PressureRatio * (1 + (gamma * mach * mach)), 1e-12);
        Near(r.VelocityRatio, mach * Math.Sqrt(r.TemperatureRatio), 1e-12);
        Near(r.PressureRatio, r.TemperatureRatio / r.VelocityRatio, 1e-12);
        Near(r.StagnationTemperatureRatio, r.TemperatureRatio * IsentropicFlow.Ratios(1, gamma).TemperatureRatio / IsentropicFlow.Ratios(mach, gamma).TemperatureRatio, 1e-12);
        Near(r.StagnationPressureRatio, r.PressureRatio * IsentropicFlow.Ratios(1, gamma).PressureRatio / IsentropicFlow.Ratios(mach, gamma).PressureRatio, 1e-11);
        Assert.True(r.StagnationTemperatureRatio < 1);
    });

    [Fact]
    public void RayleighFlowComesBack() => Gen.Select(Machs, Gammas).Sample((mach, gamma) =>
    {
        var r = RayleighFlow.Ratios(mach, gamma);
        Near(mach, RayleighFlow.MachFromStagnationTemperatureRatio(r.StagnationTemperatureRatio, Branch(mach), gamma), 1e-9);
        Near(mach, RayleighFlow.MachFromPressureRatio(r.PressureRatio, gamma), 1e-11);
    });

    [Fact]
    public void ColebrooksLawIsFulfilledAndHaalandIsCloseToIt() => Gen.Select(Gen.Double[Math.Log(4000), Math.Log(1e8)], Gen.Double[0, 0.05]).Sample((logRe, roughness) =>
    {
        var re = Math.Exp(logRe);
        var f = PipeFriction.Colebrook(re, roughness);
        Near(1 / Math.Sqrt(f), -2 * Math.Log10((roughness / 3.7) + (2.51 / (re * Math.Sqrt(f)))), 1e-12);
        Near(f, PipeFriction.Haaland(re, roughness), 0.03);
    });

    /// <summary>The loss of Borda and Carnot is what the momentum over the widening leaves of the head.</summary>
    [Fact]
    public void TheLossOfAWideningFollowsFromMomentum() => Gen.Select(Gen.Double[0.01, 1], Gen.Double[1, 100]).Sample((narrow, ratio) =>
    {
        var u = 1 / ratio;
        var recovered = 2 * u * (1 - u);
        Assert.Equal(1 - (u * u) - recovered, PipeFriction.SuddenExpansion(narrow, narrow * ratio), 1e-12);
    });

    private static FlowBranch Branch(double mach) => mach < 1 ? FlowBranch.Subsonic : FlowBranch.Supersonic;

    private static void Near(double expected, double actual, double relative) => Assert.True(Math.Abs(actual - expected) <= relative * Math.Abs(expected), $"{expected} wanted, {actual} found");
}
