using Gudgeon.Book.Build;

namespace Gudgeon.Book.Files;

/// <summary>
/// A book as a JSON file. Every edit is made on the text's own tree, read back whole and verified before the file is
/// replaced, so that a refused edit leaves the file as it was and comments stay.
/// </summary>
internal sealed class JsonBook : BookFile
{
    private readonly string _path;

    private JsonBook(string path, BuildBook book)
        : base(book) => _path = path;

    /// <summary>Opens and verifies a book.</summary>
    public static JsonBook Read(string path) => new(path, Check(Parse(path), Path.GetFileName(path)));

    /// <summary>Writes a book to a new file.</summary>
    public static JsonBook Begin(string path, JsonPlace document)
    {
        Fresh(path);
        AtomicFile.Write(path, JsonText.Write(document));
        return Read(path);
    }

    public override JsonPlace Document() => Parse(_path);

    /// <summary>Reads the file afresh under a lock, edits its tree, verifies the whole and replaces the file.</summary>
    protected override BookFile Take(IReadOnlyList<Func<BuildBook, Edit>> makes, int? basedOn = null, bool each = false)
    {
        if (basedOn > Revision)
        {
            throw new Values.BadInputException($"the book '{_path}' is kept as JSON and counts no revisions; gudgeon import makes a .gudgeon book of it, which does");
        }

        using var gate = Gate();
        var name = Path.GetFileName(_path);
        var (root, text) = (Parse(_path), "");
        var book = Check(root, name);
        foreach (var make in makes)
        {
            var edit = make(book);
            if (edit is AddReading { Id.Length: > 0 } reading && reading.Repeats(book.Measurements.FirstOrDefault(m => m.Id == reading.Id)))
            {
                if (each)
                {
                    continue;
                }

                return new JsonBook(_path, book) { Repeated = true };
            }

            edit.Do(root);
            text = JsonText.Write(root);
            root = JsonPlace.Parse(text, name);
            book = Check(root, name);
            edit.Verify(book);
        }

        if (text.Length > 0)
        {
            AtomicFile.Write(_path, text);
        }

        return new JsonBook(_path, book) { Repeated = text.Length == 0 && makes.Count > 0 };
    }

    private static JsonPlace Parse(string path) => JsonPlace.Parse(AtomicFile.Read(path), Path.GetFileName(path));

    /// <summary>Only one program edits a book at a time; the others wait a little.</summary>
    private FileStream Gate()
    {
        var gate = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(_path))!, $".{Path.GetFileName(_path)}.lock");
        for (var attempt = 0; ; attempt++)
        {
            try
            {
                return new FileStream(gate, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (IOException) when (attempt < 100)
            {
                Thread.Sleep(50);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw new Values.BadInputException($"the book '{_path}' cannot be edited now: {e.Message}");
            }
        }
    }
}
