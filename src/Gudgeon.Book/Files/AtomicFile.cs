using System.Text;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>Files that are replaced whole or not at all.</summary>
public static class AtomicFile
{
    /// <summary>Reads a file as UTF-8.</summary>
    /// <exception cref="BadInputException">It is not there or cannot be read.</exception>
    public static string Read(string path) => Read(path, p => File.ReadAllText(p, Encoding.UTF8));

    /// <summary>Reads a whole file as it is.</summary>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public static byte[] ReadBytes(string path) => Read(path, File.ReadAllBytes);

    private static T Read<T>(string path, Func<string, T> read)
    {
        try
        {
            return read(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException($"the file '{path}' cannot be read: {(File.Exists(path) ? e.Message : Directory.Exists(path) ? "it is a folder" : "there is no such file")}");
        }
    }

    /// <summary>Writes beside the file, flushes to the disk, then takes its place in one step.</summary>
    /// <exception cref="BadInputException">The disk or the folder refuses; the old file is untouched.</exception>
    public static void Write(string path, string text) => Write(path, Encoding.UTF8.GetBytes(text));

    /// <inheritdoc cref="Write(string, string)"/>
    public static void Write(string path, byte[] content)
    {
        var beside = $"{path}.{Environment.ProcessId}.new";
        try
        {
            using (var stream = new FileStream(beside, FileMode.Create, FileAccess.Write))
            {
                stream.Write(content);
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentOutOfRangeException)
        {
            if (e is DirectoryNotFoundException)
            {
                throw new BadInputException($"the file '{path}' cannot be written: there is no such folder");
            }

            if (File.Exists(beside))
            {
                File.Delete(beside);
            }

            throw new BadInputException($"the file '{path}' cannot be written, and is as it was: {(e is ArgumentOutOfRangeException ? "it is larger than the disk takes" : e.Message)}");
        }
    }
}
