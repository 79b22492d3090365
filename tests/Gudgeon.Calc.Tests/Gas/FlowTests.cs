using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Calc.Tests.Gas;

/// <summary>Conservation laws and round trips of gas dynamics.</summary>
public class FlowTests
{
    private static readonly Gen<double> Gammas = Gen.Double[1.05, 1.66];

    private static readonly Gen<FlowState> Flows =
        from density in Gen.Double[0.1, 10]
        from velocity in Gen.Double[-300, 300]
        from logP in Gen.Double[4, 6]
        select new FlowState(density, velocity, Math.Pow(10, logP));

    [Fact]
    public void Mach_number_comes_back_from_area_and_pressure() => Gen.Select(Gen.Double[0.01, 5], Gammas).Where((m, _) => Math.Abs(m - 1) > 0.01).Sample((mach, gamma) =>
    {
        var ratios = IsentropicFlow.Ratios(mach, gamma);
        var branch = mach < 1 ? FlowBranch.Subsonic : FlowBranch.Supersonic;
        Near(mach, IsentropicFlow.MachFromAreaRatio(ratios.AreaRatio, branch, gamma), 1e-9);
        Near(mach, IsentropicFlow.MachFromPressureRatio(ratios.PressureRatio, gamma), 1e-9);
    });

    [Fact]
    public void A_shock_keeps_mass_momentum_and_energy() => Gen.Select(Gen.Double[1, 8], Gammas).Sample((mach, gamma) =>
    {
        var shock = NormalShock.Ratios(mach, gamma);

        // In units of the state before: p = 1, rho = gamma, a = 1.
        var before = (Rho: gamma, U: mach, P: 1.0);
        var after = (Rho: gamma * shock.DensityRatio, U: shock.MachBehind * Math.Sqrt(shock.TemperatureRatio), P: shock.PressureRatio);
        Near(before.Rho * before.U, after.Rho * after.U, 1e-12);
        Near(before.P + (before.Rho * before.U * before.U), after.P + (after.Rho * after.U * after.U), 1e-12);
        Near((1 / (gamma - 1)) + (before.U * before.U / 2), (shock.TemperatureRatio / (gamma - 1)) + (after.U * after.U / 2), 1e-12);
        Assert.True(shock.StagnationPressureRatio <= 1 + 1e-12);
    });

    [Fact]
    public void Orifice_flow_reverses_with_the_pressures() => Gen.Select(Gen.Double[2e4, 5e5], Gen.Double[2e4, 5e5], Gen.Double[250, 1200]).Sample((p1, p2, t) =>
        Assert.Equal(OrificeFlow.MassFlow(1e-4, p1, p2, t, t), -OrificeFlow.MassFlow(1e-4, p2, p1, t, t)));

    [Fact]
    public void Orifice_flow_grows_as_the_outlet_falls_and_then_is_choked() => Gen.Select(Gen.Double[0.001, 0.999], Gammas).Sample((ratio, gamma) =>
    {
        var flux = OrificeFlow.MassFlux(1e5, 300, ratio, gamma, 287);
        var lower = OrificeFlow.MassFlux(1e5, 300, 0.99 * ratio, gamma, 287);
        var choked = OrificeFlow.Choked(1e5, 300, gamma, 287);
        Assert.True(ratio <= choked.CriticalPressureRatio ? flux == choked.MassFlux : flux < choked.MassFlux);
        Assert.True(lower >= flux * (1 - 1e-12));
        Near(choked.MassFlux, OrificeFlow.MassFlux(1e5, 300, choked.CriticalPressureRatio * 1.0000001, gamma, 287), 1e-6);
    });

    [Fact]
    public void The_Riemann_solution_keeps_mass_momentum_and_energy() => Gen.Select(Flows, Flows, Gammas).Sample((left, right, gamma) =>
    {
        if (2 * (left.SoundSpeed(gamma) + right.SoundSpeed(gamma)) / (gamma - 1) <= (right.Velocity - left.Velocity) * 1.01)
        {
            return;
        }

        // The integral over a box that the waves do not leave equals what flows in: Toro's consistency condition.
        var star = RiemannProblem.Solve(left, right, gamma);
        var reach = 1.1 * Math.Max(Math.Abs(star.LeftHead), Math.Abs(star.RightHead));
        var (mass, momentum, energy) = Integral(left, right, gamma, reach, star);
        var (l, r) = (Conserved(left, gamma), Conserved(right, gamma));
        var (fl, fr) = (Flux(left, gamma), Flux(right, gamma));
        Assert.Equal((reach * (l.Mass + r.Mass)) + fl.Mass - fr.Mass, mass, 1e-6 * reach * (l.Mass + r.Mass));
        Assert.Equal((reach * (l.Momentum + r.Momentum)) + fl.Momentum - fr.Momentum, momentum, 1e-6 * reach * reach * (l.Mass + r.Mass));
        Assert.Equal((reach * (l.Energy + r.Energy)) + fl.Energy - fr.Energy, energy, 1e-6 * reach * (l.Energy + r.Energy));
    }, iter: 300);

    [Fact]
    public void Gases_that_draw_apart_too_fast_are_refused() =>
        Assert.Throws<FormulaDomainException>(() => RiemannProblem.Solve(1, -2000, 1e5, 1, 2000, 1e5));

    private static (double Mass, double Momentum, double Energy) Conserved(FlowState s, double gamma) =>
        (s.Density, s.Density * s.Velocity, (s.Pressure / (gamma - 1)) + (0.5 * s.Density * s.Velocity * s.Velocity));

    private static (double Mass, double Momentum, double Energy) Flux(FlowState s, double gamma)
    {
        var u = Conserved(s, gamma);
        return (u.Momentum, (u.Momentum * s.Velocity) + s.Pressure, s.Velocity * (u.Energy + s.Pressure));
    }

    /// <summary>Gauss-Legendre on each smooth piece between the waves, at t = 1.</summary>
    private static (double Mass, double Momentum, double Energy) Integral(FlowState left, FlowState right, double gamma, double reach, RiemannStar star)
    {
        double[] edges = [-reach, star.LeftHead, star.LeftTail, star.Velocity, star.RightTail, star.RightHead, reach];
        var rule = new MathNet.Numerics.Integration.GaussLegendreRule(-1, 1, 32);
        var sum = (Mass: 0.0, Momentum: 0.0, Energy: 0.0);
        for (var i = 0; i + 1 < edges.Length; i++)
        {
            var (half, middle) = ((edges[i + 1] - edges[i]) / 2, (edges[i + 1] + edges[i]) / 2);
            for (var k = 0; k < rule.Order; k++)
            {
                var u = Conserved(RiemannProblem.Sample(left, right, gamma, middle + (half * rule.GetAbscissa(k))), gamma);
                var w = half * rule.GetWeight(k);
                sum = (sum.Mass + (w * u.Mass), sum.Momentum + (w * u.Momentum), sum.Energy + (w * u.Energy));
            }
        }

        return sum;
    }

    private static void Near(double expected, double actual, double relative) =>
        Assert.InRange(actual, expected - (relative * Math.Abs(expected)), expected + (relative * Math.Abs(expected)));
}
