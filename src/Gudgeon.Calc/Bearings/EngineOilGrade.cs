using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Bearings;

/// <summary>High-temperature grades of SAE J300.</summary>
public enum OilGrade
{
    /// <summary>SAE 16.</summary>
    Sae16,

    /// <summary>SAE 20.</summary>
    Sae20,

    /// <summary>SAE 30.</summary>
    Sae30,

    /// <summary>SAE 40 in 0W-40, 5W-40 and 10W-40 oils.</summary>
    Sae40Light,

    /// <summary>SAE 40 in 15W-40, 20W-40, 25W-40 and straight oils.</summary>
    Sae40,

    /// <summary>SAE 50.</summary>
    Sae50,

    /// <summary>SAE 60.</summary>
    Sae60,
}

/// <summary>Winter grades of SAE J300.</summary>
public enum WinterGrade
{
    /// <summary>0W.</summary>
    W0,

    /// <summary>5W.</summary>
    W5,

    /// <summary>10W.</summary>
    W10,

    /// <summary>15W.</summary>
    W15,

    /// <summary>20W.</summary>
    W20,

    /// <summary>25W.</summary>
    W25,
}

/// <summary>Hot limits of a grade.</summary>
/// <param name="Least">Least kinematic viscosity at 100 °C, m²/s.</param>
/// <param name="Below">Kinematic viscosity at 100 °C that it stays under, m²/s.</param>
/// <param name="HighShear">Least dynamic viscosity at 150 °C and high shear, Pa·s.</param>
public readonly record struct HotGradeLimits(
    [Quantity("least kinematic viscosity at 100 °C", Dimension.KinematicViscosity, "mm²/s")] double Least,
    [Quantity("kinematic viscosity at 100 °C below", Dimension.KinematicViscosity, "mm²/s")] double Below,
    [Quantity("least high-shear viscosity at 150 °C", Dimension.DynamicViscosity, "mPa·s")] double HighShear);

/// <summary>Cold limits of a grade.</summary>
/// <param name="Cranking">Greatest cranking viscosity, Pa·s.</param>
/// <param name="CrankingTemperature">At this temperature, K.</param>
/// <param name="Pumping">Greatest pumping viscosity, Pa·s.</param>
/// <param name="PumpingTemperature">At this temperature, K.</param>
public readonly record struct ColdGradeLimits(
    [Quantity("greatest cranking viscosity", Dimension.DynamicViscosity, "mPa·s")] double Cranking,
    [Quantity("cranking temperature", Dimension.Temperature, "°C")] double CrankingTemperature,
    [Quantity("greatest pumping viscosity", Dimension.DynamicViscosity, "mPa·s")] double Pumping,
    [Quantity("pumping temperature", Dimension.Temperature, "°C")] double PumpingTemperature);

/// <summary>Viscosity limits of engine oil grades.</summary>
public static class EngineOilGrade
{
    /// <summary>Hot viscosity limits of a grade.</summary>
    /// <param name="grade">Grade.</param>
    [Formula("engine oil grade limits", "table", "SAE J300, January 2015", Caution = "The 1999 edition has wider limits: SAE 20 from 5.6 mm²/s, and 2.9 mPa·s for the light 40 grades.")]
    public static HotGradeLimits Hot(
        [Quantity("grade", Dimension.Number)] OilGrade grade)
    {
        var (least, below, shear) = grade switch
        {
            OilGrade.Sae16 => (6.1, 8.2, 2.3),
            OilGrade.Sae20 => (6.9, 9.3, 2.6),
            OilGrade.Sae30 => (9.3, 12.5, 2.9),
            OilGrade.Sae40Light => (12.5, 16.3, 3.5),
            OilGrade.Sae40 => (12.5, 16.3, 3.7),
            OilGrade.Sae50 => (16.3, 21.9, 3.7),
            _ => (21.9, 26.1, 3.7),
        };
        return new HotGradeLimits(least * 1e-6, below * 1e-6, shear * 1e-3);
    }

    /// <summary>Cold viscosity limits of a winter grade.</summary>
    /// <param name="grade">Winter grade.</param>
    [Formula("winter oil grade limits", "table", "SAE J300, January 2015")]
    public static ColdGradeLimits Cold(
        [Quantity("winter grade", Dimension.Number)] WinterGrade grade)
    {
        var (cranking, celsius) = grade switch
        {
            WinterGrade.W0 => (6.2, -35),
            WinterGrade.W5 => (6.6, -30),
            WinterGrade.W10 => (7.0, -25),
            WinterGrade.W15 => (7.0, -20),
            WinterGrade.W20 => (9.5, -15),
            _ => (13.0, -10),
        };
        return new ColdGradeLimits(cranking, celsius + 273.15, 60, celsius - 5 + 273.15);
    }
}
