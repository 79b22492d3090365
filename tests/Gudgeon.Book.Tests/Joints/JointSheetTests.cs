using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Tests.Joints;

/// <summary>Sheets of bolted joints on the invented twin and on small books.</summary>
public class JointSheetTests
{
    private static readonly BuildBook Plain = Books.Of(
        ("joint[plate].bolts", "6"),
        ("joint[plate].thread", "10 mm"),
        ("joint[plate].pitch", "1.25 mm"),
        ("joint[plate].yieldStrength", "940 MPa"),
        ("joint[plate].tensileStrength", "1040 MPa"),
        ("joint[plate].modulus", "205 GPa"),
        ("joint[plate].grip", "80 mm"),
        ("joint[plate].shankLength", "55 mm"),
        ("joint[plate].engagement", "18 mm"),
        ("joint[plate].tappedStrength", "270 MPa"),
        ("joint[plate].bearingDiameter", "16 mm"),
        ("joint[plate].holeDiameter", "11 mm"),
        ("joint[plate].outerDiameter", "30 mm"),
        ("joint[plate].clampedModulus", "72 GPa"),
        ("joint[plate].torque", "60 N·m"),
        ("joint[plate].method", "torque tested"),
        ("joint[plate].threadFriction", "0.12"),
        ("joint[plate].headFriction", "0.12"),
        ("joint[plate].embedding", "8 µm"),
        ("joint[plate].axialForce", "13 kN"),
        ("joint[plate].loadIntroduction", "0.3"),
        ("joint[plate].clampWanted", "8 kN"));

    // Own cases J01 to J04: resilience, load factor and embedding of this very joint.
    [Fact]
    public void The_sheet_gives_the_reference_joint()
    {
        var joint = JointFigures.Of(new View(Plain.Now()), "plate");
        Assert.Empty(joint.Missing);
        Assert.Equal(6.910e-9, joint.BoltResilience, 0.007e-9);
        Assert.Equal(2.244e-9, joint.PartResilience, 0.005e-9);
        Assert.Equal(0.0735, joint.LoadFactor, 2e-4);
        Assert.Equal(874, joint.Embedding, 2.0);
        Assert.Equal(joint.Least - joint.Embedding - ((1 - joint.LoadFactor) * 13e3), joint.ClampLeft, 1e-6);
        Assert.Equal(joint.Preload * 1.6 / 1.3, joint.Greatest, 1e-6);
        Assert.Equal(0, joint.Thermal);
        Assert.Equal("M10 × 1.25", joint.Thread);
    }

    [Fact]
    public void Heat_tightens_steel_in_aluminium()
    {
        var warm = Plain.Set(("joint[plate].expansion", "12.3 µm/(m·K)"), ("joint[plate].clampedExpansion", "21 µm/(m·K)"), ("joint[plate].partTemperature", "100 °C"));
        Assert.Equal(6083, JointFigures.Of(new View(warm.Now()), "plate").Thermal, 12.0);
        var layered = warm.Set(("joint[plate].layers", "30 mm at 72 GPa at 30 mm; 50 mm at 72 GPa at 30 mm"));
        Assert.Equal(6083, JointFigures.Of(new View(layered.Now()), "plate").Thermal, 12.0);
    }

    [Fact]
    public void A_waist_makes_the_bolt_softer_and_sooner_to_yield()
    {
        var full = JointFigures.Of(new View(Plain.Now()), "plate");
        var waisted = JointFigures.Of(new View(Plain.Set(("joint[plate].shankDiameter", "7.5 mm")).Now()), "plate");
        Assert.True(waisted.BoltResilience > full.BoltResilience && waisted.WorkingStress > full.WorkingStress && waisted.LoadFactor < full.LoadFactor);
    }

