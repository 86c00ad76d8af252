using System.Globalization;
using System.Text;
using CoachOffice.Browser.Tests.Rulebook;

namespace CoachOffice.Browser.Tests.Lessons;

/// <summary>A coach brings a launch monitor's file for a student: empty practice, long names, refused rows, and what was kept.</summary>
public sealed class RadarSwingsTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task From_a_file_to_lessons_every_page_is_fit_to_be_seen_at_three_sizes()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        await new RulebookWalk(coach).OpensThePracticeWithOneStudent();
        await coach.Press("Bring radar swings");
        await window.LookAt("radar-empty");

        await Chooses(coach, "the-swings-of-a-very-long-evening-on-the-range-with-the-new-driver-and-two-other-clubs.csv");
        await window.LookAt("radar-columns");
        await coach.Press("Show what would be kept");
        await coach.Sees("does not say in which unit");
        await window.LookAt("radar-columns-open");
        await Tells(coach);
        await coach.Sees("What would be kept");
        await coach.Sees("open");
        await coach.Unfold();
        await window.LookAt("radar-preview");
        await coach.Press("Import");
        await coach.Page.WaitForFunctionAsync("() => document.querySelector('h1').textContent === 'What was kept'");
        await window.LookAt("radar-kept");
        await coach.Press("4 May 2026, driver");
        await coach.Sees("Attack angle");
        await coach.GoTo(coach.Path);

        Assert.Empty(window.Complaints);
    }

    private static async Task Chooses(Person coach, string name)
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory("coachoffice-swings-").FullName, name);
        await File.WriteAllTextAsync(path, Text(), TestContext.Current.CancellationToken);
        await (await coach.Page.QuerySelectorAsync("#file")).UploadFileAsync(path);
        await coach.Press("Look into it");
        Directory.Delete(Path.GetDirectoryName(path)!, true);
    }

    private static async Task Tells(Person coach)
    {
        await coach.Type("unit[2]", "mph");
        foreach (var column in new[] { 4, 5, 6, 7, 8 }) await coach.Type($"plus[{column}]", column is 4 or 8 ? "ours" : "right");
        await coach.Type("club[1][2]", "fairway");
        await coach.Type("decimals", "point");
        await coach.Press("Show what would be kept");
    }

    private static string Text()
    {
        var text = new StringBuilder("Date,Club,Club speed,Ball speed [mph],Attack angle [deg],Club path [deg],Face to path [deg],Start direction [deg],Launch angle [deg],A note with a name that goes on and on\n");
        for (var i = 0; i < 12; i++)
        {
            var (path, turn) = (-2 + i * 0.4, 1.5 - i * 0.3);
            text.Append(CultureInfo.InvariantCulture, $"2026-05-04,{(i % 3) switch { 0 => "Driver", 1 => "7 Iron", _ => "Spoon" }},{96 + i * 0.3:0.0},{138 + i * 0.5:0.0},{-1 + i * 0.2:0.0},{path:0.0},{turn:0.0},{path + 0.7 * turn:0.0},12.{i % 10},thin\n");
        }

        return text.Append("2026-05-04,Driver,172.0,240.0,1,1,1,1,12,=1+1\n2026-05-04,Driver,98.0,151.0,1,1,1,1,12,device\n2026-05-04,Driver,98.0,140.0,1,-6,10,9,12,odd\n2026-05-04,Driver,98.0,\"140,2\",1,1,1,1,12,comma\n").ToString();
    }
}
