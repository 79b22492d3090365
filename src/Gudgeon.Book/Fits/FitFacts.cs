using Gudgeon.Book.Checks.Fits;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Fits;
using Gudgeon.Calc.Materials;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Fits;

/// <summary>What is told of one fit besides its sizes.</summary>
internal static class FitFacts
{
    private const double Room = ThermalLength.Reference;

    /// <summary>The facts that are known.</summary>
    public static IEnumerable<Fact> Of(View view, string index, FittedPair pair)
    {
        List<Fact> all =
        [
            BuildUp(view, index, "hole", pair.HoleBuildUp(), Fit.HoleCoating),
            BuildUp(view, index, "shaft", pair.ShaftBuildUp(), Fit.ShaftCoating),
            Length("interference left when the faces are pressed flat", Sketch.Known(() => view.Knows(Fit.HoleRoughness, index) ? pair.Effective() : double.NaN)) with { Remark = "Rz of both faces counted off" },
            Pressure("pressure of the joint, cold and at rest", Sketch.Known(() => pair.Stress(pair.Effective()).Pressure)),
            Pressure("pressure of the joint, running", Sketch.Known(pair.RunningPressure)) with { Remark = Running(view, index, pair) },
            Pressure("stress at the bore of the hub, cold", Sketch.Known(() => pair.Stress(pair.Interference()).HubMises)) with { RemarkIn = imperial => Yield(pair.HubYield, imperial) },
            Pressure("squeeze at the bore of the shaft, cold", Sketch.Known(() => view.Knows(Fit.ShaftBore, index) ? -pair.Stress(pair.Interference()).ShaftHoop : double.NaN)) with { RemarkIn = imperial => Yield(pair.ShaftYield, imperial) },
            new Fact("slip torque, running", Sketch.Known(pair.SlipTorque), Dimension.Torque, "N·m") { RemarkIn = imperial => Asked(view, index, imperial) },
            new Fact("hub lifts off its shaft at", Sketch.Known(() => view.Knows(Fit.SpeedRatio, index) ? view.Try(trial => new FittedPair(trial, index).LiftOffSpeed()) : double.NaN), Dimension.RotationalSpeed, "rpm") { Remark = "cold, speed of the joint itself" },
            new Fact("hub and shaft come loose at", Sketch.Known(pair.LossTemperature), Dimension.Temperature, "°C") { Remark = "both as hot as each other" },
            Length("clearance counted for going together", Sketch.Known(() => pair.Interference() > 0 ? pair.Clearance() : double.NaN)),
            Length("draw-up on the taper for a hundredth of a millimetre", Sketch.Known(() => view.AmountIf(Fit.Taper, index) is { } taper ? view.Work(TaperFit.DrawUp, 1e-5, taper) : double.NaN)),
            Pressure("pressure on the key's flank, all torque through it", Sketch.Known(() => view.Knows(Fit.KeyLength, index) ? Math.Max(pair.Key().HubPressure, pair.Key().ShaftPressure) : double.NaN)) with { RemarkIn = imperial => Section(view, index, imperial) },
            Pressure("shear in the key", Sketch.Known(() => view.Knows(Fit.KeyLength, index) ? pair.Key().Shear : double.NaN)),
        ];
        return all.Where(f => f.Known);
    }

    /// <summary>Interference over the temperature of hub and shaft together from −20 °C, for the picture; empty when it is not known.</summary>
    public static IReadOnlyList<(double Temperature, double Interference)> Window(View view, string index, FittedPair pair)
    {
        if (Sketch.Known(pair.Effective) is not { } cold || view.Choice<MaterialGrade>(Fit.HubMaterial, index) is not { } hub || view.Choice<MaterialGrade>(Fit.ShaftMaterial, index) is not { } shaft || view.AmountIf(Fit.Size, index) is not { } size)
        {
            return [];
        }

        var (grows, follows) = (MaterialTable.Of(hub).Expansion, MaterialTable.Of(shaft).Expansion);
        return [.. Enumerable.Range(0, 12).Select(i => 253.15 + (20.0 * i)).Select(t => (t, ShrinkFit.WhenHot(cold, size, grows, follows, t - Room, t - Room)))];
    }

    private static Fact Length(string name, double? value) => new(name, value, Dimension.Length, "µm") { InchUnit = "thou" };

    private static Fact BuildUp(View view, string index, string part, double? change, Field coating) =>
        Length($"coating on the {part}, on its diameter", change is { } c ? Math.Round(c, 9) : null) with { RemarkIn = imperial => view.AmountIf(coating, index) is { } thick ? $"{Figures.Print(thick, Dimension.Length, imperial ? "thou" : coating.Unit, 3, imperial)} thick, still to come: the {part} is drawn bare and coated" : "still to come, by its route card: the part is drawn bare and coated" };

    private static Fact Pressure(string name, double? value) => new(name, value, Dimension.Pressure, "MPa");

    private static string Yield(double strength, bool imperial) => double.IsNaN(strength) ? "" : $"all of the interference; yield {Figures.Print(strength, Dimension.Pressure, "MPa", 4, imperial)}";

    private static string Running(View view, string index, FittedPair pair) => (pair.RunsHot, view.Knows(Fit.SpeedRatio, index)) switch
    {
        (true, true) => "hot, at the rev limit",
        (true, false) => "hot",
        (false, true) => "at 20 °C, at the rev limit",
        _ => "at 20 °C, at rest",
    };

    private static string Asked(View view, string index, bool imperial) => view.AmountIf(Fit.Torque, index) is { } torque ? $"{Figures.Print(torque, Dimension.Torque, "N·m", 4, imperial)} asked of it" : "";

    private static string Section(View view, string index, bool imperial) => view.AmountIf(Fit.Size, index) is { } size && Sketch.Known(() => ParallelKey.Section(size).Width) is { } width
        ? $"{Figures.Print(width, Dimension.Length, "mm", 3, imperial)} by {Figures.Print(ParallelKey.Section(size).Height, Dimension.Length, "mm", 3, imperial)}, DIN 6885-1"
        : "";
}
