namespace Gudgeon.Book.Tests;

/// <summary>A folder of its own for a test, gone afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gudgeon-test-").FullName;

    /// <summary>Names of the files in it.</summary>
    public IEnumerable<string> Files => Directory.EnumerateFiles(_folder).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal);

    public string PathOf(string name) => Path.Combine(_folder, name);

    /// <summary>Writes a file and returns its path.</summary>
    public string Write(string name, string text)
    {
        File.WriteAllText(PathOf(name), text);
        return PathOf(name);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
