using Gudgeon.Calc.Fits;

namespace Gudgeon.Calc.Tests.Fits;

/// <summary>
/// The tables of ISO 286-1 held to the rules by which the standard was made (ISO 286-1:1988, annex A, from memory; since 2010
/// it gives the rounded values only): every range of size, so that a figure that was copied wrong stands out.
/// </summary>
public class IsoRules
{
    private static readonly double[] Ends = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];

    private static readonly double[] FineEnds = [18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500];

    [Fact]
    public void A_grade_is_ten_times_the_one_five_finer()
    {
        foreach (var (end, grade) in Ends.SelectMany(e => Enumerable.Range(11, 8), (e, g) => (e, g)))
        {
            // The one that the standard rounds otherwise.
            var wanted = (end, grade) == (6, 11) ? 75 : 10 * Grade(end, grade - 5);
            Assert.Equal(wanted, Grade(end, grade), 1e-9);
        }
    }

    [Fact]
    public void Grades_rise_with_the_size_and_with_their_number()
    {
        foreach (var grade in Enumerable.Range(-1, 20))
        {
            var sizes = Ends.Select(e => Grade(e, grade)).ToList();
            Assert.Equal(sizes.Order(), sizes);
            Assert.True(grade == 18 || Ends.All(e => Grade(e, grade) < Grade(e, grade + 1)), $"grade {grade}");
        }
    }

    // Distance of the lower limit: a grade and a share of D, the geometric mean of the range.
    [Theory]
    [InlineData(ShaftDeviation.u, 7, 1)]
    [InlineData(ShaftDeviation.v, 7, 1.25)]
    [InlineData(ShaftDeviation.x, 7, 1.6)]
    [InlineData(ShaftDeviation.y, 7, 2)]
    [InlineData(ShaftDeviation.z, 7, 2.5)]
    [InlineData(ShaftDeviation.za, 8, 3.15)]
    [InlineData(ShaftDeviation.zb, 9, 4)]
    [InlineData(ShaftDeviation.zc, 10, 5)]
    public void Tight_shafts_hold_to_their_rule(ShaftDeviation letter, int grade, double share)
    {
        foreach (var (low, end) in FineEnds.Zip(FineEnds.Skip(1)))
        {
            var (table, rule) = (1e6 * LimitsAndFits.Shaft(end * 1e-3, letter, 7).Lower, Grade(end, grade) + (share * Math.Sqrt(low * end)));
            Assert.Equal(rule, table, Math.Max(0.025 * rule, 1));
            Rounded(table);
        }
    }

    [Theory]
    [InlineData(ShaftDeviation.a, 265, 1.3, 120, 0, 3.5)]
    [InlineData(ShaftDeviation.b, 140, 0.85, 160, 0, 1.8)]
    public void Loose_shafts_hold_to_their_rule(ShaftDeviation letter, double fixedPart, double share, double until, double fixedAbove, double shareAbove)
    {
        foreach (var (low, end) in FineEnds.Zip(FineEnds.Skip(1)))
        {
            var mean = Math.Sqrt(low * end);
            var rule = end <= until ? fixedPart + (share * mean) : fixedAbove + (shareAbove * mean);
            var table = -1e6 * LimitsAndFits.Shaft(end * 1e-3, letter, 9).Upper;
            Assert.Equal(rule, table, 0.05 * rule);
            Rounded(table);
        }
    }

    [Theory]
    [InlineData(ShaftDeviation.c, ShaftDeviation.cd, ShaftDeviation.d)]
    [InlineData(ShaftDeviation.e, ShaftDeviation.ef, ShaftDeviation.f)]
    [InlineData(ShaftDeviation.f, ShaftDeviation.fg, ShaftDeviation.g)]
    public void Letters_between_two_are_their_geometric_mean(ShaftDeviation looser, ShaftDeviation between, ShaftDeviation tighter)
    {
        double Distance(ShaftDeviation letter, double end) => -1e6 * LimitsAndFits.Shaft(end * 1e-3, letter, 7).Upper;
        foreach (var end in Ends.Where(e => e <= 50))
        {
            var rule = Math.Sqrt(Distance(looser, end) * Distance(tighter, end));
            Assert.Equal(rule, Distance(between, end), Math.Max(0.025 * rule, 1));
        }
    }

    private static double Grade(double end, int grade) => 1e6 * (LimitsAndFits.Hole(end * 1e-3, HoleDeviation.H, grade) is var limits ? limits.Upper - limits.Lower : 0);

    /// <summary>Large figures are rounded to fives, and to fifties over a thousand.</summary>
    private static void Rounded(double table)
    {
        var step = table > 1000 ? 50 : table > 500 ? 5 : 1;
        Assert.Equal(0, Math.Abs(Math.IEEERemainder(table, step)), 1e-6);
    }
}