    [Fact]
    public void Without_a_friction_the_lubricant_gives_it()
    {
        var oiled = Plain.Without("joint[plate].threadFriction").Without("joint[plate].headFriction");
        Assert.Contains("joint[plate].threadFriction", JointFigures.Of(new View(oiled.Now()), "plate").Missing, StringComparison.Ordinal);
        Assert.Equal(JointFigures.Of(new View(Plain.Now()), "plate").Preload, JointFigures.Of(new View(oiled.Set(("joint[plate].lubricant", "anti seize")).Now()), "plate").Preload, 1e-6);
    }

    [Fact]
    public void Oil_on_a_dry_torque_pulls_harder()
    {
        var sheet = TorqueSheet.Of(new View(Plain.Now()), "plate");
        var (dry, oil) = (sheet.Rows.Single(r => r.Lubricant == "dry"), sheet.Rows.Single(r => r.Lubricant == "engine oil"));
        Assert.True(oil.Preload > 1.3 * dry.Preload && oil.Torque < dry.Torque);
        Assert.Equal(60.0, sheet.Facts.Where(f => f.Name.StartsWith("of it", StringComparison.Ordinal)).Sum(f => f.Value!.Value), 1e-9);
    }

    [Fact]
    public void A_wrench_below_a_fifth_of_its_range_is_told()
    {
        var sheet = TorqueSheet.Of(new View(Plain.Set(("joint[plate].wrench", "setting"), ("joint[plate].wrenchCapacity", "400 N·m")).Now()), "plate");
        var fact = sheet.Facts.Single(f => f.Name == "± of the torque");
        Assert.Equal(60 * 0.08 / Math.Sqrt(3), fact.Value!.Value, 1e-9);
        Assert.Contains("below a fifth", fact.Remark, StringComparison.Ordinal);
    }

    // B06 and B08: the same preload in titanium, as VDI's resilience has it; the torque goes with the friction.
    [Fact]
    public void Titanium_at_the_same_preload()
    {
        var sheet = SwapSheet.Of(Plain, new DutyDesk(), "plate", SwapMaterial.Of("titanium"));
        Assert.Equal(["now", "same torque", "same preload", "same share of yield"], sheet.Columns.Select(c => c.Name));
        var (now, same) = (sheet.Columns[0].Figures, sheet.Columns[2].Figures);
        Assert.Equal(11.96e-9, same.BoltResilience, 0.03e-9);
        Assert.Equal(now.Preload, same.Preload, 1e-3);
        Assert.Equal(now.YieldShare, sheet.Columns[3].Figures.YieldShare, 1e-9);
        Assert.True(same.LoadFactor < now.LoadFactor && same.Embedding < now.Embedding && same.YieldShare > now.YieldShare && sheet.Columns[2].Torque > sheet.Columns[0].Torque);
        Assert.Equal(4430.0 / 7850, sheet.Columns[1].Mass!.Value / sheet.Columns[0].Mass!.Value, 1e-9);
        Assert.Contains("galls", sheet.Cautions[0], StringComparison.Ordinal);
        Assert.True(double.IsNaN(same.FatigueStrength));
    }

