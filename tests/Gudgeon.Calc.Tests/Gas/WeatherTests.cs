using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Weather;

namespace Gudgeon.Calc.Tests.Gas;

/// <summary>Round trips and orderings of the weather formulas.</summary>
public class WeatherTests
{
    [Fact]
    public void Altitude_comes_back_from_pressure_and_density() => Gen.Double[-1000, 10900].Sample(altitude =>
    {
        var air = StandardAtmosphere.At(altitude);
        Assert.Equal(altitude, StandardAtmosphere.PressureAltitude(air.Pressure), 1e-6);
        Assert.Equal(altitude, StandardAtmosphere.DensityAltitude(air.Density), 1e-6);
    });

    [Theory]
    [InlineData(11000)]
    [InlineData(20000)]
    public void Layers_meet(double altitude)
    {
        var (below, above) = (StandardAtmosphere.At(altitude - 1e-6), StandardAtmosphere.At(altitude + 1e-6));
        Assert.Equal(below.Pressure, above.Pressure, 1e-4);
        Assert.Equal(below.Temperature, above.Temperature, 1e-6);
    }

    [Fact]
    public void Dew_point_is_below_the_air_and_saturates_its_vapour() => Gen.Select(Gen.Double[240, 320], Gen.Double[0.02, 1]).Sample((t, rh) =>
    {
        var air = MoistAir.Humidity(t, 101325, rh);
        Assert.True(air.DewPoint <= t + 1e-6);
        Assert.Equal(air.VapourPressure, WaterVapour.SaturationOverWaterOrIce(air.DewPoint), 1e-6 * air.VapourPressure);
    });

    [Fact]
    public void Two_saturation_formulas_agree_over_water() => Gen.Double[273.17, 373].Sample(t =>
    {
        var ratio = WaterVapour.SaturationOverWaterOrIce(t) / WaterVapour.Saturation(t);
        Assert.InRange(ratio, 1 - 5e-4, 1 + 5e-4);
    });

    [Fact]
    public void Saturation_over_ice_and_over_water_meet_at_the_triple_point() =>
        Assert.Equal(WaterVapour.SaturationOverWaterOrIce(273.15999), WaterVapour.SaturationOverWaterOrIce(273.16001), 0.1);

    [Fact]
    public void Moist_air_by_the_metrologists_is_close_to_an_ideal_gas() => Gen.Select(Gen.Double[288, 300], Gen.Double[6e4, 1.1e5], Gen.Double[0.01, 1]).Sample((t, p, rh) =>
    {
        var ratio = MoistAir.Density(t, p, rh).Density / MoistAir.Humidity(t, p, rh).Density;
        Assert.InRange(ratio, 1, 1.001);
    });

    [Fact]
    public void Humid_air_is_thinner() => Gen.Select(Gen.Double[275, 320], Gen.Double[7e4, 1.1e5], Gen.Double[0.1, 1]).Sample((t, p, rh) =>
        Assert.True(MoistAir.DensityAltitude(t, p, rh) > MoistAir.DensityAltitude(t, p, 0)));

    [Fact]
    public void Corrections_grow_with_heat_and_fall_with_pressure()
    {
        foreach (var rule in Enum.GetValues<CorrectionRule>())
        {
            var factor = PowerCorrection.Factor(rule, 298.15, 99e3);
            Assert.True(PowerCorrection.Factor(rule, 303.15, 99e3) > factor);
            Assert.True(PowerCorrection.Factor(rule, 298.15, 100e3) < factor);
        }
    }

    [Fact]
    public void Vapour_as_high_as_the_air_pressure_is_refused() =>
        Assert.Throws<FormulaDomainException>(() => MoistAir.Humidity(363.15, 50e3, 1));
}
