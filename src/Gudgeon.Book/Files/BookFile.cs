using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>
/// A book in a file: JSON, for people and their editors, or a store with a journal. An edit is verified against the whole
/// book before it is taken; a refused one leaves the file as it was. Each edit returns the book after it.
/// </summary>
public abstract class BookFile
{
    /// <param name="book">The build that the file holds.</param>
    protected BookFile(BuildBook book) => Book = book;

    /// <summary>The build.</summary>
    public BuildBook Book { get; }

    /// <summary>How many edits it has seen; 0 when it does not count them.</summary>
    public virtual int Revision => 0;

    /// <summary>Whether the reading that gave this book had been taken before, and the book is as it was.</summary>
    public bool Repeated { get; private protected init; }

    /// <summary>What whoever took the reading that gave this book should know of its instrument, one sentence each.</summary>
    public IReadOnlyList<string> Warnings { get; private set; } = [];

    /// <summary>Where engine runs that take long are kept with it; null when it has no place for them.</summary>
    public virtual IDutyShelf? Shelf => null;

    /// <summary>What was done to a value, newest first; empty in a book without a journal.</summary>
    /// <param name="path">"cylinder[1].bore", as it is written.</param>
    /// <exception cref="BadInputException">There is no such field.</exception>
    public virtual IReadOnlyList<PathEntry> HistoryOf(string path) => [];

    /// <summary>Opens and verifies a book of either form.</summary>
    /// <param name="path">The file.</param>
    /// <param name="hand">Who will edit it; whoever is logged in when left out.</param>
    /// <exception cref="BadInputException">Not there, or not a book.</exception>
    public static BookFile Open(string path, Hand? hand = null) => StoreFile.Is(path) ? StoredBook.Read(path, hand) : JsonBook.Read(path);

    /// <summary>Begins a book in a new file: a store when its name ends in .gudgeon, else JSON.</summary>
    /// <exception cref="BadInputException">The file exists.</exception>
    public static BookFile Create(string path, string name, Hand? hand = null) => Begin(path, BookTree.Empty(name), hand);

    /// <summary>Writes all that this book holds to a new file of the form that its name asks for.</summary>
    /// <exception cref="BadInputException">The file exists, or its form cannot hold everything.</exception>
    public BookFile CopyTo(string path, Hand? hand = null) => Begin(path, Document(), hand);

    /// <summary>Sets a value of the baseline, or of a change.</summary>
    /// <param name="path">"cylinder[1].bore".</param>
    /// <param name="text">Value as a person writes it.</param>
    /// <param name="story">how, by, on, with, note; empty ones are left out.</param>
    /// <param name="change">Id of the change; null for the baseline.</param>
    /// <param name="basedOn">The revision that the person saw; when the same value was edited since, both are kept as a conflict. Null to set it whatever it was.</param>
    /// <exception cref="BadInputException">Refused; the file is as it was.</exception>
    public BookFile Set(string path, string text, IEnumerable<KeyValuePair<string, string>> story, string? change = null, int? basedOn = null) =>
        Take([Setting(path, text, story, change)], basedOn);

    /// <summary>Sets several values of the baseline, or of a change, with one story: all of them or none.</summary>
    /// <param name="values">Path and value of each, as a person writes them.</param>
    /// <param name="story">how, by, on, with, note; empty ones are left out.</param>
    /// <param name="change">Id of the change; null for the baseline.</param>
    /// <exception cref="BadInputException">Refused; the file is as it was.</exception>
    public BookFile Set(IReadOnlyList<(string Path, string Text)> values, IReadOnlyCollection<KeyValuePair<string, string>> story, string? change = null) =>
        Take([.. values.Select(v => Setting(v.Path, v.Text, story, change))]);

    private static Func<BuildBook, Edit> Setting(string path, string text, IEnumerable<KeyValuePair<string, string>> story, string? change)
    {
        var address = FieldCatalogue.Address(path);
        var value = BookTree.Value(KnownValue.Read(address.Field, text), text, story);
        return book => new SetValue(address.Path, change is null ? "" : book.Find(change).Id, value);
    }

    /// <summary>Sets a table from a file, and with it the conditions that its remarks state: all of it or nothing.</summary>
    /// <param name="file">The file.</param>
    /// <param name="story">how, by, on, with, note; empty ones are left out.</param>
    /// <param name="change">Id of the change; null for the baseline.</param>
    /// <param name="basedOn">The revision that the person saw; when the same value was edited since, both are kept as a conflict. Null to set it whatever it was.</param>
    /// <exception cref="BadInputException">Refused; the book is as it was.</exception>
    public BookFile Set(TableFile file, IReadOnlyCollection<KeyValuePair<string, string>> story, string? change = null, int? basedOn = null)
    {
        var told = story.Where(s => s.Value.Length > 0).Select(s => (s.Key, JsonPlace.Of(s.Value)));
        Edit Of(BuildBook book, FieldAddress address, JsonPlace value) => new SetValue(address.Path, change is null ? "" : book.Find(change).Id, value);
        return Take(
        [
            book =>
            {
                file.Verify(book, change);
                return Of(book, file.Address, JsonPlace.Object([.. BookTree.Rows(file.Table), .. told]).OnOneLine());
            },
            .. file.Conditions.Select(c => (Func<BuildBook, Edit>)(book => Of(book, file.Address with { Field = c.Key }, BookTree.Value(KnownValue.Read(c.Key, c.Value), c.Value, story)))),
        ], basedOn);
    }

