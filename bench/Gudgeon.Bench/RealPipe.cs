using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Bench;

/// <summary>A pipe as an engine has it: gases of several kinds with their own heat capacities, rough walls with heat, a taper, an open end and a throat.</summary>
internal sealed class RealPipe
{
    private static readonly GasTable Gases = new(Air.Of(AirModel.StandardDry), Fuels.Petrol95, 0.075);
    private static readonly PipeGas Law = new(Gases.AirMixture, Fuels.Petrol95, Gases.Frozen);

    private readonly Pipe _pipe;
    private readonly double[] _entering;
    private readonly Beyond _box, _valve;

    public RealPipe(int cells, int carried)
    {
        _pipe = new Pipe(new Duct([new(0.5, 0.036, 0.042), Taper.Straight(0.5, 0.042)], 1.0 / cells), Law, carried, 20e-6, 0.3, 1);
        _entering = [0.02, 0.9, 0.01];
        ReadOnlySpan<double> shares = _entering.AsSpan(0, carried);
        for (var i = 0; i < cells; i++)
        {
            _pipe.Set(i, i < cells / 2 ? shares : [0, 0, 0], i < cells / 2 ? 900 : 350, 0, i < cells / 2 ? 1.6e5 : 1e5);
        }

        _pipe.Solve();
        _box = Rest(shares, 850, 1.5e5);
        _valve = Rest(shares, 320, 1.1e5);
    }

    public void March(int steps)
    {
        for (var k = 0; k < steps; k++)
        {
            var dt = 0.8 * _pipe.Duct.CellLength / _pipe.Fastest();
            _pipe.Begin(dt);
            _pipe.First.Let(Mouth.Throat(_pipe.First.Arriving(), _box, _pipe.First.Area, 3e-4, 3e-4, _pipe.First.Flow.Pressure), _entering);
            _pipe.Last.Let(Mouth.Open(_pipe.Last.Arriving(), _valve, _pipe.Last.Area, 1.1, _pipe.Last.Flow.Pressure), _entering);
            _pipe.Finish(dt);
        }
    }

    private static Beyond Rest(ReadOnlySpan<double> shares, double temperature, double pressure)
    {
        var r = Law.GasConstant(shares);
        return new(pressure, r * temperature, 1.35, Law.Energy(shares, temperature) + (r * temperature));
    }
}
