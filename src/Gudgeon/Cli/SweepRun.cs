using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Sweeps;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Cli;

/// <summary>gudgeon run --vary: the engine over values of one field or two.</summary>
internal static class SweepRun
{
    public static int Execute(RunCommand.Settings settings, CancellationToken stop)
    {
        RefuseWithSweep(settings);
        var varied = settings.Vary.Select(v => Variation.Parse("--vary", v)).ToList();
        var figure = EngineFigures.Find(settings.Figure ?? EngineFigures.Torque.Name);
        var book = settings.Open().Book.Supposing(settings.Given);
        var depth = Depths.Of(new View(book.Now()));
        var (speeds, near, where) = Where(settings, book, stop);
        var sweep = EngineSweep.Run(book, varied, speeds, near, Progress.OnTerminal("sweep"), stop);
        var sheet = new SweepSheet(sweep, figure, where, settings.Imperial);
        if (settings.Svg is not null)
        {
            SweepPictures.Draw(sheet, settings.Svg);
        }

        if (settings.Json)
        {
            Out.Json(Json(sweep, figure, depth));
        }
        else if (settings.Csv)
        {
            Csv(sweep, depth);
        }
        else
        {
            sheet.Print();
            Out.Line(depth.Sentence());
        }

        return sweep.Cells.All(c => c.Settled) ? 0 : 3;
    }

    /// <summary>Refuses options that only a sweep takes.</summary>
    public static void RefuseWithoutSweep(RunCommand.Settings settings)
    {
        if ((settings.Figure is not null ? "--figure" : settings.At is not null ? "--at" : settings.Over ? "--over" : null) is { } option)
        {
            throw new BadInputException($"{option} belongs to a sweep; give the field to vary with --vary FIELD=FROM..TO/COUNT");
        }
    }

    private static void RefuseWithSweep(RunCommand.Settings settings)
    {
        if (settings.Vary.Length > EngineSweep.MostFields)
        {
            throw new BadInputException($"--vary: given {settings.Vary.Length} fields, wanted one or two");
        }

        if (settings.Keep is not null)
        {
            throw new BadInputException("--keep keeps one run, and --vary makes many; run the one that is wanted by itself");
        }

        if (settings.Over && (settings.At is not null || settings.Vary.Length < 2))
        {
            throw new BadInputException(settings.At is not null ? "--at and --over: give one of the two" : "--over belongs to two --vary; with one every speed is shown, and the mean below");
        }
    }

    /// <summary>The speeds, a run to start from when one was made to find them, and the speeds in words.</summary>
    private static (IReadOnlyList<double> Speeds, EngineDuty? Near, string Words) Where(RunCommand.Settings settings, BuildBook book, CancellationToken stop)
    {
        var view = new View(book.Now());
        if (RunCommand.Asked(settings.At, "--at") is { } at)
        {
            return at > 0 ? ([at], null, $"at {Engine.RevLimit.Print(at)}") : throw new BadInputException($"--at: given {Engine.RevLimit.Print(at)}, wanted a speed above zero");
        }

        var speeds = RunCommand.Speeds(view, settings.From, settings.To, settings.Step);
        if (speeds.Count == 0)
        {
            throw Wanted.Refusal("the engine cannot be run", view.Trace);
        }

        if (settings.Vary.Length == 1 || settings.Over)
        {
            return (speeds, null, speeds.Count == 1 ? $"at {Engine.RevLimit.Print(speeds[0])}" : $"over {Engine.RevLimit.Print(speeds[0])} to {Engine.RevLimit.Print(speeds[^1])}");
        }

        var now = EngineSweep.AsItStands(book, speeds, stop);
        var peak = now.Power.Speed;
        return ([peak], now, $"at {Figures.Rpm(peak)}, where the book as it stands gives its greatest power");
    }

    private static void Csv(EngineSweep sweep, Depth depth)
    {
        Out.Line(string.Join(',', [.. sweep.Varied.Select(v => $"{v.Address.Path} {Calc.Catalogue.Dimensions.SiUnit(v.Address.Field.Dimension)}".TrimEnd()), "speed rpm", "converged", .. EngineFigures.All.Select(f => $"{f.Name} {Calc.Catalogue.Dimensions.SiUnit(f.Dimension)}".TrimEnd()), "depth"]));
        foreach (var cell in sweep.Cells)
        {
            for (var i = 0; i < sweep.Speeds.Count; i++)
            {
                var settled = i < cell.Points.Count && cell.Points[i].Converged;
                object?[] cells = [.. cell.Values.Select(v => (object)v.Si), sweep.Speeds[i] * 30 / Math.PI, settled, .. EngineFigures.All.Select(f => Finite(cell.At(i, f))), depth.Word()];
                Out.Line(string.Join(',', cells.Select(c => Convert.ToString(c, CultureInfo.InvariantCulture))));
            }
        }
    }

    private static object Json(EngineSweep sweep, EngineFigure figure, Depth depth) => new
    {
        depth,
        figure = figure.Name,
        unit = Calc.Catalogue.Dimensions.SiUnit(figure.Dimension),
        fields = sweep.Varied.Select(v => new { path = v.Address.Path, unit = Calc.Catalogue.Dimensions.SiUnit(v.Address.Field.Dimension), values = v.Values.Select(x => x.Written) }),
        rpm = sweep.Speeds.Select(s => s * 30 / Math.PI),
        cells = sweep.Cells.Select(c => new
        {
            values = c.Values.Select(v => v.Si),
            refusal = c.Refusal.Length > 0 ? c.Refusal : null,
            converged = sweep.Speeds.Select((_, i) => i < c.Points.Count && c.Points[i].Converged),
            figures = sweep.Speeds.Select((_, i) => Finite(c.At(i, figure))),
            mean = Finite(c.Mean(figure)),
        }),
    };

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
