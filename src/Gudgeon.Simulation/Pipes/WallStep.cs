using System.Numerics;
using System.Runtime.CompilerServices;
using static Gudgeon.Simulation.Pipes.Lanes;

namespace Gudgeon.Simulation.Pipes;

/// <summary>
/// Friction at the wall of a pipe and heat through it. Friction factor by Haaland (J. Fluids Eng. 105, 1983, 89) and 64/Re
/// below Re 2300; viscosity of air by Sutherland; heat by the analogy of Chilton and Colburn, St Pr^(2/3) = f/8, and Nu 3.66
/// below Re 2300; recovery factor 0.89 (all from memory). The laws are those of steady flow.
/// </summary>
internal sealed class WallStep
{
    private const double Prandtl = 0.7;

    private readonly double[] _perDiameter;
    private readonly double[] _rough;
    private readonly double _bendsPerLength;
    private readonly double _heatScale;

    /// <param name="shape">The duct.</param>
    /// <param name="cells">Cells of it.</param>
    /// <param name="roughness">m.</param>
    /// <param name="bendsPerLength">Loss coefficient of the bends over the length, 1/m.</param>
    /// <param name="heatScale">Multiplies the heat transfer; 0 is adiabatic.</param>
    public WallStep(DuctArrays shape, int cells, double roughness, double bendsPerLength, double heatScale)
    {
        (_perDiameter, _bendsPerLength, _heatScale) = (shape.PerDiameter, bendsPerLength, heatScale);
        _rough = [.. _perDiameter.Select(d => Math.Pow(roughness * d / 3.7, 1.11))];
        (Temperature, Coefficient, CoefficientTemperature) = (new double[_rough.Length], new double[_rough.Length], new double[_rough.Length]);
        Array.Fill(Temperature, 300.0, 0, cells + 1);
    }

    /// <summary>Temperature of the wall at each cell, K.</summary>
    public double[] Temperature { get; }

    /// <summary>∫ h dt of each cell, J/(m²·K).</summary>
    public double[] Coefficient { get; }

    /// <summary>∫ h T dt of each cell, T that which a heatless wall would take, J/m².</summary>
    public double[] CoefficientTemperature { get; }

    /// <summary>Slows the gas and heats or cools it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Apply(GasColumn gas, double dt)
    {
        var (one, step, tiny) = (Vector<double>.One, new Vector<double>(dt), new Vector<double>(1e-9));
        var (halfStep, bends, scale) = (new Vector<double>(0.5 * dt), new Vector<double>(_bendsPerLength), new Vector<double>(_heatScale));
        var perLog = new Vector<double>(-1.8 / Math.Log(10));
        var (stanton, conduction) = (new Vector<double>(Math.Pow(Prandtl, -2.0 / 3) / 8), new Vector<double>(3.66 / Prandtl));
        for (var i = 1; i <= gas.Cells; i += Vector<double>.Count)
        {
            var (t, perD, momentum) = (At(gas.Temperature, i), At(_perDiameter, i), At(gas.Momentum, i));
            var flux = Vector.Abs(momentum) + tiny;
            var speed = flux / At(gas.Density, i);
            var mu = new Vector<double>(1.458e-6) * t * Vector.SquareRoot(t) / (t + new Vector<double>(110.4));
            var perRe = mu * perD / flux;
            var root = perLog * Vector.Log(At(_rough, i) + (new Vector<double>(6.9) * perRe));
            var laminar = Vector.GreaterThan(perRe, new Vector<double>(1 / 2300.0));
            var friction = Vector.ConditionalSelect(laminar, new Vector<double>(64) * perRe, one / (root * root));
            Put(gas.Momentum, i, momentum / (one + (halfStep * speed * ((friction * perD) + bends))));
            if (_heatScale == 0)
            {
                continue;
            }

            // cp T is c²/(γ − 1).
            var c = At(gas.Sound, i);
            var cp = At(gas.Degrees, i) * c * c / t;
            var (stirred, conducted) = (stanton * friction * flux, conduction * mu * perD);
            var h = scale * cp * Vector.ConditionalSelect(laminar, conducted, Vector.Max(stirred, conducted));
            var recovered = t + (new Vector<double>(0.445) * speed * speed / cp);
            Put(gas.Total, i, At(gas.Total, i) + (step * new Vector<double>(4) * perD * h * (At(Temperature, i) - recovered)));
            Put(Coefficient, i, At(Coefficient, i) + (step * h));
            Put(CoefficientTemperature, i, At(CoefficientTemperature, i) + (step * h * recovered));
        }
    }
}
