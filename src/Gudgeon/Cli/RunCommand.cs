using System.ComponentModel;
using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon run: the engine at full load over its speeds.</summary>
internal sealed class RunCommand : Command<RunCommand.Settings>
{
    internal sealed class Settings : KeepSettings
    {
        [CommandOption("--from <SPEED>")]
        [Description("Lowest speed, such as 3000rpm.")]
        public string? From { get; init; }

        [CommandOption("--to <SPEED>")]
        [Description("Highest speed; the rev limit when left out.")]
        public string? To { get; init; }

        [CommandOption("--step <SPEED>")]
        [Description("Step between speeds; 14 speeds when left out.")]
        public string? Step { get; init; }

        [CommandOption("--csv")]
        [Description("Print CSV, SI and degrees.")]
        public bool Csv { get; init; }

        [CommandOption("--svg <FILE>")]
        [Description("Draw torque, power and boost.")]
        public string? Svg { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var book = settings.Open().Book;
        var view = new View(book.Now());
        var points = Run(view, settings, cancellationToken);
        if (settings.Svg is not null)
        {
            Pictures.Run(points, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(points.Select(Json));
        }
        else if (settings.Csv)
        {
            Csv(points);
        }
        else
        {
            Table(points, settings.Imperial);
        }

        if (!points.All(p => p.Converged))
        {
            if (settings.Keep is not null)
            {
                Console.Error.WriteLine("gudgeon: the run is not kept, for it did not settle at every speed");
            }

            return 3;
        }

        settings.KeepRun(book, () => RunFigures.Of(points), view.Trace, Books.Given([], ""), settings.Json || settings.Csv);
        return 0;
    }

    private static IReadOnlyList<OperatingPoint> Run(View view, Settings settings, CancellationToken stop)
    {
        EngineSpec? spec;
        try
        {
            spec = EngineAssembly.Build(view);
        }
        catch (EngineSpecException e)
        {
            throw new BadInputException(e.Message);
        }

        var speeds = Speeds(view, settings);
        return spec is null || speeds.Count == 0
            ? throw new BadInputException($"the engine cannot be run yet; wanted: {Book.Checks.Wanted.Words(view.Trace.Missing)}")
            : EngineRun.Run(spec, speeds, null, Progress.OnTerminal("engine run"), stop);
    }

    private static List<double> Speeds(View view, Settings settings)
    {
        double? Asked(string? text, string option) => text is null ? null : Amount.Parse(option, text, Dimension.RotationalSpeed, "rpm").Si;
        var to = Asked(settings.To, "--to") ?? view.Amount(Engine.RevLimit);
        var from = Asked(settings.From, "--from") ?? view.AmountOr(Engine.RunFrom, 3000 * Math.PI / 30);
        if (double.IsNaN(to))
        {
            return [];
        }

        if (from <= 0 || to < from)
        {
            throw new BadInputException($"--from and --to: given {Engine.RevLimit.Print(from)} to {Engine.RevLimit.Print(to)}, wanted rising speeds above zero");
        }

        var step = Asked(settings.Step, "--step") ?? (to - from) / (DutyDesk.Speeds - 1);
        if (step <= 0 && to > from)
        {
            throw new BadInputException($"--step: given {Engine.RevLimit.Print(step)}, wanted more than zero");
        }

        return to - from < 1e-9 ? [from] : [.. Enumerable.Range(0, (int)Math.Floor(((to - from) / step) + 1.000001)).Select(i => from + (i * step))];
    }

    internal static void Table(IReadOnlyList<OperatingPoint> points, bool imperial)
    {
        string[] heads = imperial
            ? ["rpm", "lbf·ft", "hp", "boost psi", "air lb/min", "fuel lb/min", "VE %", "IMEP psi", "FMEP psi", "g/kWh", "peak psi", "at °", "charge °F", "exhaust °F", "knock", "cycles"]
            : ["rpm", "N·m", "kW", "boost bar", "air g/s", "fuel g/s", "VE %", "IMEP bar", "FMEP bar", "g/kWh", "peak bar", "at °", "charge °C", "exhaust °C", "knock", "cycles"];
        Out.Line(string.Join(' ', heads.Select(h => h.PadLeft(Width(h)))));
        foreach (var p in points)
        {
            var cells = p.Figures is { } f ? Cells(p, f, imperial) : [Rpm(p), "did not settle:", Figures.Number(p.Residual, 2), "still moving after", p.CyclesUsed.ToString(CultureInfo.InvariantCulture), "cycles"];
            Out.Line(string.Join(' ', cells.Select((c, i) => p.Converged ? c.PadLeft(Width(heads[i])) : c)));
        }

        var settled = points.Count(p => p.Converged);
        Out.Line($"{settled} of {points.Count} points settled{(settled > 0 ? $": the cycles repeat within {Figures.Number(points.Where(p => p.Converged).Max(p => p.Residual), 2)}" : "")}");
        Out.LineIf(points.Any(p => p.Figures?.KnockValid == false), "the end gas passed 1050 K somewhere: the knock figure does not hold there");
        Out.LineIf(points.Any(p => p.Figures?.Blower?.Surge == true), "the compressor surges at: " + Where(points, b => b.Surge));
        Out.LineIf(points.Any(p => p.Figures?.Blower?.Choke == true), "the compressor chokes at: " + Where(points, b => b.Choke));
        Out.LineIf(points.Any(p => p.Figures?.Blower?.Extrapolated == true), "the compressor runs outside its map at: " + Where(points, b => b.Extrapolated));
    }

    private static string Where(IReadOnlyList<OperatingPoint> points, Func<BlowerFigures, bool> what) =>
        string.Join(", ", points.Where(p => p.Figures?.Blower is { } b && what(b)).Select(p => Rpm(p) + " rpm"));

    private static string[] Cells(OperatingPoint p, PointFigures f, bool imperial)
    {
        string Shown(double si, Dimension d, string metric, string inch, int decimals) =>
            Units.Declared(d, imperial ? inch : metric).FromSi(si).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        var worst = f.Cylinders.MaxBy(c => c.PeakPressure)!;
        return
        [
            Rpm(p),
            Shown(f.Torque, Dimension.Torque, "N·m", "lbf·ft", 1),
            Shown(f.Power, Dimension.Power, "kW", "hp", 1),
            Shown(f.Boost, Dimension.Pressure, "bar", "psi", imperial ? 1 : 2),
            Shown(f.AirFlow, Dimension.MassFlow, "g/s", "lb/min", 1),
            Shown(f.FuelFlow, Dimension.MassFlow, "g/s", "lb/min", 2),
            (f.VolumetricEfficiency * 100).ToString("F1", CultureInfo.InvariantCulture),
            Shown(f.NetImep, Dimension.Pressure, "bar", "psi", imperial ? 0 : 2),
            Shown(f.FrictionMep, Dimension.Pressure, "bar", "psi", imperial ? 0 : 2),
            f.Bsfc is { } b ? (b * 3.6e9).ToString("F0", CultureInfo.InvariantCulture) : "-",
            Shown(worst.PeakPressure, Dimension.Pressure, "bar", "psi", imperial ? 0 : 1),
            worst.PeakPressureAngle.ToString("F1", CultureInfo.InvariantCulture),
            Shown(f.ChargeTemperature, Dimension.Temperature, "°C", "°F", 0),
            Shown(f.ExhaustTemperature, Dimension.Temperature, "°C", "°F", 0),
            f.KnockIntegral.ToString("F2", CultureInfo.InvariantCulture),
            p.CyclesUsed.ToString(CultureInfo.InvariantCulture),
        ];
    }

    internal static void Csv(IReadOnlyList<OperatingPoint> points)
    {
        Out.Line("speed rpm,converged,cycles,residual,torque N·m,power W,boost Pa,air kg/s,fuel kg/s,volumetric efficiency,net imep Pa,fmep Pa,bsfc g/kWh,peak pressure Pa,peak angle °,charge K,exhaust K,knock integral,knock valid");
        foreach (var p in points)
        {
            var f = p.Figures;
            var worst = f?.Cylinders.MaxBy(c => c.PeakPressure);
            object?[] cells = [p.Speed * 30 / Math.PI, p.Converged, p.CyclesUsed, p.Residual, f?.Torque, f?.Power, f?.Boost, f?.AirFlow, f?.FuelFlow, f?.VolumetricEfficiency, f?.NetImep, f?.FrictionMep, f?.Bsfc * 3.6e9, worst?.PeakPressure, worst?.PeakPressureAngle, f?.ChargeTemperature, f?.ExhaustTemperature, f?.KnockIntegral, f?.KnockValid];
            Out.Line(string.Join(',', cells.Select(c => Convert.ToString(c, CultureInfo.InvariantCulture))));
        }
    }

    private static object Json(OperatingPoint p) => new { rpm = p.Speed * 30 / Math.PI, converged = p.Converged, cycles = p.CyclesUsed, residual = p.Residual, figures = p.Figures };

    private static string Rpm(OperatingPoint p) => (p.Speed * 30 / Math.PI).ToString("F0", CultureInfo.InvariantCulture);

    private static int Width(string head) => Math.Max(head.Length, 6);
}
