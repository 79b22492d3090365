using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Bearings;

/// <summary>What the checks of journals and housings read at several stations share.</summary>
public abstract class RoundnessCheck : Check
{
    private const string Unsourced = "common practice, no source; the maker's limit comes first";

    public override string Family => "bearings";

    public override string Source => "readings at stations along journal and housing in two axes; limit: " + Unsourced;

    /// <summary>What is judged: "out of round".</summary>
    private protected abstract string Quantity { get; }

    /// <summary>Greatest allowed, SI.</summary>
    private protected abstract double Usual { get; }

    /// <summary>Where there are readings at stations.</summary>
    public override IEnumerable<string> Instances(View view) => BearingFit.Keys(view).Where(i => view.Knows(Bearing.JournalTable, i) || view.Knows(Bearing.HousingTable, i));

    public override Judgement Examine(View view, string index)
    {
        var parts = new[] { (Name: "journal", Field: Bearing.JournalTable), (Name: "housing", Field: Bearing.HousingTable) };
        var (name, worst) = parts.Select(p => (p.Name, Worst: Roundness.Of(view, p.Field, index) is { } readings ? Of(readings) : double.NegativeInfinity)).MaxBy(p => p.Worst);
        return Judgement.AtMost(Quantity, worst, view.Limit($"{Id}.max", Dimension.Length, "mm", Usual), Dimension.Length, "mm", Unsourced) with { Remark = $"of the {name}" };
    }

    /// <summary>What is judged of one set of readings, m.</summary>
    private protected abstract double Of(Roundness readings);
}

/// <summary>How far journals and housings are out of round.</summary>
public sealed class OutOfRoundCheck : RoundnessCheck
{
    public override string Id => "bearing-out-of-round";

    public override string Title => "Journal and housing round";

    private protected override string Quantity => "out of round";

    private protected override double Usual => 5e-6;

    private protected override double Of(Roundness readings) => readings.OutOfRound;
}

/// <summary>How far journals and housings taper.</summary>
public sealed class TaperCheck : RoundnessCheck
{
    public override string Id => "bearing-taper";

    public override string Title => "Journal and housing straight";

    private protected override string Quantity => "taper";

    private protected override double Usual => 5e-6;

    private protected override double Of(Roundness readings) => readings.Taper;
}
