using Google.OrTools.Sat;

namespace Gudgeon.Book.Bottom;

/// <summary>
/// Chooses a pair of shells for every bearing of a size, exactly: fewest bearings left without, then fewest halves bought, then
/// clearances nearest to what is wanted (the sum over the bearings). The halves of a pair are of one grade or of two next to
/// each other (common practice: farther apart the journal no longer runs in the middle of its housing).
/// </summary>
public static class ShellChoice
{
    /// <summary>Clearances compare to a tenth of a micrometre.</summary>
    private const double Grain = 1e-7;

    /// <summary>The best choice; the same for the same problem.</summary>
    public static IReadOnlyList<ShellsChosen> Best(ShellProblem problem)
    {
        var model = new CpModel();
        var offers = problem.Bearings.Select(b => Offers(b, problem.Grades)).ToList();
        var taken = offers.ConvertAll(of => of.ConvertAll(_ => model.NewBoolVar("")));
        foreach (var row in taken)
        {
            model.AddExactlyOne(row);
        }

        var bought = problem.Grades.Select((grade, g) => Bought(model, grade, g, offers, taken)).ToList();
        model.Minimize(Cost(offers, taken, bought));
        var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1 cp_model_probing_level:0 symmetry_level:0" };
        var status = solver.Solve(model);
        return status == CpSolverStatus.Optimal
            ? [.. problem.Bearings.Select((b, i) => Chosen(b, problem.Grades, offers[i][taken[i].FindIndex(solver.BooleanValue)]))]
            : throw new InvalidOperationException($"the choice of shells ended {status}");
    }

    /// <summary>Whether a clearance is allowed; the edges are.</summary>
    internal static bool Allowed(BearingRoom bearing, double clearance) => clearance >= bearing.Least - (Grain / 2) && clearance <= bearing.Greatest + (Grain / 2);

    /// <summary>How far off the wanted clearance, in tenths of a micrometre.</summary>
    internal static long Off(BearingRoom bearing, double clearance) => (long)Math.Round(Math.Abs(clearance - bearing.Wanted) / Grain);

    /// <summary>Pairs that give an allowed clearance, and none.</summary>
    private static List<Offer> Offers(BearingRoom bearing, IReadOnlyList<ShellGrade> grades)
    {
        var offers = new List<Offer>();
        for (var thin = 0; thin < grades.Count; thin++)
        {
            for (var thick = thin; thick <= Math.Min(thin + 1, grades.Count - 1); thick++)
            {
                var clearance = bearing.Room - grades[thin].Middle - grades[thick].Middle;
                if (Allowed(bearing, clearance))
                {
                    offers.Add(new Offer(thin, thick, Off(bearing, clearance)));
                }
            }
        }

        offers.Add(new Offer(-1, -1, 0));
        return offers;
    }

    /// <summary>Halves of a grade that are to be bought: those used beyond those at hand.</summary>
    private static IntVar Bought(CpModel model, ShellGrade grade, int at, List<List<Offer>> offers, List<List<BoolVar>> taken)
    {
        var most = 2 * offers.Count;
        var bought = model.NewIntVar(0, most, "");
        var used = LinearExpr.WeightedSum(taken.SelectMany(t => t), offers.SelectMany(o => o).Select(o => (o.Thin == at ? 1L : 0) + (o.Thick == at ? 1L : 0)));
        model.Add(used - bought <= Math.Min(grade.Count ?? most, most));
        return bought;
    }

    /// <summary>The three aims in one sum, each weighing more than all that come after it together.</summary>
    private static LinearExpr Cost(List<List<Offer>> offers, List<List<BoolVar>> taken, List<IntVar> bought)
    {
        var buying = (offers.SelectMany(o => o).Select(o => o.Off).DefaultIfEmpty(0).Max() * offers.Count) + 1;
        var leaving = buying * ((2 * offers.Count) + 1);
        return LinearExpr.WeightedSum(taken.SelectMany(t => t), offers.SelectMany(o => o).Select(o => o.Thin < 0 ? leaving : o.Off)) + (buying * LinearExpr.Sum(bought));
    }

    private static ShellsChosen Chosen(BearingRoom bearing, IReadOnlyList<ShellGrade> grades, Offer offer) =>
        offer.Thin < 0 ? new ShellsChosen(bearing, null, null) : new ShellsChosen(bearing, grades[offer.Thin], grades[offer.Thick]);

    /// <summary>A pair that a bearing can be given, by the places of its grades; -1 for none.</summary>
    private sealed record Offer(int Thin, int Thick, long Off);
}
