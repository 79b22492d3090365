using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Boost;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>A duct of the blower in the air that a point of the engine run has there. What is not known, as without a run, reads as NaN.</summary>
/// <param name="view">The values.</param>
/// <param name="name">Which duct.</param>
public sealed class FittedDuct(View view, string name)
{
    /// <summary>Which duct.</summary>
    public string Name => name;

    /// <summary>Where it is; null when that is not known.</summary>
    public string? Place { get; } = view.Word(AirDuct.Place, name);

    /// <summary>The ducts of a book, as the air goes.</summary>
    public static IReadOnlyList<FittedDuct> All(View view) =>
        [.. Instances.Named(view, AirDuct.Subject).Where(n => n.Length > 0).Select(n => new FittedDuct(view, n)).OrderBy(d => DuctPlaces.All.TakeWhile(p => p != d.Place).Count())];

    /// <summary>Air of the blower at a point of the run, kg/s.</summary>
    public static double Flow(PointFigures? figures) => figures?.Blower?.Flow ?? double.NaN;

    /// <summary>Speed of the air, m/s.</summary>
    public double Speed(PointFigures? figures)
    {
        var bore = view.Amount(AirDuct.Bore, name);
        return view.Work(DuctFlow.Velocity, Flow(figures), Density(figures), Math.PI / 4 * bore * bore);
    }

    /// <summary>Speed that is allowed, m/s.</summary>
    public double SpeedAllowed() => Place switch
    {
        null => double.NaN,
        DuctPlaces.BeforeBlower => view.Limit("duct-speed.before", Dimension.Speed, "m/s", 60),
        _ => view.Limit("duct-speed.behind", Dimension.Speed, "m/s", 80),
    };

    /// <summary>Mach number of the air.</summary>
    public double Mach(PointFigures? figures) => view.Work(DuctFlow.Mach, Speed(figures), Air(figures).Temperature);

    /// <summary>Pressure that its bends, steps and ends take, Pa.</summary>
    public double Loss(PointFigures? figures) => view.Work(DuctFlow.Loss, Density(figures), Speed(figures), view.AmountOr(AirDuct.Loss, 0, name));

    private double Density(PointFigures? figures)
    {
        var (pressure, temperature) = Air(figures);
        return view.Work(Compressor.ChargeDensity, pressure, temperature, PhysicalConstants.DryAirGasConstant);
    }

    private (double Pressure, double Temperature) Air(PointFigures? figures) => (Place, figures?.Blower) switch
    {
        (DuctPlaces.BeforeBlower, { } blower) => (blower.MeanInletPressure, EngineAssembly.Ambient(view).Temperature),
        (DuctPlaces.BehindBlower, { } blower) => (blower.MeanInletPressure * blower.PressureRatio, blower.DeliveryTemperature),
        (DuctPlaces.BehindCooler, { }) => (EngineAssembly.Ambient(view).Pressure + figures!.Boost, figures.ChargeTemperature),
        _ => (double.NaN, double.NaN),
    };
}
