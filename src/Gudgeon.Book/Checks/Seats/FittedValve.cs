using Gudgeon.Book.Checks.ValveTrain;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Checks.Seats;

/// <summary>One valve on its seat and in its guide. NaN, and what is wanted noted in the view, where something is not known.</summary>
/// <param name="view">Where it is read and worked.</param>
/// <param name="index">The valve.</param>
internal sealed class FittedValve(View view, string index)
{
    private const double SteelModulus = 206e9;
    private const double SteelDensity = 7850;
    private const double UsualSeatAngle = Math.PI / 4;

    private double SeatAngle => view.AmountOr(Valve.SeatAngle, UsualSeatAngle, index);

    private double Stem => view.Amount(Valve.StemDiameter, index);

    /// <summary>Contact band on the seat.</summary>
    public SeatContact Contact() => view.Work(ValveSeat.Contact, view.Amount(Valve.HeadDiameter, index), view.Amount(Valve.SeatWidth, index), SeatAngle);

    /// <summary>Pressure on the seat, Pa.</summary>
    /// <param name="pressure">Cylinder pressure above that of the port, Pa.</param>
    public double SeatPressure(double pressure) => view.Work(ValveSeat.Pressure, view.Amount(Valve.HeadDiameter, index), view.Amount(Valve.SeatWidth, index), SeatAngle, new FittedSpring(view, index).Loads().Seat, pressure).Pressure;

    /// <summary>Greatest pressure of the engine run above the air outside, Pa, and its speed, rad/s.</summary>
    public static (double Pressure, double Speed) Greatest(View view) => view.Duty()?.PeakGauge ?? (double.NaN, double.NaN);

    /// <summary>Stem clearance cold, m.</summary>
    public double Clearance() => view.Work(StemGuide.Clearance, view.Amount(Guide.Bore, index), Stem);

    /// <summary>Stem clearance at running temperature, m.</summary>
    public double ClearanceHot() => view.Work(
        StemGuide.ClearanceHot,
        view.Amount(Guide.Bore, index),
        Stem,
        view.Amount(Guide.Temperature, index),
        view.Amount(Guide.StemTemperature, index),
        view.Amount(Guide.Expansion, index),
        view.Amount(Guide.StemExpansion, index));

    /// <summary>Greatest tension in the stem, counted as steel, Pa.</summary>
    public double StemTension()
    {
        var loads = new FittedSpring(view, index).Loads();
        return view.Work(StemGuide.Stress, Stem, loads.Open, loads.Seat, SeatingSpeed(), SteelModulus, SteelDensity).Greatest;
    }

    /// <summary>Speed at which the valve meets its seat: as known, else by the ramp of the cam at the rev limit, m/s.</summary>
    private double SeatingSpeed() => view.AmountIf(Valve.SeatingSpeed, index) ?? (view.Knows(Cam.RampHeight, index) && view.Knows(Cam.RampAngle, index)
        ? view.Work(StemGuide.SeatingSpeed, view.Amount(Cam.RampHeight, index), view.Amount(Cam.RampAngle, index), view.Amount(Engine.RevLimit), view.AmountOr(Follower.Ratio, 1, index))
        : view.Amount(Valve.SeatingSpeed, index));
}
