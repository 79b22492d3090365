using System.Globalization;
using Gudgeon.Book.Files;

namespace Gudgeon.Book.Tests.Store;

/// <summary>Runs the tests; or, started by one of them, writes readings to a book until it is killed.</summary>
internal static class Program
{
    public const string Writer = "--write-readings";

    public static int Main(string[] args)
    {
        if (args is [Writer, var path, var name, var most])
        {
            return Write(path, name, int.Parse(most, CultureInfo.InvariantCulture));
        }

        return Array.Exists(args, a => a is "--server" or "--internal-msbuild-node")
            ? Xunit.MicrosoftTestingPlatform.TestPlatformTestFramework.RunAsync(args, SelfRegisteredExtensions.AddSelfRegisteredExtensions).GetAwaiter().GetResult()
            : Xunit.Runner.InProc.SystemConsole.ConsoleRunner.Run(args).GetAwaiter().GetResult();
    }

    /// <summary>Says the note of each reading when, and not before, the book has taken it.</summary>
    private static int Write(string path, string name, int most)
    {
        var book = BookFile.Open(path, new Hand(name, "bench"));
        for (var i = 1; i <= most; i++)
        {
            var note = string.Create(CultureInfo.InvariantCulture, $"{name}-{i}");
            book = book.Measure("piston[1].mass", string.Create(CultureInfo.InvariantCulture, $"{300 + (i / 100.0):F2} g"), "scale", name, "2026-10-02", note);
            Console.Out.WriteLine(note);
            Console.Out.Flush();
        }

        return 0;
    }
}
