using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>The star region and the five wave speeds of a Riemann problem.</summary>
/// <param name="Pressure">Pressure of the star region, Pa.</param>
/// <param name="Velocity">Velocity of the star region and of the contact, m/s.</param>
/// <param name="LeftDensity">Density left of the contact, kg/m³.</param>
/// <param name="RightDensity">Density right of the contact, kg/m³.</param>
/// <param name="LeftHead">Speed of the left shock, or of the head of the left rarefaction, m/s.</param>
/// <param name="LeftTail">Speed of the left shock, or of the tail of the left rarefaction, m/s.</param>
/// <param name="RightTail">Speed of the right shock, or of the tail of the right rarefaction, m/s.</param>
/// <param name="RightHead">Speed of the right shock, or of the head of the right rarefaction, m/s.</param>
public readonly record struct RiemannStar(
    [Quantity("star pressure", Dimension.Pressure, "Pa", Symbol = "p*")] double Pressure,
    [Quantity("star velocity", Dimension.Speed, "m/s", Symbol = "u*")] double Velocity,
    [Quantity("star density left", Dimension.Density, "kg/m³")] double LeftDensity,
    [Quantity("star density right", Dimension.Density, "kg/m³")] double RightDensity,
    [Quantity("left wave, outer speed", Dimension.Speed, "m/s")] double LeftHead,
    [Quantity("left wave, inner speed", Dimension.Speed, "m/s")] double LeftTail,
    [Quantity("right wave, inner speed", Dimension.Speed, "m/s")] double RightTail,
    [Quantity("right wave, outer speed", Dimension.Speed, "m/s")] double RightHead);

/// <summary>Where the waves of a Riemann problem stand after a time.</summary>
/// <param name="LeftHead">Outer edge of the left wave, m.</param>
/// <param name="LeftTail">Inner edge of the left wave, m.</param>
/// <param name="Contact">Contact, m.</param>
/// <param name="RightTail">Inner edge of the right wave, m.</param>
/// <param name="RightHead">Outer edge of the right wave, m.</param>
public readonly record struct WavePositions(
    [Quantity("left wave, outer edge", Dimension.Length, "m")] double LeftHead,
    [Quantity("left wave, inner edge", Dimension.Length, "m")] double LeftTail,
    [Quantity("contact", Dimension.Length, "m")] double Contact,
    [Quantity("right wave, inner edge", Dimension.Length, "m")] double RightTail,
    [Quantity("right wave, outer edge", Dimension.Length, "m")] double RightHead);

/// <summary>Density, velocity and pressure of a gas.</summary>
/// <param name="Density">kg/m³.</param>
/// <param name="Velocity">m/s.</param>
/// <param name="Pressure">Pa.</param>
public readonly record struct FlowState(double Density, double Velocity, double Pressure)
{
    /// <summary>Speed of sound, m/s.</summary>
    public double SoundSpeed(double gamma) => Math.Sqrt(gamma * Pressure / Density);
}

/// <summary>The exact solution of the Riemann problem of a perfect gas: two states that meet at a diaphragm.</summary>
public static class RiemannProblem
{
    private const string Expression = "fL(p*) + fR(p*) + uR - uL = 0; u* = (uL + uR)/2 + (fR(p*) - fL(p*))/2; shock: f = (p* - p) sqrt(2/((γ+1) ρ) / (p* + (γ-1)/(γ+1) p)); rarefaction: f = 2 a/(γ-1) ((p*/p)^((γ-1)/(2γ)) - 1)";
    private const string Source = "Toro, Riemann Solvers and Numerical Methods for Fluid Dynamics, 3rd ed. 2009, eqs 4.5-4.9 and sections 4.3-4.5";

