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

        [CommandOption("--depth <DEPTH>")]
        [Description("lumped or wave; as the book says when left out, and lumped when it says nothing.")]
        public string? Depth { get; init; }

        /// <summary>The depth asked for, as a value laid over the book for this run only.</summary>
        internal IReadOnlyDictionary<string, KnownValue> Given => Books.Given(Depth is null ? [] : [$"depth={Depth}"], "engine.");

        [CommandOption("--csv")]
        [Description("Print CSV: SI and degrees; of a sweep SI and radians.")]
        public bool Csv { get; init; }

        [CommandOption("--svg <FILE>")]
        [Description("Draw torque, power and boost; of a sweep curves, or a contour when there are many values.")]
        public string? Svg { get; init; }

        [CommandOption("--vary <RANGE>")]
        [Description("Run with a field over a range, such as intake.runnerArea=1000..2200mm²/7 for seven values; given twice, with every combination of two fields at one speed.")]
        public string[] Vary { get; init; } = [];

        [CommandOption("--figure <NAME>")]
        [Description("What a sweep shows: torque when left out; power, boost, \"peak pressure\", knock and the others of a run.")]
        public string? Figure { get; init; }

        [CommandOption("--at <SPEED>")]
        [Description("Sweep at this speed alone; with two fields the speed of greatest power when left out.")]
        public string? At { get; init; }

        [CommandOption("--over")]
        [Description("With two fields: show the mean over every speed of the run.")]
        public bool Over { get; init; }

        [CommandOption("--trace <SPEED>")]
        [Description("One speed alone, with what happens over its cycle: sums on the terminal, every crank angle with --csv, pressures and flows with --svg.")]
        public string? Trace { get; init; }

        [CommandOption("--place <PLACE>")]
        [Description("With --trace: the pressure in a pipe as well, so far from the end where the flow comes in, such as \"primary 1:0.3m\"; may be given again.")]
        public string[] Place { get; init; } = [];

        [CommandOption("--wave-svg <FILE>")]
        [Description("With --trace: draw the pressure over the length of a pipe and the crank angle.")]
        public string? WaveSvg { get; init; }

        [CommandOption("--pipe <NAME>")]
        [Description("The pipe of --wave-svg, such as \"primary 1\", or \"cylinder 1\" for all on the way through it, which it is when left out.")]
        public string? Pipe { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.Trace is not null)
        {
            return TraceRun.Execute(settings, cancellationToken);
        }

        TraceRun.RefuseWithoutTrace(settings);
        if (settings.Vary.Length > 0)
        {
            return SweepRun.Execute(settings, cancellationToken);
        }

        SweepRun.RefuseWithoutSweep(settings);
        var book = settings.Open().Book;
        var view = new View(book.Supposing(settings.Given).Now());
        var depth = Depths.Of(view);
        var (spec, points) = Run(view, depth, settings, cancellationToken);
        if (settings.Svg is not null)
        {
            Pictures.Run(points, depth, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(points.Select(p => Json(p, depth)));
        }
        else if (settings.Csv)
        {
            Csv(points, depth);
        }
        else
        {
            Table(spec, points, depth, settings.Imperial);
        }

        if (!points.All(p => p.Converged))
        {
            if (settings.Keep is not null)
            {
                Console.Error.WriteLine("gudgeon: the run is not kept, for it did not settle at every speed");
            }

            return 3;
        }

        settings.KeepRun(book, () => RunFigures.Of(points), view.Trace, settings.Given, settings.Json || settings.Csv);
        return 0;
    }

    private static (EngineSpec Spec, IReadOnlyList<OperatingPoint> Points) Run(View view, Depth depth, Settings settings, CancellationToken stop)
    {
        var spec = Spec(view, depth);
        var speeds = Speeds(view, settings);
        return spec is null || speeds.Count == 0
            ? throw Book.Checks.Wanted.Refusal("the engine cannot be run", view.Trace)
            : (spec, EngineRun.Run(spec, speeds, null, Progress.OnTerminal("engine run"), stop));
    }

    /// <summary>The engine; null when something that it needs is not known.</summary>
    /// <exception cref="BadInputException">Values that make none.</exception>
    internal static EngineSpec? Spec(View view, Depth depth)
    {
        try
        {
            return EngineAssembly.Build(view, depth);
        }
        catch (EngineSpecException e)
        {
            throw new BadInputException(e.Message);
        }
    }

    private static List<double> Speeds(View view, Settings settings) => Speeds(view, settings.From, settings.To, settings.Step);

    /// <summary>The speeds of a run, rad/s, as asked for; none when the rev limit is wanted and not known.</summary>
    internal static List<double> Speeds(View view, string? lowest, string? highest, string? between)
    {
        var to = Asked(highest, "--to") ?? view.Amount(Engine.RevLimit);
        var from = Asked(lowest, "--from") ?? view.AmountOr(Engine.RunFrom, 3000 * Math.PI / 30);
        if (double.IsNaN(to))
        {
            return [];
        }

        if (from <= 0 || to < from)
        {
            throw new BadInputException($"--from and --to: given {Engine.RevLimit.Print(from)} to {Engine.RevLimit.Print(to)}, wanted rising speeds above zero");
        }

        var step = Asked(between, "--step") ?? (to - from) / (DutyDesk.Speeds - 1);
        if (step <= 0 && to > from)
        {
            throw new BadInputException($"--step: given {Engine.RevLimit.Print(step)}, wanted more than zero");
        }

        return to - from < 1e-9 ? [from] : [.. Enumerable.Range(0, (int)Math.Floor(((to - from) / step) + 1.000001)).Select(i => from + (i * step))];
    }

    /// <summary>A speed as it was asked for, rad/s.</summary>
    internal static double? Asked(string? text, string option) => text is null ? null : Amount.Parse(option, text, Dimension.RotationalSpeed, "rpm").Si;

    internal static void Table(EngineSpec spec, IReadOnlyList<OperatingPoint> points, Depth depth, bool imperial)
    {
        var heads = RunSheet.Heads(spec, imperial);
        Out.Line(string.Join(' ', heads.Select(h => h.PadLeft(Width(h)))));
        foreach (var p in points)
        {
            Out.Line(p.Figures is { } f
                ? string.Join(' ', RunSheet.Cells(spec, p, f, imperial).Select((c, i) => c.PadLeft(Width(heads[i]))))
                : RunSheet.Unsettled(p));
        }

        var settled = points.Count(p => p.Converged);
        Out.Line($"{settled} of {points.Count} points settled{(settled > 0 ? $": the cycles repeat within {Figures.Number(points.Where(p => p.Converged).Max(p => p.Residual), 2)}" : "")}; {depth.From()}");
        foreach (var remark in RunSheet.Remarks(points))
        {
            Out.Line(remark);
        }
    }

    internal static void Csv(IReadOnlyList<OperatingPoint> points, Depth depth)
    {
        Out.Line("speed rpm,converged,cycles,residual,torque N·m,power W,boost Pa,air kg/s,fuel kg/s,volumetric efficiency,net imep Pa,fmep Pa,bsfc g/kWh,peak pressure Pa,peak angle °,charge K,exhaust K,knock integral,knock valid,depth");
        foreach (var p in points)
        {
            var f = p.Figures;
            var worst = f?.Cylinders.MaxBy(c => c.PeakPressure);
            object?[] cells = [p.Speed * 30 / Math.PI, p.Converged, p.CyclesUsed, p.Residual, f?.Torque, f?.Power, f?.Boost, f?.AirFlow, f?.FuelFlow, f?.VolumetricEfficiency, f?.NetImep, f?.FrictionMep, f?.Bsfc * 3.6e9, worst?.PeakPressure, worst?.PeakPressureAngle, f?.ChargeTemperature, f?.ExhaustTemperature, f?.KnockIntegral, f?.KnockValid, depth.Word()];
            Out.Line(string.Join(',', cells.Select(c => Convert.ToString(c, CultureInfo.InvariantCulture))));
        }
    }

    private static object Json(OperatingPoint p, Depth depth) => new { rpm = p.Speed * 30 / Math.PI, depth, converged = p.Converged, cycles = p.CyclesUsed, residual = p.Residual, figures = p.Figures };

    private static int Width(string head) => Math.Max(head.Length, 6);
}
