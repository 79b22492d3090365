using System.Diagnostics;
using System.Text;
using System.Text.Json;
using Gudgeon.Cli;

namespace Gudgeon.Tests.Cli;

/// <summary>What one run of the program gave.</summary>
public sealed record Outcome(int Code, string Output, string Error)
{
    public string[] Lines => Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    public JsonElement Json => JsonDocument.Parse(Output).RootElement;
}

/// <summary>A private folder in which the built program is run as a person runs it: one process for each command.</summary>
public sealed class Workshop : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    public Workshop() => Folder = Directory.CreateTempSubdirectory("gudgeon-test-").FullName;

    public string Folder { get; }

    /// <summary>Whether the system is one with signals, links and a shell.</summary>
    public static bool HasShell => File.Exists("/bin/sh");

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    public string At(string name) => Path.Combine(Folder, name);

    public string Read(string name) => File.ReadAllText(At(name), Encoding.UTF8);

    public void Write(string name, string text) => File.WriteAllText(At(name), text);

    /// <summary>Puts one of the invented builds of the program into the folder.</summary>
    public void Unpack(string build)
    {
        using var book = new StreamReader(typeof(App).Assembly.GetManifestResourceStream($"demo/{build}.json")!, Encoding.UTF8);
        Write(build + ".json", book.ReadToEnd());
    }

    public Outcome Run(params string[] words) => Finish(Start(words));

    /// <summary>Runs with a variable of the environment set.</summary>
    public Outcome RunWith(string variable, string value, params string[] words) => Finish(Begin(words, (variable, value)));

    /// <summary>Runs and demands the exit code.</summary>
    public string Good(params string[] words)
    {
        var outcome = Run(words);
        Assert.True(outcome.Code == 0, $"gudgeon {string.Join(' ', words)}: exit code {outcome.Code}: {outcome.Error}");
        return outcome.Output;
    }

    public Process Start(params string[] words) => Begin(words);

    /// <summary>Runs a line of the shell in which $G is the program.</summary>
    public Outcome Shell(string line)
    {
        var start = Plain("/bin/sh");
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(line);
        start.Environment["G"] = $"{Dotnet()} {Dll()}";
        return Finish(Process.Start(start)!);
    }

    public static Outcome Finish(Process process)
    {
        using (process)
        {
            var output = process.StandardOutput.ReadToEndAsync();
            var error = process.StandardError.ReadToEndAsync();
            if (!process.WaitForExit(Patience))
            {
                process.Kill(entireProcessTree: true);
                Assert.Fail("the program did not end");
            }

            return new Outcome(process.ExitCode, output.GetAwaiter().GetResult(), error.GetAwaiter().GetResult());
        }
    }

    private Process Begin(string[] words, params (string Variable, string Value)[] environment)
    {
        var start = Plain(Dotnet());
        start.ArgumentList.Add(Dll());
        Array.ForEach(words, start.ArgumentList.Add);
        foreach (var (variable, value) in environment)
        {
            start.Environment[variable] = value;
        }

        return Process.Start(start)!;
    }

    private ProcessStartInfo Plain(string program)
    {
        var start = new ProcessStartInfo(program)
        {
            UseShellExecute = false,
            WorkingDirectory = Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        start.Environment.Remove("GUDGEON_BOOK");
        start.Environment.Remove("GUDGEON_TRACE");
        return start;
    }

    private static string Dll() => Path.Combine(AppContext.BaseDirectory, "gudgeon.dll");

    private static string Dotnet() => Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet"
        ? Environment.ProcessPath!
        : Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet";
}
