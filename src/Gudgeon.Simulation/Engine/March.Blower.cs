using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>The crank-driven blower.</summary>
internal sealed partial class March
{
    private double _flowScale;
    private double _displacementRate;

    /// <summary>Speed line of a centrifugal compressor at this point's corrected speed (ambient temperature); null for anything else.</summary>
    public CompressorLine? Line { get; private set; }

    /// <summary>Speed of impeller or rotors, rad/s.</summary>
    public double BlowerSpeed { get; private set; }

    private void PrepareBlower()
    {
        if (_net.Compressor < 0)
        {
            return;
        }

        var induction = _spec.Intake.Induction!;
        var shaft = _omega * induction.DriveRatio * (1 - induction.BeltSlip);
        switch (induction)
        {
            case CentrifugalInduction centrifugal:
                var map = centrifugal.Map;
                _turbine = centrifugal.Turbine;
                BlowerSpeed = _turbine is null ? shaft * centrifugal.StepUp : FirstShaftShare * map.Lines[^1].CorrectedSpeed * Math.Sqrt(_spec.Ambient.Temperature / map.ReferenceTemperature);
                Line = map.At(BlowerSpeed * Math.Sqrt(map.ReferenceTemperature / _spec.Ambient.Temperature));
                _flowScale = Math.Sqrt(map.ReferenceTemperature) / map.ReferencePressure;
                break;
            case PositiveDisplacementInduction displacement:
                BlowerSpeed = shaft;
                _displacementRate = displacement.Displacement * shaft / (2 * Math.PI);
                break;
        }
    }

    private void FlowCompressor(in Link link, double[] f)
    {
        var (a, b) = (link.From, link.To);
        var reading = Line!.Against(Nodes.Pressure[b] / Nodes.Pressure[a]);
        var flow = reading.CorrectedFlow * _flowScale * Nodes.Pressure[a] / Math.Sqrt(Nodes.Temperature[a]);
        var rise = Nodes.Temperature[a] * reading.TemperatureRiseRatio;
        Move(flow, link, f);
        Work(flow * Nodes.HeatCapacity[a] * rise, flow, a, b, f);
        f[_at.BlowerRise] = flow * rise;
        f[_at.BeyondSurge] = reading.Position < 0 ? 1 : 0;
    }

    /// <summary>
    /// Takes in a fixed volume per revolution, leaks back through its clearances, compresses by its built-in ratio and then
    /// opens to the delivery pressure: ideal work p2 V/r − p1 V + (p1 r^γ V/r − p1 V)/(γ − 1).
    /// </summary>
    private void FlowDisplacement(in Link link, double[] f)
    {
        var blower = (PositiveDisplacementInduction)_spec.Intake.Induction!;
        var (a, b) = (link.From, link.To);
        var (p1, p2, gamma) = (Nodes.Pressure[a], Nodes.Pressure[b], Nodes.Gamma[a]);
        var leak = p2 > p1 ? FlowFunction.MassFlow(blower.LeakArea, p2, Nodes.RT[b], Nodes.Gamma[b], p1) : 0;
        var flow = (p1 / Nodes.RT[a] * _displacementRate) - leak;
        Move(flow, link, f);
        var r = blower.InternalCompression;
        var ideal = (p2 / r) - p1 + (p1 * (Math.Pow(r, gamma - 1) - 1) / (gamma - 1));
        Work(Math.Max(0, ideal) * _displacementRate / blower.Efficiency, flow, a, b, f);
    }

    private void Work(double power, double flow, int a, int b, double[] f)
    {
        f[(PerNode * b) + Energy] += power;
        f[_at.BlowerWork] += power;
        f[_at.BlowerMass] = flow;
        f[_at.BlowerInletTemperature] = flow * Nodes.Temperature[a];
    }
}