    /// <summary>Adds a change, on, without values yet.</summary>
    /// <exception cref="BadInputException">The id is taken or not a short name.</exception>
    public BookFile AddChange(string id, string title, string reason) => Take([book => book.Changes.Any(c => c.Id == id)
        ? throw new BadInputException($"there is already a change '{id}'")
        : new AddChange(id, title, reason)]);

    /// <summary>Switches a change on or off.</summary>
    /// <exception cref="BadInputException">There is no such change.</exception>
    public BookFile Switch(string id, bool on) => Take([book => new SwitchChange(book.Find(id).Id, on)]);

    /// <summary>
    /// Adds a reading, taken under the changes that are on in the file; earlier ones stay. With an instrument of the book's and
    /// no ± of its own it is kept with the instrument's at that moment.
    /// </summary>
    /// <param name="path">"cylinder[1].bore".</param>
    /// <param name="text">The reading as a person writes it.</param>
    /// <param name="with">The instrument; empty when not said.</param>
    /// <param name="by">Who read it; empty when not said.</param>
    /// <param name="on">When; empty when not said.</param>
    /// <param name="note">Anything else worth knowing.</param>
    /// <param name="id">A GUID made where it was read, so that a reading sent again is not taken again (<see cref="Repeated"/>); empty for none.</param>
    /// <param name="at">At which temperatures a length was read, so that it is kept as it is at 20 °C; null when not said.</param>
    /// <exception cref="BadInputException">Refused; the file is as it was.</exception>
    public BookFile Measure(string path, string text, string with, string by, string on, string note, string id = "", ReadAt? at = null)
    {
        var address = FieldCatalogue.Address(path);
        var value = KnownValue.Read(address.Field, text);
        return Warned(warnings => Take([book =>
        {
            var taken = TakenWith.Of(book.Now(), address, value, with, on, at);
            warnings.AddRange(taken.Warnings);
            return Reading(address, [("value", BookTree.Value(taken.Value, taken.Words(text), []))], Story(with, by, on, Noted(note, taken.Value), id))(book);
        }]));
    }

    /// <summary>Adds a table from a file as a reading, and with it the conditions that its remarks state: all of it or nothing.</summary>
    /// <param name="file">The file.</param>
    /// <param name="with">The instrument; empty when not said.</param>
    /// <param name="by">Who read it; empty when not said.</param>
    /// <param name="on">When; empty when not said.</param>
    /// <param name="note">Anything else worth knowing.</param>
    /// <param name="id">A GUID made where it was read; empty for none.</param>
    /// <exception cref="BadInputException">Refused; the book is as it was.</exception>
    public BookFile Measure(TableFile file, string with, string by, string on, string note, string id = "")
    {
        var table = Reading(file.Address, BookTree.Rows(file.Table), Story(with, by, on, note, id));
        return Warned(warnings => Take(
        [
            book =>
            {
                file.Verify(book, change: null);
                warnings.AddRange(TakenWith.Of(book.Now(), file.Address, KnownValue.Of(file.Address.Field, file.Table), with, on).Warnings);
                return table(book);
            },
            .. file.Conditions.Select(c => Reading(file.Address with { Field = c.Key }, [("value", JsonPlace.Of(c.Value))], Story(with, by, on, note, ""))),
        ]));
    }

    /// <summary>Adds the readings of a sheet: all of them or none. One whose id the book knows is passed over.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="taken">How many were taken that the book did not have.</param>
    /// <exception cref="BadInputException">Refused, with the line of the sheet; the book is as it was.</exception>
    public BookFile Measure(IReadOnlyList<SheetReading> readings, out int taken)
    {
        var before = 0;
        var after = Warned(warnings => Take([.. readings.Select((r, i) => (Func<BuildBook, Edit>)(book =>
        {
            before = i == 0 ? book.Measurements.Count : before;
            return Made(r, book, warnings);
        }))], each: true));
        taken = after.Book.Measurements.Count - before;
        return after;
    }

