using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Tests.Store;

public sealed class SignatureTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly string _path;

    public SignatureTests()
    {
        _path = _folder.PathOf("wren.gudgeon");
        Stores.Begin(_path);
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_signature_is_over_the_seal_of_the_last_entry_before_it()
    {
        Stores.Open(_path, "Tom").Sign(" bores measured cold ");
        var signature = Assert.Single(Stores.Open(_path).Signatures);
        Assert.Equal((8L, "bores measured cold", "Tom", "bench", 7L, 0L), (signature.Revision, signature.Statement, signature.By, signature.Device, signature.Over, signature.EditsSince));
        Assert.Equal(Stores.Ask<string>(_path, "SELECT lower(hex(seal)) FROM journal WHERE revision = 7"), signature.Seal);
        Assert.Contains(StoredBook.Verify(_path), a => a.Good && a.Sentence == "1 signatures are over the seals that the journal bears");
        Stores.VerifiesWell(_path);
    }

    [Fact]
    public void It_says_whether_the_book_was_edited_since()
    {
        long[] Since() => [.. Stores.Open(_path).Signatures.Select(s => s.EditsSince)];
        Stores.Open(_path).Sign("measured");
        Stores.Open(_path, "Tom").Sign("seen");
        Assert.Equal([0, 0], Since());
        Stores.Open(_path).Measure("cylinder[1].bore", "82.1 mm", "gauge", "Ada", "today", "");
        Stores.Open(_path).Sign("measured again");
        Stores.Open(_path).Switch("bored", true);
        Assert.Equal([2, 2, 1], Since());
        Stores.Open(_path).Undo();
        Assert.Equal([1, 1, 0], Since());
        Stores.VerifiesWell(_path);
    }

    [Fact]
    public void A_signature_taken_back_stays_in_the_journal()
    {
        Stores.Open(_path).Sign("measured");
        Assert.Equal("\"measured\" is signed over revision 7", Stores.Open(_path).Undo().Undone.Edit.Words);
        Assert.Empty(Stores.Open(_path).Signatures);
        Assert.Contains(Stores.Open(_path).History, h => !h.Stands && h.Entry.Edit is Sign { Statement: "measured" });
        Stores.VerifiesWell(_path);
    }

    [Fact]
    public void An_empty_statement_is_refused()
    {
        Assert.Throws<BadInputException>(() => Stores.Open(_path).Sign(" "));
        Assert.Equal(7, Stores.Open(_path).Revision);
    }

    [Fact]
    public void Signatures_stay_behind_when_the_book_is_copied()
    {
        Stores.Open(_path).Sign("measured");
        Stores.Open(_path).CopyTo(_folder.PathOf("x.json")).CopyTo(_folder.PathOf("y.gudgeon"));
        Assert.Empty(Stores.Open(_folder.PathOf("y.gudgeon")).Signatures);
        Assert.DoesNotContain("measured\"", File.ReadAllText(_folder.PathOf("x.json")), StringComparison.Ordinal);
    }

    // Whoever can write the file can seal a whole chain anew; what was signed still is over the seal that was.
    [Fact]
    public void A_chain_made_anew_beneath_a_signature_shows()
    {
        Stores.Open(_path).Sign("measured");
        Forge("UPDATE journal SET content = replace(content, '82.004 mm', '82.000 mm') WHERE revision = 5");
        Stores.Sql(_path, "UPDATE reading SET content = replace(content, '82.004 mm', '82.000 mm')");
        Assert.Equal(["the signature of entry 8 is over another book: the entry before it does not bear the seal that was signed"], Stores.Bad(_path));
    }

    [Fact]
    public void A_signature_altered_in_its_table_shows()
    {
        Stores.Open(_path).Sign("measured");
        Stores.Sql(_path, "UPDATE signature SET statement = 'guessed'");
        Assert.StartsWith("the tables do not hold what the journal comes to", Assert.Single(Stores.Bad(_path)), StringComparison.Ordinal);
    }

    /// <summary>Alters the journal, seals every entry anew, and puts the guard back.</summary>
    private void Forge(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={_path};Pooling=False");
        connection.Open();
        void Do(string text, params (string Name, object Value)[] parameters)
        {
            using var command = connection.CreateCommand();
            command.CommandText = text;
            Array.ForEach(parameters, p => command.Parameters.AddWithValue(p.Name, p.Value));
            command.ExecuteNonQuery();
        }

        var guard = Stores.Ask<string>(_path, "SELECT sql FROM sqlite_schema WHERE name = 'journal_is_kept'");
        Do("DROP TRIGGER journal_is_kept");
        Do(sql);
        var before = Journal.Blank;
        foreach (var entry in Journal.After(connection).ToList())
        {
            before = entry.SealAfter(before);
            Do("UPDATE journal SET seal = @seal WHERE revision = @revision", ("@seal", before), ("@revision", entry.Revision));
        }

        Do(guard);
    }
}
