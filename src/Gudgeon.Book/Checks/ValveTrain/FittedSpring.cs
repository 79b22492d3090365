using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>The springs on one valve as fitted: one, or an outer and an inner. Every check, drawing and sheet means these.</summary>
internal sealed class FittedSpring
{
    private readonly View _view;
    private readonly string _index;

    /// <param name="view">Where it is read and worked.</param>
    /// <param name="index">The valve.</param>
    /// <param name="spacer">Spacer under the springs, m; the book's when null.</param>
    public FittedSpring(View view, string index, double? spacer = null)
    {
        (_view, _index) = (view, index);
        var outer = new Coil(view, index, Spring.Coil, spacer);
        Coils = HasInner(view, index) ? [outer, new Coil(view, index, InnerSpring.Coil, spacer)] : [outer];
    }

    /// <summary>The coils, the outer one first.</summary>
    public IReadOnlyList<Coil> Coils { get; }

    /// <summary>Loads of all coils together.</summary>
    public FittedLoads Loads()
    {
        var loads = Coils.Select(c => c.Loads()).ToList();
        return new FittedLoads(loads.Sum(l => l.Seat), loads.Sum(l => l.Open));
    }

    /// <summary>Load of all coils at a height of the outer spring, N.</summary>
    public double LoadAt(double height) => Coils.Sum(c => c.LoadAt(height));

    /// <summary>Margin before the first of the coils binds at full lift, m; may be negative.</summary>
    public double CoilBindMargin() => Coils.Min(c => c.CoilBindMargin());

    /// <summary>Mass of all coils, kg.</summary>
    public double Mass() => Coils.Sum(c => c.Mass);

    /// <summary>Mean rate over the lift, N/m.</summary>
    public double MeanRate()
    {
        var loads = Loads();
        return (loads.Open - loads.Seat) / _view.Amount(Valve.Lift, _index);
    }

    /// <summary>The judgement of the coil that is worst off, which is named where there are two.</summary>
    public Judgement Worst(Func<Coil, Judgement> judge)
    {
        var judged = Coils.Select(c => judge(c) with { Remark = Coils.Count > 1 ? $"the {c.Name}" : "" }).ToList();
        return judged.FirstOrDefault(j => double.IsNaN(j.Reserve)) ?? judged.MinBy(j => j.Reserve)!;
    }

    private static bool HasInner(View view, string index) => view.Knows(InnerSpring.Wire, index) || view.Knows(InnerSpring.LoadTable, index);
}