    [Fact]
    public void Rod_bolts_want_the_makers_word_and_no_torque_compare()
    {
        var sheet = SwapSheet.Of(DemoBooks.Heron.Book, new DutyDesk(), "rod", SwapMaterial.Of("titanium"));
        Assert.Equal(SwapSheet.AskFirst, sheet.Cautions[0]);
        Assert.Contains("stretch", sheet.Trouble, StringComparison.Ordinal);
        Assert.DoesNotContain(SwapSheet.AskFirst, SwapSheet.Of(DemoBooks.Heron.Book, new DutyDesk(), "mount", SwapMaterial.Of("titanium")).Cautions);
        Assert.Contains("wanted one of titanium", Assert.Throws<BadInputException>(() => SwapMaterial.Of("unobtainium")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_list_takes_the_standard_length_above()
    {
        var line = Assert.Single(BoltList.Of(new View(Plain.Now())).Lines);
        Assert.Equal(100e-3, line.Length!.Value, 1e-9);
        Assert.Equal("10.9", line.Strength);
        Assert.Equal(6, line.Quantity);
        Assert.Equal(0, line.MassSaved!.Value, 1e-12);
        Assert.StartsWith("goes 20 mm into the part", line.Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void The_list_is_a_file_to_order_from()
    {
        var list = BoltList.Of(new View(DemoBooks.Heron.Now));
        var lines = BoltListFile.Csv(list).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("joint,head,thread,length mm,quantity", lines[0], StringComparison.Ordinal);
        Assert.Equal(list.Lines.Count, lines.Length - 1);
        Assert.Contains(lines, l => l.StartsWith("mount,hexagon,M10 × 1.25,60,4,Rp 830 MPa", StringComparison.Ordinal));
        Assert.True(list.MassSaved > 0.05);
        var zip = BoltListFile.Xlsx(list);
        Assert.Equal("PK"u8.ToArray(), zip[..2]);
    }

    [Fact]
    public void The_head_loses_clamp_with_boost()
    {
        var sheet = HeadJointSheet.Of(DemoBooks.Heron.Now, new DutyDesk());
        Assert.Equal("head", sheet.Key);
        Assert.Equal(8, sheet.Levels.Count);
        Assert.All(sheet.Levels.Zip(sheet.Levels.Skip(1)), p => Assert.True(p.Second.Peak > p.First.Peak && p.Second.Clamp <= p.First.Clamp && p.Second.Reserve < p.First.Reserve));
        var now = sheet.Levels.Single(l => Math.Abs(l.Value - sheet.Now) < 1e-9);
        Assert.Equal(DemoBooks.Heron.Findings.Single(f => f.Id == "head-separation[head]").Reserve, now.Reserve, 1e-6);
        Assert.Equal(now.Clamp / (Math.PI * 94e-3), now.LineLoad, 1e-6);
    }

    [Fact]
    public void The_diagram_closes()
    {
        var joint = JointFigures.Of(new View(Plain.Now()), "plate");
        var lines = DiagramLine.Of(joint);
        var working = lines.Single(l => l.Name == DiagramLine.WorkingForce);
        Assert.Equal(13e3, working.Force[1] - working.Force[0], 1e-6);
        Assert.Equal(joint.ClampLeft, working.Force[0], 1e-6);
        Assert.All(lines.Where(l => l != working), l => Assert.Equal(0, l.Force[^1]));
    }

    // The foot of the working force lies on the line of the least clamp, its top on that of the bolt, wherever the force enters.
    [Theory]
    [InlineData("1")]
    [InlineData("0.5")]
    [InlineData("0.3")]
    public void The_working_force_stands_between_the_lines(string introduction)
    {
        var lines = DiagramLine.Of(JointFigures.Of(new View(Plain.Set(("joint[plate].loadIntroduction", introduction)).Now()), "plate"));
        var (settled, working) = (lines.Single(l => l.Name == "least, losses off"), lines.Single(l => l.Name == DiagramLine.WorkingForce));
        var (peak, end) = (settled.Stretch[1], settled.Stretch[2]);
        Assert.Equal(settled.Force[1] * (end - working.Stretch[0]) / (end - peak), working.Force[0], 1e-6);
        Assert.Equal(settled.Force[1] * working.Stretch[1] / peak, working.Force[1], 1e-6);
    }

    [Fact]
    public void Heat_that_is_gained_is_drawn()
    {
        var warm = Plain.Set(("joint[plate].expansion", "12.3 µm/(m·K)"), ("joint[plate].clampedExpansion", "21 µm/(m·K)"), ("joint[plate].partTemperature", "100 °C"));
        var joint = JointFigures.Of(new View(warm.Now()), "plate");
        Assert.Equal(joint.Greatest + 6083, DiagramLine.Of(joint).Single(l => l.Name == "most, heat added").Force[1], 12.0);
        Assert.DoesNotContain("most, heat added", DiagramLine.Of(JointFigures.Of(new View(Plain.Now()), "plate")).Select(l => l.Name));
    }

    [Fact]
    public void A_joint_that_opens_is_drawn_with_all_of_the_force_on_the_bolt()
    {
        var working = DiagramLine.Of(JointFigures.Of(new View(Plain.Set(("joint[plate].axialForce", "60 kN")).Now()), "plate")).Single(l => l.Name == DiagramLine.WorkingForce);
        Assert.Equal([0.0, 60e3], working.Force);
    }

    [Theory]
    [InlineData("holeDiameter", "17 mm", "head friction diameter: bearing face diameter: given 16 mm")]
    [InlineData("pitch", "20 mm", "preload from torque: pitch: given 20 mm")]
    public void What_cannot_be_is_told_and_not_left_blank(string field, string value, string quantity)
    {
        var view = new View(Plain.Set(($"joint[plate].{field}", value)).Now());
        Assert.StartsWith($"Joint plate: {quantity}, must be ", JointFigures.Of(view, "plate").Refused, StringComparison.Ordinal);
        Assert.Equal(JointFigures.Of(view, "plate").Refused, TorqueSheet.Of(view, "plate").Refused);
        Assert.Empty(JointFigures.Of(new View(Plain.Now()), "plate").Refused);
        Assert.Empty(JointFigures.Of(new View(Plain.Without("joint[plate].holeDiameter").Now()), "plate").Refused);
    }

    // 60 N·m on M10 × 1.25 of class 10.9; of aluminium 7075 the same torque is past yield.
    [Fact]
    public void Other_bolts_are_told_whether_they_hold()
    {
        var sheet = SwapSheet.Of(Plain, new DutyDesk(), "plate", SwapMaterial.Of("aluminium 7075"));
        var (now, same, share) = (sheet.Columns[0].By(SwapVerdict.Tightening)!, sheet.Columns[1].By(SwapVerdict.Tightening)!, sheet.Columns[3].By(SwapVerdict.Tightening)!);
        Assert.Equal(Verdict.Holds, now.Verdict);
        Assert.Equal(Verdict.FallsShort, same.Verdict);
        Assert.Equal(now.Reserve, share.Reserve, 1e-6);
        Assert.Contains("same torque: falls short by greatest bolt preload while tightening", string.Join(' ', sheet.FallsShort), StringComparison.Ordinal);
        Assert.Equal(Verdict.NotKnownYet, sheet.Columns[1].By("bolt-fatigue")!.Verdict);
        Assert.DoesNotContain(sheet.FallsShort, s => s.StartsWith("now", StringComparison.Ordinal));
    }

    [Fact]
    public void Limits_stand_in_the_units_of_the_reader()
    {
        var fact = JointFigures.Of(new View(Plain.Now()), "plate").Facts.Single(f => f.Name == JointFigures.InService);
        Assert.Equal("yield 940 MPa", fact.Words(imperial: false));
        Assert.Equal("yield 136335 psi", fact.Words(imperial: true));
        Assert.Contains("goes 0.787", Assert.Single(BoltList.Of(new View(Plain.Now())).Lines).RemarkIn(imperial: true), StringComparison.Ordinal);
    }

    [Fact]
    public void A_joint_that_is_not_there_is_named() =>
        Assert.Equal("there is no joint 'tail'; wanted one of plate", Assert.Throws<BadInputException>(() => JointSheet.Named(new View(Plain.Now()), "tail")).Message);

    [Fact]
    public void Nothing_is_made_up_where_fields_are_missing()
    {
        var joint = JointFigures.Of(new View(Plain.Without("joint[plate].grip").Without("joint[plate].axialForce").Now()), "plate");
        Assert.True(double.IsNaN(joint.BoltResilience) && double.IsNaN(joint.Force) && double.IsNaN(joint.ClampLeft) && double.IsNaN(joint.WorkingStress));
        Assert.False(double.IsNaN(joint.Preload));
        Assert.Equal(0.12, BoltFriction.Guide(Lubricant.AntiSeize).Usual);
    }
}