    /// <summary>A reading of a sheet; what is wrong with it names its line.</summary>
    private static Edit Made(SheetReading r, BuildBook book, List<string> warnings)
    {
        try
        {
            var value = TakenWith.Of(book.Now(), r.Address, KnownValue.Read(r.Address.Field, r.Text), r.With, r.On, r.Degrees);
            BookRules.Verify(book with { Measurements = [.. book.Measurements, new Measurement(r.Address, value.Value, null)] });
            warnings.AddRange(value.Warnings.Except(warnings, StringComparer.Ordinal));
            return Reading(r.Address, [("value", BookTree.Value(value.Value, value.Words(r.Text), []))], Story(r.With, r.By, r.On, Noted(r.Note, value.Value), r.Id))(book);
        }
        catch (BadInputException e)
        {
            throw new BadInputException($"{r.At}: {e.Message}");
        }
    }

    /// <summary>What the person noted, and what came to it as the reading was taken.</summary>
    private static string Noted(string note, KnownValue taken) => string.Join("; ", new[] { note, taken.Note }.Where(n => n.Length > 0));

    /// <summary>The book after an edit, with what came up while it was made.</summary>
    private static BookFile Warned(Func<List<string>, BookFile> edit)
    {
        var warnings = new List<string>();
        var after = edit(warnings);
        after.Warnings = after.Repeated ? [] : warnings;
        return after;
    }

    private static List<(string Name, JsonPlace Value)> Story(string with, string by, string on, string note, string id) =>
        [.. new[] { ("with", with), ("by", by), ("on", on), ("note", note), ("id", id.Length > 0 ? Measurement.ReadId(id) : "") }.Where(p => p.Item2.Length > 0).Select(p => (p.Item1, JsonPlace.Of(p.Item2)))];

    private static Func<BuildBook, Edit> Reading(FieldAddress address, IEnumerable<(string Name, JsonPlace Value)> value, List<(string Name, JsonPlace Value)> story) => book => new AddReading(JsonPlace.Object(
    [
        ("field", JsonPlace.Of(address.Path)),
        .. value,
        .. story,
        ("under", JsonPlace.Array(book.On.Order(StringComparer.Ordinal).Select(JsonPlace.Of))),
    ]).OnOneLine());

    /// <summary>Does something to a job card.</summary>
    /// <param name="act">The act, made on the book as it stands in the file.</param>
    /// <exception cref="BadInputException">Refused; the file is as it was.</exception>
    public BookFile Work(Func<BuildBook, CardAct> act) => Take([book => new AddAct(CardReader.Write(act(book)))]);

    /// <summary>Takes a job card as the book's own: a new one, or in place of one with its id.</summary>
    /// <param name="text">The card as JSON.</param>
    /// <param name="name">Where it comes from, for the sentences.</param>
    /// <exception cref="BadInputException">Refused; the file is as it was.</exception>
    public BookFile PutCard(string text, string name)
    {
        var card = JsonPlace.Parse(text, name);
        var read = new CardReader(new BookReader(name)).Card(card, "the card");
        return Take([book =>
        {
            CardOrder.Verify(read, CardCatalogue.Of(book));
            return new PutCard(card);
        }]);
    }

    /// <summary>Keeps a run.</summary>
    /// <exception cref="BadInputException">Refused; the file is as it was.</exception>
    public BookFile Keep(KeptRun run) => Take([_ => new KeepRun(RunReader.Write(run))]);

    /// <summary>Sets a limit of the user's own, with a reason.</summary>
    /// <exception cref="BadInputException">Refused; the file is as it was.</exception>
    public BookFile Limit(string name, string text, string reason) => Take([_ => new SetLimit(name, text, reason)]);

    /// <summary>The JSON tree of all that the book holds.</summary>
    /// <exception cref="BadInputException">It holds something that JSON cannot.</exception>
    public abstract JsonPlace Document();

    /// <summary>
    /// Makes edits one after the other from the book as it stands in the file, verifies what each comes to and writes them:
    /// all or none, with no other edit between. A reading that was taken before ends them there, or is passed over where
    /// <paramref name="each"/> of them stands for itself.
    /// </summary>
    protected abstract BookFile Take(IReadOnlyList<Func<BuildBook, Edit>> makes, int? basedOn = null, bool each = false);

    /// <summary>The build that a tree describes, verified.</summary>
    /// <param name="root">The tree.</param>
    /// <param name="name">Name of the file, for the sentences.</param>
    /// <param name="lines">Whether the tree's lines are lines of the file.</param>
    internal static BuildBook Check(JsonPlace root, string name, bool lines = true)
    {
        var book = new BookReader(name, lines).Read(root);
        try
        {
            BookRules.Verify(book);
        }
        catch (BadInputException e)
        {
            throw new BadInputException($"{name}, {e.Message}");
        }

        return book;
    }

    /// <summary>Refuses to write over a file.</summary>
    private protected static void Fresh(string path)
    {
        if (Path.Exists(path))
        {
            throw new BadInputException($"the file '{path}' exists; a new book does not write over it");
        }
    }

    private static BookFile Begin(string path, JsonPlace document, Hand? hand)
    {
        Fresh(path);
        return StoreFile.IsNamed(path) ? StoredBook.Begin(path, document, hand) : JsonBook.Begin(path, document);
    }
}
