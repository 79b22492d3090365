using Gudgeon.Book.Build;
using Gudgeon.Book.Checks.Boost;
using Gudgeon.Book.Checks.Drive;
using Gudgeon.Book.Checks.Motion;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Drive;

/// <summary>The way of the air at one engine speed. SI; null what is not known or what a displacement blower has not.</summary>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Rotor">Impeller or rotor speed.</param>
/// <param name="SpeedShare">The same over the greatest that is allowed.</param>
/// <param name="Flow">Air, kg/s.</param>
/// <param name="Corrected">The same at the map's reference conditions.</param>
/// <param name="Ratio">Pressure ratio of the blower.</param>
/// <param name="SurgeMargin">Of the mean flow, pressure ratio and flow at constant speed.</param>
/// <param name="SurgeMarginAtRatio">Of the mean flow at the same pressure ratio.</param>
/// <param name="ChokeMargin">Of the mean flow.</param>
/// <param name="FilterDrop">Pressure that the filter takes, Pa.</param>
/// <param name="Ducts">Speed of the air in each duct, m/s.</param>
public sealed record AirRow(double Speed, double Rotor, double? SpeedShare, double Flow, double? Corrected, double Ratio, double? SurgeMargin, double? SurgeMarginAtRatio, double? ChokeMargin, double? FilterDrop, IReadOnlyList<double?> Ducts);

