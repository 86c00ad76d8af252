using System.Text;
using CoachOffice.Domain.Media;

namespace CoachOffice.Domain.Tests.Media;

public sealed class MediaFormatTests
{
    // Signatures: ITU-T T.81 (JPEG), RFC 2083 (PNG), RFC 9649 (WebP), ISO/IEC 14496-12 (the container of MP4 and QuickTime), RFC 8794 (the EBML header of WebM).
    [Theory]
    [InlineData("FFD8FFE000104A46", MediaFormat.Jpeg)]
    [InlineData("89504E470D0A1A0A0000000D49484452", MediaFormat.Png)]
    [InlineData("524946462400000057454250565038", MediaFormat.WebP)]
    [InlineData("00000018667479706D703432", MediaFormat.Mp4)]
    [InlineData("000000206674797069736F6D", MediaFormat.Mp4)]
    [InlineData("00000014667479707174202000000000", MediaFormat.QuickTime)]
    [InlineData("1A45DFA39F4286810142F7810142F2810442F381084282847765626D", MediaFormat.WebM)]
    public void A_format_is_known_by_its_first_bytes(string head, MediaFormat format) => Assert.Equal(format, MediaFormats.Recognise(Convert.FromHexString(head)));

    [Theory]
    [InlineData("")]
    [InlineData("FFD8")]
    [InlineData("474946383961")]
    [InlineData("000000186674797068656963")]
    [InlineData("524946462400000057415645666D7420")]
    [InlineData("1A45DFA39F4286810142F78101")]
    [InlineData("3C73766720786D6C6E733D22")]
    public void Anything_else_is_none(string head) => Assert.Null(MediaFormats.Recognise(Convert.FromHexString(head)));

    [Fact]
    public void A_page_that_calls_itself_a_picture_is_none() => Assert.Null(MediaFormats.Recognise(Encoding.ASCII.GetBytes("<html><script>RIFF....WEBP</script>")));

    [Fact]
    public void Each_format_has_one_type_and_one_ending_of_its_own()
    {
        var all = Enum.GetValues<MediaFormat>();

        Assert.Equal(all.Length, all.Select(f => f.ContentType()).Distinct().Count());
        Assert.Equal(["jpg", "png", "webp", "mp4", "mov", "webm"], all.Select(f => f.Ending()));
        Assert.All(all, f => Assert.StartsWith(f.Kind() == MediaKind.Still ? "image/" : "video/", f.ContentType(), StringComparison.Ordinal));
    }
}
