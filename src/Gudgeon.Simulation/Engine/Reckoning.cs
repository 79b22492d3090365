using Gudgeon.Calc.Boost;
using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>Turns the sums and notes of the last cycle into figures.</summary>
internal sealed class Reckoning(MarchSetup setup, March march, double speed, CycleBalance balance)
{
    private readonly double[] _y = march.State;
    private readonly MarchLayout _at = march.Layout;
    private readonly Network _net = setup.Network;
    private readonly double _cycleTime = 4 * Math.PI / speed;
    private readonly double _swept = march.Tables.Sum(t => t.Geometry.SweptVolume);

    public PointFigures Figures()
    {
        var cylinders = march.Tables.Select((_, c) => Cylinder(c)).ToArray();
        var (net, gross) = (Mean(cylinders, c => c.NetImep), Mean(cylinders, c => c.GrossImep));
        var friction = Friction(cylinders);
        var blower = Blower();
        var torque = ((net - friction) * _swept / (4 * Math.PI)) - ((blower?.DrivePower ?? 0) / speed);
        var fuel = Fuel();
        var air = Air();
        return new PointFigures
        {
            Torque = torque,
            Power = torque * speed,
            Boost = PlenumMean(_at.PlenumPressure, setup.Spec.Ambient.Pressure) - setup.Spec.Ambient.Pressure,
            AirFlow = air / _cycleTime,
            FuelFlow = fuel / _cycleTime,
            VolumetricEfficiency = air / (setup.AmbientDensity * _swept),
            GrossImep = gross,
            NetImep = net,
            PumpingMep = net - gross,
            FrictionMep = friction,
            Bmep = torque * 4 * Math.PI / _swept,
            Bsfc = torque > 0 && fuel > 0 ? fuel / _cycleTime / (torque * speed) : null,
            Lambda = fuel > 0 ? setup.Spec.Lambda * air * setup.FuelPerAir / fuel : null,
            Burned50 = march.Burned50,
            ChargeTemperature = PlenumMean(_at.PlenumTemperature, setup.Spec.ImposedPorts?.InletTemperature ?? 0),
            ExhaustTemperature = _net.Imposed ? setup.Spec.ImposedPorts!.ExhaustTemperature : _y[_at.OutletTemperature] / _y[_at.OutletMass],
            ExhaustBackPressure = _net.Imposed ? 0 : (_y[_at.CollectorPressure] / _cycleTime) - setup.Spec.Ambient.Pressure,
            WallHeat = cylinders.Sum(c => c.WallHeat),
            BlowBy = MassOf(Network.Crankcase) / _cycleTime,
            Blower = blower,
            Cylinders = cylinders,
            Balance = balance,
        };
    }

    private double PlenumMean(int sum, double imposed) => _net.Imposed ? imposed : _y[sum] / _cycleTime;

    /// <summary>Air drawn from outside per cycle, kg; from the ports when they are imposed.</summary>
    private double Air() => -(_net.Imposed ? _net.Ports.Sum(AirOf) : AirOf(Network.Ambient));

    private double Fuel() => -(_net.Imposed ? _net.Ports.Sum(FuelOf) : FuelOf(Network.Tank));

    private double AirOf(int n) => _y[PerNode * n] + (setup.Gas.AirOfBurned * _y[(PerNode * n) + Burned]);

    private double FuelOf(int n) => _y[(PerNode * n) + Vapour] + _y[(PerNode * n) + Liquid] + (setup.Gas.FuelOfBurned * _y[(PerNode * n) + Burned]);

    private double MassOf(int n) => AirOf(n) + FuelOf(n);

    private double Mean(CylinderFigures[] cylinders, Func<CylinderFigures, double> of) =>
        cylinders.Select((c, i) => of(c) * march.Tables[i].Geometry.SweptVolume).Sum() / _swept;

    /// <summary>Chen–Flynn form with the mean of the cylinders' peak pressures.</summary>
    private double Friction(CylinderFigures[] cylinders)
    {
        var f = setup.Spec.Friction;
        var piston = march.Tables.Average(t => t.Geometry.Travel) * speed / Math.PI;
        return f.Constant + (f.PeakPressure * cylinders.Average(c => c.PeakPressure)) + (f.PistonSpeed * piston) + (f.PistonSpeedSquared * piston * piston);
    }