    /// <summary>The star region between the waves, and the waves' speeds.</summary>
    /// <param name="leftDensity">Density left of the diaphragm, kg/m³.</param>
    /// <param name="leftVelocity">Velocity left of it, m/s.</param>
    /// <param name="leftPressure">Pressure left of it, Pa.</param>
    /// <param name="rightDensity">Density right of the diaphragm, kg/m³.</param>
    /// <param name="rightVelocity">Velocity right of it, m/s.</param>
    /// <param name="rightPressure">Pressure right of it, Pa.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Riemann problem", Expression, Source, Provenance = Provenance.FromMemory)]
    public static RiemannStar Solve(
        [Quantity("density left", Dimension.Density, "kg/m³", Symbol = "ρL", Above = 0)] double leftDensity,
        [Quantity("velocity left", Dimension.Speed, "m/s", Symbol = "uL")] double leftVelocity,
        [Quantity("pressure left", Dimension.Pressure, "Pa", Symbol = "pL", Above = 0)] double leftPressure,
        [Quantity("density right", Dimension.Density, "kg/m³", Symbol = "ρR", Above = 0)] double rightDensity,
        [Quantity("velocity right", Dimension.Speed, "m/s", Symbol = "uR")] double rightVelocity,
        [Quantity("pressure right", Dimension.Pressure, "Pa", Symbol = "pR", Above = 0)] double rightPressure,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4) =>
        Solve(new(leftDensity, leftVelocity, leftPressure), new(rightDensity, rightVelocity, rightPressure), gamma);

    /// <summary>Where the waves stand a time after the diaphragm burst.</summary>
    /// <param name="leftDensity">Density left of the diaphragm, kg/m³.</param>
    /// <param name="leftVelocity">Velocity left of it, m/s.</param>
    /// <param name="leftPressure">Pressure left of it, Pa.</param>
    /// <param name="rightDensity">Density right of the diaphragm, kg/m³.</param>
    /// <param name="rightVelocity">Velocity right of it, m/s.</param>
    /// <param name="rightPressure">Pressure right of it, Pa.</param>
    /// <param name="time">Time since the burst, s.</param>
    /// <param name="diaphragm">Place of the diaphragm, m.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Riemann problem wave positions", "x = x0 + S t; " + Expression, Source, Provenance = Provenance.FromMemory)]
    public static WavePositions Positions(
        [Quantity("density left", Dimension.Density, "kg/m³", Symbol = "ρL", Above = 0)] double leftDensity,
        [Quantity("velocity left", Dimension.Speed, "m/s", Symbol = "uL")] double leftVelocity,
        [Quantity("pressure left", Dimension.Pressure, "Pa", Symbol = "pL", Above = 0)] double leftPressure,
        [Quantity("density right", Dimension.Density, "kg/m³", Symbol = "ρR", Above = 0)] double rightDensity,
        [Quantity("velocity right", Dimension.Speed, "m/s", Symbol = "uR")] double rightVelocity,
        [Quantity("pressure right", Dimension.Pressure, "Pa", Symbol = "pR", Above = 0)] double rightPressure,
        [Quantity("time", Dimension.Time, "s", Symbol = "t", Min = 0)] double time,
        [Quantity("place of the diaphragm", Dimension.Length, "m", Symbol = "x0")] double diaphragm = 0,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var star = Solve(leftDensity, leftVelocity, leftPressure, rightDensity, rightVelocity, rightPressure, gamma);
        return new(
            diaphragm + (star.LeftHead * time),
            diaphragm + (star.LeftTail * time),
            diaphragm + (star.Velocity * time),
            diaphragm + (star.RightTail * time),
            diaphragm + (star.RightHead * time));
    }

    /// <summary>The star region and the wave speeds.</summary>
    /// <exception cref="FormulaDomainException">The states draw apart so fast that a vacuum opens.</exception>
    public static RiemannStar Solve(FlowState left, FlowState right, double gamma)
    {
        var (aL, aR) = (left.SoundSpeed(gamma), right.SoundSpeed(gamma));
        FormulaDomainException.Unless(2 * (aL + aR) / (gamma - 1) > right.Velocity - left.Velocity, "velocities: the gases draw apart so fast that a vacuum opens between them");
        var p = StarPressure(left, right, gamma);
        FormulaDomainException.Unless(double.IsFinite(p) && p > 0, "velocities: so far apart that no pressure between the waves can be worked out");
        var (fL, _) = Curve(p, left, aL, gamma);
        var (fR, _) = Curve(p, right, aR, gamma);
        var u = 0.5 * (left.Velocity + right.Velocity + fR - fL);
        var (leftOuter, leftInner) = Speeds(p, left.Pressure, aL, gamma);
        var (rightOuter, rightInner) = Speeds(p, right.Pressure, aR, gamma);
        return new(
            p,
            u,
            StarDensity(p, left, gamma),
            StarDensity(p, right, gamma),
            left.Velocity - leftOuter,
            p > left.Pressure ? left.Velocity - leftOuter : u - leftInner,
            p > right.Pressure ? right.Velocity + rightOuter : u + rightInner,
            right.Velocity + rightOuter);
    }

