using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Vehicle;

namespace Gudgeon.Calc.Tests.Vehicle;

public class TyreAndGearingTests
{
    /// <summary>The series behind the table: 45 kg at index 0, ten times the load 80 steps on.</summary>
    [Fact]
    public void LoadIndexRisesAndFollowsItsSeries()
    {
        for (var index = 0; index <= 100; index++)
        {
            var series = 45 * Math.Pow(10, index / 80.0);
            var share = index is >= 43 and <= 90 ? 0.015 : 0.02;
            Assert.Equal(series, TyreRating.Load(index), share * series);
            Assert.True(index == 0 || TyreRating.Load(index) > TyreRating.Load(index - 1));
        }
    }

    [Fact]
    public void SpeedSymbolsRise()
    {
        var speeds = Enum.GetValues<SpeedSymbol>().Select(TyreRating.Speed).ToArray();
        Assert.Equal(speeds.Order(), speeds);
        Assert.Equal(speeds.Length, speeds.Distinct().Count());
    }

    [Fact]
    public void LoadIsWholeBelowTheFirstReductionAndRefusedAboveTheRange()
    {
        Assert.Equal(1, TyreRating.LoadAtSpeed(HighSpeedSymbol.V, 200 / 3.6));
        Assert.Throws<FormulaDomainException>(() => TyreRating.LoadAtSpeed(HighSpeedSymbol.V, 250 / 3.6));
        Assert.Equal(0.85, TyreRating.LoadAtSpeed(HighSpeedSymbol.W, 270 / 3.6), 1e-12);
    }

    [Fact]
    public void EngineSpeedAndFinalRatioUndoRoadSpeed() => Gen.Select(Gen.Double[100, 1500], Gen.Double[1, 3], Gen.Double[1, 4], Gen.Double[1.7, 2.2]).Sample((engine, gear, final, circumference) =>
    {
        var speed = Gearing.RoadSpeed(engine, 1.6, gear, final, circumference);
        Assert.Equal(engine, Gearing.EngineSpeed(speed, 1.6, gear, final, circumference), 1e-9 * engine);
        Assert.Equal(final, Gearing.FinalRatio(engine, speed, 1.6, gear, circumference), 1e-9);
        Assert.Equal(1.6 * gear * final, Gearing.TrapRatio(engine, speed, circumference), 1e-9);
        Assert.Equal(0, TyreSize.Slip(engine / (1.6 * gear * final), circumference, speed), 1e-12);
    });

    [Fact]
    public void ThrustTimesSpeedIsPowerTimesEfficiency() => Gen.Select(Gen.Double[10, 300], Gen.Double[100, 1500], Gen.Double[3, 15]).Sample((torque, engine, ratio) =>
    {
        var thrust = Gearing.Thrust(torque, engine, ratio, 1.98, 0.9);
        Assert.Equal(0.9 * torque * engine, thrust.Force * thrust.Speed, 1e-9 * torque * engine);
    });

    /// <summary>Weather-service form against a moist ideal gas turned into an altitude of the 1976 standard atmosphere: 25 ft.</summary>
    [Fact]
    public void DensityAltitudeAgreesWithTheStandardAtmosphere()
    {
        var altitude = AirDensity.DensityAltitude(303.15, 293.15, 96512.115).Altitude;
        Assert.Equal(1.09894 / 1.225, AirDensity.AtAltitude(altitude).DensityRatio, 0.001);
    }

    [Fact]
    public void StandardDayIsAtSeaLevel()
    {
        Assert.Equal(0, AirDensity.DensityAltitude(288.15, 223.15, 101325).Altitude, 10.0);
        Assert.Equal(0, AirDensity.DensityAltitudeRule(0, 288.15, 0), 1e-9);
    }

    [Fact]
    public void DewPointAboveTheAirTemperatureIsRefused() =>
        Assert.Throws<FormulaDomainException>(() => AirDensity.DensityAltitude(293.15, 294.15, 101325));

    /// <summary>Curve through the sanctioning body's factors and cube-root law differ by half a per cent at most.</summary>
    [Theory]
    [InlineData(2692)]
    [InlineData(5000)]
    [InlineData(5785)]
    public void RacingRuleAgreesWithTheCubeRootLaw(double feet) =>
        Assert.Equal(AirDensity.AtAltitude(feet * 0.3048).TimeFactor, AirDensity.TimeAtAltitude(feet * 0.3048, 1).Factor, 0.005);
}