/// <summary>Filter, ducts and compressor map.</summary>
/// <param name="Steps">Its numbers.</param>
/// <param name="Ducts">Names of the ducts, in the order of each row's speeds.</param>
/// <param name="Rows">Over the engine run.</param>
/// <param name="Duty">The run, for the picture of the map; null without one.</param>
/// <param name="Allowed">Least margins allowed: to surge and to choke.</param>
/// <param name="Missing">What is wanted.</param>
public sealed record AirSheet(IReadOnlyList<DriveStep> Steps, IReadOnlyList<string> Ducts, IReadOnlyList<AirRow> Rows, EngineDuty? Duty, (double Surge, double Choke) Allowed, string Missing) : IDriveSheet
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Refused { get; init; } = [];

    /// <summary>What it leaves out.</summary>
    public const string Remark = "Mean flows at full load: two cylinders pulse, so that surge comes sooner and a filter close to the blower takes more than this says; an airbox between them evens it out. Air as dry, and in a duct as dense as at rest. The filter clean and dry.";

    /// <summary>Which of the definitions in use the margin goes by.</summary>
    internal const string AtSpeed = "pressure ratio and flow against the surge point of the same speed: Πs m / (Π ms) - 1";

    private const string Sucked = "A blower without its filter draws in rags, tools and fingers: filter or a stout screen on before the engine turns.";

    /// <summary>The sheet of the values that hold.</summary>
    public static AirSheet Of(Snapshot now, DutyDesk? desk)
    {
        if (DriveWords.Without(now) is { Length: > 0 } none)
        {
            return new AirSheet([], [], [], null, default, none);
        }

        var view = new View(now, desk);
        var (filter, ducts, duty) = (new FittedFilter(view), FittedDuct.All(view), view.Duty());
        var most = BlowerDuty.MostAir(duty);
        return new AirSheet(
            [.. Filter(view, filter, most), .. Through(ducts, most?.Figures), .. Match(view, duty)],
            [.. ducts.Select(d => d.Name)],
            [.. Over(view, filter, ducts, duty)],
            duty,
            (SurgeMarginCheck.Allowed(view), ChokeMarginCheck.Allowed(view)),
            DriveWords.Missing(view))
        {
            Refused = view.Trace.Refused,
        };
    }

    private static IEnumerable<DriveStep> Filter(View view, FittedFilter filter, (double Speed, PointFigures Figures)? most)
    {
        var flow = FittedDuct.Flow(most?.Figures);
        return DriveWords.Step(
            "Air filter at the greatest flow",
            Sucked,
            new Fact("air", flow, Dimension.MassFlow, "g/s") { Remark = PeakPressureCheck.At(most?.Speed ?? double.NaN) },
            new Fact("the same as the filter meets it", flow / filter.Density(), Dimension.VolumeFlow, "L/s"),
            new Fact("air through the medium", Sketch.Known(() => filter.Speed(flow)), Dimension.Speed, "m/s") { Digits = 3, RemarkIn = imperial => $"{AirFilter.FaceSpeed.Print(filter.SpeedAllowed(), imperial)} allowed" },
            new Fact("pressure drop", Sketch.Known(() => filter.Drop(flow)), Dimension.Pressure, "kPa") { Digits = 3, RemarkIn = imperial => $"{AirFilter.TestDrop.Print(filter.DropAllowed(), imperial)} allowed" },
            new Fact("area of the medium", view.AmountIf(AirFilter.Area), Dimension.Area, "cm²"),
            new Fact("area wanted for that speed", Sketch.Known(() => filter.AreaForSpeed(flow)), Dimension.Area, "cm²"),
            new Fact("area wanted for that drop", Sketch.Known(() => filter.AreaForDrop(flow)), Dimension.Area, "cm²"),
            new Fact("effective area of filter and ducts before the blower", Sketch.Known(() => filter.EffectiveArea(most?.Figures)), Dimension.Area, "mm²") { RemarkIn = imperial => view.AmountIf(Intake.FilterArea) is { } assumed ? $"the run is made with {Intake.FilterArea.Print(assumed, imperial)}" : "" });
    }

    private static IEnumerable<DriveStep> Through(IReadOnlyList<FittedDuct> ducts, PointFigures? figures) => DriveWords.Step(
        "Ducts at the greatest flow",
        DuctSpeedCheck.Whips,
        [.. ducts.SelectMany(d => Facts(d, figures))]);

    private static IEnumerable<Fact> Facts(FittedDuct duct, PointFigures? figures) =>
    [
        new Fact($"{duct.Name}: air speed", Sketch.Known(() => duct.Speed(figures)), Dimension.Speed, "m/s") { Digits = 3, RemarkIn = imperial => $"{duct.Place}, {Figures.Print(duct.SpeedAllowed(), Dimension.Speed, "m/s", 5, imperial)} allowed" },
        new Fact($"{duct.Name}: Mach number", Sketch.Known(() => duct.Mach(figures)), Dimension.Number, "") { Digits = 2 },
        new Fact($"{duct.Name}: pressure that it takes", Sketch.Known(() => duct.Loss(figures)), Dimension.Pressure, "kPa") { Digits = 3 },
    ];

    private static IEnumerable<DriveStep> Match(View view, EngineDuty? duty)
    {
        if (duty is null || BlowerDuty.Map(duty) is not { } map)
        {
            return [];
        }

        var (surge, choke) = (BlowerDuty.Least(duty, b => b.SurgeMargin), BlowerDuty.Least(duty, b => b.ChokeMargin));
        var byFlow = BlowerDuty.Line(duty).Select(s => (Margin: BlowerDuty.MarginAtRatio(map, s), Speed: s.EngineSpeed)).Where(m => m.Margin is not null).Select(m => ((double Margin, double Speed)?)(m.Margin!.Value, m.Speed)).MinBy(m => m!.Value.Margin);
        var (quickest, at) = duty.Most(f => f.Blower?.Speed ?? double.NaN);
        return DriveWords.Step(
            "Match on the compressor map",
            "",
            new Fact("least surge margin", surge.Value, Dimension.Number, "%") { Digits = 3, Remark = $"{PeakPressureCheck.At(surge.Speed)}; {AtSpeed}" },
            new Fact("least surge margin by flow alone", byFlow?.Margin, Dimension.Number, "%") { Digits = 3, Remark = $"{PeakPressureCheck.At(byFlow?.Speed ?? double.NaN)}; flow against the surge line at the same pressure ratio: 1 - mp / m" },
            new Fact("least choke margin", choke.Value, Dimension.Number, "%") { Digits = 3, Remark = PeakPressureCheck.At(choke.Speed) },
            new Fact("greatest speed of the impeller", quickest, Dimension.RotationalSpeed, "rpm") { Digits = 5, Remark = $"{PeakPressureCheck.At(at)}; {Blower.MaxSpeed.Print(view.Amount(Blower.MaxSpeed))} allowed" },
            new Fact("the same at the map's temperature", BlowerDuty.Line(duty).Max(s => s.Speed), Dimension.RotationalSpeed, "rpm") { Digits = 5, Remark = $"the map ends at {Blower.MaxSpeed.Print(map.Lines[^1].CorrectedSpeed)}" },
            new Fact("efficiency at the greatest power", duty.Figures.MaxBy(p => p.Figures.Power).Figures.Blower?.Efficiency, Dimension.Number, "%") { Digits = 3, Remark = $"the best of the map is {Figures.Number(100 * map.Lines.Max(l => l.Points.Max(p => p.Efficiency)), 3)} %" });
    }

    private static IEnumerable<AirRow> Over(View view, FittedFilter filter, IReadOnlyList<FittedDuct> ducts, EngineDuty? duty)
    {
        var most = view.AmountIf(Blower.MaxSpeed);
        var spots = duty is null ? [] : BlowerDuty.Line(duty).ToDictionary(s => s.EngineSpeed);
        var map = duty is null ? null : BlowerDuty.Map(duty);
        foreach (var (speed, figures) in BlowerDuty.Points(duty))
        {
            var (blower, spot) = (figures.Blower!, spots.GetValueOrDefault(speed));
            yield return new AirRow(
                speed,
                blower.Speed,
                blower.Speed / most,
                blower.Flow,
                spot?.Flow,
                blower.PressureRatio,
                blower.SurgeMargin,
                spot is not null && map is not null ? BlowerDuty.MarginAtRatio(map, spot) : null,
                blower.ChokeMargin,
                Sketch.Known(() => filter.Drop(blower.Flow)),
                [.. ducts.Select(d => Sketch.Known(() => d.Speed(figures)))]);
        }
    }
}
