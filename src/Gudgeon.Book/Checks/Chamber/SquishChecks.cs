using Gudgeon.Book.Checks.Rods;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Bearings;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;
using Gudgeon.Calc.Crank;
using Gudgeon.Calc.Metrology;

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

/// <summary>Squish clearance left at the rev limit: rod stretched, clearances taken up, piston tipped, parts hot.</summary>
public sealed class RunningSquishCheck : Check
{
    public override string Id => "squish-running";

    public override string Title => "Squish clearance at the rev limit";

    public override string Family => "chamber";

    public override string Source => "cold clearance less rod stretch (Hooke's law on the pull at TDC), less rock of the piston, clearances of the rod's bearings and thermal growth as far as they are known; 0.5 mm left: common practice, no source";

    public override string Caution => "Crank and case give as well: prove the clearance cold, and look for witness marks on the band after the first full run.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index)
    {
        var left = view.Work(Squish.Running, SquishCheck.Cold(view, index), Stretch(view, index), view.AmountOr(Piston.Rock, 0, index), Clearances(view, index), Growth(view, index) ?? 0);
        return Judgement.AtLeast("running squish clearance", left, view.Limit("squish-running.min", Dimension.Length, "mm", 0.5e-3), Dimension.Length, "mm", "common practice, no source");
    }

    /// <summary>By how much a rod is longer at TDC at the rev limit, m.</summary>
    internal static double Stretch(View view, string cylinder) => Pull(view, cylinder).Stretch;

    /// <summary>Pull on a rod at TDC at the rev limit without gas and what it stretches by.</summary>
    internal static RodPull Pull(View view, string cylinder) => view.Work(
        RodLoads.Stretch,
        view.Amount(Piston.Mass, cylinder) + view.Amount(Rod.SmallEndMass, cylinder),
        view.Amount(Crank.Stroke) / 2,
        view.Amount(Rod.Length, cylinder),
        view.Amount(Engine.RevLimit),
        new RodShank(view, cylinder).Area,
        view.AmountOr(Rod.Modulus, RodShank.UsualModulus, cylinder));

    /// <summary>Clearances of big and small end that the pull takes up, m; those that are not known count as none.</summary>
    internal static double Clearances(View view, string cylinder) => BigEnd(view, $"bigEnd.{cylinder}") + view.AmountOr(Pin.Clearance, 0, cylinder);

    /// <summary>By how much rod and piston outgrow the cylinder when hot, m; null where no temperatures are given.</summary>
    internal static double? Growth(View view, string cylinder)
    {
        Field[] wanted = [Piston.CrownHeight, Rod.Expansion, Rod.Temperature, Piston.Expansion, Piston.CrownTemperature, Cylinder.Expansion, Cylinder.Temperature];
        return wanted.All(f => view.Knows(f, cylinder))
            ? view.Work(
                Squish.Growth,
                view.Amount(Crank.Stroke) / 2,
                view.Amount(Rod.Length, cylinder),
                view.Amount(Piston.CrownHeight, cylinder),
                view.Amount(Rod.Expansion, cylinder),
                view.Amount(Rod.Temperature, cylinder) - Cold,
                view.Amount(Piston.Expansion, cylinder),
                view.Amount(Piston.CrownTemperature, cylinder) - Cold,
                view.Amount(Cylinder.Expansion, cylinder),
                view.Amount(Cylinder.Temperature, cylinder) - Cold)
            : null;
    }

    /// <summary>Reference temperature of measured parts, ISO 1, K.</summary>
    private const double Cold = ThermalLength.Reference;

    /// <summary>Clearance of a big end as measured; the greatest allowed where it was not.</summary>
    private static double BigEnd(View view, string bearing) => view.Knows(Bearing.Housing, bearing) && view.Knows(Bearing.ShellThickness, bearing) && view.Knows(Bearing.Journal, bearing)
        ? Math.Max(0, view.Work(ShellClearance.Clearance, view.Amount(Bearing.Housing, bearing), view.Amount(Bearing.ShellThickness, bearing), view.Amount(Bearing.Journal, bearing), 0.0))
        : view.AmountOr(Bearing.ClearanceMax, 0, bearing);
}
