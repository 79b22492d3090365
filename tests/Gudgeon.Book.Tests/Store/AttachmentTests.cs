using System.Text;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Store;

public sealed class AttachmentTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly string _path;

    public AttachmentTests()
    {
        _path = _folder.PathOf("wren.gudgeon");
        Stores.Begin(_path);
    }

    public void Dispose() => _folder.Dispose();

    // SHA-256 of "abc": FIPS 180-2, appendix B.1.
    [Fact]
    public void A_file_comes_back_as_it_went_in_with_its_sum()
    {
        Stores.Open(_path, "Tom").Attach(_folder.Write("note.txt", "abc"), "cylinder[1].bore");
        var book = Stores.Open(_path);
        var attachment = Assert.Single(book.Attachments);
        Assert.Equal(("note.txt", "text/plain", 3L, "cylinder[1].bore", "Tom"), (attachment.Name, attachment.Type, attachment.Size, attachment.About, attachment.By));
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", attachment.Sha256);
        Assert.Equal("abc"u8.ToArray(), book.Content(attachment));
        Stores.VerifiesWell(_path);
    }

    [Fact]
    public void The_same_content_is_stored_once()
    {
        Stores.Open(_path).Attach(_folder.Write("a.txt", "abc"));
        Stores.Open(_path).Attach(_folder.Write("b.txt", "abc"));
        Assert.Equal(["a.txt", "b.txt"], Stores.Open(_path).Attachments.Select(a => a.Name));
        Assert.Equal(1, Stores.Ask<int>(_path, "SELECT count(*) FROM blob"));
        Stores.Open(_path).Undo();
        Assert.Equal(["a.txt"], Stores.Open(_path).Attachments.Select(a => a.Name));
        Stores.VerifiesWell(_path);
    }

    // The first bytes by which each format is known: PNG (ISO/IEC 15948, 5.2), JPEG (ITU-T T.81, B.1.1.3), GIF89a, WebP (RFC 9649), PDF (ISO 32000-1, 7.5.2).
    [Theory]
    [InlineData("89504E470D0A1A0A0000000D", "image/png")]
    [InlineData("FFD8FFE000104A4649460001", "image/jpeg")]
    [InlineData("474946383961010001000000", "image/gif")]
    [InlineData("524946460000000057454250565038", "image/webp")]
    [InlineData("255044462D312E370A25E2E3", "application/pdf")]
    [InlineData("72706D2C6E6D0A313030302C35300A", "text/csv")]
    [InlineData("646F206E6F74", "text/plain")]
    [InlineData("7F454C460201010000000000", null)]
    [InlineData("524946460000000057415645666D74", null)]
    [InlineData("C328", null)]
    public void The_type_is_told_by_the_content(string hex, string? type) => Assert.Equal(type, FileType.Of(Convert.FromHexString(hex)));

    [Fact]
    public void What_is_too_large_or_empty_or_of_no_known_type_is_refused()
    {
        File.WriteAllBytes(_folder.PathOf("most.txt"), Encoding.ASCII.GetBytes(new string('x', 20 * 1024 * 1024)));
        File.WriteAllBytes(_folder.PathOf("more.txt"), Encoding.ASCII.GetBytes(new string('x', (20 * 1024 * 1024) + 1)));
        _folder.Write("none.txt", "");
        _folder.Write("control.txt", "a\0b");
        Stores.Open(_path).Attach(_folder.PathOf("most.txt"));
        Assert.All(["more.txt", "none.txt", "control.txt", "nosuch.txt"], f => Assert.Throws<BadInputException>(() => Stores.Open(_path).Attach(_folder.PathOf(f))));
        Assert.Throws<BadInputException>(() => Stores.Open(_path).Attach(_folder.PathOf("most.txt"), "cylinder.boar"));
        Assert.Single(Stores.Open(_path).Attachments);
    }
}
