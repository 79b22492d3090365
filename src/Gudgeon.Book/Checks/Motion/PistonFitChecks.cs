using Gudgeon.Book.Checks.Rods;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Checks.Motion;

/// <summary>Piston-to-bore clearance that is left when both are hot.</summary>
public sealed class PistonClearanceHotCheck : Check
{
    public override string Id => "piston-clearance-hot";

    public override string Title => "Piston-to-bore clearance, hot";

    public override string Family => "moving parts";

    public override string Source => "clearance at 20 °C less the difference of linear expansion; 0.01 mm left for the oil film: common practice, no source";

    public override string Caution => "A piston that fills its bore seizes and locks the rear wheel: warm the engine up before it is opened, and keep a hand on the clutch.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "piston-to-bore clearance, hot", Left(view, index), view.AmountOr(Piston.HotMin, 0.01e-3, index), Dimension.Length, "mm", "piston.hotMin, else common practice");

    /// <summary>Clearance left, m.</summary>
    internal static double Left(View view, string index)
    {
        var bore = view.Amount(Cylinder.Bore, index);
        return bore - view.Amount(Piston.Diameter, index) - view.Work(
            PistonClearance.LostWhenHot, bore, view.Amount(Piston.Expansion, index), view.Amount(Piston.SkirtTemperature, index), view.Amount(Cylinder.Expansion, index), view.Amount(Cylinder.Temperature, index), ThermalLength.Reference);
    }
}

/// <summary>Pressure of the skirt on the wall at the greatest side thrust.</summary>
public sealed class SkirtPressureCheck : Check
{
    public override string Id => "skirt-pressure";

    public override string Title => "Side thrust on the piston's skirt";

    public override string Family => "moving parts";

    public override string Source => "greatest side thrust at the hardest speeds on diameter times skirt length (Kolchin & Demidov, from memory); limit by the maker of the piston";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index)
    {
        var (thrust, speed) = new RodDuty(view, index).Side;
        var pressure = view.Work(PistonClearance.SkirtPressure, thrust, view.Amount(Piston.Diameter, index), view.Amount(Piston.SkirtLength, index));
        return Judgement.AtMost("pressure on the skirt", pressure, view.Amount(Piston.SkirtPressureLimit, index), Dimension.Pressure, "MPa", "piston.skirtPressureLimit") with { Remark = PeakPressureCheck.At(speed) };
    }
}
