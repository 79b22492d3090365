using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Store;

/// <summary>
/// A book as a store: a journal of every edit, and tables of what it comes to, written in the same transaction. What has
/// been acknowledged is on the disk.
/// </summary>
public sealed class StoredBook : BookFile
{
    private readonly string _path;
    private readonly Hand _hand;

    private StoredBook(string path, Hand hand, BuildBook book, int revision)
        : base(book)
    {
        _path = path;
        _hand = hand;
        Revision = revision;
    }

    public override int Revision { get; }

    public override IDutyShelf Shelf => new DutyShelf(_path);

    /// <summary>Whether the edit that gave this book was not taken but kept as a conflict.</summary>
    public bool Contested { get; private init; }

    /// <summary>Open conflicts, oldest first.</summary>
    public IReadOnlyList<Conflict> Conflicts => StoreFile.Read(_path, connection => (IReadOnlyList<Conflict>)[.. Tables.Conflicts(connection).Select(c => Conflict.Of(connection, c))]);

    /// <summary>Attached files, oldest first.</summary>
    public IReadOnlyList<Attachment> Attachments => StoreFile.Read(_path, Attaching.List);

    /// <summary>Signatures that stand, oldest first.</summary>
    public IReadOnlyList<Signature> Signatures => StoreFile.Read(_path, Signature.List);

    /// <summary>The seal of the last entry, hexadecimal, lower case: with it goes all that was ever done.</summary>
    public string Seal => StoreFile.Read(_path, connection => Convert.ToHexStringLower(Journal.After(connection, Journal.Revision(connection) - 1).First().Seal));

    /// <summary>All that was ever done to the book, and whether it still stands.</summary>
    public IReadOnlyList<(JournalEntry Entry, bool Stands)> History => StoreFile.Read(_path, connection =>
    {
        var entries = Journal.After(connection).ToList();
        var standing = Replay.Standing(entries).Select(s => s.Entry.Revision).ToHashSet();
        return (IReadOnlyList<(JournalEntry, bool)>)[.. entries.Select(e => (e, standing.Contains(e.Revision)))];
    });

    public override IReadOnlyList<PathEntry> HistoryOf(string path)
    {
        var address = FieldCatalogue.Address(path);
        return StoreFile.Read(_path, connection => PathEntry.Of(connection, address.Path));
    }

    /// <summary>The revision of a book on the disk, without reading the book; 0 when it counts none.</summary>
    /// <exception cref="BadInputException">A store that is not there or is none.</exception>
    public static int RevisionAt(string path) => IsStore(path) ? StoreFile.Read(path, Journal.Revision) : 0;

    /// <summary>Whether a name asks for a book with a journal.</summary>
    public static bool IsStoreName(string path) => StoreFile.IsNamed(path);

    /// <summary>Whether a file is a book with a journal, by what it holds.</summary>
    public static bool IsStore(string path) => StoreFile.Is(path);

    /// <summary>Opens and verifies a book.</summary>
    /// <exception cref="BadInputException">Not there, or not a book.</exception>
    internal static StoredBook Read(string path, Hand? hand) => StoreFile.Read(path, connection =>
        new StoredBook(path, hand ?? Hand.Here(), CheckRows(path, Tables.Read(connection)).Book, Journal.Revision(connection)));

    /// <summary>Writes a book to a new file.</summary>
    internal static StoredBook Begin(string path, JsonPlace document, Hand? hand)
    {
        StoreFile.Make(path, connection =>
        {
            Formats.BringForward(connection, path, Formats.Steps);
            using var transaction = connection.BeginTransaction(deferred: false);
            var begin = new BeginBook(document);
            Tables.Do(connection, Journal.Add(connection, hand ?? Hand.Here(), begin), begin);
            transaction.Commit();
        });
        return Read(path, hand);
    }

    public override JsonPlace Document() => StoreFile.Read(_path, Tables.Read) switch
    {
        { Conflicts.Count: > 0 } => throw new BadInputException($"the book '{_path}' holds a conflict that is not settled, and JSON has no place for one; settle it first (gudgeon conflicts)"),
        var rows => rows.Tree(),
    };

