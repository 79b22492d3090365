using Dapper;
using Microsoft.Data.Sqlite;
using SkiaSharp;

namespace Gudgeon.Book.Store;

/// <summary>A small picture of an attached one.</summary>
/// <param name="Type">"image/jpeg", or "image/png" for a picture that can be seen through.</param>
/// <param name="Content">The file.</param>
public sealed record Thumbnail(string Type, byte[] Content)
{
    /// <summary>Longest side, px.</summary>
    public const int Side = 320;

    /// <summary>Pictures of more pixels are not decoded: one takes four bytes of memory.</summary>
    public const long MostPixels = 50_000_000;

    private const int Quality = 82;

    /// <summary>The small picture of a file; null when it is no picture, is too large, or is damaged.</summary>
    internal static Thumbnail? Of(byte[] content)
    {
        using var data = SKData.CreateCopy(content);
        using var codec = SKCodec.Create(data);
        if (codec is null || codec.Info.Width < 1 || codec.Info.Height < 1 || (long)codec.Info.Width * codec.Info.Height > MostPixels)
        {
            return null;
        }

        using var picture = Decoded(codec);
        using var small = picture is null ? null : Upright(picture, codec.EncodedOrigin);
        if (small is null)
        {
            return null;
        }

        var opaque = codec.Info.AlphaType == SKAlphaType.Opaque;
        using var file = small.Encode(opaque ? SKEncodedImageFormat.Jpeg : SKEncodedImageFormat.Png, Quality);
        return file is null ? null : new Thumbnail(opaque ? "image/jpeg" : "image/png", file.ToArray());
    }

    /// <summary>The small picture that is kept; null when none is, and then whether it is known that none can be made.</summary>
    internal static (Thumbnail? Picture, bool Known) Kept(SqliteConnection connection, string sha256)
    {
        var rows = connection.Query<Row>("SELECT content FROM thumbnail WHERE sha256 = @sha256", new { sha256 }).AsList();
        return rows is [{ Content: { } content }] ? (new Thumbnail(FileType.Of(content)!, content), true) : (null, rows.Count > 0);
    }

    internal static void Keep(SqliteConnection connection, string sha256, Thumbnail? picture) =>
        connection.Execute("INSERT INTO thumbnail (sha256, content) VALUES (@sha256, @content) ON CONFLICT DO NOTHING", new { sha256, content = picture?.Content });

    /// <summary>The picture, at the least size of those in which it can be decoded that is not smaller than wanted.</summary>
    private static SKBitmap? Decoded(SKCodec codec)
    {
        var size = codec.GetScaledDimensions(Math.Min(1f, 2f * Side / Math.Max(codec.Info.Width, codec.Info.Height)));
        var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, codec.Info.AlphaType == SKAlphaType.Opaque ? SKAlphaType.Opaque : SKAlphaType.Premul));
        if (codec.GetPixels(bitmap.Info, bitmap.GetPixels()) == SKCodecResult.Success)
        {
            return bitmap;
        }

        bitmap.Dispose();
        return null;
    }

    /// <summary>The picture made small and turned as the camera was held (EXIF 2.3, orientation).</summary>
    private static SKImage Upright(SKBitmap picture, SKEncodedOrigin origin)
    {
        var scale = Math.Min(1f, (float)Side / Math.Max(picture.Width, picture.Height));
        var (width, height) = (Math.Max(1, (int)MathF.Round(picture.Width * scale)), Math.Max(1, (int)MathF.Round(picture.Height * scale)));
        var lies = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        using var surface = SKSurface.Create(new SKImageInfo(lies ? height : width, lies ? width : height, SKColorType.Rgba8888, picture.AlphaType));
        surface.Canvas.Clear(SKColors.Transparent);
        surface.Canvas.SetMatrix(Turn(origin, width, height));
        using var image = SKImage.FromBitmap(picture);
        surface.Canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        return surface.Snapshot();
    }

    // The names say where the stored first row and first column are seen.
    private static SKMatrix Turn(SKEncodedOrigin origin, float w, float h) => origin switch
    {
        SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, w, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, w, 0, -1, h, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, h, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new SKMatrix(0, -1, h, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, h, -1, 0, w, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, w, 0, 0, 1),
        _ => SKMatrix.Identity,
    };

    private sealed record Row
    {
        public byte[]? Content { get; init; }
    }
}
