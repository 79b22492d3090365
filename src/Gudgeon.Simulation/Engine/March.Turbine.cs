using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>
/// The exhaust-driven shaft. Its speed stands still within a cycle and is moved between cycles until turbine and compressor
/// do the same work: the steady state, without the minutes in which a real shaft gets there.
/// </summary>
internal sealed partial class March
{
    // Compressor work goes about with the cube of the speed; the turbine gives more as the engine breathes more.
    private const double ShaftStep = 0.25, LargestShaftStep = 0.15, FirstShaftShare = 0.6;

    // A wastegate with a narrow band answers so strongly that the full step swings to and fro about the balance.
    private const double Swing = 0.01;

    private TurbineSpec? _turbine;
    private double _shaftStep = ShaftStep;
    private double _imbalance;

    /// <summary>Relative change that the shaft's speed wants after the last cycle; 0 for a crank-driven blower.</summary>
    public double ShaftChange { get; private set; }

    /// <summary>Puts the shaft to a speed, rad/s, and takes the compressor's line there.</summary>
    public void SetShaft(double speed)
    {
        if (_turbine is null)
        {
            return;
        }

        var map = ((CentrifugalInduction)_spec.Intake.Induction!).Map;
        State[_at.Shaft] = BlowerSpeed = speed;
        Line = map.At(BlowerSpeed * Math.Sqrt(map.ReferenceTemperature / _spec.Ambient.Temperature));
    }

    private void FlowTurbine(in Link link, double[] f)
    {
        var (n, turbine) = (link.From, _turbine!);
        var flow = Math.Max(0, Through(n, link.To, turbine.ThroatArea, 0));
        Move(flow, link, f);
        if (flow == 0)
        {
            return;
        }

        var gamma = Nodes.Gamma[n];
        var ideal = Nodes.HeatCapacity[n] * Nodes.Temperature[n] * (1 - Math.Pow(Nodes.Pressure[link.To] / Nodes.Pressure[n], (gamma - 1) / gamma));
        var ratio = 0.5 * turbine.RotorDiameter * BlowerSpeed / Math.Sqrt(2 * ideal) / turbine.BestSpeedRatio;
        var power = flow * ideal * turbine.Efficiency * Math.Max(0, ratio * (2 - ratio));
        f[(PerNode * link.To) + Energy] -= power;
        f[_at.TurbineWork] = power;
        f[_at.OutletMass] += flow;
        f[_at.OutletTemperature] += flow * Nodes.Temperature[n];
    }

    private void FlowWastegate(in Link link, double[] f)
    {
        var over = (Nodes.Pressure[_net.Plenum] - _spec.Ambient.Pressure - _turbine!.WastegateOpening) / _turbine.WastegateBand;
        if (over <= 0)
        {
            return;
        }

        var flow = Math.Max(0, Through(link.From, link.To, link.Area * Math.Min(1, over), 0));
        Move(flow, link, f);
        f[_at.WastegateMass] = flow;
        f[_at.OutletMass] += flow;
        f[_at.OutletTemperature] += flow * Nodes.Temperature[link.From];
    }

    /// <summary>Moves the shaft towards the speed at which the turbine's work is the compressor's.</summary>
    private void SettleShaft()
    {
        if (_turbine is null)
        {
            return;
        }

        var (given, taken) = (State[_at.TurbineWork] * _spec.Intake.Induction!.MechanicalEfficiency, State[_at.BlowerWork]);
        var imbalance = (given - taken) / Math.Max(given, taken);
        _shaftStep *= imbalance * _imbalance < -Swing ? 0.5 : 1;
        _imbalance = imbalance;
        ShaftChange = ShaftStep * Math.Abs(imbalance);
        SetShaft(BlowerSpeed * (1 + Math.Clamp(_shaftStep * imbalance, -LargestShaftStep, LargestShaftStep)));
    }
}
