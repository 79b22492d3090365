using System.Collections.Concurrent;
using Gudgeon.Book.Values;
using Gudgeon.Cli;

namespace Gudgeon.Web.Host;

/// <summary>The books that the pages show: one file, or all of a folder. A book is opened once, for everybody.</summary>
public sealed class Workshop : IDisposable
{
    private readonly ConcurrentDictionary<string, Lazy<OpenBook>> _open = new(StringComparer.Ordinal);
    private readonly string? _only;
    private readonly string _folder;

    /// <param name="path">A book, or a folder with books.</param>
    /// <exception cref="BadInputException">There is neither.</exception>
    public Workshop(string path)
    {
        _only = Directory.Exists(path) ? null : Path.GetFileName(path);
        _folder = _only is null ? Path.GetFullPath(path) : Path.GetDirectoryName(Path.GetFullPath(path))!;
        if (_only is not null)
        {
            // A book that cannot be opened is refused before any page is served.
            Find(_only);
        }
    }

    /// <summary>File names of the books, which stand in the addresses of their pages.</summary>
    public IReadOnlyList<string> Keys => _only is not null
        ? [_only]
        : [.. Directory.EnumerateFiles(_folder).Where(Books.IsBook).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    /// <summary>The folder or the book, for people.</summary>
    public string Place => _only ?? Path.GetFileName(_folder.TrimEnd(Path.DirectorySeparatorChar));

    /// <summary>The book with this file name; null when there is none.</summary>
    /// <exception cref="BadInputException">It is there and cannot be read.</exception>
    public OpenBook? Find(string key)
    {
        // Only names that the folder lists: an address never becomes a path.
        if (!(_only == key || (_only is null && Keys.Contains(key, StringComparer.Ordinal))))
        {
            return null;
        }

        var book = _open.GetOrAdd(key, k => new Lazy<OpenBook>(() => new OpenBook(Path.Combine(_folder, k))));
        try
        {
            return book.Value;
        }
        catch (BadInputException)
        {
            _open.TryRemove(key, out _);
            throw;
        }
    }

    public void Dispose()
    {
        foreach (var book in _open.Values.Where(b => b.IsValueCreated))
        {
            book.Value.Dispose();
        }
    }
}
