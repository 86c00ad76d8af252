using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;

namespace CoachOffice.Web.Tests.Media;

/// <summary>Clips in parts, by the open tus protocol 1.0. With COACHOFFICE_FULL_PROOF=1 the clip has 500 MB, else 20.</summary>
public sealed class ClipUploadTests : IAsyncLifetime
{
    private static readonly long Length = Environment.GetEnvironmentVariable("COACHOFFICE_FULL_PROOF") == "1" ? 500_000_000 : 20_000_000;

    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;
    private string _lesson = "";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        _lesson = await _coach.StartsALesson();
        await _coach.Open($"{_lesson}/clips");
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_clip_cut_off_three_times_goes_on_where_it_stopped_and_arrives_whole()
    {
        var sender = ClipSender.Of(_coach);
        var address = await Begun(sender, Length);
        long offset = 0;
        for (var cut = 0; cut < 3; cut++)
        {
            await Assert.ThrowsAnyAsync<Exception>(() => sender.Patches(address, offset, new CutStream(Length, offset, Length / 5, sender.Line)));
            sender.Line = new CancellationTokenSource();
            var before = offset;
            offset = await Settled(sender, address);
            Assert.InRange(offset, before + 1, Length - 1);
        }

        await sender.Patches(address, offset, new CutStream(Length, offset, long.MaxValue));

        Assert.Equal(HttpStatusCode.NoContent, sender.Status);
        Assert.Equal(Length.ToString(CultureInfo.InvariantCulture), sender.Header("Upload-Offset"));
        await _coach.Open($"{_lesson}/clips");
        var clip = _coach.Page.QuerySelector(".rows a")!.GetAttribute("href")!;
        await _coach.Open(clip);
        var media = _coach.Page.QuerySelector("video")!.GetAttribute("src")!;
        Assert.Equal(await HashOf(new CutStream(Length, 0, long.MaxValue)), await HashOf(await _coach.Client.GetStreamAsync(media, Ct)));
        await sender.Asks(address);
        Assert.Equal(HttpStatusCode.NotFound, sender.Status);
    }

    [Fact]
    public async Task A_player_is_served_any_part_of_a_clip()
    {
        var sender = ClipSender.Of(_coach);
        var address = await Begun(sender, 100_000);
        await sender.Patches(address, 0, new CutStream(100_000, 0, long.MaxValue));
        await _coach.Open($"{_lesson}/clips");
        await _coach.Open(_coach.Page.QuerySelector(".rows a")!.GetAttribute("href")!);
        var asked = new HttpRequestMessage(HttpMethod.Get, _coach.Page.QuerySelector("video")!.GetAttribute("src"));
        asked.Headers.Range = new RangeHeaderValue(50_000, 50_099);

        var answer = await _coach.Client.SendAsync(asked, Ct);

        Assert.Equal((HttpStatusCode.PartialContent, 100L, "video/mp4"), (answer.StatusCode, answer.Content.Headers.ContentLength, answer.Content.Headers.ContentType!.MediaType));
    }

    [Fact]
    public async Task A_wrong_place_type_or_version_is_refused_by_its_number()
    {
        var sender = ClipSender.Of(_coach);
        var address = await Begun(sender, 1000);

        await sender.Patches(address, 10, new CutStream(1000, 10, long.MaxValue));
        Assert.Equal(HttpStatusCode.Conflict, sender.Status);
        await sender.Patches(address, 0, new CutStream(1000, 0, long.MaxValue), "video/mp4");
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, sender.Status);
        await sender.Sends(HttpMethod.Head, address, null, ("Tus-Resumable", "0.2.2"));
        Assert.Equal((HttpStatusCode.PreconditionFailed, "1.0.0"), (sender.Status, sender.Header("Tus-Version")));
        await sender.Creates(_lesson, 500_000_001);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, sender.Status);
        await sender.Creates("/lessons/00000000-0000-0000-0000-000000000001", 1000);
        Assert.Equal(HttpStatusCode.NotFound, sender.Status);
        await sender.Sends(HttpMethod.Options, $"{_lesson}/clips/uploads", null);
        Assert.Equal(("creation,termination", "500000000"), (sender.Header("Tus-Extension"), sender.Header("Tus-Max-Size")));
    }

    [Fact]
    public async Task What_is_no_video_is_refused_at_its_end_and_nothing_stays()
    {
        var sender = ClipSender.Of(_coach);
        var address = await Begun(sender, 26);

        await sender.Patches(address, 0, new MemoryStream("just a text, and no video."u8.ToArray()));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, sender.Status);
        Assert.Contains("MP4, MOV or WebM", await sender.Answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(Path.Combine(_office.DataFolder, "media", ".arriving")));
    }

    [Fact]
    public async Task A_clip_on_its_way_is_nobody_elses_and_ends_when_it_is_stopped()
    {
        var other = await _coach.LetsIn(_office, "coach");
        var desk = await _coach.LetsIn(_office, "desk");
        await _coach.Open($"{_lesson}/clips");
        var sender = ClipSender.Of(_coach);
        var address = await Begun(sender, 1000);
        await other.Open($"{_lesson}/clips");
        var stranger = ClipSender.Of(other);

        await stranger.Asks(address);
        Assert.Equal(HttpStatusCode.NotFound, stranger.Status);
        await stranger.Patches(address, 0, new CutStream(1000, 0, long.MaxValue));
        Assert.Equal(HttpStatusCode.NotFound, stranger.Status);
        await stranger.Drops(address);
        Assert.Equal(HttpStatusCode.NotFound, stranger.Status);
        await desk.Open("/students");
        var atTheDesk = ClipSender.Of(desk);
        await atTheDesk.Creates(_lesson, 1000);
        Assert.Equal(HttpStatusCode.Forbidden, atTheDesk.Status);

        await sender.Drops(address);
        Assert.Equal(HttpStatusCode.NoContent, sender.Status);
        Assert.Empty(Directory.GetFiles(Path.Combine(_office.DataFolder, "media", ".arriving")));
    }

    [Fact]
    public async Task Without_proof_of_origin_nothing_begins()
    {
        var sender = new ClipSender(_coach.Client, "no proof");

        await sender.Creates(_lesson, 1000);

        Assert.Equal(HttpStatusCode.Forbidden, sender.Status);
    }

    [Fact]
    public async Task Without_script_a_clip_comes_in_one_go()
    {
        using var bytes = new MemoryStream();
        await new CutStream(5000, 0, long.MaxValue).CopyToAsync(bytes, Ct);

        await _coach.SendFile("#add-clip", ("File", "swing.mp4", bytes.ToArray()));

        Assert.Contains("The clip is added", _coach.Page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal("Clip 1", _coach.Page.QuerySelector(".rows a")!.TextContent);
        await _coach.Send("form[action*='remove']");
        Assert.Null(_coach.Page.QuerySelector(".rows a"));
    }

    private async Task<string> Begun(ClipSender sender, long length)
    {
        await sender.Creates(_lesson, length);
        Assert.Equal(HttpStatusCode.Created, sender.Status);
        return sender.Header("Location")!;
    }

    // The office may still be writing what came before the cut.
    private static async Task<long> Settled(ClipSender sender, string address)
    {
        for (long last = -1; ;)
        {
            await sender.Asks(address);
            var now = long.Parse(sender.Header("Upload-Offset")!, CultureInfo.InvariantCulture);
            if (now == last) return now;
            last = now;
            await Task.Delay(100, Ct);
        }
    }

    private static async Task<string> HashOf(Stream bytes) => Convert.ToHexString(await SHA256.HashDataAsync(bytes, Ct));
}