    /// <summary>Takes back the last edit that stands; it stays in the journal.</summary>
    /// <returns>The book after it, and what was taken back.</returns>
    /// <exception cref="BadInputException">Nothing stands but the book's beginning.</exception>
    public (BookFile Book, JournalEntry Undone) Undo() => StoreFile.Write(_path, connection =>
    {
        var last = Replay.Standing(Journal.After(connection))[^1];
        if (last.Edit is BeginBook)
        {
            throw new BadInputException($"the book '{_path}' holds no edit to take back");
        }

        var revision = Journal.Add(connection, _hand, new UndoEdit((int)last.Entry.Revision));
        var rows = Replay.Rows(Journal.After(connection));
        Tables.Write(connection, rows);
        return ((BookFile)new StoredBook(_path, _hand, CheckRows(_path, rows).Book, revision), last.Entry);
    });

    /// <summary>Settles the oldest conflict about a value.</summary>
    /// <param name="path">"cylinder[1].bore".</param>
    /// <param name="second">Whether to take the value that came second; else the one that the book holds stays.</param>
    /// <param name="change">Id of the change; empty for the baseline.</param>
    /// <exception cref="BadInputException">There is none.</exception>
    public BookFile Settle(string path, bool second, string change = "") => Edit((connection, _) =>
    {
        var conflict = Tables.Conflicts(connection).FirstOrDefault(c => c.Path == path && c.Change == change)
            ?? throw new BadInputException($"there is no conflict about {path}{(change.Length > 0 ? $" in the change {change}" : "")} (gudgeon conflicts lists them)");
        return new SettleValue((int)conflict.Revision, path, change, second ? JsonPlace.Parse(conflict.Content, path).OnOneLine() : null);
    });

    /// <summary>No attached file may be larger, bytes.</summary>
    public const int LargestFile = Attaching.Limit;

    /// <summary>Keeps a file with the book.</summary>
    /// <param name="file">The file; at most 20 MiB, of a type that is known.</param>
    /// <param name="about">Path of the field that it is about; empty for the whole book.</param>
    /// <exception cref="BadInputException">Not there, too large, or of no known type.</exception>
    public BookFile Attach(string file, string about = "") => Attach(Path.GetFileName(file), Attaching.Read(file), about);

    /// <summary>Keeps what a stream gives with the book.</summary>
    /// <param name="name">Name of the file; a folder before it is left out.</param>
    /// <param name="content">The file; at most 20 MiB, of a type that is known.</param>
    /// <param name="about">Path of the field that it is about; empty for the whole book.</param>
    /// <exception cref="BadInputException">Too large, or of no known type.</exception>
    public BookFile Attach(string name, Stream content, string about = "") => Attach(name, Attaching.Read(content), about);

    /// <inheritdoc cref="Attach(string, Stream, string)"/>
    public BookFile Attach(string name, byte[] content, string about = "")
    {
        var edit = Attaching.Take(name, content, about);
        return Edit((connection, _) =>
        {
            Attaching.Keep(connection, edit.Sha256, content);
            return edit;
        });
    }

    /// <summary>A small picture of an attached one, made when it is first asked for; null when there is none to make.</summary>
    public Thumbnail? Thumbnail(Attachment attachment)
    {
        if (!attachment.Type.StartsWith("image/", StringComparison.Ordinal))
        {
            return null;
        }

        var (kept, known) = StoreFile.Read(_path, connection => Store.Thumbnail.Kept(connection, attachment.Sha256));
        if (known)
        {
            return kept;
        }

        var made = Store.Thumbnail.Of(Content(attachment));
        try
        {
            StoreFile.Write(_path, connection =>
            {
                Store.Thumbnail.Keep(connection, attachment.Sha256, made);
                return true;
            });
        }
        catch (BadInputException)
        {
            // A book that cannot be written now shows its pictures all the same; the next time they are made again.
        }

        return made;
    }

    /// <summary>Signs a statement over the book as it stands; whoever edits the book is who signs.</summary>
    /// <exception cref="BadInputException">No statement.</exception>
    public BookFile Sign(string statement) => statement.Trim().Length == 0
        ? throw new BadInputException("a signature needs a statement")
        : Edit((connection, _) =>
        {
            var last = Journal.After(connection, Journal.Revision(connection) - 1).First();
            return new Sign(statement.Trim(), (int)last.Revision, Convert.ToHexStringLower(last.Seal));
        });

    /// <summary>The content of an attached file.</summary>
    public byte[] Content(Attachment attachment) => StoreFile.Read(_path, connection => Attaching.Content(connection, attachment.Sha256));

