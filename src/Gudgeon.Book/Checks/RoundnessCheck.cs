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
        var read = Parts.Select(p => (p.Name, p.Field, Readings: Roundness.Of(view, p.Field, index))).Where(p => p.Readings is not null).ToList();
        var known = read.Select(p => (p.Name, Worst: Of(p.Readings!))).Where(p => p.Worst is not null).ToList();
        if (known.Count == 0)
        {
            view.Unknown(read.Count == 0 ? "readings at stations" : $"a second station in {read[0].Field.At(index)}");
            return Judgement.AtMost(Quantity, double.NaN, double.NaN, Dimension.Length, "mm", Unsourced);
        }

        var (name, worst) = known.MaxBy(p => p.Worst);
        return Judgement.AtMost(Quantity, worst!.Value, view.Limit($"{Id}.max", Dimension.Length, "mm", Usual), Dimension.Length, "mm", Unsourced) with { Remark = name.Length > 0 ? $"of the {name}" : "" };
    }

    /// <summary>What is judged of one set of readings, m; null where they are at too few stations to tell.</summary>
    private protected abstract double? Of(Roundness readings);
}
