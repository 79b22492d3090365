using CsCheck;
using Gudgeon.Book.Bottom;

namespace Gudgeon.Book.Tests.Bottom;

/// <summary>Shells for all bearings of a size together.</summary>
public class ShellChoiceTests
{
    private const double Micro = 1e-6;

    private static readonly Gen<ShellProblem> Problems = Gen.Select(
        Gen.Int[-14, 14].Array[1, 3],
        Gen.Select(Gen.Int[0, 4], Gen.Bool).Array[1, 4]).Select((rooms, stock) => new ShellProblem(
            [.. rooms.Select((r, i) => Bearing($"main.{i + 1}", 4042 + r))],
            [.. stock.Select((s, i) => Grade(i + 1, 1992 + (4 * i), s.Item2 ? s.Item1 : null))]));

    // Worked by hand: 4042 µm of room less 2 × 2000 leaves the 42 that are wanted; 4038 takes one half of the next grade thinner.
    [Fact]
    public void The_pair_that_gives_what_is_wanted_is_taken()
    {
        ShellGrade[] grades = [Grade(1, 1996, 4), Grade(2, 2000, 4)];
        var chosen = ShellChoice.Best(new ShellProblem([Bearing("main.1", 4042), Bearing("main.2", 4038)], grades));
        Assert.Equal([(2, 2), (1, 2)], chosen.Select(c => ((int)c.Thin!.Number, (int)c.Thick!.Number)));
        Assert.Equal([42, 42], chosen.Select(c => Math.Round(c.Clearance / Micro)));
        Assert.Equal(42 - 4, chosen[0].Tightest / Micro, 1e-6);
        Assert.Equal(42 + 4, chosen[0].Loosest / Micro, 1e-6);
    }

    // Two halves of the grade that both would like: one bearing takes them, the other what is at hand rather than what is to be bought.
    [Fact]
    public void What_is_at_hand_comes_before_what_fits_best()
    {
        ShellGrade[] grades = [Grade(1, 1996, 4), Grade(2, 2000, 2)];
        var chosen = ShellChoice.Best(new ShellProblem([Bearing("main.1", 4042), Bearing("main.2", 4042)], grades));
        Assert.Equal(2, chosen.SelectMany(c => new[] { c.Thin!, c.Thick! }).Count(g => g.Number == 2));
    }

    [Fact]
    public void Halves_farther_apart_than_one_grade_are_no_pair()
    {
        ShellGrade[] grades = [Grade(1, 1980, 4), Grade(2, 2000, 4), Grade(3, 2020, 4)];
        var chosen = Assert.Single(ShellChoice.Best(new ShellProblem([new BearingRoom("main.1", 4042 * Micro, 41.5 * Micro, 42.5 * Micro, 42 * Micro)], grades)));
        Assert.Equal((2, 2), ((int)chosen.Thin!.Number, (int)chosen.Thick!.Number));
    }

    [Fact]
    public void A_bearing_that_no_pair_does_for_stays_without()
    {
        var chosen = Assert.Single(ShellChoice.Best(new ShellProblem([Bearing("main.1", 4200)], [Grade(1, 1996, 4)])));
        Assert.Null(chosen.Thin);
        Assert.True(double.IsNaN(chosen.Clearance));
    }

    [Fact]
    public void No_choice_of_all_that_there_are_is_better() => Problems.Sample(problem =>
    {
        var (open, bought, off) = Score(problem, [.. ShellChoice.Best(problem).Select(c => c.Thin is null ? ((int, int)?)null : (Place(problem, c.Thin), Place(problem, c.Thick!)))]);
        Assert.Equal(All(problem).Min(), (open, bought, off));
    });

    private static int Place(ShellProblem problem, ShellGrade grade) => problem.Grades.ToList().IndexOf(grade);

    /// <summary>The scores of every choice.</summary>
    private static IEnumerable<(int Open, int Bought, long Off)> All(ShellProblem problem)
    {
        IEnumerable<List<(int, int)?>> choices = [[]];
        foreach (var bearing in problem.Bearings)
        {
            var pairs = from thin in Enumerable.Range(0, problem.Grades.Count)
                        from thick in new[] { thin, thin + 1 }
                        where thick < problem.Grades.Count
                        where ShellChoice.Allowed(bearing, bearing.Room - problem.Grades[thin].Middle - problem.Grades[thick].Middle)
                        select ((int, int)?)(thin, thick);
            var offers = pairs.Append(null).ToList();
            choices = choices.SelectMany(c => offers.Select(o => c.Append(o).ToList())).ToList();
        }

        return choices.Select(c => Score(problem, c));
    }

    private static (int Open, int Bought, long Off) Score(ShellProblem problem, IReadOnlyList<(int Thin, int Thick)?> choice)
    {
        var used = choice.OfType<(int Thin, int Thick)>().SelectMany(c => new[] { c.Thin, c.Thick }).CountBy(g => g);
        var bought = used.Sum(u => Math.Max(0, u.Value - (problem.Grades[u.Key].Count ?? int.MaxValue)));
        var off = choice.Select((c, i) => c is var (thin, thick) ? ShellChoice.Off(problem.Bearings[i], problem.Bearings[i].Room - problem.Grades[thin].Middle - problem.Grades[thick].Middle) : 0).Sum();
        return (choice.Count(c => c is null), bought, off);
    }

    private static BearingRoom Bearing(string key, double micrometres) => new(key, micrometres * Micro, 30 * Micro, 54 * Micro, 42 * Micro);

    private static ShellGrade Grade(int number, double middle, int? count) => new(number, (middle - 2) * Micro, (middle + 2) * Micro, count);
}
