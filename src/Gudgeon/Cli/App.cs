using Gudgeon.Book.Rows;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>The verbs of the command line, and what becomes of an error.</summary>
public static class App
{
    /// <summary>Exit code when the input cannot be taken.</summary>
    public const int BadInput = 2;

    private const int OwnFault = 70;
    private const int Stopped = 130;

    /// <summary>Runs one command line and returns its exit code.</summary>
    public static int Run(IReadOnlyList<string> args)
    {
        using var stop = new CancellationTokenSource();
        Console.CancelKeyPress += (_, e) =>
        {
            // Asked a second time, the program ends where it stands.
            e.Cancel = !stop.IsCancellationRequested;
            stop.Cancel();
        };
        var verbs = new List<string>();
        var app = new CommandApp();
        app.Configure(config =>
        {
            config.SetApplicationName("gudgeon");
            config.SetApplicationVersion(typeof(App).Assembly.GetName().Version!.ToString(3));
            config.UseStrictParsing();
            config.SetInterceptor(new OptionsHaveValues());
            config.SetExceptionHandler((e, _) => Explain(e, args, verbs));
            Verbs(config, verbs);
        });
        return app.Run(args.Select(Negative), stop.Token);
    }

    /// <summary>A negative amount such as -0.3mm is a value, not an option.</summary>
    private static string Negative(string arg) =>
        arg.Length > 1 && arg[0] == '-' && (char.IsAsciiDigit(arg[1]) || arg[1] == '.') ? '−' + arg[1..] : arg;

