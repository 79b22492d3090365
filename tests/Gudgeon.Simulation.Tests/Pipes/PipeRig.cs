using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>
/// One real pipe by itself, marched between two ends that the test gives. Wide pipes (metres) are as good as free of
/// friction and heat, which cannot be switched off: both go with one over the diameter.
/// </summary>
internal sealed class PipeRig
{
    /// <summary>Diameter at which the wall no longer counts, m.</summary>
    public const double Frictionless = 100;

    public static readonly GasMixture AirMixture = Air.Of(AirModel.StandardDry);

    /// <summary>Air alone.</summary>
    public static readonly PipeGas AirLaw = new(AirMixture, null, AirMixture);

    public PipeRig(Duct duct, PipeGas? law = null, int carried = 0, double roughness = 0, double bendLoss = 0, double heatScale = 0)
    {
        Law = law ?? AirLaw;
        Pipe = new Pipe(duct, Law, carried, roughness, bendLoss, heatScale);
    }

    public PipeGas Law { get; }

    public Pipe Pipe { get; }

    public IPipeStop First { get; init; } = new ClosedStop();

    public IPipeStop Last { get; init; } = new ClosedStop();

    public double Time { get; private set; }

    public int Cells => Pipe.Gas.Cells;

    /// <summary>Centre of a cell, m from the first end.</summary>
    public double Place(int cell) => (cell + 0.5) * Pipe.Duct.CellLength;

    public double Pressure(int cell) => Pipe.Gas.Pressure[cell + 1];

    public double Velocity(int cell) => Pipe.Gas.Velocity[cell + 1];

    public double Mach(int cell) => Pipe.Gas.Velocity[cell + 1] / Pipe.Gas.Sound[cell + 1];

    /// <summary>Mass flow through a face, kg/s.</summary>
    public double MassFlow(int face) => Pipe.Gas.MassFlux[face] * Pipe.Duct.FaceArea[face];

    /// <summary>Fills the pipe with air by place.</summary>
    public void Fill(Func<double, (double Temperature, double Velocity, double Pressure)> state)
    {
        Span<double> none = stackalloc double[Pipe.Gas.Carried];
        for (var cell = 0; cell < Cells; cell++)
        {
            var (t, u, p) = state(Place(cell));
            Pipe.Set(cell, none, t, u, p);
        }

        Pipe.Solve();
    }

    public double Step(double courant = 0.8) => courant * Pipe.Duct.CellLength / Pipe.Fastest();

    public void March(double dt)
    {
        Pipe.Begin(dt);
        First.Let(Pipe.First, dt);
        Last.Let(Pipe.Last, dt);
        Pipe.Finish(dt);
        Time += dt;
    }

    public void Until(double time)
    {
        while (time - Time > 1e-12)
        {
            March(Math.Min(Step(), time - Time));
        }
    }

    /// <summary>Marches until the same mass flows through every face to one part in so many, and says how much, kg/s.</summary>
    public double Settle(double closely = 1e-7, int most = 400_000)
    {
        for (var step = 0; step < most; step++)
        {
            March(Step());
            if (step % 50 == 0 && step > 0)
            {
                var flows = Enumerable.Range(0, Cells + 1).Select(MassFlow).ToArray();
                if (flows.Max() - flows.Min() <= closely * Math.Abs(flows.Average()))
                {
                    return flows.Average();
                }
            }
        }

        throw new InvalidOperationException($"no steady flow after {most} steps: {MassFlow(0)} in, {MassFlow(Cells)} out");
    }
}

/// <summary>What a test puts at the end of a pipe.</summary>
internal interface IPipeStop
{
    void Let(PipeMouth mouth, double dt);
}

/// <summary>A closed end: a throat without area.</summary>
internal sealed class ClosedStop : IPipeStop
{
    public void Let(PipeMouth mouth, double dt) => mouth.Let(Mouth.Throat(mouth.Arriving(), new(1e5, 1e5, 1.4, 0), mouth.Area, 0, 0, 0), stackalloc double[3]);
}

/// <summary>Gas at rest that never changes.</summary>
internal sealed class Reservoir(PipeGas law, double pressure, double temperature) : IPipeStop
{
    /// <summary>Dynamic heads that entering gas wants; 1 is without loss.</summary>
    public double Heads { get; init; } = 1;

    /// <summary>Effective area of a throat, m²; open with the pipe's whole area when infinite.</summary>
    public double Throat { get; init; } = double.PositiveInfinity;

    public double[] Shares { get; init; } = [0, 0, 0];

    public Beyond Gas { get; } = Rest(law, [], temperature, pressure);

    /// <summary>Gas at rest, its ratio of specific heats from the slope of the energy.</summary>
    public static Beyond Rest(PipeGas law, ReadOnlySpan<double> shares, double temperature, double pressure)
    {
        var r = law.GasConstant(shares);
        var cv = law.Energy(shares, temperature + 0.5) - law.Energy(shares, temperature - 0.5);
        return new(pressure, r * temperature, 1 + (r / cv), law.Energy(shares, temperature) + (r * temperature));
    }

    public void Let(PipeMouth mouth, double dt)
    {
        var flow = double.IsInfinity(Throat)
            ? Mouth.Open(mouth.Arriving(), Gas, mouth.Area, Heads, mouth.Flow.Pressure)
            : Mouth.Throat(mouth.Arriving(), Gas, mouth.Area, Throat, Throat, mouth.Flow.Pressure);
        mouth.Let(flow, Shares);
    }
}

/// <summary>A volume of air that fills and empties through the mouth.</summary>
internal sealed class RigVolume : IPipeStop
{
    private readonly PipeGas _law;
    private readonly double _volume;
    private double _mass, _energy, _temperature;

    public RigVolume(PipeGas law, double volume, double temperature, double pressure)
    {
        (_law, _volume, _temperature) = (law, volume, temperature);
        _mass = pressure * volume / (law.AirR * temperature);
        _energy = _mass * law.Energy([], temperature);
    }

    public double Pressure => _mass * _law.AirR * _temperature / _volume;

    public double Mass => _mass;

    public double Energy => _energy;

    public void Let(PipeMouth mouth, double dt)
    {
        var flow = Mouth.Open(mouth.Arriving(), Reservoir.Rest(_law, [], _temperature, Pressure), mouth.Area, 1, mouth.Flow.Pressure);
        mouth.Let(flow, stackalloc double[3]);
        _mass += flow.Outwards * dt;
        _energy += flow.Outwards * flow.Enthalpy * dt;
        for (var turn = 0; turn < 3; turn++)
        {
            var slope = _law.Energy([], _temperature + 0.5) - _law.Energy([], _temperature - 0.5);
            _temperature -= (_law.Energy([], _temperature) - (_energy / _mass)) / slope;
        }
    }
}
