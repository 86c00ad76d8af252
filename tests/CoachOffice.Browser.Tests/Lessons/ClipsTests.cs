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

    private static async Task Chooses(Person coach)
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory("coachoffice-clip-").FullName, "swing.mp4");
        var bytes = new byte[ThreeParts];
        "\0\0\0\u0018ftypisom"u8.CopyTo(bytes);
        await File.WriteAllBytesAsync(path, bytes, TestContext.Current.CancellationToken);
        await (await coach.Page.QuerySelectorAsync("#File")).UploadFileAsync(path);
    }
}
