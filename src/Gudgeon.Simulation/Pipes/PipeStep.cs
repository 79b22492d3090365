using System.Numerics;
using System.Runtime.CompilerServices;
using static Gudgeon.Simulation.Pipes.Lanes;

namespace Gudgeon.Simulation.Pipes;

/// <summary>
/// One step of the gas in a pipe: MUSCL–Hancock with the MC limiter on density, velocity, pressure and shares, and HLLC
/// fluxes (Toro, Riemann Solvers and Numerical Methods for Fluid Dynamics, 3rd ed. 2009, sections 14.4 and 10.4–10.6; from memory).
/// Without a branch in its loops, so that each works on a whole vector of cells. Nothing is allocated.
/// </summary>
internal static class PipeStep
{
    private static readonly Vector<double> Half = new(0.5), Two = new(2.0), Small = new(0.05), Zero = Vector<double>.Zero;

    /// <summary>Carries the face states of every cell half a step on.</summary>
    /// <param name="gas">The gas; the cells beyond the ends are set.</param>
    /// <param name="ratio">Time step over cell length, s/m.</param>
    /// <param name="shape">The duct; in a tapered one the volume flow is limited in place of the velocity.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Evolve(GasColumn gas, double ratio, DuctArrays shape)
    {
        var n = gas.Cells;
        var r = new Vector<double>(0.5 * ratio);
        var tapered = shape.Widening is not null;
        ref var rho0 = ref First(gas.Density);
        ref var u0 = ref First(gas.Velocity);
        ref var p0 = ref First(gas.Pressure);
        ref var c0 = ref First(gas.Sound);
        ref var g0 = ref First(gas.Degrees);
        ref var e0 = ref First(gas.Energy);
        for (var i = 1; i <= n; i += Vector<double>.Count)
        {
            var (rho, u, p) = (At(ref rho0, i), At(ref u0, i), At(ref p0, i));
            var dRho = Slope(At(ref rho0, i - 1), rho, At(ref rho0, i + 1));
            var du = Slope(At(ref u0, i - 1), u, At(ref u0, i + 1));
            var dp = Slope(At(ref p0, i - 1), p, At(ref p0, i + 1));
            var c = At(ref c0, i);
            var (c2, perRho) = (c * c, Vector<double>.One / rho);
            var (uL, uR, spread) = (u - (Half * du), u + (Half * du), du);
            if (tapered)
            {
                var (a, m) = (At(shape.CellArea, i), u * At(shape.CellArea, i));
                var dm = Slope(At(ref u0, i - 1) * At(shape.CellArea, i - 1), m, At(ref u0, i + 1) * At(shape.CellArea, i + 1));
                uL = (m - (Half * dm)) * At(shape.PerFaceArea, i - 1);
                uR = (m + (Half * dm)) * At(shape.PerFaceArea, i);
                (du, spread) = (uR - uL, dm / a);
            }

            var rhoStep = -r * ((u * dRho) + (rho * spread));
            var uStep = -r * ((u * du) + (dp * perRho));
            var pStep = -r * ((u * dp) + (rho * c2 * spread));
            var (hRho, hp) = (Half * dRho, Half * dp);
            var (rhoL, pL, rhoR, pR) = (rho + rhoStep - hRho, p + pStep - hp, rho + rhoStep + hRho, p + pStep + hp);

            // A state that would have lost its gas or its pressure stays that of the cell.
            var good = Vector.GreaterThan(Vector.Min(rhoL, rhoR), Small * rho) & Vector.GreaterThan(Vector.Min(pL, pR), Small * p);
            rhoL = Vector.ConditionalSelect(good, rhoL, rho);
            rhoR = Vector.ConditionalSelect(good, rhoR, rho);
            pL = Vector.ConditionalSelect(good, pL, p);
            pR = Vector.ConditionalSelect(good, pR, p);
            var g = At(ref g0, i);
            var cold = At(ref e0, i) - (g * p * perRho);
            Put(gas.LeftDensity, i, rhoL);
            Put(gas.LeftVelocity, i, Vector.ConditionalSelect(good, uL + uStep, u));
            Put(gas.LeftPressure, i, pL);
            Put(gas.LeftEnergy, i, (rhoL * cold) + (g * pL));
            Put(gas.RightDensity, i, rhoR);
            Put(gas.RightVelocity, i, Vector.ConditionalSelect(good, uR + uStep, u));
            Put(gas.RightPressure, i, pR);
            Put(gas.RightEnergy, i, (rhoR * cold) + (g * pR));
        }

        for (var k = 0; k < gas.Carried; k++)
        {
            EvolveShare(gas, k, r);
        }
    }

