using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Gudgeon.Calc.Gas;
using static Gudgeon.Simulation.Pipes.Lanes;

namespace Gudgeon.Simulation.Pipes;

/// <summary>
/// The gas law of a pipe: air, with shares of fuel vapour, burned gas and fuel droplets. Internal energies (enthalpy of
/// formation included) are polynomials of the temperature, fitted to the NASA polynomials, so that a whole vector of cells
/// finds its temperatures at once. Burned gas keeps the composition it had when it stopped reacting.
/// </summary>
internal sealed class PipeGas
{
    /// <summary>Places of the carried shares.</summary>
    public const int Vapour = 0, Burned = 1, Droplets = 2;

    /// <summary>Range of the fit, K; the law goes on outside with the polynomials held to the range's widening by a tenth.</summary>
    public const double Coldest = 200, Hottest = 2800;

    private const int Degree = 10;
    private const double Middle = (Coldest + Hottest) / 2, PerKelvin = 2 / (Hottest - Coldest), Outside = 1.1;

    private readonly double[] _air;
    private readonly double[][] _over = new double[3][];
    private readonly double[] _overR;

    /// <param name="air">The air with its humidity.</param>
    /// <param name="fuel">The fuel; null for air alone.</param>
    /// <param name="burned">Burned gas, its composition frozen.</param>
    public PipeGas(GasMixture air, Fuel? fuel, GasMixture burned)
    {
        AirR = air.GasConstant;
        _air = Fit(air.Energy);
        var vapourR = fuel?.VapourGasConstant ?? AirR;
        _over[Vapour] = Over(fuel is null ? air.Energy : fuel.VapourEnergy);
        _over[Burned] = Over(burned.Energy);
        _over[Droplets] = Over(fuel is null ? air.Energy : fuel.LiquidEnthalpy);
        _overR = [vapourR - AirR, burned.GasConstant - AirR, -AirR];
    }

    /// <summary>Specific gas constant of the air, J/(kg·K).</summary>
    public double AirR { get; }

    /// <summary>Specific gas constant of a mixture, J/(kg·K).</summary>
    public double GasConstant(ReadOnlySpan<double> shares)
    {
        var r = AirR;
        for (var k = 0; k < shares.Length; k++)
        {
            r += shares[k] * _overR[k];
        }

        return r;
    }

    /// <summary>Specific internal energy of a mixture, J/kg.</summary>
    public double Energy(ReadOnlySpan<double> shares, double temperature)
    {
        var x = (temperature - Middle) * PerKelvin;
        var e = Horner(_air, x);
        for (var k = 0; k < shares.Length; k++)
        {
            e += shares[k] * Horner(_over[k], x);
        }

        return e;
    }

    /// <summary>Fills a cell with gas at a temperature, velocity and pressure.</summary>
    /// <param name="gas">The gas of the pipe.</param>
    /// <param name="cell">Cell, from 0.</param>
    /// <param name="shares">Mass shares of what is carried.</param>
    /// <param name="temperature">K.</param>
    /// <param name="velocity">m/s.</param>
    /// <param name="pressure">Pa.</param>
    public void Set(GasColumn gas, int cell, ReadOnlySpan<double> shares, double temperature, double velocity, double pressure)
    {
        var i = cell + 1;
        var rho = pressure / (GasConstant(shares) * temperature);
        (gas.Density[i], gas.Momentum[i], gas.Temperature[i]) = (rho, rho * velocity, temperature);
        gas.Total[i] = rho * (Energy(shares, temperature) + (0.5 * velocity * velocity));
        for (var k = 0; k < gas.Carried; k++)
        {
            gas.ShareDensity[k][i] = rho * shares[k];
        }

        // The slope from which the search for the temperature starts.
        gas.Degrees[i] = (Energy(shares, temperature + 5) - Energy(shares, temperature - 5)) / (10 * GasConstant(shares));
    }