    private CylinderFigures Cylinder(int c)
    {
        var (record, swept) = (march.Record, march.Tables[c].Geometry.SweptVolume);
        var (peak, angle) = Peak(c);
        var net = _y[_at.Work(c)];
        var knock = _y[_at.Knock(c)];
        return new CylinderFigures
        {
            PeakPressure = peak,
            PeakPressureAngle = angle,
            GrossImep = Gross(c, net) / swept,
            NetImep = net / swept,
            TrappedMass = record.Trapped[c].Mass,
            ResidualFraction = record.Trapped[c].Residual,
            TrappedPressure = record.Trapped[c].Pressure,
            TrappedTemperature = record.Trapped[c].Temperature,
            InletReversal = record.Inlet[c].Reversed,
            ExhaustReversal = record.Exhaust[c].Reversed,
            PeakTemperature = record.Temperature[c].Take(march.Steps).Max(),
            KnockIntegral = knock,
            EndGasTemperature = record.EndGas[c],
            KnockValid = record.EndGas[c] <= 1050,
            WallHeat = _y[_at.Heat(c)] / _cycleTime,
        };
    }

    /// <summary>Work from bottom to bottom over the firing top: 540° to 180° of the cylinder's own angle.</summary>
    private double Gross(int c, double whole)
    {
        var (from, to) = (WorkAt(c, 540), WorkAt(c, 180));
        return to.Angle > from.Angle ? to.Work - from.Work : whole - (from.Work - to.Work);
    }

    /// <summary>Work since crank angle 0 where a cylinder stands at one of its own angles, and that crank angle.</summary>
    private (double Angle, double Work) WorkAt(int c, double ownAngle)
    {
        var angle = ValveArea.Wrap(ownAngle + setup.Spec.Cylinders[c].FiringAngle);
        var x = angle / 720 * march.Steps;
        var i = Math.Min((int)x, march.Steps - 1);
        var work = march.Record.Work[c];
        return (angle, work[i] + ((x - i) * (work[i + 1] - work[i])));
    }

    /// <summary>Peak pressure and its angle by the parabola through the three highest samples.</summary>
    private (double Pressure, double Angle) Peak(int c)
    {
        var (p, steps) = (march.Record.Pressure[c], march.Steps);
        var i = Array.IndexOf(p, p.Take(steps).Max());
        var (before, here, after) = (p[(i + steps - 1) % steps], p[i], p[(i + 1) % steps]);
        var curvature = before - (2 * here) + after;
        var shift = curvature < 0 ? 0.5 * (before - after) / curvature : 0;
        var angle = march.Tables[c].Angle[i] + (shift * 720 / steps);
        return (here - (0.25 * (before - after) * shift), angle > 360 ? angle - 720 : angle);
    }

    private BlowerFigures? Blower()
    {
        if (_net.Compressor < 0)
        {
            return null;
        }

        var mass = _y[_at.BlowerMass];
        var inlet = _y[_at.BlowerInletTemperature] / mass;
        var gasPower = _y[_at.BlowerWork] / _cycleTime;
        var ratio = _y[_at.DeliveryPressure] / _y[_at.AirboxPressure];
        var rise = _y[_at.BlowerWork] / (mass * march.Nodes.HeatCapacity[_net.Airbox]);
        var flow = mass / _cycleTime;
        var corrected = CorrectedFlow(flow, inlet);
        var turbine = setup.Spec.Intake.Induction is CentrifugalInduction { Turbine: not null }
            ? new TurbineFigures { Power = _y[_at.TurbineWork] / _cycleTime, WastegateShare = _y[_at.WastegateMass] / _y[_at.OutletMass] }
            : null;
        return new BlowerFigures
        {
            Speed = march.BlowerSpeed,
            Flow = flow,
            MeanInletPressure = _y[_at.AirboxPressure] / _cycleTime,
            PressureRatio = ratio,
            Efficiency = inlet * CompressorLine.Head(ratio) / rise,
            DeliveryTemperature = inlet + rise,
            Turbine = turbine,
            DrivePower = turbine is null ? gasPower / setup.Spec.Intake.Induction!.MechanicalEfficiency : 0,
            SurgeMargin = march.Line is { } line ? (line.SurgePressureRatio / ratio * (corrected / line.SurgeFlow)) - 1 : null,
            ChokeMargin = march.Line is { } same ? Compressor.ChokeMargin(corrected, same.ChokeFlow) : null,
            BeyondSurge = _y[_at.BeyondSurge] / _cycleTime,
            Surge = corrected <= march.Line?.SurgeFlow,
            Choke = corrected >= 0.9999 * march.Line?.ChokeFlow,
            Extrapolated = march.Line?.Extrapolated ?? false,
        };
    }

    private double CorrectedFlow(double flow, double inletTemperature) => setup.Spec.Intake.Induction is CentrifugalInduction { Map: var map }
        ? flow * Math.Sqrt(inletTemperature / map.ReferenceTemperature) / (_y[_at.AirboxPressure] / _cycleTime / map.ReferencePressure)
        : flow;
}
