using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Calc.Tests.Crank;

/// <summary>Rods as struts and as bars that their own inertia bends; pins and fillets at the ends of their ranges.</summary>
public class RodSectionTests
{
    [Fact]
    public void EulerAndJohnsonMeetAtTheTransition()
    {
        foreach (var ends in new[] { 1.0, 4.0 })
        {
            var transition = Math.Sqrt(2 * Math.PI * Math.PI * ends * 205e9 / 800e6);
            var below = RodSection.Johnson(168e-6, 8e-3, 8e-3 * transition * (1 - 1e-9), ends, 800e6);
            var above = RodSection.Johnson(168e-6, 8e-3, 8e-3 * transition * (1 + 1e-9), ends, 800e6);
            Assert.Equal(below.Load, above.Load, below.Load * 1e-6);
            Assert.Equal(168e-6 * 400e6, below.Load, 168e-6 * 400e6 * 1e-6);
        }
    }

    [Fact]
    public void ARodIsTwiceAsStiffHeldAtBothEnds() =>
        Assert.Equal(RodSection.Johnson(1e-4, 2e-3, 0.4, 4, 400e6).Slenderness / 2, RodSection.Johnson(1e-4, 2e-3, 0.2, 1, 400e6).Slenderness, 1e-9);

    // Moments of the loads to one side of the place, summed over the bar.
    [Theory]
    [InlineData(0, 30e3, 0.57735)]
    [InlineData(9e3, 25e3, 0.3)]
    [InlineData(-4e3, 12e3, 0.8)]
    public void BendingIsThatOfTheHingedBar(double first, double last, double at)
    {
        const double Mass = 1.3, Length = 0.128;
        const int Steps = 20000;
        var (reaction, moment) = (0.0, 0.0);
        for (var i = 0; i < Steps; i++)
        {
            var x = (i + 0.5) / Steps;
            reaction += Mass * (first + ((last - first) * x)) * (1 - x) * Length / Steps;
        }

        for (var i = 0; i < Steps * at; i++)
        {
            var x = (i + 0.5) / Steps;
            moment -= Mass * (first + ((last - first) * x)) * (at - x) * Length * Length / Steps;
        }

        moment += reaction * at * Length;
        Assert.Equal(moment, RodSection.Moment(Mass, Length, first, last, at), Math.Abs(moment) * 1e-3);
    }

    [Fact]
    public void TheTextbooksWhipIsTheGreatestOverTheBar()
    {
        var whip = RodSection.Whip(168e-6, 1e-6, 0.128, 0.036, 1000);
        var bar = Enumerable.Range(1, 999).Max(i => RodSection.Moment(168e-6 * 7850, 0.128, 0, 0.036 * 1e6, i / 1000.0));
        Assert.Equal(bar, whip.Moment, bar * 1e-5);
        Assert.Equal(whip.Moment, RodSection.Moment(168e-6 * 7850, 0.128, 0, 0.036 * 1e6, RodSection.WhipAt), whip.Moment * 1e-9);
    }

    [Fact]
    public void AThinnerWallGoesMoreOval()
    {
        Assert.True(GudgeonPin.Ovality(50e3, 22e-3, 14e-3, 58e-3).Growth > 2 * GudgeonPin.Ovality(50e3, 22e-3, 11e-3, 58e-3).Growth);
        Assert.Throws<FormulaDomainException>(() => GudgeonPin.Ovality(50e3, 22e-3, 5e-3, 58e-3));
        Assert.Throws<FormulaDomainException>(() => GudgeonPin.Stress(50e3, 22e-3, 11e-3, 58e-3, 26e-3, 27e-3));
    }

    [Fact]
    public void ASharperFilletIsStressedMore()
    {
        var (round, sharp) = (CrankFillets.Pin(42e-3, 8e-3, 17e-3, 84e-3, 3e-3), CrankFillets.Pin(42e-3, 8e-3, 17e-3, 84e-3, 1.5e-3));
        Assert.True(sharp.Bending > round.Bending && sharp.Torsion > round.Torsion);
        Assert.Contains("web width", Assert.Throws<FormulaDomainException>(() => CrankFillets.Pin(42e-3, 8e-3, 17e-3, 120e-3, 3e-3)).Message, StringComparison.Ordinal);
    }

    // Below S / D = -0.5 the rule stays where it is.
    [Fact]
    public void WithoutOverlapTheFactorsStayAtTheRulesEnd() =>
        Assert.Equal(CrankFillets.Journal(42e-3, -21e-3, 17e-3, 84e-3, 3e-3), CrankFillets.Journal(42e-3, -30e-3, 17e-3, 84e-3, 3e-3));

    [Fact]
    public void GoodmanGivesCompressionNoCredit()
    {
        Assert.Equal(1.5, CrankFatigue.Goodman(100e6, -300e6, 300e6, 900e6).Safety, 1e-9);
        Assert.Equal(1.5, CrankFatigue.Goodman(200e6, -200e6, 300e6, 900e6).Safety, 1e-9);
        Assert.Equal(1 / ((100.0 / 300) + (200.0 / 900)), CrankFatigue.Goodman(300e6, 100e6, 300e6, 900e6).Safety, 1e-9);
    }
}