    /// <summary>
    /// Velocity, temperature, pressure and what follows from them, of all cells. Newton's method on the temperature, twice from
    /// where it last stood, first with the slope that was there. The pipe carries nothing, two shares, or all three.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Solve(GasColumn gas)
    {
        switch (gas.Carried)
        {
            case 0:
                Solve(gas, mixed: false, droplets: false);
                break;
            case 2:
                Solve(gas, mixed: true, droplets: false);
                break;
            default:
                Solve(gas, mixed: true, droplets: true);
                break;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Solve(GasColumn gas, bool mixed, bool droplets)
    {
        var (half, one, limit) = (new Vector<double>(0.5), Vector<double>.One, new Vector<double>(Outside));
        var (middle, perKelvin, kelvin) = (new Vector<double>(Middle), new Vector<double>(PerKelvin), new Vector<double>(1 / PerKelvin));
        ref var air = ref First(_air);
        ref var overVapour = ref First(_over[Vapour]);
        ref var overBurned = ref First(_over[Burned]);
        ref var overDroplets = ref First(_over[Droplets]);
        var (rVapour, rBurned, rDroplets) = (new Vector<double>(_overR[Vapour]), new Vector<double>(_overR[Burned]), new Vector<double>(_overR[Droplets]));
        Span<Vector<double>> mix = stackalloc Vector<double>[Degree + 1];
        ref var m = ref MemoryMarshal.GetReference(mix);
        for (var i = 1; i <= gas.Cells; i += Vector<double>.Count)
        {
            var rho = At(gas.Density, i);
            var perRho = one / rho;
            var u = At(gas.Momentum, i) * perRho;
            var e = (At(gas.Total, i) * perRho) - (half * u * u);
            var vapour = mixed ? At(gas.ShareDensity[Vapour], i) * perRho : Vector<double>.Zero;
            var burned = mixed ? At(gas.ShareDensity[Burned], i) * perRho : Vector<double>.Zero;
            var drops = droplets ? At(gas.ShareDensity[Droplets], i) * perRho : Vector<double>.Zero;
            var r = new Vector<double>(AirR) + (vapour * rVapour) + (burned * rBurned) + (drops * rDroplets);
            var x = (At(gas.Temperature, i) - middle) * perKelvin;
            var value = Vector<double>.Zero;
            for (var j = Degree; j >= 0; j--)
            {
                var c = Term(ref air, j);
                c = mixed ? Vector.FusedMultiplyAdd(vapour, Term(ref overVapour, j), Vector.FusedMultiplyAdd(burned, Term(ref overBurned, j), c)) : c;
                c = droplets ? Vector.FusedMultiplyAdd(drops, Term(ref overDroplets, j), c) : c;
                Unsafe.Add(ref m, j) = c;
                value = Vector.FusedMultiplyAdd(value, x, c);
            }

            x = Vector.Min(limit, Vector.Max(-limit, x - ((value - e) * perKelvin / (At(gas.Degrees, i) * r))));
            (value, var slope) = (Unsafe.Add(ref m, Degree), Vector<double>.Zero);
            for (var j = Degree - 1; j >= 0; j--)
            {
                slope = Vector.FusedMultiplyAdd(slope, x, value);
                value = Vector.FusedMultiplyAdd(value, x, Unsafe.Add(ref m, j));
            }

            x = Vector.Min(limit, Vector.Max(-limit, x - ((value - e) / slope)));
            var t = (x * kelvin) + middle;
            var rt = r * t;
            var capacity = slope * perKelvin;
            var degrees = capacity / r;
            Put(gas.Temperature, i, t);
            Put(gas.Velocity, i, u);
            Put(gas.Energy, i, e);
            Put(gas.Pressure, i, rho * rt);
            Put(gas.Sound, i, Vector.SquareRoot(rt * (one + (r / capacity))));
            Put(gas.Degrees, i, degrees);
            if (!mixed)
            {
                continue;
            }

            var gt = degrees * t;
            var (eVapour, eBurned, eDroplets) = (Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero);
            for (var j = Degree; j >= 0; j--)
            {
                eVapour = Vector.FusedMultiplyAdd(eVapour, x, Term(ref overVapour, j));
                eBurned = Vector.FusedMultiplyAdd(eBurned, x, Term(ref overBurned, j));
                eDroplets = droplets ? Vector.FusedMultiplyAdd(eDroplets, x, Term(ref overDroplets, j)) : eDroplets;
            }

            Put(gas.Share[Vapour], i, vapour);
            Put(gas.Share[Burned], i, burned);
            Put(gas.ShareEnergy[Vapour], i, eVapour - (gt * rVapour));
            Put(gas.ShareEnergy[Burned], i, eBurned - (gt * rBurned));
            if (droplets)
            {
                Put(gas.Share[Droplets], i, drops);
                Put(gas.ShareEnergy[Droplets], i, eDroplets - (gt * rDroplets));
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Term(ref double terms, int j) => new(Unsafe.Add(ref terms, j));

    private static double Horner(double[] terms, double x)
    {
        var value = terms[Degree];
        for (var j = Degree - 1; j >= 0; j--)
        {
            value = (value * x) + terms[j];
        }

        return value;
    }

    private double[] Over(Func<double, double> energy)
    {
        var fit = Fit(energy);
        return [.. fit.Zip(_air, (a, b) => a - b)];
    }

    /// <summary>Terms in powers of x, −1 to 1 over the range: least squares in Chebyshev polynomials at their own nodes.</summary>
    private static double[] Fit(Func<double, double> energy)
    {
        const int Nodes = 64;
        double Angle(int k) => Math.PI * (k + 0.5) / Nodes;
        var energies = Enumerable.Range(0, Nodes).Select(k => energy(Middle + (Math.Cos(Angle(k)) / PerKelvin))).ToArray();
        var terms = new double[Degree + 1];
        var (before, now) = (new double[Degree + 1], new double[Degree + 1]);
        now[0] = 1;
        for (var n = 0; n <= Degree; n++)
        {
            var c = 0.0;
            for (var k = 0; k < Nodes; k++)
            {
                c += energies[k] * Math.Cos(n * Angle(k)) * (n == 0 ? 1.0 : 2.0) / Nodes;
            }

            for (var j = 0; j <= Degree; j++)
            {
                terms[j] += c * now[j];
            }

            // T(n+1) = 2 x T(n) − T(n−1), with T1 = x.
            var next = new double[Degree + 1];
            for (var j = 0; j <= Degree; j++)
            {
                next[j] = (j == 0 ? 0 : (n == 0 ? 1 : 2) * now[j - 1]) - (n == 0 ? 0 : before[j]);
            }

            (before, now) = (now, next);
        }

        return terms;
    }
}
