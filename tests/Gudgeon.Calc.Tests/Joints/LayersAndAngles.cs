using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Calc.Tests.Joints;

/// <summary>Layers, angle tightening and stripping: what no row can say.</summary>
public class LayersAndAngles
{
    [Theory]
    [InlineData(JointForm.Tapped, 30e-3)]
    [InlineData(JointForm.Through, 30e-3)]
    [InlineData(JointForm.Tapped, 200e-3)]
    [InlineData(JointForm.Through, 200e-3)]
    [InlineData(JointForm.Through, 15e-3)]
    public void Layers_of_one_material_are_one_part(JointForm form, double width)
    {
        var whole = ClampedParts.Resilience(16e-3, 11e-3, width, 80e-3, 72e9, form).Resilience;
        foreach (var cut in new[] { 5e-3, 30e-3, 40e-3, 71e-3 })
        {
            var layered = LayeredParts.Resilience(16e-3, 11e-3, [cut, 80e-3 - cut], [72e9, 72e9], [width, width], form);
            Assert.Equal(whole, layered, whole * 1e-9);
        }
    }

    [Fact]
    public void A_through_joint_is_the_same_from_both_ends()
    {
        double[] thick = [2e-3, 20e-3, 12e-3, 3e-3], moduli = [205e9, 72e9, 110e9, 205e9], wide = [18e-3, 40e-3, 24e-3, 16e-3];
        var down = LayeredParts.Resilience(15e-3, 10.5e-3, thick, moduli, wide, JointForm.Through);
        var up = LayeredParts.Resilience(15e-3, 10.5e-3, [.. thick.Reverse()], [.. moduli.Reverse()], [.. wide.Reverse()], JointForm.Through);
        Assert.Equal(down, up, down * 1e-12);
    }

    [Fact]
    public void A_softer_layer_gives_more_and_a_narrow_washer_spreads_less()
    {
        var stiff = LayeredParts.Resilience(17e-3, 10.6e-3, [60e-3, 1e-3], [72e9, 120e9], [28e-3, 28e-3]);
        var soft = LayeredParts.Resilience(17e-3, 10.6e-3, [60e-3, 1e-3], [72e9, 5e9], [28e-3, 28e-3]);
        var narrow = LayeredParts.Resilience(17e-3, 10.6e-3, [60e-3, 1e-3], [72e9, 120e9], [17e-3, 28e-3]);
        Assert.True(soft > stiff && narrow > stiff);
    }

    [Fact]
    public void Layers_of_one_expansion_warm_up_as_one_part()
    {
        var one = JointDiagram.ThermalChange(80e-3, 21e-6, 11.5e-6, 100, 80, 6.9e-9, 2.2e-9);
        Assert.Equal(one, LayeredParts.ThermalChange([30e-3, 50e-3], [21e-6, 21e-6], [100, 100], 11.5e-6, 80, 6.9e-9, 2.2e-9), Math.Abs(one) * 1e-12);
    }

    [Fact]
    public void Lists_of_different_length_are_refused()
    {
        Assert.Throws<FormulaDomainException>(() => LayeredParts.Resilience(17e-3, 10.6e-3, [60e-3], [72e9, 72e9], [28e-3]));
        Assert.Throws<FormulaDomainException>(() => LayeredParts.ThermalChange([60e-3], [20e-6, 20e-6], [1], 1e-5, 1, 1e-9, 1e-9));
    }

    // Up to yield the angle and the preload are each other's inverse; past it each degree stays as a pitch's share.
    [Fact]
    public void Angle_and_preload_agree()
    {
        var angle = JointDiagram.Angle(8e3, 40e3, 1.25e-3, 6.9e-9, 2.2e-9);
        var there = StretchBolt.ByAngle(8e3, angle, 1.25e-3, 6.9e-9, 2.2e-9, 51e3);
        Assert.Equal(40e3, there.Preload, 1e-6);
        Assert.Equal(0, there.Set);
        var past = StretchBolt.ByAngle(8e3, there.YieldAngle + (Math.PI / 2), 1.25e-3, 6.9e-9, 2.2e-9, 51e3);
        Assert.Equal(51e3, past.Preload);
        Assert.Equal(1.25e-3 / 4, past.Set, 1e-12);
        Assert.Throws<FormulaDomainException>(() => StretchBolt.ByAngle(60e3, 1, 1.25e-3, 6.9e-9, 2.2e-9, 51e3));
    }

    [Fact]
    public void At_the_engagement_wanted_breaking_and_stripping_are_equal()
    {
        var shear = ThreadStripping.ShearAreas(10e-3, 1.5e-3);
        var area = MetricThread.Sizes(10e-3, 1.5e-3).StressArea;
        var wanted = ThreadStripping.Wanted(1040e6, area, shear.Internal, shear.External, 150e6);
        var weaker = Math.Min(ThreadStripping.StrippingForce(shear.Internal, wanted, 150e6), ThreadStripping.StrippingForce(shear.External, wanted, 0.6 * 1040e6));
        Assert.Equal(area * 1040e6, weaker, 1);
        var insert = ThreadStripping.ShearAreas(ThreadStripping.WireInsertThread(10e-3, 1.5e-3), 1.5e-3);
        Assert.True(ThreadStripping.Wanted(1040e6, area, insert.Internal, shear.External, 150e6) < wanted);
    }

    [Fact]
    public void A_mean_load_below_the_rule_is_refused()
    {
        Assert.Equal(1.7 * BoltFatigue.RolledBefore(10e-3), BoltFatigue.RolledAfter(10e-3, 15e3, 50e3), 1.0);
        Assert.Contains("0.3 of the yield load", Assert.Throws<FormulaDomainException>(() => BoltFatigue.RolledAfter(10e-3, 4e3, 50e3)).Message, StringComparison.Ordinal);
    }

    // Shut by the load factor, open by all of it, and no jump between: the clamp is nought where both are the same.
    [Fact]
    public void Past_lifting_the_bolt_carries_all()
    {
        const double Preload = 10e3, Factor = 0.1;
        Assert.Equal(10.5e3, BoltService.ForceAtWork(Preload, Factor, 5e3), 1e-9);
        Assert.Equal(Preload / (1 - Factor), BoltService.ForceAtWork(Preload, Factor, Preload / (1 - Factor)), 1e-9);
        Assert.Equal(25e3, BoltService.ForceAtWork(Preload, Factor, 25e3));
        Assert.Equal(0, BoltService.ForceAtWork(0, Factor, -5e3));
    }

    [Theory]
    [InlineData(BoltHead.Hexagon)]
    [InlineData(BoltHead.Socket)]
    [InlineData(BoltHead.None)]
    public void A_longer_bolt_weighs_its_rod_more(BoltHead head)
    {
        var more = BoltBlank.Mass(10e-3, 1.5e-3, 90e-3, 20e-3, 7850, head) - BoltBlank.Mass(10e-3, 1.5e-3, 80e-3, 20e-3, 7850, head);
        Assert.Equal(7850 * Math.PI / 4 * 1e-4 * 10e-3, more, 1e-9);
        Assert.Throws<FormulaDomainException>(() => BoltBlank.StandardLength(0.4));
    }
}
