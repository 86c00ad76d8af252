using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Replay;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Rulebook;

public abstract class WhatWouldChangeTests(OfficeFixture fixture)
{
    private const string HeadShiftFile = "ranges/downswing.yaml";

    private const string Narrow = "driver: [-5, 5]";

    [Fact]
    public async Task A_moved_range_shows_the_drafts_it_changes_and_leaves_the_others_alone()
    {
        var office = await fixture.Another(opened: true);
        var far = await Lesson(office, "Far", "12 13 11");
        await Lesson(office, "Near", "1 2 1");

        var view = await Compare(office, Book(Wider));

        Assert.Equal((ReplayState.Done, 100), (view.State, view.Percent));
        Assert.Equal((2, 1, 1, 1), (view.Counts.Lessons, view.Counts.Reached, view.Counts.Followed, view.Counts.Differ));
        var row = Assert.Single(view.Rows);
        Assert.Equal((far, "Far Golfer", new LocalDate(2026, 3, 2)), (row.Lesson, row.StudentName, row.HeldOn));
        Assert.Contains(DraftSection.Stages, row.Difference.Sections);
        Assert.Contains(row.Difference.Before!.Focus, f => f.Fault.Measure.Value == Scene.HeadShift);
        Assert.DoesNotContain(row.Difference.After!.Focus, f => f.Fault.Measure.Value == Scene.HeadShift);
    }

    [Fact]
    public async Task The_same_book_again_reaches_no_lesson()
    {
        var office = await fixture.Another(opened: true);
        await Lesson(office, "Same", "12 13 11");

        var view = await Compare(office, Book(text => text + "\n# a remark\n"));

        Assert.Equal((1, 0, 0), (view.Counts.Lessons, view.Counts.Reached, view.Counts.Differ));
    }

    [Fact]
    public async Task A_draft_is_compared_by_what_it_was_made_from_not_by_what_the_lesson_says_now()
    {
        var office = await fixture.Another(opened: true);
        var lesson = await Lesson(office, "Drafted", "12 13 11");
        await office.Must((DraftPlan draft) => draft.For(lesson, office.Coach));
        var form = new LessonForm { Heading = new(new LocalDate(2026, 3, 2), Domain.Measuring.Club.Driver), Entries = [Scene.Entry(Scene.HeadShift, "0 0 0")] };
        await office.Must((SaveLesson save) => save.As(lesson, 2, form, office.Coach));

        Assert.Equal(1, (await Compare(office, Book(Wider))).Counts.Differ);
    }

    [Fact]
    public async Task Saving_again_before_any_draft_compares_the_lesson_as_it_is_now()
    {
        var office = await fixture.Another(opened: true);
        var lesson = await Lesson(office, "Undrafted", "12 13 11");
        var form = new LessonForm { Heading = new(new LocalDate(2026, 3, 2), Domain.Measuring.Club.Driver), Entries = [Scene.Entry(Scene.HeadShift, "0 0 0")] };
        await office.Must((SaveLesson save) => save.As(lesson, 2, form, office.Coach));

        Assert.Equal((1, 0), await Reached(office));
    }

    [Fact]
    public async Task A_lesson_kept_without_an_input_gets_one_before_it_is_compared()
    {
        var office = await fixture.Another(opened: true);
        await Lesson(office, "Old", "12 13 11");
        var drafted = await Lesson(office, "Older", "12 13 11");
        await office.Must((DraftPlan draft) => draft.For(drafted, office.Coach));
        await office.Read(db => db.LessonInputs.ExecuteDeleteAsync());

        Assert.Equal(2, (await Compare(office, Book(Wider))).Counts.Differ);
        Assert.Equal([false, true], await office.Read(db => db.LessonInputs.OrderBy(i => i.IsDrafted).Select(i => i.IsDrafted).ToListAsync()));
    }

