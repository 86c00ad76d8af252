using CoachOffice.Browser.Tests.Rulebook;

namespace CoachOffice.Browser.Tests.Students;

/// <summary>A list of students is brought in, two records become one, a household and a group are made: with long names, at three sizes.</summary>
public sealed class ManyStudentsTests(Chromium chromium) : IClassFixture<Chromium>
{
    private const string LongName = "Featherstonehaugh-Wolfeschlegelstein";

    [Fact]
    public async Task Every_page_about_many_students_is_fit_to_be_seen_at_three_sizes()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var desk = new Person(window, office.Url);
        await new RulebookWalk(desk).OpensThePracticeWithOneStudent();
        await BringsAList(desk);
        await MergesTwo(desk);
        await MakesAHousehold(desk);
        await MakesAGroup(desk);
        await desk.GoTo("/students/export");
        await window.LookAt("people-export");

        Assert.Empty(window.Complaints);
    }

    private static async Task BringsAList(Person desk)
    {
        await desk.GoTo("/students/bring");
        await desk.Window.LookAt("people-bring-empty");
        var path = Path.Combine(Directory.CreateTempSubdirectory("coachoffice-list-").FullName, "everybody-who-ever-took-a-lesson-at-the-old-range-and-the-new-one.csv");
        await File.WriteAllTextAsync(path, Text(), TestContext.Current.CancellationToken);
        await (await desk.Page.QuerySelectorAsync("#file")).UploadFileAsync(path);
        await desk.Press("Look into it");
        Directory.Delete(Path.GetDirectoryName(path)!, true);
        await desk.Type("name-order", "");
        await desk.Press("Show every row");
        await desk.Sees("Say in which order whole names are written");
        await desk.Window.LookAt("people-columns");
        await desk.Type("name-order", "family-first");
        await desk.Type("when-there", "fill-empty");
        await desk.Press("Show every row");
        await desk.Sees("Who would be brought in");
        await desk.Window.LookAt("people-preview");
        await desk.Press("Bring in");
        await desk.Sees("Take the whole list back");
        await desk.Window.LookAt("people-brought");
    }

    private static async Task MergesTwo(Person desk)
    {
        await desk.GoTo("/students/doubles");
        await desk.Window.LookAt("people-doubles");
        await desk.Press("Side by side");
        await desk.Window.LookAt("people-merge");
        await desk.Press("Merge for good");
        await desk.Sees("The two records are one now");
    }

    private static async Task MakesAHousehold(Person desk)
    {
        await desk.GoTo("/students");
        await desk.Press("Tim");
        await desk.Press("Say who pays");
        await desk.Window.LookAt("people-pays");
        await desk.Press("Marguerite");
        await desk.Type("Text", "wolfe");
        await desk.Press("Search");
        await desk.Press("Put in");
        await desk.Window.LookAt("people-household");
        await desk.GoTo("/students/households");
        await desk.Window.LookAt("people-households");
    }

    private static async Task MakesAGroup(Person desk)
    {
        await desk.GoTo("/students/groups");
        await desk.Window.LookAt("people-groups-empty");
        await desk.Type("Name", "The juniors who come on Tuesday afternoons and on the first Saturday of a month");
        await desk.Press("Make the group");
        await desk.Type("Text", "wolfe");
        await desk.Press("Search");
        await desk.Press("Put in");
        await desk.Type("Text", "e");
        await desk.Press("Search");
        await desk.Window.LookAt("people-group");
        await desk.GoTo("/students");
        await desk.Window.LookAt("people-list");
        await desk.Press("Tim");
        await desk.Window.LookAt("people-student");
    }

    private static string Text() =>
        $"""
        Name,Email,Mobile,Date of birth,Parent,Parent email,Notes
        "{LongName}, Oluwaseun-Bartholomew",oluwaseun-bartholomew.featherstonehaugh@a-very-long-name-of-a-golf-club.example.org,+44 1632 960 001,14/06/1988,,,"left-eye dominant;
        likes mornings"
        "{LongName}, Oluwaseun",oluwaseun-bartholomew.featherstonehaugh@a-very-long-name-of-a-golf-club.example.org,,01/02/1990,,,
        "Young, Tim",,,03/04/2015,Marguerite-Antoinette {LongName},marguerite@example.org,
        "Alone, Eve",,,05/06/2014,,,no guardian named
        "Berg, Anna",anna@example.org,,,,,
        "Berg, Anna",anna@example.org,,,,,
        "Broken, Bo",nowhere,,,,,=1+1
        """;
}
