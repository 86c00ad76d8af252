using CoachOffice.Browser.Tests.Rulebook;

namespace CoachOffice.Browser.Tests.Lessons;

/// <summary>A clip is chosen, sent in parts by our script, and opened in the player.</summary>
public sealed class ClipsTests(Chromium chromium) : IClassFixture<Chromium>
{
    private const int ThreeParts = 20_000_000;

    [Fact]
    public async Task A_clip_is_sent_in_parts_and_its_pages_are_fit_to_be_seen_at_three_sizes()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        await new RulebookWalk(coach).OpensThePracticeWithOneStudent();
        await coach.Press("Record a lesson");
        await coach.Press("Driver");
        await coach.Press("Clips");
        await window.LookAt("clips-empty");

        await Chooses(coach);
        await coach.Press("Add the clip");
        await coach.Page.WaitForSelectorAsync(".rows a");
        await coach.Sees("20 MB");
        await window.LookAt("clips");
        await coach.Press("Clip 1");
        await window.LookAt("clip");

        Assert.NotNull(await coach.Page.QuerySelectorAsync(".steps:not([hidden]) button"));
        Assert.Equal("", await coach.Page.EvaluateExpressionAsync<string>("Object.keys(localStorage).filter(k => k.startsWith('clip:')).join()"));
        Assert.Empty(window.Complaints);
    }

    /// <summary>A second of a square that moves two pixels a frame, thirty frames a second.</summary>
    [Fact]
    public async Task A_real_video_plays_and_is_stepped_frame_by_frame()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        await new RulebookWalk(coach).OpensThePracticeWithOneStudent();
        await coach.Press("Record a lesson");
        await coach.Press("Driver");
        await coach.Press("Clips");
        await (await coach.Page.QuerySelectorAsync("#File")).UploadFileAsync(Path.Combine(AppContext.BaseDirectory, "Lessons", "moving-square.webm"));
        await coach.Press("Add the clip");
        await coach.Page.WaitForSelectorAsync(".rows a");
        await coach.Press("Clip 1");
        await coach.Page.WaitForFunctionAsync("() => document.getElementById('clip').readyState >= 1");

        List<double> places = [0];
        foreach (var text in new[] { "One frame on", "One frame on", "One frame on", "One frame back" })
        {
            await coach.Taps(text);
            await coach.Page.WaitForFunctionAsync("w => { const at = parseFloat(document.getElementById('where').textContent); return at > 0 && at !== w; }", places[^1]);
            places.Add(await Where(coach));
        }

        Assert.True(places[0] < places[1] && places[1] < places[2] && places[2] < places[3] && places[4] < places[3], string.Join(", ", places));
        Assert.All(places.Zip(places.Skip(1)), p => Assert.Equal(1 / 30d, Math.Abs(p.Second - p.First), .004));
        Assert.Empty(window.Complaints);
    }

    private static Task<double> Where(Person coach) => coach.Page.EvaluateExpressionAsync<double>("parseFloat(document.getElementById('where').textContent)");

    private static async Task Chooses(Person coach)
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory("coachoffice-clip-").FullName, "swing.mp4");
        var bytes = new byte[ThreeParts];
        "\0\0\0\u0018ftypisom"u8.CopyTo(bytes);
        await File.WriteAllBytesAsync(path, bytes, TestContext.Current.CancellationToken);
        await (await coach.Page.QuerySelectorAsync("#File")).UploadFileAsync(path);
    }
}
