using System.Text;

namespace Gudgeon.Book.Store;

/// <summary>What a file is by its content; its name says nothing.</summary>
internal static class FileType
{
    /// <summary>What is taken, for people.</summary>
    public const string Known = "PNG, JPEG, GIF, WebP, PDF, CSV or other text in UTF-8";

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>"image/png"; null when it is nothing known.</summary>
    public static string? Of(ReadOnlySpan<byte> content) => content switch
    {
        _ when content.StartsWith<byte>([0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A]) => "image/png",
        _ when content.StartsWith<byte>([0xFF, 0xD8, 0xFF]) => "image/jpeg",
        _ when content.StartsWith("GIF87a"u8) || content.StartsWith("GIF89a"u8) => "image/gif",
        _ when content.Length > 12 && content.StartsWith("RIFF"u8) && content[8..].StartsWith("WEBP"u8) => "image/webp",
        _ when content.StartsWith("%PDF-"u8) => "application/pdf",
        _ when Text(content) is { } text => InColumns(text) ? "text/csv" : "text/plain",
        _ => null,
    };

    private static string? Text(ReadOnlySpan<byte> content)
    {
        try
        {
            var text = Strict.GetString(content);
            return text.Any(c => char.IsControl(c) && c is not ('\t' or '\r' or '\n')) ? null : text;
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    /// <summary>Whether two lines or more, and the first ones have the same number of commas, semicolons or tabs.</summary>
    private static bool InColumns(string text)
    {
        var lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Take(10).ToList();
        return lines.Count > 1 && Array.Exists([',', ';', '\t'], mark => lines[0].Contains(mark) && lines.TrueForAll(l => l.Count(c => c == mark) == lines[0].Count(c => c == mark)));
    }
}
