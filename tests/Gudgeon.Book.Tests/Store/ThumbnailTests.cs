using System.Buffers.Binary;
using System.IO.Compression;
using Gudgeon.Book.Store;
using SkiaSharp;

namespace Gudgeon.Book.Tests.Store;

/// <summary>Small pictures. Each picture is drawn here: red, green, blue and white in its quarters, clockwise from the upper left.</summary>
public sealed class ThumbnailTests : IDisposable
{
    private static readonly SKColor[] Quarters = [SKColors.Red, SKColors.Lime, SKColors.Blue, SKColors.White];

    private readonly TemporaryFolder _folder = new();
    private readonly string _path;

    public ThumbnailTests()
    {
        _path = _folder.PathOf("wren.gudgeon");
        Stores.Begin(_path);
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(SKEncodedImageFormat.Png, 1600, 1200, 320, 240)]
    [InlineData(SKEncodedImageFormat.Jpeg, 1600, 1200, 320, 240)]
    [InlineData(SKEncodedImageFormat.Webp, 1600, 1200, 320, 240)]
    [InlineData(SKEncodedImageFormat.Jpeg, 300, 2000, 48, 320)]
    [InlineData(SKEncodedImageFormat.Png, 100, 60, 100, 60)]
    [InlineData(SKEncodedImageFormat.Png, 4000, 2, 320, 1)]
    public void The_longest_side_is_320_px_and_a_small_picture_stays_as_it_is(SKEncodedImageFormat format, int width, int height, int smallWidth, int smallHeight)
    {
        using var small = Small(Draw(width, height, format));
        Assert.Equal((smallWidth, smallHeight), (small.Width, small.Height));
        if (smallHeight > 40)
        {
            Assert.Equal(Quarters, Seen(small));
        }
    }

    // Two pixels wide, one high, red and green: GIF89a (appendix F), its two codes written by hand.
    [Fact]
    public void A_gif_is_a_picture_too()
    {
        var gif = Convert.FromHexString("474946383961" + "02000100800000" + "FF000000FF00" + "2C00000000020001000002" + "02440A" + "003B");
        var made = Thumbnail.Of(gif);
        using var small = SKBitmap.Decode(Assert.IsType<Thumbnail>(made).Content);
        Assert.Equal((2, 1), (small.Width, small.Height));
    }

    // EXIF 2.3, 4.6.4 (orientation): how the stored picture is to be turned so that it stands as it was seen.
    [Theory]
    [InlineData(1, "red lime blue white")]
    [InlineData(2, "lime red white blue")]
    [InlineData(3, "blue white red lime")]
    [InlineData(4, "white blue lime red")]
    [InlineData(5, "red white blue lime")]
    [InlineData(6, "white red lime blue")]
    [InlineData(7, "blue lime red white")]
    [InlineData(8, "lime blue white red")]
    public void A_picture_stands_as_the_camera_was_held(int orientation, string seen)
    {
        using var small = Small(WithOrientation(Draw(800, 400, SKEncodedImageFormat.Jpeg), orientation));
        Assert.Equal(orientation >= 5 ? (160, 320) : (320, 160), (small.Width, small.Height));
        var names = new Dictionary<SKColor, string> { [SKColors.Red] = "red", [SKColors.Lime] = "lime", [SKColors.Blue] = "blue", [SKColors.White] = "white" };
        Assert.Equal(seen, string.Join(' ', Seen(small).Select(c => names[c])));
    }

    [Fact]
    public void What_can_be_seen_through_stays_so()
    {
        var clear = Draw(640, 640, SKEncodedImageFormat.Png, see: true);
        var made = Thumbnail.Of(clear);
        Assert.Equal("image/png", made?.Type);
        using var small = SKBitmap.Decode(made!.Content);
        Assert.Equal(0, small.GetPixel(160, 2).Alpha);
        Assert.Equal("image/jpeg", Thumbnail.Of(Draw(640, 640, SKEncodedImageFormat.Png))?.Type);
    }

    // The header alone says how large it is: nothing of it is decoded.
    [Theory]
    [InlineData(8000, 6250, true)]
    [InlineData(8000, 6251, false)]
    [InlineData(65000, 65000, false)]
    public void A_picture_of_more_than_50_megapixels_is_not_decoded(int width, int height, bool decoded) => Assert.Equal(decoded, Thumbnail.Of(Blank(width, height)) is not null);

    [Fact]
    public void A_picture_that_cannot_be_decoded_has_none()
    {
        var whole = Draw(1600, 1200, SKEncodedImageFormat.Png);
        var (cut, wrong) = (whole[..(whole.Length / 2)], whole.ToArray());
        wrong.AsSpan(60, 200).Fill(0xA5);
        var pictures = new[] { cut, wrong, whole[..30], "GIF89a"u8.ToArray(), [0xFF, 0xD8, 0xFF, 0, 1, 2] };
        foreach (var (picture, i) in pictures.Select((p, i) => (p, i)))
        {
            var book = (StoredBook)Stores.Open(_path).Attach($"{i}.png", [.. picture, 0x80]);
            Assert.StartsWith("image/", book.Attachments[^1].Type, StringComparison.Ordinal);
            Assert.Null(book.Thumbnail(book.Attachments[^1]));
        }

        Stores.VerifiesWell(_path);
    }

