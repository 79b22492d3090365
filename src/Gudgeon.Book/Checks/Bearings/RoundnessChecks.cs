using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Checks.Bearings;

/// <summary>What the checks of journals and housings read at several stations share.</summary>
public abstract class BearingRoundnessCheck : RoundnessCheck
{
    public override string Family => "bearings";

    public override string Source => "readings at stations along journal and housing in two axes; limit: " + Unsourced;

    private protected override double Usual => 5e-6;

    private protected override IReadOnlyList<(string Name, Field Field)> Parts => [("journal", Bearing.JournalTable), ("housing", Bearing.HousingTable)];

    /// <summary>Where there are readings at stations.</summary>
    public override IEnumerable<string> Instances(View view) => BearingFit.Keys(view).Where(i => view.Knows(Bearing.JournalTable, i) || view.Knows(Bearing.HousingTable, i));
}

/// <summary>How far journals and housings are out of round.</summary>
public sealed class OutOfRoundCheck : BearingRoundnessCheck
{
    public override string Id => "bearing-out-of-round";

    public override string Title => "Journal and housing round";

    private protected override string Quantity => "out of round";

    private protected override double? Of(Roundness readings) => readings.OutOfRound;
}

/// <summary>How far journals and housings taper.</summary>
public sealed class TaperCheck : BearingRoundnessCheck
{
    public override string Id => "bearing-taper";

    public override string Title => "Journal and housing straight";

    private protected override string Quantity => "taper";

    private protected override double? Of(Roundness readings) => readings.Taper;
}
