using System.Net;

namespace CoachOffice.Web.Tests.Students.Groups;

/// <summary>Groups by hand, without a line of script.</summary>
public sealed class GroupPagesTests : IAsyncLifetime
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
    public async Task A_group_is_made_filled_seen_at_the_student_and_narrows_the_list()
    {
        var ida = await _owner.Registers();
        await _owner.Registers("Bo", "Abel");
        await _owner.Open("/students/groups");
        Assert.Contains("No groups yet", _owner.Text, StringComparison.Ordinal);
        await _owner.Send("main form", ("Name", "Junior <b>squad</b>"));
        var group = _owner.Path;
        Assert.Equal("Junior <b>squad</b>", _owner.Heading);

        await _owner.Send("form[role=search]", ("Text", "sommer"));
        await _owner.Send("form[action*='Put']");
        Assert.Equal(group, _owner.Path);
        Assert.Equal(ida, _owner.Page.QuerySelector(".rows a")!.GetAttribute("href"));
        await _owner.Send("form[role=search]", ("Text", "sommer"));
        Assert.Contains("No other student matches", _owner.Text, StringComparison.Ordinal);

        await _owner.Open(ida);
        Assert.Contains("In the group Junior <b>squad</b>", _owner.Text, StringComparison.Ordinal);
        await _owner.Open("/students");
        await _owner.Open(_owner.Page.QuerySelector(".narrow-down a[href*=group]")!.GetAttribute("href")!);
        Assert.Equal(["Ida Sommerfeld"], _owner.Page.QuerySelectorAll("#results .what").Select(r => r.TextContent));
        await _owner.Send("form[role=search]", ("Text", "abel"));
        Assert.Contains("No student of “Junior <b>squad</b>” matches “abel”", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_member_is_taken_out_and_archiving_can_be_undone()
    {
        await _owner.Registers();
        await _owner.Open("/students/groups");
        await _owner.Send("main form", ("Name", "Tuesday"));
        var group = _owner.Path;
        await _owner.Send("form[role=search]", ("Text", "ida"));
        await _owner.Send("form[action*='Put']");
        await _owner.Send("form[action*='Take']");
        Assert.Contains("Nobody yet", _owner.Text, StringComparison.Ordinal);

        await _owner.Send("form[action*='Rename']", ("Name", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Equal("Tuesday", _owner.Heading);
        await _owner.Send("form[action*='Archive']");
        Assert.Equal("/students/groups", _owner.Path);
        Assert.Contains("No groups yet", _owner.Text, StringComparison.Ordinal);
        await _owner.Send(".notice form");
        Assert.Equal(group, _owner.Path);
    }

    [Fact]
    public async Task The_desk_keeps_groups_too_a_stranger_does_not_and_an_unknown_one_is_not_found()
    {
        await _owner.Open("/students/groups");
        await _owner.Send("main form", ("Name", "Tuesday"));
        var group = _owner.Path;
        var desk = await _owner.LetsIn(_office, "desk");
        await desk.Open(group);
        Assert.Equal((HttpStatusCode.OK, "Tuesday"), (desk.Status, desk.Heading));
        await desk.Open("/students/groups/00000000-0000-0000-0000-000000000001");
        Assert.Equal(HttpStatusCode.NotFound, desk.Status);

        var stranger = new Visitor(_office);
        foreach (var page in new[] { group, "/students/groups" })
        {
            await stranger.Open(page);
            Assert.Equal("/sign-in", stranger.Path);
        }
    }
}
