using System.Net;
using System.Text;

namespace CoachOffice.Web.Tests.Rulebook;

public sealed class OwnRulesTests : IAsyncLifetime
{
    private const string Address = "/rulebook/own-rules";
    private const string Dog = "cautions:\n  - { id: mind-the-dog, when: drill, text: The yard has a dog. }\n";
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;

    public async ValueTask InitializeAsync() => _coach = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_faulty_file_is_told_fault_by_fault_with_its_lines_and_changes_nothing()
    {
        await Sends("removed:\n  - drill: no-such\ndrils: []\n", ("Why", "from a colleague"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Equal(2, _coach.Page.QuerySelectorAll(".refusals li").Length);
        Assert.Contains(":2:", _coach.Alert, StringComparison.Ordinal);
        Assert.Contains(":3:", _coach.Alert, StringComparison.Ordinal);
        Assert.Equal("from a colleague", _coach.Page.QuerySelector("[name=Why]")!.GetAttribute("value"));
        await EditionIs(1);
    }

    [Fact]
    public async Task A_file_only_looked_at_says_what_it_would_change_and_is_not_kept()
    {
        await Sends(Dog, ("look", "yes"));

        Assert.Contains("would change one entry", _coach.Text, StringComparison.Ordinal);
        Assert.Contains("Caution: Mind the dog", Would(), StringComparison.Ordinal);
        Assert.Contains("The yard has a dog", Would(), StringComparison.Ordinal);
        await EditionIs(1);
    }

    [Fact]
    public async Task What_a_file_would_change_is_said_in_words_and_a_changed_reading_as_one_change()
    {
        const string Case = "cases:\n  - pattern: aim-makes-path\n    name: aim and path on opposite sides\n    club: iron\n    readings: { aim-shoulders: 8, club-path: { value: -8, readings: 5 } }\n    fires: false\n    why: Closed shoulders do not make an out-to-in path.\n";

        await Sends($"{Case}removed:\n  - drill: shadow-head\n", ("look", "yes"));

        Assert.Contains("aim and path on opposite sides", Would(), StringComparison.Ordinal);
        Assert.Contains("was 9, now 8", Would(), StringComparison.Ordinal);
        Assert.DoesNotContain("taken out", Would()[Would().IndexOf("was 9", StringComparison.Ordinal)..][..60], StringComparison.Ordinal);
        Assert.Contains("It goes out of the book", Would(), StringComparison.Ordinal);
        Assert.DoesNotContain("Drill: shadow-head", Would(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_brought_in_is_the_next_edition_and_comes_out_again_as_the_same_rules()
    {
        await Sends(Dog, ("Why", "There is a dog now"));
        Assert.Equal("/rulebook/history/2", _coach.Path);
        Assert.Contains("There is a dog now", _coach.Text, StringComparison.Ordinal);

        await _coach.Open($"{Address}?handler=file");

        Assert.Equal("application/yaml", _coach.Answer.Content.Headers.ContentType!.MediaType);
        var file = await _coach.Answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("The yard has a dog.", file, StringComparison.Ordinal);
        await Sends(file, ("Why", "again"));
        Assert.Contains("says already", _coach.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_reason_a_file_is_not_brought_in()
    {
        await Sends(Dog);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Contains("in a few words why", _coach.Text, StringComparison.Ordinal);
        await EditionIs(1);
    }

    [Theory]
    [InlineData(new byte[] { 0xff, 0xfe, 0x00, 0x41 })]
    [InlineData(new byte[0])]
    public async Task What_is_no_text_is_no_file_of_rules(byte[] bytes)
    {
        await _coach.Open(Address);
        await _coach.SendFile("form[enctype]", ("file", "photo.yaml", bytes), ("Why", "why"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Contains("Choose a .yaml file", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_brought_in_over_an_edition_the_page_has_not_seen_is_refused_with_who_was_first()
    {
        var other = await _coach.LetsIn(_office, "coach");
        await other.Open(Address);
        await Sends(Dog, ("Why", "There is a dog now"));

        await other.SendFile("form[enctype]", ("file", "rules.yaml", Encoding.UTF8.GetBytes(Dog.Replace("a dog", "a cat", StringComparison.Ordinal))), ("Why", "a cat"));

        Assert.Equal(HttpStatusCode.Conflict, other.Status);
        Assert.Contains(Owner.Name, other.Alert, StringComparison.Ordinal);
        Assert.Contains("Person at the coach", other.Alert, StringComparison.Ordinal);
    }

    private string Would() => _coach.Page.QuerySelector("section[aria-labelledby=would]")!.TextContent;

    private async Task Sends(string yaml, params (string, string)[] filled)
    {
        await _coach.Open(Address);
        await _coach.SendFile("form[enctype]", ("file", "rules.yaml", Encoding.UTF8.GetBytes(yaml)), filled);
    }

    private async Task EditionIs(int number)
    {
        await _coach.Open("/rulebook");
        Assert.Contains($"edition {number}, in force", _coach.Text, StringComparison.Ordinal);
    }
}