    /// <summary>The solution along the ray x/t = <paramref name="ray"/>, m/s: for comparing a marching solver with.</summary>
    public static FlowState Sample(FlowState left, FlowState right, double gamma, double ray)
    {
        var star = Solve(left, right, gamma);
        if (ray <= star.Velocity)
        {
            return SampleLeft(left, star.Pressure, star.Velocity, star.LeftDensity, star.LeftHead, star.LeftTail, gamma, ray);
        }

        var mirrored = right with { Velocity = -right.Velocity };
        var state = SampleLeft(mirrored, star.Pressure, -star.Velocity, star.RightDensity, -star.RightHead, -star.RightTail, gamma, -ray);
        return state with { Velocity = -state.Velocity };
    }

    private static FlowState SampleLeft(FlowState side, double p, double u, double density, double head, double tail, double gamma, double ray)
    {
        if (ray <= head)
        {
            return side;
        }

        if (ray >= tail)
        {
            return new(density, u, p);
        }

        var a = side.SoundSpeed(gamma);
        var ratio = (2 / (gamma + 1)) + ((gamma - 1) / ((gamma + 1) * a) * (side.Velocity - ray));
        return new(
            side.Density * Math.Pow(ratio, 2 / (gamma - 1)),
            2 / (gamma + 1) * (a + (0.5 * (gamma - 1) * side.Velocity) + ray),
            side.Pressure * Math.Pow(ratio, 2 * gamma / (gamma - 1)));
    }

    /// <summary>Newton from the two-rarefaction guess. The curve is rising and concave: one step at most lands left of the root, and from there it climbs straight to it.</summary>
    private static double StarPressure(FlowState left, FlowState right, double gamma)
    {
        var (aL, aR) = (left.SoundSpeed(gamma), right.SoundSpeed(gamma));
        var z = (gamma - 1) / (2 * gamma);
        var open = aL + aR - (0.5 * (gamma - 1) * (right.Velocity - left.Velocity));
        var p = Math.Pow(open / ((aL / Math.Pow(left.Pressure, z)) + (aR / Math.Pow(right.Pressure, z))), 1 / z);
        for (var i = 0; i < 100; i++)
        {
            var (fL, slopeL) = Curve(p, left, aL, gamma);
            var (fR, slopeR) = Curve(p, right, aR, gamma);
            var next = Math.Max(p - ((fL + fR + right.Velocity - left.Velocity) / (slopeL + slopeR)), 1e-3 * p);
            if (Math.Abs(next - p) <= 1e-14 * p)
            {
                return next;
            }

            p = next;
        }

        return p;
    }

    /// <summary>Toro eqs 4.6-4.7 and the slope 4.37.</summary>
    private static (double Value, double Slope) Curve(double p, FlowState side, double a, double gamma)
    {
        if (p > side.Pressure)
        {
            var scale = 2 / ((gamma + 1) * side.Density);
            var offset = (gamma - 1) / (gamma + 1) * side.Pressure;
            var root = Math.Sqrt(scale / (p + offset));
            return ((p - side.Pressure) * root, root * (1 - (0.5 * (p - side.Pressure) / (p + offset))));
        }

        var ratio = p / side.Pressure;
        return (
            2 * a / (gamma - 1) * (Math.Pow(ratio, (gamma - 1) / (2 * gamma)) - 1),
            Math.Pow(ratio, -(gamma + 1) / (2 * gamma)) / (side.Density * a));
    }

    private static double StarDensity(double p, FlowState side, double gamma)
    {
        var ratio = p / side.Pressure;
        var k = (gamma - 1) / (gamma + 1);
        return side.Density * (ratio > 1 ? (ratio + k) / ((k * ratio) + 1) : Math.Pow(ratio, 1 / gamma));
    }

    /// <summary>Speed of the wave's outer edge relative to the gas before it, and of sound in the star region behind a rarefaction.</summary>
    private static (double Outer, double Inner) Speeds(double p, double pressure, double a, double gamma)
    {
        var ratio = p / pressure;
        var outer = ratio > 1 ? a * Math.Sqrt((((gamma + 1) * ratio) + gamma - 1) / (2 * gamma)) : a;
        return (outer, a * Math.Pow(ratio, (gamma - 1) / (2 * gamma)));
    }
}
