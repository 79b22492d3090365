using Dapper;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Store;

/// <summary>Engine runs kept in a store, the oldest let go. A disk that refuses costs a run made again, nothing else.</summary>
internal sealed class DutyShelf(string path) : IDutyShelf
{
    private const int MostWhole = 8;
    private const int MostNudged = 400;

    public string? Find(string key) => Read(connection => connection.QueryFirstOrDefault<string>("SELECT content FROM duty_cache WHERE key = @key", new { key }));

    public string? Latest() => Read(connection => connection.QueryFirstOrDefault<string>("SELECT content FROM duty_cache WHERE nudged = 0 ORDER BY place DESC LIMIT 1"));

    public void Keep(string key, bool nudged, string content)
    {
        try
        {
            StoreFile.Write(path, connection => connection.Execute(
                """
                INSERT OR REPLACE INTO duty_cache (place, key, nudged, content) VALUES ((SELECT ifnull(max(place), 0) + 1 FROM duty_cache), @key, @nudged, @content);
                DELETE FROM duty_cache WHERE nudged = @nudged AND place NOT IN (SELECT place FROM duty_cache WHERE nudged = @nudged ORDER BY place DESC LIMIT @most);
                """,
                new { key, nudged, content, most = nudged ? MostNudged : MostWhole }));
        }
        catch (BadInputException)
        {
            // A medium that cannot be written, or a book held by another program: the run is made again when it is wanted.
        }
    }

    private string? Read(Func<SqliteConnection, string?> read)
    {
        try
        {
            return StoreFile.Read(path, read);
        }
        catch (BadInputException)
        {
            // Whoever opens the book says why it cannot be read.
            return null;
        }
    }
}