    /// <summary>Copies the book as it stands to a new file, while others may go on editing.</summary>
    /// <exception cref="BadInputException">The file exists or cannot be written.</exception>
    public void BackUpTo(string path)
    {
        Fresh(path);
        StoreFile.Make(path, copy => StoreFile.Read(_path, connection =>
        {
            connection.BackupDatabase(copy);
            return true;
        }));
    }

    /// <summary>Holds a book to its journal and to itself.</summary>
    /// <exception cref="BadInputException">It cannot be opened at all.</exception>
    public static IReadOnlyList<Assurance> Verify(string path) => StoreFile.Read(path, Assurance.All);

    protected override BookFile Take(IReadOnlyList<Func<BuildBook, Edit>> makes, int? basedOn = null, bool each = false) => Edit(each, [.. makes.Select(make => (Func<SqliteConnection, BuildBook, Edit>)((connection, book) => make(book) switch
    {
        SetValue set when basedOn is { } seen && Conflict.Arises(connection, set, seen) => new ContestValue(set.Path, set.Change, set.Value, seen),
        var edit => edit,
    }))]);

    private BookFile Edit(params IReadOnlyList<Func<SqliteConnection, BuildBook, Edit>> makes) => Edit(each: false, makes);

    private BookFile Edit(bool each, IReadOnlyList<Func<SqliteConnection, BuildBook, Edit>> makes) => StoreFile.Write(_path, connection =>
    {
        var (after, contested) = (this, false);
        foreach (var make in makes)
        {
            after = Once(connection, make);
            contested |= after.Contested;
            if (after.Repeated && !each)
            {
                return (BookFile)after;
            }
        }

        return new StoredBook(_path, _hand, after.Book, after.Revision) { Contested = contested };
    });

    private StoredBook Once(SqliteConnection connection, Func<SqliteConnection, BuildBook, Edit> make)
    {
        var rows = Tables.Read(connection);
        var (before, root) = CheckRows(_path, rows);
        var edit = make(connection, before);
        var revision = Journal.Revision(connection);
        if (edit is AddReading { Id.Length: > 0 } reading && reading.Repeats(Taken(connection, before, reading.Id)))
        {
            return new StoredBook(_path, _hand, before, revision) { Repeated = true };
        }

        var after = After(root, edit, rows, ++revision);
        Journal.Add(connection, _hand, edit);
        Tables.Do(connection, revision, edit);
        var contested = edit is ContestValue;
        return new StoredBook(_path, _hand, contested ? before : after, revision) { Contested = contested };
    }

    /// <summary>The reading with this id that the book holds, or held until it was taken back; null when it never did.</summary>
    private static Measurement? Taken(SqliteConnection connection, BuildBook book, string id) =>
        book.Measurements.FirstOrDefault(m => m.Id == id)
        ?? (Journal.Reading(connection, id) is { Edit: AddReading taken } ? new BookReader("the journal", lines: false).Reading(taken.Reading) : null);

    /// <summary>The book after an edit, verified; for a contested value, the book that it would make.</summary>
    private BuildBook After(JsonPlace root, Edit edit, BookRows rows, int revision)
    {
        (edit is ContestValue contest ? new SetValue(contest.Path, contest.Change, contest.Value) : edit).Do(root);
        var book = Dated(Check(root, Path.GetFileName(_path), lines: false), rows, revision);
        edit.Verify(book);
        return book;
    }

    private static (BuildBook Book, JsonPlace Root) CheckRows(string path, BookRows rows)
    {
        var root = rows.Tree();
        return (Dated(Check(root, Path.GetFileName(path), lines: false), rows), root);
    }

    /// <summary>The book with the entries that brought its readings and runs; what the rows do not have yet, the newest brings.</summary>
    private static BuildBook Dated(BuildBook book, BookRows rows, int newest = 0)
    {
        long Brought(IReadOnlyList<DatedRow> list, int at) => at < list.Count ? list[at].Revision : newest;
        return book with
        {
            Measurements = [.. book.Measurements.Select((m, i) => m with { Revision = Brought(rows.Readings, i) })],
            Runs = [.. book.Runs.Select((r, i) => r with { Revision = Brought(rows.Runs, i) })],
            Acts = [.. book.Acts.Select((a, i) => a with { Revision = Brought(rows.Acts, i) })],
        };
    }
}
