using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Checks.Balance;

/// <summary>A balance shaft as its marks stand against where it would leave least.</summary>
public sealed class BalanceShaftCheck : Check
{
    public override string Id => "balance-shaft-timing";

    public override string Title => "Balance shaft in time";

    public override string Family => "balance";

    public override string Source => "vector sum of crank and shafts; half a tooth of its gear, for it can be no nearer: geometry";

    public override string Caution => "A shaft out of time shakes harder than none would. Crank locked at top dead centre, weights looked at and turned twice by hand before the case is closed.";

    public override IEnumerable<string> Instances(View view) => BalanceAssembly.ShaftNames(view);

    public override Judgement Examine(View view, string index)
    {
        var line = CrankAssembly.Of(view);
        var shafts = line is null ? null : BalanceAssembly.Shafts(view, line);
        var teeth = view.Count(Balancer.Teeth, index);
        var known = line is not null && shafts is not null && !double.IsNaN(view.Amount(Crank.BobWeight)) && teeth > 0;
        var timing = known ? ShaftTiming.Of(line!, shafts!, shafts!.Select(s => s.Name).ToList().IndexOf(index), BalanceAssembly.Length(line!)) : null;
        if (timing is { Best: null })
        {
            view.Unknown($"something at {Figures.Number(Math.Abs(timing.Shaft.Ratio), 2)} times crank speed for {Balancer.Phase.Subject.Path}[{index}] to balance");
        }

        return Judgement.AtMost("out of time, shaft angle", Math.Abs(timing?.Early ?? double.NaN), Math.PI / Math.Max(teeth, 1), Dimension.Angle, "°", "half a tooth of its gear") with
        {
            Remark = timing?.Early is { } early && early != 0 ? $"stands {(early > 0 ? "early" : "late")}; least at {Balancer.Phase.Print(timing.Best!.Value)}" : "",
        };
    }
}
