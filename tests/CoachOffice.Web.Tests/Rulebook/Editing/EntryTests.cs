using System.Net;
using AngleSharp.Dom;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;
using CoachOffice.Web.Features.Rulebook.Editing;

namespace CoachOffice.Web.Tests.Rulebook.Editing;

public sealed class EntryTests : IAsyncLifetime
{
    private const string Drill = "/rulebook/edit/drill/shadow-head";
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;

    public async ValueTask InitializeAsync() => _coach = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public void Every_shipped_entry_fits_its_form_and_comes_back_the_same()
    {
        var loaded = RulebookReader.Load(RulebookText.FromDirectory(Path.Combine(Places.Repository, "rules")).Value).Value;
        var words = new PickWords(loaded.Book, []);
        var entries = BookEntries.Of(loaded).Where(e => EntrySheets.Of(e.Key.Kind) is not null).ToList();
        Assert.True(entries.Count > 300);

        foreach (var (id, text) in entries)
        {
            var (sheet, tree) = (EntrySheets.Of(id.Kind)!, TypedEntry.Tree(id.Kind, text)!);
            Assert.True(sheet.Holds(tree, words), $"{id}:\n{text}\n{EntryText.Write(sheet.Write(sheet.Fill(tree, words), words))}");
        }
    }

    [Theory]
    [InlineData("range/impact-spine-tilt")]
    [InlineData("drill/shadow-head")]
    [InlineData("pattern/body-outruns")]
    [InlineData("progression/quiet-head-down")]
    [InlineData("caution/space-around")]
    [InlineData("dosage")]
    public async Task A_form_sent_as_it_came_changes_nothing(string entry)
    {
        await _coach.Open($"/rulebook/edit/{entry}");
        Assert.Equal(HttpStatusCode.OK, _coach.Status);

        await _coach.Send("form#entry", ("do", "keep"));

        Assert.Equal("/rulebook/changes", _coach.Path);
        Assert.Contains("says already", _coach.Page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Nothing waits", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_is_added_moved_and_taken_away_without_losing_a_word()
    {
        await _coach.Open(Drill);
        var steps = Values("steps");

        await _coach.Send("form#entry", ("name", "A name half typed"), ("row", "add:steps"));
        Assert.Equal([.. steps, ""], Values("steps"));
        Assert.Equal("A name half typed", Values("name").Single());
        await _coach.Send("form#entry", ("row", "up:steps:1"));
        Assert.Equal([steps[1], steps[0]], Values("steps").Take(2));
        await _coach.Send("form#entry", ("row", "drop:steps:0"));

        Assert.Equal(steps[0], Values("steps")[0]);
        Assert.Equal("A name half typed", Values("name").Single());
    }

    [Fact]
    public async Task Three_faults_are_shown_at_once_each_at_its_field_and_nothing_is_lost()
    {
        await _coach.Open(Drill);

        await _coach.Send("form#entry", ("cue", ""), ("done-when.hits", "many"), ("trains", "No such measure, low"), ("do", "keep"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Contains("\"What to say\" is missing", At("cue"), StringComparison.Ordinal);
        Assert.Contains("a number is expected", At("done-when.hits"), StringComparison.Ordinal);
        Assert.NotEqual("", At("trains"));
        Assert.Equal("many", Values("done-when.hits").Single());
        Assert.Equal("No such measure, low", Values("trains").Single());
        Assert.Contains("3 things", _coach.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unfinished_entry_waits_and_is_found_again_as_it_was_typed()
    {
        await _coach.Open(Drill);
        await _coach.Send("form#entry", ("done-when.hits", "many"), ("do", "keep"));
        await _coach.Send("form#entry", ("do", "unfinished"));

        Assert.Equal("/rulebook/changes", _coach.Path);
        Assert.Contains("put right first", _coach.Text, StringComparison.Ordinal);
        Assert.Null(_coach.Page.QuerySelector("form.put"));
        await _coach.Open(Drill);

        Assert.Equal("many", Values("done-when.hits").Single());
    }

    [Fact]
    public async Task The_text_view_shows_faults_by_line_and_column_and_goes_back_to_the_form()
    {
        await _coach.Open("/rulebook/edit/range/tempo-ratio?as=text");
        await _coach.Send("form#entry", ("text", "measure: tempo-ratio\ndriver: [3.8, 2.2]\n"), ("do", "keep"));

        Assert.Contains("Line 2, column 9", _coach.Text, StringComparison.Ordinal);
        await _coach.Send("form#entry", ("do", "as-form"));

        Assert.Equal("3.8", Values("driver.low").Single());
    }

    [Theory]
    [InlineData("Not An Id", "is no id")]
    [InlineData("shadow-head", "There is a drill shadow-head already")]
    public async Task A_new_drill_with_a_wrong_id_is_refused_with_everything_typed(string id, string said)
    {
        await _coach.Open("/rulebook/edit/drill?for=downswing-head-shift.high");

        await _coach.Send("form#entry", [.. NewDrill, ("id", id), ("do", "keep")]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Contains(said, _coach.Text, StringComparison.Ordinal);
        Assert.Equal("Nose over the tee", Values("name").Single());
    }

    [Fact]
    public async Task A_new_drill_sent_twice_is_one_drill_and_comes_into_force_with_its_ladder()
    {
        await _coach.Open("/rulebook/edit/drill?for=downswing-head-shift.high");
        await _coach.Send("form#entry", [.. NewDrill, ("do", "keep")]);
        Assert.Equal("/rulebook/changes", _coach.Path);
        await _coach.Open("/rulebook/edit/drill?for=downswing-head-shift.high");
        await _coach.Send("form#entry", [.. NewDrill, ("do", "keep")]);
        Assert.Equal("/rulebook/changes", _coach.Path);
        await _coach.Open("/rulebook/edit/progression/quiet-head-down");
        await _coach.Send("form#entry", ("rehearse", "Nose over the tee"), ("do", "keep"));
        Assert.Equal(2, _coach.Page.QuerySelectorAll(".change-list > li").Length);

        await _coach.Send("form.put", ("Why", "Students like it"));

        Assert.Equal("/rulebook/history/2", _coach.Path);
        await _coach.Open("/rulebook/ladders");
        Assert.Contains("Nose over the tee", _coach.Page.QuerySelector("#quiet-head-down")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_live_check_answers_for_each_field_and_keeps_nothing()
    {
        await _coach.Open(Drill);

        await _coach.SendTo($"{Drill}?handler=check", "form#entry", ("cue", ""));

        Assert.Contains("\"What to say\" is missing", _coach.Page.QuerySelector("[data-faults-of=cue]")!.TextContent, StringComparison.Ordinal);
        await _coach.Open("/rulebook/changes");
        Assert.Contains("Nothing waits", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_desk_reads_and_finds_no_way_to_change()
    {
        var desk = await _coach.LetsIn(_office, "desk");

        foreach (var page in new[] { "/rulebook", "/rulebook/patterns", "/rulebook/drills", "/rulebook/ranges", "/rulebook/ladders", "/rulebook/cautions", "/rulebook/history", "/rulebook/faults/impact-spine-tilt.low" })
        {
            await desk.Open(page);
            Assert.Equal(HttpStatusCode.OK, desk.Status);
            Assert.Empty(desk.Page.QuerySelectorAll("a[href*='/rulebook/edit/']"));
        }
    }

    [Theory]
    [InlineData("/rulebook/edit/drill/no-such-drill")]
    [InlineData("/rulebook/edit/swing/shadow-head")]
    [InlineData("/rulebook/history/99")]
    [InlineData("/rulebook/history/1?with=7")]
    public async Task What_is_not_there_is_not_found(string path)
    {
        await _coach.Open(path);

        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
    }

    private static (string, string?)[] NewDrill =>
    [
        ("name", "Nose over the tee"), ("stages", "rehearse"), ("rooms", "home"), ("club", "none"), ("steps", "Stand over a tee without a club and turn slowly."),
        ("cue", "nose stays over the tee"), ("done-when.hits", "8"), ("done-when.of", "10"), ("done-when.what", "turns with the nose over the tee"),
    ];

    private List<string> Values(string name) => [.. _coach.Page.QuerySelectorAll($"#entry [name='{name}']").Select(f => f is AngleSharp.Html.Dom.IHtmlTextAreaElement text ? text.Value : f.GetAttribute("value") ?? "")];

    private string At(string field) => _coach.Page.QuerySelector($"[data-faults-of='{field}']")!.TextContent.Trim();
}