    /// <summary>Fluxes through the faces between cells; those of the two ends are the boundaries' business.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Fluxes(GasColumn gas)
    {
        ref var c0 = ref First(gas.Sound);
        for (var i = 1; i < gas.Cells; i += Vector<double>.Count)
        {
            var left = new Side(At(gas.RightDensity, i), At(gas.RightVelocity, i), At(gas.RightPressure, i), At(gas.RightEnergy, i));
            var right = new Side(At(gas.LeftDensity, i + 1), At(gas.LeftVelocity, i + 1), At(gas.LeftPressure, i + 1), At(gas.LeftEnergy, i + 1));

            // The speed of sound of the cells bounds that of their faces well enough for the outer waves.
            var (mass, momentum, energy) = Hllc(left, right, At(ref c0, i), At(ref c0, i + 1));
            Put(gas.MassFlux, i, mass);
            Put(gas.MomentumFlux, i, momentum);
            Put(gas.EnergyFlux, i, energy);
            var rightwards = Vector.GreaterThanOrEqual(mass, Zero);
            for (var k = 0; k < gas.Carried; k++)
            {
                Put(gas.ShareFlux[k], i, mass * Vector.ConditionalSelect(rightwards, At(gas.RightShare[k], i), At(gas.LeftShare[k], i + 1)));
            }
        }
    }

    /// <summary>Takes what the fluxes bring and carry away; gas at rest in a taper stays at rest to the last digit.</summary>
    /// <param name="gas">The gas; all fluxes are set.</param>
    /// <param name="faceArea">Area of each face, m², padded.</param>
    /// <param name="perVolume">One over the volume of each cell, 1/m³, at the cell's index, padded with zeros.</param>
    /// <param name="dt">Time step, s.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Update(GasColumn gas, double[] faceArea, double[] perVolume, double dt)
    {
        var step = new Vector<double>(dt);
        for (var i = 1; i <= gas.Cells; i += Vector<double>.Count)
        {
            var (a, b, w) = (At(faceArea, i - 1), At(faceArea, i), step * At(perVolume, i));

            // The taper pushes with the pressure half a step on; gas at rest has the same on both faces.
            var p = Half * (At(gas.LeftPressure, i) + At(gas.RightPressure, i));
            Put(gas.Density, i, At(gas.Density, i) + (w * ((a * At(gas.MassFlux, i - 1)) - (b * At(gas.MassFlux, i)))));
            Put(gas.Momentum, i, At(gas.Momentum, i) + (w * ((a * (At(gas.MomentumFlux, i - 1) - p)) - (b * (At(gas.MomentumFlux, i) - p)))));
            Put(gas.Total, i, At(gas.Total, i) + (w * ((a * At(gas.EnergyFlux, i - 1)) - (b * At(gas.EnergyFlux, i)))));
            for (var k = 0; k < gas.Carried; k++)
            {
                var share = gas.ShareFlux[k];
                Put(gas.ShareDensity[k], i, At(gas.ShareDensity[k], i) + (w * ((a * At(share, i - 1)) - (b * At(share, i)))));
            }
        }
    }

