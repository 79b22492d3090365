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
        return app.Run(args, stop.Token);
    }

    private static void Verbs(IConfigurator config)
    {
        config.SetApplicationName("gudgeon");
        config.SetApplicationVersion(typeof(App).Assembly.GetName().Version!.ToString(3));
        config.SetExceptionHandler((e, _) => Explain(e));
        config.AddCommand<WorkCommand>("work")
            .WithDescription("Work one formula, list them all, or hold them to a file of known values.")
            .WithExample("work", "helical spring rate", "wire=4.2mm", "meanDiameter=29mm", "activeCoils=5.5")
            .WithExample("work", "--rows", "rows.csv");
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
