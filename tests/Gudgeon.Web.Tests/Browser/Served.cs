using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Gudgeon.Web.Tests.Browser;

/// <summary>The program serving a folder of books of its own, as its user starts it.</summary>
public sealed partial class Served : IAsyncDisposable
{
    private readonly bool _share;
    private readonly List<string> _said = [];
    private Process _process = null!;

    private Served(bool share) => _share = share;

    /// <summary>The folder with the books, gone when this is disposed of.</summary>
    public string Folder { get; } = Directory.CreateTempSubdirectory("gudgeon-web-").FullName;

    /// <summary>Port on which it listens; the same after a restart.</summary>
    public int Port { get; private set; }

    /// <summary>Address of the pages for this machine.</summary>
    public string Url => string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{Port}");

    /// <summary>What it printed so far.</summary>
    public string Said
    {
        get
        {
            lock (_said)
            {
                return string.Join('\n', _said);
            }
        }
    }

    /// <summary>Starts it on the invented builds, as stores.</summary>
    /// <param name="share">Whether on the local network too.</param>
    /// <param name="books">Names of the builds in the demo.</param>
    public static async Task<Served> Start(bool share = false, params string[] books)
    {
        var served = new Served(share);
        foreach (var book in books.Length > 0 ? books : ["heron"])
        {
            await Command("import", Path.Combine(AppContext.BaseDirectory, "demo", book + ".json"), served.PathOf(book));
        }

        await served.Launch();
        return served;
    }

    /// <summary>Path of a book.</summary>
    public string PathOf(string book) => Path.Combine(Folder, book + ".gudgeon");

    /// <summary>Address of a page of a book.</summary>
    public string Page(string part = "", string book = "heron") => $"{Url}/book/{book}.gudgeon{(part.Length > 0 ? "/" + part : "")}";

    /// <summary>Ends it as a power cut would.</summary>
    public async Task Kill()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
    }

    /// <summary>Starts it again on the same port.</summary>
    public async Task Launch()
    {
        _process = Process.Start(Info(["serve", Folder, "--port", Port.ToString(CultureInfo.InvariantCulture), .. _share ? new[] { "--share" } : []]))!;
        var open = new TaskCompletionSource<int>(TaskCreationOptions.RunContinuationsAsynchronously);
        _process.OutputDataReceived += (_, e) => Hear(e.Data, open);
        _process.ErrorDataReceived += (_, e) => Hear(e.Data, open);
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
        Port = await open.Task.WaitAsync(TimeSpan.FromSeconds(60));
    }

    /// <summary>Runs a verb of the command line and returns what it printed.</summary>
    public static async Task<string> Command(params string[] words)
    {
        using var process = Process.Start(Info(words))!;
        var text = await process.StandardOutput.ReadToEndAsync();
        var wrong = await process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return process.ExitCode is 0 or 1 or 3 ? text : throw new InvalidOperationException($"gudgeon {string.Join(' ', words)}: {wrong}");
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
        {
            await Kill();
        }

        Directory.Delete(Folder, recursive: true);
    }

    private static ProcessStartInfo Info(params string[] words)
    {
        var info = new ProcessStartInfo("dotnet", [Program, .. words]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        info.Environment["GUDGEON_HOME"] = Home;
        return info;
    }

    /// <summary>The program where it was built, with the files of its pages beside it.</summary>
    private static string Program
    {
        get
        {
            var here = new DirectoryInfo(AppContext.BaseDirectory);
            var (framework, configuration, root) = (here.Name, here.Parent!.Name, here.Parent!.Parent!.Parent!.Parent!.Parent!);
            return Path.Combine(root.FullName, "src", "Gudgeon", "bin", configuration, framework, "gudgeon.dll");
        }
    }

    /// <summary>A folder for paired devices and keys that is this run's own.</summary>
    private static string Home { get; } = Directory.CreateTempSubdirectory("gudgeon-home-").FullName;

    private void Hear(string? line, TaskCompletionSource<int> open)
    {
        if (line is null)
        {
            open.TrySetException(new InvalidOperationException("the program ended: " + Said));
            return;
        }

        lock (_said)
        {
            _said.Add(line);
        }

        if (Address().Match(line) is { Success: true } match)
        {
            open.TrySetResult(int.Parse(match.Groups["port"].Value, CultureInfo.InvariantCulture));
        }
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:(?<port>\d+)/", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Address();
}
