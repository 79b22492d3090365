using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Engine;

/// <summary>
/// Converged state of every node at crank angle 0, held as temperatures and compositions so that a neighbouring point
/// with another speed, fuel or mixture can start from it.
/// </summary>
public sealed class EngineState
{
    private readonly double[] _temperatures;
    private readonly Mixture[] _contents;
    private readonly ZoneState[] _zones;
    private readonly PipeState[] _pipes;
    private readonly double _shaft;

    private EngineState(double[] temperatures, Mixture[] contents, ZoneState[] zones, PipeState[] pipes, double shaft) =>
        (_temperatures, _contents, _zones, _pipes, _shaft) = (temperatures, contents, zones, pipes, shaft);

    internal static EngineState Capture(March march, Network net)
    {
        march.EvaluateStart();
        return new EngineState(
            [.. march.Nodes.Temperature],
            [.. Enumerable.Range(0, net.NodeCount).Select(march.ContentOf)],
            [.. march.Zones.Select((z, c) => ZoneState.Of(z, march.Nodes.Pressure[net.Cylinders[c]]))],
            [.. march.Pipes.Select(PipeState.Of)],
            march.BlowerSpeed);
    }

    internal bool Fits(Network net) => _temperatures.Length == net.NodeCount && _zones.Length == net.Cylinders.Length && _pipes.Length == net.Pipes.Length;

    internal void Restore(March march, Network net)
    {
        for (var n = 0; n < net.NodeCount; n++)
        {
            if (net.Volumes[n] > 0)
            {
                march.Fill(n, _contents[n], _temperatures[n], net.Volumes[n]);
            }
        }

        for (var c = 0; c < _zones.Length; c++)
        {
            var n = net.Cylinders[c];
            march.FillCylinder(c, _contents[n], _temperatures[n], _zones[c]);
        }

        march.SetShaft(_shaft);
        for (var p = 0; p < _pipes.Length; p++)
        {
            _pipes[p].Restore(march.Pipes[p]);
        }
    }
}

/// <summary>Zones of a cylinder that burns at crank angle 0.</summary>
internal readonly record struct ZoneState(
    ZoneMode Mode,
    Mixture Unburned,
    double UnburnedTemperature,
    double BurnedTemperature,
    double Pressure,
    double IgnitionPressure,
    double IgnitionVolume,
    double WoschniReference)
{
    public static ZoneState Of(Zones z, double pressure) => new(
        z.Mode, z.Unburned, z.UnburnedTemperature, z.BurnedTemperature, pressure, z.IgnitionPressure, z.IgnitionVolume, z.WoschniReference);
}