    [Fact]
    public async Task A_lesson_whose_last_reading_was_taken_off_has_no_input()
    {
        var office = await fixture.Another(opened: true);
        var lesson = await Lesson(office, "Empty", "12 13 11");
        await office.Must((SaveLesson save) => save.As(lesson, 2, new LessonForm { Heading = new(new LocalDate(2026, 3, 2), Domain.Measuring.Club.Driver) }, office.Coach));

        Assert.Equal(0, await office.Read(db => db.LessonInputs.CountAsync()));
    }

    [Fact]
    public async Task Only_who_began_it_sees_and_stops_it_and_the_desk_may_not_begin()
    {
        var office = await fixture.Another(opened: true);
        await Lesson(office, "Mine", "12 13 11");
        var edited = Book(Wider);
        await Compare(office, edited);

        Assert.Equal("comparison-not-found", (await office.Refuses((WhatWouldChange page) => page.For(office.Owner)))[0].Code);
        Assert.Equal("comparison-not-found", (await office.Refuses((StopWhatWouldChange stop) => stop.For(office.Owner)))[0].Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((BeginWhatWouldChange begin) => begin.By(edited, office.Desk)))[0].Code);
    }

    [Fact]
    public async Task A_stopped_one_ends_early_and_keeps_what_it_found()
    {
        var office = await fixture.Another(opened: true);
        await Lesson(office, "Stopped", "12 13 11");
        await office.Must((BeginWhatWouldChange begin) => begin.By(Book(Wider), office.Coach));
        await office.Must((StopWhatWouldChange stop) => stop.For(office.Coach));

        var view = await End(office);

        Assert.True(view.State is ReplayState.Stopped or ReplayState.Done, view.State.ToString());
        Assert.InRange(view.Counts.Followed, 0, view.Counts.Reached);
    }

    private async Task<(int, int)> Reached(TestOffice office)
    {
        var counts = (await Compare(office, Book(Wider))).Counts;
        return (counts.Reached, counts.Differ);
    }

    private static async Task<LessonId> Lesson(TestOffice office, string name, string headShift)
    {
        var student = await office.Register(AStudent.Named(name, "Golfer"));
        return await Scene.LessonOf(office, student, new LocalDate(2026, 3, 2), headShift);
    }

    private static async Task<ReplayView> Compare(TestOffice office, CompiledRulebook edited)
    {
        await office.Must((BeginWhatWouldChange begin) => begin.By(edited, office.Coach));
        return await End(office);
    }

    private static async Task<ReplayView> End(TestOffice office)
    {
        ReplayView view;
        while ((view = await office.Must((WhatWouldChange page) => page.For(office.Coach))).State is ReplayState.Searching or ReplayState.Comparing) await Task.Delay(20, TestContext.Current.CancellationToken);
        return view;
    }

    private static CompiledRulebook Book(Func<string, string> edit)
    {
        var shipped = RulebookText.FromDirectory(ShippedRules.Find().Directory).Value;
        var text = RulebookText.Of(shipped.Files.Select(f => KeyValuePair.Create(f.Key, f.Key == HeadShiftFile ? edit(f.Value) : f.Value)));
        return CompiledRulebook.Compile(RulebookReader.Load(text).Value);
    }

    /// <summary>The head may go as far toward the target as it likes.</summary>
    private static string Wider(string text)
    {
        var driver = text.IndexOf(Narrow, text.IndexOf("- measure: downswing-head-shift", StringComparison.Ordinal), StringComparison.Ordinal);
        return $"{text[..driver]}driver: [-5, 40]{text[(driver + Narrow.Length)..]}";
    }
}

public sealed class WhatWouldChangeOnSqlite(SqliteOffice office) : WhatWouldChangeTests(office), IClassFixture<SqliteOffice>;

public sealed class WhatWouldChangeOnPostgreSql(PostgreSqlOffice office) : WhatWouldChangeTests(office), IClassFixture<PostgreSqlOffice>;
