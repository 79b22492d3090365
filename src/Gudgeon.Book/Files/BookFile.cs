using System.Text.Json;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>
/// A book as a JSON file. Every edit is made on the text's own tree, read back whole and verified before the file is
/// replaced, so that a refused edit leaves the file as it was and comments stay.
/// </summary>
public sealed class BookFile
{
    private readonly string _path;

    private BookFile(string path, BuildBook book)
    {
        _path = path;
        Book = book;
    }

    /// <summary>The build.</summary>
    public BuildBook Book { get; }

    /// <summary>Opens and verifies a book.</summary>
    /// <exception cref="BadInputException">Not there, not JSON, or not a book.</exception>
    public static BookFile Open(string path)
    {
        var (book, _) = Parse(AtomicFile.Read(path), Path.GetFileName(path));
        return new BookFile(path, book);
    }

    /// <summary>Begins a book in a new file.</summary>
    /// <exception cref="BadInputException">The file exists.</exception>
    public static BookFile Create(string path, string name)
    {
        if (File.Exists(path))
        {
            throw new BadInputException($"the file '{path}' exists; a new book does not write over it");
        }

        var root = JsonPlace.Object();
        root.Set("gudgeon", JsonPlace.Raw(JsonValueKind.Number, "1"));
        root.Set("name", JsonPlace.Of(name));
        root.Set("baseline", JsonPlace.Object());
        root.Set("changes", JsonPlace.Array([]));
        root.Set("measurements", JsonPlace.Array([]));
        root.Set("limits", JsonPlace.Object());
        AtomicFile.Write(path, JsonText.Write(root));
        return Open(path);
    }

    /// <summary>Sets a value of the baseline, or of a change.</summary>
    /// <param name="path">"cylinder[1].bore".</param>
    /// <param name="text">Value as a person writes it.</param>
    /// <param name="story">how, by, on, with, note; empty ones are left out.</param>
    /// <param name="change">Id of the change; null for the baseline.</param>
    /// <exception cref="BadInputException">Refused; the file is as it was.</exception>
    public BookFile Set(string path, string text, IEnumerable<KeyValuePair<string, string>> story, string? change = null)
    {
        var address = FieldCatalogue.Address(path);
        var value = KnownValue.Read(address.Field, text);
        return Edit((book, root) =>
        {
            var layer = change is null ? root.Child("baseline") : FindChange(book, root, change).Child("set");
            Put(layer, address, Node(value, text, story));
        });
    }

    /// <summary>Adds a change, on, without values yet.</summary>
    /// <exception cref="BadInputException">The id is taken or not a short name.</exception>
    public BookFile AddChange(string id, string title, string reason) => Edit((book, root) =>
    {
        if (book.Changes.Any(c => c.Id == id))
        {
            throw new BadInputException($"there is already a change '{id}'");
        }

        var change = JsonPlace.Object();
        change.Set("id", JsonPlace.Of(id));
        change.Set("title", JsonPlace.Of(title));
        change.Set("reason", JsonPlace.Of(reason));
        change.Set("on", JsonPlace.Raw(JsonValueKind.True, ""));
        change.Set("set", JsonPlace.Object());
        List(root, "changes").Items.Add(change);
    });

    /// <summary>Switches a change on or off.</summary>
    /// <exception cref="BadInputException">There is no such change.</exception>
    public BookFile Switch(string id, bool on) => Edit((book, root) => FindChange(book, root, id).Set("on", JsonPlace.Raw(on ? JsonValueKind.True : JsonValueKind.False, "")));

    /// <summary>Adds a reading; earlier ones stay.</summary>
    /// <exception cref="BadInputException">Refused; the file is as it was.</exception>
    public BookFile Measure(string path, string text, string with, string by, string on, string note)
    {
        var address = FieldCatalogue.Address(path);
        var value = KnownValue.Read(address.Field, text);
        return Edit((book, root) =>
        {
            var reading = JsonPlace.Object();
            reading.Set("field", JsonPlace.Of(address.Path));
            reading.Set("value", JsonPlace.Of(value.Content is Table ? text : value.Content.ToString()!));
            foreach (var (name, part) in new[] { ("with", with), ("by", by), ("on", on), ("note", note) }.Where(p => p.Item2.Length > 0))
            {
                reading.Set(name, JsonPlace.Of(part));
            }

            reading.Set("under", JsonPlace.Array(book.On.Order(StringComparer.Ordinal).Select(JsonPlace.Of)));
            List(root, "measurements").Items.Add(reading.OnOneLine());
        });
    }

    /// <summary>Sets a limit of the user's own, with a reason.</summary>
    /// <exception cref="BadInputException">Refused; the file is as it was.</exception>
    public BookFile Limit(string name, string text, string reason) => Edit(
        (_, root) =>
        {
            var limit = JsonPlace.Object();
            limit.Set("value", JsonPlace.Of(text));
            limit.Set("reason", JsonPlace.Of(reason));
            root.Child("limits").Set(name, limit.OnOneLine());
        },
        book => LimitRules.Verify(book, name));

    private static (BuildBook Book, JsonPlace Root) Parse(string text, string name)
    {
        var root = JsonPlace.Parse(text, name);
        var book = new BookReader(name).Read(root);
        try
        {
            BookRules.Verify(book);
        }
        catch (BadInputException e)
        {
            throw new BadInputException($"{name}, {e.Message}");
        }

        return (book, root);
    }

    /// <summary>Reads the file afresh under a lock, edits its tree, verifies the whole and replaces the file.</summary>
    private BookFile Edit(Action<BuildBook, JsonPlace> edit, Action<BuildBook>? verify = null)
    {
        using var gate = Gate();
        var name = Path.GetFileName(_path);
        var (before, root) = Parse(AtomicFile.Read(_path), name);
        edit(before, root);
        var text = JsonText.Write(root);
        var (after, _) = Parse(text, name);
        verify?.Invoke(after);
        AtomicFile.Write(_path, text);
        return new BookFile(_path, after);
    }

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
                throw new BadInputException($"the book '{_path}' cannot be edited now: {e.Message}");
            }
        }
    }

    private static JsonPlace FindChange(BuildBook book, JsonPlace root, string id)
    {
        book.Find(id);
        return List(root, "changes").Items.First(c => c["id"]?.Text == id);
    }

    private static JsonPlace List(JsonPlace root, string name)
    {
        if (root[name] is null)
        {
            root.Set(name, JsonPlace.Array([]));
        }

        return root[name]!;
    }

    private static void Put(JsonPlace layer, FieldAddress address, JsonPlace value)
    {
        var place = address.Field.Subject.Path.Split('.').Aggregate(layer, (at, part) => at.Child(part));
        if (address.Index.Length > 0)
        {
            place = place.Child($"[{address.Index}]");
        }

        var names = address.Field.Name.Split('.');
        names[..^1].Aggregate(place, (at, part) => at.Child(part)).Set(names[^1], value);
    }

    private static JsonPlace Node(KnownValue value, string text, IEnumerable<KeyValuePair<string, string>> story)
    {
        var scalar = value.Content switch
        {
            Table => JsonPlace.Of(text),
            int count => JsonPlace.Raw(JsonValueKind.Number, count.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            _ => JsonPlace.Of(value.Content.ToString()!),
        };
        var told = story.Where(s => s.Value.Length > 0).ToList();
        if (told.Count == 0)
        {
            return scalar;
        }

        var node = JsonPlace.Object();
        node.Set("value", scalar);
        foreach (var (name, part) in told)
        {
            node.Set(name, JsonPlace.Of(part));
        }

        return node.OnOneLine();
    }
}
