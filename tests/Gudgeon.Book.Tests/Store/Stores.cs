using Dapper;
using Gudgeon.Book.Build;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Tests.Store;

/// <summary>What the tests of the store do to books.</summary>
internal static class Stores
{
    public static readonly Dictionary<string, string> NoStory = new(StringComparer.Ordinal);

    /// <summary>A store with an edit of every kind but an undoing.</summary>
    public static StoredBook Begin(string path)
    {
        var book = BookFile.Create(path, "Wren", new Hand("Ada", "bench"))
            .Set("cylinder.bore", "81.00 mm", NoStory)
            .AddChange("bored", "Bored", "worn")
            .Set("cylinder.bore", "82.000 mm ± 0.01 mm", new Dictionary<string, string>(StringComparer.Ordinal) { ["how"] = "drawing", ["by"] = "Tom" }, "bored")
            .Measure("cylinder[1].bore", "82.004 mm", "bore gauge", "Ada", "2026-10-02", "cold")
            .Limit("squish.min", "0.8 mm", "aluminium rod")
            .Switch("bored", false);
        return (StoredBook)book;
    }

    public static StoredBook Open(string path, string who = "Ada") => (StoredBook)BookFile.Open(path, new Hand(who, "bench"));

    /// <summary>Does SQL to the file behind the program's back.</summary>
    public static void Sql(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Foreign Keys=False");
        connection.Open();
        connection.Execute(sql);
    }

    public static T Ask<T>(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        return connection.ExecuteScalar<T>(sql)!;
    }

    public static void VerifiesWell(string path) => Assert.All(StoredBook.Verify(path), a => Assert.True(a.Good, a.Sentence));

    /// <summary>The sentences of what is not as it must be.</summary>
    public static IEnumerable<string> Bad(string path) => StoredBook.Verify(path).Where(a => !a.Good).Select(a => a.Sentence);

    /// <summary>Two builds are the same: every value, story, change, reading, limit and kept run.</summary>
    public static void Same(BuildBook a, BuildBook b)
    {
        Assert.Equal((a.Name, a.Notes), (b.Name, b.Notes));
        Equal(a.Baseline, b.Baseline);
        Assert.Equal(a.Changes.Select(c => (c.Id, c.Title, c.Reason, c.On)), b.Changes.Select(c => (c.Id, c.Title, c.Reason, c.On)));
        Assert.All(a.Changes.Zip(b.Changes), p => Equal(p.First.Values, p.Second.Values));
        Assert.Equal(a.Measurements.Select(m => (m.Address, m.Value, m.Value.Content.ToString(), m.Id)), b.Measurements.Select(m => (m.Address, m.Value, m.Value.Content.ToString(), m.Id)));
        Assert.All(a.Measurements.Zip(b.Measurements), p => Assert.Equal(p.First.Under?.Order(StringComparer.Ordinal), p.Second.Under?.Order(StringComparer.Ordinal)));
        Assert.Equal(a.Limits.Select(l => (l.Key, l.Value)), b.Limits.Select(l => (l.Key, l.Value)));
        Assert.Equal(a.Runs.Select(Runs.Text), b.Runs.Select(Runs.Text));
        Assert.Equal(a.Cards.Select(c => (c.Id, c.Title, c.Steps.Count)), b.Cards.Select(c => (c.Id, c.Title, c.Steps.Count)));
        Assert.Equal(a.Acts.Select(c => (c.Card, c.Kind, c.Step, c.By, c.On, c.Value, c.Note, c.Reads.Count)), b.Acts.Select(c => (c.Card, c.Kind, c.Step, c.By, c.On, c.Value, c.Note, c.Reads.Count)));
    }

    private static void Equal(IReadOnlyDictionary<string, Gudgeon.Book.Values.KnownValue> a, IReadOnlyDictionary<string, Gudgeon.Book.Values.KnownValue> b)
    {
        Assert.Equal(a.Keys.Order(StringComparer.Ordinal), b.Keys.Order(StringComparer.Ordinal));
        Assert.All(a, v => Assert.Equal((v.Value, v.Value.Content.ToString()), (b[v.Key], b[v.Key].Content.ToString())));
    }
}
