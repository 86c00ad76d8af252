using System.Net;
using CoachOffice.Web.Tests.Bookings;

namespace CoachOffice.Web.Tests.FollowUps;

/// <summary>How messages reach a student, chosen behind the link to their lessons and seen by the practice.</summary>
public sealed class MyMessagesTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;
    private string _student = "";

    public async ValueTask InitializeAsync()
    {
        _owner = await _office.OpensThePractice();
        _student = await _owner.Registers();
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Who_has_no_number_is_told_and_quiet_hours_are_kept_for_both_to_see()
    {
        var ida = await _owner.HandsOutLessons(_office, _student);
        await ida.Open("/my-lessons/messages");
        await ida.Send("main form", ("Contact.By", "text"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, ida.Status);
        Assert.Contains("country's code", ida.Alert, StringComparison.Ordinal);

        await ida.Open("/my-lessons/messages");
        await ida.Send("main form", ("Contact.From", "22"), ("Contact.Until", "7"));

        Assert.Contains("Kept.", ida.Text, StringComparison.Ordinal);
        await _owner.Open($"{_student}/messages");
        Assert.Equal("22", _owner.Page.QuerySelector("#Contact-From option[selected]")!.GetAttribute("value"));
    }

    [Fact]
    public async Task The_practice_keeps_it_as_told()
    {
        await _owner.Open($"{_student}/messages");
        await _owner.Send("form[action*='contact']", ("Contact.Zone", "America/New_York"));

        Assert.Equal("America/New_York", _owner.Page.QuerySelector("#Contact-Zone option[selected]")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Without_a_link_there_is_nothing_and_one_to_a_plan_does_not_open_it()
    {
        var stranger = new Visitor(_office);
        await stranger.Open("/my-lessons/messages");
        Assert.NotEqual(HttpStatusCode.OK, stranger.Status);

        var link = await _owner.HandsOutALink(await _owner.Approves());
        await stranger.Open(link);
        await stranger.Open("/my-lessons/messages");
        Assert.NotEqual(HttpStatusCode.OK, stranger.Status);
    }

    [Fact]
    public async Task The_number_to_read_again_is_asked_for_behind_the_plans_link_alone()
    {
        var stranger = new Visitor(_office);
        await stranger.Open("/my-plan/look");
        Assert.NotEqual(HttpStatusCode.OK, stranger.Status);

        await stranger.Open(await _owner.HandsOutALink(await _owner.Approves()));
        await stranger.Open("/my-plan/look");
        Assert.Equal((HttpStatusCode.OK, "Read the number again"), (stranger.Status, stranger.Heading));
    }
}
