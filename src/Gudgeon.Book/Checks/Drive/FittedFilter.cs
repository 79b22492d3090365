using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Boost;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gas;
using Gudgeon.Calc.ValveTrain;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>The air filter and what lies with it before the blower, in the air of the day. What is not known reads as NaN.</summary>
/// <param name="view">The values.</param>
public sealed class FittedFilter(View view)
{
    private static readonly double TestDensity = Compressor.ChargeDensity(FlowBench.StandardPressure, FlowBench.StandardTemperature);

    private readonly AmbientSpec _air = EngineAssembly.Ambient(view);

    /// <summary>Density of the air outside, kg/m³.</summary>
    public double Density() => view.Work(Compressor.ChargeDensity, _air.Pressure, _air.Temperature, PhysicalConstants.DryAirGasConstant);

    /// <summary>Air through the medium at a flow, kg/s, in m/s.</summary>
    public double Speed(double flow) => view.Work(DuctFlow.Velocity, flow, Density(), view.Amount(AirFilter.Area));

    /// <summary>Air that the medium allows through it, m/s.</summary>
    public double SpeedAllowed() => view.AmountOr(AirFilter.FaceSpeed, 1.5);

    /// <summary>Pressure that it takes at a flow, kg/s, in Pa.</summary>
    public double Drop(double flow) => view.Work(FilterFlow.Drop, Speed(flow), TestSpeed(), view.Amount(AirFilter.TestDrop), Linear, Viscosity(), Density() / TestDensity);

    /// <summary>Pressure that it may take, Pa.</summary>
    public double DropAllowed() => view.Limit("filter-drop.max", Dimension.Pressure, "kPa", 1.5e3);

    /// <summary>Area of the medium that a flow, kg/s, wants for the allowed speed, m².</summary>
    public double AreaForSpeed(double flow) => view.Work(DuctFlow.Area, flow, Density(), SpeedAllowed());

    /// <summary>Area of the medium at which a flow, kg/s, takes the allowed pressure, m².</summary>
    public double AreaForDrop(double flow) =>
        view.Work(DuctFlow.Area, flow, Density(), view.Work(FilterFlow.Velocity, DropAllowed(), TestSpeed(), view.Amount(AirFilter.TestDrop), Linear, Viscosity(), Density() / TestDensity));

    /// <summary>Effective area of filter and ducts before the blower at a point of the run, m²: of the nozzle that takes as much pressure.</summary>
    public double EffectiveArea(PointFigures? figures)
    {
        var flow = FittedDuct.Flow(figures);
        var drop = Drop(flow) + FittedDuct.All(view).Where(d => d.Place == DuctPlaces.BeforeBlower).Sum(d => d.Loss(figures));
        return view.Work(FlowBench.EffectiveArea, flow / Density(), drop, _air.Pressure, _air.Temperature);
    }

    private double Linear => view.AmountOr(AirFilter.Linear, 0.5);

    private double TestSpeed() => view.Amount(AirFilter.TestFlow) / (view.AmountIf(AirFilter.TestArea) ?? view.Amount(AirFilter.Area));

    private double Viscosity() => view.Work(AirTransport.Viscosity, _air.Temperature) / AirTransport.Viscosity(FlowBench.StandardTemperature);
}
