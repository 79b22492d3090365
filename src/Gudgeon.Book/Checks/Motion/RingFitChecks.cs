using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Checks.Motion;

/// <summary>Top ring end gap that is left when ring and bore are hot.</summary>
public sealed class TopRingGapHotCheck : Check
{
    public override string Id => "ring-gap-hot";

    public override string Title => "Top ring end gap, hot";

    public override string Family => "moving parts";

    public override string Source => "gap less linear expansion of ring and bore; 0.1 mm left: common practice, no source";

    public override string Caution => "Rings warm up before the bore does: a gap that is only just there when all is hot may shut while the engine is being opened for the first time.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "top ring end gap, hot", Left(view, index), view.Limit("ring-gap-hot.min", Dimension.Length, "mm", 0.1e-3), Dimension.Length, "mm", "common practice, no source");

    /// <summary>Gap left, m.</summary>
    internal static double Left(View view, string index) => view.Amount(Piston.TopRingGap, index) - view.Work(
        RingGap.Closing, view.Amount(Cylinder.Bore, index), view.Amount(Piston.RingExpansion, index), view.Amount(Piston.RingTemperature, index), view.Amount(Cylinder.Expansion, index), view.Amount(Cylinder.TopTemperature, index), ThermalLength.Reference);
}

/// <summary>Clearance of a ring in its groove, along the cylinder.</summary>
public abstract class RingSideCheck : Check
{
    public override string Family => "moving parts";

    public override string Source => "groove less ring; 0.02 mm to 0.08 mm: common practice, no source, the ring maker's figure goes first";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index) => Judgement.Between(
        "side clearance", view.Amount(Groove, index) - view.Amount(Ring, index), view.Limit($"{Id}.min", Dimension.Length, "mm", 0.02e-3), view.Limit($"{Id}.max", Dimension.Length, "mm", 0.08e-3), Dimension.Length, "mm", "common practice, no source");

    private protected abstract Field Groove { get; }

    private protected abstract Field Ring { get; }
}

/// <summary>Top ring in its groove.</summary>
public sealed class TopRingSideCheck : RingSideCheck
{
    public override string Id => "ring-side-top";

    public override string Title => "Side clearance of the top ring";

    private protected override Field Groove => Piston.TopGroove;

    private protected override Field Ring => Piston.TopRingHeight;
}

/// <summary>Second ring in its groove.</summary>
public sealed class SecondRingSideCheck : RingSideCheck
{
    public override string Id => "ring-side-second";

    public override string Title => "Side clearance of the second ring";

    private protected override Field Groove => Piston.SecondGroove;

    private protected override Field Ring => Piston.SecondRingHeight;
}

/// <summary>Room behind the top ring, piston in the middle of its bore.</summary>
public sealed class TopRingBackCheck : Check
{
    public override string Id => "ring-back";

    public override string Title => "Room behind the top ring";

    public override string Family => "moving parts";

    public override string Source => "half of bore less groove root, less the ring, piston in the middle of its bore; 0.15 mm: common practice, no source";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "room behind the ring", Room(view, index), view.Limit("ring-back.min", Dimension.Length, "mm", 0.15e-3), Dimension.Length, "mm", "common practice, no source");

    /// <summary>The room, m.</summary>
    internal static double Room(View view, string index) => ((view.Amount(Cylinder.Bore, index) - view.Amount(Piston.TopGrooveRoot, index)) / 2) - view.Amount(Piston.TopRingThickness, index);
}
