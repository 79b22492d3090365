using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Book.Checks.Chamber;

/// <summary>Squish clearance as built, cold.</summary>
public sealed class SquishCheck : Check
{
    public override string Id => "squish";

    public override string Title => "Squish clearance, cold";

    public override string Family => "chamber";

    public override string Source => "1.0 mm with a steel rod: common practice, no source";

    public override string Caution => "A piston that touches the head breaks the rod: prove the clearance with solder or clay on both sides of the pin before the engine turns under its own power.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "squish clearance",
        Cold(view, index),
        view.Limit("squish.min", Dimension.Length, "mm", 1.0e-3),
        Dimension.Length,
        "mm",
        "common practice, no source");

    internal static double Cold(View view, string cylinder) => view.Work(
        Squish.Clearance,
        view.Amount(Cylinder.GasketThickness, cylinder),
        view.Amount(Cylinder.DeckHeight, cylinder),
        0.0);
}

/// <summary>Squish clearance left when the rod stretches at the rev limit.</summary>
public sealed class RunningSquishCheck : Check
{
    public override string Id => "squish-running";

    public override string Title => "Squish clearance at the rev limit";

    public override string Family => "chamber";

    public override string Source => "rod stretch by Hooke's law on the reciprocating pull at TDC; 0.5 mm left: common practice, no source";

    public override string Caution => "Piston rock and bearing clearance come on top; the figure is a screening.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index)
    {
        var left = view.Work(Squish.Running, SquishCheck.Cold(view, index), Stretch(view, index), 0.0, 0.0, 0.0);
        return Judgement.AtLeast("running squish clearance", left, view.Limit("squish-running.min", Dimension.Length, "mm", 0.5e-3), Dimension.Length, "mm", "common practice, no source");
    }

    /// <summary>By how much a rod is longer at TDC at the rev limit, m.</summary>
    internal static double Stretch(View view, string cylinder) => view.Work(
        RodLoads.Stretch,
        view.Amount(Piston.Mass, cylinder) + view.Amount(Rod.SmallEndMass, cylinder),
        view.Amount(Crank.Stroke) / 2,
        view.Amount(Rod.Length, cylinder),
        view.Amount(Engine.RevLimit),
        view.Amount(Rod.ShankArea, cylinder),
        view.AmountOr(Rod.Modulus, 205e9, cylinder)).Stretch;
}
