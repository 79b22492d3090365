using CsCheck;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Tests.Fields;

public class FieldTests
{
    private static readonly Gen<string> Name = Gen.Char["abcXYZ019-_"].Array[1, 6].Select(c => new string(c));
    private static readonly Gen<string> Number = Gen.Int[1, 40].Select(n => $"{n}");

    public static TheoryData<string> Paths => [.. FieldCatalogue.All.Select(f => f.Path)];

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_field_is_declared_whole(string path)
    {
        var field = FieldCatalogue.Find(path)!;
        Assert.Equal(path, field.Path);
        Assert.Matches("^[a-z][A-Za-z0-9]*(\\.[a-z][A-Za-z0-9]*)+$", path);
        Assert.NotEmpty(field.Label);
        Assert.False(char.IsLower(field.Label[0]), field.Label);
        Assert.Equal(field.Kind == FieldKind.Choice, field.Choices.Count > 0);
        Assert.Equal(field.Kind == FieldKind.Table, field.Columns.Count > 0);
        Assert.Equal(field.Choices.Count, field.Choices.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void The_plausible_range_is_inside_the_possible_one_and_is_read_back_in_the_display_unit(string path)
    {
        var field = FieldCatalogue.Find(path)!;
        if (field.Kind != FieldKind.Amount)
        {
            return;
        }

        Assert.NotNull(Units.Find(field.Dimension, field.Unit));
        Assert.True(field.Plausible.Low < field.Plausible.High, path);
        var middle = (field.Plausible.Low + field.Plausible.High) / 2;
        Assert.InRange(middle, field.Possible.Low, field.Possible.High);
        var read = KnownValue.Read(field, field.Print(middle));
        Assert.Equal(middle, read.Si, Math.Abs(middle) * 1e-4);
        Assert.Empty(read.Question);
        var beyond = field.Plausible.High + (2 * (field.Plausible.High - field.Plausible.Low));
        if (beyond > field.Possible.High)
        {
            Assert.StartsWith(field.Label, Assert.Throws<BadInputException>(() => KnownValue.Read(field, field.Print(beyond))).Message, StringComparison.Ordinal);
            return;
        }

        Assert.StartsWith(field.Label, KnownValue.Read(field, field.Print(beyond)).Question, StringComparison.Ordinal);
    }

    [Fact]
    public void Lengths_and_masses_at_or_below_zero_are_refused_where_they_cannot_be()
    {
        Assert.Throws<BadInputException>(() => KnownValue.Read(Cylinder.Bore, "0 mm"));
        Assert.Throws<BadInputException>(() => KnownValue.Read(Piston.Mass, "-3 g"));
        Assert.Throws<BadInputException>(() => KnownValue.Read(Spring.Spacer, "-0.1 mm"));
        Assert.Throws<BadInputException>(() => KnownValue.Read(Weather.Temperature, "-300 °C"));
        Assert.Throws<BadInputException>(() => KnownValue.Read(Engine.Cylinders, "0"));
        Assert.Equal(0, KnownValue.Read(Spring.Spacer, "0 mm").Si);
        Assert.Equal(-0.2e-3, KnownValue.Read(Cylinder.DeckHeight, "-0.2 mm").Si, 12);
    }

    [Fact]
    public void An_address_prints_as_it_is_read()
    {
        var cylinder = Gen.Select(Gen.OneOf("bore", "deckHeight"), Number, (f, n) => $"cylinder[{n}].{f}");
        var valve = Gen.Select(Gen.OneOf("inlet", "exhaust"), Number.Array[0, 2], (side, n) => $"valve[{string.Join('.', n.Prepend(side))}].lift");
        var joint = Name.Array[1, 3].Select(n => $"joint[{string.Join('.', n)}].torque");
        Gen.OneOf(cylinder, valve, joint, Gen.OneOf(FieldCatalogue.All.Select(f => f.Path).ToArray())).Sample(path => FieldCatalogue.Address(path).Path == path);
    }

    [Fact]
    public void An_address_belongs_to_its_groups_nearest_first() =>
        Assert.Equal(
            ["valve[inlet.1.2].lift", "valve[inlet.1].lift", "valve[inlet].lift", "valve.lift"],
            FieldCatalogue.Address("valve[inlet.1.2].lift").WithGroups().Select(a => a.Path));

    [Theory]
    [InlineData("cylinder[0].bore")]
    [InlineData("cylinder[-1].bore")]
    [InlineData("cylinder[01].bore")]
    [InlineData("cylinder[one].bore")]
    [InlineData("cylinder[1.2].bore")]
    [InlineData("cylinder[99999999999].bore")]
    [InlineData("cylinder[].bore")]
    [InlineData("cylinder[1.bore")]
    [InlineData("cylinder]1[.bore")]
    [InlineData("cylinder[1]")]
    [InlineData("[1].bore")]
    [InlineData("crank[1].stroke")]
    [InlineData("valve[middle].lift")]
    [InlineData("valve[inlet.0].lift")]
    [InlineData("valve[inlet.1.2.3].lift")]
    [InlineData("joint[].torque")]
    [InlineData("joint[a..b].torque")]
    [InlineData("joint[head gasket].torque")]
    [InlineData("")]
    public void A_bad_address_is_refused(string path) => Assert.Throws<BadInputException>(() => FieldCatalogue.Address(path));

    [Theory]
    [InlineData("cylinder.bor", "cylinder.bore")]
    [InlineData("cilinder[1].bore", "cylinder.bore")]
    [InlineData("Spring.Wire", "spring.wire")]
    [InlineData("piston.topRingGab", "piston.topRingGap")]
    public void A_mistyped_path_is_answered_with_the_nearest(string given, string nearest)
    {
        var e = Assert.Throws<BadInputException>(() => FieldCatalogue.Address(given));
        Assert.Contains($"the nearest is '{nearest}'", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_choice_of_an_enumeration_reads_back_to_the_enumeration()
    {
        Assert.Equal("torque estimated b", EnumWords.Of("TorqueEstimatedB"));
        Assert.Equal(Enum.GetValues<Gudgeon.Calc.Joints.TighteningMethod>().Length, Joint.Method.Choices.Count);
        Assert.Equal("blower racing", KnownValue.Read(Piston.RingService, " Blower Racing ").Content);
    }

    [Fact]
    public void A_spring_load_given_as_a_torque_is_refused_by_name()
    {
        var e = Assert.Throws<BadInputException>(() => KnownValue.Read(Spring.SeatLoadMin, "95 N·m"));
        Assert.Equal("Least seat load wanted: given '95 N·m', which is a torque; wanted a force such as '12.3 N'", e.Message);
        Assert.Throws<BadInputException>(() => KnownValue.Read(Joint.Torque, "44 J"));
        Assert.Equal(Dimension.Torque, Joint.Torque.Dimension);
    }
}
