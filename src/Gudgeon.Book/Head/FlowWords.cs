using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Head;

/// <summary>The flow sheet in words: worded once, for the terminal and for the pages.</summary>
public static class FlowWords
{
    /// <summary>"28 inH2O".</summary>
    public static string Pressure(FlowSheet sheet) => Valve.BenchPressure.Print(sheet.ComparisonPressure);

    /// <summary>Unit of flows for a reader.</summary>
    public static Unit FlowUnit(bool imperial) => Figures.Shown(Dimension.VolumeFlow, "L/s", imperial);

    /// <summary>Unit of lifts for a reader.</summary>
    public static Unit LiftUnit(bool imperial) => Figures.Shown(Dimension.Length, "mm", imperial);

    /// <summary>Heads of the table of a port.</summary>
    public static IReadOnlyList<string> Heads(FlowSide side, bool imperial) => [.. Columns(side, imperial).Select(c => c.Head)];

    /// <summary>The cells under the heads, a row for each lift.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Cells(FlowSide side, bool imperial)
    {
        var columns = Columns(side, imperial).ToList();
        return [.. side.Now.Rows.Select(row => (IReadOnlyList<string>)[.. columns.Select(c => c.Cell(row))])];
    }

    /// <summary>What a port comes to: name and words.</summary>
    public static IReadOnlyList<(string Name, string Words)> Facts(FlowSide side, bool imperial)
    {
        var now = side.Now;
        string Area(double si) => Figures.Print(si, Dimension.Area, "mm²", 4, imperial);
        var facts = new List<(string, string)>
        {
            ("mean effective area over the lift curve", $"{Area(now.MeanArea)}{(side.Before is { } b ? $", before {Area(b.MeanArea)}: {Percent(side.MeanChange!.Value)}" : "")}"),
        };
        if (side.MeanChangeByPorts is { } ports && Math.Abs(ports - side.MeanChange!.Value) > 5e-4)
        {
            facts.Add(("of which the ports alone, over the cam of now", Percent(ports)));
        }

        facts.Add(("mean flow coefficient on the head area", Figures.Number(now.HeadCoefficient, 3)));
        facts.Add(("at full lift", $"{Valve.Lift.Print(now.FullLift, imperial)} (lift/diameter {Figures.Number(now.FullLift / now.Valves.HeadDiameter, 3)}), effective area {Area(now.FullArea)}"));
        if (now.ThroatLift is { } throat)
        {
            facts.Add(("the throat is narrowest from", $"{Valve.Lift.Print(throat, imperial)} of lift"));
        }

        facts.AddRange(Mach(side));
        facts.AddRange(Passage(side, imperial));
        return facts;
    }

    /// <summary>What ports come to against each other: name and words.</summary>
    public static IReadOnlyList<(string Name, string Words)> Between(FlowSheet sheet) =>
    [
        .. sheet.Ratios.Select(r => ($"exhaust over inlet at full lift{(r.Words.Length > 0 ? $", {r.Words}" : "")}", $"{Figures.Number(r.Now, 3)}{(r.Before is { } before ? $", before {Figures.Number(before, 3)}" : "")}")),
        .. sheet.Spreads.Select(s => ($"spread between cylinders, {s.Side}", Figures.Print(s.Spread, Dimension.Number, "%", 3))),
    ];

    /// <summary>"curtain", "seat corners", "throat".</summary>
    public static string Of(Narrowest narrowest) => narrowest switch
    {
        Narrowest.Curtain => "curtain",
        Narrowest.SeatCorner => "seat corners",
        Narrowest.Throat => "throat",
        _ => "",
    };

    /// <summary>A crank speed to ten revolutions.</summary>
    internal static string Speed(double speed) => Engine.RevLimit.Print(Math.Round(speed * 3 / Math.PI) * Math.PI / 3);