    private static void EvolveShare(GasColumn gas, int k, Vector<double> r)
    {
        ref var y0 = ref First(gas.Share[k]);
        for (var i = 1; i <= gas.Cells; i += Vector<double>.Count)
        {
            var y = At(ref y0, i);
            var dy = Slope(At(ref y0, i - 1), y, At(ref y0, i + 1));
            var step = -r * At(gas.Velocity, i) * dy;
            var (left, right, perShare) = (step - (Half * dy), step + (Half * dy), At(gas.ShareEnergy[k], i));
            Put(gas.LeftShare[k], i, y + left);
            Put(gas.RightShare[k], i, y + right);
            Put(gas.LeftEnergy, i, At(gas.LeftEnergy, i) + (At(gas.LeftDensity, i) * perShare * left));
            Put(gas.RightEnergy, i, At(gas.RightEnergy, i) + (At(gas.RightDensity, i) * perShare * right));
        }
    }

    /// <summary>Monotonized central slope (van Leer 1977): the mean, but at most twice either side, and none at an extremum.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Slope(Vector<double> before, Vector<double> here, Vector<double> after)
    {
        var (a, b) = (here - before, after - here);
        var mean = Half * (a + b);
        var size = Vector.Min(Vector.Abs(mean), Two * Vector.Min(Vector.Abs(a), Vector.Abs(b)));
        return Vector.ConditionalSelect(Vector.GreaterThan(a * b, Zero), Vector.ConditionalSelect(Vector.LessThan(mean, Zero), -size, size), Zero);
    }

    /// <summary>HLLC flux; wave speeds by the estimate of Davis with the Roe-free bound of both sides.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector<double> Mass, Vector<double> Momentum, Vector<double> Energy) Hllc(in Side l, in Side r, Vector<double> cl, Vector<double> cr)
    {
        var sl = Vector.Min(l.Velocity - cl, r.Velocity - cr);
        var sr = Vector.Max(l.Velocity + cl, r.Velocity + cr);
        var (ql, qr) = (l.Density * (sl - l.Velocity), r.Density * (sr - r.Velocity));
        var contact = ((r.Pressure - l.Pressure) + (ql * l.Velocity) - (qr * r.Velocity)) / (ql - qr);

        // The side from which the contact comes, and whether even its outer wave goes the other way.
        var fromLeft = Vector.GreaterThanOrEqual(contact, Zero);
        var rho = Vector.ConditionalSelect(fromLeft, l.Density, r.Density);
        var u = Vector.ConditionalSelect(fromLeft, l.Velocity, r.Velocity);
        var p = Vector.ConditionalSelect(fromLeft, l.Pressure, r.Pressure);
        var e = Vector.ConditionalSelect(fromLeft, l.Energy, r.Energy);
        var s = Vector.ConditionalSelect(fromLeft, sl, sr);
        var q = Vector.ConditionalSelect(fromLeft, ql, qr);
        var inside = Vector.ConditionalSelect(fromLeft, Vector.LessThan(sl, Zero), Vector.GreaterThan(sr, Zero));
        var total = e + (Half * rho * u * u);
        var (mass, momentum, energy) = (rho * u, (rho * u * u) + p, u * (total + p));

        // Inside the fan the star state's surplus travels with the outer wave.
        var perGap = Vector<double>.One / (s - contact);
        var starRho = q * perGap;
        var starTotal = ((s - u) * perGap * total) + ((contact - u) * ((starRho * contact) + (p * perGap)));
        var push = Vector.ConditionalSelect(inside, s, Zero);
        return (
            mass + (push * (starRho - rho)),
            momentum + (push * ((starRho * contact) - (rho * u))),
            energy + (push * (starTotal - total)));
    }

    /// <summary>The gas on one side of a face; the energy is the internal one of a volume.</summary>
    private readonly record struct Side(Vector<double> Density, Vector<double> Velocity, Vector<double> Pressure, Vector<double> Energy);
}
