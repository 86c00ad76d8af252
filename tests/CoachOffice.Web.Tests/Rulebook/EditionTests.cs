using System.Net;

namespace CoachOffice.Web.Tests.Rulebook;

public sealed class EditionTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        await _coach.AimsTheTempo("3.2");
        await _coach.Send("form.put", ("Why", "A steadier back swing"));
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task An_edition_says_in_words_what_it_changed_by_whom_and_why()
    {
        await _coach.Open("/rulebook/history/2");

        Assert.Contains("A steadier back swing", _coach.Text, StringComparison.Ordinal);
        Assert.Contains(Owner.Name, _coach.Text, StringComparison.Ordinal);
        Assert.Contains("Driver: aim now 2.8 to 3.2, nothing before", _coach.Text, StringComparison.Ordinal);
        Assert.Null(_coach.Page.QuerySelector("form.put"));
    }

    [Fact]
    public async Task Going_back_is_a_new_edition_and_needs_a_reason()
    {
        await _coach.Open("/rulebook/history/1");
        await _coach.Send("form.put", ("Why", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);

        await _coach.Send("form.put", ("Why", "It was right"));

        Assert.Equal("/rulebook/history/3", _coach.Path);
        Assert.Contains("went back", _coach.Text, StringComparison.Ordinal);
        await _coach.Open("/rulebook/history/3?with=1");
        Assert.Contains("It says the same as edition 1", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_editions_are_compared_in_the_order_asked_for()
    {
        await _coach.Open("/rulebook/history/1?with=2");

        Assert.Contains("Driver: aim 2.8 to 3.2, now nothing", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Going_back_from_an_edition_no_longer_in_force_is_refused_with_both_names()
    {
        var other = await _coach.LetsIn(_office, "coach");
        await other.Open("/rulebook/history/1");
        await _coach.AimsTheTempo("3.3");
        await _coach.Send("form.put", ("Why", "Wider"));

        await other.Send("form.put", ("Why", "It was right"));

        Assert.Equal(HttpStatusCode.Conflict, other.Status);
        Assert.Contains(Owner.Name, other.Alert, StringComparison.Ordinal);
        Assert.Contains("Person at the coach", other.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_desk_finds_no_way_back_and_is_refused_one()
    {
        var desk = await _coach.LetsIn(_office, "desk");
        await desk.Open("/rulebook/history/1");
        Assert.Null(desk.Page.QuerySelector("form.put"));

        await desk.SendTo("/rulebook/history/1", "form[method=post]", ("begun", "2"), ("Why", "why"));

        Assert.Equal(HttpStatusCode.Forbidden, desk.Status);
    }
}
