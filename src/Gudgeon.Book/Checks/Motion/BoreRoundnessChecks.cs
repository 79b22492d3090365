using Gudgeon.Book.Fields;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Checks.Motion;

/// <summary>How far the bores are out of round, by readings at three heights in two axes.</summary>
public sealed class BoreOutOfRoundCheck : RoundnessCheck
{
    public override string Id => "bore-out-of-round";

    public override string Title => "Bore round";

    public override string Family => "moving parts";

    public override string Source => "readings at heights of the bore in two axes; limit: " + Unsourced;

    public override IEnumerable<string> Instances(View view) => BoreTaperCheck.Read(view);

    private protected override string Quantity => "out of round";

    private protected override double Usual => 10e-6;

    private protected override IReadOnlyList<(string Name, Field Field)> Parts => BoreTaperCheck.Bore;

    private protected override double? Of(Roundness readings) => readings.OutOfRound;
}

/// <summary>How far the bores taper.</summary>
public sealed class BoreTaperCheck : RoundnessCheck
{
    internal static readonly IReadOnlyList<(string Name, Field Field)> Bore = [("", Cylinder.BoreTable)];

    public override string Id => "bore-taper";

    public override string Title => "Bore straight";

    public override string Family => "moving parts";

    public override string Source => "readings at heights of the bore in two axes; limit: " + Unsourced;

    public override IEnumerable<string> Instances(View view) => Read(view);

    private protected override string Quantity => "taper";

    private protected override double Usual => 10e-6;

    private protected override IReadOnlyList<(string Name, Field Field)> Parts => Bore;

    private protected override double? Of(Roundness readings) => readings.Taper;

    /// <summary>The cylinders of which there are readings at heights.</summary>
    internal static IEnumerable<string> Read(View view) => Checks.Instances.Cylinders(view).Where(i => view.Knows(Cylinder.BoreTable, i));
}
