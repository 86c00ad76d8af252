using System.Text;
using CoachOffice.Domain.Media;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Media;
using SkiaSharp;

namespace CoachOffice.UseCases.Tests.Media;

public sealed class StillReadingTests
{
    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg, MediaFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png, MediaFormat.Png)]
    [InlineData(SKEncodedImageFormat.Webp, MediaFormat.WebP)]
    public async Task A_still_is_written_anew_in_its_own_format_with_a_small_one(SKEncodedImageFormat encoded, MediaFormat format)
    {
        var still = (await StillReading.Of(APicture.RedAndBlue(800, 600, encoded))).Value;

        Assert.Equal((format, 800, 600), (still.Format, still.Width, still.Height));
        Assert.Equal(format, MediaFormats.Recognise(still.Picture));
        using var small = SKBitmap.Decode(still.Small);
        Assert.Equal((MediaFormat.Jpeg, 320, 240), (MediaFormats.Recognise(still.Small)!.Value, small.Width, small.Height));
    }

    [Fact]
    public async Task Place_and_all_else_beside_the_pixels_is_gone()
    {
        var file = CraftedFiles.WithExif(APicture.RedAndBlue(200, 100), 1);
        Assert.Contains(CraftedFiles.Place, Encoding.Latin1.GetString(file), StringComparison.Ordinal);

        var still = (await StillReading.Of(file)).Value;

        Assert.DoesNotContain(CraftedFiles.Place, Encoding.Latin1.GetString(still.Picture), StringComparison.Ordinal);
        Assert.DoesNotContain("Exif", Encoding.Latin1.GetString(still.Picture), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_hides_behind_the_pixels_is_gone_too()
    {
        byte[] file = [.. APicture.RedAndBlue(200, 100), .. "<script>alert(1)</script>"u8];

        Assert.DoesNotContain("script", Encoding.Latin1.GetString((await StillReading.Of(file)).Value.Picture), StringComparison.Ordinal);
    }

    // Where the red half of a picture that is red on its left belongs for each orientation of the exchangeable image file format.
    [Theory]
    [InlineData(1, 200, 100, 20, 50)]
    [InlineData(2, 200, 100, 180, 50)]
    [InlineData(3, 200, 100, 180, 50)]
    [InlineData(4, 200, 100, 20, 50)]
    [InlineData(5, 100, 200, 50, 20)]
    [InlineData(6, 100, 200, 50, 20)]
    [InlineData(7, 100, 200, 50, 180)]
    [InlineData(8, 100, 200, 50, 180)]
    public async Task A_picture_stands_upright_as_the_camera_noted(byte orientation, int width, int height, int x, int y)
    {
        var still = (await StillReading.Of(CraftedFiles.WithExif(APicture.RedAndBlue(200, 100), orientation))).Value;

        using var pixels = SKBitmap.Decode(still.Picture);
        Assert.Equal((width, height), (pixels.Width, pixels.Height));
        var red = pixels.GetPixel(x, y);
        var blue = pixels.GetPixel(width - 1 - x, height - 1 - y);
        Assert.True(red.Red > 200 && red.Blue < 60, $"{x},{y} is {red}");
        Assert.True(blue.Blue > 200 && blue.Red < 60, $"The other end is {blue}");
    }

    [Fact]
    public async Task A_large_picture_is_made_smaller_so_that_a_click_of_three_pixels_can_be_made()
    {
        var still = (await StillReading.Of(APicture.RedAndBlue(5120, 2000))).Value;

        Assert.Equal((2560, 1000), (still.Width, still.Height));
    }

    [Fact]
    public async Task A_small_file_that_claims_a_huge_picture_is_refused_by_its_header()
    {
        var refusal = (await StillReading.Of(CraftedFiles.PngThatClaims(30_000, 30_000))).Refusals.Single();

        Assert.Equal("still-too-many-pixels", refusal.Code);
        Assert.Contains("30000 by 30000", refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_no_whole_picture_is_refused()
    {
        var jpeg = APicture.RedAndBlue(200, 100);

        Assert.Equal("still-format", (await StillReading.Of("GIF89a, a moving one"u8.ToArray())).Refusals.Single().Code);
        Assert.Equal("still-format", (await StillReading.Of(Convert.FromHexString("00000018667479706D703432"))).Refusals.Single().Code);
        Assert.Equal("still-unreadable", (await StillReading.Of(jpeg.AsMemory(0, 30))).Refusals.Single().Code);
        Assert.Equal("still-unreadable", (await StillReading.Of(jpeg.AsMemory(0, jpeg.Length / 2))).Refusals.Single().Code);
        Assert.Equal("still-unreadable", (await StillReading.Of(CraftedFiles.PngThatClaims(300, 300))).Refusals.Single().Code);
        Assert.Equal("still-too-small", (await StillReading.Of(APicture.RedAndBlue(20, 20))).Refusals.Single().Code);
        Assert.Equal("still-format", (await StillReading.Of(ReadOnlyMemory<byte>.Empty)).Refusals.Single().Code);
    }
}
