using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace Gudgeon.Book.Tests.Store;

/// <summary>A process of its own that writes readings to a book and says each that the book has taken.</summary>
internal sealed class WriterProcess : IDisposable
{
    private readonly Process _process;

    private WriterProcess(Process process)
    {
        _process = process;
        _process.OutputDataReceived += (_, e) =>
        {
            if (e.Data is not null)
            {
                Said.Enqueue(e.Data);
            }
        };
        _process.BeginOutputReadLine();
    }

    /// <summary>Notes of the readings that it says were taken.</summary>
    public ConcurrentQueue<string> Said { get; } = [];

    public static WriterProcess Start(string path, string name, int most)
    {
        var start = new ProcessStartInfo(Dotnet()) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var word in new[] { typeof(WriterProcess).Assembly.Location, Program.Writer, path, name, most.ToString(CultureInfo.InvariantCulture) })
        {
            start.ArgumentList.Add(word);
        }

        Quick(start);
        return new WriterProcess(Process.Start(start)!);
    }

    public int Finish()
    {
        // Without a time limit this waits for the end of the output as well.
        _process.WaitForExit();
        return _process.ExitCode;
    }

    /// <summary>Ends it as a power cut to the process would: SIGKILL, which no program can catch.</summary>
    public void Kill()
    {
        _process.Kill();
        _process.WaitForExit();
    }

    /// <summary>None outlives its test, whatever becomes of that.</summary>
    public void Dispose()
    {
        if (!_process.HasExited)
        {
            Kill();
        }

        _process.Dispose();
    }

    /// <summary>Most of its short life is start and compilation; without what only long lives need there is less of it.</summary>
    public static void Quick(ProcessStartInfo start)
    {
        foreach (var (name, value) in new[] { ("TieredPGO", "0"), ("EnableDiagnostics", "0"), ("gcConcurrent", "0"), ("EnableWriteXorExecute", "0") })
        {
            start.Environment["DOTNET_" + name] = value;
        }
    }

    public static string Dotnet() => Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet"
        ? Environment.ProcessPath!
        : Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet";
}
