using System.Globalization;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Store;

/// <summary>Runs the tests; or, started by one of them, writes readings to a book until it is killed.</summary>
internal static class Program
{
    public const string Writer = "--write-readings";
    public const string Filler = "--write-until-refused";

    public static int Main(string[] args)
    {
        if (args is [Writer, var path, var name, var most])
        {
            return Write(path, name, int.Parse(most, CultureInfo.InvariantCulture));
        }

        if (args is [Filler, var full])
        {
            return Fill(full);
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

    /// <summary>Writes readings until the book refuses one; says each that it took, the refusal, and what the book holds then.</summary>
    private static int Fill(string path)
    {
        var book = BookFile.Open(path, new Hand("Ada", "bench"));
        for (var i = 1; i <= 2000; i++)
        {
            try
            {
                book = book.Measure("piston[1].mass", "300 g", "scale", "Ada", "2026-10-02", $"{i} {new string('x', 2000)}");
                Console.Out.WriteLine("taken");
            }
            catch (BadInputException e)
            {
                Console.Out.WriteLine($"refused: {e.Message}");
                break;
            }
        }

        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"holds {BookFile.Open(path).Book.Measurements.Count}"));
        foreach (var assurance in StoredBook.IsStore(path) ? StoredBook.Verify(path) : [])
        {
            Console.Out.WriteLine($"{(assurance.Good ? "good" : "bad")}: {assurance.Sentence}");
        }

        return 0;
    }
}
