using System.Globalization;
using System.Security.Cryptography;
using Dapper;
using Gudgeon.Book.Fields;
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

    public static (AttachFile Edit, byte[] Content) Take(string file, string about)
    {
        var content = Read(file);
        var type = FileType.Of(content)
            ?? throw new BadInputException($"'{file}' is of no type that a book takes; wanted {FileType.Known}");
        var path = about.Length == 0 ? "" : FieldCatalogue.Address(about).Path;
        return (new AttachFile(Path.GetFileName(file), type, content.Length, Convert.ToHexStringLower(SHA256.HashData(content)), path), content);
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

    private static byte[] Read(string file)
    {
        try
        {
            var size = new FileInfo(file).Length;
            return size is > 0 and <= Limit
                ? File.ReadAllBytes(file)
                : throw new BadInputException(string.Create(CultureInfo.InvariantCulture, $"'{file}' holds {size / 1048576.0:0.#} MiB; wanted something, and at most {Limit / 1048576} MiB"));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException($"the file '{file}' cannot be read: {(File.Exists(file) ? e.Message : "there is no such file")}");
        }
    }
}
