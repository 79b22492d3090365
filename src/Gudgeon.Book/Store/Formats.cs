using System.Globalization;
using Dapper;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Store;

/// <summary>
/// The formats that a store has had. Format n is made from format n - 1 by the script n.sql beside this file, so that a
/// new format is one more script and a book of any age is brought forward step by step.
/// </summary>
internal static class Formats
{
    /// <summary>Marks the file as a book of this program: "Gudg".</summary>
    public const int ApplicationId = 0x47756467;

    /// <summary>The scripts, oldest first.</summary>
    public static IReadOnlyList<string> Steps { get; } = [.. Scripts()];

    /// <summary>Brings a book that is there to the newest format.</summary>
    /// <exception cref="BadInputException">No book, or a format newer than this program.</exception>
    public static void BringForward(SqliteConnection connection, string name)
    {
        if (connection.ExecuteScalar<int>("SELECT count(*) FROM sqlite_schema") == 0)
        {
            throw new BadInputException($"{name}: the file is empty; wanted a book (gudgeon new begins one)");
        }

        BringForward(connection, name, Steps);
    }

    /// <summary>Brings a store to the newest format, in one transaction.</summary>
    /// <param name="connection">The store; an empty database is begun.</param>
    /// <param name="name">Name of the file, for the sentences.</param>
    /// <param name="steps">The scripts that lead there.</param>
    /// <exception cref="BadInputException">Another program's file, or a format newer than this program.</exception>
    public static void BringForward(SqliteConnection connection, string name, IReadOnlyList<string> steps)
    {
        if (At(connection, name, steps.Count) == steps.Count)
        {
            return;
        }

        using var transaction = connection.BeginTransaction(deferred: false);
        for (var format = At(connection, name, steps.Count); format < steps.Count; format++)
        {
            connection.Execute(steps[format]);
        }

        connection.Execute(string.Create(CultureInfo.InvariantCulture, $"PRAGMA application_id = {ApplicationId}; PRAGMA user_version = {steps.Count}"));
        transaction.Commit();
    }

    /// <summary>Whether a store is of a format before the newest.</summary>
    public static bool IsOlder(SqliteConnection connection) => connection.ExecuteScalar<int>("PRAGMA user_version") < Steps.Count;

    /// <summary>Tables and triggers of a store, as SQL.</summary>
    public static IEnumerable<string> Shape(SqliteConnection connection) =>
        connection.Query<string>("SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY type, name");

    /// <summary>Tables and triggers of the newest format.</summary>
    public static IEnumerable<string> Shape()
    {
        using var connection = new SqliteConnection("Data Source=:memory:");
        connection.Open();
        BringForward(connection, "", Steps);
        return [.. Shape(connection)];
    }

    private static int At(SqliteConnection connection, string name, int newest)
    {
        var format = connection.ExecuteScalar<int>("PRAGMA user_version");
        var tables = connection.ExecuteScalar<int>("SELECT count(*) FROM sqlite_schema");
        if (tables > 0 && connection.ExecuteScalar<int>("PRAGMA application_id") != ApplicationId)
        {
            throw new BadInputException($"{name}: this is a database of another program, not a book");
        }

        return format <= newest
            ? format
            : throw new BadInputException(string.Create(CultureInfo.InvariantCulture, $"{name}: written by a newer Gudgeon (format {format}; this one knows {newest}); a newer program is wanted to open it"));
    }

    private static IEnumerable<string> Scripts()
    {
        var assembly = typeof(Formats).Assembly;
        for (var format = 1; assembly.GetManifestResourceStream(string.Create(CultureInfo.InvariantCulture, $"store/{format}")) is { } script; format++)
        {
            using var reader = new StreamReader(script);
            yield return reader.ReadToEnd();
        }
    }
}
