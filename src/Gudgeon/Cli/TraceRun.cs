using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Cli;

/// <summary>gudgeon run --trace: one speed, with what happens over its cycle.</summary>
internal static class TraceRun
{
    public static int Execute(RunCommand.Settings settings, CancellationToken stop)
    {
        RefuseWithTrace(settings);
        var speed = RunCommand.Asked(settings.Trace, "--trace") is { } asked and > 0 ? asked
            : throw new BadInputException($"--trace: given '{settings.Trace}', wanted a speed above zero");
        var places = settings.Place.Select(p => PipePlace.Parse("--place", p)).ToList();
        var view = new View(settings.Open().Book.Supposing(settings.Given).Now());
        var spec = RunCommand.Spec(view, Depths.Of(view)) ?? throw Book.Checks.Wanted.Refusal("the engine cannot be run", view.Trace);
        var point = EngineRun.Traced(spec, speed, cancellation: stop);
        if (TracedCycle.Of(spec, point) is not { } cycle)
        {
            Console.Error.WriteLine($"gudgeon: {RunSheet.Unsettled(point)}");
            return 3;
        }

        var curves = TraceCurves.Of(cycle, places);
        Draw(settings, cycle, curves);
        Print(settings, cycle, curves);
        return 0;
    }

    /// <summary>Refuses options that only a trace takes.</summary>
    public static void RefuseWithoutTrace(RunCommand.Settings settings)
    {
        if ((settings.Place.Length > 0 ? "--place" : settings.WaveSvg is not null ? "--wave-svg" : settings.Pipe is not null ? "--pipe" : null) is { } option)
        {
            throw new BadInputException($"{option} belongs to one speed over its cycle; give the speed with --trace SPEED");
        }
    }

    private static void RefuseWithTrace(RunCommand.Settings settings)
    {
        (string Option, bool Given)[] others =
        [
            ("--vary", settings.Vary.Length > 0), ("--figure", settings.Figure is not null), ("--at", settings.At is not null), ("--over", settings.Over),
            ("--from", settings.From is not null), ("--to", settings.To is not null), ("--step", settings.Step is not null), ("--keep", settings.Keep is not null),
        ];
        if (Array.Find(others, o => o.Given) is { Option: not null } other)
        {
            throw new BadInputException($"--trace shows one speed, so it does not go with {other.Option}");
        }

        if (settings.Pipe is not null && settings.WaveSvg is null)
        {
            throw new BadInputException("--pipe says what --wave-svg draws; give the file with --wave-svg FILE");
        }
    }

    private static void Draw(RunCommand.Settings settings, TracedCycle cycle, IReadOnlyList<TraceCurve> curves)
    {
        if (settings.Svg is not null)
        {
            TracePictures.Draw(cycle, curves, settings.Svg, settings.Imperial);
        }

        if (settings.WaveSvg is not null)
        {
            Pictures.Write(WavePicture.Of(cycle, settings.Pipe ?? "cylinder 1", settings.Imperial).Svg(), settings.WaveSvg);
        }
    }

    private static void Print(RunCommand.Settings settings, TracedCycle cycle, IReadOnlyList<TraceCurve> curves)
    {
        if (settings.Json)
        {
            Out.Json(Json(cycle));
        }
        else if (settings.Csv)
        {
            Csv(cycle, curves);
        }
        else
        {
            CycleSheet.Print(cycle, settings.Imperial);
        }
    }

    private static void Csv(TracedCycle cycle, IReadOnlyList<TraceCurve> curves)
    {
        Out.Line(string.Join(',', curves.Select(c => c.Head).Prepend("crank angle °")));
        for (var i = 0; i < cycle.Trace.CrankAngle.Length; i++)
        {
            Out.Line(string.Join(',', curves.Select(c => c.Values[i]).Prepend(cycle.Trace.CrankAngle[i]).Select(v => v.ToString(CultureInfo.InvariantCulture))));
        }
    }

    private static object Json(TracedCycle cycle) => new
    {
        rpm = cycle.Speed * 30 / Math.PI,
        depth = cycle.Depth,
        cylinders = CycleFacts.Cylinders(cycle).Select(c => Facts(CycleFacts.OfCylinder, c)),
        pipes = Pipes.InOrder(cycle.Trace).Select(p => new { name = p.Name, facts = Facts(CycleFacts.OfPipe, p) }),
    };

    private static IEnumerable<object> Facts<T>(IEnumerable<CycleFact<T>> facts, T of) => facts.Select(f => new { name = f.Name, unit = f.Dimension.SiUnit(), value = f.Of(of) });
}
