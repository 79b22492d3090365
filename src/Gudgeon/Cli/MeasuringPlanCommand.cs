using System.ComponentModel;
using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Files;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon measuring-plan: where to read bores, journals and housings, and what the readings come to.</summary>
internal sealed class MeasuringPlanCommand : Command<MeasuringPlanCommand.Settings>
{
    internal sealed class Settings : ReadSettings
    {
        [CommandOption("--part <PART>")]
        [Description("Only this part, such as cylinder[[1]] or bearing[[main.2]].journal.")]
        public string Part { get; init; } = "";

        [CommandOption("--rounds <N>")]
        [Description("How often each place is read; 3 when left out.")]
        public int Rounds { get; init; } = 3;

        [CommandOption("--with <INSTRUMENT>")]
        [Description("The instrument whose ± counts; that of the readings when left out.")]
        public string With { get; init; } = "";

        [CommandOption("--part-at <TEMPERATURE>")]
        [Description("Temperature of the part as it was read, such as 26°C: the mean is brought to 20 °C.")]
        public string PartAt { get; init; } = "";

        [CommandOption("--tool-at <TEMPERATURE>")]
        [Description("Temperature of the instrument.")]
        public string ToolAt { get; init; } = "";

        [CommandOption("--made-of <MATERIAL>")]
        [Description(MeasureCommand.MadeOfHelp)]
        public string MadeOf { get; init; } = "";

        [CommandOption("--keep")]
        [Description("Take the mean with its ± as a reading of the bore, journal or housing, for every part that has readings.")]
        public bool Keep { get; init; }

        [CommandOption("--by <NAME>")]
        [Description("Who keeps it; needed with --keep.")]
        public string By { get; init; } = "";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var book = settings.Open().Book;
        var now = book.Now();
        var plans = Wanted(MeasuringPlan.All(now), settings.Part);
        var results = plans.Select(p => (Plan: p, Result: PlanResult.Of(p, now, settings.With, ReadAt.Said(p.Mean.Path, settings.PartAt, settings.ToolAt, settings.MadeOf)))).ToList();
        var known = results.Where(r => r.Result is not null).ToList();
        if (settings.Keep && (settings.By.Length == 0 || known.Count == 0))
        {
            throw new BadInputException(known.Count == 0 ? "--keep: no part asked for has readings at stations yet" : "--keep: a reading needs the person: --by NAME");
        }

        if (settings.Json)
        {
            Out.Json(results.Select(r => Json(r.Plan, r.Result, settings.Rounds)));
        }
        else
        {
            results.ForEach(r => Print(r.Plan, r.Result, settings));
        }

        if (settings.Keep)
        {
            Keep(settings, now, known);
        }

        return 0;
    }

    private static IReadOnlyList<MeasuringPlan> Wanted(IReadOnlyList<MeasuringPlan> all, string part)
    {
        var plans = all.Where(p => part.Length == 0 || p.Mean.Path.StartsWith(part, StringComparison.Ordinal)).ToList();
        return plans.Count > 0 ? plans : throw new BadInputException($"--part: given '{part}', wanted one of {string.Join(", ", all.Select(p => p.Mean.Path))}");
    }

    private static void Print(MeasuringPlan plan, PlanResult? result, Settings settings)
    {
        Out.Line($"{plan.Mean.Path}: {plan.Mean.Field.Label.ToLowerInvariant()}, readings into {plan.Table.Path}");
        if (result is not null)
        {
            Print(plan, result, settings.Imperial);
            return;
        }

        foreach (var (reading, number) in plan.Readings(settings.Rounds).Select((r, i) => (r, i + 1)))
        {
            Out.Line($"  {number,2}. round {reading.Round}: {reading.Station.Name}, {plan.Mean.Field.Print(reading.Station.At, settings.Imperial)} in, {reading.Axis}");
        }

        Out.Line("  lift the instrument off between the rounds and set it anew");
    }

    private static void Print(MeasuringPlan plan, PlanResult r, bool imperial)
    {
        var sum = r.Uncertainty;
        string Length(double si, int digits = 3) => Figures.Print(si, plan.Mean.Field.Dimension, "µm", digits, imperial);
        string Freedom(double freedom) => double.IsInfinity(freedom) ? "without end" : Figures.Number(freedom, 3);
        Out.Line($"  mean of {r.Form.Readings} readings {Figures.Print(r.Mean, plan.Mean.Field.Dimension, plan.Mean.Field.Unit, 7, imperial)}{(r.Corrected ? " at 20 °C" : ", as read")}");
        Out.Line($"  {r.Form.Words(si => Length(si))}");
        Out.Line(r.Form.Freedom > 0
            ? $"  standard uncertainty by repeats (type A) {Length(r.FromRepeats)}: scatter {Length(r.Form.Scatter)} of one reading, {r.Form.Freedom} degrees of freedom"
            : "  no place was read twice: the scatter of the readings is not known");
        Out.Line(r.FromInstrument is { } instrument ? $"  by the instrument {Length(instrument)}" : "  by the instrument: not known, it is none of the book's");
        Out.LineIf(r.Corrected, $"  by the temperatures {Length(r.FromTemperature)}");
        Out.Line(string.Create(CultureInfo.InvariantCulture, $"  together {Length(sum.Combined)}, effective degrees of freedom {Freedom(sum.Freedom)} (Welch and Satterthwaite), k = {sum.Factor:F2} for {100 * RepeatedUncertainty.Coverage} %: ± {Length(sum.Expanded)}"));
    }

    /// <summary>Takes means as readings.</summary>
    private static void Keep(Settings settings, Snapshot now, List<(MeasuringPlan Plan, PlanResult? Result)> results)
    {
        var file = BookFile.Open(Books.Find(settings.Path), Hand.Here(settings.By));
        foreach (var (plan, result) in results)
        {
            var value = now.Find(plan.Table)!.Value;
            file = file.Measure(plan.Mean.Path, result!.Written(plan), settings.With.Length > 0 ? settings.With : value.With, settings.By, value.On, result.Note(plan));
            if (!settings.Json)
            {
                Out.Line($"kept: {plan.Mean.Path} is {file.Book.Measurements[^1].Value.Content}");
                MeasureCommand.Warn(file);
            }
        }
    }

    private static object Json(MeasuringPlan plan, PlanResult? r, int rounds) => new
    {
        field = plan.Mean.Path,
        table = plan.Table.Path,
        readings = plan.Readings(rounds).Select(p => new { round = p.Round, station = p.Station.Name, at = p.Station.At, axis = p.Axis }),
        result = r is null ? null : new
        {
            mean = r.Mean,
            at20 = r.Corrected,
            readings = r.Form.Readings,
            outOfRound = r.Form.OutOfRound,
            taper = r.Form.Taper,
            scatter = r.Form.Scatter,
            fromRepeats = r.FromRepeats,
            fromInstrument = r.FromInstrument,
            fromTemperature = r.FromTemperature,
            combined = r.Uncertainty.Combined,
            freedom = double.IsInfinity(r.Uncertainty.Freedom) ? (double?)null : r.Uncertainty.Freedom,
            factor = r.Uncertainty.Factor,
            coverage = RepeatedUncertainty.Coverage,
            expanded = r.Uncertainty.Expanded,
        },
    };
}
