using Dapper;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Gudgeon.Book.Store;

/// <summary>Connections to a store, and what becomes of the disk's refusals.</summary>
internal static class StoreFile
{
    private const int PatienceSeconds = 15;
    private const int NoSharedMemory = 4874;
    private const int Busy = 5, Locked = 6, ReadOnly = 8, DiskRefused = 10, Corrupt = 11, Full = 13, CannotOpen = 14, NotADatabase = 26;

    /// <summary>Whether a name asks for a store.</summary>
    public static bool IsNamed(string path) => path.EndsWith(".gudgeon", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether a file is a store: by its name, else by what it holds.</summary>
    public static bool Is(string path)
    {
        if (IsNamed(path) || !File.Exists(path))
        {
            return IsNamed(path);
        }

        try
        {
            Span<byte> head = stackalloc byte[16];
            using var file = File.Open(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            return file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) == head.Length && head.SequenceEqual("SQLite format 3\0"u8);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Whoever opens it says why it cannot be read.
            return false;
        }
    }

    /// <summary>Reads one state of the store.</summary>
    /// <exception cref="BadInputException">The file or the disk refuses.</exception>
    public static T Read<T>(string path, Func<SqliteConnection, T> read) => Plainly(path, () =>
    {
        using var connection = OpenToRead(path);
        using var transaction = connection.BeginTransaction(deferred: true);
        return read(connection);
    });

    /// <summary>Writes to the store: all of it or, when anything is refused, nothing.</summary>
    /// <exception cref="BadInputException">The file or the disk refuses, or another program holds the book.</exception>
    public static T Write<T>(string path, Func<SqliteConnection, T> write) => Plainly(path, () =>
    {
        using var connection = Open(path, SqliteOpenMode.ReadWrite);
        Formats.BringForward(connection, Path.GetFileName(path));
        using var transaction = connection.BeginTransaction(deferred: false);
        var result = write(connection);
        transaction.Commit();
        return result;
    }, writing: true);

    /// <summary>Makes a store beside its place and puts it there whole.</summary>
    /// <exception cref="BadInputException">The file exists or the disk refuses.</exception>
    public static void Make(string path, Action<SqliteConnection> fill) => Plainly(path, () =>
    {
        if (!Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(path))))
        {
            throw new BadInputException($"the file '{path}' cannot be written: there is no such folder");
        }

        var beside = $"{path}.{Environment.ProcessId}.new";
        try
        {
            using (var connection = Open(beside, SqliteOpenMode.ReadWriteCreate))
            {
                fill(connection);
            }

            File.Move(beside, path);
            return true;
        }
        catch (SqliteException e) when (e.SqliteErrorCode == CannotOpen)
        {
            throw new BadInputException($"the file '{path}' cannot be written: its folder refuses");
        }
        finally
        {
            Array.ForEach(["", "-wal", "-shm", "-journal"], suffix => File.Delete(beside + suffix));
        }
    });

    private static SqliteConnection OpenToRead(string path)
    {
        try
        {
            var connection = Open(path, SqliteOpenMode.ReadWrite);
            try
            {
                Formats.BringForward(connection, Path.GetFileName(path));
                return connection;
            }
            catch
            {
                connection.Dispose();
                throw;
            }
        }
        catch (SqliteException e) when (File.Exists(path) && (e.SqliteErrorCode is ReadOnly or CannotOpen || e.SqliteExtendedErrorCode == NoSharedMemory))
        {
            return OpenUnchanging(path);
        }
    }

    /// <summary>On a medium that cannot be written or is full, where SQLite's files beside the book cannot be made.</summary>
    internal static SqliteConnection OpenUnchanging(string path)
    {
        if (new FileInfo(path + "-wal") is { Exists: true, Length: > 0 })
        {
            throw new BadInputException($"the book '{path}' was not closed before it came to a place that cannot be written; copy it and '{Path.GetFileName(path)}-wal' to one that can, and open it there");
        }

        var connection = Open($"file:{Uri.EscapeDataString(Path.GetFullPath(path)).Replace("%2F", "/", StringComparison.Ordinal)}?immutable=1", SqliteOpenMode.ReadOnly);
        if (!Formats.IsOlder(connection))
        {
            return connection;
        }

        using (connection)
        {
            return BroughtForward(connection, Path.GetFileName(path));
        }
    }

    /// <summary>A book of an older format that cannot be written where it is, brought forward in memory to be read.</summary>
    private static SqliteConnection BroughtForward(SqliteConnection older, string name)
    {
        var memory = new SqliteConnection("Data Source=:memory:");
        memory.Open();
        older.BackupDatabase(memory);
        Formats.BringForward(memory, name);
        return memory;
    }

    private static SqliteConnection Open(string source, SqliteOpenMode mode)
    {
        var settings = new SqliteConnectionStringBuilder { DataSource = source, Mode = mode, Pooling = false, ForeignKeys = true, DefaultTimeout = PatienceSeconds };
        var connection = new SqliteConnection(settings.ConnectionString);
        try
        {
            connection.Open();
            if (mode == SqliteOpenMode.ReadWrite && raw.sqlite3_db_readonly(connection.Handle, "main") == 1 && !File.Exists(source + "-wal"))
            {
                // Going on, SQLite would leave files beside the book that could not be written either.
                throw new SqliteException("the file cannot be written", ReadOnly);
            }

            connection.Execute($"PRAGMA busy_timeout = {PatienceSeconds}000; PRAGMA trusted_schema = OFF; PRAGMA synchronous = FULL");
            if (mode == SqliteOpenMode.ReadWriteCreate)
            {
                connection.Execute("PRAGMA journal_mode = WAL");
            }

            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    private static T Plainly<T>(string path, Func<T> work, bool writing = false)
    {
        try
        {
            return work();
        }
        catch (SqliteException e)
        {
            throw Refusal(path, e, writing);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException($"the book '{path}' cannot be written, and is as it was: {e.Message}");
        }
    }

    /// <summary>SQLite's refusal in one sentence.</summary>
    internal static BadInputException Refusal(string path, SqliteException e, bool writing = false) => new(e.SqliteErrorCode switch
    {
        Busy or Locked => $"the book '{path}' is being written by another program and is as it was; try again when that is done",
        _ when e.SqliteErrorCode == ReadOnly || (e.SqliteErrorCode == CannotOpen && writing && File.Exists(path)) => $"the book '{path}' can only be read here, and is as it was: the file or its folder cannot be written",
        _ when e.SqliteErrorCode == Full || e.SqliteExtendedErrorCode == NoSharedMemory => $"the disk is full: the book '{path}' is as it was; make room and do it again",
        DiskRefused when writing => $"the disk refused what was to be written: the book '{path}' is as it was; see that there is room and that the disk is sound, and do it again",
        CannotOpen => $"the book '{path}' cannot be opened: {(File.Exists(path) ? "it may not be read" : "there is no such file")}",
        Corrupt or NotADatabase => $"the book '{path}' is damaged ({e.Message}); gudgeon verify says where, and a backup helps",
        _ => $"the book '{path}' is as it was; the disk or the store refused: {e.Message}",
    });
}
