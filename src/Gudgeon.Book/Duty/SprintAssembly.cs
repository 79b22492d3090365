using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Weather;
using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Book.Duty;

/// <summary>Puts the standing-start run together from a snapshot and the torque curve of its engine run.</summary>
public static class SprintAssembly
{
    /// <summary>The run; null when something needed is not known, and then the view's trace says what.</summary>
    public static SprintSpec? Build(View view, double finish)
    {
        var duty = view.Duty(whole: true);
        var engine = duty is null ? null : new SprintEngine(
            [.. duty.Points.Select(p => p.Speed)],
            [.. duty.Points.Select(p => p.Figures!.Torque)],
            view.Amount(Driveline.LaunchSpeed),
            view.Amount(Engine.RevLimit),
            view.AmountOr(Crank.Inertia, 0));
        var driveline = new SprintDriveline(
            view.Amount(Driveline.Primary),
            view.Table(Driveline.Gears)?["ratio"] ?? [],
            view.Amount(Driveline.Final),
            view.Amount(Driveline.Efficiency),
            view.Amount(Driveline.ShiftTime),
            view.Knows(Clutch.Faces) ? Checks.Driveline.ClutchCheck.Capacity(view) / view.Amount(Driveline.Primary) : double.PositiveInfinity);
        var mass = view.Amount(Vehicle.Mass) + view.Amount(Vehicle.RiderMass);
        var machine = new SprintBody(mass, view.Amount(Vehicle.CentreAhead), view.Amount(Vehicle.CentreHeight));
        var wheels = new SprintWheels(
            view.Amount(Vehicle.Wheelbase),
            view.Amount(Vehicle.TyreCircumference),
            RearInertia: view.AmountOr(Vehicle.RearWheelInertia, 0.7),
            FrontInertia: view.AmountOr(Vehicle.FrontWheelInertia, 0.5),
            RollingResistance: view.AmountOr(Vehicle.RollingResistance, 0.015),
            WheelieBar: view.AmountOr(Vehicle.WheelieBar, 0));
        var air = view.Work(
            MoistAir.Density,
            view.AmountOr(Weather.Temperature, 298.15),
            view.AmountOr(Weather.Pressure, 101325),
            view.AmountOr(Weather.Humidity, 0.3),
            400e-6);
        var drag = new SprintAir(
            air.Density,
            view.Amount(Vehicle.DragArea),
            view.AmountOr(Vehicle.DragHeight, 0.6),
            view.AmountOr(Weather.HeadWind, 0));
        var strip = new SprintStrip(view.Amount(Vehicle.TyreFriction), Finish: finish);
        return engine is null || view.Trace.Missing.Any()
            ? null
            : new SprintSpec { Engine = engine, Driveline = driveline, Machine = machine, Wheels = wheels, Air = drag, Strip = strip };
    }
}
