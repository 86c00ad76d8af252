using Bunit;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Web.Shell.Components;
using NodaTime;

namespace CoachOffice.Web.Tests.Shell;

public sealed class ComponentTests : BunitContext
{
    [Theory]
    [InlineData(Grade.InRange, Side.None, "✓", "in range")]
    [InlineData(Grade.Borderline, Side.High, "≈", "borderline, high")]
    [InlineData(Grade.Moderate, Side.Low, "↓↓", "moderate, low")]
    [InlineData(Grade.Marked, Side.High, "↑↑↑", "marked, high")]
    [InlineData(Grade.NoRange, Side.None, "–", "no range")]
    public void A_grade_is_a_word_a_sign_and_a_colour(Grade grade, Side side, string sign, string word)
    {
        var shown = Render<GradeWord>(p => p.Add(g => g.Grade, grade).Add(g => g.Side, side));

        Assert.Equal(sign, shown.Find(".sign").TextContent);
        Assert.EndsWith(word, shown.Find(".grade").TextContent, StringComparison.Ordinal);
        Assert.Contains("grade-" + Terms.Of(grade), shown.Find(".grade").ClassList);
    }

    [Fact]
    public void A_field_ties_label_hint_unit_and_error_to_its_input()
    {
        var row = Render<FieldRow>(p => p.Add(f => f.Name, "Input.Height").Add(f => f.Label, "Height").Add(f => f.Unit, "cm")
            .Add(f => f.Hint, "Without shoes.").Add(f => f.Error, "Height lies between 80 and 230 cm.").Add(f => f.Value, "18o"));

        var input = row.Find("input");
        Assert.Equal(input.Id, row.Find("label").GetAttribute("for"));
        Assert.Equal("18o", input.GetAttribute("value"));
        Assert.Equal("true", input.GetAttribute("aria-invalid"));
        foreach (var id in input.GetAttribute("aria-describedby")!.Split(' ')) Assert.NotNull(row.Find("#" + id));
    }

    [Fact]
    public void Refusals_are_an_alert_whose_sentences_lead_to_their_fields()
    {
        var list = Render<RefusalList>(p => p.Add(r => r.Refusals, [new Refusal("a", "Give the student a name.", "GivenName"), new Refusal("b", "Someone saved meanwhile.")]));

        Assert.NotNull(list.Find("[role=alert]"));
        Assert.Equal("#Input_GivenName", list.Find("a").GetAttribute("href"));
        Assert.Equal(2, list.FindAll("li").Count);
    }

    [Fact]
    public void No_refusal_shows_nothing() => Assert.Empty(Render<RefusalList>(p => p.Add(r => r.Refusals, [])).Markup.Trim());

    [Fact]
    public void A_time_names_its_zone_only_where_it_differs_from_the_practices()
    {
        var london = DateTimeZoneProviders.Tzdb["Europe/London"];
        var at = Instant.FromUtc(2026, 7, 1, 12, 0);

        var here = Render<TimeShown>(p => p.Add(t => t.At, at).Add(t => t.Practice, london).Add(t => t.Reader, london));
        var away = Render<TimeShown>(p => p.Add(t => t.At, at).Add(t => t.Practice, london).Add(t => t.Reader, DateTimeZoneProviders.Tzdb["America/New_York"]));

        Assert.Equal("1 Jul 2026, 13:00", here.Find("time").TextContent);
        Assert.Equal("1 Jul 2026, 08:00 (America/New York)", away.Find("time").TextContent);
        Assert.Equal("2026-07-01T12:00:00Z", away.Find("time").GetAttribute("datetime"));
    }

    [Fact]
    public void A_pager_shows_only_the_ways_there_are()
    {
        var first = Render<Pager>(p => p.Add(x => x.Page, 1).Add(x => x.Pages, 3).Add(x => x.Href, "/students?archived=yes"));

        Assert.Equal("/students?archived=yes&page=2", Assert.Single(first.FindAll("a")).GetAttribute("href"));
        Assert.Empty(Render<Pager>(p => p.Add(x => x.Page, 1).Add(x => x.Pages, 1).Add(x => x.Href, "/students")).Markup.Trim());
    }

    [Fact]
    public void An_empty_place_says_what_to_do_first()
    {
        var empty = Render<EmptyState>(p => p.Add(e => e.Title, "No students yet").Add(e => e.Sentence, "Add the first one.").Add(e => e.Href, "/students/new").Add(e => e.Action, "Add a student"));

        Assert.Equal("/students/new", empty.Find("a.button").GetAttribute("href"));
    }
}
