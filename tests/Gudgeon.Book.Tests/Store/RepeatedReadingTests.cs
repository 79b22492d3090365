using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Store;

/// <summary>A tablet that hears no answer sends its reading again; the book takes it once.</summary>
public sealed class RepeatedReadingTests : IDisposable
{
    private const string Bore = "cylinder[1].bore";
    private const string Id = "4b1d6c7e-0f5a-4c56-9d8e-2a7b3c4d5e6f";
    private const string Other = "11111111-2222-4333-8444-555555555555";

    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Forms => ["wren.gudgeon", "wren.json"];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_reading_sent_again_gives_the_book_as_it_is(string name)
    {
        var first = Send(Begin(name), "81.004 mm");
        Assert.False(first.Repeated);
        var again = Send(Open(name), "81.004mm", id: Id.ToUpperInvariant());
        Assert.True(again.Repeated);
        Assert.Equal(first.Revision, again.Revision);
        Assert.Equal(Id, Assert.Single(again.Book.Measurements).Id);
        Assert.Single(Open(name).Book.Measurements);
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void The_same_words_with_another_id_or_none_are_another_reading(string name)
    {
        Begin(name);
        Assert.All(new[] { Id, Other, "", "" }, id => Assert.False(Send(Open(name), "81.004 mm", id: id).Repeated));
        Assert.Equal([Id, Other, "", ""], Open(name).Book.Measurements.Select(m => m.Id));
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void The_id_of_another_reading_is_refused(string name)
    {
        Send(Begin(name), "81.004 mm");
        var value = Assert.Throws<BadInputException>(() => Send(Open(name), "81.005 mm"));
        Assert.Equal($"{Bore}: the reading 81.005 mm bears the id of another, {Bore} of 81.004 mm; a new reading needs a new id", value.Message);
        Assert.Throws<BadInputException>(() => Send(Open(name), "81.0040 mm"));
        Assert.Throws<BadInputException>(() => Send(Open(name), "81.004 mm", "cylinder[2].bore"));
        Assert.Contains("wanted a GUID", Assert.Throws<BadInputException>(() => Send(Open(name), "81.004 mm", id: "7")).Message, StringComparison.Ordinal);
        Assert.Single(Open(name).Book.Measurements);
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void Sent_many_times_at_once_it_is_taken_once(string name)
    {
        Begin(name);
        var ids = Enumerable.Range(0, 3).Select(_ => Guid.NewGuid().ToString()).ToList();
        var answers = new System.Collections.Concurrent.ConcurrentBag<(string Id, bool Repeated)>();
        var senders = Enumerable.Range(0, 6).Select(_ => new Thread(() => ids.ForEach(id => answers.Add((id, Send(Open(name), "81.004 mm", id: id).Repeated))))).ToList();
        senders.ForEach(s => s.Start());
        senders.ForEach(s => s.Join());
        Assert.Equal(18, answers.Count);
        Assert.All(ids, id => Assert.Single(answers, a => a.Id == id && !a.Repeated));
        Assert.Equal(ids.Order(StringComparer.Ordinal), Open(name).Book.Measurements.Select(m => m.Id).Order(StringComparer.Ordinal));
        Assert.Equal(name.EndsWith(".json", StringComparison.Ordinal) ? 0 : 4, Open(name).Revision);
    }

    [Fact]
    public void A_reading_taken_back_since_is_not_taken_again()
    {
        Send(Begin("wren.gudgeon"), "81.004 mm");
        var undone = Stores.Open(_folder.PathOf("wren.gudgeon")).Undo().Book;
        var again = Send(Open("wren.gudgeon"), "81.004 mm");
        Assert.True(again.Repeated);
        Assert.Equal(undone.Revision, again.Revision);
        Assert.Empty(again.Book.Measurements);
        Assert.Contains("bears the id of another", Assert.Throws<BadInputException>(() => Send(Open("wren.gudgeon"), "81.005 mm")).Message, StringComparison.Ordinal);
        Stores.VerifiesWell(_folder.PathOf("wren.gudgeon"));
    }

    [Fact]
    public void An_id_goes_from_form_to_form()
    {
        Send(Begin("a.gudgeon"), "81.004 mm");
        Open("a.gudgeon").CopyTo(_folder.PathOf("b.json")).CopyTo(_folder.PathOf("c.gudgeon"));
        Assert.All(["b.json", "c.gudgeon"], name => Assert.True(Send(Open(name), "81.004 mm").Repeated));
        Assert.Equal(1, Open("c.gudgeon").Revision);
        Assert.Contains($"\"id\": \"{Id}\"", File.ReadAllText(_folder.PathOf("b.json")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_store_refuses_an_id_twice_in_its_journal_whoever_writes()
    {
        Send(Begin("wren.gudgeon"), "81.004 mm");
        var e = Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() => Stores.Sql(_folder.PathOf("wren.gudgeon"), "INSERT INTO journal SELECT revision + 1, at, who, device, content, seal FROM journal WHERE revision = 2"));
        Assert.Contains("UNIQUE", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_with_an_id_twice_or_one_that_is_none_is_refused()
    {
        static string Reading(string id) => $$"""{ "field": "{{Bore}}", "value": "81 mm", "id": "{{id}}" }""";
        string Refusal(params string[] ids) => Assert.Throws<BadInputException>(() => BookFile.Open(_folder.Write("x.json", $$"""{ "gudgeon": 1, "name": "x", "measurements": [ {{string.Join(", ", ids.Select(Reading))}} ] }"""))).Message;
        Assert.Contains($"the reading with the id {Id} is given twice", Refusal(Id, Id.ToUpperInvariant()), StringComparison.Ordinal);
        Assert.Contains("measurements[1].id: given 'mine'", Refusal(Id, "mine"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_knows_the_entry_that_brought_it()
    {
        Send(Begin("a.gudgeon"), "81.004 mm");
        var path = _folder.PathOf("b.gudgeon");
        Open("a.gudgeon").CopyTo(_folder.PathOf("a.json")).CopyTo(path);
        Send(Open("b.gudgeon"), "81.005 mm", id: "");
        Stores.Open(path).Undo();
        var taken = Send(Open("b.gudgeon"), "81.006 mm", id: Other);
        Assert.All([taken.Book, BookFile.Open(path).Book], b => Assert.Equal([(1L, "81.004 mm"), (4L, "81.006 mm")], b.Measurements.Select(m => (m.Revision, m.Value.Content.ToString()!))));
        Assert.Equal(4, StoredBook.RevisionAt(path));
        Assert.All(Open("a.json").Book.Measurements, m => Assert.Equal(0, m.Revision));
        Stores.VerifiesWell(path);
    }

    private BookFile Begin(string name) => BookFile.Create(_folder.PathOf(name), "Wren");

    private BookFile Open(string name) => BookFile.Open(_folder.PathOf(name));

    private static BookFile Send(BookFile book, string text, string path = Bore, string id = Id) => book.Measure(path, text, "bore gauge", "Ada", "2026-10-02", "", id);
}
