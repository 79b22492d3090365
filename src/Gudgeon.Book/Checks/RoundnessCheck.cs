using Gudgeon.Book.Fields;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks;

/// <summary>What the checks of bores, journals and housings read at several stations share.</summary>
public abstract class RoundnessCheck : Check
{
    private protected const string Unsourced = "common practice, no source; the maker's limit comes first";

    /// <summary>What is judged: "out of round".</summary>
    private protected abstract string Quantity { get; }

    /// <summary>Greatest allowed, SI.</summary>
    private protected abstract double Usual { get; }

    /// <summary>The tables that it reads, with a word for the part where there are several.</summary>
    private protected abstract IReadOnlyList<(string Name, Field Field)> Parts { get; }

    public override Judgement Examine(View view, string index)
    {
        var (name, worst) = Parts.Select(p => (p.Name, Worst: Roundness.Of(view, p.Field, index) is { } readings ? Of(readings) : double.NegativeInfinity)).MaxBy(p => p.Worst);
        return Judgement.AtMost(Quantity, worst, view.Limit($"{Id}.max", Dimension.Length, "mm", Usual), Dimension.Length, "mm", Unsourced) with { Remark = name.Length > 0 ? $"of the {name}" : "" };
    }

    /// <summary>What is judged of one set of readings, m.</summary>
    private protected abstract double Of(Roundness readings);
}