    private static IEnumerable<(string Head, Func<FlowRow, string> Cell)> Columns(FlowSide side, bool imperial)
    {
        var (lift, flow, area) = (LiftUnit(imperial), FlowUnit(imperial), Figures.Shown(Dimension.Area, "mm²", imperial));
        bool Any(Func<FlowRow, double?> value) => side.Now.Rows.Any(r => value(r) is not null);
        static string Coefficient(double? value) => value is { } number ? number.ToString("F3", System.Globalization.CultureInfo.InvariantCulture) : "";
        (string, Func<FlowRow, string>, bool)[] columns =
        [
            ($"lift {lift.Symbol}", r => Figures.Number(lift.FromSi(r.Lift), 4), true),
            ("lift/diameter", r => Coefficient(r.LiftOverDiameter), true),
            ($"flow {flow.Symbol}", r => Figures.Number(flow.FromSi(r.Flow), 4), true),
            ($"before {flow.Symbol}", r => side.FlowBefore(r) is { } before ? Figures.Number(flow.FromSi(before), 4) : "", side.IsPortChanged),
            ("change", r => side.Change(r) is { } change ? Percent(change) : "", side.IsPortChanged),
            ($"area {area.Symbol}", r => Figures.Number(area.FromSi(r.Area), 4), true),
            ("on curtain", r => Coefficient(r.OnCurtain), true),
            ("on throat", r => Coefficient(r.OnThroat), Any(r => r.OnThroat)),
            ("on seat", r => Coefficient(r.OnSeat), Any(r => r.OnSeat)),
            ("narrowest", r => Of(r.Narrowest), side.Now.ThroatLift is not null),
            ($"reverse {flow.Symbol}", r => r.ReverseFlow is { } back ? Figures.Number(flow.FromSi(back), 4) : "", Any(r => r.ReverseFlow)),
            ("reverse on curtain", r => Coefficient(r.ReverseOnCurtain), Any(r => r.ReverseOnCurtain)),
        ];
        return columns.Where(c => c.Item3).Select(c => (c.Item1, c.Item2));
    }

    private static IEnumerable<(string, string)> Mach(FlowSide side)
    {
        if (side.Mach is { } mach)
        {
            yield return ("inlet Mach index at the rev limit", $"{Figures.Number(mach, 3)}{(side.MachBefore is { } before ? $", before {Figures.Number(before, 3)}" : "")}");
        }

        if (side.MachSpeed is { } speed)
        {
            yield return ($"it comes to {Figures.Number(side.MachLimit, 3)}, where filling falls away, at", Speed(speed));
        }
    }

    private static IEnumerable<(string, string)> Passage(FlowSide side, bool imperial)
    {
        if (side.Passage is not { } passage)
        {
            yield break;
        }

        string Volume(double si) => Port.Volume.Print(si, imperial);
        if (passage.Least is { } least)
        {
            yield return ("narrowest place of the port", $"{Figures.Print(least.Area, Dimension.Area, "mm²", 4, imperial)}, {Figures.Print(least.Distance, Dimension.Length, "mm", 3, imperial)} from the seat");
        }

        if (passage.Velocity is { } velocity)
        {
            yield return ("mean gas speed there at the rev limit", Figures.Print(velocity, Dimension.Speed, "m/s", 3, imperial));
        }

        if (passage.VolumeByAreas is { } reckoned)
        {
            yield return ("volume of the port by its areas", $"{Volume(Rounded(reckoned))}{(passage.VolumeMeasured is { } measured ? $", measured {Volume(measured)}: {Percent((reckoned / measured) - 1)}" : "")}");
        }
        else if (passage.VolumeMeasured is { } alone)
        {
            yield return ("volume of the port, measured", Volume(alone));
        }
    }

    /// <summary>To a tenth of a cubic centimetre.</summary>
    private static double Rounded(double volume) => Math.Round(volume * 1e7) / 1e7;

    /// <summary>"+8.4 %".</summary>
    private static string Percent(double share) => (100 * share).ToString("+0.0' %';-0.0' %';0.0' %'", System.Globalization.CultureInfo.InvariantCulture);
}