    private static void Verbs(IConfigurator config, List<string> names)
    {
        ICommandConfigurator Verb<TCommand>(string name, string description)
            where TCommand : class, ICommand
        {
            names.Add(name);
            return config.AddCommand<TCommand>(name).WithDescription(description);
        }

        Verb<DemoCommand>("demo", "Copy an invented build to a folder, run everything on it and print one page for the wall.");
        Verb<WorkCommand>("work", "Work one formula, list them all, or hold them to a file of known values.")
            .WithExample("work", "\"helical spring rate\"", "wire=4.2mm", "meanDiameter=29mm", "activeCoils=5.5")
            .WithExample("work", "--rows", "rows.csv");
        Verb<FieldsCommand>("fields", "List everything that can be known about a build.").WithExample("fields", "spring");
        Verb<SchemaCommand>("schema", "Print the JSON Schema of a book.");
        Verb<NewCommand>("new", "Begin a book.").WithExample("new", "heron.gudgeon", "--name", "Heron");
        Verb<ShowCommand>("show", "Show the values that hold and how each is known.").WithExample("show", "heron.json", "cylinder");
        Verb<SetCommand>("set", "Give a field a value.").WithExample("set", "\"cylinder[1].bore\"", "\"94.01 mm ± 0.005 mm\"", "--how", "measured")
            .WithExample("set", "\"valve[inlet].liftTable\"", "--from", "cam.csv");
        Verb<MeasureCommand>("measure", "Add a reading; earlier ones stay.")
            .WithExample("measure", "\"cylinder[1].bore\"", "\"94.012 mm ± 0.006 mm\"", "--with", "\"bore gauge\"", "--by", "Ada")
            .WithExample("measure", "heron.gudgeon", "--csv", "readings.csv", "--with", "mic-25", "--by", "Ada")
            .WithExample("measure", "\"valve[inlet].benchTable\"", "--from", "bench.csv", "--with", "\"flow bench\"", "--by", "Ada");
        Verb<InstrumentsCommand>("instruments", "What the shop measures with: range, ±, when its calibration is due, whose it is.").WithExample("instruments", "heron.json");
        Verb<MeasuringPlanCommand>("measuring-plan", "Where to read bores, journals and housings, in order; out of round, taper and mean with its uncertainty once they are read.")
            .WithExample("measuring-plan", "heron.json", "--part", "cylinder", "--rounds", "2").WithExample("measuring-plan", "heron.json", "--with", "bore-100", "--part-at", "26°C", "--tool-at", "24°C");
        names.Add("change");
        config.AddBranch("change", Changes);
        Verb<LimitCommand>("limit", "Set a limit of your own in place of a check's usual one, with a reason.")
            .WithExample("limit", "squish.min", "\"0.9 mm\"", "--reason", "\"steel rods, short stroke\"");
        Verb<CheckCommand>("check", "Will it hold: every check, with its reserve. Exit code 0: all hold; 1: something falls short; 3: something is not known or too close to tell.")
            .WithExample("check", "heron.json", "--explain", "\"squish[1]\"");
        Verb<RunCommand>("run", "Run the engine at full load over its speeds. Exit code 3: a speed did not settle.").WithExample("run", "heron.json", "--from", "3000rpm", "--svg", "run.svg")
            .WithExample("run", "heron.json", "--vary", "blower.driveRatio=0.9..1.2/7");
        Verb<BestCommand>("best", "Between bounds, the values of a few fields that give most power or torque while checks hold; the book stays as it is. Exit code 3: none was found that holds.")
            .WithExample("best", "heron.json", "--let", "blower.driveRatio=0.9..1.2", "--let", "combustion.burned50=6..16°", "--holding", "all");
        Verb<SprintCommand>("sprint", "Run a standing start: splits to a mile, shifts, what holds it back.").WithExample("sprint", "heron.json", "--weather", "\"temperature=30°C;pressure=990hPa\"");
        Verb<GivesCommand>("gives", "What gives first: every reserve over a family of boost levels, or of rev limits without a blower.");
        Verb<ChangesCommand>("changes", "What each change does: findings before and after, verdicts turned, what must be measured again.");
        Verb<NeedCommand>("need", "From a goal: the air, boost, fuel, injectors and drive ratio that a power or a quarter-mile time needs. Exit code 3: out of reach.").WithExample("need", "heron.json", "--power", "165kW");
        names.Add("head");
        config.AddBranch("head", Head.HeadVerbs.Add);
        names.Add("bottom");
        config.AddBranch("bottom", Bottom.BottomVerbs.Add);
        names.Add("joints");
        config.AddBranch("joints", Joints.JointVerbs.Add);
        names.Add("fits");
        config.AddBranch("fits", Fits.FitVerbs.Add);
        names.Add("drive");
        config.AddBranch("drive", Drive.DriveVerbs.Add);
        Verb<Surfaces.SurfaceCommand>("surface", "Route cards of surface treatments: peening with its saturation curve, superfinishing, coating, baking; what to mask and measure. Exit code 3: none yet, or something is wanting.")
            .WithExample("surface", "heron.json", "gears", "--svg", "strips.svg");
        names.Add("jobs");
        config.AddBranch("jobs", Jobs.JobVerbs.Add);
        Verb<Parts.PartsCommand>("parts", "Parts of the build: cost and mass against the targets, what to order by when, what puts off the first start.").WithExample("parts", "heron.json", "--orders", "--save", "orders.csv");
        Verb<AsBuiltCommand>("book", "The as-built book, as one HTML file or a PDF: what is in the engine, every reading and finding, tightening, signatures, open points.")
            .WithExample("book", "heron.gudgeon", "--out", "heron.html").WithExample("book", "heron.gudgeon", "--out", "heron.html", "--pdf");
        Verb<ServeCommand>("serve", "Serve the pages: every part of the work in a browser, from this machine only unless --share is given.").WithExample("serve", "heron.gudgeon", "--share");
        StoreVerbs(config, names);
    }

