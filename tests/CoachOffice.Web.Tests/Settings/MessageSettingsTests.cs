using System.Net;

namespace CoachOffice.Web.Tests.Settings;

public sealed class MessageSettingsTests : IAsyncLifetime
{
    private const string Reminder = "/settings/messages/lesson-reminder";

    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Every_kind_has_its_page_with_its_words_and_a_look_at_them()
    {
        await _owner.Open("/settings/messages");
        var kinds = _owner.Page.QuerySelectorAll(".kinds a").Select(a => a.GetAttribute("href")!).ToList();
        Assert.Equal(Enum.GetValues<Domain.FollowUps.MessageKind>().Length, kinds.Count);
        foreach (var kind in kinds)
        {
            await _owner.Open(kind);
            Assert.Equal(HttpStatusCode.OK, _owner.Status);
            Assert.NotEmpty(_owner.Page.QuerySelectorAll("figure.letter pre"));
        }
    }

    [Fact]
    public async Task Whether_and_when_is_saved_and_what_cannot_be_is_refused()
    {
        await _owner.Open(Reminder);
        await _owner.Send("form[action*='rule']", ("Input.IsOn", "true"), ("Input.Timing", "48"), ("Input.WaitsForCoach", "true"));
        Assert.Contains("48 hours before the lesson", _owner.Text, StringComparison.Ordinal);
        await _owner.Open("/settings/messages");
        Assert.Contains("waits for your yes", _owner.Text, StringComparison.Ordinal);

        await _owner.Open(Reminder);
        await _owner.Send("form[action*='rule']", ("Input.Timing", "1000"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("from 2 to 168", _owner.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Own_words_are_kept_and_refused_and_given_up_again()
    {
        await _owner.Open("/settings/messages/practice-nudge");
        await _owner.Send("form[action*='words']", ("Input.Body", "Hello, you must practise."));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("\"must\" presses", _owner.Alert, StringComparison.Ordinal);
        Assert.Contains("line of its own", _owner.Alert, StringComparison.Ordinal);
        Assert.Contains("you must practise", _owner.Page.QuerySelector("textarea")!.TextContent, StringComparison.Ordinal);

        await _owner.Send("form[action*='words']", ("Input.Body", "Hello {{ greeting }},\n\na word, because a few minutes tend to hold. Whether is your choice.\n\n{{ link }}"));
        Assert.Contains("your own words", _owner.Text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("a few minutes tend to hold", _owner.Page.QuerySelector("figure.letter pre")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_an_owner_decides_what_goes_out()
    {
        foreach (var policy in new[] { "coach", "desk" })
        {
            var person = await _owner.LetsIn(_office, policy);
            foreach (var page in new[] { "/settings/messages", Reminder })
            {
                await person.Open(page);
                Assert.Equal(HttpStatusCode.Forbidden, person.Status);
            }
        }

        var stranger = new Visitor(_office);
        await stranger.Open(Reminder);
        Assert.Equal("/sign-in", stranger.Path);
    }

    [Fact]
    public async Task A_kind_nobody_knows_is_not_there()
    {
        await _owner.Open("/settings/messages/carrier-pigeon");

        Assert.Equal(HttpStatusCode.NotFound, _owner.Status);
    }
}
