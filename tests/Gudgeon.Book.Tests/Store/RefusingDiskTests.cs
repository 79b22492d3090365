using System.Diagnostics;
using System.Runtime.InteropServices;
using Gudgeon.Book.Files;

namespace Gudgeon.Book.Tests.Store;

/// <summary>
/// Disks that are full or cannot be written, real ones: a program of its own writes to them. Small disks are mounted where
/// only that program sees them.
/// </summary>
public sealed class RefusingDiskTests : IDisposable
{
    private const string ReadOnly = "can only be read here, and is as it was";

    private readonly TemporaryFolder _folder = new();
    private readonly string _place;

    public RefusingDiskTests()
    {
        _place = _folder.PathOf("place");
        Directory.CreateDirectory(_place);
    }

    public static TheoryData<string> Forms => ["wren.gudgeon", "wren.json"];

    public void Dispose()
    {
        if (!OperatingSystem.IsWindows())
        {
            Mode("u+w", _place);
        }

        _folder.Dispose();
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_full_disk_takes_no_more_and_gives_back_what_it_took(string name)
    {
        Begin(_folder.PathOf(name));
        var said = Mounted($"mount -t tmpfs -o size=512k none '{_place}' && cp '{_folder.PathOf(name)}' '{_place}'", name);
        var taken = said.Count(l => l == "taken");
        Assert.True(taken > 5);
        Holds(said, name.EndsWith(".json", StringComparison.Ordinal) ? "cannot be written, and is as it was: No space left on device" : "the disk is full: the book ", taken);
    }

    // What a process may write to one file is limited, which every user may do: the disk refuses in the middle of a file.
    [Theory]
    [MemberData(nameof(Forms))]
    public void A_disk_that_refuses_in_the_middle_of_a_file_leaves_the_book_as_it_was(string name)
    {
        Begin(Path.Combine(_place, name));
        var said = Shell("trap '' XFSZ; ulimit -f 400", Command(name));
        var taken = said.Count(l => l == "taken");
        Assert.True(taken > 5);
        Holds(said, name.EndsWith(".json", StringComparison.Ordinal) ? "cannot be written, and is as it was: it is larger than the disk takes" : "the disk refused what was to be written: the book ", taken);

        // What SQLite could not move into its file waits beside it, and is moved when there is room.
        Assert.Equal(taken, BookFile.Open(Path.Combine(_place, name)).Book.Measurements.Count);
        Assert.Equal([name], Directory.EnumerateFiles(_place).Select(Path.GetFileName));
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_medium_that_cannot_be_written_is_read_and_not_edited(string name)
    {
        Begin(Path.Combine(_place, name));
        Holds(Mounted($"mount --bind '{_place}' '{_place}' && mount -o remount,bind,ro '{_place}'", name), Refused(name), 0);
        Assert.Equal([name], Directory.EnumerateFiles(_place).Select(Path.GetFileName));
    }

    [Fact]
    public void A_book_of_an_older_format_is_read_where_it_cannot_be_written()
    {
        FormatsTests.Unpack("format-1.gudgeon.gz", Path.Combine(_place, "tern.gudgeon"));
        var said = Mounted($"mount --bind '{_place}' '{_place}' && mount -o remount,bind,ro '{_place}'", "tern.gudgeon");
        Holds(said, ReadOnly, 3);
    }

    [Theory]
    [InlineData("wren.gudgeon", false)]
    [InlineData("wren.gudgeon", true)]
    [InlineData("wren.json", true)]
    public void A_folder_that_may_not_be_written_holds_a_book_that_can_be_read(string name, bool folder)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "files have modes on Unix only");
        Begin(Path.Combine(_place, name));
        Mode("a-w", Path.Combine(_place, name));
        if (folder)
        {
            Mode("a-w", _place);
        }

        Holds(Shell(":", $"{Bound()} {Command(name)}"), Refused(name), 0);
        Assert.Equal([name], Directory.EnumerateFiles(_place).Select(Path.GetFileName));
    }

    private static string Refused(string name) => name.EndsWith(".json", StringComparison.Ordinal) ? "cannot be edited now" : ReadOnly;

    private static void Begin(string path) => BookFile.Create(path, "Wren", new Hand("Ada", "bench"));

    private static void Mode(string mode, string path) => Assert.Equal(0, Run($"chmod {mode} '{path}'").Code);

    /// <summary>Refused in one sentence, all that was acknowledged there, nothing else, and nothing wrong with it.</summary>
    private static void Holds(List<string> said, string sentence, int readings)
    {
        Assert.Contains(sentence, Assert.Single(said, l => l.StartsWith("refused: ", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains($"holds {readings}", said);
        Assert.DoesNotContain(said, l => l.StartsWith("bad: ", StringComparison.Ordinal));
    }

    private string Command(string name) => $"'{WriterProcess.Dotnet()}' '{typeof(Program).Assembly.Location}' {Program.Filler} '{Path.Combine(_place, name)}'";

    /// <summary>Has a program write to a disk that is mounted for it alone.</summary>
    private List<string> Mounted(string mount, string name)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "only Linux mounts a disk for one program alone");
        var alone = Array.Find(["unshare --mount", "unshare --map-root-user --mount"], u => Run($"{u} sh -c \"mount -t tmpfs none '{_place}'\"").Code == 0);
        Assert.SkipWhen(alone is null, "this user may not mount a disk, not even for a program alone");
        File.WriteAllText(_folder.PathOf("mount.sh"), $"{mount} && exec {Command(name)}\n");
        return Shell(":", $"{alone} sh '{_folder.PathOf("mount.sh")}'");
    }

    /// <summary>What makes the modes of files bind: nothing, or for root to go without its right to pass over them.</summary>
    private static string Bound()
    {
        if (geteuid() != 0)
        {
            return "";
        }

        const string Without = "setpriv --bounding-set=-dac_override,-dac_read_search --inh-caps=-dac_override,-dac_read_search";
        Assert.SkipUnless(Run($"{Without} true").Code == 0, "root passes over the modes of files, and cannot be kept from it here");
        return Without;
    }

    private static List<string> Shell(string before, string command)
    {
        Assert.SkipUnless(File.Exists("/bin/sh"), "there is no shell");
        var (code, output, error) = Run($"{before}; exec {command}");
        Assert.True(code == 0, $"{output}\n{error}");
        return [.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries)];
    }

    private static (int Code, string Output, string Error) Run(string line)
    {
        var start = new ProcessStartInfo("/bin/sh") { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(line);
        WriterProcess.Quick(start);
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.GetAwaiter().GetResult());
    }

    [DllImport("libc")]
    private static extern uint geteuid();
}
