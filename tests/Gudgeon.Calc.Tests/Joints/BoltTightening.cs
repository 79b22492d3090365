using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Calc.Tests.Joints;

public class BoltTightening
{
    private static readonly Gen<(double Diameter, double Pitch)> Thread =
        Gen.OneOf((6e-3, 1e-3), (8e-3, 1.25e-3), (10e-3, 1.25e-3), (12e-3, 1.75e-3), (16e-3, 2e-3));
    private static readonly Gen<double> Friction = Gen.Double[0.06, 0.25];
    private static readonly Gen<double> Force = Gen.Double[2e3, 80e3];

    [Fact]
    public void Torque_and_preload_are_inverse() => Gen.Select(Thread, Friction, Friction, Force).Sample((thread, inThread, underHead, force) =>
    {
        var torque = Tightening.Torque(force, thread.Diameter, thread.Pitch, inThread, underHead, 1.3 * thread.Diameter);
        Same(torque.Torque, torque.PitchTorque + torque.ThreadTorque + torque.HeadTorque);
        Same(force, Tightening.Preload(torque.Torque, thread.Diameter, thread.Pitch, inThread, underHead, 1.3 * thread.Diameter));
        Same(force, NutFactor.Preload(torque.Torque, thread.Diameter, torque.NutFactor));
        Same(torque.Torque, NutFactor.Torque(force, thread.Diameter, torque.NutFactor));
    });

    [Fact]
    public void The_friction_found_is_the_friction_put_in() => Gen.Select(Thread, Friction, Force).Sample((thread, friction, force) =>
    {
        var torque = Tightening.Torque(force, thread.Diameter, thread.Pitch, friction, friction, 1.3 * thread.Diameter).Torque;
        Same(friction, Tightening.TotalFriction(torque, force, thread.Diameter, thread.Pitch, 1.3 * thread.Diameter));
    });

    [Fact]
    public void The_exact_helix_asks_a_little_more() => Gen.Select(Thread, Friction, Force).Sample((thread, friction, force) =>
    {
        var plain = Tightening.Torque(force, thread.Diameter, thread.Pitch, friction, friction, 1.3 * thread.Diameter).Torque;
        var exact = Tightening.ExactTorque(force, thread.Diameter, thread.Pitch, friction, friction, 1.3 * thread.Diameter).Torque;
        Assert.InRange(exact / plain, 1, 1.015);
    });

    [Fact]
    public void The_exact_helix_is_the_power_screw_of_thirty_degrees() => Gen.Select(Thread, Friction, Force).Sample((thread, friction, force) =>
    {
        var bolt = Tightening.ExactTorque(force, thread.Diameter, thread.Pitch, friction, friction, 1.3 * thread.Diameter);
        var screw = PowerScrew.Torque(force, MetricThread.Sizes(thread.Diameter, thread.Pitch).PitchDiameter, thread.Pitch, friction, Math.PI / 6, friction, 1.3 * thread.Diameter);
        Same(bolt.Torque, screw.Raise);
    });

    [Fact]
    public void Too_little_torque_for_a_thread_without_friction_is_refused() =>
        Assert.Throws<FormulaDomainException>(() => Tightening.TotalFriction(5, 40e3, 10e-3, 1.25e-3, 12.8e-3));

    [Fact]
    public void Tension_and_torsion_together_use_the_share_of_yield() => Gen.Select(Thread, Friction, Gen.Double[0.5, 1]).Sample((thread, friction, share) =>
    {
        var found = AssemblyPreload.FromYield(940e6, thread.Diameter, thread.Pitch, friction, friction, 1.3 * thread.Diameter, share);
        Same(share * 940e6, Math.Sqrt((found.TensileStress * found.TensileStress) + (3 * found.ShearStress * found.ShearStress)));
        Same(found.Torque, Tightening.Torque(found.Preload, thread.Diameter, thread.Pitch, friction, friction, 1.3 * thread.Diameter).Torque);
    });

    [Fact]
    public void More_thread_friction_leaves_less_preload() => Gen.Select(Thread, Friction, Gen.Double[0.01, 0.1]).Sample((thread, friction, more) =>
        Assert.True(Preload(thread, friction + more) < Preload(thread, friction)));

    [Fact]
    public void Scatter_and_tightening_factor_are_inverse() => Gen.Double[0, 0.9].Sample(scatter =>
        Assert.Equal(scatter, TighteningScatter.Scatter(TighteningScatter.Factor(scatter)), 1e-12));

    [Fact]
    public void One_reading_has_no_spread() =>
        Assert.Throws<FormulaDomainException>(() => TighteningScatter.Statistics([30e3]));

    [Fact]
    public void A_dry_torque_on_a_slippery_thread_overloads_the_bolt() // the same torque at K 0.12 instead of 0.20
        => Assert.Equal(50e3 / 30e3, NutFactor.Preload(60, 0.01, 0.12) / NutFactor.Preload(60, 0.01, 0.20), 1e-12);

    private static double Preload((double Diameter, double Pitch) thread, double friction) =>
        AssemblyPreload.FromYield(940e6, thread.Diameter, thread.Pitch, friction, 0.12, 1.3 * thread.Diameter).Preload;

    private static void Same(double expected, double actual) => Assert.Equal(expected, actual, Math.Abs(expected) * 1e-10);
}
