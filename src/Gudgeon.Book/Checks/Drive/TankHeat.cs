using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Cooling;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>An oil tank that gives its heat to the air. What is not known reads as NaN.</summary>
/// <param name="view">The values.</param>
public sealed class TankHeat(View view)
{
    /// <summary>Density and heat of hot oil, kg/m³ and J/(kg·K): common practice, no source.</summary>
    private const double OilDensity = 820, OilHeat = 2100;

    /// <summary>Prandtl number of air: from memory; 130 °C, the hottest that oil is let become: common practice, no source.</summary>
    private const double Prandtl = 0.7, Gravity = PhysicalConstants.StandardGravity, UsualLimit = 403.15;
    private const int Rounds = 40;

    /// <summary>Heat that goes into the oil at full load, W: its share of friction and what the blower's drive loses.</summary>
    public double Full()
    {
        if (view.Duty() is not { Points.Count: > 0 } duty)
        {
            return double.NaN;
        }

        var (speed, top) = duty.Figures.Last();
        var friction = top.Torque * top.FrictionMep / top.Bmep * speed;
        return (view.AmountOr(OilTank.HeatShare, 0.5) * friction) + ((1 - view.AmountOr(Blower.DriveEfficiency, 1)) * (top.Blower?.DrivePower ?? 0));
    }

    /// <summary>Mean heat of runs and the time between them, W.</summary>
    public double Mean() => Full() * Math.Min(1, view.Amount(OilTank.RunTime) / view.Amount(OilTank.Rest));

    /// <summary>What one run adds to the oil's temperature, K: no heat leaves it meanwhile.</summary>
    public double Rise() => Full() * view.Amount(OilTank.RunTime) / (view.Amount(OilTank.Volume) * OilDensity * OilHeat);

    /// <summary>Temperature of the oil that gives off a heat, W, at an air speed, m/s, K; the wall is as hot as the oil.</summary>
    public double Temperature(double heat, double airSpeed)
    {
        var air = view.Amount(Weather.Temperature);
        var rise = 60.0;
        for (var i = 0; i < Rounds; i++)
        {
            rise = 0.5 * (rise + (heat / Conductance(air, rise, airSpeed)));
        }

        return air + rise;
    }

    /// <summary>Hottest oil of the day: the mean of runs and rests, and a run on top of it, K.</summary>
    public double Hottest() => Temperature(Mean(), view.Amount(OilTank.AirSpeed)) + Rise();

    /// <summary>Hottest that it may be, K.</summary>
    public double Limit() => view.AmountOr(OilTank.Limit, UsualLimit);

    /// <summary>Heat for a kelvin between wall and air, W/K.</summary>
    public double Conductance(double air, double rise, double airSpeed)
    {
        var coefficient = Coefficient(air, rise, airSpeed);
        var plain = view.Amount(OilTank.Area);
        if (double.IsNaN(coefficient) || !view.Knows(OilTank.Fins))
        {
            return coefficient * plain;
        }

        var (height, thickness, length) = (view.Amount(OilTank.FinHeight), view.Amount(OilTank.FinThickness), view.Amount(OilTank.Length));
        var efficiency = double.IsNaN(height + thickness) ? double.NaN : AirCooling.Fin(coefficient, view.AmountOr(OilTank.FinConductivity, 170), thickness, height);
        return coefficient * (plain + (view.Count(OilTank.Fins) * length * ((2 * height * efficiency) - thickness)));
    }

    /// <summary>Heat transfer coefficient of walls and fins, W/(m²·K): wind along them and the rise of warm air, added as cubes.</summary>
    public double Coefficient(double air, double rise, double airSpeed)
    {
        var film = air + (rise / 2);
        var (length, height) = (view.Amount(OilTank.Length), view.Amount(OilTank.Height));
        if (double.IsNaN(film + length + height))
        {
            return double.NaN;
        }

        var (conductivity, density) = (AirTransport.Conductivity(film), view.AmountOr(Weather.Pressure, 101_325) / (PhysicalConstants.DryAirGasConstant * film));
        var kinematic = AirTransport.Viscosity(film) / density;
        var wind = AirCooling.Plate(airSpeed * length / kinematic, Prandtl) * conductivity / length;
        var still = AirCooling.Upright(Gravity / film * Math.Max(0, rise) * Math.Pow(height, 3) * Prandtl / (kinematic * kinematic), Prandtl) * conductivity / height;
        return Math.Cbrt((wind * wind * wind) + (still * still * still));
    }
}
