using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>Checks of bolts at work, each at both sides of its edge and without what it wants.</summary>
public class BoltCheckTests
{
    private static readonly BuildBook Plate = Books.Of(
        ("joint[plate].thread", "10 mm"),
        ("joint[plate].pitch", "1.25 mm"),
        ("joint[plate].yieldStrength", "940 MPa"),
        ("joint[plate].tensileStrength", "1040 MPa"),
        ("joint[plate].modulus", "205 GPa"),
        ("joint[plate].grip", "80 mm"),
        ("joint[plate].engagement", "24 mm"),
        ("joint[plate].tappedStrength", "270 MPa"),
        ("joint[plate].bearingDiameter", "16 mm"),
        ("joint[plate].holeDiameter", "11 mm"),
        ("joint[plate].outerDiameter", "30 mm"),
        ("joint[plate].clampedModulus", "72 GPa"),
        ("joint[plate].faceMaterial", "alloy steel"),
        ("joint[plate].torque", "50 N·m"),
        ("joint[plate].method", "torque tested"),
        ("joint[plate].threadFriction", "0.12"),
        ("joint[plate].headFriction", "0.12"),
        ("joint[plate].embedding", "8 µm"),
        ("joint[plate].axialForce", "13 kN"),
        ("joint[plate].clampWanted", "8 kN"));

    [Theory]
    [InlineData("bolt-working-stress", "yieldStrength", "500 MPa", "yieldStrength")]
    [InlineData("bolt-fatigue", "axialForce", "80 kN", "axialForce")]
    [InlineData("bolt-head-pressure", "faceMaterial", "wrought aluminium", "faceMaterial")]
    [InlineData("thread-stripping", "engagement", "12 mm", "tappedStrength")]
    [InlineData("joint-clamp-left", "clampWanted", "20 kN", "clampWanted")]
    public void It_holds_falls_short_and_says_what_it_wants(string check, string field, string worse, string wanted)
    {
        var path = $"joint[plate].{field}";
        Assert.Equal(Verdict.Holds, Appraisal.Of(Plate, check, "plate").Verdict);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(Plate.Set((path, worse)), check, "plate").Verdict);
        var unknown = Appraisal.Of(Plate.Without($"joint[plate].{wanted}"), check, "plate");
        Assert.Equal(Verdict.NotKnownYet, unknown.Verdict);
        Assert.Contains($"joint[plate].{wanted}", unknown.Missing);
    }

    // B17: 51 MPa for M10; titanium has no figure of its own unless the book gives one.
    [Fact]
    public void Fatigue_of_steel_by_the_standard_of_titanium_by_its_maker()
    {
        Assert.Equal(51.0e6, Appraisal.Of(Plate, "bolt-fatigue", "plate").Judgement!.Upper!.Value, 0.2e6);
        var titanium = Plate.Set(("joint[plate].modulus", "114 GPa"));
        Assert.Contains("joint[plate].fatigueStrength", Appraisal.Of(titanium, "bolt-fatigue", "plate").Missing);
        Assert.Equal(60e6, Appraisal.Of(titanium.Set(("joint[plate].fatigueStrength", "60 MPa")), "bolt-fatigue", "plate").Judgement!.Upper!.Value, 1.0);
    }

    [Fact]
    public void A_bush_or_a_wire_insert_takes_less_engagement()
    {
        var plain = Appraisal.Of(Plate, "thread-stripping", "plate").Judgement!.Lower!.Value;
        var wire = Appraisal.Of(Plate.Set(("joint[plate].insert", "wire")), "thread-stripping", "plate").Judgement!.Lower!.Value;
        var bush = Appraisal.Of(Plate.Set(("joint[plate].insert", "bush"), ("joint[plate].insertDiameter", "14 mm")), "thread-stripping", "plate").Judgement!.Lower!.Value;
        Assert.True(bush < wire && wire < plain);
        Assert.Contains("joint[plate].insertDiameter", Appraisal.Of(Plate.Set(("joint[plate].insert", "bush")), "thread-stripping", "plate").Missing);
    }

    [Fact]
    public void Heat_between_what_the_joint_wants_and_yield()
    {
        Assert.Empty(CheckCatalogue.Find("joint-thermal").Instances(new(Plate.Now())));
        var warm = Plate.Set(("joint[plate].partTemperature", "120 °C"), ("joint[plate].expansion", "11.5 µm/(m·K)"), ("joint[plate].clampedExpansion", "21.5 µm/(m·K)"));
        Assert.Equal(Verdict.Holds, Appraisal.Of(warm, "joint-thermal", "plate").Verdict);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(warm.Set(("joint[plate].yieldStrength", "450 MPa")), "joint-thermal", "plate").Verdict);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(warm.Set(("joint[plate].boltTemperature", "300 °C"), ("joint[plate].expansion", "21.5 µm/(m·K)")), "joint-thermal", "plate").Verdict);
    }

    [Fact]
    public void A_bolt_used_again_by_its_lengthening_or_its_makers_length()
    {
        Assert.Empty(CheckCatalogue.Find("bolt-set").Instances(new(Plate.Now())));
        var again = Plate.Set(("joint[plate].unusedLength", "62 mm"), ("joint[plate].freeLength", "62.01 mm"));
        Assert.Equal(Verdict.Holds, Appraisal.Of(again, "bolt-set", "plate").Verdict);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(again.Set(("joint[plate].freeLength", "62.04 mm")), "bolt-set", "plate").Verdict);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(again.Set(("joint[plate].lengthMost", "62.005 mm")), "bolt-set", "plate").Verdict);
    }

    [Fact]
    public void A_bolt_turned_past_yield_is_at_its_yield_and_no_further()
    {
        var turned = Plate.Set(("joint[plate].method", "yield or angle"), ("joint[plate].snugTorque", "15 N·m"), ("joint[plate].angle", "180°"));
        var finding = Appraisal.Of(turned, "bolt-preload", "plate");
        Assert.Equal(1, finding.Reserve, 1e-9);
        Assert.Equal(51.62e3, finding.Judgement!.Value, 60.0);
    }
}
