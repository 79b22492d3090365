using Gudgeon.Book.Bottom;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Book.Tests.Bottom;

/// <summary>The torsional line from a book, against closed forms.</summary>
public class TorsionSheetTests
{
    private static readonly BuildBook Single = Books.Of(
        ("engine.cylinders", "1"),
        ("engine.revLimit", "9000 rpm"),
        ("crank.stroke", "70 mm"),
        ("cylinder.bore", "80 mm"),
        ("rod.length", "130 mm"),
        ("rod.mass", "400 g"),
        ("rod.smallEndMass", "100 g"),
        ("piston.mass", "400 g"),
        ("rotor[crank].inertia", "8000 kg·mm²"),
        ("rotor[crank].cylinder", "1"),
        ("rotor[wheel].on", "crank"),
        ("rotor[wheel].inertia", "5000 kg·mm²"),
        ("rotor[wheel].stiffness", "40 kN·m/rad"),
        ("rotor[wheel].diameter", "30 mm"));

    [Fact]
    public void Two_rotors_from_a_book_have_the_frequency_of_the_closed_form()
    {
        var sheet = TorsionSheet.Of(Single, null);
        var crank = 0.008 + Torsion.ThrowInertia(0.3, 0.5, 0.035, 0.13);
        Assert.Equal(Torsion.TwoRotors(crank, 0.005, 40e3), Assert.Single(sheet.Sweep!.Shapes).Frequency, 1e-6);
        Assert.False(sheet.WithGas);
        Assert.Equal("before the changes", sheet.OtherIs);
        Assert.Equal("wheel on crank", Assert.Single(sheet.Joints).Joint.Name);
        var row = sheet.Joints[0];
        Assert.Equal(16 * row.Torque / (Math.PI * Math.Pow(0.03, 3)), row.Stress!.Value, 1);
    }

    // A wheel geared to twice the speed counts four times, with its joint.
    [Fact]
    public void A_geared_rotor_is_referred_by_the_square_of_its_ratio()
    {
        var geared = Single.Set(("rotor[wheel].ratio", "2"), ("rotor[wheel].inertia", "1250 kg·mm²"), ("rotor[wheel].stiffness", "10 kN·m/rad"));
        Assert.Equal(TorsionSheet.Of(Single, null).Sweep!.Shapes[0].Frequency, TorsionSheet.Of(geared, null).Sweep!.Shapes[0].Frequency, 1e-6);
    }

    [Fact]
    public void Stiffness_comes_from_sizes_where_it_is_not_given()
    {
        var shaft = Single.Without("rotor[wheel].stiffness").Set(("rotor[wheel].length", "80 mm"));
        Assert.Equal(TorsionalStiffness.Shaft(0.03, 0.08), TorsionSheet.Of(shaft, null).Build!.Line.Rotors[1].Stiffness, 1e-6);
        var web = shaft.Set(("rotor[wheel].pinDiameter", "34 mm"), ("rotor[wheel].pinLength", "22 mm"), ("rotor[wheel].webThickness", "18 mm"), ("rotor[wheel].webWidth", "70 mm"));
        var both = TorsionalStiffness.KerWilson(0.03, 0.08, 0.034, 0.022, 0.035, 0.018, 0.07) + TorsionalStiffness.Carter(0.03, 0.08, 0.034, 0.022, 0.035, 0.018, 0.07);
        Assert.Equal(both / 2, TorsionSheet.Of(web, null).Build!.Line.Rotors[1].Stiffness, 1e-6);
    }

    [Fact]
    public void What_hangs_on_the_nose_is_held_against_the_line_without()
    {
        var blown = Single.Set(("rotor[nose].on", "crank"), ("rotor[nose].inertia", "900 kg·mm²"), ("rotor[nose].stiffness", "60 kN·m/rad"), ("rotor[blower].on", "nose"), ("rotor[blower].inertia", "2000 kg·mm²"), ("rotor[blower].stiffness", "1 kN·m/rad"));
        var sheet = TorsionSheet.Of(blown, null, "nose");
        Assert.Equal("without nose", sheet.OtherIs);
        Assert.Equal(TorsionSheet.Of(Single, null).Sweep!.Shapes[0].Frequency, Assert.Single(sheet.Other), 1e-9);
        Assert.Equal(3, sheet.Sweep!.Shapes.Count);
    }

    [Theory]
    [InlineData("rotor[wheel].on", "pulley", "rotor[wheel].on: given 'pulley', wanted a rotor that leads to crank: crank")]
    [InlineData("rotor[crank].on", "wheel", "rotor.on: every rotor hangs on another, wanted one rotor that the others hang from")]
    [InlineData("rotor[crank].cylinder", "3", "rotor[crank].cylinder: given 3, wanted 1 to 1")]
    public void Rotors_that_make_no_line_are_refused(string path, string value, string sentence) =>
        Assert.Equal(sentence, Assert.Throws<BadInputException>(() => TorsionSheet.Of(Single.Set((path, value)), null)).Message);

    [Fact]
    public void What_is_not_known_is_named()
    {
        Assert.Contains("rotor.stiffness", TorsionSheet.Of(Single.Without("rotor[wheel].stiffness"), null).Missing.Replace("[wheel]", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("two rotors or more", TorsionSheet.Of(Single.Without("rotor[wheel].on").Without("rotor[wheel].inertia").Without("rotor[wheel].stiffness").Without("rotor[wheel].diameter"), null).Missing, StringComparison.Ordinal);
        Assert.Equal("without: given 'x', wanted one of wheel", Assert.Throws<BadInputException>(() => TorsionSheet.Of(Single, null, "x")).Message);
    }

    // The blower's belt and the nose pulley on the demo twin: with gas, and the check's value is the sheet's.
    [Fact]
    public void The_blown_twin_in_its_running_range()
    {
        var sheet = TorsionSheet.Of(DemoBooks.Heron.Book, DemoBooks.Heron.Desk);
        Assert.True(sheet.WithGas);
        Assert.InRange(sheet.Sweep!.Shapes[1].Frequency, 45, 65);
        Assert.Equal(sheet.Sweep.Shapes.Count - 3, sheet.Other.Count);
        var worst = sheet.Joints.Max(j => j.Stress / j.Joint.Limit)!.Value;
        var finding = DemoBooks.Heron.Findings.Single(f => f.Id == "torsional-critical");
        Assert.Equal(worst, 1 / finding.Reserve, 0.03 * worst);
        Assert.Equal(Verdict.Holds, finding.Verdict);
    }
}
