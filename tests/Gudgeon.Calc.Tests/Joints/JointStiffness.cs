using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Calc.Tests.Joints;

public class JointStiffness
{
    [Fact]
    public void The_cone_and_sleeve_are_what_integration_gives() => Gen.Select(Gen.Double[14e-3, 20e-3], Gen.Double[10e-3, 60e-3], Gen.Double[20e-3, 120e-3], Gen.Enum<JointForm>()).Sample((bearing, outer, grip, form) =>
    {
        const double Hole = 9e-3;
        const double Modulus = 72e9;
        if (outer <= Hole * 1.05)
        {
            return;
        }

        var body = ClampedParts.Resilience(bearing, Hole, outer, grip, Modulus, form);
        const int Slices = 20000;
        var sum = 0.0;
        for (var i = 0; i < Slices; i++)
        {
            var depth = (i + 0.5) * grip / Slices;
            var fromFace = form == JointForm.Tapped ? depth : Math.Min(depth, grip - depth);
            var cone = Math.Min(bearing + (2 * fromFace * body.ConeTangent), outer);
            sum += grip / Slices / (Modulus * Math.PI / 4 * ((cone * cone) - (Hole * Hole)));
        }

        Assert.Equal(sum, body.Resilience, sum * 1e-5);
    });

    [Fact]
    public void A_stepped_bolt_of_one_diameter_is_a_plain_bolt() => Gen.Select(Gen.Double[5e-3, 80e-3], Gen.Double[0, 80e-3], Gen.Enum<BoltHead>(), Gen.Enum<MatingThread>()).Sample((one, two, head, mating) =>
    {
        var plain = BoltResilience.OfBolt(10e-3, 1.25e-3, one + two, 8e-3, 25e-3, 205e9, 72e9, head, mating);
        var stepped = BoltResilience.OfSteppedBolt(10e-3, 1.25e-3, [one, two], [8e-3, 8e-3], 25e-3, 205e9, 72e9, head, mating);
        Assert.Equal(plain.Total, stepped.Total, plain.Total * 1e-12);
        Assert.Equal(plain.Total, plain.Head + plain.Shank + plain.Thread + plain.Engaged + plain.Mating, plain.Total * 1e-12);
        Assert.Equal(plain.Total - plain.Mating, plain.Gauged, plain.Total * 1e-12);
    });

    [Fact]
    public void Lists_of_unequal_length_are_refused() =>
        Assert.Throws<FormulaDomainException>(() => BoltResilience.OfSteppedBolt(10e-3, 1.25e-3, [0.03, 0.02], [8e-3], 25e-3, 205e9, 72e9));

    [Fact]
    public void Scaling_every_length_scales_resilience_down() => Gen.Double[0.3, 3].Sample(k =>
    {
        var bolt = BoltResilience.OfBolt(10e-3, 1.25e-3, 55e-3, 10e-3, 25e-3, 205e9, 72e9).Total;
        Assert.Equal(bolt / k, BoltResilience.OfBolt(k * 10e-3, k * 1.25e-3, k * 55e-3, k * 10e-3, k * 25e-3, 205e9, 72e9).Total, bolt / k * 1e-10);
        var parts = ClampedParts.Resilience(16e-3, 11e-3, 30e-3, 80e-3, 72e9).Resilience;
        Assert.Equal(parts / k, ClampedParts.Resilience(k * 16e-3, k * 11e-3, k * 30e-3, k * 80e-3, 72e9).Resilience, parts / k * 1e-10);
    });

    [Fact]
    public void A_softer_bolt_loses_less_and_sees_less() => Gen.Select(Gen.Double[3e-9, 15e-9], Gen.Double[1e-9, 4e-9]).Sample((bolt, parts) =>
    {
        Assert.True(JointDiagram.EmbeddingLoss(8e-6, 1.5 * bolt, parts) < JointDiagram.EmbeddingLoss(8e-6, bolt, parts));
        Assert.True(JointDiagram.LoadFactor(1.5 * bolt, parts, 10e3).AdditionalForce < JointDiagram.LoadFactor(bolt, parts, 10e3).AdditionalForce);
        Assert.Equal(10e3, JointDiagram.LoadFactor(bolt, parts, 10e3).AdditionalForce + JointDiagram.LoadFactor(bolt, parts, 10e3).PartsRelief, 1e-6);
    });

    [Fact]
    public void Stretch_and_preload_are_inverse() => Gen.Double[0, 80e3].Sample(force =>
        Assert.Equal(force, JointDiagram.FromStretch(JointDiagram.Stretch(force, 6.9e-9), 6.9e-9), 1e-6));

    [Fact]
    public void The_stud_holds_the_gas_and_the_clamp() => Gen.Select(Gen.Double[60e-3, 100e-3], Gen.Double[1e6, 40e6], Gen.Double[0, 0.5]).Sample((diameter, pressure, factor) =>
    {
        var head = HeadJoint.Clamp(diameter, pressure, 4, 38e3, factor);
        Assert.Equal(head.StudLoad, head.LoadPerStud + head.ClampPerStud, 1e-6);
        Assert.Equal(pressure >= head.SeparationPressure, head.Clamp == 0);
        if (head.Clamp > 0)
        {
            Assert.Equal(38e3 + (factor * head.LoadPerStud), head.StudLoad, 1e-6);
        }
    });

    [Fact]
    public void A_wider_sealing_diameter_leaves_less_clamp()
    {
        Assert.True(HeadJoint.Clamp(80e-3, 12e6, 4, 38e3, 0.08).Clamp < HeadJoint.Clamp(76e-3, 12e6, 4, 38e3, 0.08).Clamp);
        Assert.Throws<FormulaDomainException>(() => HeadJoint.RingStress(1e5, 0.08, 0.07));
    }

    [Fact]
    public void Equal_frusta_in_series_are_the_textbook_members() // Shigley, eq. 8-20 twice against eq. 8-22
    {
        var half = TextbookJoint.Frustum(10e-3, 20e-3, 15e-3, 207e9);
        Assert.Equal(TextbookJoint.MemberStiffness(10e-3, 40e-3, 207e9), TextbookJoint.InSeries([half, half]), half * 2e-4);
    }
}
