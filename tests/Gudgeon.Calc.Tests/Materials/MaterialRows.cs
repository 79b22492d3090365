using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Materials;

namespace Gudgeon.Calc.Tests.Materials;

public class MaterialRows
{
    [Fact]
    public void Every_grade_has_a_row_with_a_source() => Assert.All(Enum.GetValues<MaterialGrade>(), grade =>
    {
        var material = MaterialTable.Of(grade);
        Assert.NotEmpty(material.Source);
        Assert.All(material.Strengths, s => Assert.True(s.Tensile > s.Yield));
        Assert.Equal(material.Strengths.OrderBy(s => s.UpTo), material.Strengths);
    });

    [Fact]
    public void A_section_thicker_than_the_table_is_refused() =>
        Assert.Throws<FormulaDomainException>(() => MaterialTable.Properties(MaterialGrade.Steel42CrMo4, 0.3));

    [Fact]
    public void Specific_stiffness_of_the_structural_metals_is_alike() => Assert.All( // E/ρ about 25 to 26 MN·m/kg, the reason why a titanium rod is not a stiffer one
        [MaterialGrade.Steel42CrMo4, MaterialGrade.TitaniumTi6Al4V, MaterialGrade.Aluminium7075T6],
        grade => Assert.InRange(MaterialTable.Of(grade).Modulus / MaterialTable.Of(grade).Density, 25e6, 27e6));
}
