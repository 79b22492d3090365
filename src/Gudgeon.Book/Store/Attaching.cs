using System.Globalization;
using System.Security.Cryptography;
using Dapper;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Store;

/// <summary>A file kept with the book.</summary>
/// <param name="Revision">The edit that attached it.</param>
/// <param name="Name">Name of the file.</param>
/// <param name="Type">What it is by its content: "image/png".</param>
/// <param name="Size">Bytes.</param>
/// <param name="Sha256">Hexadecimal.</param>
/// <param name="About">Path of the field that it is about; empty for the whole book.</param>
/// <param name="By">Who attached it.</param>
/// <param name="At">UTC.</param>
public sealed record Attachment(long Revision, string Name, string Type, long Size, string Sha256, string About, string By, string At);

/// <summary>Files in a store: each content once, under its SHA-256.</summary>
internal static class Attaching
{
    /// <summary>No file may be larger.</summary>
    public const int Limit = 20 * 1024 * 1024;

    public static AttachFile Take(string name, byte[] content, string about)
    {
        var plain = Name(name);
        if (content.Length is 0 or > Limit)
        {
            throw new BadInputException(string.Create(CultureInfo.InvariantCulture, $"'{plain}' holds {(content.Length > Limit ? $"more than {Limit / 1048576} MiB" : "nothing")}; wanted something, and at most {Limit / 1048576} MiB"));
        }

        var type = FileType.Of(content)
            ?? throw new BadInputException($"'{plain}' is of no type that a book takes; wanted {FileType.Known}");
        var path = about.Length == 0 || CardWork.IsCard(about) ? about : FieldCatalogue.Address(about).Path;
        return new AttachFile(plain, type, content.Length, Convert.ToHexStringLower(SHA256.HashData(content)), path);
    }

    public static void Keep(SqliteConnection connection, string sha256, byte[] content) =>
        connection.Execute("INSERT INTO blob (sha256, content) VALUES (@sha256, @content) ON CONFLICT DO NOTHING", new { sha256, content });

    public static byte[] Content(SqliteConnection connection, string sha256) =>
        connection.QueryFirst<byte[]>("SELECT content FROM blob WHERE sha256 = @sha256", new { sha256 });

    public static IReadOnlyList<Attachment> List(SqliteConnection connection) =>
        [.. connection.Query<Attachment>("SELECT revision, name, type, size, sha256, about, who AS By, at FROM attachment JOIN journal USING (revision) ORDER BY revision")];

    /// <summary>Files whose content is not what it was; empty when all is well.</summary>
    public static IEnumerable<string> Altered(SqliteConnection connection) =>
        from sha256 in connection.Query<string>("SELECT sha256 FROM blob ORDER BY sha256").AsList()
        where Convert.ToHexStringLower(SHA256.HashData(Content(connection, sha256))) != sha256
        select sha256;

    /// <summary>The content of a file, as much of it as tells that it is too large.</summary>
    public static byte[] Read(string file)
    {
        try
        {
            using var stream = File.OpenRead(file);
            return Read(stream);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException($"the file '{file}' cannot be read: {(File.Exists(file) ? e.Message : "there is no such file")}");
        }
    }

    /// <summary>The content of a stream, as much of it as tells that it is too large.</summary>
    public static byte[] Read(Stream stream)
    {
        using var content = new MemoryStream();
        var part = new byte[81920];
        for (int read; content.Length <= Limit && (read = stream.Read(part)) > 0;)
        {
            content.Write(part, 0, read);
        }

        return content.ToArray();
    }

    /// <summary>The name alone, whatever folder a browser or a person put before it.</summary>
    private static string Name(string name)
    {
        var plain = name[(name.LastIndexOfAny(['/', '\\']) + 1)..].Trim();
        return plain.Length is > 0 and <= 200 && !plain.Any(char.IsControl)
            ? plain
            : throw new BadInputException($"an attached file needs a name of 1 to 200 letters; given {plain.Length}{(plain.Any(char.IsControl) ? " with control characters" : "")}");
    }
}
