using Gudgeon.Book.Values;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>The verbs of the command line, and what becomes of an error.</summary>
public static class App
{
    /// <summary>Exit code when the input cannot be taken.</summary>
    public const int BadInput = 2;

    private const int OwnFault = 70;

    /// <summary>Runs one command line and returns its exit code.</summary>
    public static int Run(IEnumerable<string> args)
    {
        using var stop = new CancellationTokenSource();
        Console.CancelKeyPress += (_, e) =>
        {
            e.Cancel = true;
            stop.Cancel();
        };
        var app = new CommandApp();
        app.Configure(Verbs);
        return app.Run(args.Select(Negative), stop.Token);
    }

    /// <summary>A negative amount such as -0.3mm is a value, not an option.</summary>
    private static string Negative(string arg) =>
        arg.Length > 1 && arg[0] == '-' && (char.IsAsciiDigit(arg[1]) || arg[1] == '.') ? '−' + arg[1..] : arg;

    private static void Verbs(IConfigurator config)
    {
        config.SetApplicationName("gudgeon");
        config.SetApplicationVersion(typeof(App).Assembly.GetName().Version!.ToString(3));
        config.SetExceptionHandler((e, _) => Explain(e));
        config.AddCommand<WorkCommand>("work")
            .WithDescription("Work one formula, list them all, or hold them to a file of known values.")
            .WithExample("work", "helical spring rate", "wire=4.2mm", "meanDiameter=29mm", "activeCoils=5.5")
            .WithExample("work", "--rows", "rows.csv");
        config.AddCommand<DemoCommand>("demo").WithDescription("Copy an invented build to a folder, run everything on it and print one page for the wall.");
        config.AddCommand<FieldsCommand>("fields").WithDescription("List everything that can be known about a build.");
        config.AddCommand<SchemaCommand>("schema").WithDescription("Print the JSON Schema of a book.");
        config.AddCommand<NewCommand>("new").WithDescription("Begin a book.");
        config.AddCommand<ShowCommand>("show").WithDescription("Show the values that hold and how each is known.");
        config.AddCommand<SetCommand>("set")
            .WithDescription("Give a field a value.")
            .WithExample("set", "cylinder[1].bore", "94.01 mm ± 0.005 mm", "--how", "measured");
        config.AddCommand<MeasureCommand>("measure")
            .WithDescription("Add a reading; earlier ones stay.")
            .WithExample("measure", "cylinder[1].bore", "94.012 mm ± 0.006 mm", "--with", "bore gauge", "--by", "Ada");
        config.AddBranch("change", change =>
        {
            change.SetDescription("Add changes and switch them on and off.");
            change.AddCommand<ChangeAddCommand>("add").WithDescription("Begin a change.");
            change.AddCommand<ChangeSwitchCommand>("on").WithDescription("Lay a change over the baseline.");
            change.AddCommand<ChangeSwitchCommand>("off").WithDescription("Take a change off to compare.");
            change.AddCommand<ChangeListCommand>("list").WithDescription("List the changes.");
        });
        config.AddCommand<LimitCommand>("limit").WithDescription("Set a limit of your own in place of a check's usual one, with a reason.");
        config.AddCommand<CheckCommand>("check")
            .WithDescription("Will it hold: every check, with its reserve. Exit code 0 all hold, 1 something falls short, 3 something is not known or too close to tell.")
            .WithExample("check", "heron.json", "--explain", "squish[1]");
        config.AddCommand<RunCommand>("run").WithDescription("Run the engine at full load over its speeds.").WithExample("run", "heron.json", "--from", "3000rpm", "--svg", "run.svg");
        config.AddCommand<SprintCommand>("sprint").WithDescription("Run a standing start: splits to a mile, shifts, what holds it back.").WithExample("sprint", "heron.json", "--weather", "temperature=30°C;pressure=990hPa");
        config.AddCommand<GivesCommand>("gives").WithDescription("What gives first: every reserve over a family of boost levels, or of rev limits without a blower.");
        config.AddCommand<ChangesCommand>("changes").WithDescription("What each change does: findings before and after, verdicts turned, what must be measured again.");
        config.AddCommand<NeedCommand>("need").WithDescription("From a goal: the air, boost, fuel, injectors and drive ratio that a power or a quarter-mile time needs.").WithExample("need", "heron.json", "--power", "165kW");
    }

    private static int Explain(Exception e)
    {
        switch (e)
        {
            case BadInputException or CommandAppException:
                Console.Error.WriteLine("gudgeon: " + e.Message);
                return BadInput;
            case OperationCanceledException:
                Console.Error.WriteLine("gudgeon: stopped; nothing was changed");
                return 130;
            case IOException or UnauthorizedAccessException:
                Console.Error.WriteLine("gudgeon: " + e.Message);
                return BadInput;
            default:
                Console.Error.WriteLine($"gudgeon: a fault of the program's own ({e.GetType().Name}: {e.Message}); please report what you typed");
                if (Environment.GetEnvironmentVariable("GUDGEON_TRACE") is not null)
                {
                    AnsiConsole.WriteException(e);
                }

                return OwnFault;
        }
    }
}
