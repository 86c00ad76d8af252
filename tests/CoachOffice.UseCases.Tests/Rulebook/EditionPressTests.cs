using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.Tests.Rulebook;

public abstract class EditionPressTests(OfficeFixture fixture)
{
    private static readonly EntryId Ranges = new(EntryKind.Range, "tempo-ratio");
    private static readonly EntryId QuickBack = new(EntryKind.Pattern, "quick-back");

    [Fact]
    public async Task A_changed_entry_is_the_next_edition_with_its_history_and_its_audit_row()
    {
        var office = await fixture.Another(opened: true);
        var aiming = await Aiming(office, "3.2");
        office.Time.Advance(TimeSpan.FromHours(2));

        var edited = await office.MustEdit(office.Coach, 1, " Beginners swing slower ", new EntryEdit(Ranges, EntryDeed.Write, aiming));

        Assert.Equal(2, edited.Number);
        Assert.Equal([new EntryChange(Ranges, ChangeKind.Changed)], edited.Changes);
        var newest = (await office.Do((ListEditions list) => list.Now()))[0];
        Assert.Equal((2, EditionKind.Edit, "Carl Coach", "Beginners swing slower", true), (newest.Number, newest.Kind, newest.By, newest.Why, newest.IsInForce));
        Assert.Equal(office.Now, newest.AdoptedAt);
        Assert.Equal(edited.Changes, newest.Changes);
        var book = (await office.Must((RulebookPages pages) => pages.Of(null, office.Owner))).Book;
        Assert.Equal(3.2, book.RangeOf(MeasureId.From("tempo-ratio"), Club.Driver)!.Aim!.High);
        var audit = await office.Read(db => db.AuditEntries.SingleAsync(a => a.Subject == "rulebook"));
        Assert.Equal(("rulebook-edit", "Carl Coach", $"edition:2 book:{edited.Sha256[..12]}"), (audit.Action, audit.ActorName, audit.Detail));
    }

    [Fact]
    public async Task A_bad_change_is_told_with_all_its_faults_in_its_own_lines_and_the_old_edition_serves()
    {
        var office = await fixture.Another(opened: true);
        var before = await office.Services.GetRequiredService<Rulebooks>().InForce();

        var refusals = (await office.Edit(office.Owner, 1, "a slip", new EntryEdit(Ranges, EntryDeed.Write, "measure: tempo-ratio\ndriver: [3.8, 2.2]\nirons: [2, 3]\n"))).Refusals;

        Assert.Equal(
            [
                "own/ranges/tempo-ratio.yaml:2:9: driver: the low end 3.8 is above the high end 2.2; swap them",
                "own/ranges/tempo-ratio.yaml:3:1: irons: 'irons' is not a name known here; nearest: iron; one of: card, driver, fairway, hybrid, iron, measure, source, wedge",
            ],
            refusals.Select(r => r.Sentence));
        Assert.Same(before, await office.Services.GetRequiredService<Rulebooks>().InForce());
        Assert.Single(await office.Do((ListEditions list) => list.Now()));
    }

