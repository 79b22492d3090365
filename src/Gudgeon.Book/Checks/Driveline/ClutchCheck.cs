using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Clutch;

namespace Gudgeon.Book.Checks.Driveline;

/// <summary>Torque that the clutch carries against the greatest torque of the run through the primary drive.</summary>
public sealed class ClutchCheck : Check
{
    public override string Id => "clutch";

    public override string Title => "Clutch torque capacity";

    public override string Family => "driveline";

    public override string Source => "uniform wear (Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 16-23); friction by the maker of the plates";

    public override Judgement Examine(View view, string index)
    {
        var capacity = Capacity(view);
        var (torque, speed) = view.Duty()?.Torque ?? (double.NaN, double.NaN);
        return Judgement.AtMost("torque at the clutch", torque * view.Amount(Fields.Driveline.Primary), capacity, Dimension.Torque, "N·m", "capacity of the plates") with { Remark = Motion.PeakPressureCheck.At(speed) };
    }

    /// <summary>Torque that the plates carry, N·m.</summary>
    internal static double Capacity(View view) => view.Work(
        PlateClutch.Torque,
        view.Amount(Fields.Clutch.SpringLoad),
        view.Amount(Fields.Clutch.Friction),
        view.Amount(Fields.Clutch.OuterDiameter),
        view.Amount(Fields.Clutch.InnerDiameter),
        view.Count(Fields.Clutch.Faces),
        FacePressure.UniformWear).Torque;
}