    private static void StoreVerbs(IConfigurator config, List<string> names)
    {
        ICommandConfigurator Verb<TCommand>(string name, string description)
            where TCommand : class, ICommand
        {
            names.Add(name);
            return config.AddCommand<TCommand>(name).WithDescription(description);
        }

        Verb<JournalCommand>("journal", "List every edit: what, who, when, at which device.");
        Verb<RunsCommand>("runs", "List the runs that were kept, and whether the values that they read still hold.");
        Verb<SignCommand>("sign", "Sign a statement over the book as it stands.").WithExample("sign", "heron.gudgeon", "\"measured and assembled as written here\"", "--by", "Ada");
        Verb<SignaturesCommand>("signatures", "List the signatures, and whether the book was edited since.");
        Verb<UndoCommand>("undo", "Take back the last edit; it stays in the journal.").WithExample("undo", "heron.gudgeon", "--by", "Ada");
        Verb<ConflictsCommand>("conflicts", "List values that two people set without seeing each other's.");
        Verb<SettleCommand>("settle", "Settle a conflict for the value that came first or second.").WithExample("settle", "\"cylinder[1].bore\"", "second");
        Verb<VerifyCommand>("verify", "Hold a book to its journal: nothing altered, nothing lost. Exit code 1: something is not as it must be.");
        Verb<AttachCommand>("attach", "Keep a file with the book: a picture, a PDF, a table.").WithExample("attach", "bore-gauge.pdf", "--to", "\"cylinder[1].bore\"");
        Verb<AttachmentsCommand>("attachments", "List the attached files.");
        Verb<ExtractCommand>("extract", "Write an attached file to the disk again.").WithExample("extract", "bore-gauge.pdf", "copy.pdf");
        Verb<ExportCommand>("export", "Write a book as JSON, for a text editor.").WithExample("export", "heron.gudgeon", "heron.json");
        Verb<ImportCommand>("import", "Make a book with a journal from JSON.").WithExample("import", "heron.json", "heron.gudgeon");
        Verb<BackupCommand>("backup", "Copy a book, journal and all, while others may go on editing it.").WithExample("backup", "heron.gudgeon", "stick/heron.gudgeon");
    }

    private static void Changes(IConfigurator<CommandSettings> change)
    {
        change.SetDescription("Add changes and switch them on and off.");
        change.AddCommand<ChangeAddCommand>("add").WithDescription("Begin a change.").WithExample("change", "add", "ported-head", "--title", "\"Ports opened\"", "--reason", "\"more air\"");
        change.AddCommand<ChangeSwitchCommand>("on").WithDescription("Lay a change over the baseline.");
        change.AddCommand<ChangeSwitchCommand>("off").WithDescription("Take a change off to compare.");
        change.AddCommand<ChangeListCommand>("list").WithDescription("List the changes.");
    }

    private static int Explain(Exception e, IReadOnlyList<string> args, IEnumerable<string> verbs)
    {
        switch (e)
        {
            case CommandParseException when args.Count > 0 && !verbs.Contains(args[0]) && !args[0].StartsWith('-'):
                return Refuse($"there is no verb '{args[0]}'; the nearest is '{Nearest.To(args[0], verbs)}' (gudgeon --help lists them all)");
            case BadInputException or CommandAppException or IOException or UnauthorizedAccessException:
                return Refuse(e.Message);
            case OutOfRangeException range:
                Console.Error.WriteLine("gudgeon: " + FormulaCall.Sentence(range));
                return BadInput;
            case FormulaDomainException:
                Console.Error.WriteLine("gudgeon: " + e.Message);
                return BadInput;
            case OperationCanceledException:
                Console.Error.WriteLine("gudgeon: stopped; nothing was changed");
                return Stopped;
            default:
                Console.Error.WriteLine($"gudgeon: a fault of the program's own ({e.GetType().Name}: {e.Message}); please report what you typed");
                if (Environment.GetEnvironmentVariable("GUDGEON_TRACE") is not null)
                {
                    AnsiConsole.WriteException(e);
                }

                return OwnFault;
        }
    }

    private static int Refuse(string sentence)
    {
        Console.Error.WriteLine("gudgeon: " + sentence);
        return BadInput;
    }
}
