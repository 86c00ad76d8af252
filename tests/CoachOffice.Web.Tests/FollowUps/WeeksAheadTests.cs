using System.Net;

namespace CoachOffice.Web.Tests.FollowUps;

/// <summary>The weeks ahead, what waits for a yes, and one message's own time and words.</summary>
public sealed class WeeksAheadTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync()
    {
        _owner = await _office.OpensThePractice();
        await _owner.Open("/settings/messages/retest-prompt");
        await _owner.Send("form[action*='rule']", ("Input.IsOn", "true"), ("Input.WaitsForCoach", "true"));
        await _owner.Approves();
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task What_waits_for_a_yes_stands_on_top_and_goes_after_it()
    {
        await _owner.Open("/follow-ups");
        Assert.Equal("Waiting for your yes", _owner.Page.QuerySelector("#waiting")!.TextContent);
        Assert.Single(_owner.Page.QuerySelectorAll(".message.state-awaits-approval"));

        await _owner.Send(".message form[action*='approve']");

        Assert.Empty(_owner.Page.QuerySelectorAll(".message.state-awaits-approval"));
        Assert.Contains(_owner.Page.QuerySelectorAll(".message.state-waiting h3"), h => h.TextContent.Contains("Time to look again", StringComparison.Ordinal));
    }

    [Fact]
    public async Task All_that_waits_goes_after_one_yes()
    {
        await _owner.Open("/follow-ups?show=awaits-approval");
        await _owner.Send("form[action*='approveall']");

        Assert.Empty(_owner.Page.QuerySelectorAll(".message.state-awaits-approval"));
    }

    [Fact]
    public async Task Four_weeks_are_shown_and_a_day_of_them_alone()
    {
        await _owner.Open("/follow-ups");
        Assert.Equal(28, _owner.Page.QuerySelectorAll(".weeks > li").Length);
        Assert.Single(_owner.Page.QuerySelectorAll(".weeks > li.today"));
        var day = _owner.Page.QuerySelector(".weeks a")!;
        var wanted = int.Parse(day.QuerySelector("strong")!.TextContent, System.Globalization.CultureInfo.InvariantCulture);

        await _owner.Open(day.GetAttribute("href")!.Split('#')[0]);

        Assert.InRange(_owner.Page.QuerySelectorAll("h2.day").Length, 1, 1);
        Assert.InRange(_owner.Page.QuerySelectorAll(".message").Length, 1, wanted + 1);
    }

    [Fact]
    public async Task A_kind_alone_is_shown_and_an_address_that_makes_no_sense_shows_everything()
    {
        await _owner.Open("/follow-ups?kind=practice-nudge");
        Assert.All(_owner.Page.QuerySelectorAll(".message h3"), h => Assert.Contains("A word of encouragement", h.TextContent, StringComparison.Ordinal));

        await _owner.Open("/follow-ups?kind=pigeon&on=never&show=what");
        Assert.Equal(HttpStatusCode.OK, _owner.Status);
        Assert.NotEmpty(_owner.Page.QuerySelectorAll(".message"));
    }

    [Fact]
    public async Task One_message_gets_words_of_its_own_held_to_the_same_rules()
    {
        await _owner.Open("/follow-ups?kind=practice-nudge");
        await _owner.Open(_owner.Page.QuerySelector(".message a[href^='/follow-ups/']")!.GetAttribute("href")!);

        await _owner.Send("form[action*='words']", ("Body", "You must practise."));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("\"must\" presses", _owner.Alert, StringComparison.Ordinal);

        await _owner.Send("form[action*='words']", ("Body", "Hello {{ greeting }},\n\nthe net is free on Fridays, because the club plays away. Whether is your choice.\n\n{{ link }}"));
        Assert.Contains("words of its own", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Neither_the_desk_nor_a_stranger_sees_a_message()
    {
        await _owner.Open("/follow-ups");
        var one = _owner.Page.QuerySelector(".message a[href^='/follow-ups/']")!.GetAttribute("href")!;
        var desk = await _owner.LetsIn(_office, "desk");
        await desk.Open(one);
        Assert.Equal(HttpStatusCode.Forbidden, desk.Status);
        var stranger = new Visitor(_office);
        await stranger.Open(one);
        Assert.Equal("/sign-in", stranger.Path);
    }
}
