using System.Globalization;
using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Book.Checks.Balance;

/// <summary>Balance factor of each crank pin against the one wanted.</summary>
public sealed class BalanceFactorCheck : Check
{
    public override string Id => "balance-factor";

    public override string Title => "Balance factor of the crank";

    public override string Family => "balance";

    public override string Source => "all of the turning mass and the factor's share of what goes to and fro; within 2 % of the factor wanted: common practice, no source";

    public override string Caution => BalanceSheet.Caution;

    public override IEnumerable<string> Instances(View view) => view.Knows(Crank.BalanceFactor)
        ? view.Try(CrankAssembly.Of) is { } line ? line.Pins.Select(p => (p.Key + 1).ToString(CultureInfo.InvariantCulture)) : [""]
        : [];

    public override Judgement Examine(View view, string index)
    {
        var line = CrankAssembly.Of(view);
        var pin = line is null ? default : BalanceAssembly.Pins(line).FirstOrDefault(p => p.Pin.ToString(CultureInfo.InvariantCulture) == index);
        var bob = view.Amount(Crank.BobWeight);
        var factor = pin.Reciprocating > 0 ? view.Work(CrankBalance.Factor, bob, pin.Rotating, pin.Reciprocating) : double.NaN;
        var wanted = view.Amount(Crank.BalanceFactor);
        var either = view.Limit("balance-factor.within", Dimension.Number, "%", 0.02);
        return Judgement.Between("balance factor", factor, wanted - either, wanted + either, Dimension.Number, "%", "crank.balanceFactor, 2 % either way: common practice, no source");
    }
}
