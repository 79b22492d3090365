namespace Gudgeon.Calc.Gas;

/// <summary>Constants of gas calculation, SI.</summary>
public static class PhysicalConstants
{
    /// <summary>Molar gas constant, J/(mol·K): CODATA 2018, exact since the SI of 2019.</summary>
    public const double MolarGasConstant = 8.314462618;

    /// <summary>Pressure to which all entropies here refer, Pa: 1 bar, not 1 atm.</summary>
    public const double StandardPressure = 1e5;

    /// <summary>Temperature at which heats of formation, heating values and latent heats are given, K.</summary>
    public const double ReferenceTemperature = 298.15;

    /// <summary>Gas constant of dry air, J/(kg·K): ISO 2533:1975, R*/M.</summary>
    public const double DryAirGasConstant = 287.05287;

    /// <summary>Standard acceleration of free fall, m/s²: ISO 2533:1975.</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>Stefan-Boltzmann constant, W/(m²·K⁴): CODATA 2018.</summary>
    public const double StefanBoltzmann = 5.670374419e-8;
}
