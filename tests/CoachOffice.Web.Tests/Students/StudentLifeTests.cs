using System.Net;

namespace CoachOffice.Web.Tests.Students;

public sealed class StudentLifeTests : IAsyncLifetime
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
    public async Task Without_students_the_page_says_what_to_do_first()
    {
        await _owner.Open("/students");

        Assert.Equal("/students/new", _owner.Page.QuerySelector(".empty a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task Archiving_can_be_undone_at_once()
    {
        var path = await Add("Ada");

        await _owner.Send("form[action*='Archive']");
        Assert.Equal("/students", _owner.Path);
        Assert.Empty(_owner.Page.QuerySelectorAll(".rows a"));
        await _owner.Send(".notice form");

        Assert.Equal(path, _owner.Path);
        Assert.Contains("Brought back", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Erasing_asks_for_the_name_and_leaves_a_pseudonym()
    {
        var path = await Add("Ada");
        await _owner.Open($"{path}/erase");
        await _owner.Send("main form", ("Typed", "Bob"));
        Assert.Contains("Nothing was erased", _owner.Alert, StringComparison.Ordinal);

        await _owner.Send("main form", ("Typed", "ada"));

        Assert.Equal("/students", _owner.Path);
        await _owner.Open(path);
        Assert.StartsWith("Former student", _owner.Heading, StringComparison.Ordinal);
        foreach (var page in (string[])["erase", "edit"])
        {
            await _owner.Open($"{path}/{page}");
            Assert.Equal(HttpStatusCode.NotFound, _owner.Status);
        }
    }

    [Fact]
    public async Task Only_an_owner_erases()
    {
        var path = await Add("Ada");
        var coach = await _owner.LetsIn(_office, "coach");

        await coach.Open($"{path}/erase");

        Assert.Equal(HttpStatusCode.Forbidden, coach.Status);
        Assert.Equal("Not open to your role", coach.Heading);
    }

    [Fact]
    public async Task A_search_in_script_gets_the_rows_only()
    {
        await Add("Ada");
        await _owner.Open("/students");

        await _owner.Part("form[role=search]", ("Text", "ad"));

        Assert.Empty(_owner.Page.QuerySelectorAll("header"));
        Assert.Equal("Ada", Assert.Single(_owner.Page.QuerySelectorAll(".rows a")).TextContent);
    }

    [Fact]
    public async Task A_student_who_is_not_there_is_a_page_that_says_so()
    {
        await _owner.Open("/students/00000000-0000-0000-0000-000000000009");

        Assert.Equal(HttpStatusCode.NotFound, _owner.Status);
        Assert.Equal("Nothing here", _owner.Heading);
    }

    private async Task<string> Add(string name)
    {
        await _owner.Open("/students/new");
        await _owner.Send("main form", ("Input.GivenName", name));
        return _owner.Path;
    }
}
