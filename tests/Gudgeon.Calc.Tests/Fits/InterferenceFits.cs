using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Fits;

namespace Gudgeon.Calc.Tests.Fits;

public class InterferenceFits
{
    private static readonly Gen<double> Interference = Gen.Double[5e-6, 100e-6];
    private static readonly Gen<double> Diameter = Gen.Double[20e-3, 60e-3];
    private static readonly Gen<double> HubRatio = Gen.Double[1.2, 3];
    private static readonly Gen<double> BoreRatio = Gen.Double[0, 0.9];

    [Fact]
    public void Hub_and_shaft_give_way_by_the_interference() => Gen.Select(Interference, Diameter, HubRatio, BoreRatio).Sample((interference, d, hub, bore) =>
    {
        var fit = PressFit.Stress(interference, d, hub * d, 72e9, 205e9, bore * d, 0.33, 0.29);
        var hubGrowth = d * (fit.HubHoop - (0.33 * fit.HubRadial)) / 72e9;

        // Hoop stress at the shaft's outer face; for a hollow shaft it is that of the bore less the pressure.
        var outerHoop = bore > 0 ? fit.ShaftHoop + fit.Pressure : fit.ShaftHoop;
        var shaftShrink = -d * (outerHoop + (0.29 * fit.Pressure)) / 205e9;
        Assert.Equal(interference, hubGrowth + shaftShrink, interference * 1e-9);
    });

    [Fact]
    public void Pressure_is_proportional_to_interference_and_free_of_scale() => Gen.Select(Interference, Diameter, HubRatio, Gen.Double[0.3, 3]).Sample((interference, d, hub, k) =>
    {
        var pressure = PressFit.Stress(interference, d, hub * d, 205e9, 205e9).Pressure;
        Assert.Equal(k * pressure, PressFit.Stress(k * interference, d, hub * d, 205e9, 205e9).Pressure, k * pressure * 1e-10);
        Assert.Equal(pressure, PressFit.Stress(k * interference, k * d, k * hub * d, 205e9, 205e9).Pressure, pressure * 1e-10);
    });

    [Fact]
    public void A_hub_inside_its_shaft_is_refused() =>
        Assert.Throws<FormulaDomainException>(() => PressFit.Stress(1e-5, 0.04, 0.04, 205e9, 205e9));

    [Fact]
    public void A_steel_fit_loses_the_pressure_of_the_closed_form_when_it_spins() => Gen.Select(Diameter, HubRatio, Gen.Double[100, 2000]).Sample((d, hub, speed) =>
    {
        var radius = hub * d / 2;
        var closed = (3 + 0.3) * 7850 * speed * speed * radius * radius * (1 - (1 / (hub * hub))) / 8;
        var rest = PressFit.Stress(1e-3, d, hub * d, 205e9, 205e9).Pressure;
        Assert.Equal(closed, rest - SpinningFit.Pressure(1e-3, d, hub * d, speed), rest * 1e-9);
    });

    [Fact]
    public void At_the_lift_off_speed_the_pressure_is_gone() => Gen.Select(Interference, Diameter, HubRatio, Gen.Double[0, 0.8]).Sample((interference, d, hub, bore) =>
    {
        var speed = SpinningFit.LiftOffSpeed(interference, d, hub * d, shaftBore: bore * d);
        Assert.Equal(0, SpinningFit.Pressure(interference, d, hub * d, speed, shaftBore: bore * d), 1);
        Assert.Equal(0, SpinningFit.Pressure(interference, d, hub * d, 1.1 * speed, shaftBore: bore * d));
        Assert.True(SpinningFit.Pressure(interference, d, hub * d, 0.9 * speed, shaftBore: bore * d) > 0);
    });

    [Fact]
    public void A_pinhole_doubles_the_stress_of_a_solid_disc() => Gen.Select(Gen.Double[20e-3, 200e-3], Gen.Double[100, 3000]).Sample((radius, speed) =>
    {
        var solid = RotatingRing.SolidDisc(radius, speed);
        Assert.Equal(2 * solid, RotatingRing.Stress(radius * 1e-5, radius, speed).BoreHoop, solid * 1e-6);
    });

    [Fact]
    public void A_narrow_ring_is_a_thin_ring() => Gen.Select(Gen.Double[20e-3, 200e-3], Gen.Double[100, 3000]).Sample((radius, speed) =>
    {
        var thin = RotatingRing.ThinRing(radius, speed);
        Assert.Equal(thin, RotatingRing.Stress(radius * 0.9999, radius * 1.0001, speed).BoreHoop, thin * 1e-3);
    });

    [Fact]
    public void Heated_to_the_assembly_temperature_the_hub_has_its_clearance() => Gen.Select(Interference, Diameter).Sample((interference, d) =>
    {
        var temperature = ShrinkFit.HubTemperature(interference, 20e-6, 12e-6, d);
        Assert.Equal(-20e-6, ShrinkFit.WhenHot(interference, d, 12e-6, 12e-6, temperature - 293.15, 0), 1e-12);
        Assert.Throws<FormulaDomainException>(() => ShrinkFit.LossTemperature(interference, d, 12e-6, 12e-6));
    });

    [Fact]
    public void A_steep_or_slippery_taper_lets_go_by_itself()
    {
        Assert.True(TaperFit.Grip(0.1, 25e-3, 25e-3, 30e3, 0.12).PullOff > 0);
        Assert.True(TaperFit.Grip(0.5, 25e-3, 25e-3, 30e3, 0.12).PullOff < 0);
    }

    [Fact]
    public void Draw_up_and_interference_are_inverse() => Gen.Select(Interference, Gen.Double[0.02, 0.3]).Sample((interference, taper) =>
        Assert.Equal(interference, TaperFit.Interference(TaperFit.DrawUp(interference, taper), taper), 1e-15));

    [Fact]
    public void More_axial_force_than_grip_slips() =>
        Assert.Throws<FormulaDomainException>(() => PressFit.TorqueUnderAxial(20e3, 21e3, 0.04));
}
