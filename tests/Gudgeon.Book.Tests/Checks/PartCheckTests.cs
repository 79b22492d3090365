using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>Cost and mass of the parts, at both sides of the edge, and only where a target is set.</summary>
public class PartCheckTests
{
    private static readonly BuildBook Parts = Books.Of(
        ("part[pistons].source", "bought"), ("part[pistons].quantity", "2"), ("part[pistons].price", "148"), ("part[pistons].mass", "400 g"),
        ("part[cover].source", "own"), ("part[cover].mass", "1.2 kg"),
        ("part[old].state", "scrapped"), ("part[old].price", "4"));

    [Fact]
    public void The_budget_holds_or_falls_short()
    {
        Appraisal.Of(Parts.Set(("target.budget", "300")), "budget").Is(300, 1, Verdict.Holds);
        Appraisal.Of(Parts.Set(("target.budget", "240")), "budget").Is(300, 0.8, Verdict.FallsShort);
        Assert.Equal("300.00 in the shop's own money", Appraisal.Of(Parts.Set(("target.budget", "240")), "budget").Judgement!.Remark);
    }

    [Fact]
    public void The_mass_holds_or_falls_short()
    {
        Appraisal.Of(Parts.Set(("target.mass", "2.5 kg")), "parts-mass").Is(2, 1.25, Verdict.Holds);
        Appraisal.Of(Parts.Set(("target.mass", "1.6 kg")), "parts-mass").Is(2, 0.8, Verdict.FallsShort);
    }

    [Fact]
    public void A_bought_part_without_a_price_and_a_part_without_a_mass_are_wanted()
    {
        Assert.Equal(["part[pistons].price"], Appraisal.Of(Parts.Without("part[pistons].price").Set(("target.budget", "300")), "budget").Missing);
        Assert.Equal(["part[cover].mass"], Appraisal.Of(Parts.Without("part[cover].mass").Set(("target.mass", "2 kg")), "parts-mass").Missing);
    }

    [Theory]
    [InlineData("budget")]
    [InlineData("parts-mass")]
    public void Without_a_target_or_without_parts_nothing_is_asked(string check)
    {
        Assert.Empty(CheckCatalogue.Find(check).Instances(new View(Parts.Now())));
        Assert.Empty(CheckCatalogue.Find(check).Instances(new View(Books.Of(("target.budget", "300"), ("target.mass", "2 kg")).Now())));
    }
}
