using System.Net;

namespace CoachOffice.Web.Tests.Students;

public sealed class StudentFormTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_student_is_added_and_found_again_without_marks()
    {
        await Add(("Input.GivenName", "Zoë"), ("Input.FamilyName", "Ångström-Fitzwilliam"), ("Input.Email", "zoe@example.org"));
        Assert.Equal("Zoë Ångström-Fitzwilliam", _owner.Heading);
        Assert.Contains("Zoë is added.", _owner.Page.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);

        await _owner.Open("/students");
        await _owner.Send("form[role=search]", ("Text", "angstrom zoe"));

        Assert.Equal("Zoë Ångström-Fitzwilliam", Assert.Single(_owner.Page.QuerySelectorAll(".rows a")).TextContent);
        Assert.Equal("", _owner.Answer.RequestMessage!.RequestUri!.Query);
    }

    [Fact]
    public async Task A_date_that_is_none_is_refused_and_every_other_field_stays()
    {
        await _owner.Open("/students/new");

        await _owner.Send("main form", ("Input.GivenName", "Ines"), ("Input.BirthDate", "31.02.2001"), ("Input.MinutesPerWeek", "many"), ("Input.Height", "17o"), ("Input.Kit", "towel"), ("Input.Notes", "Left her glove."));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("'31.02.2001' is no day of the calendar", _owner.Alert, StringComparison.Ordinal);
        Assert.Contains("'many' is no whole number", _owner.Alert, StringComparison.Ordinal);
        Assert.Contains("'17o' is not one number", _owner.Alert, StringComparison.Ordinal);
        Assert.Equal("Ines", _owner.Page.QuerySelector("#Input_GivenName")!.GetAttribute("value"));
        Assert.Equal("31.02.2001", _owner.Page.QuerySelector("#Input_BirthDate")!.GetAttribute("value"));
        Assert.True(_owner.Page.QuerySelector("input[value=towel]")!.HasAttribute("checked"));
        Assert.Equal("Left her glove.", _owner.Page.QuerySelector("#Input_Notes")!.TextContent);
    }

    [Fact]
    public async Task A_minor_needs_a_guardian_who_then_gets_the_mail()
    {
        await _owner.Open("/students/new");
        await _owner.Send("main form", ("Input.GivenName", "Tom"), ("Input.BirthDate", "2015-05-05"));
        Assert.Contains("needs a guardian", _owner.Alert, StringComparison.Ordinal);

        await _owner.Send("main form", ("Input.Guardian.Name", "Ruth Pell"), ("Input.Guardian.Email", "ruth@example.org"));

        Assert.Equal("Tom", _owner.Heading);
        Assert.Contains("Messages go tothe guardian", _owner.Text.ReplaceLineEndings("").Replace("  ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_form_sent_twice_adds_one_student()
    {
        await _owner.Open("/students/new");
        var form = _owner.Page;
        await _owner.Send("main form", ("Input.GivenName", "Once"));
        var first = _owner.Path;
        await _owner.Open("/students/new");
        var id = form.QuerySelector("#Input_Id")!.GetAttribute("value")!;

        await _owner.Send("main form", ("Input.GivenName", "Once"), ("Input.Id", id));

        Assert.Equal(first, _owner.Path);
        await _owner.Open("/students");
        Assert.Single(_owner.Page.QuerySelectorAll(".rows a"));
    }

    [Fact]
    public async Task Two_people_who_change_one_student_see_both_values()
    {
        await Add(("Input.GivenName", "Ada"), ("Input.Phone", "111"));
        var path = _owner.Path;
        var desk = await _owner.LetsIn(_office, "desk");
        await desk.Open($"{path}/edit");
        await _owner.Open($"{path}/edit");
        await _owner.Send("main form", ("Input.Phone", "222"));

        await desk.Send("main form", ("Input.Phone", "333"));

        Assert.Equal(HttpStatusCode.Conflict, desk.Status);
        Assert.Contains(Owner.Name, desk.Alert, StringComparison.Ordinal);
        Assert.Contains("saved is '222', yours is '333'", desk.Alert, StringComparison.Ordinal);
        Assert.Equal("333", desk.Page.QuerySelector("#Input_Phone")!.GetAttribute("value"));
        await desk.Send("main form");
        Assert.Equal(path, desk.Path);
        Assert.Contains("333", desk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Limits_goals_and_units_come_back_as_they_were_entered()
    {
        await _owner.Open("/settings");
        await _owner.Send("main form", ("Input.Units", "imperial"));
        await Add(
            ("Input.GivenName", "Bo"), ("Input.Height", "70,5"), ("Input.ClubSpeedGoal", "95"), ("Input.Goals", "distance"),
            ("Input.Limits[0].Region", "lower-back"), ("Input.Limits[0].Status", "past"), ("Input.Limits[0].NotedOn", "2026-01-15"), ("Input.Limits[0].Source", "the student"));
        Assert.Contains("lower back: past, noted 15 Jan 2026 by the student", _owner.Text, StringComparison.Ordinal);

        await _owner.Open(_owner.Path + "/edit");

        Assert.Equal("70.5", _owner.Page.QuerySelector("#Input_Height")!.GetAttribute("value"));
        Assert.Equal("95", _owner.Page.QuerySelector("#Input_ClubSpeedGoal")!.GetAttribute("value"));
        Assert.Equal("in", _owner.Page.QuerySelector("#Input_Height-unit")!.TextContent);
        Assert.Equal("lower-back", _owner.Page.QuerySelector("#limit-0-region option[selected]")!.GetAttribute("value"));
        Assert.Equal("distance", _owner.Page.QuerySelector("#Input_Goals_0 option[selected]")!.GetAttribute("value"));
    }

    private async Task Add(params (string Name, string? Value)[] fields)
    {
        await _owner.Open("/students/new");
        await _owner.Send("main form", fields);
        Assert.Equal("", _owner.Alert);
    }
}
