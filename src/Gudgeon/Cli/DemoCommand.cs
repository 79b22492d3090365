using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using Gudgeon.Book.Build;
using Gudgeon.Book.Changes;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Limits;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Sprint;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon demo: everything on an invented build, and one page for the wall.</summary>
internal sealed class DemoCommand : Command<DemoCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "[FOLDER]")]
        [Description("Where to put the files; a new folder beside you when left out.")]
        public string? Folder { get; init; }

        [CommandOption("--build <NAME>")]
        [Description("heron, a supercharged twin, or wren, a single on methanol.")]
        [DefaultValue("heron")]
        public string Build { get; init; } = "heron";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var began = Stopwatch.StartNew();
        var folder = Unpack(settings);
        var file = BookFile.Open(Path.Combine(folder, settings.Build + ".json"));
        var page = new Page(file.Book, folder, settings.Build, new DutyDesk { Cancellation = cancellationToken });
        page.Work();
        Out.IntoFile(Path.Combine(folder, "page.txt"), () => page.Print(began.Elapsed));
        page.Print(began.Elapsed);
        return 0;
    }

    private static string Unpack(Settings settings)
    {
        var name = settings.Build + ".json";
        using var book = typeof(DemoCommand).Assembly.GetManifestResourceStream("demo/" + name)
            ?? throw new BadInputException($"--build: given '{settings.Build}', wanted heron or wren");
        var folder = settings.Folder ?? Fresh(settings.Build + "-demo");
        var target = Path.Combine(folder, name);
        if (File.Exists(target))
        {
            throw new BadInputException($"'{target}' exists; the demo does not write over it");
        }

        Directory.CreateDirectory(folder);
        using var reader = new StreamReader(book, Encoding.UTF8);
        AtomicFile.Write(target, reader.ReadToEnd());
        return folder;
    }

    private static string Fresh(string wanted)
    {
        var folder = wanted;
        for (var n = 2; Directory.Exists(folder); n++)
        {
            folder = string.Create(CultureInfo.InvariantCulture, $"{wanted}-{n}");
        }

        return folder;
    }

    /// <summary>The results of a build, worked once and printed as one page.</summary>
    private sealed class Page(BuildBook book, string folder, string name, DutyDesk desk)
    {
        private const int MostLines = 8;

        private readonly Snapshot _now = book.Now();
        private EngineDuty _duty = null!;
        private IReadOnlyList<Finding> _findings = [];
        private Ladder _ladder = null!;
        private Need _need = null!;
        private SprintResult _sprint = null!;
        private List<Consequences> _changes = [];

        public void Work()
        {
            var appraiser = new Appraiser(desk);
            _findings = appraiser.Appraise(_now);
            var view = new View(_now, desk);
            _duty = view.Duty() ?? throw new BadInputException($"the engine cannot be run; wanted: {Wanted.Words(view.Trace.Missing)}");
            _sprint = Demand.Sprint(new View(_now, desk));
            _ladder = GivesFirst.Climb(_now, desk);
            _need = new NeedSolver(_now, desk).ForPower(_ladder.Target ?? _duty.Power.Value);
            var quick = new Appraiser(new DutyDesk()) { WithUncertainty = false };
            _changes = [.. book.Changes.Select(c => Consequences.Of(book, c, quick))];
            WriteFiles();
        }

        public void Print(TimeSpan took)
        {
            var (power, speed) = _duty.Power;
            Out.Line($"{book.Name.ToUpperInvariant()} - an invented build, not a real machine");
            Out.Line($"Power    {Target.Power.Print(Math.Round(power, 0))} at {Engine.RevLimit.Print(speed)}, {(_ladder.Target is { } t ? $"target {Target.Power.Print(t)}" : "no target set")}; boost {Math.Max(0, _duty.Most(f => f.Boost).Value / 1e5).ToString("F2", CultureInfo.InvariantCulture)} bar, peak pressure {(_duty.PeakPressure.Value / 1e5).ToString("F0", CultureInfo.InvariantCulture)} bar");
            var quarter = _sprint.At(StripLength.QuarterMile);
            Out.Line($"Strip    quarter mile {(quarter is null ? "not reached" : $"{quarter.Time.ToString("F2", CultureInfo.InvariantCulture)} s at {Figures.Print(quarter.TrapSpeed, Calc.Catalogue.Dimension.Speed, "km/h", 4)} (60 ft {_sprint.Splits[0].Time.ToString("F2", CultureInfo.InvariantCulture)} s)")}");
            Out.Line($"Parts    {string.Join(", ", Enum.GetValues<Verdict>().Select(v => $"{_findings.Count(f => f.Verdict == v)} {v.Words()}"))}");
            Out.Line();
            Out.Line("WHAT GIVES FIRST");
            GivesCommand.Print(_ladder, imperial: false, most: MostLines);
            Section("FALLS SHORT", Verdict.FallsShort, f => $"{f.Judgement!.Quantity} {f.Judgement.Print(f.Judgement.Value)}, wanted {f.Judgement.LimitText}");
            Section("TOO CLOSE TO TELL", Verdict.TooCloseToTell, f => f.Advice);
            Section("NOT KNOWN YET", Verdict.NotKnownYet, f => f.Advice);
            Out.Line();
            Out.Line("MEASURE AGAIN AFTER THE CHANGES");
            foreach (var change in _changes.Where(c => c.Change.On && c.Measure.Count > 0))
            {
                Out.Line($"  {change.Change.Id,-18} {Wanted.Words(change.Measure.Select(m => m.Path))}");
            }

            Out.Line();
            Out.Line("THE GOAL NEEDS");
            NeedCommand.Print(_need, imperial: false);
            Out.Line();
            Out.Line($"Files in {Path.GetFullPath(folder)}: {string.Join(", ", Directory.EnumerateFiles(folder).Select(Path.GetFileName).Append("page.txt").Distinct().Order(StringComparer.Ordinal))}");
            Out.Line($"Worked in {took.TotalSeconds.ToString("F1", CultureInfo.InvariantCulture)} s. Advice to a competent person: makers' data, local rules and the scrutineers have the last word.");
            Out.Line($"Next: ./gudgeon check {Path.Combine(folder, name)}.json --explain {_findings.FirstOrDefault(f => f.Verdict == Verdict.FallsShort)?.Id ?? _findings[0].Id}");
        }

        private void Section(string title, Verdict verdict, Func<Finding, string> words)
        {
            var these = _findings.Where(f => f.Verdict == verdict).ToList();
            if (these.Count == 0)
            {
                return;
            }

            Out.Line();
            Out.Line(title);
            foreach (var f in these.Take(MostLines))
            {
                Out.Line($"  {f.Id,-28} {words(f)}");
            }

            Out.LineIf(these.Count > MostLines, $"  and {these.Count - MostLines} more in findings.json");
        }

        private void WriteFiles()
        {
            string In(string file) => Path.Combine(folder, file);
            Pictures.Run(_duty.Points, _duty.Depth, In("run.svg"), imperial: false);
            Pictures.Ladder(_ladder, In("gives.svg"));
            Pictures.Sprint(_sprint, In("sprint.svg"), imperial: false);
            Out.IntoFile(In("run.csv"), () => RunCommand.Csv(_duty.Points, _duty.Depth));
            Out.IntoFile(In("sprint.txt"), () => SprintCommand.Table(_sprint, imperial: false));
            Out.IntoFile(In("findings.json"), () => Out.Json(_findings.Select(f => FindingJson.Of(f))));
            Out.IntoFile(In("changes.txt"), () =>
            {
                Out.Line(ChangesCommand.WithoutUncertainty);
                _changes.ForEach(c => ChangesCommand.Print(c, imperial: false));
            });
            Out.IntoFile(In("schema.json"), () => Out.Json(BookSchema.Make()));
        }
    }
}
