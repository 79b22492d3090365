using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Book.Checks.Motion;

/// <summary>Mean piston speed at the rev limit.</summary>
public sealed class PistonSpeedCheck : Check
{
    public override string Id => "piston-speed";

    public override string Title => "Mean piston speed at the rev limit";

    public override string Family => "moving parts";

    public override string Source => "definition; 25 m/s for a racing engine with forged pistons: common practice, no source";

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "mean piston speed",
        view.Work(PistonSpeed.Mean, view.Amount(Crank.Stroke), view.Amount(Engine.RevLimit)),
        view.AmountOr(Engine.PistonSpeedLimit, 25),
        Dimension.Speed,
        "m/s",
        "engine.pistonSpeedLimit, else common practice");
}

/// <summary>Piston acceleration at TDC at the rev limit.</summary>
public sealed class PistonAccelerationCheck : Check
{
    public override string Id => "piston-acceleration";

    public override string Title => "Peak piston acceleration at the rev limit";

    public override string Family => "moving parts";

    public override string Source => "exact slider-crank; limit by the maker of piston and rod";

    public override Judgement Examine(View view, string index)
    {
        var motion = view.Work(SliderCrank.Motion, view.Amount(Crank.Stroke) / 2, view.Amount(Rod.Length), 0.0, view.Amount(Engine.RevLimit), 0.0);
        return Judgement.AtMost("peak piston acceleration", motion.Acceleration, view.Amount(Engine.PistonAccelerationLimit), Dimension.Acceleration, "m/s²", "engine.pistonAccelerationLimit");
    }
}

/// <summary>Peak cylinder pressure over the run against what the piston is made for.</summary>
public sealed class PeakPressureCheck : Check
{
    public override string Id => "peak-pressure";

    public override string Title => "Peak cylinder pressure on the piston";

    public override string Family => "moving parts";

    public override string Source => "engine run, full load; limit by the maker of the piston";

    public override Judgement Examine(View view, string index)
    {
        var peak = view.Duty()?.PeakPressure ?? (double.NaN, double.NaN);
        return Judgement.AtMost("peak cylinder pressure", peak.Value, view.Amount(Piston.CompressionLimit), Dimension.Pressure, "bar", "piston.peakPressureLimit") with { Remark = At(peak.Speed) };
    }

    internal static string At(double speed) => double.IsNaN(speed) ? "" : $"at {Engine.RevLimit.Print(speed)}";
}

/// <summary>Piston-to-bore clearance at 20 °C.</summary>
public sealed class PistonClearanceCheck : Check
{
    public override string Id => "piston-clearance";

    public override string Title => "Piston-to-bore clearance";

    public override string Family => "moving parts";

    public override string Source => "bore less piston at the gauge point, both at 20 °C (ISO 1:2022); limits by the maker of the piston";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index) => Judgement.Between(
        "piston-to-bore clearance",
        view.Amount(Cylinder.Bore, index) - view.Amount(Piston.Diameter, index),
        view.Amount(Piston.ClearanceMin, index),
        view.Amount(Piston.ClearanceMax, index),
        Dimension.Length,
        "mm",
        "piston.clearanceMin and clearanceMax");
}