    [Fact]
    public void It_is_made_once_and_kept_beside_the_file_and_is_no_entry()
    {
        var book = (StoredBook)Stores.Open(_path).Attach("head.png", Draw(1600, 1200, SKEncodedImageFormat.Png));
        Stores.Open(_path).Attach("same.png", Draw(1600, 1200, SKEncodedImageFormat.Png));
        var attachment = book.Attachments[0];
        Assert.Equal(0, Stores.Ask<int>(_path, "SELECT count(*) FROM thumbnail"));
        var made = book.Thumbnail(attachment);
        Assert.Equal(made!.Content, Stores.Open(_path).Thumbnail(Stores.Open(_path).Attachments[1])!.Content);
        Assert.Equal(1, Stores.Ask<int>(_path, "SELECT count(*) FROM thumbnail"));
        Assert.Equal(9, Stores.Open(_path).Revision);
        Stores.VerifiesWell(_path);

        // The one that is kept is the one that is given.
        Stores.Sql(_path, "UPDATE thumbnail SET content = x'89504E470D0A1A0A'");
        Assert.Equal("image/png", book.Thumbnail(attachment)!.Type);
        Stores.Open(_path).Undo();
        Stores.VerifiesWell(_path);
    }

    [Fact]
    public void A_file_that_is_no_picture_has_none()
    {
        var book = (StoredBook)Stores.Open(_path).Attach("note.txt", "read cold"u8.ToArray());
        Assert.Null(book.Thumbnail(book.Attachments[0]));
        Assert.Equal(0, Stores.Ask<int>(_path, "SELECT count(*) FROM thumbnail"));
    }

    [Fact]
    public void While_another_program_writes_it_is_given_though_not_kept()
    {
        var book = (StoredBook)Stores.Open(_path).Attach("head.png", Draw(640, 480, SKEncodedImageFormat.Png));
        using (var other = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={_path};Pooling=False"))
        {
            other.Open();
            using var held = other.BeginTransaction(deferred: false);
            Assert.NotNull(book.Thumbnail(book.Attachments[0]));
        }

        Assert.Equal(0, Stores.Ask<int>(_path, "SELECT count(*) FROM thumbnail"));
    }

    private static SKBitmap Small(byte[] picture)
    {
        var made = Thumbnail.Of(picture);
        Assert.NotNull(made);
        Assert.Equal(made.Type, FileType.Of(made.Content));
        return SKBitmap.Decode(made.Content);
    }

    /// <summary>The colours in the middle of the quarters, clockwise, each the nearest of the four.</summary>
    private static SKColor[] Seen(SKBitmap picture)
    {
        var (left, right, top, bottom) = (picture.Width / 4, picture.Width * 3 / 4, picture.Height / 4, picture.Height * 3 / 4);
        return [.. new[] { (left, top), (right, top), (right, bottom), (left, bottom) }.Select(p => picture.GetPixel(p.Item1, p.Item2)).Select(c => Quarters.MinBy(q => Math.Abs(q.Red - c.Red) + Math.Abs(q.Green - c.Green) + Math.Abs(q.Blue - c.Blue)))];
    }

    private static byte[] Draw(int width, int height, SKEncodedImageFormat format, bool see = false)
    {
        using var surface = SKSurface.Create(new SKImageInfo(width, height, SKColorType.Rgba8888, see ? SKAlphaType.Premul : SKAlphaType.Opaque));
        for (var i = 0; i < 4 && !see; i++)
        {
            using var paint = new SKPaint { Color = Quarters[i] };
            surface.Canvas.DrawRect(i is 1 or 2 ? width / 2f : 0, i >= 2 ? height / 2f : 0, width / 2f, height / 2f, paint);
        }

        if (see)
        {
            using var paint = new SKPaint { Color = SKColors.Red };
            surface.Canvas.DrawCircle(width / 2f, height / 2f, width / 4f, paint);
        }

        using var image = surface.Snapshot();
        using var data = image.Encode(format, 90);
        return data.ToArray();
    }

    /// <summary>A JPEG with an EXIF segment that says nothing but its orientation (EXIF 2.3, 4.5 and 4.6: tag 0x0112, a short).</summary>
    private static byte[] WithOrientation(byte[] jpeg, int orientation)
    {
        byte[] tiff = [.. "MM\0*"u8, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0, 0, 0, 0, 0];
        byte[] body = [.. "Exif\0\0"u8, .. tiff];
        return [0xFF, 0xD8, 0xFF, 0xE1, (byte)((body.Length + 2) >> 8), (byte)(body.Length + 2), .. body, .. jpeg.AsSpan(2)];
    }

    /// <summary>A PNG of one bit a pixel, all black (ISO/IEC 15948, 5.3 and 11.2): a large picture in a small file.</summary>
    private static byte[] Blank(int width, int height)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        header[8] = 1;
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest))
        {
            var line = new byte[1 + ((width + 7) / 8)];
            for (var i = 0; i < Math.Min(height, 7000); i++)
            {
                zlib.Write(line);
            }
        }

        return [0x89, .. "PNG"u8, 0x0D, 0x0A, 0x1A, 0x0A, .. Chunk("IHDR"u8, header), .. Chunk("IDAT"u8, packed.ToArray()), .. Chunk("IEND"u8, [])];
    }

    private static byte[] Chunk(ReadOnlySpan<byte> name, byte[] content)
    {
        byte[] named = [.. name, .. content];
        var chunk = new byte[content.Length + 12];
        BinaryPrimitives.WriteInt32BigEndian(chunk, content.Length);
        named.CopyTo(chunk, 4);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(content.Length + 8), Crc(named));
        return chunk;
    }

    private static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) == 1 ? (crc >> 1) ^ 0xEDB88320 : crc >> 1;
            }
        }

        return ~crc;
    }
}