    [Fact]
    public async Task A_change_that_breaks_a_worked_case_is_refused_with_the_case_named()
    {
        var office = await fixture.Another(opened: true);
        var text = (await office.Must((OpenEntry open) => open.Of(QuickBack, office.Owner))).InForce!;
        var deaf = text.Replace("tempo-ratio.low at least moderate", "tempo-ratio.low at least marked", StringComparison.Ordinal);
        Assert.NotEqual(text, deaf);

        var refusals = (await office.Edit(office.Owner, 1, "hear less", new EntryEdit(QuickBack, EntryDeed.Write, deaf))).Refusals;

        Assert.All(refusals, r => Assert.StartsWith("cases/quick-back.yaml:", r.Sentence, StringComparison.Ordinal));
        Assert.Contains(refusals, r => r.Sentence.Contains("quick-back does not fire here and should", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_second_of_two_editors_hears_who_was_first_and_what_changed()
    {
        var office = await fixture.Another(opened: true);
        var aiming = await Aiming(office, "3.2");
        await office.MustEdit(office.Owner, 1, "wider", new EntryEdit(Ranges, EntryDeed.Write, aiming));

        var refusals = (await office.Edit(office.Coach, 1, "unused", new EntryEdit(QuickBack, EntryDeed.Remove))).Refusals;

        Assert.All(refusals, r => Assert.Equal(Clash.Code, r.Code));
        Assert.Equal("Olive Owner saved edition 2 of the rulebook at 09:00 (\"wider\"), after Carl Coach opened edition 1.", refusals[0].Sentence);
        Assert.Equal("Saved meanwhile: range tempo-ratio changed.", refusals[1].Sentence);
    }

    [Fact]
    public async Task Of_two_editors_at_once_one_wins_and_the_other_is_refused_with_the_change_still_waiting()
    {
        var office = await fixture.Another(opened: true);
        var (wide, wider) = (await Aiming(office, "3.1"), await Aiming(office, "3.2"));
        await office.Must((KeepChange keep) => keep.Of(new WorkForm(1, [new(Ranges, EntryDeed.Write, wide)]), office.Owner));
        await office.Must((KeepChange keep) => keep.Of(new WorkForm(1, [new(Ranges, EntryDeed.Write, wider)]), office.Coach));

        var outcomes = await Task.WhenAll(new[] { office.Owner, office.Coach }.Select(editor => Task.Run(() => office.Do((PutInForce put) => put.By("all at once", editor)))));

        Assert.Single(outcomes, o => o.Succeeded);
        Assert.Equal(Clash.Code, outcomes.Single(o => !o.Succeeded).Refusals[0].Code);
        Assert.Equal(2, (await office.Do((ListEditions list) => list.Now())).Count);
        var waiting = await office.Read(db => db.RulebookWorks.ToListAsync());
        Assert.Single(waiting.SelectMany(w => w.Edits));
    }

    [Fact]
    public async Task A_removed_pattern_goes_with_its_cases_and_the_desk_may_not_remove_it()
    {
        var office = await fixture.Another(opened: true);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((PutInForce put) => put.By("we do not teach it", office.Desk))).Single().Code);

        var edited = await office.MustEdit(office.Owner, 1, "we do not teach it", new EntryEdit(QuickBack, EntryDeed.Remove));

        Assert.All(edited.Changes, c => Assert.True(c.Change == ChangeKind.Removed || c.Id.Kind == EntryKind.Pattern, c.ToString()));
        Assert.Contains(edited.Changes, c => c.Id.Kind == EntryKind.Case);
        var back = await office.MustEdit(office.Owner, 2, "we do", new EntryEdit(QuickBack, EntryDeed.BackToShipped));
        Assert.Equal((await office.Do((ListEditions list) => list.Now()))[2].Sha256, back.Sha256);
    }

    [Fact]
    public async Task Nothing_and_no_reason_are_no_edition()
    {
        var office = await fixture.Another(opened: true);

        Assert.Equal("nothing-changed", (await office.Refuses((PutInForce put) => put.By("why", office.Owner))).Single().Code);
        Assert.Equal("entry-renamed", (await office.Refuses((KeepChange keep) => keep.Of(new WorkForm(1, [new(Ranges, EntryDeed.Write, "measure: lag-angle\ndriver: [null, 102]\n")]), office.Owner))).Single().Code);
        Assert.False((await office.Must((KeepChange keep) => keep.Of(new WorkForm(1, [new(Ranges, EntryDeed.BackToShipped)]), office.Owner))).IsNews);
        Assert.Equal("why-missing", (await office.Edit(office.Owner, 1, " ", new EntryEdit(Ranges, EntryDeed.Write, await Aiming(office, "3.2")))).Refusals.Single().Code);
        Assert.Equal("why-too-long", (await office.Refuses((PutInForce put) => put.By(new string('y', 501), office.Owner))).Single().Code);
    }

    [Fact]
    public async Task An_entry_that_reads_well_and_makes_no_sense_is_refused_and_the_old_edition_serves()
    {
        var office = await fixture.Another(opened: true);
        var text = await office.Text(QuickBack);
        var never = new EntryId(EntryKind.Pattern, "never-back");
        var deaf = text.Replace("id: quick-back", "id: never-back", StringComparison.Ordinal).Replace("  - tempo-ratio.low", "  - tempo-ratio above 3.5\n  - tempo-ratio.low", StringComparison.Ordinal);

        var refusals = (await office.Edit(office.Owner, 1, "a slip", new EntryEdit(never, EntryDeed.Write, deaf))).Refusals;

        Assert.StartsWith("own/patterns/never-back.yaml:1:1: when: never true: never-back: never fires", refusals.Single().Sentence, StringComparison.Ordinal);
        Assert.Single(await office.Do((ListEditions list) => list.Now()));
    }

    /// <summary>The driver's tempo with an aim inside its range, which no worked case looks at.</summary>
    private static async Task<string> Aiming(TestOffice office, string high)
    {
        var text = (await office.Must((OpenEntry open) => open.Of(Ranges, office.Owner))).InForce!;
        var aiming = text.Replace("driver: [2.4, 3.6]", $"driver: {{ range: [2.4, 3.6], aim: [2.8, {high}] }}", StringComparison.Ordinal);
        Assert.NotEqual(text, aiming);
        return aiming;
    }
}

public sealed class EditionPressOnSqlite(SqliteOffice office) : EditionPressTests(office), IClassFixture<SqliteOffice>;

public sealed class EditionPressOnPostgreSql(PostgreSqlOffice office) : EditionPressTests(office), IClassFixture<PostgreSqlOffice>;
